import { describe, expect, it } from 'vitest';
import { codeLetter, isAql, judgeStages, singlePlan, stagesOf, tighterWouldAccept } from '../../../shared/sampling/attributes/index.ts';
import type { AttributesPlan } from '../../../shared/sampling/attributes/index.ts';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';

const judged = (plan: AttributesPlan, found: number) => judgeStages({ stages: stagesOf(plan) }, [found]).outcome;

describe('a single plan', () => {
  it('follows an arrow to another letter and takes that letter\'s sample size (MIL-STD-105E 4.9.4, seen)', () => {
    const plan = singlePlan({ lotSize: 200, level: 'II', aqlPercent: 0.65, severity: 'normal' });
    expect(plan).toMatchObject({ startLetter: 'G', letter: 'F', arrow: 'up', sampleSize: 20, ac: 0, re: 1, table: 'II-A' });
  });

  it('reaches letter S by the arrow of the tightened table (Table II-B)', () => {
    const plan = singlePlan({ lotSize: 500_001, level: 'III', aqlPercent: 0.025, severity: 'tightened' });
    expect(plan).toMatchObject({ startLetter: 'R', letter: 'S', arrow: 'down', sampleSize: 3150, ac: 1, re: 2 });
  });

  it('means every piece when the sample reaches the lot, and keeps Ac and Re (footnote to Tables II)', () => {
    const plan = singlePlan({ lotSize: 20, level: 'II', aqlPercent: 0.25, severity: 'normal' });
    expect(plan).toMatchObject({ letter: 'H', tableSampleSize: 50, sampleSize: 20, everyPiece: true, ac: 0, re: 1 });
  });

  it('means every piece when the sample is exactly the lot', () => {
    expect(singlePlan({ lotSize: 3, level: 'II', aqlPercent: 4, severity: 'normal' })).toMatchObject({ sampleSize: 3, everyPiece: true });
  });

  it('looks at the one piece of a lot of one, with Ac 0, though no table holds it', () => {
    const plan = singlePlan({ lotSize: 1, level: 'II', aqlPercent: 1000, severity: 'normal' });
    expect(plan).toMatchObject({ sampleSize: 1, everyPiece: true, ac: 0, re: 1 });
    expect(() => codeLetter(1, 'II')).toThrow(OutsideDomain);
  });

  it('refuses an AQL between the columns and names those there are', () => {
    expect(() => singlePlan({ lotSize: 500, level: 'II', aqlPercent: 2, severity: 'normal' })).toThrow(/aqlPercent must be one of 0.01, 0.015/);
    expect([isAql(2), isAql(2.5)]).toEqual([false, true]);
  });

  it.each([0, -5, 1.5, Number.NaN, 2e9])('refuses a lot of %d pieces', (lotSize) => {
    expect(() => singlePlan({ lotSize, level: 'II', aqlPercent: 1, severity: 'normal' })).toThrow(OutsideDomain);
  });
});

describe('judging a single sample', () => {
  const reduced = singlePlan({ lotSize: 3000, level: 'II', aqlPercent: 1.5, severity: 'reduced' });

  it('accepts, accepts in the gap and rejects on reduced inspection (Table II-C, K at AQL 1.5: n 50, Ac 2, Re 5)', () => {
    expect(reduced).toMatchObject({ letter: 'K', sampleSize: 50, ac: 2, re: 5 });
    expect([2, 3, 4, 5].map((found) => judged(reduced, found))).toEqual(['accepted', 'acceptedInGap', 'acceptedInGap', 'rejected']);
  });

  it('refuses a count that is no count', () => {
    expect(() => judged(reduced, -1)).toThrow(OutsideDomain);
    expect(() => judged(reduced, 0.5)).toThrow(OutsideDomain);
  });
});

describe('one AQL step tighter in the same row of the normal table', () => {
  // ISO 2859-1:1999 9.3.3.2 from memory; the neighbours derived from Table 2-A.
  it.each([
    { ac: 2, tighter: 1, aqlPercent: 1 }, { ac: 3, tighter: 2, aqlPercent: 1.5 }, { ac: 5, tighter: 3, aqlPercent: 2.5 },
    { ac: 7, tighter: 5, aqlPercent: 4 }, { ac: 10, tighter: 7, aqlPercent: 6.5 }, { ac: 14, tighter: 10, aqlPercent: 10 },
    { ac: 21, tighter: 14, aqlPercent: 15 },
  ])('Ac $ac asks for $tighter or fewer', ({ ac, tighter, aqlPercent }) => {
    const plan = singlePlan({ lotSize: 1000, level: 'II', aqlPercent, severity: 'normal' });
    expect(plan.ac).toBe(ac);
    expect([tighterWouldAccept(plan, tighter), tighterWouldAccept(plan, tighter + 1)]).toEqual([true, false]);
  });

  it('asks only for acceptance where Ac is 0 or 1', () => {
    const one = singlePlan({ lotSize: 1000, level: 'II', aqlPercent: 0.65, severity: 'normal' });
    expect([one.ac, tighterWouldAccept(one, 1), tighterWouldAccept(one, 2)]).toEqual([1, true, false]);
  });
});
