import { describe, expect, it } from 'vitest';
import type { Characteristic, Command, Decision, Measured, ReadingInputs } from '../../../shared/traveller/index.ts';
import { gateRecord, length, routeWith, verdictAt } from '../../property/traveller/on-the-way.ts';
import { littlePlant, openLot, releasedBatch } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';

/** A lot at a gate with these characteristics. */
function lotAt(...characteristics: readonly Characteristic[]): LittlePlant {
  const plant = littlePlant(routeWith(...characteristics));
  releasedBatch(plant);
  openLot(plant, 'A1', 500);
  plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
  return plant;
}
const at = { subject: 'lot:A1', gate: 'own' };
const read = (characteristic: string, ordinal: number, inputs: ReadingInputs, sure?: true): Command => ({ ...at, type: 'takeReading', characteristic, ordinal, value: null, inputs, ...(sure === undefined ? {} : { sure }) });
const refusalIn = (decision: Decision): unknown => ('refusal' in decision ? decision.refusal : null);
const faultOf = (...characteristics: readonly Characteristic[]): unknown => refusalIn(littlePlant().ask({ type: 'draftPlan', plan: routeWith(...characteristics), why: 'for this test' }));

const one = { rule: 'fixed', n: 1, accept: 'each' } as const;
const um = (change: Partial<Measured>): Measured => length({ unit: 'µm', decimals: 2, gaugeKind: null, target: null, plausible: { least: 0.2, most: 40 }, sampling: one, ...change });
const total = um({ id: 'coating', name: 'Coating', lower: 10, upper: 14, entry: { how: 'crater', ballDiameterMm: 30, layers: 3 } });
const layer = (nth: number, name: string, lower: number, upper: number): Measured => um({ id: name, name, lower, upper, entry: { how: 'craterLayer', of: 'coating', layer: nth } });
const LAYERS = [total, layer(1, 'TiN', 0.5, 1.5), layer(2, 'Al2O3', 3, 5), layer(3, 'TiCN', 6, 8)];
/**
 * Diameters of a crater of a ball of 30 mm, substrate 0.6 mm, through 7 µm, 4 µm and 1 µm: by hand from t = (D² − d²)/(8R), so
 * 0.36 + 0.12·7 = 1.20; 1.68; 1.80 are the squares. The exact form gives 0.1 % more at most.
 */
const THREE_LAYERS = { diametersMm: [Math.sqrt(1.8), Math.sqrt(1.68), Math.sqrt(1.2), 0.6] };

