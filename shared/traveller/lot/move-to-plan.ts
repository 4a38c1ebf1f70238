import type { Pen } from '../pen.ts';
import { refuse, requireReason } from '../pen.ts';
import { routeOf } from '../plan/in-force.ts';
import { streamName } from '../stream.ts';
import { requireFree } from '../upstream.ts';
import type { MoveLotToPlan } from './commands.ts';
import { isReleased } from './lot.ts';

/**
 * An opened lot goes on under another approved version of its plan. Nothing but this ever does that: a version that comes into force leaves
 * the lots already opened on theirs. Gates it has begun, and that of a charge it stands in, must stand at the same place of the new route;
 * verdicts given stay as they are.
 */
export function moveLotToPlan(pen: Pen, { type, lot: id, planVersion, reason }: MoveLotToPlan): void {
  requireReason(type, reason);
  const lot = pen.lot(id);
  requireFree(lot);
  if (isReleased(lot)) refuse({ code: 'alreadyReleased', certificate: lot.release?.certificate ?? '' });
  const { versions } = pen.find(streamName('plan', lot.plan), 'plan', 'plan');
  const wanted = versions.find((each) => each.planVersion === planVersion) ?? refuse({ code: 'notFound', what: 'planVersion', id: String(planVersion) });
  if (wanted.approvals.length < 2) refuse({ code: 'planNotInForce', plan: lot.plan });
  if (planVersion === lot.planVersion) refuse({ code: 'nothingChanged', what: lot.plan });
  const open = lot.gates.find(({ status }) => status === 'open' || status === 'sorting');
  if (open !== undefined) refuse({ code: 'gateIsOpen', gate: open.name });
  const inCharge = lot.charges.filter(({ current }) => current).map(({ gate }) => gate);
  const begun = lot.gates.findLastIndex(({ id: gate, attempt, verdicts }) => attempt > 0 || verdicts.length > 0 || inCharge.includes(gate)) + 1;
  const differs = lot.gates.slice(0, begun).find((gate, at) => wanted.plan.gates[at]?.id !== gate.id || wanted.plan.gates[at]?.workedOn !== gate.workedOn);
  if (differs !== undefined) refuse({ code: 'routeDiffers', plan: lot.plan, planVersion, gate: differs.name });
  pen.write(lot.stream, { type: 'lotMovedToPlan', plan: lot.plan, from: lot.planVersion, planVersion, route: routeOf(wanted.plan), reason, signature: pen.signature(type, 'movedBy') });
}
