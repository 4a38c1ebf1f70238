import { OutsideDomain } from '../../ground/outside-domain.ts';
import { sMethodCells } from './s-method-cells.ts';
import { variablesLetter } from './variables-letter.ts';
import type { VariablesPlan } from './variables-plan-types.ts';
import type { VariablesLetter, VariablesLevel } from './variables-letter.ts';

/** The 14 AQLs of Tables B-1 and B-3, percent nonconforming. Tightened inspection knows all but 0.04. */
export const VARIABLES_AQLS: readonly number[] = [0.04, 0.065, 0.1, 0.15, 0.25, 0.4, 0.65, 1, 1.5, 2.5, 4, 6.5, 10, 15];

/** What a variables plan is asked for. Reduced inspection (Table B-2) is missing: it could not be gathered. */
export type SMethodRequest = {
  readonly lotSize: number;
  readonly level: VariablesLevel;
  readonly aqlPercent: number;
  readonly severity: 'normal' | 'tightened';
};

/**
 * The s-method plan of a lot. An arrow is followed down its column, and sample size, k and M then belong to the letter reached.
 * Tightened inspection reads the column of the next smaller AQL.
 * @param request lot size 3 … 1 000 000 000 pieces, level, AQL (one of VARIABLES_AQLS; tightened not 0.04) and severity
 * @throws OutsideDomain for a lot size, level or AQL the tables do not know
 * @see MIL-STD-414 (1957) B, Tables A-2, B-1, B-3 (tags: s-method-cells.ts)
 * @example sMethodPlan({ lotSize: 40, level: 'IV', aqlPercent: 1, severity: 'normal' }) // D, n 5, k 1.53, M 3.32 %
 */
export function sMethodPlan(request: SMethodRequest): VariablesPlan {
  return rowPlan(request, variablesLetter(request.lotSize, request.level));
}

/**
 * The s-method plan of a lot in the row of a letter or, led by an arrow, in the first row below it that has a plan: for two AQLs on one
 * sample, which share a row.
 * @throws OutsideDomain as sMethodPlan
 */
export function rowPlan(request: SMethodRequest, from: VariablesLetter): VariablesPlan {
  const { lotSize, level, aqlPercent, severity } = request;
  const named = VARIABLES_AQLS.indexOf(aqlPercent);
  const column = severity === 'tightened' ? named - 1 : named;
  const columnAqlPercent = VARIABLES_AQLS[column];
  if (named < 0 || columnAqlPercent === undefined) {
    const known = severity === 'tightened' ? VARIABLES_AQLS.slice(1) : VARIABLES_AQLS;
    throw new OutsideDomain('aqlPercent', `one of ${known.join(', ')} on ${severity} inspection`, aqlPercent);
  }
  const startLetter = variablesLetter(lotSize, level);
  const first = sMethodCells.findIndex(([letter]) => letter === from);
  for (const [letter, tableSampleSize, kRow, mRow] of sMethodCells.slice(first)) {
    const k = kRow.split(' ')[column];
    const m = mRow.split(' ')[column];
    if (k === undefined || m === undefined || k === 'v') continue;
    const everyPiece = tableSampleSize >= lotSize;
    return {
      lotSize, level, aqlPercent, severity, startLetter, letter, sampleSize: everyPiece ? lotSize : tableSampleSize, tableSampleSize,
      k: Number(k), mPercent: Number(m), columnAqlPercent, arrow: letter === startLetter ? 'none' : 'down', everyPiece,
      tables: 'MIL-STD-414 A-2, B-1, B-3',
    };
  }
  throw new OutsideDomain('aqlPercent', `reachable from letter ${from}`, aqlPercent);
}
