import { emptyRunning, takeInto } from '../../metrology/summary/index.ts';
import { BrokenThread } from '../broken-thread.ts';
import type { RouteStep } from '../lot/lot.ts';
import type { Slip } from '../slip.ts';
import { isMachine } from '../machine.ts';
import type { Demand } from './demand.ts';
import type { GateSlip } from './slips.ts';
import { driftAfter } from './watch-drift.ts';
import type { CharacteristicWork, GateRecord, LookCalls, VerdictRecord } from './work.ts';

/** Gates of a route before anything was done at them. */
export function freshGates(route: readonly RouteStep[]): GateRecord[] {
  return route.map(({ id, name, workedOn, bench }) => ({ id, name, workedOn, bench, status: 'waiting', attempt: 0, original: true, plan: null, lotSize: 0, seed: null, work: [], verdicts: [], sorted: [] }));
}

/** Changes the one gate named; loud when the route has none of that name. */
export function withGate(gates: readonly GateRecord[], id: string, change: (gate: GateRecord) => GateRecord): GateRecord[] {
  if (!gates.some((gate) => gate.id === id)) throw new BrokenThread(`no gate ${id} on this route`);
  return gates.map((gate) => (gate.id === id ? change(gate) : gate));
}

/** The last weights kept: enough to be looked at, however long the stream. */
const lastKept = 60;

/** Where an interval begins; its gate weighs every piece or does not. */
function callsFrom({ basis }: Demand, demands: readonly Demand[], at: string): { readonly calls?: LookCalls } {
  if (basis.by !== 'interval') return {};
  return { calls: { made: demands.some((each) => each.basis.by === 'everyPiece') ? 0 : null, lastPiece: 0, lastAt: at, due: null, missed: [] } };
}

/** Tells the intervals of the gate how many pieces are made by now; their minutes begin with the first. */
function made({ fromPiece, values }: Extract<GateSlip, { type: 'weightsTaken' }>, at: string, gate: GateRecord): GateRecord {
  const pieces = fromPiece + values.length - 1;
  return { ...gate, work: gate.work.map((work) => (work.calls === undefined ? work : { ...work, calls: { ...work.calls, made: pieces, lastAt: fromPiece === 1 ? at : work.calls.lastAt } })) };
}

function withCalls(gate: GateRecord, id: string, change: (calls: LookCalls) => LookCalls): GateRecord {
  return withWork(gate, null, id, (work) => (work.calls === undefined ? work : { ...work, calls: change(work.calls) }));
}

/** @param by who entered it; null where nobody did. A press or the server is no worker. */
function withWork(gate: GateRecord, by: string | null, id: string, change: (work: CharacteristicWork) => CharacteristicWork): GateRecord {
  if (!gate.work.some((work) => work.demand.characteristic.id === id)) throw new BrokenThread(`no characteristic ${id} at gate ${gate.id}`);
  return { ...gate, work: gate.work.map((work) => (work.demand.characteristic.id === id ? { ...change(work), workers: by === null || isMachine(by) || work.workers.includes(by) ? work.workers : [...work.workers, by] } : work)) };
}

/** Folds a slip of gate work into the gates. */
export function evolveGates(gates: readonly GateRecord[], slip: Slip<GateSlip>): GateRecord[] {
  return withGate(gates, gateNameOf(slip.body), (gate) => evolveGate(gate, slip));
}

function gateNameOf(body: GateSlip): string {
  return body.type === 'gateOpened' ? body.gate.id : body.gate;
}

