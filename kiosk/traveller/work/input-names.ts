import type { AskedInput, Characteristic, GateRecord, Measured } from '../../../shared/traveller/index.ts';
import { format, travellerWords } from '../speak.ts';

/** Names of the layers that a crater goes through, from the surface; empty where the gate does not ask for them one by one. */
export function layerNames(gate: GateRecord, lead: Characteristic): readonly string[] {
  const layers = layersOf(gate, lead);
  return lead.kind === 'measured' && lead.entry.how === 'crater' ? Array.from({ length: lead.entry.layers ?? 0 }, (_, at) => layers.find(({ entry }) => entry.how === 'craterLayer' && entry.layer === at + 1)?.name ?? travellerWords().measure.input.layer(at + 1)) : [];
}

/** The characteristics that this one's crater gives values to, outermost first. */
export function layersOf(gate: GateRecord, lead: Characteristic): readonly Measured[] {
  return gate.work.flatMap(({ demand: { characteristic } }) => (characteristic.kind === 'measured' && characteristic.entry.how === 'craterLayer' && characteristic.entry.of === lead.id ? [characteristic] : []))
    .sort((one, other) => layerOf(one) - layerOf(other));
}
function layerOf({ entry }: Measured): number {
  return entry.how === 'craterLayer' ? entry.layer : 0;
}

/** What is to be read now, such as "Mass in air" or "Diameter under TiN". */
export function inputName(asked: AskedInput, layers: readonly string[]): string {
  const words = travellerWords().measure.input;
  return words.names[asked.what](asked, layers[asked.nth - 2] ?? words.layer(asked.nth - 1));
}

/** The line above the keypad: what, where, and what was noted at this piece before. */
export function keypadWord({ entry }: Measured, name: string, ordinal: number, noted: readonly number[]): string {
  const words = travellerWords().measure.input;
  const what = words.keypad(name, ordinal, entry.how === 'crater' ? 'place' : 'piece');
  return [what, ...(entry.how === 'shrinkage' ? [(entry.greenRead === true ? words.about : words.from)(format().number(entry.dieMm))] : []), ...(noted.length === 0 ? [] : [words.noted(noted.map((each) => format().number(each)).join(' · '))])].join(', ');
}
