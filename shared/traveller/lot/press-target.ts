import { directionalNumbers, pressTargetsByDirection, pressUncertainty, weightRoom } from '../../carbide/index.ts';
import type { Shrinkages } from '../../carbide/index.ts';
import { sinteredSizes } from '../catalogue/sintered-sizes.ts';
import type { SinteredSizes } from '../catalogue/sintered-sizes.ts';
import type { Pen } from '../pen.ts';
import type { Batch, PowderFactors } from '../powder-batch/batch.ts';
import { streamName } from '../stream.ts';
import type { PressTarget } from './lot.ts';

/** Shrinkages as fractions; along pressing as across it where nothing else is known. */
export function shrinkagesOf({ linearShrinkagePercent, widthShrinkagePercent, heightShrinkagePercent }: PowderFactors): Shrinkages {
  return { across: linearShrinkagePercent / 100, ...(widthShrinkagePercent === undefined ? {} : { width: widthShrinkagePercent / 100 }), along: (heightShrinkagePercent ?? linearShrinkagePercent) / 100 };
}

/** What a product is pressed to from powder with these factors. Formulas and their sources: shared/carbide/press-by-direction. */
export function pressTarget(sizes: SinteredSizes, factors: PowderFactors, batch: Pick<Batch, 'id' | 'blendedFrom'>): PressTarget {
  const { sinteredVolumeMm3, thicknessMm, thicknessLimits, acrossMm } = sizes;
  const shrinkages = shrinkagesOf(factors);
  const targets = pressTargetsByDirection({
    sinteredVolumeMm3, sinteredDensityGPerCm3: factors.sinteredDensityGPerCm3, binderFraction: factors.binderPercent / 100, furtherLossFraction: (factors.furtherLossPercent ?? 0) / 100, shrinkages,
    heightMm: thicknessMm, ...(thicknessLimits === undefined ? {} : { heightLimits: thicknessLimits }), ...(acrossMm === undefined ? {} : { acrossMm }),
  });
  const room = thicknessLimits === undefined ? null : weightRoom(targets.pressWeightG, thicknessMm, thicknessLimits);
  const { standardUncertainty, weighted, ...means } = factors;
  return {
    weightG: targets.pressWeightG, greenThicknessMm: targets.greenHeightMm, ...means, fromBatch: batch.id, sizes,
    dieFactor: targets.dieFactor, greenDensityGPerCm3: targets.greenDensityGPerCm3, ...(targets.dieMm === null ? {} : { dieMm: targets.dieMm }),
    ...(targets.greenHeightLimits === null ? {} : { greenThicknessLimits: targets.greenHeightLimits }), ...(room === null ? {} : { weightRoom: room }),
    ...(standardUncertainty === undefined ? {} : { uncertainty: uncertaintyOf(targets, factors, shrinkages) }),
    ...(batch.blendedFrom.length === 0 ? {} : { blendedFrom: batch.blendedFrom, weighted: weighted ?? [] }),
  };
}

/** Expanded uncertainty, k = 2, of the targets from the spread of the lab's readings alone. */
function uncertaintyOf(targets: { readonly pressWeightG: number; readonly greenHeightMm: number; readonly dieFactor: number }, factors: PowderFactors, shrinkages: Shrinkages): NonNullable<PressTarget['uncertainty']> {
  const u = factors.standardUncertainty ?? {};
  const share = (percent: number | undefined): number => (percent ?? 0) / 100;
  const { inPlane } = directionalNumbers(shrinkages);
  // Of two directions in the plane, 1 − S = √((1 − S₁)(1 − S₂)): each counts with half its relative uncertainty.
  const across = shrinkages.width === undefined ? share(u.linearShrinkagePercent)
    : (1 - inPlane) * 0.5 * Math.hypot(share(u.linearShrinkagePercent) / (1 - shrinkages.across), share(u.widthShrinkagePercent) / (1 - shrinkages.width));
  const relative = pressUncertainty(
    { sinteredDensityGPerCm3: factors.sinteredDensityGPerCm3, binderFraction: factors.binderPercent / 100, furtherLossFraction: share(factors.furtherLossPercent), shrinkages },
    { sinteredDensityGPerCm3: u.sinteredDensityGPerCm3, binderFraction: share(u.binderPercent), furtherLossFraction: share(u.furtherLossPercent), along: share(factors.heightShrinkagePercent === undefined ? u.linearShrinkagePercent : u.heightShrinkagePercent), inPlane: across },
  );
  return { weightG: 2 * relative.weight * targets.pressWeightG, greenThicknessMm: 2 * relative.height * targets.greenHeightMm, dieFactor: 2 * relative.dieFactor * targets.dieFactor };
}

/** The target of one product; a lot keeps the sizes it was opened with, one of before they were kept takes those of the product's card. */
export function pressTargetOf(pen: Pen, product: string, factors: PowderFactors, batch: Batch, kept?: SinteredSizes): PressTarget {
  return pressTarget(kept ?? sinteredSizes(pen.find(streamName('product', product), 'product', 'product').card), factors, batch);
}

/** True when the press is set no differently. */
export function samePressTarget(a: PressTarget, b: PressTarget): boolean {
  return a.weightG === b.weightG && a.greenThicknessMm === b.greenThicknessMm && a.linearShrinkagePercent === b.linearShrinkagePercent && a.widthShrinkagePercent === b.widthShrinkagePercent;
}
