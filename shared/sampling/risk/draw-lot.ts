import type { Dice } from '../draw/dice.ts';
import { judgeStages } from '../attributes/index.ts';
import type { StagedPlan } from '../attributes/index.ts';
import { drawingOf } from './drawing.ts';
import type { Source } from './model.ts';

/** What looking at one lot brought. */
export interface LotLookedAt {
  readonly outcome: 'accepted' | 'acceptedInGap' | 'rejected';
  /** The sample that decided, counted from 1. */
  readonly stage: number;
  readonly found: number;
  /** Pieces looked at; every sample begun was finished. */
  readonly pieces: number;
}

/** Looks at one lot as the dice have it: sample after sample, until the plan's own judgement falls. */
export function lookAtLot(plan: StagedPlan, source: Source, dice: Dice): LotLookedAt {
  const found: number[] = [];
  let pieces = 0;
  for (const { sampleSize } of plan.stages) {
    const before = found.at(-1) ?? 0;
    found.push(before + countBy(drawingOf(source, sampleSize, pieces, before).atMost, fractionBy(dice)));
    pieces += sampleSize;
    const verdict = judgeStages(plan, found);
    if (verdict.outcome !== 'open') return { outcome: verdict.outcome, stage: verdict.stage, found: found.at(-1) ?? 0, pieces };
  }
  throw new RangeError('the last sample of a plan always decides');
}

/** A fraction above 0 and below 1, on 53 bits. */
export function fractionBy(dice: Dice): number {
  const [high, low] = [dice.roll(2 ** 26) - 1, dice.roll(2 ** 26) - 1];
  return (high * 2 ** 26 + low + 0.5) / 2 ** 52;
}

/** The smallest count of which the probability of it or fewer reaches a fraction: the count the fraction stands for. */
function countBy(atMost: (found: number) => number, fraction: number): number {
  let [below, high] = [-1, 0];
  while (atMost(high) < fraction) [below, high] = [high, 2 * high + 1];
  while (high - below > 1) {
    const middle = Math.floor((below + high) / 2);
    if (atMost(middle) < fraction) below = middle;
    else high = middle;
  }
  return high;
}
