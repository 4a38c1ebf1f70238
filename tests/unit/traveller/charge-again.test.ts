import { beforeEach, describe, expect, it } from 'vitest';
import { verdictOf } from '../../../shared/traveller/index.ts';
import type { Command } from '../../../shared/traveller/index.ts';
import { littlePlant, openLot, workThrough } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { checkFurnace, decideHold, gateRecord, load, passGate, press, standing, twoInTheFurnace } from '../../property/traveller/on-the-way.ts';

const SOFT = { hardness: 1400 };
let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant();
  twoInTheFurnace(plant);
});
const sintered = (lot: string) => gateRecord(plant, `lot:${lot}`, 'sintered');
const verdict = (lot: string) => {
  const given = verdictOf(sintered(lot));
  return [sintered(lot).status, given?.from, given?.verdict.attempt, given?.verdict.original];
};
const members = (id: string) => {
  const state = plant.state(`furnace:${id}`);
  return state?.kind === 'furnace' ? state.members.map(({ lot, again, left }) => [lot, again ?? null, left ?? false]) : [];
};

describe('sintering again', () => {
  it('the new charge’s verdict is the lots’ re-inspection: it says so, and attempts count on', () => {
    checkFurnace(plant, 'F1', SOFT);
    decideHold(plant, 'furnace:F1', { kind: 'reSinter' });
    load(plant, 'furnace', 'F2', ['A1', 'A2']);
    expect(members('F2')).toEqual([['A1', 'reSinter', false], ['A2', 'reSinter', false]]);
    checkFurnace(plant, 'F2');
    expect([verdict('A1'), verdict('A2')]).toEqual([['accepted', 'furnace:F2', 2, false], ['accepted', 'furnace:F2', 2, false]]);
    expect(verdictOf(gateRecord(plant, 'furnace:F2', 'sinter-check'))?.verdict.original).toBe(false);
  });

  it('a second time too', () => {
    checkFurnace(plant, 'F1', SOFT);
    decideHold(plant, 'furnace:F1', { kind: 'reSinter' });
    load(plant, 'furnace', 'F2', ['A1', 'A2']);
    checkFurnace(plant, 'F2', SOFT);
    decideHold(plant, 'furnace:F2', { kind: 'reSinter' });
    load(plant, 'furnace', 'F3', ['A1', 'A2']);
    checkFurnace(plant, 'F3');
    expect([verdict('A1'), plant.lot('A1').charges.map(({ current, again }) => [current, again?.earlierAttempts ?? null])]).toEqual([['accepted', 'furnace:F3', 3, false], [[false, null], [false, 1], [true, 2]]]);
    passGate(plant, 'A1', 'dimensions');
  });

  it('in one charge with a lot that comes for the first time each keeps its own standing', () => {
    checkFurnace(plant, 'F1', SOFT);
    decideHold(plant, 'furnace:F1', { kind: 'reSinter' });
    openLot(plant, 'B1', 50);
    press(plant, 'B1');
    load(plant, 'furnace', 'F2', ['A1', 'B1']);
    checkFurnace(plant, 'F2');
    expect([verdict('A1'), verdict('B1'), sintered('A2').status]).toEqual([['accepted', 'furnace:F2', 2, false], ['accepted', 'furnace:F2', 1, true], 'waiting']);
  });

  it('a correction on the new charge revises the re-inspection and makes it no first one', () => {
    checkFurnace(plant, 'F1', SOFT);
    decideHold(plant, 'furnace:F1', { kind: 'reSinter' });
    load(plant, 'furnace', 'F2', ['A1', 'A2']);
    checkFurnace(plant, 'F2');
    plant.must({ type: 'correctReading', subject: 'furnace:F2', gate: 'sinter-check', characteristic: 'hardness', ordinal: 1, value: 1400, reason: 'misread' });
    expect([verdict('A1'), standing(plant, 'lot:A1').length]).toEqual([['rejected', 'furnace:F2', 2, false], 1]);
  });

  it('takes a part that was split off along with its lot, each as a lot of its own from then on', () => {
    plant.must({ type: 'splitLot', lot: 'A1', into: 'A3', pieces: 50, reason: 'goes ahead' });
    checkFurnace(plant, 'F1', SOFT);
    decideHold(plant, 'furnace:F1', { kind: 'reSinter' });
    load(plant, 'furnace', 'F2', ['A1', 'A3']);
    checkFurnace(plant, 'F2');
    expect([verdict('A1'), verdict('A3'), sintered('A2').status]).toEqual([['accepted', 'furnace:F2', 2, false], ['accepted', 'furnace:F2', 2, false], 'waiting']);
  });

  it('a part split off after it keeps the re-inspection when the charge is corrected', () => {
    checkFurnace(plant, 'F1', SOFT);
    decideHold(plant, 'furnace:F1', { kind: 'reSinter' });
    load(plant, 'furnace', 'F2', ['A1', 'A2']);
    checkFurnace(plant, 'F2');
    plant.must({ type: 'splitLot', lot: 'A1', into: 'A3', pieces: 50, reason: 'goes ahead' });
    plant.must({ type: 'correctReading', subject: 'furnace:F2', gate: 'sinter-check', characteristic: 'hardness', ordinal: 1, value: 1400, reason: 'misread' });
    expect([verdict('A3'), standing(plant, 'lot:A3').length]).toEqual([['rejected', 'furnace:F2', 2, false], 1]);
  });
});

