import type { Pen } from '../pen.ts';
import type { Lot } from '../lot/lot.ts';
import { pressTargetOf, samePressTarget } from '../lot/press-target.ts';
import type { Batch } from './batch.ts';
import { readFactors, sameFactors } from './read-factors.ts';

/**
 * A released batch whose readings were corrected, or tested again, tells everything made of it: lots not yet pressed go on to the new target; those pressed keep the target
 * they were pressed to and are named, for an engineer to decide about; released blends that weight the batch are worked out anew, and so on. Nothing is written where the
 * targets stay as they are.
 */
export function carryFactors(pen: Pen, batch: Batch): void {
  const { released } = batch;
  const read = released === null ? null : readFactors(batch, (id) => pen.batch(id));
  // A blend not released yet is worked out at its release. Powder under test again has no factors to go on from until the test is done.
  if (released === null || read === null || 'missing' in read) return;
  if (!sameFactors(read.factors, released.factors)) {
    const lots = batch.lots.map((id) => pen.lot(id)).filter(({ ended }) => ended === null);
    const changed = lots.map((lot) => ({ lot, press: pressTargetOf(pen, lot.product.id, read.factors, batch, lot.press.sizes) })).filter(({ lot, press }) => !samePressTarget(lot.press, press));
    const named = (isPressed: boolean): readonly string[] => changed.filter(({ lot }) => hasBeenPressed(lot) === isPressed).map(({ lot }) => lot.id);
    pen.write(batch.stream, { type: 'factorsRevised', from: released.factors, factors: read.factors, retargeted: named(false), pressed: named(true) });
    for (const { lot, press } of changed) pen.write(lot.stream, { type: hasBeenPressed(lot) ? 'pressTargetOutdated' : 'pressTargetRevised', press });
  }
  for (const { batch: blend } of batch.blendedInto) carryFactors(pen, pen.batch(blend));
}

/** Pressing comes first of all that is done to pieces: a lot is taken as pressed as soon as any gate of its own has been opened or it stands in a charge. */
export function hasBeenPressed({ gates, charges }: Pick<Lot, 'gates' | 'charges'>): boolean {
  return charges.length > 0 || gates.some(({ workedOn, attempt, verdicts }) => workedOn !== 'batch' && (attempt > 0 || verdicts.length > 0));
}
