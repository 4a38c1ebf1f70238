import { acceptanceLimits } from '../../metrology/decision-rules/index.ts';
import { summarise } from '../../metrology/summary/index.ts';
import type { Running } from '../../metrology/summary/index.ts';
import { asAttributes, judgeVariables, normality } from '../../sampling/variables/index.ts';
import { BrokenThread } from '../broken-thread.ts';
import type { Characteristic, Measured } from '../plan/characteristic.ts';
import type { CharacteristicResult, ClassResult, JudgedLimits, ResultDetail, ValueSummary, Verdict } from './verdict.ts';
import { classStandings } from './class-outcome.ts';
import { nextLook } from './next-look.ts';
import type { CharacteristicWork, GateRecord } from './work.ts';

/** True when nothing more is asked for: the verdict falls with this entry and not before. */
export function isWhole(work: CharacteristicWork, lotSize: number): boolean {
  const { basis, n } = work.demand;
  switch (basis.by) {
    case 'attributes': return work.looked !== null;
    case 'skipped': return true;
    case 'everyPiece': return (work.weights?.running.n ?? 0) >= lotSize;
    case 'interval': return nextLook(work, lotSize) === null;
    case 'variables': case 'limits': case 'grade': case 'once': return work.readings.length >= n;
  }
}

/** The verdict of an open gate whose every characteristic is whole; null while something is still asked for. */
export function judgeGate(gate: GateRecord): Verdict | null {
  if (!gate.work.every((work) => isWhole(work, gate.lotSize))) return null;
  const results = gate.work.map(judgeWork);
  const workers = new Set(gate.work.flatMap((work) => work.workers));
  return { accepted: results.every(({ accepted }) => accepted), attempt: gate.attempt, original: gate.original, results, workers: [...workers].sort() };
}

function judgeWork(work: CharacteristicWork): CharacteristicResult {
  const { characteristic } = work.demand;
  const detail = detailOf(work);
  const measured = characteristic.kind === 'measured' ? characteristic : null;
  return {
    characteristic: characteristic.id, name: characteristic.name, method: characteristic.method, unit: measured?.unit ?? null, decimals: measured?.decimals ?? 0,
    decisionRule: measured?.decisionRule ?? null, ...(measured?.guardFactor === undefined ? {} : { guardFactor: measured.guardFactor }), accepted: isAccepted(detail, characteristic), detail,
  };
}

function detailOf(work: CharacteristicWork): ResultDetail {
  const { basis, characteristic } = work.demand;
  switch (basis.by) {
    case 'attributes': return { by: 'attributes', classes: classStandings(basis.classes, work).map(({ class: each, plan, found, beyond, outcome, sample, at, acceptAt, rejectAt }): ClassResult => {
      // Still open where every piece asked for was looked at: another class rejected first, or a correction took away what had decided. No
      // sampling begins anew for either; what was not accepted stays so until somebody with the right decides.
      return { class: each, plan, found, beyond, outcome: outcome === 'open' ? 'undecided' : outcome, decided: { sample, at: Math.min(at, work.looked ?? at), ac: acceptAt, re: rejectAt } };
    }) };
    case 'skipped': return { by: 'skipped', clearance: basis.clearance, oneIn: basis.oneIn, lots: basis.lots };
    case 'variables': {
      const values = numbers(work);
      const limits = limitsOf(work);
      const judged = judgeVariables({ values, plan: basis.plan, ...(limits.acceptLower === null ? {} : { lower: limits.acceptLower }), ...(limits.acceptUpper === null ? {} : { upper: limits.acceptUpper }) });
      const outside = outsideOf(values, limits);
      return { by: 'variables', plan: basis.plan, judged, summary: summaryOf(values), limits, outside, normality: normality(values), attributes: asAttributes(basis.plan, outside, judged.accepted) };
    }
    case 'limits': {
      const values = numbers(work);
      const limits = limitsOf(work);
      return { by: 'limits', accept: basis.accept, summary: summaryOf(values), limits, outside: outsideOf(values, limits) };
    }
    case 'everyPiece': {
      const weights = work.weights ?? broken('no weights were taken');
      const { n, mean, s, min, max } = weights.running.n === 0 ? broken('no weights were taken') : runningSummary(weights.running);
      return { by: 'everyPiece', summary: { n, mean, s, min, max }, limits: judgedLimits(measuredOf(characteristic), weights.uncertainty), outside: weights.outside, ejectAtMostPercent: characteristic.sampling.rule === 'everyPiece' ? characteristic.sampling.ejectAtMostPercent : 0 };
    }
    case 'interval': return { by: 'interval', looks: work.looks.length, looked: work.looks.reduce((sum, { looked }) => sum + looked, 0), found: work.looks.reduce((sum, { found }) => sum + found, 0), ...(work.calls === undefined || work.calls.missed.length === 0 ? {} : { missed: work.calls.missed }) };
    case 'grade': {
      const { scale, worstAccepted } = characteristic.kind === 'graded' ? characteristic : broken(`${characteristic.id} is not graded`);
      const worst = work.readings.map(({ value }) => String(value)).reduce((a, b) => (scale.indexOf(a) >= scale.indexOf(b) ? a : b));
      return { by: 'grade', n: work.readings.length, worst, worstAccepted };
    }
    case 'once': {
      const { log, despite } = work.readings.at(-1) ?? {};
      const confirmed = work.readings.every(({ value }) => value === true);
      return { by: 'once', statement: characteristic.kind === 'confirmed' ? characteristic.statement : '', confirmed, ...(log === undefined ? {} : { log }), ...(despite === undefined || !confirmed ? {} : { despite }) };
    }
  }
}

