import { describe, expect, it } from 'vitest';
import { averageAndRange, biasOf, crossedAnova, d2Star, distinctCategories, gaugeComponents, leastSquares, linearityOf, shareOfSpread } from '../../shared/metrology/gauge-study/index.ts';
import type { ComponentName, CrossedReadings, GaugeComponents, ReferencePart, Source } from '../../shared/metrology/gauge-study/index.ts';
import { readCsv } from './read-csv.ts';

const readings = readCsv('gauge-study-readings.csv');
const each = <Key extends string>(set: string, key: Key): string[] => [...new Set(readings.filter((row) => row['set'] === set).map((row) => row[key] ?? ''))];
function crossed(set: string): CrossedReadings {
  return each(set, 'part').map((part) => each(set, 'person').map((person) => readings.filter((row) => row['set'] === set && row['part'] === part && row['person'] === person).map((row) => Number(row['value']))));
}
function references(set: string): ReferencePart[] {
  return each(set, 'reference').map((reference) => ({ reference: Number(reference), readings: readings.filter((row) => row['set'] === set && row['reference'] === reference).map((row) => Number(row['value'])) }));
}
const rowOf = (of: Pick<GaugeComponents, 'rows'>, source: Source) => of.rows.find((row) => row.source === source);
const componentOf = (of: GaugeComponents, name: ComponentName) => of.components.find((component) => component.name === name);
const close = (value: number | null | undefined, wanted: number, relative: number): void => expect(Math.abs((value ?? NaN) / wanted - 1), `${value} against ${wanted}`).toBeLessThanOrEqual(relative);
const COMMON = { poolAbove: 0.25, confidence: 0.95 };

describe('the crossed study of the measurement systems handbook of the automotive trade, 3rd and 4th ed.: 10 parts, 3 people, 3 trials (memory; its totals reproduced in rational arithmetic)', () => {
  const anova = crossedAnova(crossed('handbook'));
  it.each([
    { source: 'person', squares: 3.167262, df: 2 }, { source: 'part', squares: 88.361934, df: 9 }, { source: 'interaction', squares: 0.358982, df: 18 }, { source: 'repeatability', squares: 2.758933, df: 60 },
  ] as const)('sum of squares of $source $squares on $df', ({ source, squares, df }) => {
    expect(rowOf(anova, source)?.squares).toBeCloseTo(squares, 6);
    expect(rowOf(anova, source)?.df).toBe(df);
  });
  it('total 94.647112 on 89; interaction F 0.4337, p 0.974', () => {
    expect(anova.total.squares).toBeCloseTo(94.647112, 6);
    expect(anova.total.df).toBe(89);
    expect(rowOf(anova, 'interaction')?.test?.f).toBeCloseTo(0.4337, 4);
    expect(rowOf(anova, 'interaction')?.test?.p).toBeCloseTo(0.974, 3);
  });
  it('pools the interaction: error mean square 0.039973 on 78, and the printed components, shares and categories', () => {
    const found = gaugeComponents(anova, COMMON);
    expect(found.model).toBe('pooled');
    expect(rowOf(found, 'repeatability')?.meanSquare).toBeCloseTo(0.039973, 6);
    expect(rowOf(found, 'repeatability')?.df).toBe(78);
    const s = (name: ComponentName): number => componentOf(found, name)?.s ?? NaN;
    for (const [name, value, percent] of [['repeatability', 0.199933, 18.42], ['person', 0.226838, 20.9], ['gauge', 0.302372, 27.86], ['part', 1.042327, 96.04]] as const) {
      expect(s(name)).toBeCloseTo(value, 6);
      expect(shareOfSpread(s(name), s('total'), null).percentOfStudy).toBeCloseTo(percent, 2);
    }
    expect(s('total')).toBeCloseTo(1.0853, 6);
    const categories = distinctCategories(s('part'), s('gauge'));
    expect(categories?.whole).toBe(4);
    expect((categories?.exact ?? NaN) * (1.41 / Math.SQRT2)).toBeCloseTo(4.86, 2);
  });
  it('without pooling says that the interaction came out negative and sets it to 0', () => {
    const found = gaugeComponents(anova, { ...COMMON, poolAbove: 1 });
    expect(componentOf(found, 'repeatability')?.s).toBeCloseTo(0.214435, 6);
    expect(componentOf(found, 'person')?.s).toBeCloseTo(0.228304, 6);
    expect(componentOf(found, 'part')?.s).toBeCloseTo(1.043395, 6);
    expect(componentOf(found, 'interaction')).toMatchObject({ variance: 0, s: 0 });
    expect(componentOf(found, 'interaction')?.negative).toBeLessThan(0);
  });
});

