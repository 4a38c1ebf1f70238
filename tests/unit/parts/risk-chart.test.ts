import { describe, expect, it } from 'vitest';
import { axisTicks, roundStep } from '../../../kiosk/parts/axis-ticks.ts';
import { letterPlaces } from '../../../kiosk/parts/letter-places.ts';
import { LINE_LETTERS } from '../../../kiosk/parts/line-letters.ts';
import { lineMark } from '../../../kiosk/parts/line-marks.ts';
import { stripRows } from '../../../kiosk/parts/lot-strip-drawing.ts';

describe('the ticks of an axis', () => {
  it.each([
    { from: 0, to: 1, most: 6, ticks: [0, 0.2, 0.4, 0.6, 0.8, 1] },
    { from: 0, to: 0.07, most: 8, ticks: [0, 0.01, 0.02, 0.03, 0.04, 0.05, 0.06, 0.07] },
    { from: 0, to: 1234, most: 4, ticks: [0, 500, 1000] },
    { from: -3, to: 3, most: 4, ticks: [-2, 0, 2] },
    { from: 0, to: 3e-7, most: 4, ticks: [0, 1e-7, 2e-7, 3e-7] },
  ])('from $from to $to stand at round numbers', ({ from, to, most, ticks }) => expect(axisTicks(from, to, most)).toEqual(ticks));

  it('are never more than there is room for', () => {
    for (const to of [0.003, 0.17, 1, 6.5, 99, 1e6]) for (const most of [2, 5, 11]) expect(axisTicks(0, to, most).length).toBeLessThanOrEqual(most);
  });
  it('of no range are the one value', () => {
    expect(axisTicks(2, 2, 5)).toEqual([2]);
    expect(axisTicks(0, Number.NaN, 5)).toEqual([0]);
  });
  it.each([[0.11, 0.2], [0.2, 0.2], [0.21, 0.5], [7, 10], [10, 10]])('step for %d is %d', (wanted, step) => expect(roundStep(wanted)).toBe(step));
});

describe('the letters on the lines', () => {
  const frame = { width: 800, height: 300 };
  const line = (y: (x: number) => number) => Array.from({ length: 201 }, (_, at) => ({ x: at * 4, y: y(at * 4) }));

  it('stand on their own line, inside the frame', () => {
    const lines = [line((x) => 300 / (1 + (x / 200) ** 3)), line((x) => 300 / (1 + (x / 400) ** 3))];
    const places = letterPlaces(lines, frame);
    for (const [at, place] of places.entries()) {
      expect(lines[at]).toContainEqual(place);
      expect(place?.x).toBeGreaterThan(16);
      expect(place?.x).toBeLessThan(784);
    }
  });
  it('do not lie on one another where the lines do', () => {
    const same = line((x) => 300 - x / 4);
    const places = letterPlaces([same, same, same, same], frame).flatMap((place) => place ?? []);
    expect(places).toHaveLength(4);
    for (const [at, place] of places.entries()) for (const other of places.slice(at + 1)) expect(Math.hypot(place.x - other.x, place.y - other.y)).toBeGreaterThan(30);
  });
  it('are left out where there is no line', () => expect(letterPlaces([[]], frame)).toEqual([null]));
});

it('every line has a mark of its own, with a hole', () => {
  const marks = LINE_LETTERS.map((letter) => lineMark(letter, 0, 0, 10));
  expect(new Set(marks).size).toBe(4);
  for (const mark of marks) expect(mark.match(/z/g)).toHaveLength(2);
});

it('a strip has room for every lot', () => {
  for (const lots of [1, 10, 250, 1000, 2000]) for (const width of [320, 760, 1240]) {
    const { perRow, cell, height } = stripRows(lots, width);
    expect(cell * perRow).toBeLessThanOrEqual(width + 1e-9);
    expect(Math.ceil(lots / perRow) * 66).toBe(height);
  }
});