describe('one crater through several layers', () => {
  it('is entered once and gives every layer its value and its verdict, the diameters on each slip', () => {
    const plant = lotAt(...LAYERS);
    const written = plant.must(read('coating', 1, THREE_LAYERS));
    expect(written.map(({ type }) => type)).toEqual(['readingTaken', 'readingTaken', 'readingTaken', 'readingTaken', 'verdictGiven']);
    const values = written.flatMap((body) => (body.type === 'readingTaken' ? [[body.characteristic, Number(Number(body.value).toFixed(1)), body.inputs]] : []));
    expect(values).toEqual([['coating', 12, THREE_LAYERS], ['TiN', 1, THREE_LAYERS], ['Al2O3', 4, THREE_LAYERS], ['TiCN', 7, THREE_LAYERS]]);
    expect(verdictAt(plant, 'A1', 'own').accepted).toBe(true);
  });

  it('rejects for one thin layer though the whole is thick enough', () => {
    const plant = lotAt(...LAYERS);
    // 2 µm of Al2O3 in place of 4, and 9 of TiCN in place of 7: squares 1.8, 1.68, 1.44, 0.36.
    plant.must(read('coating', 1, { diametersMm: [Math.sqrt(1.8), Math.sqrt(1.68), 1.2, 0.6] }));
    expect(verdictAt(plant, 'A1', 'own').results.map(({ accepted }) => accepted)).toEqual([true, true, false, false]);
  });

  it('takes no thickness of a layer by itself, and wants one diameter more than layers, each inside the one before', () => {
    const plant = lotAt(...LAYERS);
    expect(refusalIn(plant.ask({ ...at, type: 'takeReading', characteristic: 'TiN', ordinal: 1, value: 1 }))).toMatchObject({ code: 'wrongKindOfEntry', wanted: 'craterOfAnother', unit: 'coating' });
    expect(refusalIn(plant.ask(read('TiN', 1, THREE_LAYERS)))).toMatchObject({ code: 'wrongKindOfEntry', wanted: 'craterOfAnother' });
    expect(refusalIn(plant.ask(read('coating', 1, { diametersMm: [1.3, 0.6] })))).toMatchObject({ wanted: 'layerDiameters' });
    expect(refusalIn(plant.ask(read('coating', 1, { outerMm: 1.3, innerMm: 0.6 })))).toMatchObject({ wanted: 'layerDiameters' });
    expect(refusalIn(plant.ask(read('coating', 1, { diametersMm: [1.3, 1.1, 1.2, 0.6] })))).toMatchObject({ code: 'valueImpossible', why: 'craterNotConcentric', value: 1.2 });
    expect(gateRecord(plant, 'lot:A1', 'own').work.every(({ readings }) => readings.length === 0)).toBe(true);
  });

  it('asks about a layer that is hardly likely, and takes it when the person is sure', () => {
    const plant = lotAt(...LAYERS);
    const thin = { diametersMm: [Math.sqrt(1.8), Math.sqrt(1.79), Math.sqrt(1.2), 0.6] };
    expect(refusalIn(plant.ask(read('coating', 1, thin)))).toMatchObject({ code: 'unlikelyValue', characteristic: 'TiN', least: 0.2 });
    expect(plant.must(read('coating', 1, thin, true)).filter(({ type }) => type === 'readingTaken')).toHaveLength(4);
  });

  it('is corrected once, and every layer with it; the verdict is judged again', () => {
    const plant = lotAt(...LAYERS);
    plant.must(read('coating', 1, { diametersMm: [Math.sqrt(1.8), Math.sqrt(1.68), 1.2, 0.6] }));
    const written = plant.must({ ...at, type: 'correctReading', characteristic: 'coating', ordinal: 1, value: null, inputs: THREE_LAYERS, reason: 'misread' });
    expect(written.filter(({ type }) => type === 'readingCorrected')).toHaveLength(4);
    expect(verdictAt(plant, 'A1', 'own').results.map(({ accepted }) => accepted)).toEqual([true, true, true, true]);
    expect(refusalIn(plant.ask({ ...at, type: 'correctReading', characteristic: 'TiN', ordinal: 1, value: 1, reason: 'misread' }))).toMatchObject({ wanted: 'craterOfAnother' });
  });

  it('is planned only where a layer has its crater in the same gate, with the same pieces and unit', () => {
    expect(faultOf(...LAYERS)).toBeNull();
    expect(faultOf(layer(1, 'TiN', 0.5, 1.5))).toMatchObject({ why: 'layerOfCrater' });
    expect(faultOf(total, layer(4, 'fourth', 0.5, 1.5))).toMatchObject({ why: 'layerOfCrater' });
    expect(faultOf(total, { ...layer(1, 'TiN', 0.5, 1.5), sampling: { rule: 'fixed', n: 2, accept: 'each' } })).toMatchObject({ why: 'layerOfCrater' });
    expect(faultOf(total, { ...layer(1, 'TiN', 0.5, 1.5), unit: 'mm' })).toMatchObject({ why: 'layerOfCrater' });
    expect(faultOf({ ...total, entry: { how: 'crater', ballDiameterMm: 30 } }, layer(1, 'TiN', 0.5, 1.5))).toMatchObject({ why: 'layerOfCrater' });
    expect(faultOf(um({ lower: 1, upper: 2, entry: { how: 'crater', ballDiameterMm: 30, layers: 1 } }))).toMatchObject({ why: 'craterLayers' });
  });
});

