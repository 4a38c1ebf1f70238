import type { Judging, Blocks } from './blocks.ts';
import { blocksOf, piecesOf } from './blocks.ts';
import { lotOf, requireFits, sourceOf } from './model.ts';
import type { RiskModel } from './model.ts';
import { lotFor, outgoingOf } from './outgoing.ts';
import { qualityAt } from './quality-at.ts';

/** The worst average outgoing quality, and the incoming quality that brings it about; both as `outcomes` takes p. */
export interface OutgoingLimit {
  readonly aoql: number;
  readonly at: number;
}

const GRID = 96; // points a search begins with, evenly spaced in the logarithm of p
const GOLDEN = (Math.sqrt(5) - 1) / 2;

/**
 * The average outgoing quality limit: the largest average outgoing quality over all incoming qualities. Looked for on a grid between the
 * qualities accepted with 0.9999 and 0.000001 and narrowed around its best point by golden sections; for one lot over whole numbers.
 * A plan of several samples may have more than one hill, which is why the grid comes first.
 * @param lotSize N; null for a lot very much larger than its samples; a hypergeometric model has its own
 * @returns the limit to 1e-10 (relative); the place, where the hill is flat, to about 1e-7
 * @throws OutsideDomain as `averageOutgoingQuality`
 * @see MIL-STD-105E Tables V; NIST/SEMATECH e-Handbook 6.2.3.2
 */
export function averageOutgoingLimit(plan: Judging, lotSize: number | null, model: RiskModel): OutgoingLimit {
  const blocks = blocksOf(plan);
  const lot = lotFor(lotSize, model);
  if (lot !== null) requireFits(piecesOf(blocks.stages), lot);
  const [low, high] = [qualityAt(plan, model, 0.9999), qualityAt(plan, model, 1e-6)];
  return model.kind === 'hypergeometric' ? inLot(blocks, model.lotSize, low, high) : inProcess(blocks, lot, model, low, high);
}

function inProcess(blocks: Blocks, lotSize: number | null, model: RiskModel, low: number, high: number): OutgoingLimit {
  const cap = model.kind === 'poisson' ? Infinity : 1;
  const outgoing = (logP: number): number => outgoingOf(blocks, lotSize, sourceOf(model, Math.min(cap, Math.exp(logP))));
  const step = (Math.log(high) - Math.log(low)) / (GRID - 1);
  const grid = Array.from({ length: GRID }, (_, at) => Math.log(low) + step * at);
  const best = bestOf(grid, outgoing);
  let [from, to] = [Math.max(best - step, Math.log(low) - 1), Math.min(best + step, Math.log(high))];
  let [left, right] = [to - GOLDEN * (to - from), from + GOLDEN * (to - from)];
  let [atLeft, atRight] = [outgoing(left), outgoing(right)];
  while (to - from > 1e-9) {
    if (atLeft < atRight) {
      [from, left, atLeft] = [left, right, atRight];
      right = from + GOLDEN * (to - from);
      atRight = outgoing(right);
    } else {
      [to, right, atRight] = [right, left, atLeft];
      left = to - GOLDEN * (to - from);
      atLeft = outgoing(left);
    }
  }
  const place = bestOf([left, right, from, to, best], outgoing);
  return { aoql: outgoing(place), at: Math.min(cap, Math.exp(place)) };
}

function inLot(blocks: Blocks, lotSize: number, low: number, high: number): OutgoingLimit {
  const outgoing = (nonconforming: number): number => outgoingOf(blocks, lotSize, lotOf(lotSize, nonconforming));
  const [first, last] = [Math.max(1, Math.round(low * lotSize)), Math.min(lotSize, Math.round(high * lotSize) + 1)];
  const grid = [...new Set(Array.from({ length: GRID }, (_, at) => Math.round(first * (last / first) ** (at / (GRID - 1)))))];
  const best = grid.indexOf(bestOf(grid, outgoing));
  let [from, to] = [grid[best - 1] ?? 1, grid[best + 1] ?? lotSize];
  while (to - from > 2) {
    const [left, right] = [from + Math.floor((to - from) / 3), to - Math.floor((to - from) / 3)];
    if (outgoing(left) < outgoing(right)) from = left;
    else to = right;
  }
  const place = bestOf([from, from + 1, to], outgoing);
  return { aoql: outgoing(place), at: place / lotSize };
}

function bestOf(places: readonly number[], height: (place: number) => number): number {
  return places.map((place) => ({ place, height: height(place) })).reduce((best, next) => (next.height > best.height ? next : best)).place;
}
