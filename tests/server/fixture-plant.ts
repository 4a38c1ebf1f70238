import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { startServer, type RunningServer, type ServerOptions } from '../../server/start-server.ts';
import type { Command, InspectionPlan, Measured, Role } from '../../shared/traveller/index.ts';
import { HttpCaller } from './http-caller.ts';

/** Everything here is invented: a plant of eight people, one grade and one uncoated product with a short route. */
export const people = {
  keeper: { badge: 'K-1', pin: '1111', name: 'Kay Invented', roles: ['keeper'] },
  lab: { badge: 'L-1', pin: '2222', name: 'Lou Invented', roles: ['lab'] },
  inspector: { badge: 'I-1', pin: '3333', name: 'Ina Invented', roles: ['inspector'] },
  second: { badge: 'I-2', pin: '3344', name: 'Ivo Invented', roles: ['inspector', 'releaser'] },
  engineer: { badge: 'Q-1', pin: '4444', name: 'Quin Invented', roles: ['engineer'] },
  otherEngineer: { badge: 'Q-2', pin: '4455', name: 'Quill Invented', roles: ['engineer'] },
  releaser: { badge: 'R-1', pin: '5555', name: 'Ray Invented', roles: ['releaser'] },
  packer: { badge: 'P-1', pin: '6666', name: 'Pat Invented', roles: ['packer'] },
} as const satisfies Record<string, { badge: string; pin: string; name: string; roles: readonly Role[] }>;
export type Somebody = keyof typeof people;

function measured(id: string, unit: string, lower: number, upper: number, decimals: number, sampling: Measured['sampling'], factor: Measured['factor'] = null): Measured {
  return {
    kind: 'measured', id, name: `The ${id}`, method: 'invented', destructive: false, unit, decimals, lower, upper, target: null, plausible: { least: 0, most: 5000 }, gaugeKind: null,
    decisionRule: 'simple', entry: { how: 'direct' }, factor, pressTolerancePercent: null, sampling,
  };
}
const barrels: Measured['sampling'] = { rule: 'barrels', barrels: 1, each: 1, accept: 'each' };
/** Readings the dimensions gate asks for. */
export const READINGS = 40;

export const plans: readonly InspectionPlan[] = [
  { id: 'POWDER', name: 'Powder', appliesTo: 'batch', gates: [{ id: 'powder', name: 'Powder lab', workedOn: 'batch', bench: 'Lab', roles: ['lab'], cautions: [], characteristics: [
    measured('shrinkage', '%', 17, 19, 2, barrels, 'linearShrinkagePercent'), measured('density', 'g/cm³', 14, 15, 2, barrels, 'sinteredDensityGPerCm3'), measured('binder', '%', 1, 3, 2, barrels, 'binderPercent'),
  ] }] },
  { id: 'FURNACE', name: 'Furnace', appliesTo: 'furnace', gates: [{ id: 'sintered', name: 'Sintered check', workedOn: 'furnace', bench: 'Lab', roles: ['lab'], cautions: [], characteristics: [measured('hardness', 'HV30', 1500, 1700, 0, { rule: 'positions', positions: ['Top', 'Bottom'], each: 1, accept: 'each' })] }] },
  { id: 'ROUTE', name: 'Route', appliesTo: 'lot', gates: [
    { id: 'powder', name: 'Powder', workedOn: 'batch', bench: 'Lab', roles: ['lab'], cautions: [], characteristics: [] },
    { id: 'dimensions', name: 'Dimensions', workedOn: 'lot', bench: 'Gauge room', roles: ['inspector'], cautions: [], characteristics: [measured('length', 'mm', 12, 13, 3, { rule: 'fixed', n: READINGS, accept: 'each' })] },
    { id: 'sintered', name: 'Sintered', workedOn: 'furnace', bench: 'Lab', roles: ['lab'], cautions: [], characteristics: [] },
    { id: 'visual', name: 'Final visual', workedOn: 'lot', bench: 'Visual 1', roles: ['inspector'], cautions: [], characteristics: [{ kind: 'counted', id: 'looks', name: 'Looks', method: 'eye', destructive: false, kinds: [{ code: 'CH', name: 'Chip', class: 'major' }], sampling: { rule: 'attributes', switching: 'ISO 2859-1', level: 'II', aqlPercent: { major: 1 } } }] },
  ] },
];

/** A running plant in a folder of its own, and everybody's telephone to it. */
export class FixturePlant {
  readonly folder: string;
  server: RunningServer;
  readonly #callers = new Map<string, HttpCaller>();

  private constructor(folder: string, server: RunningServer) {
    this.folder = folder;
    this.server = server;
  }

  /** An empty plant: nobody is enrolled. */
  static async empty(options: Partial<ServerOptions> = {}): Promise<FixturePlant> {
    const folder = mkdtempSync(join(tmpdir(), 'gatehand-plant-'));
    return new FixturePlant(folder, await startServer({ folder, port: 0, host: '127.0.0.1', quiet: true, kioskFolder: null, ...options }));
  }

