import { poissonAtMost, poissonExactly, poissonMoreThan } from '../chance/index.ts';

const SMALL_RATE = 0.05; // nonconformities a piece; below it the corrections fall by p² a term and four of them reach double precision

/**
 * Expected number of whole pieces looked at when looking stops with the piece that brings the nonconformities to `stopAt`, or after `pieces`:
 * Σ P(fewer than stopAt in j pieces), j = 0 … pieces − 1. Added up where a piece brings many; where it brings few, the sum is its integral,
 * (r/p)·P(r + 1 or more) + n·P(fewer than r), with the Euler–Maclaurin corrections.
 * @see Abramowitz & Stegun, Handbook of Mathematical Functions, 23.1.30 (from memory)
 */
export function poissonPiecesUntil(stopAt: number, pieces: number, perPiece: number): number {
  if (perPiece === 0) return pieces;
  return perPiece > SMALL_RATE ? addedUp(stopAt, pieces, perPiece) : byIntegral(stopAt, pieces, perPiece);
}

function addedUp(stopAt: number, pieces: number, perPiece: number): number {
  let sum = 0;
  for (let looked = 0; looked < pieces; looked += 1) {
    const goesOn = poissonAtMost(stopAt - 1, perPiece * looked);
    sum += goesOn;
    if (goesOn < 1e-18) break; // from here on it falls faster than by half a piece
  }
  return sum;
}

function byIntegral(stopAt: number, pieces: number, perPiece: number): number {
  const mean = perPiece * pieces;
  const stopped = poissonMoreThan(stopAt - 1, mean);
  const later = poissonMoreThan(stopAt, mean);
  const integral = (later === 0 ? 0 : (stopAt / perPiece) * later) + pieces * poissonAtMost(stopAt - 1, mean);
  const rise = (order: number): number => slope(order, stopAt, perPiece, mean) - slope(order, stopAt, perPiece, 0);
  return integral + stopped / 2 + rise(1) / 12 - rise(3) / 720 + rise(5) / 30240 - rise(7) / 1209600;
}

/** The derivative of P(fewer than r in t pieces) by t, of odd order: −p^order · Σ (−1)^(order−1−i) C(order−1, i) P(exactly r − 1 − i). */
function slope(order: number, stopAt: number, perPiece: number, mean: number): number {
  let sum = 0;
  let ways = 1;
  for (let back = 0; back < order; back += 1) {
    const sign = (order - 1 - back) % 2 === 0 ? 1 : -1;
    sum += sign * ways * poissonExactly(stopAt - 1 - back, mean);
    ways = (ways * (order - 1 - back)) / (back + 1);
  }
  return -(perPiece ** order) * sum;
}
