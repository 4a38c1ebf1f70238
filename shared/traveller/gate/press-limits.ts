import type { PressTarget } from '../lot/lot.ts';
import { refuse } from '../pen.ts';
import type { Characteristic, Measured } from '../plan/characteristic.ts';
import { takesPressLimits } from '../plan/characteristic.ts';
import type { InspectionPlan } from '../plan/gate-plan.ts';

/**
 * Fills in the limits that follow from the powder: the target, and about it the plan's percentage; without one, the sintered limits of the thickness, to the green height by
 * shrinkage, to the weight at one density. A target or limit that cannot be worked out is refused: which factor, of which batch.
 */
export function withPressLimits(characteristic: Characteristic, press: PressTarget): Characteristic {
  if (characteristic.kind !== 'measured' || !takesPressLimits(characteristic)) return characteristic;
  const scale = 10 ** characteristic.decimals;
  const rounded = (value: number): number => Math.round(value * scale) / scale;
  const { target, lower, upper } = aimedAt(characteristic, press);
  const limits = { target: rounded(target), lower: rounded(lower), upper: rounded(upper) };
  if (limits.lower >= limits.upper) refuse({ code: 'planUnsound', where: characteristic.name, why: 'tooFewDecimals' });
  return { ...characteristic, ...limits } satisfies Measured;
}

/** Refuses where a lot to be opened would come to a gate whose limits its powder or its product cannot give. */
export function requirePressLimits({ gates }: InspectionPlan, press: PressTarget): void {
  const planned = gates.flatMap(({ workedOn, characteristics }) => (workedOn === 'lot' ? characteristics : []));
  for (const characteristic of planned) if (characteristic.kind === 'measured' && takesPressLimits(characteristic)) aimedAt(characteristic, press);
}

function aimedAt({ name, pressTolerancePercent, limitsFrom }: Measured, press: PressTarget): { readonly target: number; readonly lower: number; readonly upper: number } {
  const height = limitsFrom === 'greenHeight';
  // The height is the one size that the even shrinkage says least about: it is not judged by a guess.
  if (height && press.heightShrinkagePercent === undefined) refuse({ code: 'factorMissing', batch: press.fromBatch, factor: 'heightShrinkagePercent' });
  const target = height ? press.greenThicknessMm : press.weightG;
  if (pressTolerancePercent !== null) {
    const share = pressTolerancePercent / 100;
    return { target, lower: target * (1 - share), upper: target * (1 + share) };
  }
  const { greenThicknessLimits, weightRoom } = press;
  if (greenThicknessLimits === undefined || weightRoom === undefined) return refuse({ code: 'planUnsound', where: name, why: 'noThicknessLimits' });
  return height ? { target, lower: greenThicknessLimits.lowerMm, upper: greenThicknessLimits.upperMm } : { target, lower: weightRoom.lowerG, upper: weightRoom.upperG };
}
