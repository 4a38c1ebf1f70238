import { describe, expect, it } from 'vitest';
import { normalBelow } from '../../shared/sampling/chance/index.ts';
import { judgeVariables, normality, percentNonconforming, qualityAtPercent, shapiroWilk, sigmaMethodPlan, sigmaPercentNonconforming, smallestVariablesPlan, VARIABLES_LEVELS, variablesAcceptance, variablesPlan } from '../../shared/sampling/variables/index.ts';
import { readCsv } from './read-csv.ts';

const number = (text: string | undefined): number => Number(text ?? Number.NaN);
/** "n=5;k=1.53" as numbers by name. */
const inputsOf = (text: string | undefined): Record<string, number> => Object.fromEntries((text ?? '').split(';').map((part) => [part.split('=')[0] ?? '', number(part.split('=')[1])]));
const lotOf = new Map(readCsv('code-letters-variables.csv').filter(({ standard }) => standard === 'MIL-STD-414')
  .flatMap((row) => VARIABLES_LEVELS.map((level) => [row[level], { lotSize: Number(row['lot_to'] || 6e5), level }] as const)));
function lotWith(letter: string | undefined) {
  const lot = lotOf.get(letter);
  if (lot === undefined) throw new Error(`no lot has letter ${letter}`);
  return lot;
}

describe('operating characteristic, one limit (exact-plan-checks.csv: computed with 25 digits and more)', () => {
  const rows = readCsv('chance-exact-plan-checks.csv').filter(({ kind }) => kind === 'oc_s_one_sided' || kind === 'oc_sigma_one_sided');

  it('agrees with all 317 points, s unknown and σ known, to 1e-10', () => {
    expect(rows).toHaveLength(317);
    for (const { kind, inputs, value } of rows) {
      const { n = 0, k = 0, p = 0 } = inputsOf(inputs);
      const ours = variablesAcceptance({ sampleSize: n, k, mPercent: 50, ...(kind === 'oc_sigma_one_sided' ? { method: 'sigma', sigma: 1 } : {}) }, { p });
      expect(Math.abs(ours / number(value) - 1), `${kind} ${inputs}: ${ours}`).toBeLessThanOrEqual(1e-10);
    }
  });

  it('has, in each of the 195 cells of Table B-1, the acceptance at its AQL that the file works out', () => {
    for (const row of readCsv('k-values-mil-std-414.csv')) {
      const ours = variablesAcceptance({ sampleSize: number(row['n']), k: number(row['k']), mPercent: 50 }, { p: number(row['aql_normal_pct']) / 100 });
      expect(Math.abs(ours - number(row['Pa_at_aql_normal'])), `${row['code_letter_or_level']} ${row['aql_normal_pct']}`).toBeLessThanOrEqual(6e-11);
      expect(Math.abs(ours - number(row['row_constant_Pa']))).toBeLessThanOrEqual(0.0055); // the largest departure the file names
    }
  });
});

describe('operating characteristic, two limits, M form', () => {
  it.each(readCsv('variables-exact-plan-checks.csv').filter(({ kind }) => kind === 'oc_s_two_sided_form2'))('$inputs gives $value to 1e-9 (quadrature, trusted to 8 or 9 digits)', ({ inputs, value }) => {
    const { n = 0, M = 0, mu = 0, sigma = 0 } = inputsOf(inputs);
    const [lower, upper] = [normalBelow((-1 - mu) / sigma), normalBelow((mu - 1) / sigma)];
    expect(Math.abs(variablesAcceptance({ sampleSize: n, k: 1, mPercent: 100 * M }, { p: lower + upper, lowerShare: lower / (lower + upper) }) - number(value))).toBeLessThanOrEqual(1e-9);
  });

  it.each(readCsv('variables-two-limits.csv'))('n $n, M $M_lower and $M_upper, mean $mu, σ $sigma gives $Pa to 1e-11 (mpmath, the other way round: scripts/variables-two-limits.py)', (row) => {
    const [lower, upper, mLower, mUpper] = [number(row['p_lower']), number(row['p_upper']), 100 * number(row['M_lower']), 100 * number(row['M_upper'])];
    const separate = { lower: { aqlPercent: 1, k: 1, mPercent: mLower }, upper: { aqlPercent: 1, k: 1, mPercent: mUpper } };
    const plan = { sampleSize: number(row['n']), k: 1, mPercent: Math.max(mLower, mUpper), ...(mLower === mUpper ? {} : { separate }) };
    const ours = variablesAcceptance(plan, { p: lower + upper, lowerShare: lower / (lower + upper) });
    expect(Math.abs(ours / number(row['Pa']) - 1), String(ours)).toBeLessThanOrEqual(1e-11);
  });
});

