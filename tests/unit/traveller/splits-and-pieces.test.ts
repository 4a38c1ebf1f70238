import { beforeEach, describe, expect, it } from 'vitest';
import { remainingPieces } from '../../../shared/traveller/index.ts';
import type { Command } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, openLot, releasedBatch, SHORT_ROUTE } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { decideHold, gateRecord, length, passGate, press, RELEASER, routeWith, standing, verdictAt } from '../../property/traveller/on-the-way.ts';

const split: Command = { type: 'splitLot', lot: 'A1', into: 'A2', pieces: 300, reason: 'half goes on' };
let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant(SHORT_ROUTE);
  releasedBatch(plant);
  openLot(plant, 'A1');
});

describe('a part split from a lot', () => {
  it('takes its pieces, its powder and every verdict given so far, and goes its own way', () => {
    passGate(plant, 'A1', 'final-visual');
    plant.must(split, CREW[1]);
    const part = plant.lot('A2');
    expect([remainingPieces(plant.lot('A1').balance), part.balance.opened, part.batch, part.splitFrom]).toEqual([700, 300, 'P1', 'A1']);
    expect([verdictAt(plant, 'A2', 'final-visual').results, part.gates.map(({ status }) => status)]).toEqual([verdictAt(plant, 'A1', 'final-visual').results, ['accepted', 'accepted', 'waiting']]);
    passGate(plant, 'A2', 'marking');
    expect([plant.refusalOf({ type: 'releaseLot', lot: 'A2' }, RELEASER), plant.refusalOf({ type: 'releaseLot', lot: 'A1' }, RELEASER)]).toEqual(['none', 'notAllGatesPassed']);
  });

  it('takes a concession along: its certificate states it too, and so does that of a part of the part', () => {
    passGate(plant, 'A1', 'final-visual', [{ code: 'ST', pieces: 7 }]);
    decideHold(plant, 'lot:A1', { kind: 'concession', statement: 'stains, no effect on use' });
    plant.must(split);
    plant.must({ type: 'splitLot', lot: 'A2', into: 'A3', pieces: 100, reason: 'a third' });
    for (const id of ['A2', 'A3']) expect([gateRecord(plant, `lot:${id}`, 'final-visual').status, plant.lot(id).concessions.map(({ statement, from }) => [statement, from])]).toEqual(['conceded', [['stains, no effect on use', 'lot:A1']]]);
  });

  it('follows a later correction of the verdict it took along: it is held when the first lot’s reading turns out wrong', () => {
    plant = littlePlant(routeWith(length()));
    releasedBatch(plant);
    openLot(plant, 'A1');
    passGate(plant, 'A1', 'own');
    plant.must(split);
    plant.must({ type: 'splitLot', lot: 'A2', into: 'A3', pieces: 100, reason: 'a third' });
    plant.must({ type: 'correctReading', subject: 'lot:A1', gate: 'own', characteristic: 'length', ordinal: 1, value: 11.5, reason: 'misread' }, CREW[1]);
    for (const id of ['A1', 'A2', 'A3']) expect([id, gateRecord(plant, `lot:${id}`, 'own').status, standing(plant, `lot:${id}`).length]).toEqual([id, 'rejected', 1]);
    // The part may be decided about apart from the lot it came from.
    decideHold(plant, 'lot:A2', { kind: 'rework', instruction: 'grind' });
    expect([gateRecord(plant, 'lot:A2', 'own').status, gateRecord(plant, 'lot:A1', 'own').status]).toEqual(['waiting', 'rejected']);
    passGate(plant, 'A2', 'own');
    plant.must({ type: 'correctReading', subject: 'lot:A1', gate: 'own', characteristic: 'length', ordinal: 1, value: 11.6, reason: 'misread again' }, CREW[1]);
    expect(gateRecord(plant, 'lot:A2', 'own').status).toBe('accepted');
  });

  it('is not made in the middle of a gate, nor before a second inspection, nor of a held or released lot', () => {
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' });
    expect(plant.refusalOf(split)).toBe('gateIsOpen');
    openLot(plant, 'B1');
    passGate(plant, 'B1', 'final-visual', [{ code: 'CH', pieces: 2 }]);
    expect(plant.refusalOf({ ...split, lot: 'B1' } as Command)).toBe('subjectIsHeld');
    decideHold(plant, 'lot:B1', { kind: 'rework', instruction: 'hone' });
    expect(plant.refusalOf({ ...split, lot: 'B1' } as Command)).toBe('gateIsOpen');
    passGate(plant, 'B1', 'final-visual');
    passGate(plant, 'B1', 'marking');
    plant.must({ type: 'releaseLot', lot: 'B1' }, RELEASER);
    expect(plant.refusalOf({ ...split, lot: 'B1' } as Command)).toBe('alreadyReleased');
  });

  it('needs a number that is free, a reason, and as many pieces as are there', () => {
    expect(plant.refusalOf({ ...split, into: 'A1' } as Command)).toBe('alreadyThere');
    expect(plant.refusalOf({ ...split, reason: '' } as Command)).toBe('reasonMissing');
    expect(plant.refusalOf({ ...split, pieces: 1001 } as Command)).toBe('notEnoughPieces');
    expect(plant.refusalOf({ ...split, pieces: 0 } as Command)).toBe('notEnoughPieces');
  });
});

