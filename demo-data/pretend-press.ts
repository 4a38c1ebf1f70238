import type { Floor } from './floor.ts';
import type { DemoPerson } from './people.ts';
import { chanceFrom } from './chance.ts';

/** The press that makes weights while the demo is served, so that its desk can be seen at work. Everything about it is invented. */
export const PRETEND_PRESS = 'PRESS-3';
const LOT = 'L26-0490';
/** The powder begins to bridge here, and the operator sets the press again there. */
const [driftsFrom, setAgainAt] = [240, 960];
/** In half widths of the weight's limits: scatter of a piece, and what the mean gains with each piece while it drifts. */
const [scatter, slope] = [0.17, 0.0007];

/** Registered when the history ends: what is written beforehand knows one press and one balance. */
function registerIt(floor: Floor, keeper: DemoPerson): void {
  const calibrationDue = new Date(Date.parse(floor.now) + 180 * 86_400_000).toISOString().slice(0, 10);
  floor.give(keeper, 'Office', { type: 'registerGauge', gauge: { id: 'BAL-22', name: 'Press balance 3', gaugeKind: 'balance', unit: 'g', resolution: 0.001, expandedUncertainty: 0.002, least: 0, most: 60, calibrationDue, bench: 'Press 3' } });
  floor.give(keeper, 'Office', { type: 'registerPress', press: { id: PRETEND_PRESS, name: 'Press 3', bench: 'Press 2', balance: 'BAL-22' } });
}

/** A lot stands open at the press, with the press set on it and nothing weighed yet. */
export function lotAtPretendPress(floor: Floor, { keeper, inspector }: { readonly keeper: DemoPerson; readonly inspector: DemoPerson }, batch: string): void {
  registerIt(floor, keeper);
  floor.give(inspector, 'Press 2', { type: 'openLot', lot: LOT, product: 'DCGT-D4', batch, quantity: 2400, trayCapacity: 60, order: 'D-0490' });
  floor.give(inspector, 'Press 2', { type: 'openGate', subject: `lot:${LOT}`, gate: 'pressing' });
  floor.give(inspector, 'Press 2', { type: 'setPress', press: PRETEND_PRESS, lot: LOT });
}

/**
 * Weight of the nth piece, g, from the same seed always the same. @param n from 1 @param limits of the weight, g
 * @remarks It drifts upwards from one piece on until the press is set again, so that drift is announced before any piece is outside. Invented.
 */
export function pretendWeightG(n: number, { lower, upper }: { readonly lower: number; readonly upper: number }): number {
  const [middle, half] = [(lower + upper) / 2, (upper - lower) / 2];
  const off = n > driftsFrom && n <= setAgainAt ? slope * (n - driftsFrom) : 0;
  return chanceFrom(`pretend ${n}`).normal(middle + half * off, half * scatter, 3);
}
