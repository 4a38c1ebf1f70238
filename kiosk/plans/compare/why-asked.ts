import type { LineLetter } from '../../parts/line-letters.ts';

/** What can be asked for its reason. */
export const WHY_KINDS = [
  'sample', 'numbers', 'letter', 'producer', 'consumer', 'atLq', 'aoql', 'asnAtAql', 'acceptedExpected', 'asnExpected', 'piecesYear', 'hoursYear', 'usedYear', 'sortedYear', 'scheme', 'schemeAsn', 'schemeAoq', 'share', 'simulated',
] as const;
export type WhyKind = (typeof WHY_KINDS)[number];

/** A figure that somebody asks the reason of. */
export interface WhyAsked {
  readonly letter: LineLetter;
  readonly kind: WhyKind;
  /** The figure as it was shown. */
  readonly shown: string;
  /** What it was called there. */
  readonly name: string;
}
