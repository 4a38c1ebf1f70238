import { OutsideDomain } from '../../ground/outside-domain.ts';

/**
 * The 26 acceptance quality limits of the master tables: percent nonconforming up to 10, above 10 only as nonconformities per 100
 * items. Source: column heads of MIL-STD-105E Tables II = ISO 2859-1:1999 Tables 2.
 */
export const AQLS: readonly number[] = [
  0.01, 0.015, 0.025, 0.04, 0.065, 0.1, 0.15, 0.25, 0.4, 0.65, 1, 1.5, 2.5, 4, 6.5, 10, 15, 25, 40, 65, 100, 150, 250, 400, 650, 1000,
];

/** Is this one of the 26 values a plan may be indexed by? */
export function isAql(value: number): boolean {
  return AQLS.includes(value);
}

/**
 * The column of an AQL in every master table, 0 … 25.
 * @throws OutsideDomain for a value between the columns: the tables are not interpolated
 */
export function aqlColumn(aqlPercent: number): number {
  const column = AQLS.indexOf(aqlPercent);
  if (column < 0) throw new OutsideDomain('aqlPercent', `one of ${AQLS.join(', ')}`, aqlPercent);
  return column;
}
