import { doubleNormalCells } from './double-normal-cells.ts';
import { doubleReducedCells } from './double-reduced-cells.ts';
import { doubleTightenedCells } from './double-tightened-cells.ts';
import { masterRows } from './master-table.ts';
import type { Severity, TableName } from './master-table.ts';
import { multipleNormalCells } from './multiple-normal-cells.ts';
import { multipleTightenedCells } from './multiple-tightened-cells.ts';
import { readStagedTable } from './staged-rows.ts';
import type { TableLine } from './staged-rows.ts';

/** How many samples a plan may take: one, two, or (in the tables here) seven. */
export type Samples = 'single' | 'double' | 'multiple';

/** A plant's own copy of a master table. Plain data, fit for a slip; made by `readTableCsv`, which has checked its structure. */
export interface OwnTable {
  readonly id: string;
  readonly name: string;
  readonly severity: Severity;
  readonly samples: Samples;
  readonly rows: readonly TableLine[];
}

const NAMES: Readonly<Record<Samples, Readonly<Record<Severity, TableName>>>> = {
  single: { normal: 'II-A', tightened: 'II-B', reduced: 'II-C' },
  double: { normal: 'III-A', tightened: 'III-B', reduced: 'III-C' },
  multiple: { normal: 'IV-A', tightened: 'IV-B', reduced: 'IV-C' },
};

const LINES: Readonly<Record<Samples, Readonly<Record<Severity, readonly TableLine[] | null>>>> = {
  single: { normal: singleLines('normal'), tightened: singleLines('tightened'), reduced: singleLines('reduced') },
  double: { normal: readStagedTable(doubleNormalCells), tightened: readStagedTable(doubleTightenedCells), reduced: readStagedTable(doubleReducedCells) },
  multiple: { normal: readStagedTable(multipleNormalCells), tightened: readStagedTable(multipleTightenedCells), reduced: null },
};

/** The name MIL-STD-105E gives the table of a severity. */
export function nameOfTable(samples: Samples, severity: Severity): TableName {
  return NAMES[samples][severity];
}

/** The rows of a master table, smallest sample first; null for Table IV-C (multiple, reduced), which could not be confirmed and is not here. */
export function tableLines(samples: Samples, severity: Severity): readonly TableLine[] | null {
  return LINES[samples][severity];
}

function singleLines(severity: Severity): readonly TableLine[] {
  return masterRows(severity).map(({ letter, sampleSize, cells }) => ({
    letter, sizes: [sampleSize], cells: cells.map((cell) => (typeof cell === 'object' ? [cell] : cell)),
  }));
}
