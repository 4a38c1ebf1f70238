import type { Database } from 'better-sqlite3';
import { readBoxCode } from '../../shared/traveller/box-code/index.ts';
import type { SearchHit } from '../../shared/wire/views.ts';
import { prepared } from '../journal/sqlite/prepared.ts';

const mostHits = 30;

/** Finds subjects by number or name, boxes by serial or by the whole code on their label, raw lots and shipments. The best hit first. */
export function search(db: Database, asked: string): SearchHit[] {
  const text = asked.trim();
  if (text === '') return [];
  const code = readBoxCode(text);
  const serial = code.ok ? code.fields.serial ?? '' : text.toUpperCase();
  const boxes = prepared<[string], SearchHit>(db, `SELECT 'lot:' || lot AS stream, 'box' AS kind, serial AS id, lot AS title, standing FROM box WHERE serial = ?`).all(serial);
  if (code.ok) return [...boxes, ...bySubject(db, code.fields.lot)];
  return [...boxes, ...bySubject(db, text), ...byNode(db, text)].slice(0, mostHits);
}

function bySubject(db: Database, text: string): SearchHit[] {
  const columns = 'stream, kind, id, title, standing';
  const exact = prepared<[string], SearchHit>(db, `SELECT ${columns} FROM subject WHERE id = ? COLLATE NOCASE`).all(text);
  const pattern = `%${text.replaceAll(/[\\%_]/g, (sign) => `\\${sign}`)}%`;
  const sql = `SELECT ${columns} FROM subject WHERE (id LIKE @pattern ESCAPE '\\' OR title LIKE @pattern ESCAPE '\\' OR designation LIKE @pattern ESCAPE '\\')
    AND id <> @text COLLATE NOCASE ORDER BY opened_at DESC LIMIT ${mostHits}`;
  return [...exact, ...prepared<[{ pattern: string; text: string }], SearchHit>(db, sql).all({ pattern, text })];
}

/** Raw lots and shipments have no traveller of their own: their stream is empty, and they open in the trace. */
function byNode(db: Database, text: string): SearchHit[] {
  const sql = `SELECT '' AS stream, kind, id, coalesce(detail, '') AS title, '' AS standing FROM node WHERE kind IN ('raw', 'shipment') AND id = ?`;
  return prepared<[string], SearchHit>(db, sql).all(text);
}
