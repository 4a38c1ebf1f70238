import { expect, it } from 'vitest';
import { LineJoiner } from '../../../kiosk/gauges/serial-line.ts';

it('joins what a port delivers in pieces to lines, whichever way they end', () => {
  const joiner = new LineJoiner();
  expect(['12.', '701 mm\r', '\n12.69', '9 mm\r\n12.711 mm\n', '\r\n', '12.7'].map((piece) => joiner.take(piece))).toEqual([[], ['12.701 mm'], [], ['12.699 mm', '12.711 mm'], [], []]);
  expect(joiner.take('05 mm\r')).toEqual(['12.705 mm']);
});

it('keeps no more of a line without an end than a gauge would send', () => {
  const joiner = new LineJoiner();
  for (let at = 0; at < 50; at += 1) expect(joiner.take('\u0000'.repeat(100))).toEqual([]);
  expect(joiner.take('12.7\r')[0]?.length).toBeLessThanOrEqual(204);
});
