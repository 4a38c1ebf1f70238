import { noncentralTAbove, noncentralTAt, noncentralTBelow, normalAbove, normalAt, normalBelow } from '../chance/index.ts';
import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';

/** Two points of an operating characteristic, all four fractions: p1 is accepted with 1 − producer's risk or more, p2 with the consumer's risk or less. */
export interface VariablesPoints { readonly p1: number; readonly producerRisk: number; readonly p2: number; readonly consumerRisk: number }

/** n and k of one limit, with the risks the plan really has, and the room k was taken from: any k in it meets both points. */
export interface PointsDesign {
  readonly n: number;
  readonly k: number;
  readonly leastK: number;
  readonly mostK: number;
  readonly producerRisk: number;
  readonly consumerRisk: number;
}

/** The largest sample a design is looked for in. */
export const LARGEST_DESIGN = 5000;

/**
 * The smallest variables plan through two risk points, one limit. A pair (n, k) meets both when k lies between the k that accepts p2 just
 * as often as allowed and the k that accepts p1 just as seldom as allowed; the smallest n that leaves room between the two is taken, and k
 * from the middle of the room, with as few decimals (4 at least) as still lie in it.
 * @param request p1 < p2 and 1 − producerRisk > consumerRisk, each within 0 … 1 without the ends; `sigma` when σ is known
 * @returns n from 3 on (s) or 2 on (σ), below which the estimate of the percent nonconforming is not defined; `tooLarge` above LARGEST_DESIGN
 * @throws OutsideDomain outside those ranges
 * @see Lieberman & Resnikoff, JASA 50 (1955) 457; Wallis in Techniques of Statistical Analysis (1947) ch. 1, whose n(1 + k²/2) is the first guess
 * @example smallestVariablesPlan({ p1: 0.01, producerRisk: 0.05, p2: 0.06, consumerRisk: 0.1, method: 's' }) // n 42, k 1.9014
 */
export function smallestVariablesPlan(request: VariablesPoints & { readonly method: 's' | 'sigma' }): PointsDesign | { readonly none: 'tooLarge' } {
  const { p1, producerRisk, p2, consumerRisk, method } = request;
  for (const [name, value] of Object.entries({ p1, producerRisk, p2, consumerRisk })) {
    requireFinite(name, value);
    if (value <= 0 || value >= 1) throw new OutsideDomain(name, 'between 0 and 1', value);
  }
  if (p1 >= p2) throw new OutsideDomain('p1', `below p2, ${p2}`, p1);
  if (1 - producerRisk <= consumerRisk) throw new OutsideDomain('producerRisk', 'so small that p1 is accepted more often than p2', producerRisk);
  const fewest = method === 's' ? 3 : 2;
  let n = Math.max(fewest, Math.floor(firstGuess(request)));
  if (n > LARGEST_DESIGN) return { none: 'tooLarge' };
  while (n > fewest && meetsBoth(request, n - 1)) n -= 1;
  while (!meetsBoth(request, n)) {
    n += 1;
    if (n > LARGEST_DESIGN) return { none: 'tooLarge' };
  }
  const room = { leastK: leastK(request, n), mostK: mostK(request, n) };
  const k = shortest(room.leastK, room.mostK);
  return { n, k, ...room, producerRisk: rejectedAt(method, n, k, p1), consumerRisk: acceptedAt(method, n, k, p2) };
}

type Request = Parameters<typeof smallestVariablesPlan>[0];

/** The k that accepts p2 just as often as allowed: no smaller one will do. */
function leastK({ p2, consumerRisk, method }: Request, n: number): number {
  const root = Math.sqrt(n);
  return method === 's' ? noncentralTAt(1 - consumerRisk, n - 1, -normalAt(p2) * root) / root : -normalAt(p2) - normalAt(consumerRisk) / root;
}

/** The k that accepts p1 just as seldom as allowed: no larger one will do. */
function mostK({ p1, producerRisk, method }: Request, n: number): number {
  const root = Math.sqrt(n);
  return method === 's' ? noncentralTAt(producerRisk, n - 1, -normalAt(p1) * root) / root : -normalAt(p1) + normalAt(producerRisk) / root;
}

function meetsBoth(request: Request, n: number): boolean {
  return rejectedAt(request.method, n, leastK(request, n), request.p1) <= request.producerRisk;
}

function acceptedAt(method: Request['method'], n: number, k: number, p: number): number {
  const root = Math.sqrt(n);
  return method === 's' ? noncentralTAbove(k * root, n - 1, -normalAt(p) * root) : normalAbove((k + normalAt(p)) * root);
}

function rejectedAt(method: Request['method'], n: number, k: number, p: number): number {
  const root = Math.sqrt(n);
  return method === 's' ? noncentralTBelow(k * root, n - 1, -normalAt(p) * root) : normalBelow((k + normalAt(p)) * root);
}

/** n for known σ, times 1 + k²/2 where it is not. */
function firstGuess({ p1, producerRisk, p2, consumerRisk, method }: Request): number {
  const [z1, z2, a, b] = [-normalAt(p1), -normalAt(p2), -normalAt(producerRisk), -normalAt(consumerRisk)];
  const known = ((a + b) / (z1 - z2)) ** 2;
  return method === 'sigma' ? known : known * (1 + ((z1 * b + z2 * a) / (a + b)) ** 2 / 2);
}

/** The middle of the room, rounded to the fewest decimals from 4 on that keep it inside. */
function shortest(least: number, most: number): number {
  const middle = least + (most - least) / 2;
  for (let decimals = 4; decimals <= 15; decimals += 1) {
    const rounded = Number(middle.toFixed(decimals));
    if (rounded >= least && rounded <= most) return rounded;
  }
  return middle;
}
