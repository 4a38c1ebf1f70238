import { beforeEach, describe, expect, it } from 'vitest';
import { verdictOf } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, openLot, workThrough } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { checkFurnace, decideHold, gateRecord, load, passGate, press, standing, twoInTheFurnace } from '../../property/traveller/on-the-way.ts';

const SOFT = { hardness: 1400 };
let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant();
  twoInTheFurnace(plant);
});
const sintered = (lot: string) => gateRecord(plant, `lot:${lot}`, 'sintered');
const correct = (value: number) => plant.must({ type: 'correctReading', subject: 'furnace:F1', gate: 'sinter-check', characteristic: 'hardness', ordinal: 1, value, reason: 'misread' }, CREW[0]);

describe('the verdict of a charge', () => {
  it('stands on each lot in it, with the numbers it rests on', () => {
    checkFurnace(plant, 'F1');
    for (const lot of ['A1', 'A2']) {
      const given = verdictOf(sintered(lot));
      expect([sintered(lot).status, given?.from, given?.verdict.results]).toEqual(['accepted', 'furnace:F1', verdictOf(gateRecord(plant, 'furnace:F1', 'sinter-check'))?.verdict.results]);
    }
  });

  it('rests on test pieces from the places the plan names', () => {
    plant.must({ type: 'openGate', subject: 'furnace:F1', gate: 'sinter-check' });
    const hardness = gateRecord(plant, 'furnace:F1', 'sinter-check').work.find(({ demand }) => demand.characteristic.id === 'hardness');
    expect(hardness?.demand.places.map((place) => place.at === 'position' && place.position)).toEqual(['Top', 'Middle', 'Bottom']);
  });

  it('holds the charge and every lot in it when one place fails', () => {
    checkFurnace(plant, 'F1', SOFT);
    expect([standing(plant, 'furnace:F1').length, standing(plant, 'lot:A1').length, standing(plant, 'lot:A2').length]).toEqual([1, 1, 1]);
    expect(plant.refusalOf({ type: 'openGate', subject: 'lot:A1', gate: 'dimensions' })).toBe('subjectIsHeld');
  });

  it('reaches a part that was split from a lot while it stood in the charge', () => {
    plant.must({ type: 'splitLot', lot: 'A1', into: 'A3', pieces: 50, reason: 'goes ahead' });
    checkFurnace(plant, 'F1', SOFT);
    expect([sintered('A3').status, standing(plant, 'lot:A3').length]).toEqual(['rejected', 1]);
    decideHold(plant, 'furnace:F1', { kind: 'concession', statement: 'soft, for roughing only' });
    expect([sintered('A3').status, standing(plant, 'lot:A3').length, plant.lot('A3').concessions.length]).toEqual(['conceded', 0, 1]);
  });
});

