import { describe, expect, it } from 'vitest';
import { controlRange } from '../../../kiosk/parts/control-chart-drawing.ts';
import type { ChartedLot } from '../../../kiosk/parts/control-chart-drawing.ts';
import { histogramClasses } from '../../../kiosk/parts/histogram-drawing.ts';

const lot = (value: number, lower: number | null, upper: number | null): ChartedLot => ({ name: 'L', value, centre: 10, lower, upper, sigma: null, signal: null, base: false, start: false });

describe('a control chart’s upright axis', () => {
  it('holds every value and every limit, with room beyond', () => {
    const { low, high } = controlRange([lot(10, 9, 11), lot(12, 9, 11)]);
    expect(low).toBeLessThan(9);
    expect(high).toBeGreaterThan(12);
  });
  it('begins at 0 where nothing lies below', () => expect(controlRange([lot(0.1, 0, 40), lot(0, null, 40)]).low).toBe(0));
  it('has some height though all stand on one line', () => {
    const { low, high } = controlRange([lot(10, null, null)]);
    expect(high).toBeGreaterThan(low);
  });
});

describe('the classes of a histogram', () => {
  const values = [4.758, 4.76, 4.761, 4.759, 4.762, 4.76, 4.7605, 4.75, 4.771];

  it('catch every value once', () => expect(histogramClasses(values, 0.001).reduce((sum, { count }) => sum + count, 0)).toBe(values.length));
  it('are equally wide, whole steps of the resolution, with no value of a gauge on a boundary', () => {
    const classes = histogramClasses(values, 0.001);
    for (const { from, to } of classes) {
      const steps = (to - from) / 0.001;
      expect(steps).toBeCloseTo(Math.round(steps), 6);
      // Half a step aside: 4.7575 and not 4.757.
      expect(Math.abs(((from / 0.001) % 1) - 0.5)).toBeLessThan(1e-6);
    }
  });
  it('are one where all values are equal, and none without a value', () => {
    expect(histogramClasses([5, 5, 5], 0.01)).toMatchObject([{ count: 3 }]);
    expect(histogramClasses([], 0.01)).toEqual([]);
  });
});
