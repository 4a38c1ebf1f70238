import { cautionsShown } from '../caution/decide.ts';
import { streamName } from '../stream.ts';
import type { GaugeState, Subject } from '../known.ts';
import { nextGate, standingHolds } from '../lot/lot.ts';
import { remainingPieces } from '../piece-balance/piece-balance.ts';
import type { Pen } from '../pen.ts';
import { refuse, requireReason } from '../pen.ts';
import { plannedGate } from '../plan/in-force.ts';
import { requireFree, requireUpstreamFree } from '../upstream.ts';
import type { CompleteSample, CorrectReading, GateCommand, OpenGate, RecordFinding, TakeLook, TakeReading, TakeWeights, WithdrawFinding } from './commands.ts';
import { gaugeUsed, readValue, requireTrusted } from './read-value.ts';
import { layersRead } from './crater-layers.ts';
import { doneSoFar, isSequential, nonconformingPieces } from './class-outcome.ts';
import { isLookDue, nextLook } from './next-look.ts';
import { ownEnd, samplingStanding } from './sampling-standing.ts';
import { logBehind } from '../charge/require-log.ts';
import { lotsOfBlends } from '../powder-batch/parts-concessions.ts';
import { restingOn } from '../charge/resting-on.ts';
import { stateDemand } from './state-demand.ts';
import { giveVerdict, reviseVerdict } from './give-verdict.ts';
import { weigh } from './weigh.ts';
import type { CharacteristicWork, GateRecord } from './work.ts';

/** Decides every command of gate work, on whichever subject. */
export function decideGate(pen: Pen, command: GateCommand): void {
  const subject = pen.subject(command.subject);
  const gate = gateOf(subject, command.gate);
  if (command.type === 'openGate') return openGate(pen, subject, gate, command);
  if (subject.ended !== null) refuse({ code: 'subjectHasEnded', subject: subject.id, how: subject.ended.how });
  pen.requireOneOf(command.type, gate.plan?.roles ?? refuse({ code: 'gateNotOpen', gate: gate.name, status: gate.status }));
  const work = gate.work.find(({ demand }) => demand.characteristic.id === command.characteristic) ?? refuse({ code: 'notFound', what: 'characteristic', id: command.characteristic });
  switch (command.type) {
    case 'correctReading': return correctReading(pen, subject, gate, work, command);
    case 'withdrawFinding': return withdrawFinding(pen, subject, gate, work, command);
    case 'takeReading': case 'takeWeights': case 'recordFinding': case 'takeLook': case 'completeSample': {
      requireUnderWay(subject, gate);
      takeEntry(pen, subject, gate, work, command);
      return giveVerdict(pen, subject.stream, gate.id);
    }
  }
}

/** Refuses entries at a gate that is not open, on hold, or behind another that is to be worked first. */
export function requireUnderWay(subject: Subject, gate: GateRecord): void {
  if (gate.status !== 'open') refuse({ code: 'gateNotOpen', gate: gate.name, status: gate.status });
  const [hold] = standingHolds(subject);
  if (hold !== undefined) refuse({ code: 'subjectIsHeld', subject: subject.id, hold: hold.id, reason: hold.reason });
  const next = nextGate(subject);
  // A gate ahead of this one may have been opened again by a correction while work went on here.
  if (next !== null && next.id !== gate.id) refuse({ code: 'gateOutOfOrder', gate: gate.name, before: next.name, next: next.id });
}

function takeEntry(pen: Pen, subject: Subject, gate: GateRecord, work: CharacteristicWork, command: TakeReading | TakeWeights | RecordFinding | TakeLook | CompleteSample): void {
  switch (command.type) {
    case 'takeReading': return takeReading(pen, subject, gate, work, command);
    case 'takeWeights': return weigh(pen, subject, gate, work, { fromPiece: command.fromPiece, values: command.values, gauge: gaugeAtHand(pen, command.gauge) });
    case 'recordFinding': return recordFinding(pen, subject, gate, work, command);
    case 'takeLook': return takeLook(pen, subject, gate, work, command);
    case 'completeSample': return completeSample(pen, subject, gate, work, command);
  }
}

/** A gate of the subject's route by its id. */
export function gateOf(subject: Subject, id: string): GateRecord {
  return subject.gates.find((gate) => gate.id === id) ?? refuse({ code: 'notFound', what: 'gate', id });
}

/** Pieces, barrels or members' pieces that the sampling plan takes as lot size. */
function lotSizeOf(subject: Subject): number {
  switch (subject.kind) {
    case 'lot': return remainingPieces(subject.balance);
    case 'batch': return subject.barrels;
    case 'furnace': case 'coating': return subject.members.reduce((sum, { pieces, left }) => (left === true ? sum : sum + pieces), 0);
  }
}

