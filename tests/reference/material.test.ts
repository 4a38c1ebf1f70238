import { describe, expect, it } from 'vitest';
import {
  apparentDensityGPerCm3, bendingStrengthOfCylinder, carbonEatenByOxygenKg, carbonToAddKg, carbonWindow, componentOf, compositionFault, convertSaturation, correctedFlowTimeS,
  expectedCoercivityKAPerM, fullSaturation, grainClass, isSaturationWindow, meanLinearInterceptUm, porosityLevels, porosityRank, reckonGrade, relativeSaturationPercent,
  SATURATION_UNITS, saturationStanding, stoichiometricCarbonPercent, tungstenToAddKg, USUAL_SATURATION_WINDOW, vickersHardness,
} from '../../shared/carbide/index.ts';
import { readCsv } from './read-csv.ts';

// Formula, expected value, tolerance and evidence of each row: data/material-checks.csv. Rows of density, water, shrinkage and crater: carbide.test.ts.

const rows = readCsv('material-checks.csv');
/** The number after a name in the row's inputs, such as `d=3.3`. */
const given = (row: Record<string, string>, name: string) => Number(new RegExp(`(?:^|[ ,])${name}=\\+?(-?[\\d.]+)`).exec(row['inputs'] ?? '')?.[1]);

/** What the rows not checked in carbide.test.ts ask for, by the beginning of their id. */
const OURS: Readonly<Record<string, (row: Record<string, string>) => number>> = {
  'HC-6-': (row) => expectedCoercivityKAPerM(given(row, 'wCo'), given(row, 'dWC')),
  'HC-10-': (row) => expectedCoercivityKAPerM(given(row, 'wCo'), given(row, 'dWC')),
  'HC-15-': (row) => expectedCoercivityKAPerM(given(row, 'wCo'), given(row, 'dWC')),
  'HV-': (row) => vickersHardness({ forceN: given(row, 'F'), firstMm: given(row, 'd'), secondMm: given(row, 'd') }),
  'TRS-': (row) => bendingStrengthOfCylinder({ forceN: given(row, 'F'), spanMm: given(row, 'l'), diameterMm: given(row, 'd') }),
  'AD-': (row) => apparentDensityGPerCm3(given(row, 'm')),
  'FL-': (row) => correctedFlowTimeS(given(row, 't_meas'), given(row, 't_ref')),
  'C-0': (row) => stoichiometricCarbonPercent(given(row, 'wCo') / 100),
  'C-1': (row) => stoichiometricCarbonPercent(given(row, 'wCo') / 100),
  'C-CORR': (row) => carbonToAddKg({ batchKg: given(row, 'm_batch'), nowPercent: given(row, 'C_now'), targetPercent: given(row, 'C_target') }),
};
const ELSEWHERE = ['RHO-', 'VB-', 'H2O-', 'ARCH-', 'MS-', 'HC-U', 'SHR-', 'PW-', 'CG-'];
const oursFor = (id: string) => Object.entries(OURS).find(([begins]) => id.startsWith(begins))?.[1];

describe('every row of material-checks.csv', () => {
  it('is checked here or in carbide.test.ts', () => {
    expect(rows).toHaveLength(59);
    expect(rows.filter(({ id = '' }) => oursFor(id) === undefined && !ELSEWHERE.some((begins) => id.startsWith(begins))).map(({ id }) => id)).toEqual([]);
  });

  it.each(rows.filter(({ id = '' }) => oursFor(id) !== undefined))('$id: $quantity of $inputs is $expected $unit ($evidence)', (row) => {
    const ours = oursFor(row['id'] ?? '')?.(row) ?? Number.NaN;
    expect(Math.abs(ours - Number(row['expected'])), `${row['id']}: ${ours}, expected ${row['expected']}`).toBeLessThanOrEqual(Number(row['tolerance_abs']));
  });
});

const straight = (cobaltPercent: number) => [{ component: 'WC', massPercent: 100 - cobaltPercent }, { component: 'Co', massPercent: cobaltPercent }];

