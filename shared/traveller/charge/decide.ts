import { remainingPieces } from '../piece-balance/piece-balance.ts';
import { isDemo } from '../lot/decide.ts';
import { nextGate } from '../lot/lot.ts';
import { requireBoxesVoided } from '../lot/release.ts';
import type { Pen } from '../pen.ts';
import { refuse, requireFitId } from '../pen.ts';
import { planInForce, routeOf } from '../plan/in-force.ts';
import { streamName } from '../stream.ts';
import { requireFree, requireUpstreamFree } from '../upstream.ts';
import { attachFurnaceLog } from './attach-furnace-log.ts';
import type { ChargeMember } from './charge.ts';
import type { ChargeOwnCommand, OpenCharge } from './commands.ts';
import { placedOn } from './placed-on.ts';

export function decideCharge(pen: Pen, command: ChargeOwnCommand): void {
  pen.requireRole(command.type);
  switch (command.type) {
    case 'openCharge': return openCharge(pen, command);
    case 'attachFurnaceLog': return attachFurnaceLog(pen, command);
  }
}

/** Opens a furnace or coating charge and places its member lots in it. Each must have come to this gate, be free, and be of the charge's grade or coating. */
function openCharge(pen: Pen, command: OpenCharge): void {
  requireFitId('charge', command.charge);
  const stream = streamName(command.kind, command.charge);
  if (pen.state(stream) !== null) refuse({ code: 'alreadyThere', what: 'charge', id: command.charge });
  const specification = specificationOf(pen, command.kind, command.specification);
  const { plan, planVersion } = planInForce(pen, specification.plan, command.kind);
  if (command.members.length === 0) refuse({ code: 'notFound', what: 'lot', id: '' });
  const gates = new Map<string, { readonly id: string; readonly attempt: number }>();
  const joining = command.members.map((placed): ChargeMember => {
    const { lot: id } = placed;
    if (gates.has(id)) refuse({ code: 'lotIsInCharge', lot: id, charge: command.charge });
    const lot = pen.lot(id);
    requireFree(lot);
    requireUpstreamFree(pen, lot);
    const has = command.kind === 'furnace' ? lot.product.grade : lot.product.layer ?? '';
    if (has !== command.specification) refuse({ code: 'gradeDiffers', lot: id, has, wanted: command.specification });
    const next = nextGate(lot);
    if (next === null || next.workedOn !== command.kind || next.status !== 'waiting') return refuse({ code: 'lotNotReadyForCharge', lot: id, gate: plan.gates[0]?.name ?? '', next: next?.name ?? null });
    const present = lot.charges.find((link) => link.gate === next.id && link.current);
    if (present !== undefined) refuse({ code: 'lotIsInCharge', lot: id, charge: present.charge });
    requireBoxesVoided(lot);
    const pieces = remainingPieces(lot.balance);
    if (pieces < 1) refuse({ code: 'notEnoughPieces', wanted: 1, remaining: pieces });
    gates.set(id, { id: next.id, attempt: next.attempt });
    const cameBefore = lot.charges.some((link) => link.gate === next.id && !link.current);
    return { lot: id, pieces, places: placed.places, ...(placed.cells === undefined ? {} : { cells: placed.cells }), ...(cameBefore ? { again: AGAIN[command.kind] } : {}) };
  });
  const { map, members } = placedOn(pen, command, joining);
  pen.write(stream, { type: 'chargeOpened', charge: command.charge, kind: command.kind, specification: { id: specification.id, name: specification.name }, plan: specification.plan, planVersion, route: routeOf(plan), programme: command.programme, equipment: command.equipment, ...(map === null ? {} : { map }), members, demo: isDemo(pen) });
  for (const { lot, places, cells, again } of members) {
    const gate = gates.get(lot);
    pen.write(streamName('lot', lot), { type: 'chargeJoined', charge: stream, gate: gate?.id ?? '', places, ...(cells === undefined ? {} : { cells }), ...(again === undefined ? {} : { again: { how: again, earlierAttempts: gate?.attempt ?? 0 } }) });
  }
}

const AGAIN = { furnace: 'reSinter', coating: 'recoat' } as const;

function specificationOf(pen: Pen, kind: 'furnace' | 'coating', id: string): { readonly id: string; readonly name: string; readonly plan: string } {
  if (kind === 'furnace') {
    const { card } = pen.find(streamName('grade', id), 'grade', 'grade');
    return { id: card.id, name: card.name, plan: card.furnacePlan };
  }
  const { card } = pen.find(streamName('layer', id), 'layer', 'layer');
  return { id: card.id, name: card.name, plan: card.coatingPlan };
}
