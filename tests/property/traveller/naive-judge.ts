import type { ClassPlan, FindingClass } from '../../../shared/traveller/index.ts';

/** Nonconformities at each place of the draw, by class. */
export type Seen = { readonly [Each in FindingClass]?: readonly number[] };
type Outcome = 'accepted' | 'acceptedInGap' | 'rejected' | 'undecided';
interface Judged { readonly outcome: Outcome; readonly found: number; readonly sample: number; readonly at: number }

/**
 * A judge of another make than the one under test: it walks the draw piece by piece with a plain count, and knows the plan's numbers and
 * nothing else. Nonconforming pieces are counted as they are given: 1 a piece.
 * @param looked pieces really looked at; asks for more as the plan does where it is left out
 */
export function naiveVerdict(classes: readonly ClassPlan[], seen: Seen, looked?: number): { readonly accepted: boolean; readonly looked: number; readonly classes: readonly object[] } {
  if (classes.some(({ plan }) => 'slope' in plan)) return naiveSequence(classes, seen, looked);
  let upTo = looked ?? 0;
  let judged = classes.map((each) => judge(each, seen[each.class] ?? [], upTo));
  while (looked === undefined && judged.some(({ outcome }) => outcome === 'undecided') && !judged.some(({ outcome }) => outcome === 'rejected')) {
    const ends = judged.flatMap(({ outcome, at }) => (outcome === 'undecided' ? [at] : []));
    upTo = Math.max(...ends);
    judged = classes.map((each) => judge(each, seen[each.class] ?? [], upTo));
  }
  return {
    accepted: judged.every(({ outcome }) => outcome === 'accepted' || outcome === 'acceptedInGap'), looked: upTo,
    classes: judged.map(({ outcome, found, sample }, at) => ({ class: classes[at]?.class, outcome, found, sample })),
  };
}

/** Piece by piece: at each piece the classes are entered in turn, and the first that rejects stops everything, whatever else the piece shows. */
function naiveSequence(classes: readonly ClassPlan[], seen: Seen, looked?: number): ReturnType<typeof naiveVerdict> {
  const judged = classes.map(({ class: each }) => ({ class: each, outcome: 'undecided', found: 0, sample: 1 }));
  const give = (accepted: boolean, at: number) => ({ accepted, looked: at, classes: judged });
  for (let piece = 1; piece <= (looked ?? Infinity); piece += 1) {
    for (const [at, { class: each, plan }] of classes.entries()) {
      const one = judged[at];
      if (one?.outcome !== 'undecided' || !('slope' in plan) || (seen[each]?.[piece - 1] ?? 0) === 0) continue;
      one.found += 1;
      if (one.found > plan.truncateAc || (piece < plan.truncateAt && one.found >= plan.slope * piece + plan.h2)) {
        one.outcome = 'rejected';
        return give(false, looked ?? piece);
      }
    }
    classes.forEach(({ plan }, at) => {
      const one = judged[at];
      if (one?.outcome === 'undecided' && 'slope' in plan && (piece === plan.truncateAt || one.found <= plan.slope * piece - plan.h1)) one.outcome = 'accepted';
    });
    if (looked === undefined && judged.every(({ outcome }) => outcome === 'accepted')) return give(true, piece);
  }
  return give(judged.every(({ outcome }) => outcome === 'accepted'), looked ?? 0);
}

/** `at`: the end of the sample that decided, or of the one to be looked at next. */
function judge({ plan }: ClassPlan, seen: readonly number[], upTo: number): Judged {
  if ('slope' in plan) throw new Error('judged piece by piece');
  let found = 0;
  const stages = plan.stages ?? [{ sampleSize: plan.sampleSize, ac: plan.ac, re: plan.re }];
  let end = 0;
  for (const [index, stage] of stages.entries()) {
    const from = end;
    end += stage.sampleSize;
    const upHere = found + seen.slice(from, Math.min(end, upTo)).reduce((sum, count) => sum + count, 0);
    if (end > upTo) return { outcome: 'undecided', found: upHere, sample: index + 1, at: end };
    found = upHere;
    const decided = stage.ac !== null && found <= stage.ac ? 'accepted' : found >= stage.re ? 'rejected' : index === stages.length - 1 ? 'acceptedInGap' : null;
    if (decided !== null) return { outcome: decided, found, sample: index + 1, at: end };
  }
  throw new Error('the last sample decides');
}
