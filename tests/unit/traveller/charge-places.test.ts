import { beforeEach, describe, expect, it } from 'vitest';
import { nearestOf, verdictOf } from '../../../shared/traveller/index.ts';
import type { Cell, Command } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, openLot, releasedBatch, workThrough } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { checkFurnace, decideHold, gateRecord, press, standing } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant();
  releasedBatch(plant);
  for (const lot of ['A1', 'A2', 'A3']) {
    openLot(plant, lot, 100);
    press(plant, lot);
  }
});
const at = (level: number, position: number): Cell => ({ level, position });
const member = (lot: string, ...cells: readonly Cell[]) => ({ lot, places: [], cells });
const furnace = (members: Extract<Command, { type: 'openCharge' }>['members'], id = 'F1'): Command =>
  ({ type: 'openCharge', charge: id, kind: 'furnace', specification: 'DEMO-F8', programme: 'SINTER-07', equipment: 'Furnace 1', equipmentId: 'FURNACE-1', members });
const refusal = (command: Command): unknown => {
  const decision = plant.ask(command);
  return 'refusal' in decision && decision.refusal.code === 'placingUnsound' ? [decision.refusal.why, decision.refusal.lot, decision.refusal.cell, decision.refusal.other] : decision;
};
const charge = (id = 'F1') => {
  const state = plant.state(`furnace:${id}`);
  if (state?.kind !== 'furnace') throw new Error(`no charge ${id}`);
  return state;
};

describe('lots are placed on the map of the equipment', () => {
  it('each on one cell or several; the places are named from the map, and the charge keeps the map as it was', () => {
    plant.must(furnace([member('A1', at(1, 2), at(1, 3)), member('A2', at(3, 6))]));
    expect(charge().members.map(({ places }) => places)).toEqual([['Top 2', 'Top 3'], ['Bottom 6']]);
    expect(plant.lot('A1').charges).toEqual([{ charge: 'furnace:F1', gate: 'sintered', places: ['Top 2', 'Top 3'], current: true, cells: [at(1, 2), at(1, 3)], again: null, member: 'A1' }]);
    plant.must({ type: 'defineEquipment', equipment: { id: 'FURNACE-1', kind: 'furnace', name: 'Furnace 1, rebuilt', levels: [{ name: 'Only', layout: { by: 'ring', positions: 4 } }], testPositions: [] } });
    expect(charge().map?.levels.map(({ name }) => name)).toEqual(['Top', 'Middle', 'Bottom']);
  });

  it('no cell twice, none outside the map, none left without, and words beside cells are asked back', () => {
    expect(refusal(furnace([member('A1', at(1, 1)), member('A2', at(1, 1))]))).toEqual(['taken', 'A2', 'Top 1', 'A1']);
    expect(refusal(furnace([member('A1', at(1, 1), at(1, 1))]))).toEqual(['taken', 'A1', 'Top 1', 'A1']);
    expect(refusal(furnace([member('A1', at(1, 7))]))).toEqual(['outsideMap', 'A1', 'Top 7', '']);
    expect(refusal(furnace([member('A1', at(4, 1))]))).toEqual(['outsideMap', 'A1', '4/1', '']);
    expect(refusal(furnace([member('A1')]))).toEqual(['noCells', 'A1', '', '']);
    expect(refusal(furnace([{ ...member('A1', at(1, 1)), places: ['Top'] }]))).toEqual(['placesGiven', 'A1', '', '']);
  });

  it('not on a coater, not on equipment nobody knows, and no cells where no equipment is named', () => {
    expect(refusal({ ...furnace([member('A1', at(1, 1))]), equipmentId: 'COATER-2' } as Command)).toEqual(['otherKind', '', 'Coater 2', '']);
    expect(plant.refusalOf({ ...furnace([member('A1', at(1, 1))]), equipmentId: 'NONE' } as Command)).toBe('notFound');
    expect(refusal({ type: 'openCharge', charge: 'F1', kind: 'furnace', specification: 'DEMO-F8', programme: 'P', equipment: 'E', members: [member('A1', at(1, 1))] })).toEqual(['noMap', 'A1', '', '']);
  });
});

