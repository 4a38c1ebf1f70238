import { describe, expect, it } from 'vitest';
import { ADHESION_CLASSES, adhesionLoad, craterLayersUm, craterThicknessUm, craterUncertaintyUm } from '../../shared/carbide/index.ts';

// ISO 26423:2009 (formula seen in three independent pages). Single rings: the CG rows in carbide.test.ts.

/** Depth of a sphere of radius R below the chord of diameter D: the sagitta, by Pythagoras alone and not multiplied out. */
const depthMm = (radius: number, diameter: number) => radius - Math.sqrt(radius ** 2 - diameter ** 2 / 4);

describe('layers of one crater', () => {
  it.each([
    { ball: 30, diameters: [1.4, 1.1, 0.8, 0.6], what: 'three layers of CVD on a ball of 30 mm' },
    { ball: 20, diameters: [0.9, 0.7], what: 'one layer on a ball of 20 mm' },
    { ball: 25.4, diameters: [2, 1.9, 1.2, 1, 0.5], what: 'four layers on a ball of 25.4 mm' },
  ])('$what: each is the difference of two depths of the sphere (geometry), and all together the whole', ({ ball, diameters }) => {
    const layers = craterLayersUm({ ballDiameterMm: ball, diametersMm: diameters });
    layers.forEach(({ exactUm }, at) => expect(exactUm).toBeCloseTo(1000 * (depthMm(ball / 2, diameters[at] ?? 0) - depthMm(ball / 2, diameters[at + 1] ?? 0)), 8));
    const whole = craterThicknessUm({ ballDiameterMm: ball, outerMm: diameters[0] ?? 0, innerMm: diameters.at(-1) ?? 0 });
    expect(layers.reduce((sum, { exactUm }) => sum + exactUm, 0)).toBeCloseTo(whole.exactUm, 9);
    expect(layers.reduce((sum, { approximateUm }) => sum + approximateUm, 0)).toBeCloseTo(whole.approximateUm, 9);
  });

  it('D 2.0, d 1.2 on a ball of 30 mm: short 21.333, exact 21.366, 0.15 % apart (worked example, seen formula)', () => {
    const { exactUm, approximateUm } = craterThicknessUm({ ballDiameterMm: 30, outerMm: 2, innerMm: 1.2 });
    expect([exactUm.toFixed(3), approximateUm.toFixed(3)]).toEqual(['21.366', '21.333']);
    expect(100 * (exactUm / approximateUm - 1)).toBeCloseTo(0.15, 2);
  });

  it('refuses diameters that do not shrink from the surface to the substrate, and a single one', () => {
    expect(() => craterLayersUm({ ballDiameterMm: 30, diametersMm: [0.9, 0.9, 0.6] })).toThrow(/diametersMm\[1\]/);
    expect(() => craterLayersUm({ ballDiameterMm: 30, diametersMm: [0.9] })).toThrow(/two or more/);
  });

  it('both diameters ±2 µm at D 0.9, d 0.6 on a ball of 30 mm are ±0.036 µm (derived)', () => {
    expect(craterUncertaintyUm({ ballDiameterMm: 30, outerMm: 0.9, innerMm: 0.6 }, 2)).toBeCloseTo(0.036, 3);
    // By differences, without the formula.
    const at = (outerMm: number, innerMm: number) => craterThicknessUm({ ballDiameterMm: 30, outerMm, innerMm }).approximateUm;
    expect(Math.hypot(at(0.902, 0.6) - at(0.9, 0.6), at(0.9, 0.602) - at(0.9, 0.6))).toBeCloseTo(0.036, 3);
  });
});

it('hardmetal is indented on Rockwell scale A with 588.6 N, and there are four classes (ISO 26443:2023, secondary text)', () => {
  expect(adhesionLoad('hardmetal')).toEqual({ scale: 'A', forceN: 588.6 });
  expect([adhesionLoad('hardSteel').forceN, adhesionLoad('softSteel').forceN]).toEqual([1471.5, 981]);
  expect(ADHESION_CLASSES).toEqual(['0', '1', '2', '3']);
});
