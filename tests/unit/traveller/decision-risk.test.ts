import { describe, expect, it } from 'vitest';
import { summarise } from '../../../shared/metrology/summary/index.ts';
import { poolSummaries } from '../../../shared/metrology/summary/index.ts';
import { decisionRisk } from '../../../shared/traveller/index.ts';
import { riskText } from '../../../shared/words/decision-risk.en.ts';
import { formatFor } from '../../../shared/words/format.ts';

const circle = { lower: 12.675, upper: 12.725, decisionRule: 'guardedAcceptance', entry: { how: 'direct' } } as const;

describe('the risk of a wrong decision at a characteristic', () => {
  it('takes the scatter of the gauge out of that of the readings, and its guard band from the rule', () => {
    // tests/reference/data/guard-band-checks.csv, inscribed circle 12.70 ± 0.025, process 12.708, 0.007, u 0.004, guard band 0.008: RC 6.718342080618e-5, RP 0.1255956940325 (30-digit integrals).
    const found = decisionRisk(circle, { uncertainty: 0.008, mean: 12.708, s: Math.hypot(0.007, 0.004) });
    if (!found.known) throw new Error(found.why);
    expect(found.deviation).toBeCloseTo(0.007, 12);
    expect(found.risk.consumer / 6.718342080618e-5).toBeCloseTo(1, 9);
    expect(found.risk.producer / 0.1255956940325).toBeCloseTo(1, 9);
    expect(found.capability).toBeCloseTo(3.125, 9);
  });

  it('goes by the coverage factor of the gauge', () => {
    const [two, three] = [2, 3].map((coverageFactor) => decisionRisk({ ...circle, decisionRule: 'simple' }, { uncertainty: 0.012, coverageFactor, mean: 12.7, s: 0.02 }));
    expect(two?.known === true && three?.known === true && two.risk.consumer > three.risk.consumer && [two.standardUncertainty, three.standardUncertainty]).toEqual([0.006, 0.004]);
  });

  it('says why it cannot be told', () => {
    const why = (change: object, inputs = { uncertainty: 0.008, mean: 12.7, s: 0.01 as number | null }) => {
      const found = decisionRisk({ ...circle, ...change }, inputs);
      return found.known ? null : found.why;
    };
    expect([why({ entry: { how: 'shrinkage', dieMm: 25 } }), why({ lower: null, upper: null }), why({}, { uncertainty: 0, mean: 1, s: 1 }), why({}, { uncertainty: 1, mean: 1, s: null }), why({}, { uncertainty: 0.02, mean: 12.7, s: 0.01 })]).toEqual(['workedOut', 'noLimit', 'noUncertainty', 'noSpread', 'gaugeExplainsAll']);
  });

  it('is written with two digits that count, however small', () => {
    const format = formatFor('en');
    expect([0.1255956, 0.0000672, 0.5, 1, 2e-7, null].map((risk) => riskText(risk, format))).toEqual(['13 %', '0.0067 %', '50 %', '100 %', '< 0.0001 %', '–']);
  });
});

it('summaries pooled are the summary of all values together', () => {
  const lots = [[12.701, 12.699, 12.711], [12.694], [12.705, 12.698, 12.703, 12.72]];
  const whole = summarise(lots.flat());
  const pooled = poolSummaries(lots.map((values) => summarise(values)));
  expect(pooled?.n).toBe(8);
  expect(pooled?.mean).toBeCloseTo(whole.mean, 12);
  expect((pooled?.s ?? 0) / (whole.s ?? 1)).toBeCloseTo(1, 9);
  expect(poolSummaries([])).toBeNull();
});
