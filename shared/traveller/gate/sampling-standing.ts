import type { FindingClass } from '../plan/characteristic.ts';
import { classStandings, isSequential, lookedSoFar, sampleTotals } from './class-outcome.ts';
import type { ClassStanding } from './class-outcome.ts';
import type { CharacteristicWork } from './work.ts';

/** How far a counted sample has come and which pieces are to be looked at now. */
export interface SamplingStanding {
  /** The sample being taken, from 1, and the most the plans may take. */
  readonly sample: number;
  readonly samples: number;
  /** Places in the draw to look at now, both included. */
  readonly from: number;
  readonly to: number;
  /** Pieces looked at so far, all samples together. */
  readonly looked: number;
  /** Nothing more is asked: each class has decided, or one has rejected. */
  readonly decided: boolean;
  readonly classes: readonly ClassStanding[];
}

/**
 * Where a counted sample stands; null where the characteristic is judged otherwise.
 *
 * Each class is judged on its own samples. The next pieces are asked for only while a class is open and none has rejected: a lot that one
 * class rejects is rejected, so nothing more is to be learnt from it for the verdict (common practice, no source). A class that has decided
 * stays decided, and what is found of it later is kept and not counted.
 */
export function samplingStanding(work: CharacteristicWork): SamplingStanding | null {
  const { basis, n } = work.demand;
  if (basis.by !== 'attributes') return null;
  const looked = lookedSoFar(basis.classes, work);
  const classes = classStandings(basis.classes, work);
  const open = classes.filter(({ outcome }) => outcome === 'open');
  const decided = work.looked !== null || open.length === 0 || classes.some(({ outcome }) => outcome === 'rejected');
  const samples = Math.max(1, ...basis.classes.map(({ plan }) => sampleTotals(plan).length));
  const ends = open.map(({ at }) => at);
  // Piece by piece the next decision is the earliest of the classes'; sample by sample the next end is the furthest.
  const to = decided ? looked : Math.min(n, basis.classes.some(({ plan }) => isSequential(plan)) ? Math.min(...ends) : Math.max(...ends));
  return { sample: Math.min(samples, work.samples.length + (decided ? 0 : 1)) || 1, samples, from: Math.min(looked + 1, to), to, looked, decided, classes };
}

/**
 * True when a finding of this class must name its piece: it is judged piece by piece, or one of its samples ends before the pieces asked for
 * now do.
 */
export function findingNeedsPiece(work: CharacteristicWork, findingClass: FindingClass): boolean {
  return ownEnd(work, findingClass) !== null;
}

/** The piece, within those asked for now, up to which this class counts a finding; null where that is all of them. Piece by piece it is the last of them. */
export function ownEnd(work: CharacteristicWork, findingClass: FindingClass): number | null {
  const { basis } = work.demand;
  const own = basis.by === 'attributes' ? basis.classes.find((each) => each.class === findingClass)?.plan : undefined;
  const standing = samplingStanding(work);
  if (own === undefined || standing === null) return null;
  return isSequential(own) ? standing.to : sampleTotals(own).find((total) => total >= standing.from && total < standing.to) ?? null;
}
