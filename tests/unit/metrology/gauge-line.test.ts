import { describe, expect, it } from 'vitest';
import { FIRST_NUMBER, readGaugeLine } from '../../../shared/metrology/gauge-line/index.ts';

const read = (line: string, how: Partial<typeof FIRST_NUMBER> = {}, unit = 'mm') => readGaugeLine(line, { ...FIRST_NUMBER, ...how }, unit);
const valueOf = (line: string, how: Partial<typeof FIRST_NUMBER> = {}, unit = 'mm') => {
  const got = read(line, how, unit);
  return 'value' in got ? got.value : got.fault;
};

// Lines of our own making, in the manners gauges and balances send (common practice, no source).
describe('a line of a gauge', () => {
  it.each<readonly [string, number]>([
    ['12.701', 12.701], ['+012.701 mm', 12.701], ['  -0,005mm\r', -0.005], ['12,701 mm', 12.701], ['.5', 0.5], ['−0.003 mm', -0.003], ['- 0.250', -0.25], ['\u000212.700\u0003', 12.7], ['d = 12.70 mm ok', 12.7], ['0', 0], ['0012', 12],
  ])('%j reads %d where nothing is said', (line, value) => expect(valueOf(line)).toBe(value));

  it('is read behind words, at a place of several numbers, and with a prefix of letters and figures', () => {
    expect(valueOf('01A+00012,701', { after: '01A' })).toBe(12.701);
    expect(valueOf('01A+00012,701', { number: 2 })).toBe(12.701);
    expect(valueOf('01A-00012,701', { number: 2 })).toBe(-12.701);
    expect(valueOf('T 21.5 C  W 9.812 g', { after: 'W', unit: 'g' }, 'g')).toBe(9.812);
    expect(valueOf('X=1.000 Y=2.000 Z=3.000', { number: 3 })).toBe(3);
  });

  it('takes its sign from before the figure only, never from a word', () => {
    expect(valueOf('A-12.7')).toBe(-12.7);
    expect(valueOf('A12.7')).toBe('noNumber');
  });

  it('in another unit than the gauge’s is no reading, unless the plant says how many of its own it is', () => {
    expect(valueOf('0.5000 in')).toBe('otherUnit');
    expect(valueOf('0.5000 in', { unit: 'in', factor: 25.4 })).toBe(12.7);
    expect(valueOf('12.7 mm', { unit: 'in', factor: 25.4 })).toBe('otherUnit');
    expect(valueOf('41,2 um', {}, 'µm')).toBe(41.2);
    expect(valueOf('41.2 \u03bcm', {}, '\u00b5m')).toBe(41.2);
    expect(valueOf('12.7', { unit: 'mm' })).toBe('otherUnit');
  });

  it('that cannot be read is said, never guessed: groups, two signs, no figure', () => {
    expect([valueOf('1,234.5'), valueOf('1.234.5'), valueOf('Err'), valueOf(''), valueOf('\r\n'), valueOf('Lo BAT'), valueOf('12.7', { number: 2 }), valueOf('12.7', { after: 'W' })]).toEqual(['unclear', 'unclear', 'noNumber', 'empty', 'empty', 'noNumber', 'noNumber', 'noNumber']);
  });

  it('keeps the figure as it was sent beside its value, so that a trailing nought is seen', () => {
    expect(read('+012.700 mm')).toEqual({ value: 12.7, plain: '12.700' });
    expect(read('-0,50')).toEqual({ value: -0.5, plain: '-0.50' });
  });
});