describe('density by weighing in water', () => {
  const density = length({ id: 'density', name: 'Density', unit: 'g/cm³', decimals: 2, lower: 14.8, upper: 15, target: 14.9, plausible: { least: 10, most: 16 }, gaugeKind: null, entry: { how: 'archimedes' }, sampling: one });

  it('is worked out with the water’s temperature and the air, all three readings kept (ARCH-2 of material-checks.csv, derived)', () => {
    const inputs = { massInAirG: 9.87, massInWaterG: 9.2096, waterTemperatureC: 21 };
    expect(lotAt(density).must(read('density', 1, inputs))[0]).toMatchObject({ value: 14.9, inputs });
    expect(lotAt({ ...density, decimals: 4 }).must(read('density', 1, inputs))[0]).toMatchObject({ value: expect.closeTo(14.8988, 3) });
  });

  it('cannot be had of a piece that gains mass under water, nor of water that is not there', () => {
    const plant = lotAt(density);
    expect(refusalIn(plant.ask(read('density', 1, { massInAirG: 9, massInWaterG: 9.1, waterTemperatureC: 21 })))).toMatchObject({ why: 'gainsInWater' });
    expect(refusalIn(plant.ask(read('density', 1, { massInAirG: 9.87, massInWaterG: 9.2, waterTemperatureC: 71 })))).toMatchObject({ why: 'waterTemperature' });
    expect(refusalIn(plant.ask({ ...at, type: 'takeReading', characteristic: 'density', ordinal: 1, value: 14.9 }))).toMatchObject({ wanted: 'whatWasRead' });
    expect(refusalIn(plant.ask(read('density', 1, { sinteredMm: 3 })))).toMatchObject({ wanted: 'weighings' });
  });
});

describe('magnetic saturation', () => {
  const saturation = (change: Partial<Extract<Measured['entry'], { how: 'saturation' }>> = {}): Measured => length({
    id: 'saturation', name: 'Saturation', unit: '%', decimals: 1, lower: 75, upper: 95, target: 86, plausible: { least: 50, most: 105 }, gaugeKind: null,
    entry: { how: 'saturation', unit: 'µT·m³/kg', cobaltFraction: 0.1, warnLowPercent: 80, warnHighPercent: 92, ...change }, sampling: one,
  });

  it('is read in its unit and judged as percent of what the cobalt would give pure, the reading kept with its unit (MS-10, derived)', () => {
    expect(lotAt(saturation()).must(read('saturation', 1, { saturation: 17.1, unit: 'µT·m³/kg' }))[0]).toMatchObject({ value: 84.8, inputs: { saturation: 17.1, unit: 'µT·m³/kg' } });
    // The same piece on another bench: 171 G·cm³/g, and 13.61 A·m²/kg.
    expect(lotAt(saturation()).must(read('saturation', 1, { saturation: 171, unit: 'G·cm³/g' }))[0]).toMatchObject({ value: 84.8 });
    expect(lotAt(saturation()).must(read('saturation', 1, { saturation: 13.61, unit: 'A·m²/kg' }))[0]).toMatchObject({ value: 84.8 });
  });

  it('questions a figure in the wrong unit, and cannot take more than pure cobalt has', () => {
    const plant = lotAt(saturation());
    expect(refusalIn(plant.ask(read('saturation', 1, { saturation: 17.1, unit: 'G·cm³/g' })))).toMatchObject({ code: 'unlikelyValue' });
    expect(refusalIn(plant.ask(read('saturation', 1, { saturation: 300, unit: 'µT·m³/kg' })))).toMatchObject({ code: 'valueImpossible', why: 'notASaturation' });
    expect(refusalIn(plant.ask(read('saturation', 1, { massInAirG: 9, massInWaterG: 8, waterTemperatureC: 20 })))).toMatchObject({ wanted: 'saturation' });
  });

  it('is planned in percent, with some cobalt and warnings that rise', () => {
    expect(faultOf(saturation())).toBeNull();
    expect(faultOf({ ...saturation(), unit: 'µT·m³/kg' })).toMatchObject({ why: 'saturationEntry' });
    expect(faultOf(saturation({ cobaltFraction: 0 }))).toMatchObject({ why: 'saturationEntry' });
    expect(faultOf(saturation({ warnLowPercent: 93 }))).toMatchObject({ why: 'saturationEntry' });
  });
});
