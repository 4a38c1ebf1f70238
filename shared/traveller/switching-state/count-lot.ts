import type { AttributesPlan, OwnTable, Severity } from '../../sampling/attributes/index.ts';
import { judgedPlan, lastMove, switchingAfter } from '../../sampling/switching/index.ts';
import type { Move, SwitchingEvent, SwitchingRule } from '../../sampling/switching/index.ts';
import type { CharacteristicResult, Verdict } from '../gate/verdict.ts';
import type { GateRecord } from '../gate/work.ts';
import { verdictOf } from '../gate/work.ts';
import type { Lot } from '../lot/lot.ts';
import type { Pen } from '../pen.ts';
import { streamName, switchingStream } from '../stream.ts';
import { recounted } from './evolve.ts';
import type { Switching } from './switching.ts';

type LotJudged = Extract<SwitchingEvent, { type: 'lotJudged' }>;
interface Count { readonly stream: string; /** False where another class rejected the lot before this one had decided. */ readonly isDecided: boolean; readonly class: string | null; readonly rule: SwitchingRule; readonly aqlPercent: number; readonly severity: Severity; readonly event: LotJudged }

/** Enters a first-inspection verdict into the switching states it concerns. Re-inspections never count (MIL-STD-105E 4.7.1, seen; ISO 2859-1 9.3, from memory). */
export function countForSwitching(pen: Pen, stream: string, gateId: string): void {
  for (const count of countsOf(pen, stream, gateId)) {
    // A class that was left open when another rejected has no verdict of its own to count.
    if (!count.event.original || !count.isDecided) continue;
    const before = ruled(pen, begun(pen, count, gateId), count, stream);
    // A lot opened under an earlier severity, or under an earlier plan's rules, is kept on the thread but moves nothing: the rules speak of lots inspected under the present ones.
    const counts = before.state.severity === count.severity && before.rule === count.rule && before.aqlPercent === count.aqlPercent;
    pen.write(count.stream, { type: 'lotCounted', event: count.event, counts, moved: counts ? moveOf(before, count.event) : null });
  }
}

/** Counts a lot anew whose verdict a correction has changed; the state is folded again from its beginning. */
export function recountForSwitching(pen: Pen, stream: string, gateId: string): void {
  for (const count of countsOf(pen, stream, gateId)) {
    const state = pen.state(count.stream);
    if (state === null || state.kind !== 'switching') continue;
    const before = state.events.findLast((event): event is LotJudged => event.type === 'lotJudged' && event.original && event.lot === count.event.lot);
    if (before === undefined || (before.accepted === count.event.accepted && before.found === count.event.found)) continue;
    pen.write(count.stream, { type: 'lotRecounted', event: count.event, moved: lastMove(state.state, recounted(state, count.event).state) });
  }
}

function moveOf(switching: Switching, event: LotJudged): Move | null {
  return lastMove(switching.state, switchingAfter(switching.state, event));
}

function begun(pen: Pen, count: Count, gateId: string): Switching {
  const there = pen.state(count.stream);
  if (there?.kind === 'switching') return there;
  const [product = '', , characteristic = ''] = count.stream.slice('switching:'.length).split('/');
  pen.write(count.stream, { type: 'switchingStarted', product, gate: gateId, characteristic, class: count.class, rule: count.rule, aqlPercent: count.aqlPercent });
  return pen.find(count.stream, 'switching', 'switching');
}

/** Takes over rules and AQL of the plan in force with the first lot judged by them; a lot on an earlier version never takes them back. */
function ruled(pen: Pen, there: Switching, { stream, rule, aqlPercent }: Count, lotStream: string): Switching {
  if (there.rule === rule && there.aqlPercent === aqlPercent) return there;
  const lot = pen.subject(lotStream);
  const plan = lot.kind === 'lot' ? pen.state(streamName('plan', lot.plan)) : null;
  const inForce = plan?.kind === 'plan' ? plan.versions.find((version) => version.inForce)?.planVersion : undefined;
  if (lot.kind !== 'lot' || inForce !== lot.planVersion) return there;
  pen.write(stream, { type: 'switchingRuleSet', rule, aqlPercent });
  return pen.find(stream, 'switching', 'switching');
}

function countsOf(pen: Pen, stream: string, gateId: string): Count[] {
  const subject = pen.subject(stream);
  if (subject.kind !== 'lot') return [];
  const gate = subject.gates.find(({ id }) => id === gateId);
  const verdict = gate === undefined ? null : verdictOf(gate)?.verdict ?? null;
  if (gate === undefined || verdict === null) return [];
  return verdict.results.flatMap((result) => countsOfResult(pen, subject, gate, verdict, result));
}

/** The plant's own table a single plan was read from; none for other plans, whose score does not ask for it. */
function ownTablesOf(pen: Pen, { samples, tableSource }: AttributesPlan): readonly OwnTable[] {
  const own = samples !== undefined || tableSource === undefined ? null : pen.state(streamName('table', tableSource));
  return own?.kind === 'table' ? [own.table] : [];
}

/** The stream is that which gave the severity: by the time of a correction the lot may be another product. */
function countsOfResult(pen: Pen, { id: lot, product: { id: product } }: Lot, gate: GateRecord, { original }: Verdict, { characteristic, detail }: CharacteristicResult): Count[] {
  const demand = gate.work.find((work) => work.demand.characteristic.id === characteristic)?.demand;
  const sampling = demand?.characteristic.sampling;
  const basis = demand?.basis;
  switch (detail.by) {
    case 'attributes':
      return detail.classes.flatMap(({ class: each, plan, found, outcome, decided }): Count[] => {
        if ('kind' in plan) return [];
        return [{
          stream: (basis?.by === 'attributes' ? basis.classes.find((planned) => planned.class === each)?.switching : null) ?? switchingStream(product, gate.id, characteristic, each), isDecided: outcome !== 'undecided', class: each, rule: sampling?.rule === 'attributes' ? sampling.switching : 'ISO 2859-1', aqlPercent: plan.aqlPercent, severity: plan.severity,
          event: { type: 'lotJudged', lot, original, accepted: outcome === 'accepted' || outcome === 'acceptedInGap', inGap: outcome === 'acceptedInGap', inspectedOn: plan.severity, plan: judgedPlan(plan, decided?.sample ?? 1, found, ownTablesOf(pen, plan)), sampleSize: decided?.at ?? plan.sampleSize, found },
        }];
      });
    case 'variables':
      if (detail.plan.origin === 'points') return [];
      return [{
        stream: (basis?.by === 'variables' ? basis.switching : null) ?? switchingStream(product, gate.id, characteristic, null), isDecided: true, class: null, rule: 'ISO 2859-1', aqlPercent: detail.plan.aqlPercent, severity: detail.plan.severity,
        event: { type: 'lotJudged', lot, original, accepted: detail.judged.accepted, inGap: false, inspectedOn: detail.plan.severity, plan: { kind: 'variables' }, sampleSize: detail.summary.n, found: detail.outside },
      }];
    default: return [];
  }
}
