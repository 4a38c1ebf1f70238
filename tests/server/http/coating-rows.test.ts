import { expect, it } from 'vitest';
import { gateRows, measuredRows } from '../../../server/http/certificate-rows.ts';
import { littlePlant, openLot, releasedBatch, workThrough } from '../../property/traveller/little-plant.ts';
import { checkFurnace, load, passGate, press } from '../../property/traveller/on-the-way.ts';

/** A lot that came through a coating charge whose check was worked as planned. */
function coatedCharge() {
  const plant = littlePlant();
  releasedBatch(plant);
  openLot(plant, 'A1', 300);
  press(plant, 'A1');
  load(plant, 'furnace', 'F1', ['A1']);
  checkFurnace(plant, 'F1');
  for (const gate of ['dimensions', 'edge']) passGate(plant, 'A1', gate);
  load(plant, 'coating', 'C1', ['A1']);
  workThrough(plant, 'coating:C1', 'coating-check');
  const charge = plant.state('coating:C1');
  if (charge === null || !('gates' in charge)) throw new Error('no charge');
  return { charge, lot: plant.lot('A1') };
}

it('the certificate says of a coating charge each layer, the adhesion class and the confirmed colour', () => {
  const { charge } = coatedCharge();
  expect(gateRows(charge, {}).map(({ characteristic, verdict, result }) => [characteristic, verdict, result.judgedBy])).toEqual([
    ['Coating thickness', 'accepted', 'each'], ['TiN', 'accepted', 'each'], ['Al2O3', 'accepted', 'each'], ['TiCN', 'accepted', 'each'], ['Adhesion class', 'accepted', 'grade'], ['Colour and coverage', 'accepted', 'confirmed'],
  ]);
});

it('the certificate gives mean and limits of each layer in µm', () => {
  const { charge } = coatedCharge();
  expect(measuredRows(charge).map(({ name, unit, n, mean, lower, upper }) => [name, unit, n, Math.round(mean), lower, upper])).toEqual([
    ['Coating thickness', 'µm', 3, 12, 10, 14], ['TiN', 'µm', 3, 1, 0.5, 1.5], ['Al2O3', 'µm', 3, 4, 3, 5], ['TiCN', 'µm', 3, 7, 5.5, 8.5],
  ]);
});

it('asks for the colour once for every charge, and the verdict stands for its members', () => {
  const { charge, lot } = coatedCharge();
  const colour = charge.gates[0]?.work.find(({ demand }) => demand.characteristic.id === 'colour');
  expect([colour?.demand.basis.by, colour?.demand.n, colour?.readings.length]).toEqual(['once', 1, 1]);
  expect(lot.gates.find(({ id }) => id === 'coating')?.verdicts.at(-1)).toMatchObject({ from: 'coating:C1', verdict: { accepted: true } });
});
