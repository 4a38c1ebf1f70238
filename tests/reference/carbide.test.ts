import { describe, expect, it } from 'vitest';
import {
  archimedesDensity, craterLayersUm, craterThicknessUm, evenShrinkage, lengthChangeFromMassChange, linearShrinkage, oerstedFromKAPerM, pressTargetsByDirection,
  relativeSaturation, shrinkageNumbers, theoreticalDensityGPerCm3, volumeFraction, waterDensityGPerCm3,
} from '../../shared/carbide/index.ts';
import { readCsv } from './read-csv.ts';

// Formula, expected value, tolerance and evidence of each row: data/material-checks.csv. WC 15.63 and Co 8.90 unless the row says otherwise.

const rows = readCsv('material-checks.csv');
const of = (prefix: string) => rows.filter(({ id }) => id?.startsWith(prefix) === true);
/** The number after a name in the row's inputs, such as `D=0.9`. */
const given = (row: Record<string, string>, name: string) => Number(new RegExp(`(?:^|[ ,])${name}=\\+?(-?[\\d.]+)`).exec(row['inputs'] ?? '')?.[1]);

function expectRow(row: Record<string, string>, ours: number): void {
  expect(Math.abs(ours - Number(row['expected'])), `${row['id']}: ${ours}, expected ${row['expected']}`).toBeLessThanOrEqual(Number(row['tolerance_abs']) * 1.0001);
}

const straight = (cobaltPercent: number) => [
  { massFraction: 1 - cobaltPercent / 100, densityGPerCm3: 15.63 },
  { massFraction: cobaltPercent / 100, densityGPerCm3: 8.9 },
];

describe('density', () => {
  it.each(of('RHO-').filter(({ id }) => id !== 'RHO-P'))('$id: WC-Co of $inputs is $expected g/cm³', (row) => {
    expectRow(row, theoreticalDensityGPerCm3(straight(given(row, 'wCo'))));
  });

  it.each(of('RHO-P'))('$id: $inputs is $expected g/cm³', (row) => {
    const parts = ([[86, 15.63], [6, 8.9], [3, 4.93], [4, 14.3], [1, 7.82]] as const).map(([percent, densityGPerCm3]) => ({ massFraction: percent / 100, densityGPerCm3 }));
    expectRow(row, theoreticalDensityGPerCm3(parts));
  });

  it.each(of('VB-'))('$id: $inputs is $expected vol% binder', (row) => {
    expectRow(row, 100 * volumeFraction(straight(given(row, 'wCo')), 1));
  });

  it.each(of('H2O-'))('$id: water at $inputs is $expected kg/m³', (row) => {
    expectRow(row, 1000 * waterDensityGPerCm3(given(row, 't')));
  });

  it.each(of('ARCH-'))('$id: $quantity is $expected g/cm³', (row) => {
    const weighing = { massInAirG: 9.87, massInWaterG: 9.2096, waterTemperatureC: 21 };
    expectRow(row, archimedesDensity(row['id'] === 'ARCH-1' ? { ...weighing, airDensityGPerCm3: 0 } : weighing));
  });

  it('refuses shares that are not a whole and a piece that gains mass under water', () => {
    expect(() => theoreticalDensityGPerCm3([{ massFraction: 0.9, densityGPerCm3: 15.63 }])).toThrow(/sum of the mass fractions/);
    expect(() => archimedesDensity({ massInAirG: 9, massInWaterG: 9.1, waterTemperatureC: 21 })).toThrow(/massInWaterG/);
  });
});

describe('shrinkage and press targets', () => {
  it.each(of('SHR-'))('$id: $inputs gives $expected', (row) => {
    const { dieFactor, volumeRatio, volumeShrinkage } = shrinkageNumbers(given(row, 'S'));
    expect(`K=${dieFactor.toFixed(4)} Vratio=${volumeRatio.toFixed(4)} Vshr=${volumeShrinkage.toFixed(4)}`).toBe(row['expected']);
  });

  it.each(of('PW-2'))('$id: green density for $inputs is $expected', (row) => {
    const [sinteredDensityGPerCm3, shrinkage, binderFraction] = [given(row, 'rho_s'), given(row, 'S'), given(row, 'b')];
    expectRow(row, pressTargetsByDirection({ sinteredVolumeMm3: 600, sinteredDensityGPerCm3, binderFraction, shrinkages: evenShrinkage(shrinkage), heightMm: 4.76 }).greenDensityGPerCm3);
  });

  it.each(of('PW-3'))('$id: $inputs is $expected % of length', (row) => expectRow(row, 100 * lengthChangeFromMassChange(given(row, 'dm/m') / 100)));

  it.each(of('PW-4'))('$id: $inputs sinters to $expected mm', (row) => {
    const shrinkage = given(row, 'S');
    const targets = pressTargetsByDirection({ sinteredVolumeMm3: 500, sinteredDensityGPerCm3: 14.65, binderFraction: 0.02, shrinkages: evenShrinkage(shrinkage), heightMm: 12.7 });
    expect(targets.greenHeightMm).toBeCloseTo(given(row, 'd_die'), 3);
    expectRow(row, given(row, 'd_die') * (1 - shrinkage));
    expect(linearShrinkage(given(row, 'd_die'), 12.7)).toBeCloseTo(shrinkage, 4); // the die size is rounded to 0.001 mm
  });

  it('the pressed weight is the sintered mass and all that leaves (mass balance)', () => {
    const losses = { binderFraction: 0.02, furtherLossFraction: 0.002 };
    const { pressWeightG } = pressTargetsByDirection({ sinteredVolumeMm3: 600, sinteredDensityGPerCm3: 14.65, ...losses, shrinkages: evenShrinkage(0.18), heightMm: 4.76 });
    expect(pressWeightG * 0.98 * 0.998).toBeCloseTo(0.6 * 14.65, 10);
  });
});

describe('crater grinding (ISO 26423:2009, seen)', () => {
  it.each(of('CG-'))('$id: $inputs is $expected µm ($quantity)', (row) => {
    const { exactUm, approximateUm } = craterThicknessUm({ ballDiameterMm: 2 * given(row, 'R'), outerMm: given(row, 'D'), innerMm: given(row, 'd') });
    expectRow(row, row['id']?.endsWith('b') === true ? approximateUm : exactUm);
  });

  it('finds each layer from its own two diameters, and the whole as their sum', () => {
    const layers = craterLayersUm({ ballDiameterMm: 30, diametersMm: [0.9, 0.75, 0.6] });
    const whole = craterThicknessUm({ ballDiameterMm: 30, outerMm: 0.9, innerMm: 0.6 });
    expect(layers).toHaveLength(2);
    expect(layers.reduce((sum, { exactUm }) => sum + exactUm, 0)).toBeCloseTo(whole.exactUm, 10);
    expect(whole.exactUm).toBeCloseTo(3.7512, 4);
    expect(() => craterLayersUm({ ballDiameterMm: 30, diametersMm: [0.6, 0.9] })).toThrow(/smaller than 0.6/);
    expect(() => craterThicknessUm({ ballDiameterMm: 30, outerMm: 0.6, innerMm: 0.9 })).toThrow(/innerMm/);
  });
});

describe('magnetics', () => {
  it.each(of('MS-'))('$id: $inputs is $expected %', (row) => {
    expectRow(row, 100 * relativeSaturation({ saturation: given(row, 'Ms'), cobaltFraction: given(row, 'wCo') / 100 }));
  });

  it.each(of('HC-U'))('$id: $inputs is $expected Oe', (row) => expectRow(row, oerstedFromKAPerM(15.5)));
});
