import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkFurnaceLog, MOST_BUCKETS, readFurnaceLog, reduceFurnaceLog } from '../../../shared/carbide/furnace-log/index.ts';
import type { FurnaceLog, ProgrammeLimits } from '../../../shared/carbide/furnace-log/index.ts';

fc.configureGlobal({ seed: 20261130 });

const row = fc.record({ step: fc.constantFrom(1, 1, 1, 0.5, 2, 0, -3, 40), temperatureC: fc.integer({ min: 0, max: 1500 }), pressureMbar: fc.option(fc.integer({ min: 0, max: 70_000 }), { nil: null }) });
const anyLog = fc.array(row, { minLength: 2, maxLength: 900 }).map((rows): FurnaceLog => {
  let at = 0;
  const atMin = rows.map(({ step }, index) => (index === 0 ? 0 : (at += step)));
  return { atMin, temperatureC: rows.map(({ temperatureC }) => temperatureC), pressureMbar: rows.map(({ pressureMbar }) => pressureMbar), gas: null, startedAt: null };
});
const LIMITS: ProgrammeLimits = {
  rateOverMin: 5, largestGapMin: 10,
  segments: [
    { kind: 'heat', name: 'up', toC: 700, leastRateCPerMin: 0, mostRateCPerMin: 20 },
    { kind: 'soak', name: 'hold', lowerC: 650, upperC: 900, leastMin: 10, mostMin: 60, pressure: { lowerMbar: 10_000, upperMbar: 60_000, leastMin: 5 } },
    { kind: 'cool', name: 'down', toC: 300, leastRateCPerMin: null, mostRateCPerMin: 30 },
  ],
};

describe('the reduced curve', () => {
  it('loses no excursion: each row lies between the least and the greatest of a place, and every one of these was met', () => {
    fc.assert(fc.property(anyLog, (log) => {
      const curve = reduceFurnaceLog(log);
      expect(curve.atMin.length).toBeLessThanOrEqual(MOST_BUCKETS);
      expect([Math.min(...curve.leastC), Math.max(...curve.mostC)]).toEqual([Math.min(...log.temperatureC), Math.max(...log.temperatureC)]);
      for (const value of [...curve.leastC, ...curve.mostC]) expect(log.temperatureC).toContain(value);
      log.atMin.forEach((at, index) => {
        // The place whose stretch of time holds this row is the last that begins no later, or the one before where rows share its first moment.
        const place = curve.atMin.findLastIndex((from) => from <= Math.round(at * 1000) / 1000);
        const value = log.temperatureC[index] ?? Number.NaN;
        expect(place).toBeGreaterThanOrEqual(0);
        expect(value >= (curve.leastC[place] ?? Infinity) && value <= (curve.mostC[place] ?? -Infinity)).toBe(true);
      });
    }), { numRuns: 120 });
  });
});

describe('the check of a log', () => {
  it('never throws, and is within exactly when it found nothing that counts', () => {
    fc.assert(fc.property(anyLog, (log) => {
      const { within, findings, more, segments } = checkFurnaceLog(log, LIMITS);
      expect(within).toBe(more === 0 && findings.every(({ kind }) => kind === 'repeated'));
      expect(segments.length).toBe(3);
      for (const { fromMin, toMin } of findings) expect(toMin).toBeGreaterThanOrEqual(fromMin);
    }), { numRuns: 300 });
  });

  it('finds any one row of a soak that is put outside its window', () => {
    const steady = [...Array.from({ length: 36 }, (_, at) => at * 20), ...Array.from({ length: 30 }, () => 700), ...Array.from({ length: 21 }, (_, at) => 690 - at * 20)];
    fc.assert(fc.property(fc.integer({ min: 37, max: 63 }), fc.constantFrom(649.9, 900.1, 1400, 400), (place, value) => {
      const temperatureC = steady.map((each, at) => (at === place ? value : each));
      const check = checkFurnaceLog({ atMin: steady.map((_, at) => at), temperatureC, pressureMbar: steady.map(() => 20_000), gas: null, startedAt: null }, LIMITS);
      expect(check.findings.filter(({ kind }) => kind === 'tooHot' || kind === 'tooCold')).toEqual([{ kind: value > 900 ? 'tooHot' : 'tooCold', segment: 'hold', fromMin: place, toMin: place + 1, value, limit: value > 900 ? 900 : 650 }]);
    }), { numRuns: 60 });
  });
});

describe('reading a file', () => {
  it('answers any text with a log or with a fault inside the text, and never throws', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.array(fc.constantFrom('time', 'temperature', 'pressure', ',', ';', '\n', '1', '1,5', '20.5', '"', '°C', '2026-01-01T00:00'), { maxLength: 60 }).map((parts) => parts.join(''))), (text) => {
      const read = readFurnaceLog(text);
      if ('fault' in read) expect(read.fault.line).toBeLessThanOrEqual(text.split(/\r\n|\n|\r/).length);
      else expect([read.temperatureC.length, read.atMin[0]]).toEqual([read.atMin.length, 0]);
    }), { numRuns: 800 });
  });
});