describe('densities of straight grades', () => {
  // Handbook tables of the metals handbooks and GOST 3882-74, both from memory; the handbooks round to 0.1 and stray from the mixture at 25 %.
  it.each(readCsv('wc-co-densities.csv'))('$co_percent % cobalt: handbook $handbook_least to $handbook_most g/cm³ ($tag)', (row) => {
    const density = reckonGrade(straight(Number(row['co_percent']))).densityGPerCm3;
    expect(density).toBeGreaterThan(Number(row['handbook_least']) - 0.1);
    expect(density).toBeLessThan(Number(row['handbook_most']) + 0.15);
    if (row['gost_least'] === '') return;
    expect(density).toBeGreaterThan(Number(row['gost_least']));
    expect(density).toBeLessThan(Number(row['gost_most']));
  });

  it('the lattice of WC (a 2.906, c 2.837 Å, seen) bears the density in the table within 0.5 %', () => {
    const cellCm3 = ((Math.sqrt(3) / 2) * 2.906 ** 2 * 2.837) * 1e-24;
    const xRay = (183.84 + 12.011) / (6.02214076e23 * cellCm3);
    expect(xRay).toBeCloseTo(15.67, 2);
    expect(Math.abs(xRay / (componentOf('WC')?.densityGPerCm3 ?? 0) - 1)).toBeLessThan(0.005);
  });

  it('the invented grade of the demo plant has 14.67 g/cm³ (WC 91.65, Co 8, Cr3C2 0.35; derived by hand: 1/(0.9165/15.63 + 0.08/8.90 + 0.0035/6.68))', () => {
    expect(reckonGrade([{ component: 'WC', massPercent: 91.65 }, { component: 'Co', massPercent: 8 }, { component: 'Cr₃C₂', massPercent: 0.35 }]).densityGPerCm3).toBeCloseTo(1 / (0.9165 / 15.63 + 0.08 / 8.9 + 0.0035 / 6.68), 10);
  });

  it('takes the density the plant gives in place of the table (15.70: 15.01 at 6 %, derived)', () => {
    const [wc, co] = straight(6);
    expect(reckonGrade([{ component: 'WC', massPercent: wc?.massPercent ?? 0, densityGPerCm3: 15.7 }, ...(co === undefined ? [] : [co])]).densityGPerCm3).toBeCloseTo(15.01, 2);
  });
});

describe('composition', () => {
  it.each([
    [[], { why: 'empty' }],
    [[{ component: 'WC', massPercent: 90 }, { component: 'Co', massPercent: 9 }], { why: 'sum', sumPercent: 99 }],
    [[{ component: 'WC', massPercent: 90 }, { component: 'Co', massPercent: 10.2 }], { why: 'sum', sumPercent: 100.2 }],
    [[{ component: 'WC', massPercent: 90 }, { component: 'WC', massPercent: 10 }], { why: 'twice', component: 'WC' }],
    [[{ component: 'Cr3C2', massPercent: 50 }, { component: 'Cr₃C₂', massPercent: 50 }], { why: 'twice', component: 'Cr₃C₂' }],
    [[{ component: 'WC', massPercent: 100 }, { component: 'Co', massPercent: 0 }], { why: 'noShare', component: 'Co' }],
    [[{ component: 'WC', massPercent: 90 }, { component: 'Ru', massPercent: 10 }], { why: 'densityUnknown', component: 'Ru' }],
    [[{ component: 'WC', massPercent: 90 }, { component: 'Co', massPercent: 10, densityGPerCm3: 8900 }], { why: 'densityImpossible', component: 'Co' }],
    [[{ component: 'WC', massPercent: 90 }, { component: 'Ru', massPercent: 10, densityGPerCm3: 12.4 }], null],
    [[{ component: 'WC', massPercent: 93.95 }, { component: 'Co', massPercent: 6 }], null],
  ])('%j: %j', (parts, fault) => expect(compositionFault(parts)).toEqual(fault));

  it('throws when reckoned with all the same', () => expect(() => reckonGrade(straight(6).slice(0, 1))).toThrow(/composition/));
});

