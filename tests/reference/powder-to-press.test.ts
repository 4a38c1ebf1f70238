import { describe, expect, it } from 'vitest';
import {
  blendedFactors, directionalNumbers, evenShrinkage, lengthChangeFromMassChange, pressTargetsByDirection, pressUncertainty, shrinkagesOfBar, weightRoom,
} from '../../shared/carbide/index.ts';
import { readCsv } from './read-csv.ts';

// Rows: data/material-checks.csv, each with formula and evidence. What is worked by hand says how; nothing here was taken from the program's output.

const rows = readCsv('material-checks.csv');
const of = (prefix: string) => rows.filter(({ id }) => id?.startsWith(prefix) === true);
const given = (row: Record<string, string>, name: string) => Number(new RegExp(`(?:^|[ ,])${name}=\\+?(-?[\\d.]+)`).exec(row['inputs'] ?? '')?.[1]);
const PIECE = { sinteredVolumeMm3: 600, sinteredDensityGPerCm3: 14.65, binderFraction: 0.02, heightMm: 4.76 } as const;

describe('shrinkage by direction', () => {
  it.each(of('SHR-'))('$id: even shrinkage $inputs gives $expected (derived)', (row) => {
    const { dieFactor, heightFactor, volumeRatio, volumeShrinkage } = directionalNumbers(evenShrinkage(given(row, 'S')));
    expect(`K=${dieFactor.toFixed(4)} Vratio=${volumeRatio.toFixed(4)} Vshr=${volumeShrinkage.toFixed(4)}`).toBe(row['expected']);
    expect(heightFactor).toBe(dieFactor);
  });

  it('each direction has its own factor: 18 % across and 19 % along leave 0.544644 of the volume (by hand: 0.82 · 0.82 · 0.81)', () => {
    const { dieFactor, heightFactor, volumeRatio } = directionalNumbers({ across: 0.18, along: 0.19 });
    expect([dieFactor, heightFactor, volumeRatio]).toEqual([expect.closeTo(1 / 0.82, 12), expect.closeTo(1 / 0.81, 12), expect.closeTo(0.544644, 12)]);
  });

  it('a bar of 25 × 8 × 6 mm that sinters to 20.5 × 6.6 × 4.86 mm shrank by 18, 17.5 and 19 % (by hand)', () => {
    const bar = shrinkagesOfBar({ lengthMm: 25, widthMm: 8, heightMm: 6 }, { lengthMm: 20.5, widthMm: 6.6, heightMm: 4.86 });
    expect([bar.across, bar.width, bar.along]).toEqual([expect.closeTo(0.18, 12), expect.closeTo(0.175, 12), expect.closeTo(0.19, 12)]);
    // In the plane the area counts: √(0.82 · 0.825) = 0.822496; by hand.
    expect(1 - directionalNumbers(bar).inPlane).toBeCloseTo(0.822496, 6);
    expect(directionalNumbers(bar).volumeRatio).toBeCloseTo((20.5 * 6.6 * 4.86) / (25 * 8 * 6), 12);
  });

  it('a width measured once only, or a bar that grew, is refused', () => {
    expect(() => shrinkagesOfBar({ lengthMm: 25, widthMm: 8, heightMm: 6 }, { lengthMm: 20.5, heightMm: 4.9 })).toThrow(/widthMm/);
    expect(() => shrinkagesOfBar({ lengthMm: 25, heightMm: 6 }, { lengthMm: 25.1, heightMm: 4.9 })).toThrow(/sinteredMm/);
  });
});

describe('press targets by direction', () => {
  it.each(of('PW-2'))('$id: green density for $inputs is $expected g/cm³ (derived)', (row) => {
    const shrinkages = evenShrinkage(given(row, 'S'));
    const { greenDensityGPerCm3 } = pressTargetsByDirection({ ...PIECE, sinteredDensityGPerCm3: given(row, 'rho_s'), binderFraction: given(row, 'b'), shrinkages });
    expect(Math.abs(greenDensityGPerCm3 - Number(row['expected']))).toBeLessThanOrEqual(Number(row['tolerance_abs']));
  });

  it.each(of('PW-4'))('$id: the die for a circle of $expected mm is the one of $inputs (derived)', (row) => {
    const { dieMm } = pressTargetsByDirection({ ...PIECE, shrinkages: evenShrinkage(given(row, 'S')), acrossMm: Number(row['expected']) });
    expect(dieMm).toBeCloseTo(given(row, 'd_die'), 3);
  });

  it('weight, green height with limits, die: by hand for 18 % across, 19 % along', () => {
    const targets = pressTargetsByDirection({ ...PIECE, furtherLossFraction: 0.002, shrinkages: { across: 0.18, along: 0.19 }, heightLimits: { lowerMm: 4.63, upperMm: 4.89 }, acrossMm: 12.7 });
    // 0.6 cm³ · 14.65 g/cm³ = 8.79 g sintered; / 0.97804 = 8.98736 g. 4.76/0.81 = 5.87654, 4.63/0.81 = 5.71605, 4.89/0.81 = 6.03704; 12.7/0.82 = 15.48780.
    expect(targets.pressWeightG).toBeCloseTo(8.98736, 5);
    expect([targets.greenHeightMm, targets.greenHeightLimits?.lowerMm, targets.greenHeightLimits?.upperMm, targets.dieMm]).toEqual([5.87654, 5.71605, 6.03704, 15.4878].map((value) => expect.closeTo(value, 5)));
    // 600/0.544644 = 1101.637 mm³ green; 8.98736 g in it are 8.15819 g/cm³.
    expect([targets.greenVolumeMm3, targets.greenDensityGPerCm3]).toEqual([expect.closeTo(1101.637, 3), expect.closeTo(8.15819, 4)]);
  });

  it('the limits of the height leave the weight the same share of room at one density (by hand: 9 g · 4.63/4.76 = 8.7542, 9 g · 4.89/4.76 = 9.2458)', () => {
    const { lowerG, upperG } = weightRoom(9, 4.76, { lowerMm: 4.63, upperMm: 4.89 });
    expect([lowerG, upperG]).toEqual([expect.closeTo(8.7542, 4), expect.closeTo(9.2458, 4)]);
  });

  it.each(of('PW-3'))('$id: at constant height instead $inputs is $expected % of length (derived)', (row) => {
    expect(100 * lengthChangeFromMassChange(given(row, 'dm/m') / 100)).toBeCloseTo(Number(row['expected']), 3);
  });

  it('limits that do not enclose the height are refused', () => {
    expect(() => pressTargetsByDirection({ ...PIECE, shrinkages: evenShrinkage(0.18), heightLimits: { lowerMm: 4.8, upperMm: 4.9 } })).toThrow(/heightLimits/);
    expect(() => pressTargetsByDirection({ ...PIECE, shrinkages: evenShrinkage(0.18), heightLimits: { lowerMm: 4.76, upperMm: 4.76 } })).toThrow(/heightLimits/);
  });
});

