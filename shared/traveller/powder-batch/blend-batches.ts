import { verdictOfAll } from '../charge/stand-for-members.ts';
import { isDemo } from '../lot/decide.ts';
import type { Pen } from '../pen.ts';
import { refuse, requireFitId } from '../pen.ts';
import { planInForce, routeOf } from '../plan/in-force.ts';
import { streamName } from '../stream.ts';
import { requireFree, requirePowderFree } from '../upstream.ts';
import type { Batch, BlendShare } from './batch.ts';
import type { BlendBatches } from './commands.ts';
import { factorsOf } from './decide.ts';
import { isMassToTheGram, remainingKg } from './powder-balance.ts';

/**
 * Mixes so much of two or more released batches of one grade into a batch of its own. The blend has a lab gate of its own, by the grade's plan for blends or else its
 * powder plan: mixing can fail, and the lots made of it rest on that verdict. What that plan does not ask for is weighted from the parts, whose test pieces are sintered
 * already.
 */
export function blendBatches(pen: Pen, { batch: id, from, barrels }: BlendBatches): void {
  requireFitId('batch', id);
  const stream = streamName('batch', id);
  if (pen.state(stream) !== null) refuse({ code: 'alreadyThere', what: 'batch', id });
  if (!Number.isInteger(barrels) || barrels < 1) refuse({ code: 'notEnoughPieces', wanted: barrels, remaining: 0 });
  if (from.length < 2) refuse({ code: 'blendImpossible', batch: id, why: 'fewerThanTwo' });
  const grade = pen.batch(from[0]?.batch ?? '').grade.id;
  from.forEach((share, at) => {
    if (from.findIndex(({ batch }) => batch === share.batch) !== at) refuse({ code: 'blendImpossible', batch: share.batch, why: 'namedTwice' });
    requirePart(pen, pen.batch(share.batch), share, grade);
  });
  const { card } = pen.find(streamName('grade', grade), 'grade', 'grade');
  const planId = card.blendPlan ?? card.powderPlan;
  const { plan, planVersion } = planInForce(pen, planId, 'batch');
  const kg = from.reduce((sum, share) => sum + Math.round(share.kg * 1000), 0) / 1000;
  pen.write(stream, { type: 'batchOpened', batch: id, grade: { id: card.id, name: card.name }, plan: planId, planVersion, route: routeOf(plan), barrels, kgPerBarrel: kg / barrels, rawLots: [], blendedFrom: from, demo: isDemo(pen) });
  for (const share of from) pen.write(streamName('batch', share.batch), { type: 'batchBlended', into: id, kg: share.kg });
}

/** Powder that may be pressed may be blended, and no other: what a part lacks the blend would hide. */
function requirePart(pen: Pen, part: Batch, { kg }: BlendShare, grade: string): void {
  requireFree(part);
  requirePowderFree(pen, part);
  if (part.released === null || verdictOfAll(part)?.accepted !== true) refuse({ code: 'batchNotReleased', batch: part.id });
  if (part.grade.id !== grade) refuse({ code: 'gradeDiffers', lot: part.id, has: part.grade.id, wanted: grade });
  factorsOf(pen, part);
  if (!isMassToTheGram(kg)) refuse({ code: 'blendImpossible', batch: part.id, why: 'massUnfit' });
  const left = remainingKg(part);
  if (kg > left) refuse({ code: 'notEnoughPowder', batch: part.id, wantedKg: kg, remainingKg: left });
}
