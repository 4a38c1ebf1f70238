import type { CodeLetter } from './code-letter.ts';
import { normalCells } from './normal-cells.ts';
import { reducedCells } from './reduced-cells.ts';
import { tightenedCells } from './tightened-cells.ts';

/** How hard a stream of lots is looked at. */
export type Severity = 'normal' | 'tightened' | 'reduced';

/** The master tables of MIL-STD-105E for single, double and multiple sampling. IV-C is not in the engine: only a plant's own copy can stand for it. */
export type TableName = 'II-A' | 'II-B' | 'II-C' | 'III-A' | 'III-B' | 'III-C' | 'IV-A' | 'IV-B' | 'IV-C';

/** One row as it stands in the cell files. */
export type TableRow = readonly [letter: CodeLetter, sampleSize: number, cells: string];

/** A plan, an arrow to one, or a cell nothing can arrive at. */
export type Cell = { readonly ac: number; readonly re: number } | 'down' | 'up' | 'unreachable';

/** A row read: the letter, its sample size and its 26 cells. */
export type MasterRow = { readonly letter: CodeLetter; readonly sampleSize: number; readonly cells: readonly Cell[] };

const TABLE_OF = { normal: 'II-A', tightened: 'II-B', reduced: 'II-C' } as const;

const ROWS: Readonly<Record<Severity, readonly MasterRow[]>> = {
  normal: normalCells.map(readRow),
  tightened: tightenedCells.map(readRow),
  reduced: reducedCells.map(readRow),
};

/** The master table for single sampling a severity is read from. */
export function tableName(severity: Severity): 'II-A' | 'II-B' | 'II-C' {
  return TABLE_OF[severity];
}

/** The rows of a severity's table, smallest sample first. */
export function masterRows(severity: Severity): readonly MasterRow[] {
  return ROWS[severity];
}

function readRow([letter, sampleSize, cells]: TableRow): MasterRow {
  return { letter, sampleSize, cells: cells.split(' ').map(readCell) };
}

function readCell(written: string): Cell {
  if (written === 'v') return 'down';
  if (written === '^') return 'up';
  if (written === '-') return 'unreachable';
  const [ac, re] = written.split('/').map(Number);
  if (ac === undefined || !Number.isInteger(ac)) throw new Error(`a master table holds an unreadable cell: ${written}`);
  return { ac, re: re ?? ac + 1 };
}