  /** The plant with its people, plans, grade and product, entered through the door. */
  static async open(options: Partial<ServerOptions> = {}): Promise<FixturePlant> {
    const plant = await FixturePlant.empty(options);
    const { badge, name, pin } = people.keeper;
    await new HttpCaller(plant.server.url).mustGive({ type: 'openPlant', plant: { name: 'Invented plant', address: '1 Invented Way', country: 'XX', demo: true }, keeper: { badge, name, pin } });
    for (const each of Object.values(people)) if (each.badge !== badge) await plant.give('keeper', { type: 'enrolPerson', badge: each.badge, name: each.name, roles: each.roles, pin: each.pin });
    await Promise.all(plans.map(async (plan) => {
      await plant.give('engineer', { type: 'draftPlan', plan, why: 'first' });
      for (const by of ['engineer', 'otherEngineer'] as const) await plant.give(by, { type: 'approvePlan', plan: plan.id, planVersion: 1 }, { signed: true });
    }));
    await plant.give('engineer', { type: 'defineGrade', grade: { id: 'G1', name: 'Invented grade', composition: [{ component: 'WC', massPercent: 94 }, { component: 'Co', massPercent: 6 }], powderPlan: 'POWDER', furnacePlan: 'FURNACE' } });
    await plant.give('engineer', { type: 'defineProduct', product: { id: 'PR1', designation: 'CNMA 12 04 08', name: 'Invented insert', itemCode: 'CNMA120408-P1', grade: 'G1', layer: null, marking: 'P1', piecesPerBox: 100, plan: 'ROUTE', sinteredVolumeMm3: 600, thicknessMm: 4.76 } });
    return plant;
  }

  async as(who: Somebody, bench = 'Bench 1'): Promise<HttpCaller> {
    const there = this.#callers.get(who);
    if (there !== undefined) return there;
    const caller = new HttpCaller(this.server.url);
    await caller.signIn(people[who], bench);
    this.#callers.set(who, caller);
    return caller;
  }

  /** Gives a command that must be taken. */
  async give(who: Somebody, command: Command, { signed = false }: { readonly signed?: boolean } = {}): Promise<void> {
    await (await this.as(who)).mustGive(command, signed ? { pin: people[who].pin } : {});
  }

  /** A powder batch released for pressing. */
  async releasedBatch(batch: string): Promise<void> {
    await this.give('lab', { type: 'openBatch', batch, grade: 'G1', barrels: 3, kgPerBarrel: 10, rawLots: [{ rawLot: `RAW-${batch}`, material: 'Invented carbide', kg: 30 }] });
    const at = { subject: `batch:${batch}`, gate: 'powder' };
    await this.give('lab', { type: 'openGate', ...at });
    for (const [characteristic, value] of [['shrinkage', 18], ['density', 14.5], ['binder', 2]] as const) await this.give('lab', { type: 'takeReading', ...at, characteristic, ordinal: 1, value });
    await this.give('lab', { type: 'releaseBatch', batch }, { signed: true });
  }

  async openedLot(lot: string, batch: string, quantity = 200): Promise<void> {
    await this.give('inspector', { type: 'openLot', lot, product: 'PR1', batch, quantity, trayCapacity: 50 });
  }

  /** Works a gate of a lot or charge with good readings, and with so many chips found where it is a look. */
  async workGate(who: Somebody, subject: string, gate: string, chips = 0): Promise<void> {
    const at = { subject, gate };
    await this.give(who, { type: 'openGate', ...at });
    if (gate === 'dimensions') for (let ordinal = 1; ordinal <= READINGS; ordinal += 1) await this.give(who, { type: 'takeReading', ...at, characteristic: 'length', ordinal, value: 12.5 + ordinal / 1000 });
    if (gate === 'sintered') for (const ordinal of [1, 2]) await this.give(who, { type: 'takeReading', ...at, characteristic: 'hardness', ordinal, value: 1600 + ordinal });
    if (gate !== 'visual') return;
    if (chips > 0) await this.give(who, { type: 'recordFinding', ...at, characteristic: 'looks', code: 'CH', pieces: chips });
    const asked = await (await this.as(who)).get(`/api/travellers/${subject.replace(':', '/')}`);
    const gates = (asked.body as { state: { gates: { id: string; work: { demand: { n: number } }[] }[] } }).state.gates;
    await this.give(who, { type: 'completeSample', ...at, characteristic: 'looks', looked: gates.find(({ id }) => id === gate)?.work[0]?.demand.n ?? 0 });
  }

  /** A lot that has passed every gate. */
  async passedLot(lot: string, batch: string, charge: string): Promise<void> {
    await this.openedLot(lot, batch);
    await this.workGate('inspector', `lot:${lot}`, 'dimensions');
    await this.give('lab', { type: 'openCharge', charge, kind: 'furnace', specification: 'G1', programme: 'S1', equipment: 'Furnace 1', members: [{ lot, places: ['Top'] }] });
    await this.workGate('lab', `furnace:${charge}`, 'sintered');
    await this.workGate('second', `lot:${lot}`, 'visual');
  }

  /** Stops the server and starts it again on the same folder. Tokens stay good. */
  async restart(): Promise<void> {
    await this.server.close();
    this.server = await startServer({ folder: this.folder, port: 0, host: '127.0.0.1', quiet: true, kioskFolder: null });
    for (const caller of this.#callers.values()) caller.url = this.server.url;
  }

  async close(): Promise<void> {
    await this.server.close();
    rmSync(this.folder, { recursive: true, force: true });
  }
}
