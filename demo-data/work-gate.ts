import { findingNeedsPiece, isSequential, samplingStanding, verdictOf } from '../shared/traveller/index.ts';
import type { CharacteristicWork, Demand, GateRecord, Measured, ReadingInputs } from '../shared/traveller/index.ts';
import type { Chance } from './chance.ts';
import type { Floor } from './floor.ts';
import { inputsGiving, layersOf } from './inputs-giving.ts';
import type { DemoPerson } from './people.ts';

/** How good the work in front of a person is. `shift` moves the process by so many of its s; `found` pieces carry this code. */
export interface Quality { readonly shift?: Readonly<Record<string, number>>; readonly found?: readonly { readonly code: string; readonly pieces: number }[]; readonly rating?: Readonly<Record<string, string>>; /** Stop before the last entry: the gate stays open. */ readonly leaveOpen?: boolean; readonly skipGauge?: boolean }

/** Natural spread of each characteristic as a share of its tolerance; invented. */
const SPREAD = 0.09;
const GAUGE: Readonly<Record<string, string>> = { micrometer: 'MIC-11', balance: 'BAL-21', 'edge microscope': 'OPT-31', 'density balance': 'DEN-41', 'coercivity meter': 'COE-42', 'hardness tester': 'HAR-43', 'crater microscope': 'CRA-44' };

/** The person opens the gate and enters everything it asks for, as at the kiosk. Returns whether the verdict accepted. */
export function workGate(floor: Floor, chance: Chance, person: DemoPerson, stream: string, gateId: string, quality: Quality = {}): boolean | null {
  const bench = floor.subject(stream).gates.find(({ id }) => id === gateId)?.bench ?? '';
  floor.give(person, bench, { type: 'openGate', subject: stream, gate: gateId });
  const at = { subject: stream, gate: gateId };
  const gate = (): GateRecord => floor.subject(stream).gates.find(({ id }) => id === gateId) as GateRecord;
  const works = gate().work;
  const weighing = works.find(({ demand }) => demand.basis.by === 'everyPiece');
  works.forEach((work, index) => {
    const last = index === works.length - 1;
    // A layer of a crater is entered with its crater.
    if (work === weighing || (work.demand.characteristic.kind === 'measured' && work.demand.characteristic.entry.how === 'craterLayer')) return;
    if (work.demand.basis.by === 'interval') return weighAndLook(floor, chance, person, bench, at, weighing, work, quality);
    enter(floor, chance, person, bench, at, work, layersOf(works, work.demand.characteristic), quality, last && quality.leaveOpen === true);
  });
  return verdictOf(gate())?.verdict.accepted ?? null;
}

/** A log within its programme's limits is attached. */
function isBacked(floor: Floor, stream: string): boolean {
  const subject = floor.subject(stream);
  return subject.kind === 'furnace' && subject.logs.at(-1)?.check.within === true;
}

interface At { readonly subject: string; readonly gate: string }

function enter(floor: Floor, chance: Chance, person: DemoPerson, bench: string, at: At, { demand }: CharacteristicWork, layers: readonly Measured[], quality: Quality, leaveOpen: boolean): void {
  const { characteristic, n } = demand;
  const here = { ...at, characteristic: characteristic.id };
  if (characteristic.kind === 'counted') return look(floor, chance, person, bench, here, quality, leaveOpen);
  for (let ordinal = 1; ordinal <= (leaveOpen ? Math.ceil(n / 2) : n); ordinal += 1) {
    floor.wait(0.4);
    if (characteristic.kind === 'confirmed') floor.give(person, bench, { ...here, type: 'takeReading', ordinal, value: true, ...(isBacked(floor, at.subject) ? {} : { despite: 'Read on the strip of the recorder' }) });
    else if (characteristic.kind === 'graded') floor.give(person, bench, { ...here, type: 'takeReading', ordinal, value: quality.rating?.[characteristic.id] ?? (chance.fraction() < 0.7 ? characteristic.scale[0] ?? '' : characteristic.worstAccepted) });
    else floor.give(person, bench, { ...here, type: 'takeReading', ordinal, ...reading(chance, characteristic, demand, layers, quality, ordinal), ...gaugeFor(characteristic) });
  }
}

