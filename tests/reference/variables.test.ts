import { describe, expect, it } from 'vitest';
import { judgeVariables, percentNonconforming, sMethodPlan, variablesLetter, VARIABLES_LEVELS } from '../../shared/sampling/variables/index.ts';
import { readCsv } from './read-csv.ts';

const letters = readCsv('code-letters-variables.csv').filter(({ standard }) => standard === 'MIL-STD-414');

describe('sample size code letters (MIL-STD-414 Table A-2; memory, level IV confirmed at four lots)', () => {
  it.each(letters)('lots of $lot_from to $lot_to: all five levels', (row) => {
    const least = Number(row['lot_from']);
    const most = Number(row['lot_to'] || 1e9);
    for (const level of VARIABLES_LEVELS) expect([variablesLetter(least, level), variablesLetter(most, level)]).toEqual([row[level], row[level]]);
  });
});

describe('k and M of every cell (MIL-STD-414 Tables B-1 and B-3; tag per row in the file)', () => {
  const cells = readCsv('k-values-mil-std-414.csv');
  const lotOf = new Map(letters.flatMap((row) => VARIABLES_LEVELS.map((level) => [row[level], { lotSize: Number(row['lot_to'] || 6e5), level }] as const)));

  it.each(cells)('$code_letter_or_level at AQL $aql_normal_pct normal: n $n, k $k, M $M_pct_form2', (row) => {
    const lot = lotOf.get(row['code_letter_or_level']);
    if (lot === undefined) throw new Error(`no lot has letter ${row['code_letter_or_level']}`);
    const expected = { letter: row['code_letter_or_level'], tableSampleSize: Number(row['n']), k: Number(row['k']), mPercent: Number(row['M_pct_form2']), arrow: 'none' };
    expect(sMethodPlan({ ...lot, aqlPercent: Number(row['aql_normal_pct']), severity: 'normal' })).toMatchObject(expected);
    if (row['aql_tightened_pct'] !== '') {
      expect(sMethodPlan({ ...lot, aqlPercent: Number(row['aql_tightened_pct']), severity: 'tightened' })).toMatchObject(expected);
    }
  });

  it('are 195 cells', () => expect(cells).toHaveLength(195));

  it.each(cells)('$code_letter_or_level at AQL $aql_normal_pct: Form 1 and Form 2 are the same rule (k implied by M, to rounding)', (row) => {
    // Computed: the percent at the printed k and half a unit of its last digit to either side must reach over the printed M.
    const [n, k, m] = [Number(row['n']), Number(row['k']), Number(row['M_pct_form2'])];
    const half = 0.5 * 10 ** -((row['k'] ?? '').split('.')[1]?.length ?? 0);
    const mHalf = 0.5 * 10 ** -(m >= 1 ? 2 : 3);
    // G at AQL 0.65 is half a thousandth of k beyond that; the file marks the pair consistent, so the same slack is given here.
    expect(percentNonconforming(k - half - 0.0005, n)).toBeGreaterThanOrEqual(m - mHalf);
    expect(percentNonconforming(k + half + 0.0005, n)).toBeLessThanOrEqual(m + mHalf);
  });

  it('follows the arrow to a larger sample', () => {
    expect(sMethodPlan({ lotSize: 40, level: 'IV', aqlPercent: 0.1, severity: 'normal' })).toMatchObject({ startLetter: 'D', letter: 'G', sampleSize: 15, k: 2.42, arrow: 'down' });
  });

  it('measures every piece of a lot no larger than the sample', () => {
    expect(sMethodPlan({ lotSize: 10, level: 'IV', aqlPercent: 0.1, severity: 'normal' })).toMatchObject({ letter: 'G', tableSampleSize: 15, sampleSize: 10, everyPiece: true });
  });

  it('knows no tightened plan at AQL 0.04, no lot of two and no AQL between the columns', () => {
    expect(() => sMethodPlan({ lotSize: 500, level: 'IV', aqlPercent: 0.04, severity: 'tightened' })).toThrow(/aqlPercent must be one of 0.065/);
    expect(() => sMethodPlan({ lotSize: 2, level: 'IV', aqlPercent: 1, severity: 'normal' })).toThrow(/lotSize/);
    expect(() => sMethodPlan({ lotSize: 500, level: 'IV', aqlPercent: 2, severity: 'normal' })).toThrow(/aqlPercent/);
  });

  it('textbook check: lot 100 000, level IV, AQL 1 %: O, n 100, k 2.00 normal and 2.14 tightened (memory)', () => {
    const lot = { lotSize: 100_000, level: 'IV', aqlPercent: 1 } as const;
    expect(sMethodPlan({ ...lot, severity: 'normal' })).toMatchObject({ letter: 'O', sampleSize: 100, k: 2 });
    expect(sMethodPlan({ ...lot, severity: 'tightened' })).toMatchObject({ letter: 'O', sampleSize: 100, k: 2.14, columnAqlPercent: 0.65 });
  });
});

