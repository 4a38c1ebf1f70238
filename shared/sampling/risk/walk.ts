import type { Stage } from '../attributes/index.ts';
import type { Blocks } from './blocks.ts';
import { piecesOf } from './blocks.ts';
import { drawingOf } from './drawing.ts';
import type { Drawing } from './drawing.ts';
import { requireFits } from './model.ts';
import type { Source } from './model.ts';
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
  let open: ReadonlyMap<number, number> = new Map([[0, 1]]);
  let [drawn, averageSampleNumber] = [0, 0];
  for (const [at, stage] of stages.entries()) {
    const stopsHere = stops === 'always' || (stops === 'afterFirst' && at > 0);
    const drawingAfter = drawings(source, stage.sampleSize, drawn);
    let [accepted, rejected] = [0, 0];
    for (const [found, share] of open) {
      const drawing = drawingAfter(found);
      if (stage.ac !== null && stage.ac >= found) accepted += share * drawing.atMost(stage.ac - found);
      rejected += share * drawing.moreThan(stage.re - 1 - found);
      averageSampleNumber += share * (stopsHere ? drawing.piecesUntil(stage.re - found) : stage.sampleSize);
    }
    open = stillOpen(open, stage, source, drawn);
    drawn += stage.sampleSize;
    byStage.push({ pieces: drawn, accepted, rejected });
  }
  return { byStage, acceptedInGap: sumOf(open.values()), averageSampleNumber, left: null };
}

/** Which counts a sample leaves open, with their shares, from those it began with. After the last sample: the gap of a reduced plan. */
export function stillOpen(open: ReadonlyMap<number, number>, stage: Stage, source: Source, drawn: number): ReadonlyMap<number, number> {
  const after = new Map<number, number>();
  const least = (stage.ac ?? -1) + 1;
  if (stage.re <= least) return after;
  const drawingAfter = drawings(source, stage.sampleSize, drawn);
  for (const [found, share] of open) {
    const most = source.kind === 'poisson' ? stage.re - 1 : Math.min(stage.re - 1, found + stage.sampleSize);
    const run = drawingAfter(found).run(most - found);
    for (let count = Math.max(least, found); count <= most; count += 1) {
      const added = share * (run[count - found] ?? 0);
      if (added > 0) after.set(count, (after.get(count) ?? 0) + added);
    }
  }
  return after;
}

/** The sample after so many were found. A process does not remember, so its samples are all one; each is asked for once. */
export function drawings(source: Source, pieces: number, drawn: number): (found: number) => Drawing {
  if (source.kind === 'hypergeometric') return (found) => drawingOf(source, pieces, drawn, found);
  const same = remembered(drawingOf(source, pieces, drawn, 0));
  return () => same;
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
  const answers = new Map<number, number>();
  return (count) => {
    const known = answers.get(count);
    if (known !== undefined) return known;
    const answer = ask(count);
    answers.set(count, answer);
    return answer;
  };
}

function sumOf(shares: Iterable<number>): number {
  let sum = 0;
  for (const share of shares) sum += share;
  return sum;
}
