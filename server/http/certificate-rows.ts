import { stagesOf, tableNotes } from '../../shared/sampling/attributes/index.ts';
import type { TableNote } from '../../shared/sampling/attributes/index.ts';
import { isSequential } from '../../shared/traveller/index.ts';
import type { CharacteristicResult, GateRecord, LotPlan, ResultDetail, Subject, VerdictRecord } from '../../shared/traveller/index.ts';
import { lotPlanSource } from '../../shared/words/lot-plan.en.ts';
import type { CertificateGate, CertificateMeasured } from '../../shared/wire/certificate-data.ts';
import { certificateEntryWords as said } from '../../shared/words/certificate-entries.en.ts';
import { words } from '../../shared/words/index.ts';
import { attributesCaution, normalityCaution, variablesAql } from '../../shared/words/variables.en.ts';

/** Names by badge. */
export type Names = Readonly<Record<string, string>>;

const kinds = { lot: 'insertLot', batch: 'powderBatch', furnace: 'furnaceCharge', coating: 'coatingCharge' } as const;
const { labels, format } = words('en');
const speak = { labels, format };

/** Shortened to what a line of the certificate holds, with a sign that it was. */
export function clip(text: string, most: number): string {
  const line = text.replaceAll(/[\p{Cc}\p{Cs}]+/gu, ' ').trim();
  return line.length <= most ? line : `${line.slice(0, most - 1).trimEnd()}…`;
}

/** A badge with its name as a certificate prints them; the badge stands for a name that is not known. */
export function personOf(badge: string, names: Names): { readonly name: string; readonly badge: string } {
  return { name: clip(names[badge] ?? badge, 80), badge: clip(badge, 20) };
}

/**
 * The verdicts given on a subject itself, or on the lot it was split from, a revised one in place of what it revises. What a batch or
 * charge gave stands with that one.
 */
function ownVerdicts(gate: GateRecord): VerdictRecord[] {
  const own = gate.verdicts.filter(({ from }) => from === null || from.startsWith('lot:'));
  return own.filter(({ verdict }, at) => own[at + 1]?.revises === null || own[at + 1] === undefined || own[at + 1]?.verdict.attempt !== verdict.attempt);
}

/** The gate rows of one subject: every characteristic of every verdict, rejections too. */
export function gateRows(subject: Subject, names: Names): CertificateGate[] {
  return subject.gates.flatMap((gate) => {
    const verdicts = ownVerdicts(gate);
    return verdicts.flatMap((record) => record.verdict.results.flatMap((result) => resultRows(subject, gate, record, record === verdicts.at(-1), result, names)));
  });
}

interface Judged { readonly accepted: boolean; readonly characteristic: string; readonly plan: string; readonly n: number; readonly result: CertificateGate['result'] }

function resultRows(subject: Subject, gate: GateRecord, record: VerdictRecord, isLast: boolean, result: CharacteristicResult, names: Names): CertificateGate[] {
  // A part takes its lot's verdict over as accepted: what was not accepted in it was conceded there.
  const conceded = isLast && (gate.status === 'conceded' || record.verdict.accepted);
  const number = record.from === null ? subject.id : record.from.slice('lot:'.length);
  return judgedRows(result).map(({ accepted, characteristic, plan, n, result: judged }) => ({
    gate: clip(gate.name, 60), workedOn: { kind: kinds[subject.kind], number }, characteristic: clip(characteristic, 100), method: clip(result.method, 100), plan: clip(plan, 200), n,
    result: judged, verdict: accepted ? 'accepted' : conceded ? 'acceptedOnConcession' : 'rejected', by: personOf(record.by, names), at: record.at, isReinspection: !record.verdict.original,
  }));
}

function judgedRows(result: CharacteristicResult): Judged[] {
  const { detail, name, accepted, decimals, unit } = result;
  const one = (plan: string, n: number, judged: CertificateGate['result']): Judged[] => [{ accepted, characteristic: name, plan, n, result: judged }];
  switch (detail.by) {
    case 'attributes': return detail.classes.map(({ class: each, plan, found, outcome, decided }) => ({
      accepted: outcome === 'accepted' || outcome === 'acceptedInGap', characteristic: said.classOf(name, labels.findingClasses[each]), n: decided?.at ?? plan.sampleSize, plan: countedPlanText(plan, decided?.sample),
      result: { judgedBy: 'found', found, ...(decided === undefined ? { acceptance: isSequential(plan) ? null : plan.ac, rejection: isSequential(plan) ? null : plan.re } : { acceptance: decided.ac, rejection: decided.re }) },
    }));
    case 'skipped': return one(said.skipLotPlan(detail.clearance, detail.oneIn, detail.lots), 0, { judgedBy: 'skipped' });
    case 'variables': {
      const { judged } = detail;
      const plan = variablesPlanText(detail.plan);
      if (judged.separate === undefined) return one(plan, detail.summary.n, statisticOf(judged.form, judged));
      const { lower, upper, together } = judged.separate;
      return Object.entries({ lower, upper, ...(together === undefined ? {} : { together }) }).map(([side, part]) => ({
        accepted: part.accepted, characteristic: said.sideOf(name, side), plan, n: detail.summary.n, result: statisticOf(judged.form, part),
      }));
    }
    case 'limits': return detail.accept === 'mean'
      ? one(said.meanPlan(detail.summary.n), detail.summary.n, { judgedBy: 'limits', symbol: said.mean, value: detail.summary.mean, lower: detail.limits.acceptLower, upper: detail.limits.acceptUpper, unit, decimals: Math.min(6, decimals + 1) })
      : one(said.eachPlan(detail.summary.n), detail.summary.n, eachWithin(detail, unit, decimals));
    case 'everyPiece': return one(said.everyPiecePlan(format.number(detail.ejectAtMostPercent)), detail.summary.n, { judgedBy: 'limits', symbol: said.ejected, value: (100 * detail.outside) / detail.summary.n, lower: null, upper: detail.ejectAtMostPercent, unit: '%', decimals: 2 });
    case 'interval': return one(said.intervalPlan(detail.looks), detail.looked, { judgedBy: 'none', found: detail.found });
    case 'grade': return one(said.gradePlan(detail.n), detail.n, { judgedBy: 'grade', grade: detail.worst, limit: detail.worstAccepted });
    case 'once': return one(said.oncePlan, 1, { judgedBy: 'confirmed' });
  }
}

