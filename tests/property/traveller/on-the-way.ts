import type { Characteristic, GateRecord, InspectionPlan, Measured, SlipBody, Verdict } from '../../../shared/traveller/index.ts';
import { verdictOf } from '../../../shared/traveller/index.ts';
import { PLANS } from '../../../demo-data/plans.ts';
import { CREW, lookAtAll, openLot, releasedBatch, workThrough } from './little-plant.ts';
import type { LittlePlant } from './little-plant.ts';

/** Ways that lots go in the tests: each function does by commands what people do at the benches. */

export const RELEASER = { badge: 'R-501', name: 'Releaser', roles: ['releaser'] } as const;
type Found = readonly { readonly code: string; readonly pieces: number; readonly ordinals?: readonly number[] }[];

export function gateRecord(plant: LittlePlant, stream: string, gate: string): GateRecord {
  const subject = plant.state(stream);
  const record = subject !== null && 'gates' in subject ? subject.gates.find(({ id }) => id === gate) : undefined;
  if (record === undefined) throw new Error(`${stream} has no gate ${gate}`);
  return record;
}

/** The verdict in force at a gate of a lot. */
export function verdictAt(plant: LittlePlant, lot: string, gate: string): Verdict {
  const given = verdictOf(gateRecord(plant, `lot:${lot}`, gate));
  if (given === null) throw new Error(`lot ${lot} has no verdict at ${gate}`);
  return given.verdict;
}

/** Presses a whole lot: every weight on target but for `ejected`, a clean look each time one falls due. */
export function press(plant: LittlePlant, lot: string, ejected: readonly number[] = []): void {
  const at = { subject: `lot:${lot}`, gate: 'pressing' };
  plant.must({ ...at, type: 'openGate' });
  const { work, lotSize } = gateRecord(plant, at.subject, 'pressing');
  const target = work.flatMap(({ demand: { characteristic } }) => (characteristic.kind === 'measured' ? [characteristic.target ?? 0] : []))[0] ?? 0;
  const values = Array.from({ length: lotSize }, (_, index) => ejected[index] ?? target);
  for (let from = 1; from <= lotSize; from += 250) plant.must({ ...at, type: 'takeWeights', characteristic: 'weight', fromPiece: from, values: values.slice(from - 1, from + 249), gauge: 'BAL-21' });
  for (let look = 1; look <= Math.max(1, Math.floor(lotSize / 250)); look += 1) plant.must({ ...at, type: 'takeLook', characteristic: 'looks', look, found: 0 });
}

/** Puts lots into a furnace or coating charge. */
export function load(plant: LittlePlant, kind: 'furnace' | 'coating', id: string, lots: readonly string[]): void {
  plant.must({ type: 'openCharge', charge: id, kind, specification: kind === 'furnace' ? 'DEMO-F8' : 'DEMO-CVD', programme: 'P-1', equipment: 'E-1', members: lots.map((lot) => ({ lot, places: ['Top'] })) });
}
/** The lab works the check of a furnace charge. */
export function checkFurnace(plant: LittlePlant, id: string, values: Readonly<Record<string, number | string | boolean>> = {}): void {
  workThrough(plant, `furnace:${id}`, 'sinter-check', values);
}

/** Works a gate of a lot: every reading on target, the counted samples with these findings. Returns the last slips. */
export function passGate(plant: LittlePlant, lot: string, gate: string, found: Found = []): readonly SlipBody[] {
  workThrough(plant, `lot:${lot}`, gate);
  return gateRecord(plant, `lot:${lot}`, gate).work.flatMap(({ demand: { characteristic } }) => (characteristic.kind === 'counted' ? lookAtAll(plant, lot, gate, characteristic.id, found) : []));
}

/** Two lots, pressed and standing in the furnace charge F1 whose check has not begun. */
export function twoInTheFurnace(plant: LittlePlant): void {
  releasedBatch(plant);
  for (const lot of ['A1', 'A2']) {
    openLot(plant, lot, 300);
    press(plant, lot);
  }
  load(plant, 'furnace', 'F1', ['A1', 'A2']);
}

/** Decides the lot's, batch's or charge's only standing hold. */
export function decideHold(plant: LittlePlant, stream: string, disposition: Extract<Parameters<LittlePlant['must']>[0], { type: 'dispose' }>['disposition'], reason = 'as agreed'): readonly SlipBody[] {
  return plant.must({ type: 'dispose', subject: stream, hold: standing(plant, stream)[0] ?? 'none', disposition, reason }, CREW[2]);
}
/** Ids of the holds that stand. */
export function standing(plant: LittlePlant, stream: string): readonly string[] {
  const subject = plant.state(stream);
  if (subject === null || !('holds' in subject)) throw new Error(`${stream} keeps no holds`);
  return subject.holds.filter(({ lifted }) => lifted === null).map(({ id }) => id);
}

/** A lot of the short route that has passed every gate. */
export function passedLot(plant: LittlePlant, lot: string, quantity = 1000): void {
  openLot(plant, lot, quantity);
  passGate(plant, lot, 'final-visual');
  passGate(plant, lot, 'marking');
}
/** A lot of the short route that is released. */
export function releasedLot(plant: LittlePlant, lot: string, quantity = 1000): void {
  passedLot(plant, lot, quantity);
  plant.must({ type: 'releaseLot', lot }, RELEASER);
}
/** Packs one box, prints its label and reads it back; returns the serial. */
export function labelledBox(plant: LittlePlant, lot: string, pieces = 10): string {
  plant.must({ type: 'packBox', lot, pieces });
  const box = plant.lot(lot).boxes.at(-1)?.serial ?? '';
  plant.must({ type: 'printLabel', lot, box });
  plant.must({ type: 'readLabel', lot, box, payload: plant.lot(lot).boxes.at(-1)?.payload ?? '' });
  return box;
}

/** The route of CNMG-D1 with one gate of the test's own, worked on the lot, after the powder. */
export function routeWith(...characteristics: readonly Characteristic[]): InspectionPlan {
  const route = PLANS.find(({ id }) => id === 'ROUTE-CNMG');
  const powder = route?.gates[0];
  if (route === undefined || powder === undefined) throw new Error('the demo plant has no ROUTE-CNMG');
  return { ...route, gates: [powder, { id: 'own', name: 'Own gate', workedOn: 'lot', bench: 'Bench', roles: ['inspector'], cautions: [], characteristics }] };
}
/** A measured characteristic in millimetres, 10 to 11, read with a micrometer, n 3; change what matters. */
export function length(change: Partial<Measured> = {}): Measured {
  return {
    kind: 'measured', id: 'length', name: 'Length', method: 'micrometer', destructive: false, unit: 'mm', decimals: 3, lower: 10, upper: 11, target: 10.5, plausible: { least: 5, most: 20 },
    gaugeKind: 'micrometer', decisionRule: 'simple', entry: { how: 'direct' }, factor: null, pressTolerancePercent: null, sampling: { rule: 'fixed', n: 3, accept: 'each' }, ...change,
  };
}
