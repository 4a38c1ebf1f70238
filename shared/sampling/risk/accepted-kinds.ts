import type { Stage } from '../attributes/index.ts';
import { drawings, stillOpen } from './walk.ts';
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
  let open: ReadonlyMap<number, number> = new Map([[0, 1]]);
  let drawn = 0;
  for (const [at, stage] of stages.entries()) {
    const drawingAfter = drawings(source, stage.sampleSize, drawn);
    const most = at === stages.length - 1 ? stage.re - 1 : (stage.ac ?? -1);
    for (let found = 0; found <= most; found += 1) {
      let share = 0;
      for (const [before, weight] of open) if (before <= found) share += weight * (drawingAfter(before).run(most - before)[found - before] ?? 0);
      if (share > 0) kinds.push({ stage: at + 1, pieces: drawn + stage.sampleSize, found, share });
    }
    open = stillOpen(open, stage, source, drawn);
    drawn += stage.sampleSize;
  }
  return kinds;
}
