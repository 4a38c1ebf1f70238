import { describe, expect, it } from 'vitest';
import { stagesOf } from '../../../shared/sampling/attributes/index.ts';
import type { AttributesPlan, InspectionLevel } from '../../../shared/sampling/attributes/index.ts';
import { binomialExactly } from '../../../shared/sampling/chance/index.ts';
import { batchInterval, clopperPearson, acceptance, schemeBehaviour, schemeFor, simulateScheme } from '../../../shared/sampling/risk/index.ts';
import type { Scheme } from '../../../shared/sampling/risk/index.ts';
import { judgedPlan, limitNumber, startSwitching, switchingAfter } from '../../../shared/sampling/switching/index.ts';
import type { SwitchingState } from '../../../shared/sampling/switching/index.ts';

const binomial = { kind: 'binomial' } as const;
type Asked = { readonly rule: Scheme['rule']; readonly lotSize: number; readonly aqlPercent: number; readonly level?: InspectionLevel; readonly steady?: boolean; readonly resumeAfter?: number };

const schemeOf = ({ rule, lotSize, aqlPercent, level = 'II', steady = true, resumeAfter }: Asked): Scheme =>
  schemeFor({ rule, lotSize, aqlPercent, level, steady, reducedAllowed: true, ...(resumeAfter === undefined ? {} : { resumeAfter }) });

describe('against a chain built by asking the switching rules themselves about every state', () => {
  it.each([
    { rule: 'ISO 2859-1', lotSize: 1000, aqlPercent: 1, qualities: [0.004, 0.01, 0.02, 0.05], why: 'Ac 2, some accepted lots put the score back' },
    { rule: 'ISO 2859-1', lotSize: 100, aqlPercent: 0.65, qualities: [0.002, 0.01, 0.05, 0.4], why: 'Ac 0, two points a lot' },
    { rule: 'ISO 2859-1', lotSize: 1000, aqlPercent: 1, steady: false, qualities: [0.01, 0.03], why: 'not steady, never reduced' },
    { rule: 'ISO 2859-1', lotSize: 1000, aqlPercent: 6.5, resumeAfter: 12, qualities: [0.05, 0.1, 0.16], why: 'Ac 10, twelve lots pass while discontinued' },
    { rule: 'MIL-STD-105E', lotSize: 30, aqlPercent: 2.5, qualities: [0.01, 0.05, 0.2], why: 'Ac 0, more than ten lots needed' },
    { rule: 'MIL-STD-105E', lotSize: 400, aqlPercent: 1, resumeAfter: 1, qualities: [0.004, 0.01, 0.03], why: 'Ac 1, limit number 2' },
  ] as const)('$rule, lots of $lotSize, AQL $aqlPercent: $why', ({ qualities, why, ...asked }) => {
    for (const p of qualities) {
      const reckoned = schemeBehaviour(schemeOf(asked), binomial, p);
      const chain = chainOf(schemeOf(asked), p);
      expect(reckoned.exact, why).toBe(true);
      expect(reckoned.acceptance).toBeCloseTo(chain.acceptance, 10);
      for (const severity of ['normal', 'tightened', 'reduced', 'discontinued'] as const) expect(reckoned.shares[severity], severity).toBeCloseTo(chain.shares[severity], 10);
      expect((reckoned.lotsToDiscontinuation ?? Infinity) / chain.lotsToDiscontinuation).toBeCloseTo(1, 6);
    }
  }, 60_000);
});

