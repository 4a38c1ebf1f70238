import { describe, expect, it } from 'vitest';
import { stripScale, type StripLimits } from '../../../kiosk/parts/strip-scale.ts';

const none: StripLimits = { lower: null, upper: null, guardLower: null, guardUpper: null, target: null };
const limit = (value: number) => ({ value, text: `${value}` });

describe('the scale of a sample strip', () => {
  it('puts the limits at one fifth and four fifths of the height', () => {
    const place = stripScale({ ...none, lower: limit(10), upper: limit(13) }, []);
    expect(place(10)).toMatchObject({ beyond: 'no' });
    expect(place(10).at).toBeCloseTo(0.2, 12);
    expect(place(13).at).toBeCloseTo(0.8, 12);
    expect(place(11.5).at).toBeCloseTo(0.5, 12);
  });

  it('draws a reading beyond the scale at its edge and says so', () => {
    const place = stripScale({ ...none, lower: limit(10), upper: limit(13) }, [1000, -1000]);
    expect(place(1000)).toEqual({ at: 0.97, beyond: 'above' });
    expect(place(-1000)).toEqual({ at: 0.03, beyond: 'below' });
  });

  it('opens on the readings where one limit or none is given', () => {
    const one = stripScale({ ...none, lower: limit(10) }, [12, 14]);
    expect([one(10), one(14)].map(({ beyond }) => beyond)).toEqual(['no', 'no']);
    expect(one(14).at).toBeGreaterThan(one(10).at);
    const noLimit = stripScale(none, [5, 5]);
    expect(noLimit(5).at).toBeCloseTo(0.5, 12);
    expect(stripScale(none, [])(0.5).at).toBeCloseTo(0.5, 12);
  });
});
