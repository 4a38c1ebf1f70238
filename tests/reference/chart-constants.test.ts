import { describe, expect, it } from 'vitest';
import { c4, chartConstants, rangeMoments } from '../../shared/metrology/charts/index.ts';
import type { ChartConstants } from '../../shared/metrology/charts/index.ts';
import { readCsv } from './read-csv.ts';

const NAMES = ['A', 'A2', 'A3', 'B3', 'B4', 'B5', 'B6', 'c4', 'd2', 'd3', 'D1', 'D2', 'D3', 'D4', 'E2'] as const satisfies readonly (keyof ChartConstants)[];

describe('constants of control charts', () => {
  const table = readCsv('control-chart-constants.csv');

  it('come for every n from 2 to 25', () => expect(table.map(({ n }) => Number(n))).toEqual(Array.from({ length: 24 }, (_, at) => at + 2)));

  it.each(table)('n $n: all fifteen to the nine decimals of the table (computed there by 40-digit arithmetic; agrees with print to the third decimal)', (row) => {
    const ours = chartConstants(Number(row['n']));
    for (const name of NAMES) expect(Math.abs(ours[name] - Number(row[name])), `${name}: ${ours[name]}`).toBeLessThan(0.6e-9);
  });

  it.each(readCsv('chart-constants-scipy.csv'))('n $n: c4, d2, d3 as scipy finds them from least and greatest value', (row) => {
    const { d2, d3 } = rangeMoments(Number(row['n']));
    expect(c4(Number(row['n']))).toBeCloseTo(Number(row['c4']), 11);
    expect(d2).toBeCloseTo(Number(row['d2']), 10);
    expect(d3).toBeCloseTo(Number(row['d3']), 8);
  });

  it('agree with the closed forms of two and three values: d2 2/√π and 3/√π, d3(2) √(2 − 4/π), c4(2) √(2/π), c4(3) √π/2', () => {
    expect(rangeMoments(2).d2).toBeCloseTo(2 / Math.sqrt(Math.PI), 12);
    expect(rangeMoments(3).d2).toBeCloseTo(3 / Math.sqrt(Math.PI), 12);
    expect(rangeMoments(2).d3).toBeCloseTo(Math.sqrt(2 - 4 / Math.PI), 12);
    expect(c4(2)).toBeCloseTo(Math.sqrt(2 / Math.PI), 14);
    expect(c4(3)).toBeCloseTo(Math.sqrt(Math.PI) / 2, 14);
  });

  it.each([
    [999, 0.9997495304126594], [1000, 0.9997497811015132], [5000, 0.9999499912488124], [57_600, 0.9999956596562884], [1_000_000, 0.9999997499997812],
  ])('c4 of %i values, as a lot weighed piece by piece has, to fifteen digits (mpmath, 40 digits)', (n, known) => {
    expect(Math.abs(c4(n) / known - 1)).toBeLessThan(n < 1000 ? 1e-12 : 1e-15);
    // 1 − c4² is 1/(2n) to first order: what the limits of s rest on keeps its digits.
    expect((1 - c4(n) ** 2) * 2 * n).toBeCloseTo(1, 2);
  });

  it.each([
    { n: 3, name: 'D4' as const, printed: 2.574 }, { n: 5, name: 'D4' as const, printed: 2.114 }, { n: 5, name: 'A2' as const, printed: 0.577 }, { n: 10, name: 'd2' as const, printed: 3.078 },
    { n: 18, name: 'D4' as const, printed: 1.608 }, { n: 19, name: 'D3' as const, printed: 0.403 }, { n: 24, name: 'D3' as const, printed: 0.451 }, { n: 6, name: 'B3' as const, printed: 0.03 },
  ])('n $n: $name is the printed $printed to one unit of the third decimal (printed tables, seen and from memory)', ({ n, name, printed }) => {
    expect(Math.abs(chartConstants(n)[name] - printed)).toBeLessThanOrEqual(0.001);
  });

  it('refuse one value and more than can be worked', () => {
    expect(() => chartConstants(1)).toThrow(/n must be a whole number 2 … 1000/);
    expect(() => c4(1e9 + 1)).toThrow(/n must be/);
  });
});