describe('the values of the committed script (gauge-study-points.csv: rational arithmetic and scipy)', () => {
  const points = readCsv('gauge-study-points.csv');
  it('are 201 values', () => expect(points).toHaveLength(201));
  it.each(points.filter(({ set = '' }) => ['handbook', 'thickness', 'hardness'].includes(set)))('$set $model $quantity is $value', ({ set = '', model = '', quantity = '', value = '' }) => {
    const anova = crossedAnova(crossed(set));
    const [name = '', what = ''] = quantity.split('.');
    const wanted = Number(value);
    if (name === 'total' && what === 'squares') return close(anova.total.squares, wanted, 1e-12);
    const found = gaugeComponents(anova, { ...COMMON, poolAbove: model === 'pooled' ? 0 : 1 });
    // Nothing pools where p is 0 only: `thickness` has an interaction that no study would pool, pooled here for the arithmetic.
    expect(found.model).toBe(model);
    const row = found.rows.find(({ source }) => source === name);
    const component = found.components.find((one) => one.name === name);
    const got = what === 'squares' ? row?.squares : what === 'meanSquare' ? row?.meanSquare : what === 'f' ? row?.test?.f : what === 'p' ? row?.test?.p
      : what === 's' ? component?.s : what === 'low' ? component?.interval.low : what === 'high' ? component?.interval.high : component?.effectiveDf;
    // Components near 0 are small differences of mean squares.
    if (wanted === 0) expect(got).toBe(0);
    else close(got, wanted, what === 'p' ? 1e-9 : 1e-10);
  });
  it.each(points.filter(({ set = '' }) => ['bias', 'linearity'].includes(set)))('$set $quantity is $value', ({ set = '', quantity = '', value = '' }) => {
    const parts = references(set);
    const at = /^at (\S+) (\S+)$/.exec(quantity);
    if (at !== null) {
      const part = parts.find(({ reference }) => reference === Number(at[1]));
      if (part === undefined) throw new Error(`no part of ${at[1]}`);
      const found = biasOf(part, 0.95);
      return close(at[2] === 'bias' ? found.bias.value : at[2] === 's' ? found.s : at[2] === 't' ? found.bias.t : at[2] === 'p' ? found.bias.p : at[2] === 'low' ? found.bias.low : found.bias.high, Number(value), 1e-9);
    }
    const line = linearityOf(parts, 0.95);
    const [name, what = 'value'] = quantity.split('.');
    if (name === 'rSquared') return close(line.rSquared, Number(value), 1e-9);
    const estimate = new Map(Object.entries(name === 'slope' ? line.slope : line.intercept)).get(what);
    close(estimate ?? NaN, Number(value), 1e-9);
  });
});

describe('bias and linearity as printed', () => {
  it('15 readings against 6.00: bias 0.0067, s 0.2120, t 0.1218, limits −0.1107 and 0.1241 (measurement systems handbook, 4th ed., memory)', () => {
    const [part] = references('bias');
    if (part === undefined) throw new Error('no readings');
    const { s, df, bias } = biasOf(part, 0.95);
    expect([bias.value, s, bias.t ?? NaN, bias.low, bias.high].map((value) => Number(value.toFixed(4)))).toEqual([0.0067, 0.212, 0.1218, -0.1107, 0.1241]);
    expect(df).toBe(14);
  });
  it('60 readings of 5 parts: biases 0.4917, 0.125, 0.025, −0.2917, −0.6167, slope −0.1317, intercept 0.7367, R² 71.4 % (same handbook, memory)', () => {
    const line = linearityOf(references('linearity'), 0.95);
    expect(line.biases.map(({ bias }) => Number(bias.value.toFixed(4)))).toEqual([0.4917, 0.125, 0.025, -0.2917, -0.6167]);
    expect(line.slope.value).toBeCloseTo(-0.1317, 4);
    expect(line.intercept.value).toBeCloseTo(0.7367, 4);
    expect(100 * (line.rSquared ?? NaN)).toBeCloseTo(71.4, 1);
    expect(line.df).toBe(58);
  });
  it('NIST StRD Norris: slope 1.00211681802045, intercept −0.262323073774029, residual s 0.884796396144373 (data and certified values memory; they agree to the last digit)', () => {
    const points = readings.filter(({ set }) => set === 'norris').map(({ value, reference }) => ({ at: Number(reference), off: Number(value) }));
    expect(points).toHaveLength(36);
    const line = leastSquares(points);
    close(line.slope, 1.00211681802045, 1e-13);
    close(line.intercept, -0.262323073774029, 1e-11);
    close(Math.sqrt(line.residualSquares / 34), 0.884796396144373, 1e-12);
  });
});

