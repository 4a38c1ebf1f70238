import { decide, decideOwn, evolve, judgedClasses, machineOf } from '../../../shared/traveller/index.ts';
import type { AnyState, Command, CountedRule, Decision, InspectionPlan, Lot, Role, ServerCommand, Slip, SlipBody, Stamp } from '../../../shared/traveller/index.ts';
import { Floor } from '../../../demo-data/floor.ts';
import { inputsGiving, plannedLayersUm } from '../../../demo-data/inputs-giving.ts';
import { openThePlant } from '../../../demo-data/open-the-plant.ts';
import { PLANS } from '../../../demo-data/plans.ts';

/** Everyone in the tests: badge and roles. */
export const CREW: readonly { readonly badge: string; readonly name: string; readonly roles: readonly Role[] }[] = [
  { badge: 'L-201', name: 'Lab', roles: ['lab'] }, { badge: 'I-301', name: 'Inspector', roles: ['inspector'] }, { badge: 'Q-401', name: 'Engineer', roles: ['engineer'] },
  { badge: 'R-501', name: 'Releaser', roles: ['releaser'] }, { badge: 'P-601', name: 'Packer', roles: ['packer'] },
];
export const MASTER = { badge: 'M-999', name: 'Every role', roles: ['inspector', 'lab', 'engineer', 'releaser', 'packer', 'keeper'] as const satisfies readonly Role[] };

function frozen<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    Object.values(value).forEach(frozen);
  }
  return value;
}

/** A small plant in memory; every state is frozen, so that a fold that changes the past is caught. */
export class LittlePlant {
  readonly slips: Slip[] = [];
  readonly #states: Map<string, AnyState>;
  #tick = Date.parse('2026-11-20T06:00:00Z');

