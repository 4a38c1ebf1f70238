import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { blendedFactors, directionalNumbers, evenShrinkage, pressTargetsByDirection } from '../../../shared/carbide/index.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const shrinkage = between(0.1, 0.3);
const part = fc.record({ massKg: between(0.5, 2000), sinteredDensityGPerCm3: between(10, 16), binderFraction: between(0, 0.05), furtherLossFraction: between(0, 0.01), shrinkages: fc.tuple(shrinkage, shrinkage) });
const near = (value: number, wanted: number) => expect(value / wanted).toBeCloseTo(1, 12);

describe('press targets by direction', () => {
  it('with even shrinkage are a mass balance and a cube', () => {
    fc.assert(fc.property(between(20, 5000), between(10, 16), between(0, 0.05), between(0, 0.01), between(0, 0.5), between(1, 20), (sinteredVolumeMm3, sinteredDensityGPerCm3, binderFraction, furtherLossFraction, even, sizeMm) => {
      const targets = pressTargetsByDirection({ sinteredVolumeMm3, sinteredDensityGPerCm3, binderFraction, furtherLossFraction, shrinkages: evenShrinkage(even), heightMm: sizeMm, acrossMm: sizeMm });
      near(targets.pressWeightG, (sinteredVolumeMm3 * sinteredDensityGPerCm3) / 1000 / (1 - binderFraction) / (1 - furtherLossFraction));
      for (const size of [targets.greenHeightMm, targets.dieMm ?? 0, targets.dieFactor * sizeMm]) near(size, sizeMm / (1 - even));
      near(targets.greenVolumeMm3, sinteredVolumeMm3 / (1 - even) ** 3);
      near(targets.greenDensityGPerCm3, (1000 * targets.pressWeightG) / targets.greenVolumeMm3);
    }));
  });

  it('agree among themselves: the green volume shrinks to the sintered one, and its mass less what leaves is the sintered mass', () => {
    fc.assert(fc.property(shrinkage, shrinkage, shrinkage, between(20, 5000), between(0, 0.05), (across, width, along, sinteredVolumeMm3, binderFraction) => {
      const targets = pressTargetsByDirection({ sinteredVolumeMm3, sinteredDensityGPerCm3: 14.65, binderFraction, shrinkages: { across, width, along }, heightMm: 4.76 });
      near(targets.greenVolumeMm3 * (1 - across) * (1 - width) * (1 - along), sinteredVolumeMm3);
      near((targets.greenVolumeMm3 / 1000) * targets.greenDensityGPerCm3 * (1 - binderFraction), (sinteredVolumeMm3 / 1000) * 14.65);
      near(1 / (targets.dieFactor ** 2 * targets.heightFactor), directionalNumbers({ across, width, along }).volumeRatio);
    }));
  });
});

describe('the factors of a blend', () => {
  it('lie between those of its parts, and equal parts give themselves', () => {
    fc.assert(fc.property(fc.array(part, { minLength: 1, maxLength: 6 }), (parts) => {
      const blend = blendedFactors(parts);
      const values: readonly (readonly [number, readonly number[]])[] = [
        [blend.binderFraction, parts.map((each) => each.binderFraction)], [blend.furtherLossFraction, parts.map((each) => each.furtherLossFraction)],
        [blend.sinteredDensityGPerCm3, parts.map((each) => each.sinteredDensityGPerCm3)], ...[0, 1].map((at) => [blend.shrinkages[at] ?? 0, parts.map((each) => each.shrinkages[at] ?? 0)] as const),
      ];
      for (const [value, all] of values) expect(value >= Math.min(...all) && value <= Math.max(...all), `${value} of ${all.join(', ')}`).toBe(true);
      const [first] = parts;
      if (first !== undefined) expect(blendedFactors([first, { ...first, massKg: first.massKg * 3 }])).toEqual({ binderFraction: first.binderFraction, furtherLossFraction: first.furtherLossFraction, sinteredDensityGPerCm3: first.sinteredDensityGPerCm3, shrinkages: [...first.shrinkages] });
    }));
  });

  it('are those of a blend of blends: mixing in two steps is mixing at once', () => {
    fc.assert(fc.property(part, part, part, (a, b, c) => {
      const ab = { ...blendedFactors([a, b]), massKg: a.massKg + b.massKg };
      const [twice, once] = [blendedFactors([ab, c]), blendedFactors([a, b, c])];
      near(twice.sinteredDensityGPerCm3, once.sinteredDensityGPerCm3);
      expect(twice.binderFraction).toBeCloseTo(once.binderFraction, 12);
      expect(twice.furtherLossFraction).toBeCloseTo(once.furtherLossFraction, 12);
      twice.shrinkages.forEach((value, at) => near(value, once.shrinkages[at] ?? 0));
    }));
  });

  it('stay within the square of the difference where green and sintered volumes are added up instead of shrinkages', () => {
    fc.assert(fc.property(between(0.1, 1), between(0.16, 0.21), between(-0.02, 0.02), (share, even, apart) => {
      const parts = [{ massKg: share, shrinkages: [even] }, { massKg: 1, shrinkages: [even + apart] }].map((each) => ({ sinteredDensityGPerCm3: 14.65, binderFraction: 0.02, furtherLossFraction: 0, ...each }));
      const green = parts.reduce((sum, { massKg, shrinkages: [s = 0] }) => sum + massKg / (1 - s) ** 3, 0);
      const byVolume = 1 - (parts.reduce((sum, { massKg }) => sum + massKg, 0) / green) ** (1 / 3);
      // Taylor of f = (1 − S)⁻³: the difference is w(1 − w)·f″/(2f′)·(S₁ − S₂)², with f″/(2f′) = 2/(1 − S) at most 2.6 here and w(1 − w) at most ¼.
      expect(Math.abs((blendedFactors(parts).shrinkages[0] ?? 0) - byVolume)).toBeLessThanOrEqual(0.7 * apart ** 2 + 1e-12);
    }));
  });
});