function openGate(pen: Pen, subject: Subject, gate: GateRecord, command: OpenGate): void {
  requireFree(subject);
  if (subject.kind === 'lot') requireUpstreamFree(pen, subject);
  if (gate.workedOn !== subject.kind) refuse({ code: 'gateWorkedElsewhere', gate: gate.name, workedOn: gate.workedOn });
  if (gate.status === 'open') refuse({ code: 'gateIsOpen', gate: gate.name });
  const next = nextGate(subject);
  if (next?.id !== gate.id) refuse({ code: 'gateOutOfOrder', gate: gate.name, before: next?.name ?? '', next: next?.id ?? null });
  if (gate.status !== 'waiting') refuse({ code: 'gateNotOpen', gate: gate.name, status: gate.status });
  const planned = plannedGate(pen, subject.plan, subject.planVersion, gate.id);
  pen.requireOneOf(command.type, planned.roles);
  const lotSize = lotSizeOf(subject);
  if (lotSize < 1) refuse({ code: 'notEnoughPieces', wanted: 1, remaining: lotSize });
  const { seed } = pen.stamp;
  const demands = planned.characteristics.map((characteristic) => stateDemand(pen, subject, gate.id, characteristic, lotSize, gate.original, seed));
  pen.write(subject.stream, { type: 'gateOpened', gate: planned, attempt: gate.attempt + 1, original: gate.original, lotSize, seed, demands, cautions: cautionsShown(pen, planned.cautions) });
  // A gate all of whose samples skip-lot passes over has its verdict at once.
  giveVerdict(pen, subject.stream, gate.id);
}

function gaugeAtHand(pen: Pen, id: string | undefined): GaugeState | null {
  return id === undefined ? null : pen.find(streamName('gauge', id), 'gauge', 'gauge');
}

/** When the entry was made at the bench. A gauge is judged by this moment: what was read on its last day counts, however late the network brought it. */
export function takenAt({ stamp }: Pen): string {
  return stamp.takenAt ?? stamp.at;
}
/** The same on a slip, where the entry waited for the network. */
export function waited({ stamp }: Pen): { readonly takenAt?: string } {
  return stamp.takenAt === undefined ? {} : { takenAt: stamp.takenAt };
}

function takeReading(pen: Pen, subject: Subject, gate: GateRecord, work: CharacteristicWork, command: TakeReading): void {
  const { characteristic, n } = work.demand;
  if (work.demand.basis.by === 'everyPiece') refuse({ code: 'wrongKindOfEntry', characteristic: characteristic.name, wanted: 'weights', unit: '' });
  if (!Number.isInteger(command.ordinal) || command.ordinal < 1 || command.ordinal > n) refuse({ code: 'ordinalOutside', characteristic: characteristic.name, n, ordinal: command.ordinal });
  const before = work.readings.find(({ ordinal }) => ordinal === command.ordinal);
  if (before !== undefined) refuse({ code: 'readingAlreadyTaken', characteristic: characteristic.name, ordinal: command.ordinal, value: String(before.value), taken: work.readings.length, n });
  const gauge = gaugeAtHand(pen, command.gauge);
  const value = readValue(characteristic, command, gauge);
  const used = characteristic.kind === 'measured' ? gaugeUsed(characteristic, gauge, takenAt(pen)) : undefined;
  const despite = (command.despite ?? '').trim();
  const log = logBehind(subject, characteristic, value, despite);
  const isDespite = characteristic.kind === 'confirmed' && characteristic.backedBy !== undefined && value === true && log?.within !== true;
  const layers = layersRead(gate, characteristic, command.inputs, command.sure);
  for (const each of [{ characteristic: characteristic.id, value }, ...layers]) pen.write(subject.stream, {
    type: 'readingTaken', gate: gate.id, ...each, ordinal: command.ordinal,
    ...(command.inputs === undefined ? {} : { inputs: command.inputs }), ...(used === undefined ? {} : { gauge: used }), ...waited(pen), ...(command.sure === true ? { sure: true as const } : {}),
    ...(log === undefined ? {} : { log }), ...(isDespite ? { despite } : {}),
  });
}

