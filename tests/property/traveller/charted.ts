import type { ChartCard, ChartRecord, ChartState, Command, SlipBody } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, openLot, releasedBatch } from './little-plant.ts';
import type { LittlePlant } from './little-plant.ts';
import { length, routeWith } from './on-the-way.ts';

/** Charts of the length at the test's own gate, and lots measured there. */
export const CHART = 'chart:lot/CNMG-D1/own/length';
export const MEAN_AND_S: ChartCard = { spec: { kind: 'meanAndS' }, rules: ['beyondLimits', 'eightOnOneSide'], mayHold: false, class: null };
/** Deviations from 10.5 mm of eight steady lots, three readings each, in micrometres; s differs and the means lie on both sides. */
export const STEADY: readonly (readonly [number, number, number])[] = [[0, 10, -10], [12, -4, 1], [-11, 3, -2], [6, 8, -9], [-7, -5, 10], [4, -12, 5], [9, -1, -6], [-3, 7, -8]];

/** A plant whose lots go through one gate that measures a length three times; its powder is released. */
export function measuringPlant(): LittlePlant {
  const plant = littlePlant(routeWith(length()));
  releasedBatch(plant);
  return plant;
}
export function charts(plant: LittlePlant, stream = CHART): ChartState {
  const state = plant.state(stream);
  if (state?.kind !== 'chart') throw new Error(`no charts ${stream}`);
  return state;
}
export function chartOf(plant: LittlePlant, key: string): ChartRecord {
  const record = charts(plant).charts.find((each) => each.key === key);
  if (record === undefined) throw new Error(`no chart ${key}`);
  return record;
}
export function define(plant: LittlePlant, card: ChartCard = MEAN_AND_S, lots: readonly string[] = []): readonly SlipBody[] {
  return plant.must({ type: 'defineChart', chart: CHART, card, lots }, CREW[2]);
}
/** Freezes from the lots named, or from all on the chart. */
export function freezing(plant: LittlePlant, key = 'meanAndS', lots: readonly string[] = charts(plant).points.map(({ subject }) => subject)): Extract<Command, { type: 'freezeChartLimits' }> {
  return { type: 'freezeChartLimits', chart: CHART, key, lots, given: null, reason: 'steady' };
}
/** Opens a lot and reads all three places: deviations from 10.5 mm in micrometres. Returns the slips of the last reading. */
export function measure(plant: LittlePlant, lot: string, offUm: readonly number[]): readonly SlipBody[] {
  openLot(plant, lot, 100);
  plant.must({ type: 'openGate', subject: `lot:${lot}`, gate: 'own' });
  return offUm.map((off, at) => plant.must({ type: 'takeReading', subject: `lot:${lot}`, gate: 'own', characteristic: 'length', ordinal: at + 1, value: Math.round(10500 + off) / 1000, gauge: 'MIC-11' }, CREW[1])).at(-1) ?? [];
}
/** The eight steady lots S1 … S8. */
export function steadyLots(plant: LittlePlant): void {
  STEADY.forEach((off, at) => void measure(plant, `S${at + 1}`, off));
}
