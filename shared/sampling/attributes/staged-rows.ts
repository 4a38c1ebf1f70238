import type { CodeLetter } from './code-letter.ts';

/** Ac and Re of one sample of a plan, cumulative. Ac is null where acceptance is not possible yet. */
export interface NumberPair {
  readonly ac: number | null;
  readonly re: number;
}

/** A cell of any master table: the pairs of a plan's samples in turn, an arrow, a sign to use a plan of fewer samples, or nothing that a lot can arrive at. */
export type TableCell = readonly NumberPair[] | 'down' | 'up' | 'single' | 'double' | 'unreachable';

/** One row of any master table. */
export interface TableLine {
  readonly letter: CodeLetter;
  /** Pieces of each sample in turn; empty where the row has no plan of its own. */
  readonly sizes: readonly number[];
  /** 26 cells from AQL 0.010 to 1000. */
  readonly cells: readonly TableCell[];
}

/** A table for double or multiple sampling as it stands in the cell files. */
export interface StagedTable {
  /** How many samples a plan may take. */
  readonly samples: number;
  /** The plans by the name their cells have. */
  readonly plans: Readonly<Record<string, string>>;
  readonly rows: readonly (readonly [letter: CodeLetter, sampleSize: number, cells: string])[];
}

const SIGNS: Readonly<Record<string, TableCell>> = { v: 'down', '^': 'up', '-': 'unreachable', S: 'single', D: 'double' };

/** Reads a cell file. */
export function readStagedTable({ samples, plans, rows }: StagedTable): readonly TableLine[] {
  const pairs = new Map(Object.entries(plans).map(([name, written]) => [name, written.split(' ').map(readPair)]));
  return rows.map(([letter, sampleSize, cells]) => ({
    letter,
    sizes: sampleSize === 0 ? [] : Array.from({ length: samples }, () => sampleSize),
    cells: cells.split(' ').map((written) => {
      const cell = SIGNS[written] ?? pairs.get(written);
      if (cell === undefined) throw new Error(`a master table holds an unreadable cell: ${written}`);
      return cell;
    }),
  }));
}

function readPair(written: string): NumberPair {
  const [ac, re] = written.split('/');
  return { ac: ac === '#' ? null : Number(ac), re: Number(re) };
}
