import { drawSample } from '../../sampling/draw/index.ts';
import { isSequential, sampleTotals } from './class-outcome.ts';
import { drawInStages, drawInTurn } from './draw-in-stages.ts';
import { SMALLEST_VARIABLES_LOT } from '../../sampling/variables/index.ts';
import type { Subject } from '../known.ts';
import type { Pen } from '../pen.ts';
import { refuse } from '../pen.ts';
import type { Characteristic, CountedRule, FindingClass, IntervalRule } from '../plan/characteristic.ts';
import { judgedClasses } from '../plan/characteristic.ts';
import { lotPlanFor } from '../plan/lot-plan-for.ts';
import { passedOver } from '../skip-lot/passed-over.ts';
import { severityFor } from '../switching-state/severity-for.ts';
import type { SwitchingSeverity } from '../switching-state/slips.ts';
import { variablesPlanFor } from '../plan/variables-plan-for.ts';
import { streamName, switchingStream } from '../stream.ts';
import type { ClassPlan, Demand, Place } from './demand.ts';
import { withPressLimits } from './press-limits.ts';
import { watchOf } from './watch-drift.ts';

/** Severity in force; a state that never began is normal (ISO 2859-1, start of inspection; from memory). Discontinued stops an original inspection. */
function severityOf(pen: Pen, stream: string, original: boolean): Exclude<SwitchingSeverity, 'discontinued'> {
  const state = pen.state(stream);
  if (state === null || state.kind !== 'switching') return 'normal';
  const severity = severityFor(state.state.severity, original);
  return severity === 'discontinued' ? refuse({ code: 'inspectionDiscontinued', switching: stream, lots: state.state.enteredBy?.lots ?? [] }) : severity;
}

/** What the opened gate asks of one characteristic: n, the plan in force, and which pieces. */
export function stateDemand(pen: Pen, subject: Subject, gate: string, planned: Characteristic, lotSize: number, original: boolean, seed: string): Demand {
  const characteristic = subject.kind === 'lot' ? withPressLimits(planned, subject.press) : planned;
  const { sampling } = characteristic;
  const product = subject.kind === 'lot' ? subject.product.id : subject.id;
  switch (sampling.rule) {
    case 'attributes': case 'limitingQuality': case 'zeroAcceptance': case 'twoPoint': case 'sequential': {
      const at = { product, gate, characteristic: characteristic.id };
      const classes = judgedClasses(sampling).map((each) => classPlan(pen, at, sampling, each, lotSize, original));
      if (sampling.rule === 'attributes') {
        const allNormal = classes.every(({ plan }) => 'severity' in plan && plan.severity === 'normal');
        const skipped = passedOver(pen, at, sampling, { original, allNormal, seed });
        if (skipped !== null) return { characteristic, basis: skipped, n: 0, places: [] };
      }
      const n = Math.max(...classes.map(({ plan }) => plan.sampleSize));
      // Piece by piece every beginning of the draw must be a random sample, so it is not put in order.
      const places = classes.some(({ plan }) => isSequential(plan)) ? drawn(subject, drawInTurn(lotSize, n, seed)) : drawn(subject, drawInStages(lotSize, classes.flatMap(({ plan }) => sampleTotals(plan)), seed));
      return { characteristic, basis: { by: 'attributes', classes }, n, places };
    }
    case 'variables': {
      // The tables of variables plans begin at three pieces; a smaller lot is measured whole, each piece within the limits.
      if (lotSize < SMALLEST_VARIABLES_LOT) return { characteristic, basis: { by: 'limits', accept: 'each' }, n: lotSize, places: drawn(subject, drawInStages(lotSize, [lotSize], seed)) };
      const switching = sampling.points === undefined ? switchingStream(product, gate, characteristic.id, null) : null;
      const plan = variablesPlanFor(sampling, lotSize, switching === null ? 'normal' : severityOf(pen, switching, original)) ?? refuse({ code: 'planUnsound', where: characteristic.name, why: 'noDesign' });
      return { characteristic, basis: { by: 'variables', plan, switching }, n: plan.sampleSize, places: drawn(subject, drawInStages(lotSize, [plan.sampleSize], seed)) };
    }
    case 'fixed': {
      // Powder is tested as often as planned, however few its barrels; pieces only as many as there are.
      const n = subject.kind === 'batch' ? sampling.n : Math.min(sampling.n, lotSize);
      return { characteristic, basis: limitsBasis(characteristic, sampling.accept), n, places: drawn(subject, drawInStages(lotSize, [n], seed)) };
    }
    case 'barrels': {
      const barrels = drawSample({ seed, population: lotSize, size: Math.min(sampling.barrels, lotSize) });
      const places: Place[] = barrels.flatMap((barrel) => Array.from({ length: sampling.each }, (_, index) => ({ at: 'barrel' as const, barrel, nth: index + 1 })));
      return { characteristic, basis: limitsBasis(characteristic, sampling.accept), n: places.length, places };
    }
    case 'positions': {
      const places: Place[] = sampling.positions.flatMap((position) => Array.from({ length: sampling.each }, (_, index) => ({ at: 'position' as const, position, nth: index + 1 })));
      return { characteristic, basis: limitsBasis(characteristic, sampling.accept), n: places.length, places };
    }
    case 'everyPiece': return { characteristic, basis: { by: 'everyPiece', ...watchOf(characteristic, sampling.drift) }, n: lotSize, places: [] };
    case 'interval': return { characteristic, basis: { by: 'interval', everyPieces: sampling.everyPieces, looks: Math.max(1, Math.floor(lotSize / sampling.everyPieces)), ...minutesOf(sampling) }, n: sampling.n, places: [] };
    case 'once': return { characteristic, basis: { by: 'once' }, n: 1, places: [] };
  }
}

/** The minutes of a rule, where it has any. */
function minutesOf({ everyMinutes, graceMinutes }: IntervalRule): Pick<IntervalRule, 'everyMinutes' | 'graceMinutes'> {
  return { ...(everyMinutes === undefined ? {} : { everyMinutes }), ...(graceMinutes === undefined ? {} : { graceMinutes }) };
}

function limitsBasis(characteristic: Characteristic, accept: 'each' | 'mean'): Demand['basis'] {
  return characteristic.kind === 'graded' ? { by: 'grade' } : { by: 'limits', accept };
}

function classPlan(pen: Pen, at: { readonly product: string; readonly gate: string; readonly characteristic: string }, rule: CountedRule, each: FindingClass, lotSize: number, original: boolean): ClassPlan {
  const byAql = rule.rule === 'attributes';
  const switching = byAql ? switchingStream(at.product, at.gate, at.characteristic, each) : null;
  const severity = switching === null ? 'normal' : severityOf(pen, switching, original);
  const own = byAql ? rule.ownTables?.[severity] : undefined;
  const tables = own === undefined ? [] : [pen.find(streamName('table', own), 'table', 'table').table];
  const plan = lotPlanFor(rule, each, { lotSize, severity, tables }) ?? refuse({ code: 'planUnsound', where: at.characteristic, why: 'noDesign' });
  return { class: each, switching, plan };
}

/** Pieces counted along the trays in order: piece 1 is tray 1, position 1. A charge or batch without trays has no drawn pieces. */
function drawn(subject: Subject, pieces: readonly number[]): Place[] {
  if (subject.kind !== 'lot') return [];
  return pieces.map((piece) => ({ at: 'tray', piece, tray: Math.ceil(piece / subject.trayCapacity), position: ((piece - 1) % subject.trayCapacity) + 1 }));
}
