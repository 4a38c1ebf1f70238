import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';
import { chiSquareAt, fisherAt } from '../../sampling/chance/index.ts';
import type { MeanSquare } from './crossed-anova.ts';

/** A term of a variance: a mean square with its weight, which may be negative. */
export type Term = MeanSquare & { readonly weight: number };
/** Limits that hold the true variance at the confidence asked for; a lower limit below 0 is given as 0. */
export type VarianceInterval = { readonly low: number; readonly high: number };

/** The variance that the terms estimate; below 0 where spread by chance hid it. */
export function estimated(terms: readonly Term[]): number {
  return terms.reduce((sum, { weight, meanSquare }) => sum + weight * meanSquare, 0);
}

/**
 * Two-sided confidence limits of a weighted sum of independent mean squares by the modified large-sample method: exact for a single term
 * (chi-square), close to the confidence asked for otherwise, and never far below it.
 * @param terms at most one of negative weight
 * @param confidence a fraction, 0.5 … 0.999
 * @throws OutsideDomain for another confidence or a second negative weight
 * @see Graybill & Wang, JASA 75 (1980) 869 (sums); Ting, Burdick, Graybill, Jeyaratnam & Lu, J. Statist. Comput. Simul. 35 (1990) 135 (differences). Both from memory; the share of intervals that hold the truth is simulated in tests/property
 */
export function varianceInterval(terms: readonly Term[], confidence: number): VarianceInterval {
  requireFinite('confidence', confidence, 0.5, 0.999);
  const tail = (1 - confidence) / 2;
  const used = terms.filter(({ weight }) => weight !== 0);
  const [plus, minus] = [used.filter(({ weight }) => weight > 0), used.filter(({ weight }) => weight < 0)];
  if (minus.length > 1) throw new OutsideDomain('terms', 'of negative weight once at most', minus.length);
  const middle = estimated(used);
  const down = squaresBelow(plus, minus, tail);
  const up = squaresAbove(plus, minus, tail);
  return { low: Math.max(0, middle - Math.sqrt(Math.max(0, down))), high: Math.max(0, middle + Math.sqrt(Math.max(0, up))) };
}

/** How far a mean square may stand above its expectation: 1 − df/χ² at the upper end. */
const above = (df: number, tail: number): number => 1 - df / chiSquareAt(1 - tail, df);
/** How far it may stand below: df/χ² at the lower end − 1. */
const below = (df: number, tail: number): number => df / chiSquareAt(tail, df) - 1;
const size = ({ weight, meanSquare }: Term): number => Math.abs(weight) * meanSquare;

function squaresBelow(plus: readonly Term[], minus: readonly Term[], tail: number): number {
  const alone = sum(plus, (term) => (above(term.df, tail) * size(term)) ** 2) + sum(minus, (term) => (below(term.df, tail) * size(term)) ** 2);
  const across = sum(plus, (over) => sum(minus, (under) => {
    const f = fisherAt(1 - tail, over.df, under.df);
    return (((f - 1) ** 2 - (above(over.df, tail) * f) ** 2 - below(under.df, tail) ** 2) / f) * size(over) * size(under);
  }));
  return alone + across + (minus.length === 0 ? 0 : together(plus, tail));
}

function squaresAbove(plus: readonly Term[], minus: readonly Term[], tail: number): number {
  const alone = sum(plus, (term) => (below(term.df, tail) * size(term)) ** 2) + sum(minus, (term) => (above(term.df, tail) * size(term)) ** 2);
  const across = sum(plus, (over) => sum(minus, (under) => {
    const f = fisherAt(tail, over.df, under.df);
    return (((1 - f) ** 2 - (below(over.df, tail) * f) ** 2 - above(under.df, tail) ** 2) / f) * size(over) * size(under);
  }));
  return alone + across;
}

/** What each two terms of positive weight have in common, beside one of the other sign. */
function together(plus: readonly Term[], tail: number): number {
  return sum(plus, (one, at) => sum(plus.slice(at + 1), (other) => {
    const both = one.df + other.df;
    const common = (above(both, tail) * both) ** 2 / (one.df * other.df) - (above(one.df, tail) ** 2 * one.df) / other.df - (above(other.df, tail) ** 2 * other.df) / one.df;
    return (common / (plus.length - 1)) * size(one) * size(other);
  }));
}

function sum<Item>(items: readonly Item[], value: (item: Item, at: number) => number): number {
  return items.reduce((total, item, at) => total + value(item, at), 0);
}

/**
 * Effective degrees of freedom of a variance that is a sum of mean squares; null where the terms show no spread.
 * @see Satterthwaite, Biometrics Bulletin 2 (1946) 110; JCGM 100, G.4
 */
export function effectiveDf(terms: readonly Term[]): number | null {
  const under = sum(terms, ({ weight, meanSquare, df }) => (weight * meanSquare) ** 2 / df);
  return under === 0 ? null : estimated(terms) ** 2 / under;
}
