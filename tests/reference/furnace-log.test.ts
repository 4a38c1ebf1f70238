import { describe, expect, it } from 'vitest';
import { checkFurnaceLog, readFurnaceLog } from '../../shared/carbide/furnace-log/index.ts';
import type { LogCheck, LogFinding, ProgrammeLimits } from '../../shared/carbide/furnace-log/index.ts';

/**
 * Logs of an invented furnace run, written by hand a row at a time, and the answers worked out by hand beside each. No published log with its
 * programme's limits is known to us. About 13 h, about 1400 °C and an argon stage of 60 bar are common practice, no source.
 */
const LIMITS: ProgrammeLimits = {
  rateOverMin: 10, largestGapMin: 60,
  segments: [
    { kind: 'heat', name: 'Dewax heating', toC: 440, leastRateCPerMin: null, mostRateCPerMin: 5 },
    { kind: 'soak', name: 'Dewax', lowerC: 440, upperC: 460, leastMin: 60, mostMin: null, pressure: null },
    { kind: 'heat', name: 'Heating', toC: 1402, leastRateCPerMin: 4, mostRateCPerMin: 10 },
    { kind: 'soak', name: 'Sintering', lowerC: 1402, upperC: 1418, leastMin: 60, mostMin: 80, pressure: { lowerMbar: 57_000, upperMbar: 63_000, leastMin: 30 } },
    { kind: 'cool', name: 'Cooling', toC: 200, leastRateCPerMin: null, mostRateCPerMin: 12 },
  ],
};

/**
 * Minute, °C, mbar. Dewax heating 420 °C in 100 min = 4.2; dewax 100 … 160 = 60 min; heating 962 °C in 120 min, at most 480/50 = 9.6 and at
 * least 482/70 = 6.9; sintering 280 … 350 = 70 min; at pressure 300 … 335 = 35 min; cooling 1210 °C in 170 min, fastest 610/60 = 10.2.
 */
const GOOD: readonly (readonly [atMin: number, temperatureC: number, pressureMbar: number])[] = [
  [0, 20, 1], [50, 230, 1], [100, 440, 5], [130, 450, 5], [160, 445, 2],
  [210, 925, 0.1], [260, 1269, 0.1], [280, 1402, 0.1], [290, 1410, 30_000], [300, 1412, 58_000], [320, 1409, 60_000], [335, 1410, 60_500], [350, 1410, 20_000],
  [410, 800, 1000], [460, 400, 1000], [520, 200, 1000],
];
const csv = (rows: readonly (readonly (number | string)[])[]): string => ['time [min],temperature [°C],pressure [mbar]', ...rows.map((row) => row.join(','))].join('\n');
function checked(rows: readonly (readonly [number, number, number])[], limits = LIMITS): LogCheck {
  const read = readFurnaceLog(csv(rows));
  if ('fault' in read) throw new Error(JSON.stringify(read.fault));
  return checkFurnaceLog(read, limits);
}
/** The good run with the rows of these minutes put differently; null takes one out. */
function instead(changes: Readonly<Record<number, readonly (readonly [number, number, number])[]>>): LogCheck {
  return checked(GOOD.flatMap((row) => changes[row[0]] ?? [row]));
}
const found = (check: LogCheck): readonly Omit<LogFinding, never>[] => check.findings;

