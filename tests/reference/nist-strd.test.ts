import { describe, expect, it } from 'vitest';
import { emptyRunning, merge, summarise, summaryOf, takeInto } from '../../shared/metrology/summary/index.ts';
import type { Running, Summary } from '../../shared/metrology/summary/index.ts';
import { readCsv } from './read-csv.ts';

/**
 * NIST StRD, univariate summary statistics: certified mean and standard deviation (15 digits). Data: data/README.md; NumAcc2 to 4 from
 * their definition. `digits` is what double precision allows for s: Mavro and Michelso have decimals that are not doubles, NumAcc3 and 4
 * lose 9.5 and 8.3 digits' worth already in writing the inputs down.
 */
const SETS = [
  { name: 'Lottery', n: 218, mean: 518.95871559633, s: 291.699727470969, digits: 14, running: 13.5 },
  { name: 'Lew', n: 200, mean: -177.435, s: 277.332168044316, digits: 14, running: 13.5 },
  { name: 'Mavro', n: 50, mean: 2.001856, s: 0.000429123454003053, digits: 13, running: 11.5 },
  { name: 'Michelso', n: 100, mean: 299.8524, s: 0.0790105478190518, digits: 13.5, running: 12 },
  { name: 'NumAcc1', n: 3, mean: 10000002, s: 1, digits: 15, running: 15 },
  { name: 'NumAcc2', n: 1001, mean: 1.2, s: 0.1, digits: 14, running: 14 },
  { name: 'NumAcc3', n: 1001, mean: 1000000.2, s: 0.1, digits: 9.4, running: 9.4 },
  { name: 'NumAcc4', n: 1001, mean: 10000000.2, s: 0.1, digits: 8.2, running: 8.2 },
];

const file = readCsv('nist-strd-data.csv');

describe.each(SETS)('NIST StRD $name', ({ name, n, mean, s, digits, running }) => {
  const values = valuesOf(name);

  it(`has its ${n} values`, () => expect(values).toHaveLength(n));

  it(`gives the certified mean to 14.5 digits and SD to ${digits}`, () => {
    const summary = summarise(values);
    expect(agreeing(summary.mean, mean)).toBeGreaterThanOrEqual(14.5);
    expect(agreeing(summary.s ?? Number.NaN, s)).toBeGreaterThanOrEqual(digits);
  });

  it(`gives them value by value (SD to ${running} digits), and merged from three parts`, () => {
    const third = Math.ceil(n / 3);
    const parts = [values.slice(0, third), values.slice(third, 2 * third), values.slice(2 * third)].map(takenIn);
    for (const summary of [summaryOf(takenIn(values)), summaryOf(parts.reduce(merge))]) {
      expect(summary.n).toBe(n);
      expect(agreeing(summary.mean, mean)).toBeGreaterThanOrEqual(13.5);
      expect(agreeing(summary.s ?? Number.NaN, s)).toBeGreaterThanOrEqual(running);
      expect([summary.min, summary.max]).toEqual([Math.min(...values), Math.max(...values)]);
    }
  });
});

function valuesOf(name: string): number[] {
  const stretched = (first: number, low: number, high: number) => [first, ...Array.from({ length: 500 }, () => [low, high]).flat()];
  if (name === 'NumAcc2') return stretched(1.2, 1.1, 1.3);
  if (name === 'NumAcc3') return stretched(1000000.2, 1000000.1, 1000000.3);
  if (name === 'NumAcc4') return stretched(10000000.2, 10000000.1, 10000000.3);
  return file.filter(({ dataset }) => dataset === name).map(({ value }) => Number(value));
}

function takenIn(values: readonly number[]): Running {
  return values.reduce(takeInto, emptyRunning());
}

/** Digits that agree: −log10 of the relative difference; 16 when there is none. */
function agreeing(ours: number, certified: number): number {
  return ours === certified ? 16 : -Math.log10(Math.abs(ours / certified - 1));
}

describe('a summary', () => {
  it('has no s for one reading, and s = 0 exactly for equal ones', () => {
    expect(summarise([14.62])).toEqual<Summary>({ n: 1, mean: 14.62, s: null, min: 14.62, max: 14.62, range: 0 });
    expect(summarise(Array.from({ length: 7 }, () => 0.1))).toEqual<Summary>({ n: 7, mean: 0.1, s: 0, min: 0.1, max: 0.1, range: 0 });
    expect(summaryOf(takenIn([0.1, 0.1, 0.1]))).toMatchObject({ mean: 0.1, s: 0 });
  });

  it('refuses no readings and readings that are no numbers', () => {
    expect(() => summarise([])).toThrow(/values must be one reading or more/);
    expect(() => summarise([1, Number.NaN])).toThrow(/values\[1\] must be a finite number/);
    expect(() => summaryOf(emptyRunning())).toThrow(/running/);
  });
});
