import { describe, expect, it } from 'vitest';
import { alarmShare, DRIFT_PROMISE, emptyDrift, LIMIT_FACTORS, predictCrossing, USUAL_LAMBDA, watchDrift } from '../../../shared/metrology/drift/index.ts';
import type { DriftRule, DriftState } from '../../../shared/metrology/drift/index.ts';
import { normalValues } from './normal-values.ts';

const usual: DriftRule = { lambda: USUAL_LAMBDA, limitFactor: LIMIT_FACTORS[USUAL_LAMBDA], target: 0, sigma: null, resolution: 0 };
/** Values of a standard normal process whose mean runs away by so many σ a piece from the 300th on. */
function stream(seed: number, slope = 0): (count: number) => number[] {
  const next = normalValues(seed);
  let piece = 0;
  return (count) => Array.from({ length: count }, () => next() + Math.max(0, (piece += 1) - 300) * slope);
}

describe('drift, by simulation', () => {
  it('is never announced on more than the stated share of steady streams, σ learned from the stream', () => {
    const streams = 300;
    let alarmed = 0;
    for (let nth = 0; nth < streams; nth += 1) {
      const take = stream(1000 + nth);
      let state = emptyDrift(usual);
      for (let taken = 0; taken < DRIFT_PROMISE.pieces && state.alarms === 0; taken += 500) state = watchDrift(usual, state, take(500));
      if (state.alarms > 0) alarmed += 1;
    }
    // Were the share 1 %, more than 9 of 300 would come with probability 0.001 (binomial).
    expect(alarmed, `of ${streams} steady streams of ${DRIFT_PROMISE.pieces}, seeds 1000 …`).toBeLessThanOrEqual(9);
  });

  it.each([{ limitFactor: 3, pieces: 500 }, { limitFactor: 3.5, pieces: 2000 }])('comes as often as worked out where it is common: L $limitFactor, $pieces pieces, σ known', ({ limitFactor, pieces }) => {
    const rule = { ...usual, limitFactor, sigma: 1 };
    const streams = 1000;
    let alarmed = 0;
    for (let nth = 0; nth < streams; nth += 1) if (watchDrift(rule, emptyDrift(rule), stream(nth)(pieces)).alarms > 0) alarmed += 1;
    const worked = alarmShare(rule, pieces);
    expect(worked).toBeGreaterThan(0.1);
    // The first limits are narrower than those of the long run, so a little more is allowed upwards.
    const allowed = 3.5 * Math.sqrt((worked * (1 - worked)) / streams);
    expect(alarmed / streams).toBeGreaterThan(worked - allowed);
    expect(alarmed / streams).toBeLessThan(worked + allowed + 0.01);
  });

  it.each([{ slope: 0.002, least: 0.85 }, { slope: 0.005, least: 0.85 }, { slope: 0.01, least: 0.75 }])('is announced before the mean comes near a limit 6 σ away, and the place foretold holds: $slope σ a piece', ({ slope, least }) => {
    const streams = 120;
    const truth = 300 + (6 - 3) / slope;
    let [late, foretold, held] = [0, 0, 0];
    for (let nth = 0; nth < streams; nth += 1) {
      const take = stream(5000 + nth, slope);
      let state: DriftState = emptyDrift(usual);
      let predicted: ReturnType<typeof predictCrossing> = null;
      while (state.n < truth && predicted === null) {
        state = watchDrift(usual, state, take(20));
        predicted = predictCrossing(usual, state, 6);
      }
      if (state.alarms === 0) late += 1;
      if (predicted === null) continue;
      foretold += 1;
      if (predicted.from <= truth && (predicted.to === null || predicted.to >= truth)) held += 1;
    }
    expect(late, 'not announced before').toBe(0);
    expect(foretold / streams, 'foretold before it came').toBeGreaterThan(0.95);
    expect(held / foretold, 'interval holds the true piece').toBeGreaterThan(least);
  });

  it('needs no more room for a million values than for a thousand, and blocks of any size give the same', () => {
    const take = stream(3, 0.001);
    let state = emptyDrift(usual);
    const size = (): number => JSON.stringify(state).length;
    state = watchDrift(usual, state, take(1000));
    const early = size();
    for (let block = 0; block < 300; block += 1) state = watchDrift(usual, state, take(1000));
    expect(size()).toBeLessThan(early + 60);
    const all = stream(4, 0.004)(900);
    const single = all.reduce((before, value) => watchDrift(usual, before, [value]), emptyDrift(usual));
    expect(watchDrift(usual, emptyDrift(usual), all)).toEqual(single);
    expect(single.alarms).toBeGreaterThan(0);
  });

  it('ends when the mean is back, and a second drift is a second alarm', () => {
    const next = normalValues(5);
    const at = (mean: number, count: number): number[] => Array.from({ length: count }, () => mean + next());
    let state = watchDrift(usual, emptyDrift(usual), [...at(0, 300), ...at(2, 200)]);
    expect(state.alarm?.side).toBe('above');
    state = watchDrift(usual, state, at(0, 300));
    expect(state.alarm?.ended).toBeGreaterThan(500);
    state = watchDrift(usual, state, at(-2, 200));
    expect(state).toMatchObject({ alarms: 2, alarm: { side: 'below' } });
  });

  it('a balance that shows coarse steps gives no σ of nothing', () => {
    const rule = { ...usual, resolution: 0.01 };
    expect(watchDrift(rule, emptyDrift(rule), Array.from({ length: 500 }, () => 0)).alarms).toBe(0);
  });
});
