import type { Characteristic, GatePlan, InspectionPlan, SubjectKind } from '../../../shared/traveller/index.ts';
import { FIRST_RULES, rulesFor } from './rule-choices.ts';

/** A place in a plan: a gate, a characteristic of it, or the plan itself where both are empty. */
export interface PlanPlace { readonly gate: string; readonly characteristic: string }
export const ITSELF: PlanPlace = { gate: '', characteristic: '' };

/** Reads `gate` or `gate/characteristic`; keys hold no slash. */
export function placeOf(text: string): PlanPlace {
  const [gate = '', characteristic = ''] = text.split('/');
  return { gate, characteristic };
}
export function placeText({ gate, characteristic }: PlanPlace): string {
  return characteristic === '' ? gate : `${gate}/${characteristic}`;
}

export function gateAt(plan: InspectionPlan, place: PlanPlace): GatePlan | null {
  return plan.gates.find(({ id }) => id === place.gate) ?? null;
}
export function characteristicAt(plan: InspectionPlan, place: PlanPlace): Characteristic | null {
  return gateAt(plan, place)?.characteristics.find(({ id }) => id === place.characteristic) ?? null;
}
export function withGate(plan: InspectionPlan, id: string, gate: GatePlan): InspectionPlan {
  return { ...plan, gates: plan.gates.map((each) => (each.id === id ? gate : each)) };
}
export function withCharacteristic(plan: InspectionPlan, place: PlanPlace, characteristic: Characteristic): InspectionPlan {
  const gate = gateAt(plan, place);
  return gate === null ? plan : withGate(plan, gate.id, { ...gate, characteristics: gate.characteristics.map((each) => (each.id === place.characteristic ? characteristic : each)) });
}

/** A gate at the end of the route, with nothing inspected yet. */
export function withNewGate(plan: InspectionPlan, name: string): { readonly plan: InspectionPlan; readonly place: PlanPlace } {
  const id = freeKey(name, plan.gates.map((gate) => gate.id));
  const gate: GatePlan = { id, name, workedOn: plan.appliesTo, bench: plan.gates.at(-1)?.bench ?? name, roles: ['inspector'], cautions: [], characteristics: [] };
  return { plan: { ...plan, gates: [...plan.gates, gate] }, place: { gate: id, characteristic: '' } };
}
/** A characteristic at the end of a gate, with values to begin from. */
export function withNewCharacteristic(plan: InspectionPlan, gateId: string, name: string, kind: Characteristic['kind']): { readonly plan: InspectionPlan; readonly place: PlanPlace } {
  const gate = gateAt(plan, { gate: gateId, characteristic: '' });
  if (gate === null) return { plan, place: ITSELF };
  const id = freeKey(name, gate.characteristics.map((each) => each.id));
  return { plan: withGate(plan, gateId, { ...gate, characteristics: [...gate.characteristics, newCharacteristic(id, name, kind, plan.appliesTo)] }), place: { gate: gateId, characteristic: id } };
}
export function without(plan: InspectionPlan, place: PlanPlace): InspectionPlan {
  if (place.characteristic === '') return { ...plan, gates: plan.gates.filter(({ id }) => id !== place.gate) };
  const gate = gateAt(plan, place);
  return gate === null ? plan : withGate(plan, gate.id, { ...gate, characteristics: gate.characteristics.filter(({ id }) => id !== place.characteristic) });
}
/** The gate or characteristic one place earlier (−1) or later (1); as it is where there is no such place. */
export function moved(plan: InspectionPlan, place: PlanPlace, by: -1 | 1): InspectionPlan {
  if (place.characteristic === '') return { ...plan, gates: shifted(plan.gates, place.gate, by) };
  const gate = gateAt(plan, place);
  return gate === null ? plan : withGate(plan, gate.id, { ...gate, characteristics: shifted(gate.characteristics, place.characteristic, by) });
}

/** A key made from a name, unlike those taken. Once given it stays, whatever the name becomes. */
export function freeKey(name: string, taken: readonly string[]): string {
  const plain = name.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase().replaceAll(/[^a-z0-9]+/g, '-').replaceAll(/^-+|-+$/g, '').slice(0, 40);
  const key = plain === '' ? 'gate' : plain;
  if (!taken.includes(key)) return key;
  let at = 2;
  while (taken.includes(`${key}-${at}`)) at += 1;
  return `${key}-${at}`;
}

function shifted<T extends { readonly id: string }>(all: readonly T[], id: string, by: -1 | 1): readonly T[] {
  const at = all.findIndex((each) => each.id === id);
  const [here, there] = [all[at], all[at + by]];
  return here === undefined || there === undefined ? all : all.with(at, there).with(at + by, here);
}

function newCharacteristic(id: string, name: string, kind: Characteristic['kind'], subject: SubjectKind): Characteristic {
  const common = { id, name, method: 'eye', destructive: false };
  switch (kind) {
    case 'measured': return {
      kind, ...common, method: 'micrometer', unit: 'mm', decimals: 3, lower: null, upper: null, target: null, plausible: { least: 0, most: 100 }, gaugeKind: null, decisionRule: 'simple', entry: { how: 'direct' },
      factor: null, pressTolerancePercent: null, sampling: FIRST_RULES.fixed,
    };
    case 'counted': return { kind, ...common, kinds: [{ code: 'N1', name: 'Chip', class: 'major' }], sampling: FIRST_RULES.attributes };
    case 'graded': return { kind, ...common, scale: ['0', '1', '2'], worstAccepted: '1', sampling: rulesFor({ kind, subject }).includes('positions') ? FIRST_RULES.positions : FIRST_RULES.fixed };
    case 'confirmed': return { kind, ...common, method: 'record', statement: name, sampling: FIRST_RULES.once };
  }
}