describe('only some members are sintered again', () => {
  beforeEach(() => checkFurnace(plant, 'F1', SOFT));

  it('the others are conceded: one decision, and the charge is not over', () => {
    decideHold(plant, 'furnace:F1', { kind: 'reSinter', some: { lots: ['A1'], rest: { by: 'concession', statement: 'soft, for roughing only' } } });
    expect([sintered('A1').status, plant.lot('A1').charges[0]?.current, plant.lot('A1').concessions]).toEqual(['waiting', false, []]);
    expect([sintered('A2').status, plant.lot('A2').concessions.map(({ statement, from }) => [statement, from]), standing(plant, 'lot:A2')]).toEqual(['conceded', [['soft, for roughing only', 'furnace:F1']], []]);
    expect(members('F1')).toEqual([['A1', null, true], ['A2', null, false]]);
    passGate(plant, 'A2', 'dimensions');
    load(plant, 'furnace', 'F2', ['A1']);
    checkFurnace(plant, 'F2');
    expect([verdict('A1'), sintered('A2').status]).toEqual([['accepted', 'furnace:F2', 2, false], 'conceded']);
  });

  it('the others are tested again in the same charge, whose new verdict passes by the lot that left', () => {
    decideHold(plant, 'furnace:F1', { kind: 'reSinter', some: { lots: ['A1'], rest: { by: 'retest' } } });
    expect([sintered('A1').status, sintered('A2').status]).toEqual(['waiting', 'waiting']);
    workThrough(plant, 'furnace:F1', 'sinter-check');
    expect(gateRecord(plant, 'furnace:F1', 'sinter-check').lotSize).toBe(300);
    expect([sintered('A1').status, verdict('A2')]).toEqual(['waiting', ['accepted', 'furnace:F1', 2, false]]);
  });

  it('parts go with the lot they were split from', () => {
    const fresh = littlePlant();
    twoInTheFurnace(fresh);
    fresh.must({ type: 'splitLot', lot: 'A1', into: 'A3', pieces: 50, reason: 'goes ahead' });
    checkFurnace(fresh, 'F1', SOFT);
    decideHold(fresh, 'furnace:F1', { kind: 'reSinter', some: { lots: ['A1'], rest: { by: 'concession', statement: 'soft' } } });
    expect(['A1', 'A2', 'A3'].map((lot) => gateRecord(fresh, `lot:${lot}`, 'sintered').status)).toEqual(['waiting', 'conceded', 'waiting']);
  });

  it.each<[string, readonly string[], string]>([['none', [], 'none'], ['all', ['A1', 'A2'], 'all'], ['a lot that is not in it', ['B7'], 'notInCharge']])('not %s', (_, lots, why) => {
    const command: Command = { type: 'dispose', subject: 'furnace:F1', hold: standing(plant, 'furnace:F1')[0] ?? '', disposition: { kind: 'reSinter', some: { lots, rest: { by: 'retest' } } }, reason: 'near the door' };
    expect(plant.ask(command)).toMatchObject({ refusal: { code: 'someMembersUnfit', why } });
  });

  it('needs words for the concession, and is for charges', () => {
    expect(plant.refusalOf({ type: 'dispose', subject: 'furnace:F1', hold: standing(plant, 'furnace:F1')[0] ?? '', disposition: { kind: 'reSinter', some: { lots: ['A1'], rest: { by: 'concession', statement: ' ' } } }, reason: 'near the door' })).toBe('reasonMissing');
    expect(plant.refusalOf({ type: 'dispose', subject: 'lot:A1', hold: standing(plant, 'lot:A1')[0] ?? '', disposition: { kind: 'reSinter', some: { lots: ['A1'], rest: { by: 'retest' } } }, reason: 'near the door' })).toBe('someMembersUnfit');
  });
});

it('coating again: the lots leave the charge, and the verdict of the next is a re-inspection', () => {
  checkFurnace(plant, 'F1');
  for (const lot of ['A1', 'A2']) for (const gate of ['dimensions', 'edge']) passGate(plant, lot, gate);
  load(plant, 'coating', 'C1', ['A1', 'A2']);
  workThrough(plant, 'coating:C1', 'coating-check', { adhesion: '3' });
  decideHold(plant, 'coating:C1', { kind: 'recoat' });
  load(plant, 'coating', 'C2', ['A1', 'A2']);
  workThrough(plant, 'coating:C2', 'coating-check');
  const given = verdictOf(gateRecord(plant, 'lot:A1', 'coating'));
  expect([given?.from, given?.verdict.accepted, given?.verdict.original, given?.verdict.attempt, plant.lot('A1').charges.at(-1)?.again]).toEqual(['coating:C2', true, false, 2, { how: 'recoat', earlierAttempts: 1 }]);
});
