import { describe, expect, it } from 'vitest';
import { afterMeasuring, conformanceProbability, globalRisk, guardBandForConsumerRisk, guardBandForSpecificRisk, measurementCapability, nonconformanceProbability, processDeviation } from '../../shared/metrology/decision-rules/index.ts';
import { readCsv } from './read-csv.ts';

/**
 * How far from the expected value, relative: 1e-12, and what the rounding of the limits themselves does to a value counted in standard
 * uncertainties (1500.2 − 0.06 ohm is known to 2e-13 only, which is 6e-12 of 0.04).
 */
function close(row: Readonly<Record<string, string>>, actual: number | null, expected: string | undefined): void {
  const wanted = Number(expected);
  const within = 1e-12 + (1e-15 * Math.max(Math.abs(Number(row['TL'])), Math.abs(Number(row['TU'])))) / Number(row['um']);
  expect(Math.abs((actual ?? Number.NaN) / wanted - 1), `${String(actual)} for ${String(expected)}`).toBeLessThanOrEqual(within);
}
const limit = (text: string | undefined): number | undefined => (text === undefined || text === '' ? undefined : Number(text));
const rows = readCsv('guard-band-checks.csv');
const globals = rows.filter(({ kind }) => kind === 'global').map((row, at) => ({ ...row, case: row['case'] ?? '', at }));
const specifics = rows.filter(({ kind }) => kind === 'specific').map((row, at) => ({ ...row, case: row['case'] ?? '', at }));

it('the whole table is read', () => expect([globals.length, specifics.length]).toEqual([97, 17]));

// Computed with 30-digit 1-D integrals of exact normal probabilities and checked by an independent 2-D quadrature; inputs of the JCGM 106
// resistor are from memory (tests/reference/data/README.md).
describe('global risks', () => {
  it.each(globals)('$case ($at)', (row: Record<string, unknown>) => {
    const text = row as Record<string, string>;
    const [lower, upper, u] = [limit(text['TL']), limit(text['TU']), Number(text['um'])];
    const risk = globalRisk({ tolerance: { lower, upper }, acceptance: { lower: limit(text['AL']), upper: limit(text['AU']) }, process: { mean: Number(text['y0']), deviation: Number(text['u0']) }, standardUncertainty: u });
    close(text, risk.conforming, text['prior_conforming']);
    close(text, risk.accepted, text['accepted_fraction']);
    close(text, risk.consumer, text['global_consumer_risk_RC']);
    close(text, risk.producer, text['global_producer_risk_RP']);
    close(text, risk.consumerOfAccepted, text['RC_given_accepted']);
    close(text, risk.producerOfRejected, text['RP_given_rejected']);
    if (lower !== undefined && upper !== undefined) close(text, measurementCapability(lower, upper, u), text['Cm_(TU-TL)/(4um)']);
  });
});

describe('one measured value', () => {
  it.each(specifics)('$case ($at)', (row: Record<string, unknown>) => {
    const text = row as Record<string, string>;
    const tolerance = { lower: limit(text['TL']), upper: limit(text['TU']) };
    const measurement = { value: Number(text['y_measured']), standardUncertainty: Number(text['um']) };
    close(text, conformanceProbability(tolerance, measurement), text['conformance_prob_no_prior']);
    const process = text['y0'] === '' ? undefined : { mean: Number(text['y0']), deviation: Number(text['u0']) };
    close(text, nonconformanceProbability(tolerance, { ...measurement, process }), text['specific_risk_wrong_if_accepted']);
    if (process === undefined) return;
    const after = afterMeasuring({ ...measurement, process });
    close(text, after.mean, text['posterior_mean']);
    close(text, after.deviation, text['posterior_u']);
    close(text, conformanceProbability(tolerance, { ...measurement, process }), text['conformance_prob_posterior']);
  });
});

