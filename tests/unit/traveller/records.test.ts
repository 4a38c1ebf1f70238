import { beforeEach, describe, expect, it } from 'vitest';
import { AQLS, INSPECTION_LEVELS, singlePlan } from '../../../shared/sampling/attributes/index.ts';
import { sMethodPlan, VARIABLES_AQLS, VARIABLES_LEVELS } from '../../../shared/sampling/variables/index.ts';
import { decide, mayGive, needsSignature, RIGHTS, ROLES } from '../../../shared/traveller/index.ts';
import type { Command, Counted, InspectionPlan } from '../../../shared/traveller/index.ts';
import { commandExamples } from '../../../shared/wire/command-examples.ts';
import { CREW, littlePlant, openLot, releasedBatch, SHORT_ROUTE } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { gateRecord, length, routeWith } from '../../property/traveller/on-the-way.ts';

const SECOND = { badge: 'Q-402', name: 'Second engineer', roles: ['engineer'] } as const;
const THIRD = { badge: 'Q-403', name: 'Third engineer', roles: ['engineer'] } as const;
const approve = (planVersion: number): Command => ({ type: 'approvePlan', plan: 'ROUTE-CNMG', planVersion });
const draft = (plan: InspectionPlan): Command => ({ type: 'draftPlan', plan, why: 'for this test' });
let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant();
});
const versions = () => {
  const plan = plant.state('plan:ROUTE-CNMG');
  return plan?.kind === 'plan' ? plan.versions.map(({ planVersion, inForce }) => [planVersion, inForce]) : [];
};

describe('an inspection plan', () => {
  it('is in force after two different engineers have approved it, each with a signature', () => {
    plant.must(draft(SHORT_ROUTE), CREW[2]);
    expect(plant.refusalOf(approve(2), CREW[1])).toBe('notYourRole');
    expect(plant.refusalOf(approve(2), CREW[2], { signed: false })).toBe('signatureMissing');
    plant.must(approve(2), CREW[2]);
    expect([versions(), plant.refusalOf(approve(2), CREW[2])]).toEqual([[[1, true], [2, false]], 'approvedByYou']);
    plant.must(approve(2), SECOND);
    expect(versions()).toEqual([[1, false], [2, true]]);
  });

  it('in force is approved no further: a third approval takes nothing away', () => {
    plant.must(draft(SHORT_ROUTE), CREW[2]);
    plant.must(approve(2), CREW[2]);
    plant.must(approve(2), SECOND);
    expect(plant.ask(approve(2), THIRD)).toEqual({ refusal: { code: 'planIsInForce', plan: 'ROUTE-CNMG', planVersion: 2 } });
  });

  it('of a lot stays the version it was opened with', () => {
    releasedBatch(plant);
    openLot(plant, 'A1', 10);
    plant.must(draft(SHORT_ROUTE), CREW[2]);
    for (const person of [CREW[2], SECOND]) plant.must(approve(2), person);
    openLot(plant, 'A2', 10);
    expect([plant.lot('A1').planVersion, plant.lot('A1').gates.length, plant.lot('A2').planVersion, plant.lot('A2').gates.length]).toEqual([1, 8, 2, 3]);
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'pressing' });
    expect(gateRecord(plant, 'lot:A1', 'pressing').plan?.name).toBe('Pressing');
  });

  it('for powder or charges opens no lot', () => {
    releasedBatch(plant);
    const product = plant.state('product:CNMG-D1');
    if (product?.kind !== 'product') throw new Error('no product');
    plant.must({ type: 'defineProduct', product: { ...product.card, id: 'CNMG-D3', plan: 'POWDER-F8' } }, CREW[2]);
    expect(plant.refusalOf({ type: 'openLot', lot: 'A1', product: 'CNMG-D3', batch: 'P1', quantity: 10, trayCapacity: 10 })).toBe('planUnsound');
  });

  const counted: Counted = { kind: 'counted', id: 'looks', name: 'Looks', method: 'eye', destructive: false, kinds: [{ code: 'A', name: 'a', class: 'major' }], sampling: { rule: 'attributes', switching: 'ISO 2859-1', level: 'II', aqlPercent: { major: 1 } } };
  it.each<readonly [string, InspectionPlan]>([
    ['without gates', { ...SHORT_ROUTE, gates: [] }],
    ['with a gate twice', { ...SHORT_ROUTE, gates: [...SHORT_ROUTE.gates, ...SHORT_ROUTE.gates] }],
    ['with a gate nobody may work', { ...SHORT_ROUTE, gates: SHORT_ROUTE.gates.map((gate) => ({ ...gate, roles: [] })) }],
    ['with a gate that asks for nothing', routeWith()],
    ['with no limit at all', routeWith(length({ lower: null, upper: null }))],
    ['with a guard band that simple acceptance does not have', routeWith(length({ guardFactor: 1 }))],
    ['with a guard band of more than three U', routeWith(length({ decisionRule: 'guardedRejection', guardFactor: 3.1 }))],
    ['with limits crossed', routeWith(length({ lower: 11, upper: 10 }))],
    ['with an AQL between the columns', routeWith({ ...counted, sampling: { ...counted.sampling, rule: 'attributes', switching: 'ISO 2859-1', level: 'II', aqlPercent: { major: 1.2 } } })],
    ['with a nonconformity of a class without AQL', routeWith({ ...counted, kinds: [{ code: 'A', name: 'a', class: 'minor' }] })],
    ['with one code for two nonconformities', routeWith({ ...counted, kinds: [{ code: 'A', name: 'a', class: 'major' }, { code: 'A', name: 'b', class: 'major' }] })],
    ['with barrels on a lot', routeWith(length({ sampling: { rule: 'barrels', barrels: 1, each: 1, accept: 'each' } }))],
    ['with every piece worked out from a crater', routeWith(length({ entry: { how: 'crater', ballDiameterMm: 30 }, sampling: { rule: 'everyPiece', ejectAtMostPercent: 2 } }))],
    ['with press limits on powder', { id: 'POWDER-X', name: 'x', appliesTo: 'batch', gates: [{ id: 'g', name: 'g', workedOn: 'batch', bench: 'b', roles: ['lab'], cautions: [], characteristics: [length({ lower: null, upper: null, pressTolerancePercent: 1 })] }] }],
  ])('%s is refused when drafted', (_what, plan) => {
    expect(plant.refusalOf(draft(plan), CREW[2])).toBe('planUnsound');
  });
});