  constructor(states: ReadonlyMap<string, AnyState>) {
    this.#states = new Map(states);
  }
  get states(): ReadonlyMap<string, AnyState> { return this.#states; }
  state(stream: string): AnyState | null { return this.#states.get(stream) ?? null; }
  lot(id: string): Lot {
    const state = this.state(`lot:${id}`);
    if (state?.kind !== 'lot') throw new Error(`no lot ${id}`);
    return state;
  }
  ask(command: Command, by: Stamp['by'] = MASTER, more: Partial<Stamp> = {}): Decision {
    this.#tick += 1000;
    return decide({ state: (stream) => this.state(stream) }, command, { at: new Date(this.#tick).toISOString(), by, bench: 'Test bench', seed: `seed-${this.#tick}`, signed: true, coSigner: null, ...more });
  }
  /** Gives a command; its slips are folded in. */
  give(command: Command, by: Stamp['by'] = MASTER, more: Partial<Stamp> = {}): Decision {
    const decision = this.ask(command, by, more);
    if ('slips' in decision) for (const { stream, body } of decision.slips) this.take(stream, body, by.badge);
    return decision;
  }
  /** Lets time pass. */
  wait(minutes: number): void { this.#tick += minutes * 60_000; }
  /** What the server itself gives: a press's weights, the clock. Its slips are folded in. */
  own(command: ServerCommand): Decision {
    this.#tick += 1000;
    const by = machineOf(command);
    const decision = decideOwn({ state: (stream) => this.state(stream) }, command, { at: new Date(this.#tick).toISOString(), by, bench: 'Test bench', seed: '', signed: false, coSigner: null });
    if ('slips' in decision) for (const { stream, body } of decision.slips) this.take(stream, body, by.badge);
    return decision;
  }
  /** Gives a command that must be taken. */
  must(command: Command, by: Stamp['by'] = MASTER, more: Partial<Stamp> = {}): readonly SlipBody[] {
    const decision = this.give(command, by, more);
    if ('refusal' in decision) throw new Error(`${JSON.stringify(command)} → ${JSON.stringify(decision.refusal)}`);
    return decision.slips.map(({ body }) => body);
  }
  /** Code of the refusal; fails when the command is taken. */
  refusalOf(command: Command, by: Stamp['by'] = MASTER, more: Partial<Stamp> = {}): string {
    const decision = this.ask(command, by, more);
    return 'refusal' in decision ? decision.refusal.code : 'none';
  }
  private take(stream: string, body: SlipBody, by: string): void {
    const before = this.state(stream);
    const slip: Slip = frozen({ stream, version: (before?.version ?? 0) + 1, at: new Date(this.#tick).toISOString(), by, bench: 'Test bench', body });
    this.slips.push(slip);
    this.#states.set(stream, frozen(evolve(before, slip)));
  }
}

const base = ((): ReadonlyMap<string, AnyState> => {
  const floor = new Floor('2026-11-01T06:00:00Z');
  openThePlant(floor, '2026-11-20');
  const states = new Map<string, AnyState>();
  for (const { at, by, bench, changes } of floor.entries) for (const { stream, expectedVersion, bodies } of changes) {
    bodies.forEach((body, index) => states.set(stream, frozen(evolve(states.get(stream) ?? null, { stream, version: expectedVersion + index + 1, at, by, bench, body }))));
  }
  return states;
})();

/** The demo plant's records with nothing made yet; `plan` replaces the route of CNMG-D1 where a test wants a shorter one. */
export function littlePlant(plan?: InspectionPlan): LittlePlant {
  const plant = new LittlePlant(base);
  if (plan !== undefined) {
    plant.must({ type: 'draftPlan', plan, why: 'for this test' }, CREW[2]);
    const version = (plant.state(`plan:${plan.id}`) as Extract<AnyState, { kind: 'plan' }>).versions.length;
    plant.must({ type: 'approvePlan', plan: plan.id, planVersion: version }, CREW[2]);
    plant.must({ type: 'approvePlan', plan: plan.id, planVersion: version }, { badge: 'Q-402', name: 'Second engineer', roles: ['engineer'] });
  }
  return plant;
}

/** The route of CNMG-D1 cut down to final visual and marking, for tests of what follows a verdict. */
export const SHORT_ROUTE: InspectionPlan = (() => {
  const route = PLANS.find(({ id }) => id === 'ROUTE-CNMG');
  if (route === undefined) throw new Error('the demo plant has no ROUTE-CNMG');
  return { ...route, gates: route.gates.filter(({ id }) => ['powder', 'final-visual', 'marking'].includes(id)) };
})();

/** The short route with gates for plans of every kind that counts: double, multiple with skip-lot, sequential, limiting quality, two points; some use pieces up. */
export const MIXED_ROUTE: InspectionPlan = (() => {
  const gate = (id: string, rule: CountedRule, destructive = false): InspectionPlan['gates'][number] => ({
    id, name: id, workedOn: 'lot', bench: 'Bench', roles: ['inspector'], cautions: [],
    characteristics: [{ kind: 'counted', id: 'count', name: 'Count', method: 'eye', destructive, kinds: judgedClasses(rule).map((each) => ({ code: each, name: each, class: each })), sampling: rule }],
  });
  const points = { p1Percent: 2, producerRisk: 0.05, p2Percent: 15, consumerRisk: 0.1 };
  return {
    ...SHORT_ROUTE,
    gates: [
      ...SHORT_ROUTE.gates.filter(({ id }) => id === 'powder'),
      gate('double', { rule: 'attributes', switching: 'ISO 2859-1', level: 'II', aqlPercent: { critical: 0.65, major: 2.5 }, samples: 'double' }),
      gate('multiple', { rule: 'attributes', switching: 'MIL-STD-105E', level: 'III', aqlPercent: { major: 4, minor: 6.5 }, samples: 'multiple', skipLot: { clearance: 1, oneIn: 2 } }),
      gate('sequential', { rule: 'sequential', points: { major: points, minor: { ...points, p2Percent: 30 } } }),
      gate('isolated', { rule: 'limitingQuality', lqPercent: { major: 12.5 }, consumerRisk: 0.1 }, true),
      gate('points', { rule: 'twoPoint', samples: 'double', points: { major: points } }),
      ...SHORT_ROUTE.gates.filter(({ id }) => id === 'marking'),
    ],
  };
})();

/** Works a gate of a batch or charge through with the values given by characteristic, else its target or best. */
export function workThrough(plant: LittlePlant, stream: string, gate: string, values: Readonly<Record<string, number | string | boolean>> = {}): void {
  plant.must({ type: 'openGate', subject: stream, gate });
  const subject = plant.state(stream);
  if (subject === null || !('gates' in subject)) throw new Error(`${stream} has no gates`);
  const works = subject.gates.find(({ id }) => id === gate)?.work ?? [];
  for (const { demand: { characteristic, n } } of works) for (let ordinal = 1; ordinal <= n; ordinal += 1) {
    const here = { subject: stream, gate, characteristic: characteristic.id, ordinal, type: 'takeReading' as const };
    const given = values[characteristic.id];
    if (characteristic.kind === 'confirmed') plant.must({ ...here, value: given ?? true, despite: 'read on the recorder’s strip' });
    else if (characteristic.kind === 'graded') plant.must({ ...here, value: given ?? characteristic.scale[0] ?? '' });
    else if (characteristic.kind === 'measured' && characteristic.entry.how !== 'direct') {
      const inputs = inputsGiving(characteristic.entry, typeof given === 'number' ? given : characteristic.target ?? 0, { layersUm: plannedLayersUm(works, characteristic) });
      const gauge = GAUGE[characteristic.gaugeKind ?? ''];
      if (inputs !== null) plant.must({ ...here, value: null, inputs, ...(gauge === undefined ? {} : { gauge }) });
    }
    else if (characteristic.kind === 'measured') plant.must({ ...here, value: given ?? characteristic.target ?? 0, ...(GAUGE[characteristic.gaugeKind ?? ''] === undefined ? {} : { gauge: GAUGE[characteristic.gaugeKind ?? ''] as string }), sure: true });
  }
}
const GAUGE: Readonly<Record<string, string>> = { micrometer: 'MIC-11', balance: 'BAL-21', 'edge microscope': 'OPT-31', 'density balance': 'DEN-41', 'coercivity meter': 'COE-42', 'hardness tester': 'HAR-43', 'crater microscope': 'CRA-44' };

/** A released powder batch of Demo fine 8. */
export function releasedBatch(plant: LittlePlant, id = 'P1'): void {
  plant.must({ type: 'openBatch', batch: id, grade: 'DEMO-F8', barrels: 12, kgPerBarrel: 1000, rawLots: [] });
  workThrough(plant, `batch:${id}`, 'powder-lab');
  plant.must({ type: 'releaseBatch', batch: id });
}
/** A lot of CNMG-D1 from the batch P1. */
export function openLot(plant: LittlePlant, id: string, quantity = 1000): void {
  plant.must({ type: 'openLot', lot: id, product: 'CNMG-D1', batch: 'P1', quantity, trayCapacity: 60 });
}
/** Looks at the whole sample of a counted characteristic with these findings; returns the slips. */
export function lookAtAll(plant: LittlePlant, lot: string, gate: string, characteristic: string, found: readonly { readonly code: string; readonly pieces: number; readonly ordinals?: readonly number[] }[] = []): readonly SlipBody[] {
  const here = { subject: `lot:${lot}`, gate, characteristic };
  for (const finding of found) plant.must({ ...here, type: 'recordFinding', ...finding });
  const n = plant.lot(lot).gates.find(({ id }) => id === gate)?.work.find(({ demand }) => demand.characteristic.id === characteristic)?.demand.n ?? 0;
  return plant.must({ ...here, type: 'completeSample', looked: n });
}
