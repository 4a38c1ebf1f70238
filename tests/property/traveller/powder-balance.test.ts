import fc from 'fast-check';
import { expect, it } from 'vitest';
import { remainingKg } from '../../../shared/traveller/index.ts';
import type { Batch } from '../../../shared/traveller/index.ts';
import { weighBlendsOf } from './blend-plan.ts';
import { littlePlant, LittlePlant, workThrough } from './little-plant.ts';

const GRADE = 'DEMO-F8';
const roots = ['P1', 'P2', 'P3'];

/** Three small released batches. */
const base = (() => {
  const plant = littlePlant();
  weighBlendsOf(plant);
  for (const batch of roots) {
    plant.must({ type: 'openBatch', batch, grade: GRADE, barrels: 2, kgPerBarrel: 10, rawLots: [] });
    workThrough(plant, `batch:${batch}`, 'powder-lab', { binder: batch === 'P1' ? 1.95 : 2.03 });
    plant.must({ type: 'releaseBatch', batch });
  }
  return plant.states;
})();

const grams = (min: number, max: number) => fc.integer({ min, max }).map((each) => each / 1000);
const move = fc.oneof(
  { weight: 2, arbitrary: fc.record({ do: fc.constant('lot' as const), from: fc.nat(9), pieces: fc.integer({ min: 0, max: 2500 }) }) },
  { weight: 4, arbitrary: fc.record({ do: fc.constant('blend' as const), from: fc.array(fc.record({ batch: fc.nat(5), kg: fc.oneof({ weight: 5, arbitrary: grams(1, 9000) }, grams(-1, 21_000), fc.double({ min: 0, max: 20, noNaN: true })) }), { minLength: 1, maxLength: 3 }), barrels: fc.integer({ min: 0, max: 3 }) }) },
  fc.record({ do: fc.constant('hold' as const), from: fc.nat(9) }),
  fc.record({ do: fc.constant('correct' as const), from: fc.nat(2), value: fc.integer({ min: 190, max: 210 }).map((hundredth) => hundredth / 100) }),
);

it('no order of lots and blends takes more powder than there is, none is lost, and a blend lies between its parts', () => {
  const met = { lots: 0, blends: 0, refused: 0 };
  fc.assert(fc.property(fc.array(move, { minLength: 4, maxLength: 14, size: 'max' }), (moves) => {
    const plant = new LittlePlant(base);
    const batches = [...roots];
    const batchOf = (id: string): Batch => plant.state(`batch:${id}`) as Batch;
    const named = (at: number): string => batches[at % batches.length] ?? '';
    for (const each of moves) {
      const before = plant.slips.length;
      if (each.do === 'lot') plant.give({ type: 'openLot', lot: `A${plant.slips.length}`, product: 'CNMG-D1', batch: named(each.from), quantity: each.pieces, trayCapacity: 60 });
      else if (each.do === 'hold') plant.give({ type: 'hold', subject: `batch:${named(each.from)}`, reason: 'a doubt' });
      else if (each.do === 'correct') plant.give({ type: 'correctReading', subject: `batch:${named(each.from)}`, gate: 'powder-lab', characteristic: 'binder', ordinal: 1, value: each.value, reason: 'misread' });
      else {
        const batch = `B${plant.slips.length}`;
        const blended = plant.give({ type: 'blendBatches', batch, from: each.from.map(({ batch: at, kg }) => ({ batch: named(at), kg })), barrels: each.barrels });
        if ('slips' in blended) {
          workThrough(plant, `batch:${batch}`, 'powder-lab');
          plant.give({ type: 'releaseBatch', batch });
          batches.push(batch);
          met.blends += 1;
        }
      }
      if (plant.slips.length === before) met.refused += 1;
      else if (each.do === 'lot') met.lots += 1;
    }
    // Counted from the slips, not from the state under test: what was ever taken of each batch, and what each was filled with.
    for (const id of batches) {
      const taken = plant.slips.reduce((sum, { stream, body }) => (stream === `batch:${id}` && (body.type === 'batchUsed' || body.type === 'batchBlended') ? sum + (body.kg ?? 0) : sum), 0);
      const mixed = plant.slips.flatMap(({ body }) => (body.type === 'batchOpened' && body.batch === id ? body.blendedFrom ?? [] : []));
      const filled = mixed.length === 0 ? 20 : mixed.reduce((sum, { kg }) => sum + kg, 0);
      expect(taken).toBeLessThanOrEqual(filled + 1e-9);
      expect(remainingKg(batchOf(id))).toBeCloseTo(filled - taken, 6);
      expect(remainingKg(batchOf(id))).toBeGreaterThanOrEqual(0);
    }
    for (const { released, blendedFrom } of batches.map(batchOf)) {
      if (released === null || blendedFrom.length === 0) continue;
      const parts = blendedFrom.map(({ batch }) => batchOf(batch).released?.factors.binderPercent ?? 0);
      expect(released.factors.binderPercent >= Math.min(...parts) && released.factors.binderPercent <= Math.max(...parts), `${released.factors.binderPercent} of ${parts.join(', ')}`).toBe(true);
    }
    // Nothing is blended that is not there: what all roots held is in lots, in blends, or still in them.
    const everywhere = batches.reduce((sum, id) => sum + remainingKg(batchOf(id)), 0);
    const inLots = plant.slips.reduce((sum, { body }) => (body.type === 'batchUsed' ? sum + (body.kg ?? 0) : sum), 0);
    expect(everywhere + inLots).toBeCloseTo(60, 6);
  }), { numRuns: 120, seed: 20261128 });
  for (const [what, times] of Object.entries(met)) expect(times, what).toBeGreaterThan(20);
});
