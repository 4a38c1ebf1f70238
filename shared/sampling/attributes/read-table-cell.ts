import type { Severity } from './master-table.ts';
import type { Samples } from './sampling-tables.ts';
import type { NumberPair, TableCell } from './staged-rows.ts';
import type { TableProblemCode } from './table-problem.ts';

/** What a cell is read for: the table's severity and samples, how many pairs its plans have, and whether lots can start from its row. */
export interface CellPlace {
  readonly severity: Severity;
  readonly samples: Samples;
  readonly pairs: number;
  readonly startRow: boolean;
  readonly hasSize: boolean;
}

/** A cell as written, `down`, `up`, `single`, `double`, `-` or one `Ac/Re` a sample with `;` between; or what is wrong with it. */
export function readTableCell(written: string, place: CellPlace): TableCell | { readonly problem: TableProblemCode } {
  switch (written) {
    case 'down':
    case 'up': return written;
    case '-': return place.startRow ? { problem: 'cellNotReachable' } : 'unreachable';
    case 'single':
    case 'double': return place.startRow && (place.samples === 'multiple' || (place.samples === 'double' && written === 'single')) ? written : { problem: 'signNotAllowed' };
    default: return readPlan(written, place);
  }
}

function readPlan(written: string, { severity, pairs: expected, hasSize }: CellPlace): readonly NumberPair[] | { readonly problem: TableProblemCode } {
  const pairs: NumberPair[] = [];
  for (const pair of written.split(/\s*;\s*/)) {
    const [, ac, re] = /^(#|\d{1,4})\/(\d{1,4})$/.exec(pair) ?? [];
    if (ac === undefined || re === undefined) return { problem: 'cellUnreadable' };
    pairs.push({ ac: ac === '#' ? null : Number(ac), re: Number(re) });
  }
  const problem = wrongWithPairs(pairs, expected, severity) ?? (hasSize ? null : 'sizeMissing');
  return problem === null ? pairs : { problem };
}

function wrongWithPairs(pairs: readonly NumberPair[], expected: number, severity: Severity): TableProblemCode | null {
  if (pairs.length !== expected) return 'pairCount';
  const last = pairs.at(-1);
  if (last === undefined || last.ac === null) return 'lastCannotAccept';
  for (const [at, { ac, re }] of pairs.entries()) {
    const before = pairs[at - 1];
    if (re <= (ac ?? 0)) return 'reNotAboveAc';
    if (before !== undefined && ((ac ?? -1) < (before.ac ?? -1) || re < before.re)) return 'pairsFall';
  }
  return severity !== 'reduced' && last.re !== last.ac + 1 ? 'gapOutsideReduced' : null;
}
