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

/** A lot stands open at the press, with the press set on it and nothing weighed yet. */
export function lotAtPretendPress(floor: Floor, inspector: DemoPerson, batch: string): void {
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
