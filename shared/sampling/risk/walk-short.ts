import type { Stage } from '../attributes/index.ts';
import type { Blocks } from './blocks.ts';
import type { Source } from './model.ts';
import { noneFromLot } from './none-from-lot.ts';
import { fillFromLot, fillFromOdds, isNearNone, tableTo } from './short-table.ts';
import type { ShortTable } from './short-table.ts';
import type { StageOutcome, Walked } from './walk.ts';

/** Plans that may carry more counts than this are followed the other way. */
const MOST_COUNTS = 64;

/**
 * `walk` for plans of small numbers that finish their samples, which is nearly every plan of the tables: the same sums, each sample's chances
 * stepped up from the chance that nothing is found. What does not depend on the quality is laid out once.
 * @returns null for a plan of larger numbers, or one that stops within a sample; and the walk gives null for a quality so bad that nothing
 *   found is next to impossible
 */
export function shortWalker({ stages, stops }: Blocks): ((source: Source) => Walked | null) | null {
  const most = stages.reduce((most, { re }) => Math.max(most, re - 1), 0);
  if (stops !== 'never' || most > MOST_COUNTS) return null;
  const table = tableTo(most);
  const nones = stages.map(({ sampleSize }) => noneFromLot(sampleSize));
  let [open, after] = [new Float64Array(most + 1), new Float64Array(most + 1)];
  return (source) => {
    const isLot = source.kind === 'hypergeometric';
    const bad = isLot ? source.nonconforming : 0;
    const byStage: StageOutcome[] = [];
    let [drawn, averageSampleNumber, left, filledFor] = [0, 0, 0, 0];
    let [from, to] = [0, 0];
    open[0] = 1;
    for (let at = 0; at < stages.length; at += 1) {
      const stage = stages[at];
      if (stage === undefined) break;
      const { sampleSize, ac, re } = stage;
      const least = (ac ?? -1) + 1;
      let [accepted, rejected, begun] = [0, 0, 0];
      for (let count = least; count < re; count += 1) after[count] = 0;
      for (let found = from; found <= to; found += 1) {
        const share = open[found] ?? 0;
        if (!(share > 0)) continue;
        begun += share;
        if (source.kind === 'hypergeometric') {
          const [pieces, badLeft] = [source.lotSize - drawn, source.nonconforming - found];
          const none = nones[at]?.(pieces, badLeft) ?? 0;
          if (!isNearNone(none)) return null;
          fillFromLot(table, none, sampleSize, badLeft, pieces - badLeft - sampleSize);
        } else if (filledFor !== sampleSize) {
          if (!fillFromProcess(table, source, sampleSize)) return null;
          filledFor = sampleSize;
        }
        const { exactly, upTo, beyond } = table;
        if (ac !== null && ac >= found) {
          accepted += share * Math.min(1, upTo[ac - found] ?? 0);
          if (isLot) for (let more = 0; more <= ac - found; more += 1) left += share * (exactly[more] ?? 0) * (bad - found - more);
        }
        rejected += share * (beyond[re - 1 - found] ?? 0);
        for (let count = Math.max(least, found); count < re; count += 1) after[count] = (after[count] ?? 0) + share * (exactly[count - found] ?? 0);
      }
      averageSampleNumber += begun * sampleSize;
      drawn += sampleSize;
      byStage.push({ pieces: drawn, accepted, rejected });
      from = Math.max(least, from);
      to = re - 1;
      const emptied = open;
      open = after;
      after = emptied;
    }
    let acceptedInGap = 0;
    for (let found = from; found <= to; found += 1) {
      const share = open[found] ?? 0;
      acceptedInGap += share;
      left += share * (bad - found);
    }
    return { byStage, acceptedInGap, averageSampleNumber, left: isLot ? left : null };
  };
}

function fillFromProcess(table: ShortTable, source: Exclude<Source, { kind: 'hypergeometric' }>, sampleSize: Stage['sampleSize']): boolean {
  const none = source.kind === 'binomial' ? Math.exp(sampleSize * Math.log1p(-source.p)) : Math.exp(-source.p * sampleSize);
  if (!isNearNone(none)) return false;
  if (source.kind === 'binomial') fillFromOdds(table, none, sampleSize, source.p / (1 - source.p));
  else fillFromOdds(table, none, null, source.p * sampleSize);
  return true;
}
