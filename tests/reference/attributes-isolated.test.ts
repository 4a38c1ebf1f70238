import { describe, expect, it } from 'vitest';
import { limitingQualityPlan, zeroAcceptancePlan } from '../../shared/sampling/attributes/index.ts';
import { readCsv } from './read-csv.ts';

// data/limiting-quality.csv: exact rational arithmetic; plans of the kind ISO 2859-2:1985 Table A holds (which cell: from memory).

const rows = readCsv('limiting-quality.csv').map((row) => ({
  lotSize: Number(row['N']), lqPercent: Number(/([\d.]+)%/.exec(row['quantity'] ?? '')?.[1]), nonconforming: Number(row['D']),
  n: Number(/n=(\d+)/.exec(row['plan'] ?? '')?.[1]), ac: Number(/Ac=(\d+)/.exec(row['plan'] ?? '')?.[1]), risk: Number(row['value']),
}));

describe('plans by limiting quality', () => {
  it.each(rows)('N $lotSize, LQ $lqPercent %, Ac $ac: n $n is the smallest at the risk $risk it has', ({ lotSize, lqPercent, n, ac, risk }) => {
    const consumerRisk = risk * (1 + 1e-9); // the printed value has twelve digits
    const plan = limitingQualityPlan({ lotSize, lqPercent, consumerRisk, ac });
    expect(plan).toMatchObject({ kind: 'limitingQuality', sampleSize: n, ac, re: ac + 1, consumerRisk });
    expect(Math.abs(plan.riskAtLq / risk - 1)).toBeLessThan(1e-10);
  });

  it('reads all 43 rows', () => expect(rows).toHaveLength(43));
});

/** C(a, b) in whole numbers, apart from the code under test. */
function choose(a: number, b: number): bigint {
  if (b < 0 || b > a) return 0n;
  let product = 1n;
  for (let i = 1; i <= b; i += 1) product = (product * BigInt(a - b + i)) / BigInt(i);
  return product;
}

/** The chance of ac or fewer, as a fraction of whole numbers. */
function chance(ac: number, n: number, lotSize: number, nonconforming: number): { num: bigint; den: bigint } {
  let num = 0n;
  for (let found = 0; found <= ac; found += 1) num += choose(nonconforming, found) * choose(lotSize - nonconforming, n - found);
  return { num, den: choose(lotSize, n) };
}
const atMost = ({ num, den }: { num: bigint; den: bigint }, thousandths: number): boolean => num * 1000n <= den * BigInt(thousandths);
const atLeast = ({ num, den }: { num: bigint; den: bigint }, thousandths: number): boolean => num * 1000n >= den * BigInt(thousandths);

describe('every lot of 1 to 40 pieces, by trying every n in whole numbers', () => {
  const lots = Array.from({ length: 40 }, (_, at) => at + 1);
  it.each([0.5, 1, 2.5, 8, 20, 31.5, 100])('LQ %d %%: zero acceptance takes the smallest n', (lqPercent) => {
    for (const lotSize of lots) {
      const nonconforming = Math.ceil((lotSize * lqPercent * 10) / 1000);
      for (const thousandths of [10, 50, 100, 200]) {
        const n = Array.from({ length: lotSize }, (_, at) => at + 1).find((size) => atMost(chance(0, size, lotSize, nonconforming), thousandths));
        const plan = zeroAcceptancePlan({ lotSize, lqPercent, consumerRisk: thousandths / 1000 });
        expect([lotSize, plan.sampleSize, plan.ac, plan.everyPiece]).toEqual([lotSize, n, 0, n === lotSize]);
      }
    }
  });

  it.each([5, 20, 31.5, 60, 100])('LQ %d %%: the plan has the smallest Ac that takes good lots nine times in ten, and its smallest n', (lqPercent) => {
    for (const lotSize of lots) {
      const nonconforming = Math.ceil((lotSize * lqPercent * 10) / 1000);
      const good = Math.floor((lotSize * lqPercent * 10) / 10_000);
      for (const thousandths of [10, 50, 100]) {
        const found: { n: number; ac: number }[] = [];
        for (let ac = 0; ac < nonconforming && found.length === 0; ac += 1) {
          let n = ac + 1;
          while (!atMost(chance(ac, n, lotSize, nonconforming), thousandths)) n += 1;
          if (atLeast(chance(ac, n, lotSize, good), 900)) found.push({ n, ac });
        }
        const plan = limitingQualityPlan({ lotSize, lqPercent, consumerRisk: thousandths / 1000 });
        expect([lotSize, { n: plan.sampleSize, ac: plan.ac }]).toEqual([lotSize, found[0]]);
      }
    }
  });
});

describe('large lots', () => {
  it.each([
    // By hand: ln C(N − D, n) − ln C(N, n) = Σ ln(1 − D/(N − i)), i < n, added up one by one.
    { lotSize: 1_000_000, lqPercent: 0.5, consumerRisk: 0.1 }, { lotSize: 1_000_000, lqPercent: 0.01, consumerRisk: 0.05 }, { lotSize: 35_000, lqPercent: 0.8, consumerRisk: 0.01 },
  ])('N $lotSize, LQ $lqPercent %: zero acceptance agrees with a sum over the pieces', ({ lotSize, lqPercent, consumerRisk }) => {
    const nonconforming = Math.round((lotSize * lqPercent) / 100);
    let [n, log] = [0, 0];
    while (log > Math.log(consumerRisk)) { log += Math.log1p(-nonconforming / (lotSize - n)); n += 1; }
    expect(zeroAcceptancePlan({ lotSize, lqPercent, consumerRisk }).sampleSize).toBe(n);
  });

  it('counts whole pieces at the limiting quality in decimal: 0.8 % of 35 000 is 280, not 281', () => {
    const plan = limitingQualityPlan({ lotSize: 35_000, lqPercent: 0.8, consumerRisk: 0.1, ac: 279 });
    expect(plan.ac).toBe(279);
    expect(() => limitingQualityPlan({ lotSize: 35_000, lqPercent: 0.8, consumerRisk: 0.1, ac: 280 })).toThrow(/ac must be a whole number 0 … 279/);
  });
});
