import { describe, expect, it } from 'vitest';
import { twoPointDouble, twoPointSequential, twoPointSingle, twoPointVariables } from '../../shared/sampling/design/index.ts';
import { acceptance } from '../../shared/sampling/risk/index.ts';
import type { RiskModel } from '../../shared/sampling/risk/index.ts';
import { pieceByPiece } from '../property/sampling/design-walk.ts';
import { readCsv } from './read-csv.ts';

type Row = Record<string, string>;
const modelOf = (row: Row): RiskModel => {
  const kind = row['model'];
  if (kind === 'hypergeometric') return { kind, lotSize: Number(row['lot_size']) };
  if (kind === 'binomial' || kind === 'poisson') return { kind };
  throw new Error(`no model ${kind}`);
};
const askedBy = (row: Row) => ({ p1: Number(row['p1']), producerRisk: Number(row['producer_risk']), p2: Number(row['p2']), consumerRisk: Number(row['consumer_risk']), model: modelOf(row) });
/** Relative, and beside it absolute for what the other route found by 1 − P. */
const near = (ours: number, theirs: string | undefined) => expect(Math.abs(ours - Number(theirs))).toBeLessThanOrEqual(1e-10 * Number(theirs) + 1e-14);

describe('smallest plans, found by trying every plan with scipy 1.17.1 (data/design-points.csv, scripts/design-points.py)', () => {
  const rows = readCsv('design-points.csv');
  it('are 65 single and 64 double ones', () => expect([rows.filter(({ samples }) => samples === 'single').length, rows.filter(({ samples }) => samples === 'double').length]).toEqual([65, 64]));

  it.each(rows.filter(({ samples }) => samples === 'single'))('single, $model $lot_size, $p1/$producer_risk to $p2/$consumer_risk: n $n1, Ac $ac1', (row) => {
    const plan = twoPointSingle(askedBy(row));
    if ('none' in plan) throw new Error(`none: ${plan.none}`);
    expect([plan.n, plan.ac, plan.re]).toEqual([Number(row['n1']), Number(row['ac1']), Number(row['ac1']) + 1]);
    near(plan.producerRisk, row['producer_got']);
    near(plan.consumerRisk, row['consumer_got']);
  });

  it.each(rows.filter(({ samples }) => samples === 'double'))('double, $model $lot_size, n2 = $ratio n1, $p1/$producer_risk to $p2/$consumer_risk: $n1, $n2; Ac $ac1, $ac2', (row) => {
    const plan = twoPointDouble({ ...askedBy(row), ratio: Number(row['ratio']) });
    if (row['n1'] === '') return void expect(plan).toHaveProperty('none');
    if ('none' in plan) throw new Error(`none: ${plan.none}`);
    const [n1, ac1, n2, ac2] = ['n1', 'ac1', 'n2', 'ac2'].map((name) => Number(row[name]));
    expect(plan.stages).toEqual([{ sampleSize: n1, ac: ac1, re: Number(ac2) + 1 }, { sampleSize: n2, ac: ac2, re: Number(ac2) + 1 }]);
    near(plan.producerRisk, row['producer_got']);
    near(plan.consumerRisk, row['consumer_got']);
    expect(plan.averageAtP1 / Number(row['average_at_p1']) - 1).toBeCloseTo(0, 10);
  });
});

describe('operating ratios of single plans (Cameron, Industrial Quality Control 9 (1952) 37, α 0.05, β 0.10; memory, confirmed by computation)', () => {
  const p1 = 1e-5; // so small a quality that n comes in fine steps
  it.each([
    [1, 10.946, 0.355], [2, 6.509, 0.818], [3, 4.890, 1.366], [4, 4.057, 1.970], [5, 3.549, 2.613], [6, 3.206, 3.286], [7, 2.957, 3.981], [8, 2.768, 4.695], [9, 2.618, 5.426], [10, 2.497, 6.169],
  ])('Ac %d: just over p2/p1 = %d it serves, with n·p1 up to %d; just under it one more is asked for', (ac, ratio, most) => {
    const design = (p2: number) => twoPointSingle({ p1, producerRisk: 0.05, p2, consumerRisk: 0.1, model: { kind: 'poisson' } });
    const over = design(p1 * (ratio + 0.001));
    expect(over).toMatchObject({ ac });
    expect('n' in over ? over.n * p1 : Number.NaN).toBeCloseTo(most, 2);
    expect(design(p1 * (ratio - 0.001))).toMatchObject({ ac: ac + 1 });
  });
});

