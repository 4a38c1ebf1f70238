import { OutsideDomain, requireFinite } from '../ground/outside-domain.ts';

/** How one powder behaves on the way to a sintered piece. Fractions, and g/cm³. */
export type BlendedFactors = {
  readonly sinteredDensityGPerCm3: number;
  /** Organic binder's share of the pressed mass, 0 … 0.2. */
  readonly binderFraction: number;
  /** Further loss of what is left without binder, 0 … 0.05. */
  readonly furtherLossFraction: number;
  /** Linear shrinkages by direction, in an order of the caller's; as many for each part. */
  readonly shrinkages: readonly number[];
};
/** So much ready-to-press powder, binder included, of one batch. */
export type BlendPart = BlendedFactors & { readonly massKg: number };

/**
 * Factors of a blend from those of its parts and the masses w of ready-to-press powder, Σ w = 1:
 * binder b = Σ wᵢ bᵢ (it is a share of that mass; mass balance, exact);
 * further loss 1 − q = Σ wᵢ(1 − bᵢ)(1 − qᵢ) / Σ wᵢ(1 − bᵢ) (it is a share of what is left without binder; mass balance, exact);
 * sintered density 1/ρ = Σ vᵢ/ρᵢ with vᵢ the shares of the sintered mass, wᵢ(1 − bᵢ)(1 − qᵢ) over their sum (volumes add, the rule of mixtures);
 * each linear shrinkage S = Σ wᵢ Sᵢ (common practice, no source; a first-order mean, see docs/methods/powder-to-press.md).
 * @param parts one or more, masses above 0
 * @throws OutsideDomain for no part, a value outside the ranges beside each field, or shrinkages of different number
 * @example blendedFactors([{ massKg: 300, ... S 0.178 }, { massKg: 100, ... S 0.182 }]).shrinkages // [0.179]
 */
export function blendedFactors(parts: readonly BlendPart[]): BlendedFactors {
  const [first] = parts;
  if (first === undefined) throw new OutsideDomain('parts', 'at least one', 0);
  parts.forEach((part, at) => requirePart(part, at, first.shrinkages.length));
  const whole = sum(parts.map(({ massKg }) => massKg));
  const share = (value: (part: BlendPart) => number): number => sum(parts.map((part) => (part.massKg / whole) * value(part)));
  const withoutBinder = share(({ binderFraction }) => 1 - binderFraction);
  const sintered = share(sinteredShare);
  return {
    binderFraction: within(parts, ({ binderFraction }) => binderFraction, 1 - withoutBinder),
    furtherLossFraction: within(parts, ({ furtherLossFraction }) => furtherLossFraction, 1 - sintered / withoutBinder),
    sinteredDensityGPerCm3: within(parts, ({ sinteredDensityGPerCm3 }) => sinteredDensityGPerCm3, sintered / share((part) => sinteredShare(part) / part.sinteredDensityGPerCm3)),
    shrinkages: first.shrinkages.map((_, direction) => {
      const of = (part: BlendPart): number => part.shrinkages[direction] ?? 0;
      return within(parts, of, share(of));
    }),
  };
}

function sinteredShare({ binderFraction, furtherLossFraction }: BlendPart): number {
  return (1 - binderFraction) * (1 - furtherLossFraction);
}

/** A mean lies between its parts: the last binary digit is kept from saying otherwise, and equal parts give themselves. */
function within(parts: readonly BlendPart[], of: (part: BlendPart) => number, mean: number): number {
  const values = parts.map(of);
  return Math.min(Math.max(mean, Math.min(...values)), Math.max(...values));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

function requirePart(part: BlendPart, at: number, directions: number): void {
  requireFinite(`parts[${at}].massKg`, part.massKg, Number.MIN_VALUE);
  requireFinite(`parts[${at}].sinteredDensityGPerCm3`, part.sinteredDensityGPerCm3, Number.MIN_VALUE, 100);
  requireFinite(`parts[${at}].binderFraction`, part.binderFraction, 0, 0.2);
  requireFinite(`parts[${at}].furtherLossFraction`, part.furtherLossFraction, 0, 0.05);
  if (part.shrinkages.length !== directions) throw new OutsideDomain(`parts[${at}].shrinkages`, `${directions} directions, as the first part has`, part.shrinkages.length);
  for (const shrinkage of part.shrinkages) requireFinite(`parts[${at}].shrinkages`, shrinkage, 0, 0.5);
}
