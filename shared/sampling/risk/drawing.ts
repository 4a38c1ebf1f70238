import {
  binomialAtMost, binomialExactly, binomialMoreThan, hypergeometricAtMost, hypergeometricExactly, hypergeometricMoreThan,
  poissonAtMost, poissonExactly, poissonMoreThan,
} from '../chance/index.ts';
import { poissonPiecesUntil } from './poisson-pieces-until.ts';
import type { Source } from './model.ts';

/** What one sample may bring, given what was drawn before it. */
export interface Drawing {
  readonly atMost: (found: number) => number;
  readonly moreThan: (found: number) => number;
  /** The probabilities of 0, 1, … `to` found. */
  readonly run: (to: number) => readonly number[];
  /** Expected number of pieces looked at, if looking stops at the piece that brings the count to `stopAt` (1 or more). */
  readonly piecesUntil: (stopAt: number) => number;
}

/**
 * A sample of `pieces` from the source after `drawn` pieces were taken, `found` of them nonconforming. Without replacement this changes the
 * lot that is left; a process does not remember.
 *
 * Stopping at the r-th nonconforming piece, T its place, n pieces at most: E min(T, n) = n·P(X < r) + E(T; T ≤ n), and the last term is
 * r·P(X ≥ r) + r·(1−p)/p·P(X > r) for a process, r·P(X ≥ r) + r·(N−D)/(D+1)·P(Y > r) for a lot, Y found where D + 1 are nonconforming.
 * @see Johnson, Kemp & Kotz, Univariate Discrete Distributions, 3rd ed., ch. 3, 4, 6; the two identities are derived in docs/methods/risk.md
 */
export function drawingOf(source: Source, pieces: number, drawn: number, found: number): Drawing {
  switch (source.kind) {
    case 'hypergeometric': return fromLot(source.lotSize - drawn, source.nonconforming - found, pieces);
    case 'binomial': return fromProcess(source.p, pieces);
    default: return fromCounts(source.p, pieces);
  }
}

function fromProcess(p: number, pieces: number): Drawing {
  return {
    atMost: (found) => binomialAtMost(found, pieces, p),
    moreThan: (found) => binomialMoreThan(found, pieces, p),
    run: (to) => runFrom(Math.floor((pieces + 1) * p), to, (k) => binomialExactly(k, pieces, p),
      (k) => (k >= pieces ? 0 : ((pieces - k) / (k + 1)) * (p / (1 - p)))),
    piecesUntil: (stopAt) => pieces * binomialAtMost(stopAt - 1, pieces, p)
      + stopAt * (binomialMoreThan(stopAt - 1, pieces, p) + times((1 - p) / p, binomialMoreThan(stopAt, pieces, p))),
  };
}

function fromLot(lotSize: number, nonconforming: number, pieces: number): Drawing {
  const conforming = lotSize - nonconforming;
  return {
    atMost: (found) => hypergeometricAtMost(found, pieces, lotSize, nonconforming),
    moreThan: (found) => hypergeometricMoreThan(found, pieces, lotSize, nonconforming),
    run: (to) => runFrom(Math.floor(((pieces + 1) * (nonconforming + 1)) / (lotSize + 2)), to,
      (k) => hypergeometricExactly(k, pieces, lotSize, nonconforming),
      (k) => (k >= pieces || k >= nonconforming ? 0 : (((nonconforming - k) / (k + 1)) * (pieces - k)) / (conforming - pieces + k + 1))),
    piecesUntil: (stopAt) => pieces * hypergeometricAtMost(stopAt - 1, pieces, lotSize, nonconforming)
      + stopAt * hypergeometricMoreThan(stopAt - 1, pieces, lotSize, nonconforming)
      + (conforming === 0 ? 0 : stopAt * (conforming / (nonconforming + 1)) * hypergeometricMoreThan(stopAt, pieces, lotSize, nonconforming + 1)),
  };
}

function fromCounts(perPiece: number, pieces: number): Drawing {
  const mean = perPiece * pieces;
  return {
    atMost: (found) => poissonAtMost(found, mean),
    moreThan: (found) => poissonMoreThan(found, mean),
    run: (to) => runFrom(Math.floor(mean), to, (k) => poissonExactly(k, mean), (k) => mean / (k + 1)),
    piecesUntil: (stopAt) => poissonPiecesUntil(stopAt, pieces, perPiece),
  };
}

/** Probabilities of 0 … to, stepped by the ratio P(k + 1) / P(k) from the likeliest of them, so that nothing underflows before it must. */
function runFrom(likeliest: number, to: number, exactly: (k: number) => number, ratio: (k: number) => number): readonly number[] {
  if (to < 0) return [];
  const from = Math.max(0, Math.min(likeliest, to));
  const run = Array.from({ length: to + 1 }, () => 0);
  const start = exactly(from);
  if (start === 0) return run;
  run[from] = start;
  for (let k = from, at = start; k < to && at > 0; k += 1) run[k + 1] = at *= ratio(k);
  for (let k = from - 1, at = start; k >= 0 && at > 0; k -= 1) run[k] = at = Math.max(0, at / ratio(k));
  return run;
}

/** A product in which nothing, however often it would count, stays nothing. */
function times(often: number, chance: number): number {
  return chance === 0 ? 0 : often * chance;
}
