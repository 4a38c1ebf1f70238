import { cellsOf } from '../shared/traveller/index.ts';
import type { Cell, Command } from '../shared/traveller/index.ts';
import type { Chance } from './chance.ts';
import { EQUIPMENT } from './charge-records.ts';
import type { Floor } from './floor.ts';
import { demoFurnaceLog } from './furnace-log.ts';
import type { DemoPerson } from './people.ts';
import { workGate } from './work-gate.ts';

type OpenCharge = Extract<Command, { type: 'openCharge' }>;

/** Lots side by side on the map of a furnace or coating plant, as many cells each as there are for all. */
export function placed(kind: 'furnace' | 'coating', lots: readonly string[]): Pick<OpenCharge, 'equipment' | 'equipmentId' | 'members'> {
  const card = EQUIPMENT.find((each) => each.kind === kind);
  if (card === undefined) throw new Error(`the story has no ${kind}`);
  const cells = cellsOf(card);
  const each = Math.min(4, Math.max(1, Math.floor(cells.length / lots.length)));
  return { equipment: card.name, equipmentId: card.id, members: lots.map((lot, at): OpenCharge['members'][number] => ({ lot, places: [], cells: cells.slice(at * each, (at + 1) * each) satisfies readonly Cell[] })) };
}

/** The recorder's file of a furnace charge, handed in and attached. */
export function attachLog(floor: Floor, person: DemoPerson, charge: string, dip = false): void {
  floor.give(person, 'Lab', { type: 'attachFurnaceLog', charge, attachment: floor.keepFile(demoFurnaceLog(charge, { dip })), fileName: `${charge}.csv` });
}

/** A charge that stands on hold when a visitor comes: the test piece at Top is soft, and the map says which lots lay near it. */
export function failedCharge({ floor, chance }: { readonly floor: Floor; readonly chance: Chance }, lab: DemoPerson, charge: string, lots: readonly string[]): void {
  floor.give(lab, 'Lab', { type: 'openCharge', charge, kind: 'furnace', specification: 'DEMO-F8', programme: 'SINTER-07', ...placed('furnace', lots) });
  floor.wait(30);
  attachLog(floor, lab, charge);
  workGate(floor, chance, lab, `furnace:${charge}`, 'sinter-check', { shift: { 'hardness@Top': -9 } });
}