describe('pieces', () => {
  it('leave the count when scrapped or destroyed, with a reason, never more than are there', () => {
    plant.must({ type: 'scrapPieces', lot: 'A1', pieces: 10, reason: 'dropped' }, CREW[1]);
    plant.must({ type: 'destroyPieces', lot: 'A1', pieces: 3, reason: 'section' }, CREW[0]);
    const { balance } = plant.lot('A1');
    expect([balance.scrapped, balance.destroyed, remainingPieces(balance)]).toEqual([10, 3, 987]);
    expect(plant.refusalOf({ type: 'scrapPieces', lot: 'A1', pieces: 988, reason: 'x' })).toBe('notEnoughPieces');
    expect(plant.refusalOf({ type: 'destroyPieces', lot: 'A1', pieces: 1, reason: ' ' })).toBe('reasonMissing');
  });

  it('do not leave while a gate is open that drew its sample from them', () => {
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' });
    expect(plant.refusalOf({ type: 'scrapPieces', lot: 'A1', pieces: 1, reason: 'x' })).toBe('gateIsOpen');
  });

  it('tested to destruction leave with the verdict, never more than there are', () => {
    for (const [quantity, left] of [[100, 97], [2, 0]] as const) {
      plant = littlePlant(routeWith(length({ destructive: true })));
      releasedBatch(plant);
      openLot(plant, 'A1', quantity);
      passGate(plant, 'A1', 'own');
      expect([quantity, remainingPieces(plant.lot('A1').balance)]).toEqual([quantity, left]);
    }
  });

  it('ejected and tested to destruction at one gate are together no more than there are', () => {
    plant = littlePlant(routeWith(length({ id: 'each', sampling: { rule: 'everyPiece', ejectAtMostPercent: 100 } }), length({ destructive: true })));
    releasedBatch(plant);
    openLot(plant, 'A1', 5);
    const at = { subject: 'lot:A1', gate: 'own', gauge: 'MIC-11' } as const;
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
    plant.must({ ...at, type: 'takeWeights', characteristic: 'each', fromPiece: 1, values: [12, 12, 12, 12, 10.5] });
    for (const ordinal of [1, 2, 3]) plant.must({ ...at, type: 'takeReading', characteristic: 'length', ordinal, value: 10.5 });
    const { scrapped, destroyed } = plant.lot('A1').balance;
    expect([scrapped, destroyed]).toEqual([4, 1]);
  });

  it('outside the weight limits are ejected and leave with the verdict; more than the plan allows reject the lot', () => {
    plant = littlePlant();
    releasedBatch(plant);
    openLot(plant, 'A1', 100);
    press(plant, 'A1', [12, 12]);
    expect([gateRecord(plant, 'lot:A1', 'pressing').status, plant.lot('A1').balance.scrapped]).toEqual(['accepted', 2]);
    openLot(plant, 'A2', 100);
    press(plant, 'A2', [12, 12, 12]);
    expect([gateRecord(plant, 'lot:A2', 'pressing').status, plant.lot('A2').balance.scrapped]).toEqual(['rejected', 3]);
  });

  it('are weighed each once, in the order made', () => {
    plant = littlePlant();
    releasedBatch(plant);
    openLot(plant, 'A1', 10);
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'pressing' });
    const weigh = (fromPiece: number, values: readonly number[]): Command => ({ type: 'takeWeights', subject: 'lot:A1', gate: 'pressing', characteristic: 'weight', fromPiece, values, gauge: 'BAL-21' });
    expect(plant.refusalOf(weigh(2, [9.9]))).toBe('weightsOutOfOrder');
    plant.must(weigh(1, [9.9, 9.9, 9.9]));
    expect(plant.ask(weigh(3, [9.9]))).toEqual({ refusal: { code: 'weightsOutOfOrder', expectedFrom: 4, gotFrom: 3, lotSize: 10 } });
    expect(plant.refusalOf(weigh(4, Array.from({ length: 8 }, () => 9.9)))).toBe('weightsOutOfOrder');
    expect(plant.refusalOf(weigh(4, [9.9, 0]))).toBe('valueImpossible');
  });

  it('are looked at each time a look falls due, and not before; one found rejects', () => {
    plant = littlePlant();
    releasedBatch(plant);
    openLot(plant, 'A1', 500);
    const at = { subject: 'lot:A1', gate: 'pressing' } as const;
    plant.must({ ...at, type: 'openGate' });
    const look = (number: number, found: number, code?: string): Command => ({ ...at, type: 'takeLook', characteristic: 'looks', look: number, found, ...(code === undefined ? {} : { code }) });
    const weigh = (from: number): Command => ({ ...at, type: 'takeWeights', characteristic: 'weight', fromPiece: from, values: Array.from({ length: 250 }, () => 9.88), gauge: 'BAL-21' });
    expect(plant.ask(look(1, 0))).toEqual({ refusal: { code: 'lookNotDue', look: 1, dueAt: 250, made: 0 } });
    plant.must(weigh(1));
    expect(plant.refusalOf(look(2, 0))).toBe('lookOutOfOrder');
    expect(plant.refusalOf(look(1, 6, 'PE'))).toBe('tooManyFound');
    expect(plant.refusalOf(look(1, 1))).toBe('findingUnknown');
    plant.must(look(1, 1, 'PE'));
    plant.must(weigh(251));
    plant.must(look(2, 0));
    expect(gateRecord(plant, 'lot:A1', 'pressing').status).toBe('rejected');
  });
});
