import type { Stage } from '../attributes/index.ts';
import type { Blocks } from './blocks.ts';
import { piecesOf } from './blocks.ts';
import { drawingOf } from './drawing.ts';
import type { Drawing } from './drawing.ts';
import { requireFits } from './model.ts';
import type { Source } from './model.ts';
import { spread } from './spread.ts';
import { shortWalker } from './walk-short.ts';

/** What one sample decides, as shares of all lots. `pieces` is what was looked at in all by its end, where nothing stops sooner. */
export interface StageOutcome {
  readonly pieces: number;
  readonly accepted: number;
  readonly rejected: number;
}

export interface Walked {
  readonly byStage: readonly StageOutcome[];
  readonly acceptedInGap: number;
  readonly averageSampleNumber: number;
  /** Nonconforming pieces left, on average, in one lot that is accepted, those rejected counting as 0; null where this was not followed. */
  readonly left: number | null;
}

/** A plan made ready to be followed at one quality after another. @throws OutsideDomain when the plan may look at more pieces than the lot has */
export function walker(blocks: Blocks): (source: Source) => Walked {
  const short = shortWalker(blocks);
  const pieces = piecesOf(blocks.stages);
  return (source) => {
    if (source.kind === 'hypergeometric') requireFits(pieces, source.lotSize);
    return short?.(source) ?? walkAny(blocks, source);
  };
}

/** `walker` for one quality. */
export function walk(blocks: Blocks, source: Source): Walked {
  return walker(blocks)(source);
}

/**
 * Follows a plan sample by sample. Only the counts that leave the verdict open are carried, each with its probability; whatever decides is
 * added to its outcome through a tail, so nothing is ever found by subtraction.
 */
export function walkAny({ stages, stops }: Blocks, source: Source): Walked {
  const byStage: StageOutcome[] = [];
  const drawingAfter = drawings(source);
  let open = AT_THE_START;
  let [drawn, averageSampleNumber] = [0, 0];
  for (const [at, stage] of stages.entries()) {
    const stopsHere = stops === 'always' || (stops === 'afterFirst' && at > 0);
    const { sampleSize, ac, re } = stage;
    let [accepted, rejected] = [0, 0];
    for (let place = 0; place < open.shares.length; place += 1) {
      const share = open.shares[place] ?? 0;
      if (share === 0) continue;
      const found = open.from + place;
      const drawing = drawingAfter(sampleSize, drawn, found);
      if (ac !== null && ac >= found) accepted += share * drawing.atMost(ac - found);
      if (source.kind !== 'poisson' && re - found > sampleSize) {
        averageSampleNumber += share * sampleSize;
        continue;
      }
      rejected += share * drawing.moreThan(re - 1 - found);
      averageSampleNumber += share * (stopsHere ? drawing.piecesUntil(re - found) : sampleSize);
    }
    open = stillOpen(open, stage, source, drawn, drawingAfter);
    drawn += sampleSize;
    byStage.push({ pieces: drawn, accepted, rejected });
  }
  return { byStage, acceptedInGap: open.shares.reduce((sum, share) => sum + share, 0), averageSampleNumber, left: null };
}

/** The counts that leave the verdict open, from the lowest on, with the share of all lots that has each. */
export interface Open {
  readonly from: number;
  readonly shares: Float64Array;
}

export const AT_THE_START: Open = { from: 0, shares: Float64Array.of(1) };

/** Which counts a sample leaves open, with their shares, from those it began with. After the last sample: the gap of a reduced plan. */
export function stillOpen({ from, shares }: Open, { sampleSize, ac, re }: Stage, source: Source, drawn: number, drawingAfter: DrawingAfter): Open {
  const least = Math.max((ac ?? -1) + 1, from);
  const highest = source.kind === 'poisson' ? re - 1 : Math.min(re - 1, from + shares.length - 1 + sampleSize);
  const after = new Float64Array(Math.max(0, highest + 1 - least));
  if (source.kind !== 'hypergeometric' && shares.length > 1 && after.length > 0) {
    spread(shares, drawingAfter(sampleSize, drawn, from).run(highest - from), after, least - from);
    return { from: least, shares: after };
  }
  for (let place = 0; place < shares.length; place += 1) {
    const share = shares[place] ?? 0;
    const found = from + place;
    const most = source.kind === 'poisson' ? highest : Math.min(highest, found + sampleSize);
    if (share === 0 || most < least) continue;
    const run = drawingAfter(sampleSize, drawn, found).run(most - found);
    for (let count = Math.max(least, found); count <= most; count += 1) after[count - least] = (after[count - least] ?? 0) + share * (run[count - found] ?? 0);
  }
  return { from: least, shares: after };
}

export type DrawingAfter = (pieces: number, drawn: number, found: number) => Drawing;

/** The sample of so many pieces after so many were drawn and found. A process does not remember, so its samples of one size are all one. */
export function drawings(source: Source): DrawingAfter {
  if (source.kind === 'hypergeometric') return (pieces, drawn, found) => drawingOf(source, pieces, drawn, found);
  const bySize = new Map<number, Drawing>();
  let [size, last]: [number, Drawing | null] = [0, null];
  return (pieces) => {
    if (pieces === size && last !== null) return last;
    size = pieces;
    last = bySize.get(pieces) ?? remembered(drawingOf(source, pieces, 0, 0));
    bySize.set(pieces, last);
    return last;
  };
}

function remembered({ atMost, moreThan, run, piecesUntil }: Drawing): Drawing {
  let longest: readonly number[] = [];
  return {
    atMost: once(atMost),
    moreThan: once(moreThan),
    run: (to) => {
      if (to >= longest.length) longest = run(to);
      return longest;
    },
    piecesUntil: once(piecesUntil),
  };
}

function once(ask: (count: number) => number): (count: number) => number {
  const answers: number[] = [];
  return (count) => (answers[count] ??= ask(count));
}
