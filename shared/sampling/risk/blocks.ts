import { OutsideDomain, requireWhole } from '../../ground/outside-domain.ts';
import type { Stage } from '../attributes/index.ts';
import { acceptAt, linesAt, rejectAt } from '../sequential/index.ts';
import type { SequentialPlan } from '../sequential/index.ts';
import { LARGEST_LOT } from './model.ts';

/** A plan whose risk is asked for: samples in turn, or piece by piece between two lines. */
export type Judging = { readonly stages: readonly Stage[] } | SequentialPlan;

/** A plan as samples in turn, and where looking stops at the very piece that rejects: nowhere, from the second sample on, or everywhere. */
export interface Blocks {
  readonly stages: readonly Stage[];
  readonly stops: 'never' | 'afterFirst' | 'always';
}

/**
 * Any plan as samples in turn. A sequential plan can accept only at a piece where its acceptance line reaches a new whole number, and
 * between two such pieces its rejection number is constant over long stretches: each stretch is a sample that stops at once on rejection,
 * and may accept at its last piece.
 * The work so grows with the number of steps of the lines, not with the number of pieces.
 * @throws OutsideDomain for a plan that is none: no samples, numbers that fall, acceptance at or above rejection, no decision at the end
 */
export function blocksOf(plan: Judging, curtailed = false): Blocks {
  if ('stages' in plan) {
    requireSoundStages(plan.stages);
    return { stages: plan.stages, stops: curtailed ? 'afterFirst' : 'never' };
  }
  return { stages: sequentialStages(plan), stops: 'always' };
}

/** Pieces of all samples together. */
export function piecesOf(stages: readonly Stage[]): number {
  let pieces = 0;
  for (const { sampleSize } of stages) pieces += sampleSize;
  return pieces;
}

function requireSoundStages(stages: readonly Stage[]): void {
  let [ac, re] = [-1, 1];
  for (const [at, stage] of stages.entries()) {
    requireWhole(`stages[${at}].sampleSize`, stage.sampleSize, 1, LARGEST_LOT);
    if (stage.ac !== null) requireWhole(`stages[${at}].ac`, stage.ac, Math.max(0, ac), LARGEST_LOT);
    ac = stage.ac ?? ac;
    requireWhole(`stages[${at}].re`, stage.re, Math.max(re, ac + 1), Number.MAX_SAFE_INTEGER);
    re = stage.re;
  }
  if (stages.at(-1)?.ac === undefined || stages.at(-1)?.ac === null) throw new OutsideDomain('stages', 'samples of which the last can accept', stages.length);
}

type Lines = Pick<Stage, 'ac' | 're'>;

function sequentialStages(plan: SequentialPlan): readonly Stage[] {
  const stages: Stage[] = [];
  let [done, ac]: [number, number | null] = [0, null];
  while (done < plan.sampleSize) {
    const now = numbersAt(plan, done + 1);
    // A piece at which the acceptance line steps may accept. It ends a stretch, or is looked at alone where the rejection line steps with it.
    const stepsNow: boolean = now.ac !== ac;
    let end: number = stepsNow ? done + 1 : lastLike(plan, now, done + 2);
    ac = now.ac;
    const next: Lines | null = stepsNow || end === plan.sampleSize ? null : numbersAt(plan, end + 1);
    if (next?.re === now.re) [end, ac] = [end + 1, next.ac];
    stages.push({ sampleSize: end - done, ac, re: now.re });
    done = end;
  }
  return stages;
}

/** The last piece before a line steps; the lines only rise, so the place is found by halving. */
function lastLike(plan: SequentialPlan, now: Lines, from: number): number {
  const isLike = (looked: number): boolean => {
    const { ac, re } = numbersAt(plan, looked);
    return ac === now.ac && re === now.re;
  };
  let [like, unlike] = [from - 1, plan.sampleSize + 1];
  // Where the nearer line should step, and a piece beside it for the rounding; halving only does the rest.
  const step = Math.floor(Math.min(((now.ac ?? -1) + 1 + plan.h1) / plan.slope, (now.re - plan.h2) / plan.slope));
  for (const guess of [step - 1, step, step + 1, step + 2]) {
    if (guess <= like || guess >= unlike) continue;
    if (isLike(guess)) like = guess;
    else unlike = guess;
  }
  while (unlike - like > 1) {
    const middle = Math.floor((like + unlike) / 2);
    if (isLike(middle)) like = middle;
    else unlike = middle;
  }
  return like;
}

/** Where so many pieces cannot be nonconforming yet, the line stands as drawn: nonconformities that are counted may reach it. */
function numbersAt(plan: SequentialPlan, looked: number): Lines {
  return { ac: acceptAt(plan, looked), re: rejectAt(plan, looked) ?? Math.min(Math.ceil(linesAt(plan, looked).reject), plan.truncateAc + 1) };
}
