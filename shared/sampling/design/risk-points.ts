import { OutsideDomain, requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { LARGEST_LOT } from '../attributes/index.ts';
import {
  binomialAtMost, binomialExactly, binomialMoreThan, hypergeometricAtMost, hypergeometricExactly, hypergeometricMoreThan,
  poissonAtMost, poissonExactly, poissonMoreThan,
} from '../chance/index.ts';
import type { RiskModel } from '../risk/index.ts';

/** Two points of an operating characteristic, fractions: quality p1 is to be accepted with 1 − producerRisk or more, p2 with consumerRisk or less. */
export interface RiskPoints {
  readonly p1: number;
  readonly producerRisk: number;
  readonly p2: number;
  readonly consumerRisk: number;
}

/** Why no plan was found: the smallest would take more pieces than are looked through, or than the lot has. */
export interface NoDesign {
  readonly none: 'tooLarge' | 'lotTooSmall';
}

/** How many are found in a sample of so many pieces, at one quality. */
export interface FoundLaw {
  readonly exactly: (found: number, pieces: number) => number;
  readonly atMost: (found: number, pieces: number) => number;
  readonly moreThan: (found: number, pieces: number) => number;
}

/** The two points as a design works with them. */
export interface Aim {
  /** What is found in goods of quality p1, and of quality p2. */
  readonly good: FoundLaw;
  readonly bad: FoundLaw;
  readonly producerRisk: number;
  readonly consumerRisk: number;
  /** Samples share the lot's or the process's pieces one by one; nonconformities fall on a piece in any number. */
  readonly counts: 'pieces' | 'nonconformities';
  /** Pieces in the lot, or null for a process. */
  readonly lotSize: number | null;
}

/** Highest rate of the Poisson model, nonconformities a piece. */
const HIGHEST_RATE = 1000;
/** Relative: a risk that is met to its last digit, such as 3 in 15, must not be missed by the rounding of the sum. */
const ROUNDING = 1e-12;

/**
 * Checks two points and fits the chance law to them. In one lot of N the good goods have p1·N nonconforming pieces rounded down and the bad
 * ones p2·N rounded up: the worst lot that still is as good as p1, and the best one that is as bad as p2.
 * @param model lot of 1 … 1e9 pieces, a process, or nonconformities a piece
 * @param points 0 < p1 < p2 < 1 (Poisson: < 1000), risks above 0 and together below 1
 * @throws OutsideDomain outside these ranges
 */
export function aimAt(model: RiskModel, { p1, producerRisk, p2, consumerRisk }: RiskPoints): Aim {
  const highest = model.kind === 'poisson' ? HIGHEST_RATE : 1;
  for (const [name, value, most] of [['p1', p1, highest], ['p2', p2, highest], ['producerRisk', producerRisk, 1], ['consumerRisk', consumerRisk, 1]] as const) {
    requireFinite(name, value);
    if (value <= 0 || value >= most) throw new OutsideDomain(name, `above 0 and below ${most}`, value);
  }
  if (p1 >= p2) throw new OutsideDomain('p1', `less than p2, ${p2}`, p1);
  if (producerRisk + consumerRisk >= 1) throw new OutsideDomain('consumerRisk', 'less than 1 together with producerRisk', consumerRisk);
  const risks = { producerRisk: producerRisk * (1 + ROUNDING), consumerRisk: consumerRisk * (1 + ROUNDING) };
  switch (model.kind) {
    case 'hypergeometric': {
      requireWhole('lotSize', model.lotSize, 1, LARGEST_LOT);
      const { good, bad } = lotsAt(model.lotSize, p1, p2);
      return { good: fromLot(model.lotSize, good), bad: fromLot(model.lotSize, bad), ...risks, counts: 'pieces', lotSize: model.lotSize };
    }
    case 'binomial': return { good: fromProcess(p1), bad: fromProcess(p2), ...risks, counts: 'pieces', lotSize: null };
    default: return { good: fromCounts(p1), bad: fromCounts(p2), ...risks, counts: 'nonconformities', lotSize: null };
  }
}

/** The two qualities as the risk room takes them: in one lot those of the whole pieces, else p1 and p2 themselves. */
export function qualitiesAt(model: RiskModel, p1: number, p2: number): { readonly good: number; readonly bad: number } {
  if (model.kind !== 'hypergeometric') return { good: p1, bad: p2 };
  const { good, bad } = lotsAt(model.lotSize, p1, p2);
  return { good: good / model.lotSize, bad: bad / model.lotSize };
}

/** Nonconforming pieces of a lot at p1, rounded down, and at p2, rounded up. Always fewer in the good lot. */
function lotsAt(lotSize: number, p1: number, p2: number): { readonly good: number; readonly bad: number } {
  return { good: Math.floor(tidied(lotSize * p1)), bad: Math.ceil(tidied(lotSize * p2)) };
}

/** Qualities are decimal numbers: 0.8 % of 35 000 is 280, though binary digits miss it, so the last of them are dropped. */
function tidied(pieces: number): number {
  return Number(pieces.toPrecision(14));
}

function fromLot(lotSize: number, nonconforming: number): FoundLaw {
  return {
    exactly: (found, pieces) => hypergeometricExactly(found, pieces, lotSize, nonconforming),
    atMost: (found, pieces) => hypergeometricAtMost(found, pieces, lotSize, nonconforming),
    moreThan: (found, pieces) => hypergeometricMoreThan(found, pieces, lotSize, nonconforming),
  };
}

function fromProcess(p: number): FoundLaw {
  return {
    exactly: (found, pieces) => binomialExactly(found, pieces, p),
    atMost: (found, pieces) => binomialAtMost(found, pieces, p),
    moreThan: (found, pieces) => binomialMoreThan(found, pieces, p),
  };
}

function fromCounts(perPiece: number): FoundLaw {
  return {
    exactly: (found, pieces) => poissonExactly(found, perPiece * pieces),
    atMost: (found, pieces) => poissonAtMost(found, perPiece * pieces),
    moreThan: (found, pieces) => poissonMoreThan(found, perPiece * pieces),
  };
}