function recordFinding(pen: Pen, subject: Subject, gate: GateRecord, work: CharacteristicWork, command: RecordFinding): void {
  const { characteristic, basis, n } = work.demand;
  const standing = samplingStanding(work);
  if (characteristic.kind !== 'counted' || basis.by !== 'attributes' || standing === null) return refuse({ code: 'wrongKindOfEntry', characteristic: characteristic.name, wanted: characteristic.kind === 'counted' ? 'looks' : 'readings', unit: '' });
  if (work.looked !== null) refuse({ code: 'sampleAlreadyComplete', characteristic: characteristic.name });
  const kind = characteristic.kinds.find(({ code }) => code === command.code) ?? refuse({ code: 'findingUnknown', finding: command.code, known: characteristic.kinds.map(({ code }) => code) });
  if (!basis.classes.some((each) => each.class === kind.class)) refuse({ code: 'findingUnknown', finding: command.code, known: characteristic.kinds.map(({ code }) => code) });
  if (!Number.isInteger(command.pieces) || command.pieces < 1) refuse({ code: 'tooManyFound', found: command.pieces, n });
  const ordinals = command.ordinals ?? [];
  const ofPieces = characteristic.sampling.rule !== 'attributes' || characteristic.sampling.counts !== 'nonconformities';
  const end = ownEnd(work, kind.class);
  if (end !== null && ordinals.length === 0) refuse({ code: 'findingNeedsPiece', class: kind.class, n: end, draw: standing.to });
  if (ordinals.length > 0 && (ordinals.length !== command.pieces || (ofPieces && new Set(ordinals).size !== ordinals.length))) refuse({ code: 'tooManyFound', found: command.pieces, n: ordinals.length });
  // What is seen now lies in the pieces asked for now; what was overlooked in an earlier sample may still be entered.
  const outside = ordinals.find((ordinal) => !Number.isInteger(ordinal) || ordinal < 1 || ordinal > standing.to);
  if (outside !== undefined) refuse({ code: 'ordinalOutside', characteristic: characteristic.name, n: standing.to, ordinal: outside });
  const found = nonconformingPieces([...work.findings.filter((finding) => finding.class === kind.class && !finding.withdrawn), { pieces: command.pieces, ordinals }], Infinity);
  if (ofPieces && found > standing.to) refuse({ code: 'tooManyFound', found, n: standing.to });
  pen.write(subject.stream, { type: 'findingRecorded', gate: gate.id, characteristic: characteristic.id, code: kind.code, class: kind.class, pieces: command.pieces, ...(ordinals.length === 0 ? {} : { ordinals }) });
  stopWhereDecided(pen, subject, gate, characteristic.id);
}

/** Ends a sample that an entry has decided before it was said to be done: piece by piece, or by a change to an earlier sample. Then nothing more is looked at. */
function stopWhereDecided(pen: Pen, { stream }: Subject, { id: gate }: GateRecord, characteristic: string): void {
  const now = gateOf(pen.subject(stream), gate);
  const work = now.work.find(({ demand }) => demand.characteristic.id === characteristic);
  const standing = work === undefined || now.status !== 'open' || work.looked !== null ? null : samplingStanding(work);
  if (standing?.decided === true) pen.write(stream, { type: 'sampleCompleted', gate, characteristic, looked: standing.looked });
}

function takeLook(pen: Pen, subject: Subject, gate: GateRecord, work: CharacteristicWork, command: TakeLook): void {
  const { characteristic, basis, n } = work.demand;
  if (characteristic.kind !== 'counted' || basis.by !== 'interval') return refuse({ code: 'wrongKindOfEntry', characteristic: characteristic.name, wanted: 'findings', unit: '' });
  const next = nextLook(work, gate.lotSize);
  const expected = next?.look ?? work.looks.length + (work.calls?.missed.length ?? 0) + 1;
  if (next === null || command.look !== expected) return refuse({ code: 'lookOutOfOrder', expected, got: command.look, looks: Math.max(basis.looks, expected - 1) });
  const looked = Math.min(n, gate.lotSize);
  const { dueAt, made } = next;
  if (made !== null && !isLookDue(next)) refuse({ code: 'lookNotDue', look: expected, dueAt, made });
  if (!Number.isInteger(command.found) || command.found < 0 || command.found > looked) refuse({ code: 'tooManyFound', found: command.found, n: looked });
  const known = characteristic.kinds.map(({ code }) => code);
  if (command.found > 0 && (command.code === undefined || !known.includes(command.code))) refuse({ code: 'findingUnknown', finding: command.code ?? '', known });
  pen.write(subject.stream, { type: 'lookTaken', gate: gate.id, characteristic: characteristic.id, look: command.look, looked, found: command.found, code: command.code ?? null });
}