describe('what is decided about a rejected charge', () => {
  beforeEach(() => checkFurnace(plant, 'F1', SOFT));

  it('a retest opens the gate again for the charge and its lots; the new verdict stands on each and is no first inspection', () => {
    decideHold(plant, 'furnace:F1', { kind: 'retest' });
    expect([sintered('A1').status, standing(plant, 'lot:A1')]).toEqual(['waiting', []]);
    checkFurnace(plant, 'F1');
    expect([sintered('A1').status, verdictOf(sintered('A1'))?.verdict.original, verdictOf(sintered('A1'))?.verdict.attempt]).toEqual(['accepted', false, 2]);
  });

  it('sintering again ends the charge; its lots go into a new one, whose verdict counts', () => {
    decideHold(plant, 'furnace:F1', { kind: 'reSinter' });
    expect(plant.refusalOf({ type: 'openGate', subject: 'furnace:F1', gate: 'sinter-check' })).toBe('subjectHasEnded');
    load(plant, 'furnace', 'F2', ['A1', 'A2']);
    checkFurnace(plant, 'F2');
    expect([sintered('A1').status, verdictOf(sintered('A1'))?.from, plant.lot('A1').charges.map(({ current }) => current)]).toEqual(['accepted', 'furnace:F2', [false, true]]);
  });

  it('a concession lets every lot pass and stands on each for its certificate', () => {
    decideHold(plant, 'furnace:F1', { kind: 'concession', statement: 'soft, for roughing only' });
    for (const lot of ['A1', 'A2']) expect([sintered(lot).status, plant.lot(lot).concessions.map(({ statement, from }) => [statement, from])]).toEqual(['conceded', [['soft, for roughing only', 'furnace:F1']]]);
  });

  it('one lot may be scrapped alone; the charge’s later verdict passes it by', () => {
    decideHold(plant, 'lot:A1', { kind: 'scrap' });
    decideHold(plant, 'furnace:F1', { kind: 'retest' });
    checkFurnace(plant, 'F1');
    expect([plant.lot('A1').ended?.how, sintered('A1').status, sintered('A2').status]).toEqual(['scrapped', 'rejected', 'accepted']);
  });

  it('is an engineer’s, signed and with a reason', () => {
    const [hold = ''] = standing(plant, 'furnace:F1');
    const retest = { type: 'dispose', subject: 'furnace:F1', hold, disposition: { kind: 'retest' }, reason: 'new piece' } as const;
    expect(plant.refusalOf(retest, CREW[0])).toBe('notYourRole');
    expect(plant.refusalOf(retest, CREW[2], { signed: false })).toBe('signatureMissing');
    expect(plant.refusalOf({ ...retest, reason: '' }, CREW[2])).toBe('reasonMissing');
    expect(plant.refusalOf({ ...retest, disposition: { kind: 'clear' } }, CREW[2])).toBe('dispositionNotForThis');
    expect(plant.refusalOf({ ...retest, disposition: { kind: 'sort' } }, CREW[2])).toBe('dispositionNotForThis');
  });

  it('clearing somebody’s doubt about the charge frees no lot that its verdict holds', () => {
    plant.must({ type: 'hold', subject: 'furnace:F1', reason: 'a doubt about the log' }, CREW[0]);
    const doubt = standing(plant, 'furnace:F1').at(-1) ?? '';
    plant.must({ type: 'dispose', subject: 'furnace:F1', hold: doubt, disposition: { kind: 'clear' }, reason: 'log found' }, CREW[2]);
    expect([standing(plant, 'furnace:F1').length, standing(plant, 'lot:A1').length, sintered('A1').status]).toEqual([1, 1, 'rejected']);
  });
});

it('clearing somebody’s doubt frees no lot while the hold of a corrected verdict still stands', () => {
  checkFurnace(plant, 'F1', SOFT);
  for (const ordinal of [1, 2, 3]) plant.must({ type: 'correctReading', subject: 'furnace:F1', gate: 'sinter-check', characteristic: 'hardness', ordinal, value: 1600, reason: 'wrong load' }, CREW[0]);
  plant.must({ type: 'hold', subject: 'furnace:F1', reason: 'a doubt about the log' }, CREW[0]);
  plant.must({ type: 'dispose', subject: 'furnace:F1', hold: standing(plant, 'furnace:F1').at(-1) ?? '', disposition: { kind: 'clear' }, reason: 'log found' }, CREW[2]);
  expect([sintered('A1').status, standing(plant, 'lot:A1').length]).toEqual(['accepted', 1]);
});

describe('a correction on a charge', () => {
  it('that turns it to rejected holds its lots, also those that went on', () => {
    checkFurnace(plant, 'F1');
    passGate(plant, 'A1', 'dimensions');
    correct(1400);
    expect([sintered('A1').status, standing(plant, 'lot:A1').length, standing(plant, 'lot:A2').length]).toEqual(['rejected', 1, 1]);
  });

  it('that turns it to accepted frees nobody: the holds stand until an engineer clears them, on all at once', () => {
    checkFurnace(plant, 'F1');
    correct(1400);
    correct(1600);
    expect([sintered('A1').status, standing(plant, 'lot:A1').length]).toEqual(['accepted', 1]);
    decideHold(plant, 'furnace:F1', { kind: 'clear' });
    expect([standing(plant, 'lot:A1'), standing(plant, 'lot:A2')]).toEqual([[], []]);
  });

  it('stops the gate that a lot had open meanwhile, until its charge has passed', () => {
    checkFurnace(plant, 'F1');
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'dimensions' });
    correct(1400);
    decideHold(plant, 'furnace:F1', { kind: 'retest' });
    const reading = { type: 'takeReading', subject: 'lot:A1', gate: 'dimensions', characteristic: 'circle', ordinal: 1, value: 12.7, gauge: 'MIC-11' } as const;
    expect(plant.refusalOf(reading)).toBe('gateOutOfOrder');
    checkFurnace(plant, 'F1');
    expect(plant.refusalOf(reading)).toBe('none');
  });
});