describe('NIST StRD one-way analysis of variance, as a study by one person', () => {
  it('SiRstv: 0.0511462616 on 4, 0.21663656 on 20, F 1.18046237440255 (certified; data of instruments 2 to 5 seen, of 1 memory: the certified sums agree)', () => {
    const { rows } = crossedAnova(crossed('SiRstv'));
    close(rows[0]?.squares, 5.11462616e-2, 1e-11);
    close(rows[1]?.squares, 2.1663656e-1, 1e-11);
    close(rows[0]?.test?.f, 1.18046237440255, 1e-11);
  });
  // Nine treatments about 1.4, 1.3, 1.5, 1.3, 1.5, …; in each the middle once, then 0.1 below and above in turn (construction of Simon & Lesage, memory: it gives the certified 1.68 and 1.80 of SmLs01).
  // The larger sets stand at 1 000 000.4 and 1 000 000 000 000.4 and so on. With 13 constant leading digits a double holds four digits of the spread: more cannot be asked of any program.
  it.each([
    { set: 'SmLs01', base: 1, trials: 21, f: 21, allowed: 1e-13 }, { set: 'SmLs02', base: 1, trials: 201, f: 201, allowed: 1e-13 }, { set: 'SmLs03', base: 1, trials: 2001, f: 2001, allowed: 1e-13 },
    { set: 'SmLs04', base: 1_000_000, trials: 21, f: 21, allowed: 1e-9 }, { set: 'SmLs05', base: 1_000_000, trials: 201, f: 201, allowed: 1e-9 }, { set: 'SmLs06', base: 1_000_000, trials: 2001, f: 2001, allowed: 1e-9 },
    { set: 'SmLs07', base: 1_000_000_000_000, trials: 21, f: 21, allowed: 1e-4 }, { set: 'SmLs08', base: 1_000_000_000_000, trials: 201, f: 201, allowed: 1e-4 }, { set: 'SmLs09', base: 1_000_000_000_000, trials: 2001, f: 2001, allowed: 1e-4 },
  ])('$set: F $f', ({ base, trials, f, allowed }) => {
    const treatments = [4, 3, 5, 3, 5, 3, 5, 3, 5].map((middle) => Array.from({ length: trials }, (_, at) => Number(`${base}.${at === 0 ? middle : at % 2 === 1 ? middle - 1 : middle + 1}`)));
    const { rows } = crossedAnova(treatments.map((trialsOfOne) => [trialsOfOne]));
    close(rows[0]?.test?.f, f, allowed);
  });
});

describe('average and range on the same handbook data (memory; R-bar and the ranges of means reproduced)', () => {
  const found = averageAndRange(crossed('handbook'));
  it('R-bar 0.341667, X-diff 0.444667, range of parts 3.511111', () => {
    expect(found.meanRange).toBeCloseTo(0.341667, 6);
    expect(found.personRange).toBeCloseTo(0.444667, 6);
    expect(found.partRange).toBeCloseTo(3.511111, 6);
  });
  // The handbook works with factors of four digits (K1 .5908, K2 .5231, K3 .3146) and rounded intermediates; the factors here are exact, so the last printed digit may differ.
  it.each([{ figure: 'repeatabilityS', printed: 0.20188 }, { figure: 'reproducibilityS', printed: 0.22963 }, { figure: 'gaugeS', printed: 0.30575 }, { figure: 'partS', printed: 1.10456 }, { figure: 'totalS', printed: 1.1461 }] as const)('$figure $printed', ({ figure, printed }) => {
    close(found[figure], printed, 3e-4);
  });
  it('five categories where the analysis of variance has four', () => {
    expect(distinctCategories(found.partS, found.gaugeS)?.whole).toBe(5);
  });
  // 1/d2*: K2 for two and three people, K3 for ten parts (same handbook, memory); d2*(2, 1) is √2 exactly.
  it.each([{ n: 2, g: 1, k: 0.7071 }, { n: 3, g: 1, k: 0.5231 }, { n: 5, g: 1, k: 0.403 }, { n: 10, g: 1, k: 0.3146 }])('1/d2*($n, $g) is $k', ({ n, g, k }) => expect(1 / d2Star(n, g)).toBeCloseTo(k, 4));
});