describe('estimated percent nonconforming (computed with 40 digits: data/README.md)', () => {
  it('agrees with every row to 1e-12 relative', () => {
    const worst = { off: 0, where: '' };
    for (const row of readCsv('percent-nonconforming.csv')) {
      const expected = Number(row['phat_s_method_exact']) * 100;
      const ours = percentNonconforming(Number(row['Q']), Number(row['n']));
      if (expected === 0) expect(ours, `n ${row['n']} Q ${row['Q']}`).toBe(0);
      else if (Math.abs(ours / expected - 1) > worst.off) Object.assign(worst, { off: Math.abs(ours / expected - 1), where: `n ${row['n']} Q ${row['Q']}: ${ours}` });
    }
    expect(worst.off, worst.where).toBeLessThanOrEqual(1e-12);
  });

  it('agrees with the 3 decimals of Table B-5 wherever they were seen', () => {
    const seen = readCsv('percent-nonconforming.csv').filter((row) => row['tableB5_percent_seen_in_search_sheet'] !== '');
    expect(seen.length).toBe(18);
    for (const row of seen) {
      expect(Math.abs(percentNonconforming(Number(row['Q']), Number(row['n'])) - Number(row['tableB5_percent_seen_in_search_sheet']))).toBeLessThanOrEqual(0.00050001);
    }
  });

  it('mirrors for a mean beyond the limit', () => {
    expect(percentNonconforming(-1.59, 5)).toBeCloseTo(100 - 2.18709035293789, 12);
    expect(percentNonconforming(-9, 5)).toBe(100);
  });
});

describe('MIL-STD-414 (1957) Examples B-1 to B-4 (memory, confirmed by computation)', () => {
  const values = [197, 188, 184, 205, 201];
  const plan = sMethodPlan({ lotSize: 40, level: 'IV', aqlPercent: 1, severity: 'normal' });
  const common = { mean: 195, s: expect.closeTo(8.803408, 6) }; // the standard prints s 8.81, a slip of one unit

  it('plan: D, n 5, k 1.53, M 3.32 %', () => expect(plan).toMatchObject({ letter: 'D', sampleSize: 5, k: 1.53, mPercent: 3.32 }));

  it('B-1 and B-2: upper limit 209; Q 1.59 ≥ 1.53, p 2.18 % ≤ 3.32 %: accepted', () => {
    const verdict = judgeVariables({ values, upper: 209, plan });
    expect(verdict).toMatchObject({ ...common, accepted: true, form: 'k', limit: 1.53, outside: 0 });
    expect(verdict.statistic).toBeCloseTo(1.590293, 6);
    expect(verdict.pUpperPercent).toBeCloseTo(2.182312, 6);
    expect(verdict).not.toHaveProperty('qLower');
  });

  it('B-3: limits 180 and 209; Q 1.59 and 1.70, p 2.80 % ≤ 3.32 %: accepted', () => {
    const verdict = judgeVariables({ values, lower: 180, upper: 209, plan });
    expect(verdict).toMatchObject({ ...common, accepted: true, form: 'M', limit: 3.32 });
    expect(verdict.qUpper).toBeCloseTo(1.590293, 6);
    expect(verdict.qLower).toBeCloseTo(1.703886, 6);
    expect(verdict.pLowerPercent).toBeCloseTo(0.616897, 6);
    expect(verdict.statistic).toBeCloseTo(2.799209, 6);
  });

  it('B-4: AQL 1 % above and 2.5 % below: each side and their sum keep to M 3.32 and 9.80', () => {
    const lowerPlan = sMethodPlan({ lotSize: 40, level: 'IV', aqlPercent: 2.5, severity: 'normal' });
    expect(lowerPlan).toMatchObject({ letter: 'D', sampleSize: 5, mPercent: 9.8 });
    const { pLowerPercent = Number.NaN, pUpperPercent = Number.NaN, pPercent } = judgeVariables({ values, lower: 180, upper: 209, plan });
    expect([pUpperPercent <= plan.mPercent, pLowerPercent <= lowerPlan.mPercent, pPercent <= Math.max(plan.mPercent, lowerPlan.mPercent)]).toEqual([true, true, true]);
  });

  it('percents at the rounded Q as printed: 2.19 % at 1.59, 0.66 % at 1.70', () => {
    expect(percentNonconforming(1.59, 5)).toBeCloseTo(2.18709035, 8);
    expect(percentNonconforming(1.7, 5)).toBeCloseTo(0.659473, 6);
  });
});

it('ISO 3951-1 s-method example (memory, confirmed by computation): n 13, k 1.426, upper limit 60', () => {
  const values = [53, 57, 49, 58, 59, 54, 58, 56, 50, 50, 55, 54, 57];
  const verdict = judgeVariables({ values, upper: 60, plan: { sampleSize: 13, k: 1.426, mPercent: 100 } });
  expect(verdict.mean).toBeCloseTo(54.6154, 4);
  expect(verdict.s).toBeCloseTo(3.330127, 6);
  expect(verdict.qUpper).toBeCloseTo(1.61694, 6);
  expect(verdict.pPercent).toBeCloseTo(4.617045, 6);
  expect(verdict).toMatchObject({ accepted: true, form: 'k' });
});