describe('a position that fails', () => {
  /** Fails the hardness of the piece at one place: Top, Middle, Bottom are 1, 2, 3. */
  function failHardnessAt(ordinal: number, id = 'F1'): void {
    checkFurnace(plant, id);
    plant.must({ type: 'correctReading', subject: `furnace:${id}`, gate: 'sinter-check', characteristic: 'hardness', ordinal, value: 1400, reason: 'read from the wrong line' }, CREW[0]);
  }
  const failed = () => verdictOf(gateRecord(plant, 'furnace:F1', 'sinter-check'))?.verdict.failedPositions;
  const near = (lot: string) => plant.lot(lot).holds.flatMap(({ cause }) => (cause.by === 'charge' ? [cause.near] : []));

  it('holds every member all the same, and names those that lay near it, the nearest first', () => {
    // The test piece at Top lies on Top 2: A2 beside it, A1 straight below, A3 far away.
    plant.must(furnace([member('A1', at(2, 2)), member('A2', at(1, 6)), member('A3', at(3, 4))]));
    failHardnessAt(1);
    expect(failed()).toEqual([{ position: 'Top', characteristics: ['Hardness'], near: [{ lot: 'A2', how: 'beside' }, { lot: 'A1', how: 'below' }], mapped: true }]);
    expect(['A1', 'A2', 'A3'].map((lot) => standing(plant, `lot:${lot}`).length)).toEqual([1, 1, 1]);
    expect([near('A1'), near('A2'), near('A3')]).toEqual([[[{ position: 'Top', how: 'below' }]], [[{ position: 'Top', how: 'beside' }]], [[]]]);
    expect(verdictOf(gateRecord(plant, 'lot:A3', 'sintered'))?.verdict.failedPositions).toEqual(failed());
  });

  it('is named for a graded characteristic too, and each position once with all that failed there', () => {
    plant.must(furnace([member('A1', at(3, 2))]));
    workThrough(plant, 'furnace:F1', 'sinter-check', { hardness: 1400, porosity: 'A08' });
    expect(failed()?.map(({ position, characteristics, near: lots }) => [position, characteristics, lots.map(({ lot }) => lot)])).toEqual([['Top', ['Hardness', 'Porosity, type A'], []], ['Middle', ['Hardness', 'Porosity, type A'], []], ['Bottom', ['Hardness', 'Porosity, type A'], ['A1']]]);
  });

  it('without a map names the lots whose places bear its name', () => {
    plant.must({ type: 'openCharge', charge: 'F1', kind: 'furnace', specification: 'DEMO-F8', programme: 'P', equipment: 'E', members: [{ lot: 'A1', places: ['Top'] }, { lot: 'A2', places: ['Bottom'] }] });
    failHardnessAt(3);
    expect(failed()).toEqual([{ position: 'Bottom', characteristics: ['Hardness'], near: [{ lot: 'A2', how: 'same' }], mapped: false }]);
  });

  it('is said of a part by where its lot lay', () => {
    plant.must(furnace([member('A1', at(1, 2)), member('A2', at(3, 6))]));
    plant.must({ type: 'splitLot', lot: 'A1', into: 'A9', pieces: 20, reason: 'goes ahead' });
    failHardnessAt(1);
    expect([near('A9'), nearestOf(plant.lot('A9'), 'furnace:F1', { failedPositions: failed() ?? [] } as never)]).toEqual([[[{ position: 'Top', how: 'same' }]], [{ position: 'Top', how: 'same' }]]);
  });

  it('that is corrected to good is named no longer', () => {
    plant.must(furnace([member('A1', at(1, 2))]));
    failHardnessAt(1);
    plant.must({ type: 'correctReading', subject: 'furnace:F1', gate: 'sinter-check', characteristic: 'hardness', ordinal: 1, value: 1600, reason: 'read again' }, CREW[0]);
    expect([verdictOf(gateRecord(plant, 'furnace:F1', 'sinter-check'))?.verdict.accepted, failed()]).toEqual([true, undefined]);
    decideHold(plant, 'furnace:F1', { kind: 'clear' });
    expect(standing(plant, 'lot:A1')).toEqual([]);
  });
});

it('equipment and programmes are an engineer’s to enter, and only sound ones', () => {
  const card = { id: 'F-9', kind: 'furnace', name: 'Nine', levels: [{ name: 'A', layout: { by: 'ring', positions: 4 } }], testPositions: [{ name: 'Door', level: 2, position: 1 }] } as const;
  expect(plant.refusalOf({ type: 'defineEquipment', equipment: card }, CREW[0])).toBe('notYourRole');
  expect(plant.refusalOf({ type: 'defineEquipment', equipment: card }, CREW[2])).toBe('mapUnsound');
  expect(plant.refusalOf({ type: 'defineEquipment', equipment: { ...card, testPositions: [] } }, CREW[2])).toBe('none');
  expect(plant.refusalOf({ type: 'defineProgramme', programme: { id: 'P-9', name: 'Nine', rateOverMin: 5, largestGapMin: 5, segments: [] } }, CREW[2])).toBe('programmeUnsound');
});