describe('smallest plan through two points (exact-plan-checks.csv: computed, noncentral t with 25 digits)', () => {
  const rows = readCsv('variables-exact-plan-checks.csv').filter(({ kind }) => kind === 'design_s_unknown' || kind === 'design_sigma_known');
  it.each(rows)('$kind $inputs: $quantity $value', ({ kind, inputs, quantity, value }) => {
    const { AQL: p1 = 0, alpha = 0, LQ: p2 = 0, beta = 0 } = inputsOf(inputs);
    const method = kind === 'design_s_unknown' ? 's' : 'sigma';
    const found = smallestVariablesPlan({ p1, producerRisk: alpha, p2, consumerRisk: beta, method });
    if ('none' in found) throw new Error('no plan');
    const expected = number(value);
    const name = quantity ?? '';
    if (name === 'n') expect(found.n).toBe(expected);
    else if (name.startsWith('n_real')) expect(found.n).toBe(Math.ceil(expected));
    else if (name.startsWith('n_approx')) expect(Math.abs(found.n / expected - 1)).toBeLessThan(0.1);
    else if (name.startsWith('k_min')) expect(found.k).toBeGreaterThanOrEqual(expected - 1e-9);
    else if (name.startsWith('k_max')) expect(found.k).toBeLessThanOrEqual(expected + 1e-9);
    else if (name.startsWith('k_common')) expect(Math.abs(found.k - expected)).toBeLessThan(0.02);
    else {
      const k = number(/k=([\d.]+)/.exec(name)?.[1]);
      const p = name.includes('AQL') ? p1 : p2;
      expect(Math.abs(variablesAcceptance({ sampleSize: found.n, k, mPercent: 50 }, { p }) / expected - 1)).toBeLessThanOrEqual(1e-10);
    }
  });
  it('is more than 60 rows', () => expect(rows.length).toBeGreaterThan(60));
});

describe('known σ', () => {
  const cells = readCsv('variables-known-sigma.csv');
  it.each(cells)('$code_letter at AQL $aql_normal_pct: n $n, k $k, as MIL-STD-414 Table D-1 ($k_provenance)', (row) => {
    const plan = sigmaMethodPlan({ ...lotWith(row['code_letter']), aqlPercent: number(row['aql_normal_pct']), severity: 'normal' });
    expect(plan).toMatchObject({ letter: row['code_letter'], tableSampleSize: number(row['n']), k: number(row['k']), method: 'sigma' });
    if (row['M_pct_form2'] !== '') expect(plan.mPercent).toBe(number(row['M_pct_form2']));
  });
  it('are the 33 cells of Table D-1 that are remembered', () => expect(cells).toHaveLength(33));

  it('estimates the percent nonconforming as in every row of percent-nonconforming.csv (computed), to 1e-12', () => {
    for (const row of readCsv('variables-percent-known-sigma.csv')) {
      expect(Math.abs(sigmaPercentNonconforming(number(row['Q']), number(row['n'])) / (100 * number(row['phat_sigma_method_exact'])) - 1), `n ${row['n']} Q ${row['Q']}`).toBeLessThanOrEqual(1e-12);
    }
  });

  const yieldPoints = [62_500, 60_500, 68_000, 59_000, 65_500, 62_000, 61_000, 69_000, 58_000, 64_500];
  const plan = variablesPlan({ lotSize: 500, level: 'IV', aqlPercent: 1.5, severity: 'normal', method: 'sigma', sigma: 3000 });
  it('MIL-STD-414 Example D-1 (memory, confirmed by computation): I, n 10, k 1.70; Q 1.667 < 1.70: not accepted', () => {
    expect(plan).toMatchObject({ letter: 'I', sampleSize: 10, k: 1.7, mPercent: 3.63 });
    const verdict = judgeVariables({ values: yieldPoints, lower: 58_000, plan });
    expect(verdict).toMatchObject({ mean: 63_000, method: 'sigma', sigma: 3000, form: 'k', limit: 1.7, accepted: false, outside: 0 });
    expect(verdict.statistic).toBeCloseTo(5 / 3, 12);
  });
  it('Example D-2: M form, p 3.947417 % (3.92 at the rounded Q 1.76) against 3.63 %: not accepted', () => {
    const verdict = judgeVariables({ values: yieldPoints, lower: 58_000, plan: { ...plan, form: 'M' } });
    expect(verdict).toMatchObject({ form: 'M', limit: 3.63, accepted: false });
    expect(verdict.statistic).toBeCloseTo(3.947417, 5);
    expect(percentOfRounded(1.76)).toBeCloseTo(3.92039, 5);
  });
  it('Example D-3: with an upper limit of 67 000, p 7.994275 % above: not accepted', () => {
    const verdict = judgeVariables({ values: yieldPoints, lower: 58_000, upper: 67_000, plan });
    expect(verdict).toMatchObject({ form: 'M', accepted: false });
    expect(verdict.pUpperPercent).toBeCloseTo(7.994275, 5);
    expect(verdict.statistic).toBeCloseTo(3.947417 + 7.994275, 5);
    expect(percentOfRounded(1.41)).toBeCloseTo(7.926984, 5);
  });
  it('ISO 3951-1 σ example (memory, confirmed by computation): n 11, k 1.613, σ 21, lower limit 400: Q 1.354978: not accepted', () => {
    const values = [431, 417, 469, 407, 450, 452, 427, 411, 429, 420, 400];
    const verdict = judgeVariables({ values, lower: 400, plan: { sampleSize: 11, k: 1.613, mPercent: 10, method: 'sigma', sigma: 21 } });
    expect(verdict.statistic).toBeCloseTo(1.354978, 6);
    expect(verdict.accepted).toBe(false);
  });
});

