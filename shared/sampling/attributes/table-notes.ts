import { aqlColumn } from './aqls.ts';
import type { CodeLetter } from './code-letter.ts';
import type { AttributesPlan } from './single-plan.ts';

/** What belongs beside a plan on screen and paper. The words are in shared/words. */
export type TableNote =
  /** Ac and Re are from MIL-STD-105E Table II-C, with its gap; ISO 2859-1:1999 Table 2-C could not be confirmed. */
  | 'reducedFromTableIIC'
  /** Tables III were written from memory and checked by computation only. */
  | 'doubleFromMemory'
  /** Tables IV were written from memory, part of their plans seen. */
  | 'multipleFromMemory'
  /** This cell (or the sign or row that led to it) is one of those that are least certain. */
  | 'cellUnconfirmed'
  /** There is no table of reduced multiple plans; the double one was used. */
  | 'noMultipleReduced'
  /** The table asked for says to use the single (double) plan of the cell. */
  | 'useSingle'
  | 'useDouble'
  /** The plant's own copy of the table was used: nothing here vouches for its numbers. */
  | 'ownTable';

/**
 * Says how sure the table behind a plan is, most general first. A plan from the plant's own copy carries only that note and the reason it
 * takes fewer samples; a lot of one piece, which stands in no table, carries none.
 * @see docs/methods/attributes.md for what was seen and what is memory
 */
export function tableNotes(plan: AttributesPlan): readonly TableNote[] {
  if (plan.lotSize === 1) return [];
  const instead: readonly TableNote[] = plan.instead === undefined ? [] : [plan.instead];
  if (plan.tableSource !== undefined) return ['ownTable', ...instead];
  const notes: TableNote[] = [];
  if (plan.table === 'II-C') notes.push('reducedFromTableIIC');
  if (plan.samples === 'double' || plan.instead === 'useSingle') notes.push('doubleFromMemory');
  if (plan.samples === 'multiple' || plan.instead === 'useDouble') notes.push('multipleFromMemory');
  if (isUncertain(plan)) notes.push('cellUnconfirmed');
  return [...notes, ...instead];
}

const AQL_25 = aqlColumn(25);
const AQL_100 = aqlColumn(100);
const AQL_150 = aqlColumn(150);

/** The cells and rows that are the least certain of all, one by one. */
function isUncertain({ table, letter, aqlPercent, severity, ac, instead }: AttributesPlan): boolean {
  const column = aqlColumn(aqlPercent);
  const first: readonly CodeLetter[] = ['A', 'B', 'C'];
  switch (table) {
    case 'II-A': return false;
    case 'II-B': return column >= AQL_150 && (ac === 27 || ac === 41);
    case 'II-C': return (letter === 'B' && column >= AQL_25) || (letter === 'A' && column >= AQL_100) || (instead !== undefined && first.includes(letter));
    case 'III-A':
    case 'III-B': return instead === 'useDouble' && first.includes(letter);
    case 'III-C': return false;
    case 'IV-A': return false;
    case 'IV-B': return letter === 'S' && severity === 'tightened';
    case 'IV-C': return true;
  }
}
