import type { Database } from 'better-sqlite3';
import type { Slip } from '../../shared/traveller/index.ts';
import { streamParts } from '../../shared/traveller/index.ts';
import type { TraceNode } from '../../shared/wire/views.ts';
import { prepared } from '../journal/sqlite/prepared.ts';

type Kind = TraceNode['kind'];

function node(db: Database, kind: Kind, id: string, detail: string | null = null): number {
  const sql = `INSERT INTO node (kind, id, detail) VALUES (?, ?, ?) ON CONFLICT (kind, id) DO UPDATE SET detail = coalesce(excluded.detail, detail) RETURNING number`;
  const row = prepared<[string, string, string | null], { number: number }>(db, sql).get(kind, id, detail);
  return row?.number ?? 0;
}

function link(db: Database, parent: number, child: number): void {
  prepared<[number, number]>(db, 'INSERT INTO edge (parent, child) VALUES (?, ?) ON CONFLICT DO NOTHING').run(parent, child);
}

/** Takes in what a slip says about descent: raw lot → batch → blend → lot → box → shipment, charges → lots, lot → split lot. */
export function takeDescent(db: Database, { stream, body }: Slip): void {
  const here = streamParts(stream);
  const id = here?.id ?? '';
  switch (body.type) {
    case 'batchOpened': {
      const batch = node(db, 'batch', body.batch);
      for (const { rawLot, material } of body.rawLots) link(db, node(db, 'raw', rawLot, material), batch);
      for (const part of body.blendedFrom ?? []) link(db, node(db, 'batch', part.batch), batch);
      return;
    }
    case 'lotOpened': {
      const lot = node(db, 'lot', body.lot);
      link(db, node(db, 'batch', body.batch), lot);
      if (body.splitFrom !== null) link(db, node(db, 'lot', body.splitFrom), lot);
      return;
    }
    case 'chargeJoined': {
      const charge = streamParts(body.charge);
      if (charge?.kind === 'furnace' || charge?.kind === 'coating') link(db, node(db, charge.kind, charge.id), node(db, 'lot', id));
      return;
    }
    case 'boxPacked': return link(db, node(db, 'lot', id), node(db, 'box', body.box));
    case 'boxShipped': return link(db, node(db, 'box', body.box), node(db, 'shipment', body.shipment, body.consignee));
    default:
  }
}

export interface DescentRow { readonly kind: Kind; readonly id: string; readonly detail: string | null; readonly depth: number; readonly viaId: string }

/** Walks the descent from one node, nearest first, the node itself left out. Null where nobody knows the node. */
export function walkDescent(db: Database, kind: string, id: string, direction: 'up' | 'down', most: number): DescentRow[] | null {
  const start = prepared<[string, string], { number: number }>(db, 'SELECT number FROM node WHERE kind = ? AND id = ?').get(kind, id);
  if (start === undefined) return null;
  const [from, to] = direction === 'up' ? ['child', 'parent'] : ['parent', 'child'];
  const sql = `WITH RECURSIVE walk (number, depth, via) AS (
      SELECT ${to}, 1, ${from} FROM edge WHERE ${from} = ?
      UNION SELECT edge.${to}, walk.depth + 1, walk.number FROM walk JOIN edge ON edge.${from} = walk.number
    )
    SELECT node.kind, node.id, node.detail, walk.depth, via.id AS viaId FROM walk JOIN node ON node.number = walk.number JOIN node AS via ON via.number = walk.via
    ORDER BY walk.depth, node.number LIMIT ?`;
  const seen = new Set<string>();
  return prepared<[number, number], DescentRow>(db, sql).all(start.number, most).filter(({ kind: each, id: name }) => {
    const key = `${each}:${name}`;
    const isNew = !seen.has(key);
    seen.add(key);
    return isNew;
  });
}
