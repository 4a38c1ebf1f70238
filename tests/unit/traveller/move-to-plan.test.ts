import { beforeEach, describe, expect, it } from 'vitest';
import type { AnyState, Command, InspectionPlan } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, openLot, releasedBatch, SHORT_ROUTE } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { byAql, count, inForce, plansOf, SECOND } from '../../property/traveller/counting.ts';
import { checkFurnace, gateRecord, passGate, releasedLot, twoInTheFurnace } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
let first = 0;
beforeEach(() => {
  plant = littlePlant(SHORT_ROUTE);
  releasedBatch(plant);
  openLot(plant, 'A1');
  first = plant.lot('A1').planVersion;
});
const move = (planVersion: number, change: Partial<Extract<Command, { type: 'moveLotToPlan' }>> = {}): Command => ({ type: 'moveLotToPlan', lot: 'A1', planVersion, reason: 'the customer asks for it', ...change });
/** The short route with an AQL of final visual made smaller. */
const HARDER: InspectionPlan = { ...SHORT_ROUTE, gates: SHORT_ROUTE.gates.map((gate) => (gate.id === 'final-visual' ? { ...gate, characteristics: [{ ...count(byAql({ critical: 0.15, major: 0.4, minor: 2.5 })), id: 'looks' }] } : gate)) };
const majorAql = (lot: string): number | null => {
  const work = gateRecord(plant, `lot:${lot}`, 'final-visual').work[0];
  const plan = work === undefined ? undefined : plansOf(work).find((each) => each.class === 'major')?.plan;
  return plan !== undefined && 'aqlPercent' in plan ? plan.aqlPercent : null;
};

describe('a new version of a plan', () => {
  it('touches no lot that is open: it goes on under the version it began with, and new lots take the new one', () => {
    const planVersion = inForce(plant, HARDER);
    expect(plant.lot('A1').planVersion).toBe(first);
    openLot(plant, 'A2');
    for (const lot of ['A1', 'A2']) plant.must({ type: 'openGate', subject: `lot:${lot}`, gate: 'final-visual' });
    expect([plant.lot('A2').planVersion, majorAql('A1'), majorAql('A2')]).toEqual([planVersion, 0.65, 0.4]);
  });

  it('is taken on by an open lot when an engineer moves it, with a reason and a signature', () => {
    const planVersion = inForce(plant, HARDER);
    expect(plant.refusalOf(move(planVersion), CREW[1])).toBe('notYourRole');
    expect(plant.refusalOf(move(planVersion), CREW[2], { signed: false })).toBe('signatureMissing');
    expect(plant.refusalOf(move(planVersion, { reason: ' ' }), CREW[2])).toBe('reasonMissing');
    const [slip] = plant.must(move(planVersion), CREW[2]);
    expect(slip).toMatchObject({ type: 'lotMovedToPlan', from: first, planVersion, reason: 'the customer asks for it', signature: { badge: 'Q-401', meaning: 'movedBy' } });
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' });
    expect([plant.lot('A1').planVersion, majorAql('A1')]).toEqual([planVersion, 0.4]);
  });

  it('keeps the gates passed, with their verdicts, and brings the new ones after them', () => {
    passGate(plant, 'A1', 'final-visual');
    const extra = { ...HARDER, gates: [...HARDER.gates.slice(0, 2), { ...(HARDER.gates[2] as InspectionPlan['gates'][number]), id: 'second-look', name: 'Second look' }, ...HARDER.gates.slice(2)] };
    plant.must(move(inForce(plant, extra)), CREW[2]);
    expect(plant.lot('A1').gates.map(({ id, status }) => [id, status])).toEqual([['powder', 'accepted'], ['final-visual', 'accepted'], ['second-look', 'waiting'], ['marking', 'waiting']]);
    expect(majorAql('A1')).toBe(0.65);
  });

  it('cannot be taken on where the gates passed stand elsewhere on it', () => {
    passGate(plant, 'A1', 'final-visual');
    const turned = inForce(plant, { ...SHORT_ROUTE, gates: [...SHORT_ROUTE.gates.slice(0, 1), ...SHORT_ROUTE.gates.slice(1).reverse()] });
    expect(plant.ask(move(turned), CREW[2])).toEqual({ refusal: { code: 'routeDiffers', plan: SHORT_ROUTE.id, planVersion: turned, gate: 'Final visual' } });
  });

  it('cannot be taken on by a lot that stands in a charge, where the gate of that charge stands elsewhere on it', () => {
    const furnace = littlePlant();
    twoInTheFurnace(furnace);
    const full = (furnace.state('plan:ROUTE-CNMG') as Extract<AnyState, { kind: 'plan' }>).versions.at(-1)?.plan as InspectionPlan;
    const without = inForce(furnace, { ...full, gates: full.gates.filter(({ workedOn }) => workedOn !== 'furnace') });
    expect(furnace.refusalOf(move(without), CREW[2])).toBe('routeDiffers');
    const same = inForce(furnace, { ...full, gates: full.gates.filter(({ id }) => id !== 'marking') });
    furnace.must(move(same), CREW[2]);
    checkFurnace(furnace, 'F1');
    expect(gateRecord(furnace, 'lot:A1', 'sintered').status).toBe('accepted');
  });

  it('cannot be taken on while a gate is open, while the lot is on hold, or once it is released', () => {
    const planVersion = inForce(plant, HARDER);
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' });
    expect(plant.refusalOf(move(planVersion), CREW[2])).toBe('gateIsOpen');
    plant.must({ type: 'hold', subject: 'lot:A1', reason: 'a doubt' });
    expect(plant.refusalOf(move(planVersion), CREW[2])).toBe('subjectIsHeld');
    releasedLot(plant, 'A2');
    expect(plant.refusalOf(move(first, { lot: 'A2' }), CREW[2])).toBe('alreadyReleased');
  });

  it('is one that two engineers approved, and another than the lot has', () => {
    plant.must({ type: 'draftPlan', plan: HARDER, why: 'a try' });
    expect(plant.refusalOf(move(first + 1), CREW[2])).toBe('planNotInForce');
    plant.must({ type: 'approvePlan', plan: HARDER.id, planVersion: first + 1 }, SECOND);
    expect(plant.refusalOf(move(first + 1), CREW[2])).toBe('planNotInForce');
    expect([plant.refusalOf(move(first), CREW[2]), plant.refusalOf(move(99), CREW[2])]).toEqual(['nothingChanged', 'notFound']);
  });

  it('can be an earlier one again: the thread shows both moves', () => {
    const planVersion = inForce(plant, HARDER);
    plant.must(move(planVersion), CREW[2]);
    plant.must(move(first, { reason: 'asked for by mistake' }), CREW[2]);
    expect(plant.slips.flatMap(({ body }) => (body.type === 'lotMovedToPlan' ? [[body.from, body.planVersion]] : []))).toEqual([[first, planVersion], [planVersion, first]]);
  });
});