describe('the simulator against the chain, within its own interval of 99.9 %', () => {
  it.each([
    { rule: 'ISO 2859-1', lotSize: 1000, aqlPercent: 1, p: 0.01 },
    { rule: 'ISO 2859-1', lotSize: 1000, aqlPercent: 1, p: 0.02, resumeAfter: 5 },
    { rule: 'ISO 2859-1', lotSize: 1000, aqlPercent: 1, p: 0.008, samples: 'double' },
    { rule: 'ISO 2859-1', lotSize: 1000, aqlPercent: 2.5, p: 0.025, samples: 'multiple' },
    { rule: 'MIL-STD-105E', lotSize: 1000, aqlPercent: 1, p: 0.01 },
    { rule: 'MIL-STD-105E', lotSize: 3000, aqlPercent: 1, p: 0.008 },
    { rule: 'MIL-STD-105E', lotSize: 200, aqlPercent: 0.4, p: 0.006, resumeAfter: 20 },
  ] as const)('$rule, lots of $lotSize, AQL $aqlPercent, p $p', ({ p, rule, lotSize, aqlPercent, ...more }) => {
    const scheme = schemeFor({ rule, lotSize, aqlPercent, level: 'II', steady: true, reducedAllowed: true, ...more });
    const reckoned = schemeBehaviour(scheme, binomial, p);
    const { lots } = simulateScheme({ scheme, lots: 40_000, p, seed: `${rule} ${lotSize} ${p}` });
    const inspected = lots.filter(({ severity }) => severity !== 'discontinued');
    expect(reckoned.exact).toBe(true);
    expectInside(reckoned.acceptance, batchInterval(inspected.map(({ accepted }) => (accepted ? 1 : 0)), 0.999));
    expectInside(reckoned.averageSampleNumber, batchInterval(inspected.map(({ sampleSize }) => sampleSize), 0.999));
    for (const on of ['normal', 'tightened', 'reduced'] as const) expectInside(reckoned.shares[on], batchInterval(lots.map(({ severity }) => (severity === on ? 1 : 0)), 0.999));
    for (const on of ['normal', 'tightened'] as const) {
      const there = lots.filter(({ severity }) => severity === on);
      if (there.length > 0) expectInside(acceptance({ stages: stagesOf(scheme.plans[on]) }, binomial, p), clopperPearson(there.filter(({ accepted }) => accepted).length, there.length, 0.999));
    }
  });

  it.each([
    { lotSize: 1000, aqlPercent: 2.5, p: 0.025, samples: 'single' }, { lotSize: 1000, aqlPercent: 1, p: 0.007, samples: 'double' },
    { lotSize: 1000, aqlPercent: 6.5, p: 0.065, samples: 'double' }, { lotSize: 3000, aqlPercent: 1, p: 0.007, samples: 'multiple' },
  ] as const)('limit numbers, AQL $aqlPercent, $samples: approximated, and said so; reduced within 0.04, acceptance within 0.002', ({ p, ...asked }) => {
    const scheme = schemeFor({ rule: 'MIL-STD-105E', level: 'II', steady: true, reducedAllowed: true, ...asked });
    const reckoned = schemeBehaviour(scheme, binomial, p);
    const simulated = simulateScheme({ scheme, lots: 150_000, p, seed: 'approximated' });
    expect(reckoned.exact).toBe(false);
    expect(Math.abs(reckoned.shares.reduced - simulated.shares.reduced)).toBeLessThan(0.04);
    expect(Math.abs(reckoned.acceptance - simulated.accepted / 150_000)).toBeLessThan(0.002);
  });
});

describe('the simulator', () => {
  const scheme = schemeOf({ rule: 'ISO 2859-1', lotSize: 1000, aqlPercent: 1, resumeAfter: 3 });

  it('brings the same lots for the same seed, and others for another', () => {
    const year = simulateScheme({ scheme, lots: 300, p: 0.015, seed: 'a' });
    expect(simulateScheme({ scheme, lots: 300, p: 0.015, seed: 'a' })).toEqual(year);
    expect(simulateScheme({ scheme, lots: 300, p: 0.015, seed: 'b' }).lots).not.toEqual(year.lots);
  });

  it('passes the stated number of lots uninspected, then goes on on tightened', () => {
    const { lots } = simulateScheme({ scheme, lots: 200, p: 0.2, seed: 'bad' });
    const first = lots.findIndex(({ severity }) => severity === 'discontinued');
    expect(lots.slice(first, first + 4).map(({ severity, sampleSize, accepted }) => [severity, sampleSize, accepted])).toEqual([
      ['discontinued', 0, false], ['discontinued', 0, false], ['discontinued', 0, false], ['tightened', 80, false],
    ]);
  });

  it('spreads the quality from lot to lot without moving its mean, however wide', () => {
    const steady = schemeOf({ rule: 'ISO 2859-1', lotSize: 1000, aqlPercent: 1, steady: false });
    const evenly = { ...steady, plans: { ...steady.plans, tightened: steady.plans.normal } };
    for (const spread of [0.005, 0.02, 0.09]) {
      const { lots } = simulateScheme({ scheme: evenly, lots: 30_000, p: 0.01, seed: `spread ${spread}`, spread });
      expectInside(0.8, batchInterval(lots.map(({ found }) => found), 0.999)); // n 80 · p 0.01
      const mean = lots.reduce((sum, { found }) => sum + found, 0) / lots.length;
      const variance = lots.reduce((sum, { found }) => sum + (found - mean) ** 2, 0) / lots.length;
      expect(variance / (80 * 0.01 * 0.99 + 80 * 79 * spread ** 2), `${spread}`).toBeGreaterThan(0.85); // variance of a beta-binomial count
      expect(variance / (80 * 0.01 * 0.99 + 80 * 79 * spread ** 2), `${spread}`).toBeLessThan(1.15);
    }
  });

  it('refuses a spread no distribution between 0 and 1 can have', () => {
    expect(() => simulateScheme({ scheme, lots: 10, p: 0.01, seed: 'a', spread: 0.2 })).toThrow('spread');
  });
});

