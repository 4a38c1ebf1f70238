import { describe, expect, it } from 'vitest';
import { CHART_RULES, estimateCountedBase, estimateMeasuredBase, measuredLines, signalsAt, signalsOf } from '../../../shared/metrology/charts/index.ts';
import type { ChartLine, ChartRule, LineName } from '../../../shared/metrology/charts/index.ts';

/** A line about 0 with σ 1 and limits at three. */
const lineOf = (values: readonly number[], name: LineName = 'mean'): ChartLine => ({ name, points: values.map((value, at) => ({ at, value, centre: 0, lower: -3, upper: 3, sigma: 1 })) });
const said = (rule: ChartRule, values: readonly number[], starts: readonly number[] = []): string[] => signalsOf([lineOf(values)], [rule], starts).map(({ side, from, at }) => `${side} ${from}–${at}`);

describe('the rules of a control chart', () => {
  it('one point beyond a limit; on the limit is within', () => {
    expect(said('beyondLimits', [0, 3, -3, 3.01, -3.01])).toEqual(['above 3–3', 'below 4–4']);
  });
  it('two of three beyond two σ on the same side, the newest among them', () => {
    expect(said('twoOfThreeBeyondTwo', [2.1, 0, 2.1, 0, 0, -2.1, -2.1])).toEqual(['above 0–2', 'below 4–6']);
    expect(said('twoOfThreeBeyondTwo', [2.1, -2.1, 0, 2.1])).toEqual([]);
  });
  it('four of five beyond one σ on the same side', () => {
    expect(said('fourOfFiveBeyondOne', [1.1, 1.1, 0, 1.1, 1.1, 0])).toEqual(['above 0–4']);
    expect(said('fourOfFiveBeyondOne', [1.1, 1.1, 1, 1, 1.1])).toEqual([]);
  });
  it('eight and nine in a row on one side; a point on the centre is on neither', () => {
    const nine = [0.1, 0.2, 0.1, 0.2, 0.1, 0.2, 0.1, 0.2, 0.1];
    expect(said('eightOnOneSide', nine)).toEqual(['above 0–7', 'above 1–8']);
    expect(said('nineOnOneSide', nine)).toEqual(['above 0–8']);
    expect(said('eightOnOneSide', [...nine.slice(0, 7), 0, ...nine.slice(0, 7)])).toEqual([]);
  });
  it('six points steadily rising or falling', () => {
    expect(said('sixRisingOrFalling', [0, 0.1, 0.2, 0.3, 0.4, 0.5])).toEqual(['rising 0–5']);
    expect(said('sixRisingOrFalling', [0, -0.1, -0.2, -0.3, -0.4, -0.5])).toEqual(['falling 0–5']);
    expect(said('sixRisingOrFalling', [0, 0.1, 0.2, 0.2, 0.3, 0.4])).toEqual([]);
  });
  it('fourteen points turning up and down', () => {
    const turning = Array.from({ length: 14 }, (_, at) => (at % 2 === 0 ? 0.1 : -0.1));
    expect(said('fourteenAlternating', turning)).toEqual(['both 0–13']);
    expect(said('fourteenAlternating', turning.with(13, 0.1))).toEqual([]);
  });
  it('fifteen within one σ, and eight with none within', () => {
    expect(said('fifteenWithinOne', Array.from({ length: 15 }, (_, at) => 0.9 * (-1) ** at))).toEqual(['both 0–14']);
    expect(said('eightWithoutOne', [1.1, -1.2, 1.3, 1.1, -1.1, -1.4, 1.2, -1.1])).toEqual(['both 0–7']);
    expect(said('eightWithoutOne', [1.1, -1.2, 1.3, 1, -1.1, -1.4, 1.2, -1.1])).toEqual([]);
  });
  it('look back no further than where counting began anew', () => {
    const nine = [0.1, 0.2, 0.1, 0.2, 0.1, 0.2, 0.1, 0.2, 0.1];
    expect(said('eightOnOneSide', nine, [1])).toEqual(['above 1–8']);
    expect(said('eightOnOneSide', nine, [2])).toEqual([]);
    expect(said('twoOfThreeBeyondTwo', [2.1, 0, 2.1], [1])).toEqual([]);
    expect(said('twoOfThreeBeyondTwo', [0, 2.1, 2.1], [1])).toEqual(['above 1–2']);
  });
  it('on lines of spread, moving ranges, EWMA and CUSUM ask for the limits alone', () => {
    const values = Array.from({ length: 15 }, () => 0.5);
    for (const name of ['s', 'range', 'movingRange', 'ewma', 'cusumUp'] as const) expect(signalsOf([lineOf(values, name)], CHART_RULES)).toEqual([]);
    expect(signalsOf([lineOf([4], 'ewma')], CHART_RULES)).toEqual([{ line: 'ewma', rule: 'beyondLimits', side: 'above', at: 0, from: 0 }]);
  });
  it('refuse a point the line does not have', () => expect(() => signalsAt(lineOf([1]), 1, ['beyondLimits'])).toThrow(/index/));
});

describe('the base of a chart', () => {
  const lot = { n: 5, mean: 10, s: 0, range: 0 };
  it('is refused without any spread, without a finding, and from one lot', () => {
    expect(() => estimateMeasuredBase({ kind: 'meanAndS' }, [lot, lot])).toThrow(/lots must be with some spread/);
    expect(() => estimateMeasuredBase({ kind: 'individuals' }, [lot])).toThrow(/lots must be two at least/);
    expect(() => estimateMeasuredBase({ kind: 'meanAndRange' }, [{ n: 1, mean: 1, s: null, range: null }, { n: 1, mean: 2, s: null, range: null }])).toThrow(/two values or more/);
    expect(() => estimateCountedBase([{ of: 80, count: 0 }])).toThrow(/something found/);
  });
  it('weighs lots of unequal n by how sharply each tells σ: equal estimates give that σ', () => {
    const c4of = { 3: Math.sqrt(Math.PI) / 2, 2: Math.sqrt(2 / Math.PI) };
    const base = estimateMeasuredBase({ kind: 'meanAndS' }, [{ n: 3, mean: 1, s: 0.5 * c4of[3], range: 1 }, { n: 2, mean: 2, s: 0.5 * c4of[2], range: 1 }]);
    expect(base.sigma).toBeCloseTo(0.5, 12);
    expect(base.centre).toBeCloseTo((3 * 1 + 2 * 2) / 5, 12);
  });
  it('must fit the chart', () => {
    expect(() => measuredLines({ kind: 'individuals' }, [lot], { centre: 1, sigma: null })).toThrow(/sigma/);
    expect(() => measuredLines({ kind: 'ewma', lambda: 0, width: 3, spread: 'betweenLots' }, [lot], { centre: 1, sigma: 1 })).toThrow(/lambda/);
  });
});
