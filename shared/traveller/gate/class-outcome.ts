import { judgeStages, stagesOf } from '../../sampling/attributes/index.ts';
import type { Stage } from '../../sampling/attributes/index.ts';
import { acceptAt, judgeSequential, nextDecision, rejectAt } from '../../sampling/sequential/index.ts';
import type { LotPlan, SequentialPlan } from '../../sampling/sequential/index.ts';
import type { FindingClass } from '../plan/characteristic.ts';
import type { ClassPlan } from './demand.ts';
import type { CharacteristicWork, Finding } from './work.ts';

/** How one class of a counted sample stands after the pieces looked at so far. */
export interface ClassStanding {
  readonly class: FindingClass;
  readonly plan: LotPlan;
  /** Counted: up to the sample that decided, or that is open. */
  readonly found: number;
  /** Recorded, but in pieces the class does not count: kept, never judged. */
  readonly beyond: number;
  readonly outcome: 'open' | 'accepted' | 'acceptedInGap' | 'rejected';
  /** Sample that decided, or the one to be taken, from 1. */
  readonly sample: number;
  /** Pieces of the draw, all samples together, at which the class decided or is next decided. */
  readonly at: number;
  /** Numbers that decision is made by; null where it cannot go that way there. Piece by piece `rejectAt` is that of the very next piece. */
  readonly acceptAt: number | null;
  readonly rejectAt: number | null;
}

/** A plan judged piece by piece. */
export function isSequential(plan: LotPlan): plan is SequentialPlan {
  return 'kind' in plan && plan.kind === 'sequential';
}

/** Pieces of all samples up to each, one total a sample; a plan judged piece by piece has one. */
export function sampleTotals(plan: LotPlan): readonly number[] {
  if (isSequential(plan)) return [plan.sampleSize];
  let total = 0;
  return stagesOf(plan).map(({ sampleSize }) => (total += sampleSize));
}

/**
 * Judges each class by what was found in the pieces of the draw looked at so far, sample by sample as its plan says. The first sample that
 * decides stands, whatever is found afterwards. Piece by piece, the piece that one class rejects on is not looked at any further: it does
 * not decide for another.
 */
export function classStandings(classes: readonly ClassPlan[], work: CharacteristicWork): readonly ClassStanding[] {
  const standings = classes.map((each) => classStanding(each, work, lookedSoFar(classes, work)));
  const stoppedAt = standings.flatMap(({ outcome, at, plan }) => (outcome === 'rejected' && isSequential(plan) ? [at] : []));
  return standings.map((each) => (isSequential(each.plan) && each.outcome === 'accepted' && stoppedAt.includes(each.at) ? { ...each, outcome: 'open' } : each));
}

/** Pieces looked at so far. Piece by piece, a finding at a piece says that those before it were looked at. */
export function lookedSoFar(classes: readonly ClassPlan[], work: CharacteristicWork): number {
  const done = doneSoFar(work);
  if (work.looked !== null || !classes.some(({ plan }) => isSequential(plan))) return done;
  return work.findings.reduce((most, { ordinals, withdrawn }) => (withdrawn ? most : Math.max(most, ...ordinals)), done);
}

/** Pieces that somebody has said to be done with. */
export function doneSoFar({ looked, samples }: CharacteristicWork): number {
  return Math.max(looked ?? 0, samples.at(-1)?.looked ?? 0);
}

function classStanding({ class: each, plan }: ClassPlan, work: CharacteristicWork, looked: number): ClassStanding {
  const findings = work.findings.filter((finding) => finding.class === each && !finding.withdrawn);
  const counted = countsPieces(work) ? nonconformingPieces : nonconformities;
  const everything = counted(findings, Infinity);
  return isSequential(plan) ? inSequence(each, plan, findings, looked, everything, doneSoFar(work)) : bySamples(each, plan, work, findings, looked, counted);
}

function inSequence(each: FindingClass, plan: SequentialPlan, findings: readonly Finding[], looked: number, everything: number, done: number): ClassStanding {
  const seen = Math.min(looked, plan.truncateAt);
  const foundAt = [...new Set(findings.flatMap(({ ordinals }) => ordinals))].filter((at) => at <= seen).sort((a, b) => a - b);
  const judged = judgeSequential(plan, foundAt, seen);
  const { at } = judged;
  // A piece just found may show more than was entered yet: it accepts nothing before it is said to be done with.
  const outcome = judged.outcome === 'accepted' && at === seen && at > done ? 'open' : judged.outcome;
  const found = foundAt.filter((piece) => piece <= at).length;
  const next = outcome === 'open' ? nextDecision(plan, found, seen) : at;
  return { class: each, plan, found, beyond: everything - found, outcome, sample: 1, at: next, acceptAt: acceptAt(plan, Math.max(1, next)), rejectAt: rejectAt(plan, outcome === 'open' ? Math.min(seen + 1, plan.truncateAt) : at) };
}

type Counted = (findings: readonly Finding[], within: number) => number;

function bySamples(each: FindingClass, plan: Exclude<LotPlan, SequentialPlan>, work: CharacteristicWork, findings: readonly Finding[], looked: number, counted: Counted): ClassStanding {
  const stages = stagesOf(plan);
  const totals = sampleTotals(plan);
  const reached = totals.filter((total) => total <= looked);
  const founds = reached.map((total) => counted(recordedBy(work, findings, total), total));
  const { outcome, stage } = judgeStages({ stages }, founds);
  const at = totals[stage - 1] ?? looked;
  const { ac, re }: Pick<Stage, 'ac' | 're'> = stages[stage - 1] ?? { ac: plan.ac, re: plan.re };
  // While a sample is being looked at, what was found in it so far is shown, though nothing is judged yet.
  const found = outcome === 'open' ? counted(findings, at) : founds[stage - 1] ?? 0;
  return { class: each, plan, found, beyond: counted(findings, Infinity) - found, outcome, sample: stage, at, acceptAt: ac, rejectAt: re };
}

/** Findings without a place in the draw belong to the sample they were entered in: the first one given as done that reaches `total`. */
function recordedBy(work: CharacteristicWork, findings: readonly Finding[], total: number): readonly Finding[] {
  const done = work.samples.find(({ looked }) => looked >= total);
  return done === undefined ? findings : findings.filter(({ ordinals, slip }) => ordinals.length > 0 || slip < done.slip);
}

function countsPieces({ demand: { characteristic: { sampling } } }: CharacteristicWork): boolean {
  return sampling.rule !== 'attributes' || sampling.counts !== 'nonconformities';
}

/**
 * Nonconforming pieces within the first n of the draw. A piece with two nonconformities of one class is one nonconforming piece, which is
 * seen where the pieces are named.
 * @see MIL-STD-105E 3.16 to 3.18, nonconforming unit (from memory)
 */
export function nonconformingPieces(findings: readonly Pick<Finding, 'pieces' | 'ordinals'>[], n: number): number {
  const named = new Set(findings.flatMap(({ ordinals }) => ordinals.filter((ordinal) => ordinal <= n)));
  return named.size + findings.reduce((sum, { pieces, ordinals }) => sum + (ordinals.length === 0 ? pieces : 0), 0);
}

/** Nonconformities within the first n of the draw: every one counts, however many a piece has. */
export function nonconformities(findings: readonly Pick<Finding, 'pieces' | 'ordinals'>[], n: number): number {
  return findings.reduce((sum, { pieces, ordinals }) => sum + (ordinals.length === 0 ? pieces : ordinals.filter((ordinal) => ordinal <= n).length), 0);
}