describe('carbon', () => {
  it.each([[6, 5.765], [8, 5.642], [10, 5.519]])('%s %% cobalt: %s wt%% (derived)', (cobalt, carbon) => {
    expect(stoichiometricCarbonPercent(cobalt / 100)).toBeCloseTo(carbon, 3);
    expect(reckonGrade(straight(cobalt)).carbonPercent).toBeCloseTo(carbon, 3);
  });

  it('TiC, TaC, NbC, VC, Cr3C2 and Mo2C hold the carbon that handbooks print (from memory: 20.05, 6.23, 11.45, 19.08, 13.34, 5.89 wt%)', () => {
    const shares = ['TiC', 'TaC', 'NbC', 'VC', 'Cr3C2', 'Mo2C'].map((formula) => (100 * (componentOf(formula)?.carbonFraction ?? 0)).toFixed(2));
    expect(shares.map(Number).map((share, at) => Math.abs(share - ([20.05, 6.23, 11.45, 19.08, 13.34, 5.89][at] ?? 0)) <= 0.011)).toEqual(Array(6).fill(true));
  });

  it.each([[6, 0.09], [8, 0.12], [10, 0.15]])('the two-phase window of %s %% cobalt is about %s wt%% wide (from memory, approximate)', (cobalt, width) => {
    const { lowerPercent, upperPercent, widthPercent } = carbonWindow(stoichiometricCarbonPercent(cobalt / 100), cobalt / 100);
    expect(widthPercent).toBeCloseTo(width, 10);
    expect(upperPercent - lowerPercent).toBeCloseTo(width, 10);
  });

  it('the window of 10 % cobalt has room for a binder with 10 wt% of tungsten, which takes 0.073 wt% of carbon off (derived)', () => {
    const tungstenPer100G = (10 * 0.1) / 0.9;
    const missing = (tungstenPer100G * 12.011) / 183.84;
    expect(missing).toBeCloseTo(0.073, 3);
    const { lowerPercent, upperPercent } = carbonWindow(stoichiometricCarbonPercent(0.1), 0.1);
    expect(upperPercent - missing).toBeGreaterThan(lowerPercent);
  });

  it('500 kg from 5.60 to 5.64 wt% take 0.212 kg of carbon, from 5.68 to 5.64 take 3.55 kg of tungsten (mass balance, derived)', () => {
    expect(carbonToAddKg({ batchKg: 500, nowPercent: 5.6, targetPercent: 5.64 })).toBeCloseTo(0.212, 3);
    const added = tungstenToAddKg({ batchKg: 500, nowPercent: 5.68, targetPercent: 5.64 });
    expect(added).toBeCloseTo(3.55, 2);
    expect((500 * 0.0568) / (500 + added)).toBeCloseTo(0.0564, 12);
    expect(() => carbonToAddKg({ batchKg: 500, nowPercent: 5.68, targetPercent: 5.64 })).toThrow(/targetPercent/);
    expect(() => tungstenToAddKg({ batchKg: 500, nowPercent: 5.6, targetPercent: 5.64 })).toThrow(/targetPercent/);
  });

  it('a kilogram of oxygen takes about 0.75 kg of carbon with it as CO (12/16, derived)', () => expect(carbonEatenByOxygenKg(1000, 0.1)).toBeCloseTo(0.75, 2));
});

