import { emptyRunning, takeInto } from '../../metrology/summary/index.ts';
import { BrokenThread } from '../broken-thread.ts';
import type { RouteStep } from '../lot/lot.ts';
import type { Slip } from '../slip.ts';
import type { GateSlip } from './slips.ts';
import type { CharacteristicWork, GateRecord, VerdictRecord } from './work.ts';

/** Gates of a route before anything was done at them. */
export function freshGates(route: readonly RouteStep[]): GateRecord[] {
  return route.map(({ id, name, workedOn, bench }) => ({ id, name, workedOn, bench, status: 'waiting', attempt: 0, original: true, plan: null, lotSize: 0, seed: null, work: [], verdicts: [], sorted: [] }));
}

/** Changes the one gate named; loud when the route has none of that name. */
export function withGate(gates: readonly GateRecord[], id: string, change: (gate: GateRecord) => GateRecord): GateRecord[] {
  if (!gates.some((gate) => gate.id === id)) throw new BrokenThread(`no gate ${id} on this route`);
  return gates.map((gate) => (gate.id === id ? change(gate) : gate));
}

function withWork(gate: GateRecord, by: string, id: string, change: (work: CharacteristicWork) => CharacteristicWork): GateRecord {
  if (!gate.work.some((work) => work.demand.characteristic.id === id)) throw new BrokenThread(`no characteristic ${id} at gate ${gate.id}`);
  return { ...gate, work: gate.work.map((work) => (work.demand.characteristic.id === id ? { ...change(work), workers: work.workers.includes(by) ? work.workers : [...work.workers, by] } : work)) };
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
      return { ...gate, status: 'open', attempt: body.attempt, original: body.original, plan: body.gate, ...(body.cautions === undefined ? {} : { cautions: body.cautions }), lotSize: body.lotSize, seed: body.seed, work: body.demands.map((demand) => ({ demand, readings: [], findings: [], looks: [], weights: null, samples: [], looked: null, workers: [] })) };
    case 'readingTaken':
      return withWork(gate, by, body.characteristic, (work) => ({ ...work, readings: [...work.readings, { ordinal: body.ordinal, value: body.value, inputs: body.inputs ?? null, gauge: body.gauge ?? null, by, at, slip: version, first: null }] }));
    case 'weightsTaken':
      return withWork(gate, by, body.characteristic, (work) => ({
        ...work,
        weights: { running: body.values.reduce(takeInto, work.weights?.running ?? emptyRunning()), outside: (work.weights?.outside ?? 0) + body.outside, uncertainty: Math.max(work.weights?.uncertainty ?? 0, body.gauge?.expandedUncertainty ?? 0), lastBlock: body.values.slice(-60) },
      }));
    case 'findingRecorded':
      return withWork(gate, by, body.characteristic, (work) => ({ ...work, findings: [...work.findings, { slip: version, code: body.code, class: body.class, pieces: body.pieces, ordinals: body.ordinals ?? [], by, withdrawn: false }] }));
    case 'findingWithdrawn':
      return withWork(gate, by, body.characteristic, (work) => ({ ...work, findings: work.findings.map((finding) => (finding.slip === body.finding ? { ...finding, withdrawn: true } : finding)) }));
    case 'lookTaken':
      return withWork(gate, by, body.characteristic, (work) => ({ ...work, looks: [...work.looks, { look: body.look, looked: body.looked, found: body.found, code: body.code, by, at }] }));
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
