import { expect, it } from 'vitest';
import { buildBoxCode } from '../../../shared/traveller/box-code/index.ts';
import { readScanned } from '../../../kiosk/packing/scanned-code.ts';

const payload = buildBoxCode({ item: 'CNMG120408-D1', lot: 'L26-0417', serial: 'L26-0417-003', quantity: 10, packedOn: '2026-11-25', country: 'XX' });

it('reads a box label to its lot and serial and keeps every character of the code', () => {
  expect(readScanned(payload)).toEqual({ what: 'box', lot: 'L26-0417', serial: 'L26-0417-003', payload });
});

it('takes off the line end that a scanner adds, and nothing else', () => {
  expect(readScanned(`${payload}\r\n`)).toEqual(readScanned(payload));
  expect(readScanned(` ${payload}`).what).toBe('fault');
});

it('says that the separators were lost when a scanner types the code without its control characters', () => {
  const lost = readScanned([...payload].filter((character) => character >= ' ').join(''));
  expect(lost).toMatchObject({ what: 'fault', happened: expect.stringContaining('separators') });
});

it('says that a code was cut off before its end', () => {
  expect(readScanned(payload.slice(0, -2))).toMatchObject({ what: 'fault', happened: expect.stringContaining('cut off') });
});

it.each(['L26-0417', 'S26-001', '060-A'])('takes %s for a number that somebody typed', (text) => {
  expect(readScanned(text).what).toBe('text');
});