/** Enters what was seen, then gives sample after sample as done until the plans have decided. */
function look(floor: Floor, chance: Chance, person: DemoPerson, bench: string, here: At & { readonly characteristic: string }, quality: Quality, leaveOpen: boolean): void {
  const work = (): CharacteristicWork | undefined => floor.subject(here.subject).gates.find(({ id }) => id === here.gate)?.work.find(({ demand }) => demand.characteristic.id === here.characteristic);
  for (const { code, pieces } of quality.found ?? []) {
    const now = work();
    const kind = now?.demand.characteristic.kind === 'counted' ? now.demand.characteristic.kinds.find((each) => each.code === code) : undefined;
    if (now === undefined || kind === undefined || now.looked !== null) continue;
    floor.wait(1);
    const ordinals = Array.from({ length: pieces }, (_, index) => index + 1);
    // Piece by piece one finding at a time, for each may decide.
    const entries = samplingStanding(now)?.classes.some(({ plan }) => isSequential(plan)) === true ? ordinals.map((ordinal) => [ordinal]) : [ordinals];
    for (const entry of entries) if (work()?.looked === null) floor.give(person, bench, { ...here, type: 'recordFinding', code, pieces: entry.length, ...(findingNeedsPiece(now, kind.class) ? { ordinals: entry } : {}) });
  }
  for (let now = work(); now !== undefined && now.looked === null; now = work()) {
    floor.wait(chance.whole(6, 14));
    const standing = samplingStanding(now);
    if (leaveOpen || standing === null) return;
    floor.give(person, bench, { ...here, type: 'completeSample', looked: standing.to });
  }
}

function gaugeFor({ gaugeKind }: Measured): { gauge?: string } {
  const gauge = gaugeKind === null ? undefined : GAUGE[gaugeKind];
  return gauge === undefined ? {} : { gauge };
}

function reading(chance: Chance, characteristic: Measured, demand: Demand, layers: readonly Measured[], quality: Quality, ordinal: number): { value: number } | { value: null; inputs: ReadingInputs } {
  const { entry } = characteristic;
  const place = demand.places[ordinal - 1];
  const value = drawnValue(chance, characteristic, quality, place?.at === 'position' ? place.position : null);
  const layersUm = layers.length === 0 ? null : layers.map((layer) => Math.max(0.1, drawnValue(chance, layer, quality, place?.at === 'position' ? place.position : null)));
  const innerMm = entry.how === 'crater' ? Number((0.6 + 0.1 * chance.fraction()).toFixed(3)) : 0;
  const inputs = inputsGiving(entry, value, { innerMm, layersUm });
  if (inputs !== null) return { value: null, inputs };
  return { value };
}

/** A value of the invented process. A shift named for a place touches only the test piece there: one level of a furnace may fail alone. */
function drawnValue(chance: Chance, { id, lower, upper, target, decimals }: Measured, quality: Quality, place: string | null): number {
  const width = lower !== null && upper !== null ? upper - lower : Math.abs((target ?? 0) - (lower ?? upper ?? 0)) * 2;
  const middle = target ?? ((lower ?? 0) + (upper ?? 0)) / 2;
  const shift = (quality.shift?.[id] ?? 0) + (place === null ? 0 : quality.shift?.[`${id}@${place}`] ?? 0);
  return Math.max(0, chance.normal(middle + shift * width * SPREAD, width * SPREAD, decimals));
}

/** Weights in blocks as the press makes them, with a look under the lens each time one falls due. */
function weighAndLook(floor: Floor, chance: Chance, person: DemoPerson, bench: string, at: At, weighing: CharacteristicWork | undefined, looking: CharacteristicWork, quality: Quality): void {
  const { basis, n } = looking.demand;
  if (weighing === undefined || basis.by !== 'interval' || weighing.demand.characteristic.kind !== 'measured') return;
  const { target, lower } = weighing.demand.characteristic;
  const half = (target ?? 0) - (lower ?? 0);
  let made = 0;
  for (let look = 1; look <= basis.looks; look += 1) {
    const until = look === basis.looks ? weighing.demand.n : look * basis.everyPieces;
    const values = Array.from({ length: until - made }, () => chance.normal((target ?? 0) + (quality.shift?.['weight'] ?? 0) * half * 0.28, half * 0.28, 3));
    floor.wait((until - made) / 12);
    if (quality.leaveOpen === true && look === basis.looks) return;
    floor.give(person, bench, { ...at, type: 'takeWeights', characteristic: weighing.demand.characteristic.id, fromPiece: made + 1, values, gauge: 'BAL-21' });
    made = until;
    floor.wait(3);
    const found = quality.found?.find(({ code }) => code.startsWith('P') && look === basis.looks);
    floor.give(person, bench, { ...at, type: 'takeLook', characteristic: looking.demand.characteristic.id, look, found: Math.min(found?.pieces ?? 0, n), ...(found === undefined ? {} : { code: found.code }) });
  }
}