it('every sound plan finds its cell in the tables for every lot size and severity', () => {
  const sizes = [1, 2, 3, 8, 9, 15, 16, 25, 26, 50, 51, 90, 91, 150, 151, 280, 281, 500, 501, 1200, 1201, 3200, 3201, 10_000, 10_001, 35_000, 35_001, 150_000, 150_001, 500_000, 500_001, 1_000_000];
  for (const lotSize of sizes) {
    for (const level of INSPECTION_LEVELS) for (const aqlPercent of AQLS.filter((each) => each <= 10)) for (const severity of ['normal', 'tightened', 'reduced'] as const) {
      const { sampleSize, ac, re } = singlePlan({ lotSize, level, aqlPercent, severity });
      expect(sampleSize >= 1 && sampleSize <= lotSize && ac < re).toBe(true);
    }
    if (lotSize >= 3) for (const level of VARIABLES_LEVELS) for (const aqlPercent of VARIABLES_AQLS.slice(1)) for (const severity of ['normal', 'tightened'] as const) expect(sMethodPlan({ lotSize, level, aqlPercent, severity }).sampleSize).toBeLessThanOrEqual(lotSize);
  }
});

describe('the plant', () => {
  const open: Command = { type: 'openPlant', plant: { name: 'Second', address: 'x', country: 'XX', demo: false }, keeper: { badge: 'K-1', name: 'Keeper', pin: '1234' } };
  it('is opened once: the first command of all names it and enrols its keeper', () => {
    expect(plant.refusalOf(open)).toBe('alreadyThere');
    const stamp = { at: '2026-11-20T06:00:00Z', by: { badge: 'K-1', name: 'Keeper', roles: [] }, bench: 'Office', seed: 's', signed: false, coSigner: null };
    const first = decide({ state: () => null }, open, stamp);
    expect('slips' in first && first.slips.map(({ stream, body }) => [stream, body.type])).toEqual([['plant:plant', 'plantOpened'], ['person:K-1', 'personEnrolled']]);
    expect(JSON.stringify(first)).not.toContain('1234');
  });

  it('keeps one keeper at least: nobody takes that role from himself', () => {
    const keeper = { badge: 'K-100', name: 'Orla Quint', roles: ['keeper'] } as const;
    for (const change of [{ roles: ['lab'] as const, active: true }, { roles: ['keeper'] as const, active: false }]) expect(plant.refusalOf({ type: 'changePerson', badge: 'K-100', name: 'Orla Quint', reason: 'x', ...change }, keeper)).toBe('lastKeeper');
  });

  it('lets people change their own PIN and the keeper set a first one, and nobody else', () => {
    expect(plant.refusalOf({ type: 'changePin', badge: 'I-301', pin: '9999' }, CREW[1])).toBe('none');
    expect(plant.refusalOf({ type: 'changePin', badge: 'I-301', pin: '9999' }, CREW[2])).toBe('notYourRole');
  });
});

describe('rights', () => {
  it.each(Object.keys(RIGHTS) as (keyof typeof RIGHTS)[])('%s is never taken from a role that may not give it', (type) => {
    const command: Command = commandExamples[type];
    const needed: readonly string[] | string = RIGHTS[type];
    for (const role of ROLES) {
      const decision = plant.ask(command, { badge: 'X-1', name: 'Somebody', roles: [role] });
      const refusal = 'refusal' in decision ? decision.refusal.code : 'none';
      if (typeof needed !== 'string' && !needed.includes(role)) expect([role, ['notYourRole', 'notFound'].includes(refusal)]).toEqual([role, true]);
      expect(mayGive(type, [role])).toBe(typeof needed === 'string' || needed.includes(role));
    }
  });

  it('a person without any role may hold, note and nothing that decides', () => {
    const nobody = { badge: 'X-1', name: 'Somebody', roles: [] };
    releasedBatch(plant);
    expect(plant.refusalOf({ type: 'hold', subject: 'batch:P1', reason: 'a doubt' }, nobody)).toBe('none');
    expect(plant.refusalOf({ type: 'releaseLot', lot: 'A1' }, nobody)).toBe('notYourRole');
  });

  it('what needs a signature is known: whatever decides about a lot, a plan or a severity', () => {
    expect((Object.keys(RIGHTS) as (keyof typeof RIGHTS)[]).filter(needsSignature).sort()).toEqual(['approvePlan', 'closeRecall', 'closeStudy', 'dispose', 'freezeChartLimits', 'holdRecall', 'moveLotToPlan', 'releaseBatch', 'releaseLot', 'resumeInspection', 'setGaugeUncertainty', 'unfreezeChartLimits', 'withdrawRelease']);
  });
});