describe('uncertainty of the targets (JCGM 100:2008, 5.1.2, from memory)', () => {
  const factors = { sinteredDensityGPerCm3: 14.65, binderFraction: 0.02, furtherLossFraction: 0, shrinkages: evenShrinkage(0.18) };
  it('adds the relative parts in squares: by hand √((0.0293/14.65)² + (0.00147/0.98)²) = √(0.002² + 0.0015²) = 0.0025', () => {
    expect(pressUncertainty(factors, { sinteredDensityGPerCm3: 0.0293, binderFraction: 0.00147 }).weight).toBeCloseTo(0.0025, 12);
  });
  it('of height and die is that of the shrinkage over what is left: 0.00082/0.82 = 0.001', () => {
    expect(pressUncertainty(factors, { along: 0.00082, inPlane: 0.00041 })).toEqual({ weight: 0, height: expect.closeTo(0.001, 12), dieFactor: expect.closeTo(0.0005, 12) });
  });
  it('agrees with the targets moved by a little (numerical derivative)', () => {
    const at = (change: Partial<typeof factors>) => pressTargetsByDirection({ ...PIECE, ...factors, ...change }).pressWeightG;
    const step = 1e-6;
    const byDensity = ((at({ sinteredDensityGPerCm3: 14.65 + step }) - at({ sinteredDensityGPerCm3: 14.65 - step })) / (2 * step) / at({})) * 0.02;
    const byBinder = ((at({ binderFraction: 0.02 + step }) - at({ binderFraction: 0.02 - step })) / (2 * step) / at({})) * 0.0005;
    expect(pressUncertainty(factors, { sinteredDensityGPerCm3: 0.02, binderFraction: 0.0005 }).weight).toBeCloseTo(Math.hypot(byDensity, byBinder), 8);
  });
});

describe('a blend', () => {
  const a = { massKg: 300, sinteredDensityGPerCm3: 14.6, binderFraction: 0.018, furtherLossFraction: 0, shrinkages: [0.178, 0.186] };
  const b = { massKg: 100, sinteredDensityGPerCm3: 14.7, binderFraction: 0.022, furtherLossFraction: 0.002, shrinkages: [0.182, 0.19] };

  it('of 300 kg and 100 kg has ¾ and ¼ of their binder and shrinkages (by hand)', () => {
    const { binderFraction, shrinkages } = blendedFactors([a, b]);
    expect([binderFraction, ...shrinkages]).toEqual([0.019, 0.179, 0.187].map((value) => expect.closeTo(value, 12)));
  });

  it('balances mass and volume: what the parts give sintered, the blend gives sintered', () => {
    const blend = blendedFactors([a, b]);
    const sinteredG = (massKg: number, part: { readonly binderFraction: number; readonly furtherLossFraction: number }): number => 1000 * massKg * (1 - part.binderFraction) * (1 - part.furtherLossFraction);
    const mass = sinteredG(300, a) + sinteredG(100, b);
    expect(sinteredG(400, blend) / mass).toBeCloseTo(1, 12);
    const volume = sinteredG(300, a) / 14.6 + sinteredG(100, b) / 14.7;
    expect(mass / blend.sinteredDensityGPerCm3 / volume).toBeCloseTo(1, 12);
  });

  it('half and half of 14.6 and 14.7 g/cm³ is 14.64983 g/cm³, not 14.65 (by hand: 2/(1/14.6 + 1/14.7))', () => {
    const even = { binderFraction: 0.02, furtherLossFraction: 0, shrinkages: [0.18], massKg: 50 };
    expect(blendedFactors([{ ...even, sinteredDensityGPerCm3: 14.6 }, { ...even, sinteredDensityGPerCm3: 14.7 }]).sinteredDensityGPerCm3).toBeCloseTo(14.64983, 5);
  });

  it('refuses no part, no mass, and parts measured in different directions', () => {
    expect(() => blendedFactors([])).toThrow(/parts/);
    expect(() => blendedFactors([a, { ...b, massKg: 0 }])).toThrow(/massKg/);
    expect(() => blendedFactors([a, { ...b, shrinkages: [0.18] }])).toThrow(/directions/);
  });
});