describe('magnetic saturation', () => {
  it('pure cobalt is 201.6 µT·m³/kg, 2016 G·cm³/g, 160.4 A·m²/kg and 100 % Co (derived)', () => {
    expect(SATURATION_UNITS.map((unit) => Number(fullSaturation(1, unit).value.toFixed(1)))).toEqual([201.6, 2016, 160.4, 100]);
  });

  it('100 % is 12.1, 16.1 and 20.2 µT·m³/kg at 6, 8 and 10 % cobalt (derived)', () => {
    expect([6, 8, 10].map((cobalt) => Number(fullSaturation(cobalt / 100, 'µT·m³/kg').value.toFixed(1)))).toEqual([12.1, 16.1, 20.2]);
  });

  it('the same reading stands for the same share in every unit', () => {
    for (const unit of SATURATION_UNITS) {
      const there = convertSaturation({ value: 17.1, unit: 'µT·m³/kg' }, unit);
      expect(relativeSaturationPercent(there, 0.1)).toBeCloseTo(84.82, 2);
      expect(convertSaturation(there, 'µT·m³/kg').value).toBeCloseTo(17.1, 10);
    }
    expect(() => convertSaturation({ value: 2016, unit: 'µT·m³/kg' }, 'A·m²/kg')).toThrow(/201.6/);
  });

  it('the usual window (common practice; a page of the trade gives the steps for 10 % cobalt, seen) says which way a reading lies', () => {
    expect([74.9, 75, 79.9, 80, 85, 92, 92.1, 95, 95.1].map((percent) => saturationStanding(percent, USUAL_SATURATION_WINDOW)))
      .toEqual(['low', 'warnLow', 'warnLow', 'normal', 'normal', 'normal', 'warnHigh', 'warnHigh', 'high']);
    expect(isSaturationWindow({ lowPercent: 80, warnLowPercent: 75, warnHighPercent: 92, highPercent: 95 })).toBe(false);
    expect(() => saturationStanding(85, { lowPercent: 80, warnLowPercent: 75, warnHighPercent: 92, highPercent: 95 })).toThrow(/window/);
  });
});

describe('coercivity, grain, hardness, porosity', () => {
  // Ranges typical of straight grades: common practice. The formula is for orientation and lies near, not always inside.
  it.each([[6, 2, 7, 11], [10, 2, 6, 9], [10, 1, 10, 14], [10, 0.7, 14, 20]])('%s %% cobalt, %s µm: about %s to %s kA/m (common practice)', (cobalt, intercept, least, most) => {
    const expected = expectedCoercivityKAPerM(cobalt, intercept);
    expect(expected).toBeGreaterThan(least * 0.95);
    expect(expected).toBeLessThan(most);
  });

  it('has no answer outside the span of straight grades', () => {
    expect(() => expectedCoercivityKAPerM(30, 1)).toThrow(/cobaltPercent/);
    expect(() => expectedCoercivityKAPerM(10, 0.1)).toThrow(/interceptUm/);
  });

  it('names grain sizes by their intercept (ISO 4499-2 annex, from memory)', () => {
    expect([0.1, 0.2, 0.5, 0.79, 0.8, 1.3, 2.5, 6, 6.1].map(grainClass)).toEqual(['nano', 'ultrafine', 'submicron', 'submicron', 'fine', 'medium', 'coarse', 'coarse', 'extra coarse']);
    expect(meanLinearInterceptUm(240, 300)).toBe(0.8);
    expect(() => grainClass(0)).toThrow(/interceptUm/);
  });

  it('refuses an indentation whose diagonals are too unequal', () => expect(() => vickersHardness({ forceN: 294.2, firstMm: 0.18, secondMm: 0.2 })).toThrow(/secondMm/));

  it('numbers the levels of porosity as ISO 4499-4 does (from memory)', () => {
    expect(porosityLevels('A').map(({ level, volumePercent }) => [level, volumePercent])).toEqual([['A00', 0], ['A02', 0.02], ['A04', 0.06], ['A06', 0.2], ['A08', 0.6]]);
    expect(porosityLevels('B').map(({ poresPerCm2 }) => poresPerCm2)).toEqual([0, 140, 430, 1300, 4000]);
    expect(porosityLevels('C').map(({ level, volumePercent }) => [level, volumePercent])).toEqual([['C00', null], ['C02', null], ['C04', null], ['C06', null], ['C08', null]]);
    expect([porosityRank('A', 'A04'), porosityRank('B', 'A04')]).toEqual([2, null]);
  });
});