describe('worked examples', () => {
  // JCGM 106:2012, printed to two digits: 7.3.3 Zener diode, 7.4 motor oil (from memory).
  it('diode 0.92, motor oil 0.66', () => {
    expect(conformanceProbability({ upper: -5.4 }, { value: -5.47, standardUncertainty: 0.05 }).toFixed(2)).toBe('0.92');
    expect(conformanceProbability({ lower: 12.5, upper: 16.3 }, { value: 13.6, standardUncertainty: 1.8 }).toFixed(2)).toBe('0.66');
  });
  // JCGM 106 speed limit (from memory): 100 km/h, u = 2 % of the reading, 99.9 % wanted: 107 km/h, at which the probability of exceeding is 0.999464 (computed).
  it('speed of 107 km/h exceeds 100 km/h with 0.999464', () => {
    expect(nonconformanceProbability({ upper: 100 }, { value: 107, standardUncertainty: 2.14 })).toBeCloseTo(0.999464, 6);
  });
  // One-sided z by tables of the normal distribution.
  it.each([[0.2, 0.8416], [0.1, 1.2816], [0.05, 1.6449], [0.01, 2.3263], [0.001, 3.0902]])('one limit, risk %d: guard band %d u', (risk, z) => {
    expect(guardBandForSpecificRisk({ standardUncertainty: 1, risk })).toBeCloseTo(z, 4);
  });
  // Two limits, 95 % (ISO 14253-1:2017 default, from secondary texts); factors computed independently, solving Phi(g) − Phi(g − T/u) = 0.95.
  it.each([[10, 1.644854], [6, 1.644918], [5, 1.648767], [4.5, 1.667682], [4.2, 1.71027], [4, 1.796213], [3.95, 1.850757]])('T/u %d: guard band %d u', (width, factor) => {
    expect(guardBandForSpecificRisk({ standardUncertainty: 1, risk: 0.05, width })).toBeCloseTo(factor, 6);
  });
  it('below T/u = 3.92 no guard band gives 95 %', () => {
    expect(guardBandForSpecificRisk({ standardUncertainty: 1, risk: 0.05, width: 3.919 })).toBeNull();
    expect(guardBandForSpecificRisk({ standardUncertainty: 1, risk: 0.05, width: 3.9203 })).not.toBeNull();
  });
  // ILAC-G8:09/2019 (seen): simple acceptance up to 50 % at the limit, guard band U under 2.5 %; exact 2.275 % one-sided.
  it('a reading on the limit is wrong half the time, one U inside 2.275 %', () => {
    expect(nonconformanceProbability({ upper: 0 }, { value: 0, standardUncertainty: 1 })).toBe(0.5);
    expect(nonconformanceProbability({ upper: 0 }, { value: -2, standardUncertainty: 1 })).toBeCloseTo(0.02275, 5);
  });
  it.each(globals.filter(({ at }) => at % 8 === 0))('the guard band for the consumer’s risk of row $at is the one it was reckoned with', (row: Record<string, unknown>) => {
    const text = row as Record<string, string>;
    const request = { tolerance: { lower: limit(text['TL']), upper: limit(text['TU']) }, process: { mean: Number(text['y0']), deviation: Number(text['u0']) }, standardUncertainty: Number(text['um']) };
    const wanted = Number(text['w_guard_each_side']);
    expect(Math.abs((guardBandForConsumerRisk({ ...request, risk: Number(text['global_consumer_risk_RC']) }) ?? Number.NaN) - wanted)).toBeLessThan(1e-9);
  });
});

describe('at the edges', () => {
  it('guard bands that meet accept nothing', () => {
    expect(globalRisk({ tolerance: { lower: -1, upper: 1 }, acceptance: { lower: 0.1, upper: -0.1 }, process: { mean: 0, deviation: 0.5 }, standardUncertainty: 0.6 })).toMatchObject({ consumer: 0, accepted: 0, consumerOfAccepted: null });
  });
  it('a gauge far finer than the process costs nothing to speak of, one far coarser rejects by its own scatter', () => {
    const fine = globalRisk({ tolerance: { upper: 1 }, acceptance: { upper: 1 }, process: { mean: 0, deviation: 1 }, standardUncertainty: 1e-5 });
    // Both tend to density(1) · u · E|Z|/2 = 0.241970725 · 1e-5 / √(2π), the first term in u.
    expect(fine.consumer / (0.24197072451914337 * 1e-5 * 0.3989422804014327)).toBeCloseTo(1, 4);
    expect(fine.producer / fine.consumer).toBeCloseTo(1, 4);
    const coarse = globalRisk({ tolerance: { lower: -1, upper: 1 }, acceptance: { lower: -1, upper: 1 }, process: { mean: 0, deviation: 1e-4 }, standardUncertainty: 1 });
    expect(coarse.producer).toBeCloseTo(0.31731051, 7);
    expect(coarse.consumer).toBe(0);
  });
  it('the scatter of the gauge is taken out of what was observed', () => {
    expect(processDeviation(5, 3)).toBeCloseTo(4, 12);
    expect(processDeviation(3, 3)).toBeNull();
  });
  it('refuses no limits, a deviation of nothing and a risk outside its range', () => {
    expect(() => conformanceProbability({}, { value: 1, standardUncertainty: 1 })).toThrow(/limits/);
    expect(() => globalRisk({ tolerance: { upper: 1 }, acceptance: { upper: 1 }, process: { mean: 0, deviation: 0 }, standardUncertainty: 1 })).toThrow(/process deviation/);
    expect(() => guardBandForSpecificRisk({ standardUncertainty: 1, risk: 0.7 })).toThrow(/risk/);
    expect(() => guardBandForConsumerRisk({ tolerance: { upper: 1 }, process: { mean: 0, deviation: 1 }, standardUncertainty: 1, risk: 1 })).toThrow(/risk/);
  });
});
