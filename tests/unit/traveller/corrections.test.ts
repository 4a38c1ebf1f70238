import { beforeEach, describe, expect, it } from 'vitest';
import type { Command } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, openLot, releasedBatch } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { decideHold, gateRecord, length, RELEASER, routeWith, standing, verdictAt } from '../../property/traveller/on-the-way.ts';

const OTHER = { badge: 'I-302', name: 'Other inspector', roles: ['inspector'] } as const;
let plant: LittlePlant;
const own = () => gateRecord(plant, 'lot:A1', 'own');
const correct = (value: number, more: Partial<Extract<Command, { type: 'correctReading' }>> = {}): Command => ({ type: 'correctReading', subject: 'lot:A1', gate: 'own', characteristic: 'length', ordinal: 1, value, reason: 'misread', ...more });
const read = (ordinal: number, value: number): Command => ({ type: 'takeReading', subject: 'lot:A1', gate: 'own', characteristic: 'length', ordinal, value, gauge: 'MIC-11' });
/** A lot measured at three places; limits 10 and 11 mm. */
beforeEach(() => {
  plant = littlePlant(routeWith(length()));
  releasedBatch(plant);
  openLot(plant, 'A1', 100);
  plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
  for (const ordinal of [1, 2]) plant.must(read(ordinal, 10.5), CREW[1]);
});
const finish = (value = 10.5): void => void plant.must(read(3, value), CREW[1]);

describe('a correction', () => {
  it('is a new slip with both values and the reason; the first entry stays on the thread', () => {
    expect(plant.must(correct(10.6), CREW[1])).toEqual([{ type: 'readingCorrected', gate: 'own', characteristic: 'length', ordinal: 1, from: 10.5, to: 10.6, reason: 'misread' }]);
    expect([own().work[0]?.readings[0]?.value, own().work[0]?.readings[0]?.first, plant.lot('A1').corrections.map(({ from, to }) => [from, to])]).toEqual([10.6, 10.5, [['10.5', '10.6']]]);
  });

  it('before the verdict gives none', () => {
    expect(plant.must(correct(12, { sure: true }), CREW[1]).map(({ type }) => type)).toEqual(['readingCorrected']);
    finish();
    expect(verdictAt(plant, 'A1', 'own').accepted).toBe(false);
  });

  it('after the verdict judges anew; a rejection holds the lot', () => {
    finish();
    expect(plant.must(correct(11.5), CREW[1]).map(({ type }) => type)).toEqual(['readingCorrected', 'verdictRevised', 'held']);
    expect([own().status, standing(plant, 'lot:A1').length]).toEqual(['rejected', 1]);
  });

  it('that turns a rejection leaves the hold: an engineer clears it', () => {
    finish(11.5);
    plant.must(correct(10.9, { ordinal: 3 }), CREW[1]);
    expect([own().status, standing(plant, 'lot:A1').length, plant.refusalOf({ type: 'releaseLot', lot: 'A1' }, RELEASER)]).toEqual(['accepted', 1, 'subjectIsHeld']);
    decideHold(plant, 'lot:A1', { kind: 'clear' });
    expect(plant.refusalOf({ type: 'releaseLot', lot: 'A1' }, RELEASER)).toBe('none');
  });

  it('to and fro sets one hold, not one each time', () => {
    finish();
    for (const value of [11.5, 10.5, 11.6]) plant.must(correct(value), CREW[1]);
    expect([own().status, standing(plant, 'lot:A1').length]).toEqual(['rejected', 1]);
  });

  it('after a concession holds nothing again', () => {
    finish(11.5);
    decideHold(plant, 'lot:A1', { kind: 'concession', statement: 'as it is' });
    plant.must(correct(11.7), CREW[1]);
    expect([own().status, standing(plant, 'lot:A1')]).toEqual(['conceded', []]);
  });

  it('while the lot waits to be inspected again leaves it waiting', () => {
    finish(11.5);
    decideHold(plant, 'lot:A1', { kind: 'rework', instruction: 'grind' });
    for (const value of [10.9, 11.5]) plant.must(correct(value, { ordinal: 3 }), CREW[1]);
    expect([own().status, standing(plant, 'lot:A1')]).toEqual(['waiting', []]);
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' }, CREW[1]);
    expect([own().attempt, own().original]).toEqual([2, false]);
  });

  it('makes the one who corrected one of those who worked the gate', () => {
    finish();
    plant.must(correct(10.6), OTHER);
    expect(verdictAt(plant, 'A1', 'own').workers).toEqual(['I-301', 'I-302']);
  });

  it('needs a reason, another value, a reading that is there, and the gate’s role', () => {
    expect(plant.refusalOf(correct(10.6, { reason: ' ' }), CREW[1])).toBe('reasonMissing');
    expect(plant.refusalOf(correct(10.5), CREW[1])).toBe('nothingChanged');
    expect(plant.refusalOf(correct(10.6, { ordinal: 3 }), CREW[1])).toBe('notFound');
    expect(plant.refusalOf(correct(10.6), CREW[0])).toBe('notYourRole');
    expect(plant.refusalOf(correct(10.6001), CREW[1])).toBe('valueImpossible');
    expect(plant.refusalOf(correct(1.06), CREW[1])).toBe('unlikelyValue');
  });

  it('is refused once the lot is released, for its certificate states the numbers, and taken after the release was withdrawn', () => {
    finish();
    plant.must({ type: 'releaseLot', lot: 'A1' }, RELEASER);
    expect(plant.refusalOf(correct(10.6), CREW[1])).toBe('alreadyReleased');
    plant.must({ type: 'withdrawRelease', lot: 'A1', reason: 'a reading was misread' }, RELEASER);
    plant.must(correct(10.6), CREW[1]);
  });

  it('on the powder or a charge is refused while a lot that rests on it is released', () => {
    finish();
    plant.must({ type: 'releaseLot', lot: 'A1' }, RELEASER);
    const flow: Command = { type: 'correctReading', subject: 'batch:P1', gate: 'powder-lab', characteristic: 'flow', ordinal: 1, value: 33, reason: 'misread' };
    expect(plant.refusalOf(flow, CREW[0])).toBe('alreadyReleased');
    plant.must({ type: 'withdrawRelease', lot: 'A1', reason: 'flow was misread' }, RELEASER);
    plant.must(flow, CREW[0]);
  });
});
