import { describe, expect, it } from 'vitest';
import { judgeVariables, sMethodPlan } from '../../../shared/sampling/variables/index.ts';

const plan = sMethodPlan({ lotSize: 40, level: 'IV', aqlPercent: 1, severity: 'normal' }); // D, n 5

describe('judging by variables', () => {
  it.each([
    { upper: 10.1, percent: 0, accepted: true, outside: 0 },
    { upper: 10, percent: 50, accepted: false, outside: 0 },
    { upper: 9.9, percent: 100, accepted: false, outside: 5 },
  ])('five equal values of 10 against $upper: $percent %, with no Q to show', ({ upper, percent, accepted, outside }) => {
    const verdict = judgeVariables({ values: [10, 10, 10, 10, 10], upper, plan });
    expect(verdict).toEqual({ mean: 10, s: 0, pUpperPercent: percent, pPercent: percent, accepted, form: 'M', statistic: percent, limit: 3.32, outside });
  });

  it('accepts at k itself and not a hair below it (Form 1)', () => {
    // Mean 0 and s = √2.5: with the upper limit at 1.53 s, Q is k to the last digit or so.
    const values = [-2, -1, 0, 1, 2];
    const atK = 1.53 * Math.sqrt(2.5);
    expect(judgeVariables({ values, upper: atK * (1 + 1e-14), plan })).toMatchObject({ form: 'k', accepted: true });
    expect(judgeVariables({ values, upper: atK * (1 - 1e-14), plan })).toMatchObject({ form: 'k', accepted: false });
  });

  it('accepts up to M itself and not beyond (Form 2)', () => {
    const sample = { values: [-2, -1, 0, 1, 2], lower: -3, upper: 2.6 };
    const { pPercent } = judgeVariables({ ...sample, plan });
    expect(judgeVariables({ ...sample, plan: { ...plan, mPercent: pPercent } }).accepted).toBe(true);
    expect(judgeVariables({ ...sample, plan: { ...plan, mPercent: pPercent * (1 - 1e-14) } }).accepted).toBe(false);
  });

  it('survives being written down and read back', () => {
    const verdict = judgeVariables({ values: [10, 10, 10, 10, 10], lower: 9, upper: 11, plan });
    expect(JSON.parse(JSON.stringify(verdict))).toEqual(verdict);
  });

  it('rejects a mean beyond either of two limits', () => {
    expect(judgeVariables({ values: [12, 11, 12.5, 12, 11.5], lower: 9, upper: 11, plan })).toMatchObject({ accepted: false, form: 'M', outside: 4 });
  });

  it('can reject where no single piece is outside', () => {
    expect(judgeVariables({ values: [9.2, 10.8, 9.1, 10.9, 10], lower: 9, upper: 11, plan })).toMatchObject({ accepted: false, outside: 0 });
  });

  it('judges the same from below as from above', () => {
    const values = [9.8, 10.1, 10.3, 9.9, 10];
    const above = judgeVariables({ values, upper: 10.4, plan });
    const below = judgeVariables({ values: values.map((value) => 20 - value), lower: 9.6, plan });
    expect(below.statistic).toBeCloseTo(above.statistic, 12);
    expect(below.accepted).toBe(above.accepted);
  });

  it('refuses another number of values than the plan asks, no limit, and limits that leave nothing between', () => {
    expect(() => judgeVariables({ values: [1, 2, 3, 4], upper: 5, plan })).toThrow(/values must be as many as the plan asks, 5/);
    expect(() => judgeVariables({ values: [1, 2, 3, 4, 5], plan })).toThrow(/limits/);
    expect(() => judgeVariables({ values: [1, 2, 3, 4, 5], lower: 6, upper: 5, plan })).toThrow(/lower/);
    expect(() => judgeVariables({ values: [1, 2, 3, 4, Number.NaN], upper: 5, plan })).toThrow(/values\[4\]/);
  });
});