describe('a furnace log against its programme, answers worked out by hand (invented)', () => {
  it('a run within every limit: where each segment lies, and its minutes', () => {
    const check = checked(GOOD);
    expect([check.within, check.findings]).toEqual([true, []]);
    expect(check.segments.map(({ name, fromMin, toMin, minutesWithin, leastC, mostC }) => [name, fromMin, toMin, minutesWithin, leastC, mostC])).toEqual([
      ['Dewax heating', 0, 100, null, 20, 440], ['Dewax', 100, 160, 60, 440, 450], ['Heating', 160, 280, null, 445, 1402], ['Sintering', 280, 350, 70, 1402, 1412], ['Cooling', 350, 520, null, 200, 1410],
    ]);
  });

  it('too hot in the soak: from the first row outside to the first within again, 320 … 335, worst 1426', () => {
    const check = instead({ 320: [[320, 1420, 60_000], [327, 1426, 60_000]] });
    // Minutes within 1402 … 1418: 280 … 300 and 335 … 350 = 35, so the soak is short of 60 as well.
    expect(found(check)).toEqual([
      { kind: 'tooHot', segment: 'Sintering', fromMin: 320, toMin: 335, value: 1426, limit: 1418 },
      { kind: 'soakShort', segment: 'Sintering', fromMin: 280, toMin: 350, value: 35, limit: 60 },
    ]);
    expect(check.within).toBe(false);
  });

  it('a dip in the soak that comes back is an excursion and not its end', () => {
    // 280 … 300 (20), then 320 at 1395, back at 335: 335 … 350 (15) leaves 35 min within.
    expect(found(instead({ 320: [[320, 1395, 60_000]] }))).toEqual([
      { kind: 'tooCold', segment: 'Sintering', fromMin: 320, toMin: 335, value: 1395, limit: 1402 },
      { kind: 'soakShort', segment: 'Sintering', fromMin: 280, toMin: 350, value: 35, limit: 60 },
    ]);
  });

  it('a soak that ends early is short by the minutes not held', () => {
    // The row at 350 has cooled to 1300: the soak ends at 335, 55 min; cooling then 1110 °C … (1410 − 1300)/15 = 7.3 a minute, within 12.
    expect(found(instead({ 350: [[350, 1300, 20_000]] }))).toEqual([{ kind: 'soakShort', segment: 'Sintering', fromMin: 280, toMin: 335, value: 55, limit: 60 }]);
  });

  it('too fast: the worst rate of a ramp, and when', () => {
    // 230 °C at 50 min, then 440 °C at 80: 7.0 a minute against 5; dewax 80 … 160 = 80 min.
    expect(found(instead({ 100: [[80, 440, 5]] }))).toEqual([{ kind: 'tooFast', segment: 'Dewax heating', fromMin: 50, toMin: 80, value: 7, limit: 5 }]);
  });

  it('too slow: a ramp that stands still for a while', () => {
    // 925 °C at 210 and 945 at 250: 0.5 a minute against 4; then 1269 at 260 is 324/10 = 32.4 against 10.
    expect(found(instead({ 210: [[210, 925, 0.1], [250, 945, 0.1]] }))).toEqual([
      { kind: 'tooFast', segment: 'Heating', fromMin: 250, toMin: 260, value: 32.4, limit: 10 },
      { kind: 'tooSlow', segment: 'Heating', fromMin: 210, toMin: 250, value: 0.5, limit: 4 },
    ]);
  });

  it('never came to its temperature: the farthest it came, and nothing is said of what would follow', () => {
    const check = checked(GOOD.filter(([atMin]) => atMin < 280));
    expect(found(check)).toEqual([{ kind: 'notReached', segment: 'Heating', fromMin: 160, toMin: 260, value: 1269, limit: 1402 }]);
    expect(check.segments.slice(3).map(({ fromMin }) => fromMin)).toEqual([null, null]);
  });

  it('the pressure stage: too short, too low within it, or not recorded at all', () => {
    // At pressure only from 320 to 335: 15 min.
    expect(found(instead({ 300: [[300, 1412, 40_000]] }))).toEqual([{ kind: 'pressureShort', segment: 'Sintering', fromMin: 280, toMin: 350, value: 15, limit: 30 }]);
    // 56,000 at 310 lies between rows at pressure: low until 320; left at pressure 320 … 335 = 15 min.
    expect(found(instead({ 320: [[310, 1410, 56_000], [320, 1409, 60_000]] }))).toEqual([
      { kind: 'pressureLow', segment: 'Sintering', fromMin: 310, toMin: 320, value: 56_000, limit: 57_000 },
      { kind: 'pressureShort', segment: 'Sintering', fromMin: 280, toMin: 350, value: 15, limit: 30 },
    ]);
    const read = readFurnaceLog(['time,temperature', ...GOOD.map(([at, celsius]) => `${at},${celsius}`)].join('\n'));
    expect('fault' in read ? read.fault : checkFurnaceLog(read, LIMITS).findings.map(({ kind }) => kind)).toEqual(['pressureMissing']);
  });

  it('a gap in the log, and time that runs back, stands still or says two things at once', () => {
    // Without the row at 50 the first two stand 100 min apart; the rate over the gap is 4.2 and within.
    expect(found(instead({ 50: [] }))).toEqual([{ kind: 'gap', segment: null, fromMin: 0, toMin: 100, value: 100, limit: 60 }]);
    expect(found(instead({ 130: [[130, 450, 5], [105, 450, 5]] }))).toEqual([{ kind: 'backwards', segment: null, fromMin: 130, toMin: 160, value: 25, limit: 0 }]);
    const twice = instead({ 130: [[130, 450, 5], [130, 450, 5]] });
    expect([twice.within, found(twice)]).toEqual([true, [{ kind: 'repeated', segment: null, fromMin: 130, toMin: 130, value: 1, limit: 0 }]]);
    const other = instead({ 130: [[130, 450, 5], [130, 451, 5]] });
    expect([other.within, found(other)]).toEqual([false, [{ kind: 'contradicting', segment: null, fromMin: 130, toMin: 130, value: 1, limit: 0 }]]);
  });

  it('a log that begins when the furnace is hot already proves nothing of the first ramp', () => {
    expect(found(checked(GOOD.filter(([atMin]) => atMin >= 100)))).toEqual([{ kind: 'startsLate', segment: 'Dewax heating', fromMin: 0, toMin: 0, value: 440, limit: 440 }]);
  });
});
