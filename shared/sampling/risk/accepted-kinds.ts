import type { Stage } from '../attributes/index.ts';
import { AT_THE_START, drawings, stillOpen } from './walk.ts';
import type { Source } from './model.ts';

/** One way to be accepted: by which sample (from 1), after how many pieces, with how many found, and the share of all lots it happens to. */
export interface AcceptedKind {
  readonly stage: number;
  readonly pieces: number;
  readonly found: number;
  readonly share: number;
}

/** Every way a plan accepts a lot, in the gap too. Their shares add up to its acceptance; ways that cannot be are left out. */
export function acceptedKinds(stages: readonly Stage[], source: Source): readonly AcceptedKind[] {
  const kinds: AcceptedKind[] = [];
  const drawingAfter = drawings(source);
  let open = AT_THE_START;
  let drawn = 0;
  for (const [at, stage] of stages.entries()) {
    const most = at === stages.length - 1 ? stage.re - 1 : (stage.ac ?? -1);
    for (let found = 0; found <= most; found += 1) {
      let share = 0;
      for (let before = open.from; before <= Math.min(found, open.from + open.shares.length - 1); before += 1) {
        const weight = open.shares[before - open.from] ?? 0;
        if (weight > 0) share += weight * (drawingAfter(stage.sampleSize, drawn, before).run(most - before)[found - before] ?? 0);
      }
      if (share > 0) kinds.push({ stage: at + 1, pieces: drawn + stage.sampleSize, found, share });
    }
    open = stillOpen(open, stage, source, drawn, drawingAfter);
    drawn += stage.sampleSize;
  }
  return kinds;
}
