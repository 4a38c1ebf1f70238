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
 * between two such pieces its rejection number is constant over long stretches: each stretch is a sample that stops at once on rejection.
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
  for (let done = 0; done < plan.sampleSize; ) {
    // The piece at which a line steps is looked at alone, for it may accept; so may the first, where the acceptance line starts that high.
    const now = numbersAt(plan, done + 1);
    stages.push({ sampleSize: 1, ...now });
    const last = lastLike(plan, now, done + 2);
    if (last > done + 1) stages.push({ sampleSize: last - done - 1, ...now });
    done = last;
  }
  return stages;
}

/** The last piece before a line steps; the lines only rise, so the place is found by halving. */
function lastLike(plan: SequentialPlan, now: Lines, from: number): number {
  let [like, unlike] = [from - 1, plan.sampleSize + 1];
  while (unlike - like > 1) {
    const middle = Math.floor((like + unlike) / 2);
    const { ac, re } = numbersAt(plan, middle);
    if (ac === now.ac && re === now.re) like = middle;
    else unlike = middle;
  }
  return like;
}

/** Where so many pieces cannot be nonconforming yet, the line stands as drawn: nonconformities that are counted may reach it. */
function numbersAt(plan: SequentialPlan, looked: number): Lines {
  return { ac: acceptAt(plan, looked), re: rejectAt(plan, looked) ?? Math.min(Math.ceil(linesAt(plan, looked).reject), plan.truncateAc + 1) };
}
