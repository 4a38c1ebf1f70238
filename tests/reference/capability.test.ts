import { describe, expect, it } from 'vitest';
import { capability, centredIndex, fractionCounted, fractionOutside, sideIndex, spreadOverall, spreadWithin, widthIndex } from '../../shared/metrology/capability/index.ts';
import { summarise } from '../../shared/metrology/summary/index.ts';
import { readCsv } from './read-csv.ts';

const limits = { lower: 8, upper: 20 };
const nist = (n: number): { mean: number; s: number; values: number; df: number } => ({ mean: 16, s: 2, values: n, df: n - 1 });

describe('capability, NIST/SEMATECH e-Handbook 6.1.6: limits 8 and 20, mean 16, s 2 (memory, confirmed by computation)', () => {
  it('Cp 1, CPU 0.6667, CPL 1.3333, Cpk 0.6667', () => {
    expect(widthIndex(limits, nist(20), 0.95).value).toBe(1);
    expect(sideIndex('upper', 20, nist(20), 0.95).value).toBeCloseTo(0.6667, 4);
    expect(sideIndex('lower', 8, nist(20), 0.95).value).toBeCloseTo(1.3333, 4);
    expect(centredIndex(limits, nist(20), 0.95).value).toBeCloseTo(0.6667, 4);
  });

  it('share outside P(Z > 2) + P(Z < −4) = 0.0227818', () => expect(fractionOutside(limits, nist(50), 0.95).value).toBeCloseTo(0.0227818, 7));

  it.each([{ n: 20, cp: [0.684663, 1.314941], cpk: [0.4093, 0.9241] }, { n: 30, cp: [0.743873, 1.255639], cpk: [0.4577, 0.8757] }, { n: 50, cp: [0.802482, 1.197126], cpk: [0.5056, 0.8278] }, { n: 100, cp: [0.860826, 1.138943], cpk: [0.5532, 0.7802] }])('n $n: 95 % intervals of Cp by chi-square and of Cpk by the approximation (computed beside the handbook)', ({ n, cp, cpk }) => {
    const [width, centred] = [widthIndex(limits, nist(n), 0.95), centredIndex(limits, nist(n), 0.95)];
    expect(width.low).toBeCloseTo(cp[0] ?? 0, 6);
    expect(width.high).toBeCloseTo(cp[1] ?? 0, 6);
    // The reference rounds Cpk to 0.6667 first.
    expect(Math.abs(centred.low - (cpk[0] ?? 0))).toBeLessThan(1e-4);
    expect(Math.abs(centred.high - (cpk[1] ?? 0))).toBeLessThan(1e-4);
  });
});

describe('intervals as scipy has them (data/capability-checks.csv: chi2.ppf, nct, norm)', () => {
  it.each(readCsv('capability-checks.csv'))('mean $mean, s $s, $values values, df $df, confidence $confidence', (row) => {
    const of = (name: string): number => Number(row[name]);
    const spread = { mean: of('mean'), s: of('s'), values: of('values'), df: of('df') };
    const confidence = of('confidence');
    const both = { lower: of('lower'), upper: of('upper') };
    for (const [index, name] of [[widthIndex(both, spread, confidence), 'cp'], [sideIndex('upper', both.upper, spread, confidence), 'cpu'], [centredIndex(both, spread, confidence), 'cpk'], [fractionOutside({ upper: both.upper }, spread, confidence), 'share']] as const) {
      for (const [ours, expected] of [[index.value, of(name)], [index.low, of(`${name}_low`)], [index.high, of(`${name}_high`)]] as const) {
        expect(Math.abs(ours - expected) / Math.abs(expected), `${name}: ${ours} for ${expected}`).toBeLessThan(1e-8);
      }
    }
  });
});

describe('spread of lots', () => {
  const lots = [[10.1, 10.3, 9.8, 10.2], [10.6, 10.4, 10.9], [9.9, 10, 10.3, 10.1, 9.7]];
  const summaries = lots.map((values) => summarise(values));

  it('overall is s of all values in one sample', () => {
    const all = summarise(lots.flat());
    const overall = spreadOverall(summaries);
    expect(overall?.mean).toBeCloseTo(all.mean, 12);
    expect(overall?.s).toBeCloseTo(all.s ?? Number.NaN, 12);
    expect(overall?.df).toBe(11);
  });

  it('within is the root of the pooled variance, by hand: (0.14 + 0.126667 + 0.2) / 9', () => {
    const within = spreadWithin(summaries);
    expect(within?.s).toBeCloseTo(Math.sqrt((0.14 + 0.38 / 3 + 0.2) / 9), 12);
    expect(within?.df).toBe(9);
  });

  it('one exact one-sided interval each, and Bonferroni for two, which holds both', () => {
    const spread = nist(40);
    const [one, two] = [fractionOutside({ upper: 20 }, spread, 0.95), fractionOutside(limits, spread, 0.95)];
    expect(two.high).toBeGreaterThan(one.high);
    expect(two.low).toBeLessThan(one.low);
    expect([one.by, two.by]).toEqual(['noncentralT', 'noncentralTBothSides']);
  });

  it('counted share: 4 of 20, 90 %: 0.0713539 … 0.4010281 (NIST/SEMATECH e-Handbook 7.2.4.1, page seen; computed)', () => {
    const { low, high } = fractionCounted(4, 20, 0.9);
    expect(low).toBeCloseTo(0.0713538843, 10);
    expect(high).toBeCloseTo(0.4010281173, 10);
  });

  it('says nothing from fewer than eight values, nor from values that are all one', () => {
    expect(capability(limits, [{ n: 7, mean: 14, s: 1 }], 0.95)).toBe('tooFew');
    expect(capability(limits, [{ n: 5, mean: 14, s: 0 }, { n: 5, mean: 14, s: 0 }], 0.95)).toBe('noSpread');
    expect(capability({ upper: 20 }, [{ n: 1, mean: 14, s: null }, { n: 7, mean: 15, s: 0 }], 0.95)).toMatchObject({ within: null, overall: { width: null, lowerSide: null } });
    expect(() => capability({}, [{ n: 9, mean: 14, s: 1 }], 0.95)).toThrow(/limits must be given/);
  });
});
