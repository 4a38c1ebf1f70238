import { describe, expect, it } from 'vitest';
import { MOST_LOG_ROWS, programmeFault, readFurnaceLog } from '../../../shared/carbide/furnace-log/index.ts';
import type { FurnaceLog, ProgrammeLimits, ProgrammeSegment } from '../../../shared/carbide/furnace-log/index.ts';

function log(text: string): FurnaceLog {
  const read = readFurnaceLog(text);
  if ('fault' in read) throw new Error(JSON.stringify(read.fault));
  return read;
}
function fault(text: string): readonly unknown[] {
  const read = readFurnaceLog(text);
  return 'fault' in read ? [read.fault.code, read.fault.line, read.fault.column, read.fault.found] : ['read'];
}

describe('a furnace log is read', () => {
  it('with decimal points between commas, with decimal commas between semicolons or tabs', () => {
    const wanted = { atMin: [0, 1.5], temperatureC: [20.5, 21], pressureMbar: null, gas: null, startedAt: null };
    expect(log('time,temperature\n0,20.5\n1.5,21\n')).toEqual(wanted);
    expect(log('Time;Temperature\r\n0;20,5\r\n1,5;21\r\n')).toEqual(wanted);
    expect(log('\uFEFFTEMP\tTIME\n20,5\t0\n21\t1,5')).toEqual(wanted);
  });

  it('with units in the heads or in a line of their own', () => {
    expect(log('time [h],temperature (°C),pressure [bar]\n0,20,1\n0.5,30,60').pressureMbar).toEqual([1000, 60_000]);
    expect(log('time;temperature;pressure;gas\ns;°C;Pa;\n0;20;100;N2\n90;30;;Ar')).toEqual({ atMin: [0, 1.5], temperatureC: [20, 30], pressureMbar: [1, null], gas: ['N2', 'Ar'], startedAt: null });
  });

  it('with dates as times: only differences count, zones are minded', () => {
    expect(log('time,temperature\n2026-03-01 22:30,20\n2026-03-02T00:00:30Z,25')).toMatchObject({ atMin: [0, 90.5], startedAt: '2026-03-01 22:30' });
    expect(log('time,temperature\n2026-03-01T22:00+01:00,20\n2026-03-01T21:01:00Z,25').atMin).toEqual([0, 1]);
  });

  it('with times that begin anywhere', () => expect(log('elapsed,temp\n100,20\n105,25').atMin).toEqual([0, 5]));
});

describe('what is no furnace log is refused with its line and column', () => {
  it.each([
    ['nothing in it', ' \n', ['empty', 1, 0, '']],
    ['a head that is misspelt', 'time,temperature,presure\n0,1,2', ['headUnknown', 1, 3, 'presure']],
    ['a head twice', 'time,temperature,temp\n0,1,2', ['headTwice', 1, 3, 'temp']],
    ['no temperature', 'time,pressure\n0,1\n1,2', ['headMissing', 1, 0, 'time | pressure']],
    ['another unit', 'time,temperature [K]\n0,300\n1,301', ['unitUnknown', 1, 2, 'K']],
    ['another unit in a line of its own', 'time;temperature\nmin;F\n0;300', ['unitUnknown', 2, 2, 'F']],
    ['a cell too many', 'time,temperature\n0,20,5', ['columnCount', 2, 0, '3']],
    ['no number', 'time,temperature\n0,20\n1,n/a', ['notANumber', 3, 2, 'n/a']],
    ['an empty temperature', 'time,temperature\n0,20\n1,', ['notANumber', 3, 2, '']],
    ['two decimal marks', 'time;temperature\n0;20,5\n1;21.5', ['otherDecimals', 3, 2, '21.5']],
    ['a thousands mark', 'time;temperature\n0;1.400,5\n1;21', ['notANumber', 2, 2, '1.400,5']],
    ['dates and minutes mixed', 'time,temperature\n2026-03-01T10:00,20\n5,21', ['otherTime', 3, 1, '5']],
    ['a day that does not exist', 'time,temperature\n2026-02-30T10:00,20\n2026-03-01T10:00,20', ['notATime', 2, 1, '2026-02-30T10:00']],
    ['below absolute zero', 'time,temperature\n0,-300\n1,20', ['belowAbsoluteZero', 2, 2, '-300']],
    ['a negative pressure', 'time,temperature,pressure\n0,20,-1\n1,20,1', ['negativePressure', 2, 3, '-1']],
    ['a single row', 'time,temperature\n0,20', ['noRows', 1, 0, '1']],
  ])('%s', (_, text, wanted) => expect(fault(text)).toEqual(wanted));

  it('a row more than may be', () => {
    const rows = Array.from({ length: MOST_LOG_ROWS }, (_, at) => `${at},20`).join('\n');
    expect(log(`time,temperature\n${rows}`).atMin.length).toBe(100_000);
    expect(fault(`time,temperature\n${rows}\n200000,20`)).toEqual(['tooManyRows', 100_002, 0, '100001']);
  });
});

const heat = (toC: number): ProgrammeSegment => ({ kind: 'heat', name: `to ${toC}`, toC, leastRateCPerMin: null, mostRateCPerMin: null });
const soak = (lowerC: number, upperC: number): ProgrammeSegment => ({ kind: 'soak', name: 'soak', lowerC, upperC, leastMin: 10, mostMin: null, pressure: null });
const cool = (toC: number): ProgrammeSegment => ({ kind: 'cool', name: `down to ${toC}`, toC, leastRateCPerMin: null, mostRateCPerMin: null });
describe('a programme’s limits', () => {
  it.each<[string, readonly ProgrammeSegment[], string | null]>([
    ['sound', [heat(440), soak(440, 460), heat(1402), soak(1402, 1418), cool(200)], null],
    ['nothing', [], 'noSegments'],
    ['begin with a soak', [soak(1, 2)], 'beginsWithSoak'],
    ['two soaks in a row', [heat(441), soak(440, 460), soak(450, 470)], 'soakAfterSoak'],
    ['lower above upper', [heat(450), soak(460, 440)], 'limitsCrossed'],
    ['a ramp that ends before the soak', [heat(430), soak(440, 460)], 'rampMissesSoak'],
    ['a ramp that stays in the soak', [heat(440), soak(440, 460), heat(455)], 'rampInsideSoak'],
    ['a second ramp lower than the first', [heat(440), heat(430)], 'rampGoesNowhere'],
  ])('%s', (_, segments, wanted) => expect(programmeFault({ segments, rateOverMin: 5, largestGapMin: 5 } satisfies ProgrammeLimits)?.fault ?? null).toBe(wanted));
});