describe('at the ends', () => {
  it.each(['ISO 2859-1', 'MIL-STD-105E'] as const)('%s: faultless lots end on reduced inspection; all bad, on tightened or discontinued', (rule) => {
    const scheme = schemeOf({ rule, lotSize: 1000, aqlPercent: 1, resumeAfter: 5 });
    expect(schemeBehaviour(scheme, binomial, 0)).toMatchObject({ acceptance: 1, shares: { normal: 0, tightened: 0, reduced: 1, discontinued: 0 }, lotsToDiscontinuation: null });
    // Two lots on normal, five on tightened; then rounds of five passed over and five on tightened.
    expect(schemeBehaviour(scheme, binomial, 1)).toMatchObject({ acceptance: 0, shares: { normal: 0, tightened: 0.5, reduced: 0, discontinued: 0.5 }, lotsToDiscontinuation: 7 });
    expect(schemeBehaviour({ ...scheme, steady: false }, binomial, 0).shares.normal).toBe(1);
  });

  it('nothing is not a number, however near the ends', () => {
    for (const rule of ['ISO 2859-1', 'MIL-STD-105E'] as const) {
      for (const model of [binomial, { kind: 'poisson' }, { kind: 'hypergeometric', lotSize: 1000 }] as const) {
        for (const p of [0, 1e-300, 1e-100, 1e-20, 1e-9, 0.3, 0.9, 0.999_999, 1 - 2 ** -53, 1]) {
          const { acceptance: accepted, shares, averageSampleNumber, averageOutgoingQuality, lotsToDiscontinuation } = schemeBehaviour(schemeOf({ rule, lotSize: 1000, aqlPercent: 1 }), model, p);
          expect(shares.normal + shares.tightened + shares.reduced + shares.discontinued).toBeCloseTo(1, 12);
          for (const figure of [accepted, averageSampleNumber, averageOutgoingQuality, lotsToDiscontinuation ?? 0]) expect(figure, `${rule} ${model.kind} ${p}`).toBeGreaterThanOrEqual(0);
        }
      }
    }
  });
});

function expectInside(value: number, { low, high }: { readonly low: number; readonly high: number }): void {
  expect(value).toBeGreaterThanOrEqual(low);
  expect(value).toBeLessThanOrEqual(high);
}

/** What one lot of a single plan may bring. */
function lotsOf(plan: AttributesPlan, p: number): readonly { readonly found: number; readonly chance: number }[] {
  const accepted = Array.from({ length: plan.re }, (_, found) => ({ found, chance: binomialExactly(found, plan.sampleSize, p) }));
  return [...accepted, { found: plan.re, chance: 1 - accepted.reduce((sum, { chance }) => sum + chance, 0) }];
}

/** All that the rules may still ask of a state; the lots' names and what is older do not matter to them. */
function keyOf({ rule, severity, score, recent, acceptedInRow, notAcceptedOnTightened }: SwitchingState, window: number): string {
  if (severity !== 'normal') return [severity, severity === 'tightened' ? acceptedInRow : '', severity === 'tightened' ? notAcceptedOnTightened : ''].join();
  const results = recent.slice(-4).map(({ accepted }) => (accepted ? '+' : '-')).join('');
  if (rule === 'ISO 2859-1') return [severity, results, Math.min(score, 30)].join();
  const counted = acceptedInRow === 0 ? [] : recent.slice(-Math.min(acceptedInRow, window - 1)).map(({ found }) => found);
  return [severity, results.replace(/^\++/, ''), counted.join(':')].join();
}

