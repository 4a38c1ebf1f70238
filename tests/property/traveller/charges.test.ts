import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { verdictOf } from '../../../shared/traveller/index.ts';
import type { Cell, Command, Verdict } from '../../../shared/traveller/index.ts';
import { EQUIPMENT } from '../../../demo-data/charge-records.ts';
import { LittlePlant, littlePlant, MASTER, openLot, releasedBatch } from './little-plant.ts';
import { gateRecord, press, standing } from './on-the-way.ts';

fc.configureGlobal({ seed: 20261132 });
const LOTS = ['A1', 'A2', 'A3', 'A4'] as const;
const [furnace] = EQUIPMENT;
if (furnace === undefined) throw new Error('no furnace');

const ready = ((): LittlePlant => {
  const plant = littlePlant();
  releasedBatch(plant);
  for (const lot of LOTS) {
    openLot(plant, lot, 40);
    press(plant, lot);
  }
  return plant;
})();
const open = (cells: readonly (readonly Cell[])[]): Command => ({ type: 'openCharge', charge: 'F1', kind: 'furnace', specification: 'DEMO-F8', programme: 'SINTER-07', equipment: furnace.name, equipmentId: furnace.id, members: cells.map((own, at) => ({ lot: LOTS[at] ?? '', places: [], cells: own })) });
/** Cells on the map, and some beside it. */
const cell = fc.oneof({ weight: 9, arbitrary: fc.record({ level: fc.integer({ min: 1, max: 3 }), position: fc.integer({ min: 1, max: 6 }) }) }, { weight: 1, arbitrary: fc.record({ level: fc.integer({ min: 0, max: 4 }), position: fc.integer({ min: 0, max: 8 }) }) });

describe('placing lots on a map', () => {
  it('is taken exactly when every lot has a cell, all lie on the map, and none is held twice: counted from the slips', () => {
    const met = { taken: 0, refused: 0 };
    fc.assert(fc.property(fc.array(fc.array(cell, { maxLength: 3 }), { minLength: 1, maxLength: LOTS.length }), (cells) => {
      const plant = new LittlePlant(ready.states);
      const all = cells.flat().map(({ level, position }) => `${level}/${position}`);
      const fits = cells.every((own) => own.length > 0) && new Set(all).size === all.length && cells.flat().every(({ level, position }) => level >= 1 && level <= 3 && position >= 1 && position <= 6);
      const decision = plant.give(open(cells));
      met['refusal' in decision ? 'refused' : 'taken'] += 1;
      if ('refusal' in decision) {
        expect([decision.refusal.code, fits]).toEqual(['placingUnsound', false]);
        return;
      }
      expect(fits).toBe(true);
      const told = decision.slips.flatMap(({ body }) => (body.type === 'chargeJoined' ? body.places : []));
      expect([new Set(told).size, told.length]).toEqual([all.length, all.length]);
    }), { numRuns: 400 });
    expect(met.taken).toBeGreaterThan(20);
    expect(met.refused).toBeGreaterThan(20);
  });
});

describe('one verdict', () => {
  it('stands on every member, in whatever order its readings come and whatever they are, and every one is held when it rejects', () => {
    const met = { accepted: 0, rejected: 0 };
    fc.assert(fc.property(fc.array(fc.nat(), { minLength: 40, maxLength: 40 }), fc.integer({ min: 1, max: LOTS.length }), (dice, members) => {
      const plant = new LittlePlant(ready.states);
      plant.must(open(LOTS.slice(0, members).map((_, at) => [{ level: 1 + (at % 3), position: 1 + at }])));
      const at = { subject: 'furnace:F1', gate: 'sinter-check' };
      plant.must({ ...at, type: 'openGate' });
      const entries = gateRecord(plant, at.subject, at.gate).work.flatMap(({ demand: { characteristic, n } }) => Array.from({ length: n }, (_, index) => ({ characteristic, ordinal: index + 1 })));
      const shuffled = entries.map((entry, index) => ({ entry, key: (dice[index % dice.length] ?? 0) * 31 + index })).sort((a, b) => (a.key % 97) - (b.key % 97));
      const before = plant.slips.length;
      shuffled.forEach(({ entry: { characteristic, ordinal } }, index) => {
        const off = (dice[index] ?? 0) % 29 === 0;
        const value = characteristic.kind === 'confirmed' ? !off : characteristic.kind === 'graded' ? (off ? characteristic.scale.at(-1) : characteristic.scale[0]) ?? '' : characteristic.kind === 'measured' ? (off ? (characteristic.upper ?? 0) + 1 : characteristic.target ?? 0) : 0;
        const gauge = { density: 'DEN-41', coercivity: 'COE-42', hardness: 'HAR-43' }[characteristic.id];
        plant.must({ ...at, type: 'takeReading', characteristic: characteristic.id, ordinal, value, sure: true, despite: 'read on the strip', ...(gauge === undefined ? {} : { gauge }) }, MASTER);
      });
      const given = plant.slips.slice(before).flatMap(({ body }) => (body.type === 'verdictGiven' ? [body.verdict] : []));
      const inherited = plant.slips.slice(before).flatMap(({ stream, body }) => (body.type === 'gateVerdictInherited' ? [{ stream, verdict: body.verdict }] : []));
      const [verdict] = given;
      expect([given.length, inherited.map(({ stream }) => stream)]).toEqual([1, LOTS.slice(0, members).map((lot) => `lot:${lot}`)]);
      for (const each of inherited) expect(resting(each.verdict)).toEqual(verdict === undefined ? null : resting(verdict));
      met[verdict?.accepted === true ? 'accepted' : 'rejected'] += 1;
      for (const lot of LOTS.slice(0, members)) expect([standing(plant, `lot:${lot}`).length, verdictOf(gateRecord(plant, `lot:${lot}`, 'sintered'))?.verdict.accepted]).toEqual([verdict?.accepted === true ? 0 : 1, verdict?.accepted]);
    }), { numRuns: 60 });
    expect(Math.min(met.accepted, met.rejected)).toBeGreaterThan(5);
  });
});

function resting({ accepted, results, failedPositions }: Verdict): unknown {
  return [accepted, results, failedPositions];
}