describe('opening a charge', () => {
  const furnace = { type: 'openCharge', charge: 'F9', kind: 'furnace', specification: 'DEMO-F8', programme: 'P-1', equipment: 'E-1' } as const;

  it('takes no lot that has not come to it, none twice, and none of another grade', () => {
    openLot(plant, 'B1', 10);
    expect(plant.refusalOf({ ...furnace, members: [{ lot: 'B1', places: [] }] })).toBe('lotNotReadyForCharge');
    expect(plant.refusalOf({ ...furnace, members: [{ lot: 'A1', places: [] }] })).toBe('lotIsInCharge');
    press(plant, 'B1');
    expect(plant.refusalOf({ ...furnace, members: [{ lot: 'B1', places: [] }, { lot: 'B1', places: [] }] })).toBe('lotIsInCharge');
    expect(plant.refusalOf({ ...furnace, specification: 'DEMO-T10', members: [{ lot: 'B1', places: [] }] })).toBe('gradeDiffers');
    expect(plant.refusalOf({ ...furnace, members: [] })).toBe('notFound');
  });

  it('takes no lot that is held or has no piece left', () => {
    openLot(plant, 'B1', 10);
    press(plant, 'B1');
    plant.must({ type: 'hold', subject: 'lot:B1', reason: 'a doubt' });
    expect(plant.refusalOf({ ...furnace, members: [{ lot: 'B1', places: [] }] })).toBe('subjectIsHeld');
    decideHold(plant, 'lot:B1', { kind: 'clear' });
    plant.must({ type: 'scrapPieces', lot: 'B1', pieces: 10, reason: 'dropped' });
    expect(plant.refusalOf({ ...furnace, members: [{ lot: 'B1', places: [] }] })).toBe('notEnoughPieces');
  });
});

it('a hold on a charge stops its lots until it is lifted', () => {
  checkFurnace(plant, 'F1');
  plant.must({ type: 'hold', subject: 'furnace:F1', reason: 'recorder failed' }, CREW[0]);
  expect(plant.refusalOf({ type: 'openGate', subject: 'lot:A1', gate: 'dimensions' })).toBe('upstreamIsHeld');
  decideHold(plant, 'furnace:F1', { kind: 'clear' });
  workThrough(plant, 'lot:A1', 'dimensions');
});

describe('a concession on a charge', () => {
  const density = (value: number) => plant.must({ type: 'correctReading', subject: 'furnace:F1', gate: 'sinter-check', characteristic: 'density', ordinal: 1, value, reason: 'misread', sure: true }, CREW[0]);
  beforeEach(() => {
    checkFurnace(plant, 'F1', SOFT);
    decideHold(plant, 'furnace:F1', { kind: 'concession', statement: 'soft' });
  });

  it('covers what was known: where a correction makes something else fail, charge and lots are held again', () => {
    density(12);
    expect([gateRecord(plant, 'furnace:F1', 'sinter-check').status, ...['furnace:F1', 'lot:A1', 'lot:A2'].map((stream) => standing(plant, stream).length)]).toEqual(['conceded', 1, 1, 1]);
    const decision = plant.ask({ type: 'dispose', subject: 'furnace:F1', hold: standing(plant, 'furnace:F1')[0] ?? '', disposition: { kind: 'clear' }, reason: 'as agreed' }, CREW[2]);
    expect(decision).toEqual({ refusal: { code: 'dispositionNotForThis', disposition: 'clear', possible: ['retest', 'reSinter', 'concession'] } });
    decideHold(plant, 'furnace:F1', { kind: 'retest' });
    expect(['A1', 'A2'].map((lot) => [sintered(lot).status, standing(plant, `lot:${lot}`)])).toEqual([['waiting', []], ['waiting', []]]);
  });

  it('may be given anew for what fails now, and goes to the lots', () => {
    density(12);
    decideHold(plant, 'furnace:F1', { kind: 'concession', statement: 'soft and light' });
    expect(plant.lot('A1').concessions.map(({ statement }) => statement)).toEqual(['soft', 'soft and light']);
    expect([sintered('A1').status, standing(plant, 'lot:A1')]).toEqual(['conceded', []]);
  });

  it('stands where a correction changes only the number that was conceded', () => {
    correct(1390);
    expect(['furnace:F1', 'lot:A1'].map((stream) => standing(plant, stream))).toEqual([[], []]);
  });
});