function completeSample(pen: Pen, subject: Subject, gate: GateRecord, work: CharacteristicWork, command: CompleteSample): void {
  const { characteristic } = work.demand;
  const standing = samplingStanding(work);
  if (standing === null) return refuse({ code: 'wrongKindOfEntry', characteristic: characteristic.name, wanted: 'readings', unit: '' });
  if (work.looked !== null) refuse({ code: 'sampleAlreadyComplete', characteristic: characteristic.name });
  // Piece by piece any stretch up to the next decision may be given as good; sample by sample the whole sample.
  const inSequence = standing.classes.some(({ plan }) => isSequential(plan));
  const fits = inSequence && !standing.decided ? Number.isInteger(command.looked) && command.looked > doneSoFar(work) && command.looked >= standing.looked && command.looked <= standing.to : command.looked === standing.to;
  if (!fits) refuse({ code: 'sampleNotWhole', looked: command.looked, n: standing.to });
  const done = { ...work, samples: [...work.samples, { looked: command.looked, slip: pen.subject(subject.stream).version + 1 }] };
  const decided = samplingStanding(done)?.decided === true;
  pen.write(subject.stream, { type: 'sampleCompleted', gate: gate.id, characteristic: characteristic.id, looked: command.looked, ...(decided ? {} : { goesOn: true as const }) });
}

/** A released lot's numbers stand on its certificate, also those that come from its powder, the parts of a blend included, or its charges: they change only after the release was withdrawn. */
function requireCorrectable(pen: Pen, subject: Subject, command: 'correctReading' | 'withdrawFinding', reason: string): void {
  requireReason(command, reason);
  const ofBlends = subject.kind === 'batch' ? lotsOfBlends(pen, subject) : [];
  for (const lot of [...(subject.kind === 'lot' ? [subject] : []), ...restingOn(pen, subject).map((resting) => resting.lot), ...ofBlends]) {
    if (lot.release !== null && lot.release.withdrawn === null) refuse({ code: 'alreadyReleased', certificate: lot.release.certificate });
  }
}

function correctReading(pen: Pen, subject: Subject, gate: GateRecord, work: CharacteristicWork, command: CorrectReading): void {
  requireCorrectable(pen, subject, command.type, command.reason);
  const { characteristic } = work.demand;
  const reading = work.readings.find(({ ordinal }) => ordinal === command.ordinal) ?? refuse({ code: 'notFound', what: 'reading', id: String(command.ordinal) });
  const measuredAgain = command.gauge !== undefined;
  const gauge = measuredAgain ? gaugeAtHand(pen, command.gauge) : reading.gauge === null ? null : gaugeAtHand(pen, reading.gauge.id);
  // A slip of the pen is mended by what the gauge showed then; what a gauge showed that is known to be bad mends nothing.
  if (!measuredAgain && gauge !== null) requireTrusted(gauge, reading.at);
  const used = measuredAgain && characteristic.kind === 'measured' ? gaugeUsed(characteristic, gauge, takenAt(pen)) : undefined;
  const to = readValue(characteristic, command, gauge);
  logBehind(subject, characteristic, to, command.reason);
  if (to === reading.value && used === undefined && JSON.stringify(command.inputs ?? null) === JSON.stringify(reading.inputs)) refuse({ code: 'nothingChanged', what: characteristic.name });
  const corrected = { type: 'readingCorrected' as const, gate: gate.id, ordinal: command.ordinal, ...(command.inputs === undefined ? {} : { inputs: command.inputs }), ...(used === undefined ? {} : { gauge: used }), reason: command.reason };
  const layers = layersRead(gate, characteristic, command.inputs, command.sure);
  pen.write(subject.stream, { ...corrected, characteristic: characteristic.id, from: reading.value, to });
  for (const { characteristic: layer, value } of layers) {
    const before = gate.work.find(({ demand }) => demand.characteristic.id === layer)?.readings.find(({ ordinal }) => ordinal === command.ordinal);
    if (before !== undefined) pen.write(subject.stream, { ...corrected, characteristic: layer, from: before.value, to: value });
  }
  reviseVerdict(pen, subject.stream, gate.id, command.reason);
}

function withdrawFinding(pen: Pen, subject: Subject, gate: GateRecord, work: CharacteristicWork, command: WithdrawFinding): void {
  requireCorrectable(pen, subject, command.type, command.reason);
  const finding = work.findings.find(({ slip, withdrawn }) => slip === command.finding && !withdrawn);
  if (finding === undefined) refuse({ code: 'notFound', what: 'finding', id: String(command.finding) });
  pen.write(subject.stream, { type: 'findingWithdrawn', gate: gate.id, characteristic: work.demand.characteristic.id, finding: command.finding, reason: command.reason });
  if (gate.status !== 'open') return reviseVerdict(pen, subject.stream, gate.id, command.reason);
  // On hold, or behind a gate that was opened again, nothing is judged: the sample is then ended by the next word at the bench.
  if (standingHolds(subject).length === 0 && nextGate(subject)?.id === gate.id) {
    stopWhereDecided(pen, subject, gate, work.demand.characteristic.id);
    giveVerdict(pen, subject.stream, gate.id);
  }
}