describe('NIST/SEMATECH e-Handbook 6.2.4, a double plan for p1 0.01, α 0.05, p2 0.05, β 0.10 (seen; by Poisson tables)', () => {
  const model: RiskModel = { kind: 'poisson' };
  const points = { p1: 0.01, producerRisk: 0.05, p2: 0.05, consumerRisk: 0.1, model };
  const nist = Object.fromEntries(readCsv('design-nist.csv').map(({ id, value }) => [id, Number(value)]));
  const stages = (n1: number, n2: number, [ac1, ac2]: readonly [number, number]) => ({ stages: [{ sampleSize: n1, ac: ac1, re: ac2 + 1 }, { sampleSize: n2, ac: ac2, re: ac2 + 1 }] });
  const handbook = { equal: [nist['N1905'] ?? 0, nist['N1906'] ?? 0], twice: [nist['N1909'] ?? 0, nist['N1910'] ?? 0] } as const;

  it('n1 = n2 = 116 holds α for Ac 2 and 4, to the rounding of a table with n·p1 in two decimals', () => {
    expect(handbook.equal).toEqual([2, 4]);
    const n1 = nist['N1903'] ?? 0;
    expect(acceptance(stages(n1, n1, handbook.equal), model, 0.01)).toBeCloseTo(0.95, 2);
  });

  it('n1 = n2 = 108 holds β for Ac 2 and 4, to the same rounding', () => {
    const n1 = nist['N1904'] ?? 0;
    expect(acceptance(stages(n1, n1, handbook.equal), model, 0.05)).toBeCloseTo(0.1, 2);
  });

  it('ours needs no larger samples than the handbook, and meets both points where the handbook meets one', () => {
    for (const [ratio, least] of [[1, nist['N1904'] ?? 0], [2, nist['N1907'] ?? 0]] as const) {
      const plan = twoPointDouble({ ...points, ratio });
      if ('none' in plan) throw new Error(plan.none);
      expect(plan.stages[0].sampleSize).toBeLessThanOrEqual(least);
      expect(plan.producerRisk).toBeLessThanOrEqual(0.05);
      expect(plan.consumerRisk).toBeLessThanOrEqual(0.1);
    }
    expect(nist['N1908']).toBe(2 * (nist['N1907'] ?? 0));
  });
});

describe('NIST/SEMATECH e-Handbook 6.2.6, sequential: p1 0.01, α 0.05, p2 0.10, β 0.10 (printed constants memory, confirmed by computation)', () => {
  const design = twoPointSequential({ p1: 0.01, producerRisk: 0.05, p2: 0.1, consumerRisk: 0.1, lotSize: 10_000 });
  it('has the lines 0.0397 n − 0.939 and 0.0397 n + 1.205', () => {
    expect([design.plan.slope.toFixed(4), design.plan.h1.toFixed(3), design.plan.h2.toFixed(3)]).toEqual(['0.0397', '0.939', '1.205']);
  });
  it('gives the exact risks of the cut-off plan (another way: piece by piece)', () => {
    for (const [p, risk, average] of [[0.01, design.producerRisk, design.averageAtP1], [0.1, 1 - design.consumerRisk, design.averageAtP2]] as const) {
      const walked = pieceByPiece(design.plan, p);
      expect(walked.rejected / risk - 1).toBeCloseTo(0, 10);
      expect(walked.average / average - 1).toBeCloseTo(0, 10);
    }
  });
});

describe('variables plans through two points (exact-plan checks by mpmath and scipy: data/design-variables.csv)', () => {
  const rows = readCsv('design-variables.csv');
  const designs = [...new Set(rows.map(({ kind, inputs }) => `${kind}|${inputs}`))];

  it('are 14 with s and 14 with σ', () => expect(designs).toHaveLength(28));

  it.each(designs)('%s', (design) => {
    const [kind = '', inputs = ''] = design.split('|');
    const of = Object.fromEntries(inputs.split(';').map((part) => part.split('=')));
    const method = kind === 'design_s_unknown' ? 's' : 'sigma';
    const plan = twoPointVariables({ p1: Number(of['AQL']), producerRisk: Number(of['alpha']), p2: Number(of['LQ']), consumerRisk: Number(of['beta']), method });
    if ('none' in plan) throw new Error(plan.none);
    expect(plan.leastK).toBeLessThanOrEqual(plan.k);
    expect(plan.k).toBeLessThanOrEqual(plan.mostK);
    let checked = 0;
    for (const { quantity = '', value = '' } of rows.filter((row) => row['kind'] === kind && row['inputs'] === inputs)) {
      checked += 1;
      if (quantity === 'n') expect(plan.n).toBe(Number(value));
      else if (quantity.startsWith('k_min')) expect(plan.leastK / Number(value) - 1).toBeCloseTo(0, 12);
      else if (quantity.startsWith('k_max')) expect(plan.mostK / Number(value) - 1).toBeCloseTo(0, 12);
      else if (quantity === 'n_real') expect(plan.n).toBe(Math.ceil(Number(value)));
      else if (quantity === `Pa at AQL for n and k=${plan.k}`) expect((1 - plan.producerRisk) / Number(value) - 1).toBeCloseTo(0, 12);
      else if (quantity === `Pa at LQ for n and k=${plan.k}`) expect(plan.consumerRisk / Number(value) - 1).toBeCloseTo(0, 10);
      else if (quantity.startsWith('k_common')) expect(method === 'sigma' && Number(value) > plan.leastK && Number(value) < plan.mostK).toBe(true);
      else if (quantity.startsWith('n_approx')) expect(Math.abs(plan.n - Number(value))).toBeLessThan(0.05 * plan.n); // Wallis: an approximation
      else if (!quantity.startsWith('Pa at')) throw new Error(`nothing checks ${quantity}`);
    }
    expect(checked).toBeGreaterThan(0);
  });
});
