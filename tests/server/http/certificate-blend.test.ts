import { expect, it } from 'vitest';
import { PLANT } from '../../../demo-data/plant-records.ts';
import { certificateContent } from '../../../server/http/certificate-content.ts';
import type { Signature } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, releasedBatch, SHORT_ROUTE, workThrough } from '../../property/traveller/little-plant.ts';

const signature: Signature = { badge: 'Q-401', name: 'Engineer', role: 'engineer', at: '2026-11-20T10:00:00.000Z', meaning: 'disposedBy' };
const concession = { gate: 'powder-lab', statement: 'Flow 37 s accepted for this order', signature };

/** What the certificate of a lot of the blend B1 says, with these concessions on the powder and on the lot. */
function contentOf(onPowder: readonly typeof concession[], onLot: readonly typeof concession[]) {
  const plant = littlePlant(SHORT_ROUTE);
  for (const id of ['P1', 'P2']) releasedBatch(plant, id);
  plant.must({ type: 'blendBatches', batch: 'B1', from: [{ batch: 'P1', kg: 300 }, { batch: 'P2', kg: 100 }], barrels: 4 }, CREW[0]);
  workThrough(plant, 'batch:B1', 'powder-lab');
  plant.must({ type: 'releaseBatch', batch: 'B1' }, CREW[0]);
  plant.must({ type: 'openLot', lot: 'A1', product: 'CNMG-D1', batch: 'B1', quantity: 100, trayCapacity: 60 });
  const batch = plant.state('batch:B1');
  if (batch?.kind !== 'batch') throw new Error('no blend');
  return certificateContent({
    lot: { ...plant.lot('A1'), concessions: onLot.map((each) => ({ ...each, gate: 'powder', from: 'batch:B1' })) }, release: { certificate: 'C-A1-1', quantity: 100, at: '2026-11-21T10:00:00.000Z', signatures: [], withdrawn: null },
    parents: [], batch: { ...batch, concessions: onPowder.map((each) => ({ ...each, from: null })) }, charges: [], coating: null, plant: PLANT, names: {},
  });
}

it('names the batches a blend was made of', () => {
  const { lot, notes } = contentOf([], []);
  expect(lot.powderBatches).toEqual(['B1', 'P1', 'P2']);
  expect(notes).toContain('Powder batch B1 is a blend of P1, P2.');
});

it('tells a concession on the powder once, though it stands on the lot’s thread too, and two decisions twice', () => {
  expect(contentOf([concession], [concession]).concessions).toHaveLength(1);
  const later = { ...concession, signature: { ...signature, at: '2026-11-20T11:00:00.000Z' } };
  expect(contentOf([concession], [concession, later]).concessions).toHaveLength(2);
});