/** The standard multiplies Q by v = √(n/(n − 1)) before it looks the percent up. */
function percentOfRounded(timesV: number): number {
  return sigmaPercentNonconforming(timesV / Math.sqrt(10 / 9), 10);
}

it('MIL-STD-414 Example B-4 (memory, confirmed by computation): AQL 1 % above and 2.5 % below, all three conditions kept', () => {
  const plan = variablesPlan({ lotSize: 40, level: 'IV', aqlPercent: 1, severity: 'normal', separate: { lowerAqlPercent: 2.5, upperAqlPercent: 1 } });
  expect(plan).toMatchObject({ letter: 'D', sampleSize: 5, separate: { lower: { mPercent: 9.8 }, upper: { mPercent: 3.32 } } });
  const verdict = judgeVariables({ values: [197, 188, 184, 205, 201], lower: 180, upper: 209, plan });
  expect(verdict).toMatchObject({ form: 'M', accepted: true, limit: 3.32, separate: { shown: 'upper', lower: { accepted: true, limit: 9.8 }, upper: { accepted: true }, together: { accepted: true, limit: 9.8 } } });
  expect(verdict.separate?.together?.statistic).toBeCloseTo(2.799209, 6);
});

it('the Q that M stands for gives M back (inverse of the estimate, n 3 … 200)', () => {
  for (const n of [3, 4, 5, 7, 10, 50, 200]) for (const percent of [0.01, 1, 7.59, 40.47, 50, 90]) {
    expect(percentNonconforming(qualityAtPercent(percent, n, 's'), n) / percent).toBeCloseTo(1, 9);
    expect(sigmaPercentNonconforming(qualityAtPercent(percent, n, 'sigma'), n) / percent).toBeCloseTo(1, 9);
  }
});

describe('Shapiro–Wilk (scipy 1.17.1: scripts/variables-normality.py)', () => {
  it.each(readCsv('variables-normality.csv'))('$set, n $n: W $W, p $p', ({ W, p, values }) => {
    const readings = (values ?? '').split(' ').map(Number);
    const { statistic, pValue } = shapiroWilk(readings);
    expect(Math.abs(statistic - number(W))).toBeLessThanOrEqual(1e-7);
    expect(Math.abs(pValue - number(p))).toBeLessThanOrEqual(2e-6);
    if (number(p) > 1e-12) expect(Math.abs(pValue / number(p) - 1)).toBeLessThanOrEqual(1e-4);
    expect(normality(readings)).toMatchObject({ statistic, pValue, test: 'Shapiro–Wilk' });
  });
});
