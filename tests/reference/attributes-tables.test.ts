import { describe, expect, it } from 'vitest';
import { AQLS, INSPECTION_LEVELS, codeLetter, masterRows, singlePlan } from '../../shared/sampling/attributes/index.ts';
import type { Cell, Severity } from '../../shared/sampling/attributes/index.ts';
import { readCsv, readHeads } from './read-csv.ts';

// Sources and tags of the three tables and of Table I: data/README.md.

describe('Table I, sample size code letters (MIL-STD-105E = ISO 2859-1:1999 Table 1; seen)', () => {
  for (const row of readCsv('code-letters.csv')) {
    const least = Number(row['lot_min']);
    const most = row['lot_max'] === '' ? 1_000_000_000 : Number(row['lot_max']);
    it.each(INSPECTION_LEVELS.map((level) => ({ level, letter: row[level] })))(
      `lots of ${least} to ${most} at level $level have letter $letter`,
      ({ level, letter }) => {
        expect([codeLetter(least, level), codeLetter(most, level)]).toEqual([letter, letter]);
      },
    );
  }
});

const TABLES: readonly { severity: Severity; file: string; source: string }[] = [
  { severity: 'normal', file: 'single-normal.csv', source: 'MIL-STD-105E Table II-A = ISO 2859-1:1999 Table 2-A' },
  { severity: 'tightened', file: 'single-tightened.csv', source: 'MIL-STD-105E Table II-B = ISO 2859-1:1999 Table 2-B' },
  { severity: 'reduced', file: 'single-reduced.csv', source: 'MIL-STD-105E Table II-C' },
];

describe.each(TABLES)('single sampling, $severity ($source)', ({ severity, file }) => {
  const printed = readCsv(file);
  const columns = readHeads(file).slice(2);

  it('has the 26 printed AQL columns', () => {
    expect(columns.map(Number)).toEqual(AQLS);
  });

  it('has every printed letter with its sample size, in order', () => {
    expect(masterRows(severity).map(({ letter, sampleSize }) => [letter, sampleSize])).toEqual(
      printed.map((row) => [row['code_letter'], Number(row['sample_size'])]),
    );
  });

  it.each(printed)('holds all 26 cells of row $code_letter', (row) => {
    const ours = masterRows(severity).find(({ letter }) => letter === row['code_letter']);
    expect(ours?.cells.map(written)).toEqual(columns.map((aql) => row[aql]));
  });

  it('gives, for every lot size range, level and AQL, the plan the printed arrows lead to', () => {
    let looked = 0;
    for (const { lot_max: lotMax = '', ...letters } of readCsv('code-letters.csv')) {
      const lotSize = lotMax === '' ? 600_000 : Number(lotMax);
      for (const level of INSPECTION_LEVELS) {
        for (const aql of columns) {
          const plan = singlePlan({ lotSize, level, aqlPercent: Number(aql), severity });
          const end = followed(printed, letters[level] ?? '', aql);
          const [ac, re] = (end.cell.split('/')).map(Number);
          const where = `lot ${lotSize} level ${level} AQL ${aql}`;
          expect({ where, letter: plan.letter, ac: plan.ac, re: plan.re, n: plan.tableSampleSize, arrow: plan.arrow }).toEqual(
            { where, letter: end.letter, ac, re, n: end.n, arrow: end.arrow },
          );
          expect(plan.sampleSize, where).toBe(Math.min(end.n, lotSize));
          expect(plan.everyPiece, where).toBe(end.n >= lotSize);
          looked += 1;
        }
      }
    }
    expect(looked).toBe(15 * 7 * 26);
  });
});

function written(cell: Cell): string {
  if (cell === 'unreachable') return '-';
  return typeof cell === 'string' ? cell : `${cell.ac}/${cell.re}`;
}

/** Follows the printed arrows, apart from the code under test. */
function followed(printed: Record<string, string>[], startLetter: string, aql: string) {
  let at = printed.findIndex((row) => row['code_letter'] === startLetter);
  const first = printed[at]?.[aql] ?? '';
  while (['up', 'down'].includes(printed[at]?.[aql] ?? '')) at += first === 'down' ? 1 : -1;
  const row = printed[at] ?? {};
  return { letter: row['code_letter'], n: Number(row['sample_size']), cell: row[aql] ?? '', arrow: first.includes('/') ? 'none' : first };
}