/** The fewest lots, ten or more, for which Table VIII has a number. */
function windowOf({ aqlPercent, sampleSize }: AttributesPlan): number {
  let lots = 10;
  while (limitNumber(aqlPercent, lots * sampleSize) === 'tooFewUnits') lots += 1;
  return lots;
}

/** The whole chain, state by state, with its stationary shares (Grassmann, Taksar & Heyman's elimination, which never subtracts). */
function chainOf(scheme: Scheme, p: number) {
  const start: SwitchingState = { ...startSwitching(scheme.rule, scheme.plans.normal.aqlPercent), steady: scheme.steady, reducedAllowed: scheme.reducedAllowed };
  const window = windowOf(scheme.plans.normal);
  const numbers = new Map([[keyOf(start, window), 0]]);
  const states = [start];
  const moves: Map<number, number>[] = [];
  const accepting: number[] = [];
  for (let at = 0; at < states.length; at += 1) {
    const state = states[at] ?? start;
    const { severity } = state;
    const to = new Map<number, number>();
    moves.push(to);
    const goTo = (next: SwitchingState, chance: number): void => {
      const key = keyOf(next, window);
      const number = numbers.get(key) ?? states.length;
      if (number === states.length) {
        numbers.set(key, number);
        states.push(next);
      }
      to.set(number, (to.get(number) ?? 0) + chance);
    };
    if (severity === 'discontinued') {
      goTo(switchingAfter(state, { type: 'resumed' }), 1);
      accepting.push(0);
      continue;
    }
    const plan = scheme.plans[severity];
    let accepts = 0;
    for (const { found, chance } of lotsOf(plan, p)) {
      const accepted = found < plan.re;
      if (accepted) accepts += chance;
      goTo(switchingAfter(state, { type: 'lotJudged', lot: '', original: true, accepted, inGap: accepted && found > plan.ac, plan: judgedPlan(plan, 1, found), sampleSize: plan.sampleSize, found }), chance);
    }
    accepting.push(accepts);
  }
  const dense = moves.map((to) => Float64Array.from({ length: states.length }, (_, at) => to.get(at) ?? 0));
  const weights = stationary(dense.map((row) => row.slice()));
  // Visits to discontinuation last resumeAfter lots.
  const lots = weights.map((weight, at) => (states[at]?.severity === 'discontinued' ? weight * (scheme.resumeAfter ?? 0) : weight));
  const all = lots.reduce((sum, each) => sum + each, 0);
  const shareOn = (severity: SwitchingState['severity']): number => lots.reduce((sum, each, at) => sum + (states[at]?.severity === severity ? each : 0), 0) / all;
  const shares = { normal: shareOn('normal'), tightened: shareOn('tightened'), reduced: shareOn('reduced'), discontinued: shareOn('discontinued') };
  const accepted = lots.reduce((sum, each, at) => sum + each * (accepting[at] ?? 0), 0) / all;
  return { acceptance: accepted / (1 - shares.discontinued), shares, lotsToDiscontinuation: timeTo(dense, states.findIndex(({ severity }) => severity === 'discontinued')) };
}

function stationary(rows: readonly Float64Array[]): number[] {
  const cell = (row: number, column: number): number => rows[row]?.[column] ?? 0;
  for (let last = rows.length - 1; last > 0; last -= 1) {
    let leaving = 0;
    for (let at = 0; at < last; at += 1) leaving += cell(last, at);
    for (let row = 0; row < last; row += 1) {
      const share = cell(row, last) / leaving;
      const target = rows[row];
      if (target === undefined) continue;
      target[last] = share;
      if (share > 0) for (let column = 0; column < last; column += 1) target[column] = (target[column] ?? 0) + share * cell(last, column);
    }
  }
  const weights = [1];
  for (let at = 1; at < rows.length; at += 1) {
    let weight = 0;
    for (let before = 0; before < at; before += 1) weight += (weights[before] ?? 0) * cell(before, at);
    weights.push(weight);
  }
  return weights;
}

/** Expected steps from state 0 to the state `end`: 1 over its stationary weight, when it leads back to state 0. */
function timeTo(rows: readonly Float64Array[], end: number): number {
  const restarted = rows.map((row, at) => (at === end ? Float64Array.from(row, (_, to) => (to === 0 ? 1 : 0)) : row.slice()));
  const weights = stationary(restarted);
  return weights.reduce((sum, each) => sum + each, 0) / (weights[end] ?? 0) - 1;
}