function evolveGate(gate: GateRecord, slip: Slip<GateSlip>): GateRecord {
  const { body, by, at, version } = slip;
  switch (body.type) {
    case 'gateOpened':
      return { ...gate, status: 'open', attempt: body.attempt, original: body.original, plan: body.gate, ...(body.cautions === undefined ? {} : { cautions: body.cautions }), lotSize: body.lotSize, seed: body.seed, work: body.demands.map((demand) => ({ demand, readings: [], findings: [], looks: [], weights: null, samples: [], looked: null, workers: [], ...callsFrom(demand, body.demands, at) })) };
    case 'readingTaken':
      return withWork(gate, by, body.characteristic, (work) => ({ ...work, readings: [...work.readings, { ordinal: body.ordinal, value: body.value, inputs: body.inputs ?? null, gauge: body.gauge ?? null, by, at, slip: version, first: null, ...(body.log === undefined ? {} : { log: body.log }), ...(body.despite === undefined ? {} : { despite: body.despite }) }] }));
    case 'weightsTaken':
      return made(body, at, withWork(gate, by, body.characteristic, (work) => ({
        ...work,
        weights: { ...work.weights, running: body.values.reduce(takeInto, work.weights?.running ?? emptyRunning()), outside: (work.weights?.outside ?? 0) + body.outside, uncertainty: Math.max(work.weights?.uncertainty ?? 0, body.gauge?.expandedUncertainty ?? 0), lastBlock: [...(work.weights?.lastBlock ?? []), ...body.values].slice(-lastKept), drift: driftAfter(work.demand, work.weights, body.values), missing: (work.weights?.missing ?? 0) + (body.feed?.missing ?? 0) },
      })));
    case 'driftAnnounced':
      return withWork(gate, null, body.characteristic, (work) => (work.weights === null ? work : { ...work, weights: { ...work.weights, told: { alarm: body.alarm, foretold: body.predicted !== null, ended: false } } }));
    case 'driftEnded':
      return withWork(gate, null, body.characteristic, (work) => (work.weights?.told === undefined ? work : { ...work, weights: { ...work.weights, told: { ...work.weights.told, ended: true } } }));
    case 'lookFellDue':
      return withCalls(gate, body.characteristic, (calls) => ({ ...calls, lastPiece: body.piece, lastAt: at, due: { look: body.look, piece: body.piece, at } }));
    case 'lookMissed':
      return withCalls(gate, body.characteristic, (calls) => ({ ...calls, due: null, missed: [...calls.missed, { look: body.look, piece: body.piece }] }));
    case 'findingRecorded':
      return withWork(gate, by, body.characteristic, (work) => ({ ...work, findings: [...work.findings, { slip: version, code: body.code, class: body.class, pieces: body.pieces, ordinals: body.ordinals ?? [], by, withdrawn: false }] }));
    case 'findingWithdrawn':
      return withWork(gate, by, body.characteristic, (work) => ({ ...work, findings: work.findings.map((finding) => (finding.slip === body.finding ? { ...finding, withdrawn: true } : finding)) }));
    case 'lookTaken':
      return withWork(gate, by, body.characteristic, (work) => ({ ...work, looks: [...work.looks, { look: body.look, looked: body.looked, found: body.found, code: body.code, by, at }], ...(work.calls === undefined ? {} : { calls: { ...work.calls, due: null } }) }));
    case 'sampleCompleted':
      return withWork(gate, by, body.characteristic, (work) => ({ ...work, samples: [...work.samples, { looked: body.looked, slip: version }], looked: body.goesOn === true ? null : body.looked }));
    case 'readingCorrected':
      return withWork(gate, by, body.characteristic, (work) => ({
        ...work,
        readings: work.readings.map((reading) => (reading.ordinal === body.ordinal ? { ...reading, value: body.to, inputs: body.inputs ?? reading.inputs, gauge: body.gauge ?? reading.gauge, first: reading.first ?? body.from } : reading)),
      }));
    case 'verdictGiven':
      return { ...gate, status: body.verdict.accepted ? 'accepted' : 'rejected', verdicts: [...gate.verdicts, verdictRecord(slip, body.verdict, null)] };
    case 'verdictRevised':
      return { ...gate, status: gate.status === 'accepted' || gate.status === 'rejected' ? (body.verdict.accepted ? 'accepted' : 'rejected') : gate.status, verdicts: [...gate.verdicts, verdictRecord(slip, body.verdict, body.why)] };
  }
}

function verdictRecord(slip: Slip, verdict: VerdictRecord['verdict'], revises: string | null): VerdictRecord {
  return { verdict, at: slip.at, by: slip.by, slip: slip.version, from: null, revises };
}