/** How a plan by variables was found and by which method it is judged. */
function variablesPlanText(plan: Extract<ResultDetail, { by: 'variables' }>['plan']): string {
  const sigma = plan.sigma === undefined ? null : format.number(plan.sigma);
  if (plan.origin === 'points') return said.variablesPoints(sigma, format.number(plan.p1Percent), format.number(plan.producerRisk), format.number(plan.p2Percent), format.number(plan.consumerRisk));
  return said.variablesPlan(sigma, plan.level, plan.letter, labels.severities[plan.severity], variablesAql(plan, format));
}

function statisticOf(form: 'k' | 'M', { statistic, limit }: { readonly statistic: number; readonly limit: number }): CertificateGate['result'] {
  return form === 'k'
    ? { judgedBy: 'statistic', symbol: said.quotient, value: statistic, relation: '≥', limit, decimals: 3 }
    : { judgedBy: 'statistic', symbol: said.estimated, value: statistic, relation: '≤', limit, decimals: 3 };
}

/** What belongs beside the last verdicts by variables: readings that do not look normal, or that say something else when they are counted. */
export function variablesNotes(subject: Subject): string[] {
  const speak = words('en');
  return subject.gates.flatMap((gate) => (ownVerdicts(gate).at(-1)?.verdict.results ?? []).flatMap((result) => {
    const { detail } = result;
    if (detail.by !== 'variables') return [];
    return [attributesCaution(detail, result, speak), normalityCaution(detail, speak)].flatMap((note) => (note === null ? [] : [clip(said.variablesNote(gate.name, result.name, note), 600)]));
  }));
}

/** The limits as judged; where a guard band has drawn them in, with one more decimal. */
function eachWithin({ limits, outside }: Extract<ResultDetail, { by: 'limits' }>, unit: string | null, decimals: number): CertificateGate['result'] {
  const { lower, upper, acceptLower, acceptUpper } = limits;
  const isDrawnIn = acceptLower !== lower || acceptUpper !== upper;
  return { judgedBy: 'each', outside, lower: acceptLower, upper: acceptUpper, unit, decimals: Math.min(6, decimals + (isDrawnIn ? 1 : 0)) };
}

/** What was measured on one subject, as its gates' last verdicts rest on it. */
export function measuredRows(subject: Subject): CertificateMeasured[] {
  const workedOn = { kind: kinds[subject.kind], number: subject.id };
  return subject.gates.flatMap((gate) => {
    const last = ownVerdicts(gate).at(-1);
    return (last?.verdict.results ?? []).flatMap((result) => {
    const measured = measuredDetail(result.detail);
    if (measured === null) return [];
    const { summary, limits } = measured;
    return [{
      name: clip(result.name, 80), workedOn, unit: result.unit, ...summary, lower: limits.lower, upper: limits.upper, decimals: result.decimals,
      decisionRule: said.decisionRules[result.decisionRule ?? 'simple'], uncertainty: limits.uncertainty > 0 ? limits.uncertainty : null,
    }];
    });
  });
}

function measuredDetail(detail: ResultDetail): Extract<ResultDetail, { by: 'limits' | 'variables' | 'everyPiece' }> | null {
  return detail.by === 'limits' || detail.by === 'variables' || detail.by === 'everyPiece' ? detail : null;
}

/** The plan really used and, of several samples, the one that decided. */
function countedPlanText(plan: LotPlan, sample: number | undefined): string {
  const stages = isSequential(plan) ? [] : stagesOf(plan);
  const several = stages.length > 1 ? [said.stages(stages), ...(sample === undefined ? [] : [said.onSample(sample)])] : [];
  if (isSequential(plan)) return [lotPlanSource(plan, speak), said.lines(format.number(plan.slope, 4), format.number(plan.h1, 3), format.number(plan.h2, 3), plan.truncateAt)].join('; ');
  if ('kind' in plan) return [lotPlanSource(plan, speak), said.riskAtLq(format.number(100 * plan.riskAtLq, 2)), ...several].join('; ');
  const table = said.attributesPlan(labels.samples, plan.samples ?? null, plan.table, plan.level, plan.letter, labels.severities[plan.severity], format.number(plan.aqlPercent));
  return [table, ...(plan.tableSource === undefined ? [] : [said.ownTable(plan.tableSource)]), ...several].join('; ');
}

/** Notes that belong beside the tables behind any of the rows, each once. */
export function tableNotesOf(subject: Subject): readonly TableNote[] {
  const plans = subject.gates.flatMap(({ verdicts }) => verdicts.flatMap(({ verdict }) => verdict.results.flatMap(({ detail }) => (detail.by === 'attributes' ? detail.classes.map(({ plan }) => plan) : []))));
  return [...new Set(plans.flatMap((plan) => ('kind' in plan ? [] : tableNotes(plan))))];
}