function isAccepted(detail: ResultDetail, characteristic: Characteristic): boolean {
  switch (detail.by) {
    case 'attributes': return detail.classes.every(({ outcome }) => outcome === 'accepted' || outcome === 'acceptedInGap');
    case 'skipped': return true;
    case 'variables': return detail.judged.accepted;
    case 'limits': return detail.accept === 'each' ? detail.outside === 0 : within(detail.summary.mean, detail.limits);
    case 'everyPiece': return detail.outside < detail.summary.n && detail.outside * 100 <= detail.ejectAtMostPercent * detail.summary.n;
    // Looks may all have been missed: what nobody looked at is not accepted.
    case 'interval': return detail.found === 0 && detail.looks > 0;
    case 'grade': return characteristic.kind === 'graded' && characteristic.scale.indexOf(detail.worst) <= characteristic.scale.indexOf(detail.worstAccepted);
    case 'once': return detail.confirmed;
  }
}

function numbers(work: CharacteristicWork): number[] {
  return [...work.readings].sort((a, b) => a.ordinal - b.ordinal).map(({ value }) => (typeof value === 'number' ? value : broken('a measured reading is not a number')));
}
/** Limits as judged with the largest uncertainty among the gauges used. A value worked out from readings has none: the gauge's is that of a length, not of the value. */
function limitsOf({ demand: { characteristic }, readings }: CharacteristicWork): JudgedLimits {
  const measured = measuredOf(characteristic);
  const gauges = measured.entry.how === 'direct' ? readings.flatMap(({ gauge }) => gauge ?? []) : [];
  const coarsest = gauges.reduce<(typeof gauges)[number] | null>((most, gauge) => (most === null || gauge.expandedUncertainty > most.expandedUncertainty ? gauge : most), null);
  return { ...judgedLimits(measured, coarsest?.expandedUncertainty ?? 0), ...(coarsest?.coverageFactor === undefined ? {} : { coverageFactor: coarsest.coverageFactor }) };
}
function measuredOf(characteristic: Characteristic): Measured {
  return characteristic.kind === 'measured' ? characteristic : broken(`${characteristic.id} is not measured`);
}
/**
 * The limits as judged: with guarded acceptance drawn in, with guarded rejection moved out by the guard band, which is the guard factor times
 * the gauge's expanded uncertainty (ISO 14253-1, JCGM 106). Each reading, the mean of readings, or the statistic of a plan by variables is
 * compared with these: there Q and the percent are reckoned from the moved limits, so that k and M, which know no gauge, stay as they are.
 */
export function judgedLimits({ lower, upper, decisionRule, guardFactor }: Pick<Measured, 'lower' | 'upper' | 'decisionRule' | 'guardFactor'>, uncertainty: number): JudgedLimits {
  const drawnIn = acceptanceLimits({ ...(lower === null ? {} : { lower }), ...(upper === null ? {} : { upper }), uncertainty, rule: decisionRule, guardFactor });
  return { lower, upper, acceptLower: drawnIn.lower ?? null, acceptUpper: drawnIn.upper ?? null, uncertainty };
}
/** True when the value lies within the limits as judged, the limits themselves included. */
export function within(value: number, { acceptLower, acceptUpper }: JudgedLimits): boolean {
  return (acceptLower === null || value >= acceptLower) && (acceptUpper === null || value <= acceptUpper);
}
function outsideOf(values: readonly number[], limits: JudgedLimits): number {
  return values.filter((value) => !within(value, limits)).length;
}
function summaryOf(values: readonly number[]): ValueSummary {
  const { n, mean, s, min, max } = summarise(values);
  return { n, mean, s, min, max };
}
function runningSummary({ n, mean, squares, min, max }: Running): ValueSummary {
  return { n, mean, s: n < 2 ? null : Math.sqrt(squares / (n - 1)), min: min ?? mean, max: max ?? mean };
}
function broken(what: string): never {
  throw new BrokenThread(what);
}
