import type { Chance } from './chance.ts';
import type { Floor } from './floor.ts';
import type { DemoPerson } from './people.ts';
import { workGate } from './work-gate.ts';

/**
 * A blend of the rest of two earlier batches of the fine grade: released, with one lot waiting at the press. Invented.
 * @param from two released batches with at least 200 and 100 kg left
 */
export function blendedPowder(floor: Floor, chance: Chance, lab: DemoPerson, inspector: DemoPerson, from: readonly [string, string]): void {
  const [first, second] = from;
  floor.give(lab, 'Lab', { type: 'blendBatches', batch: 'P26-190', from: [{ batch: first, kg: 200 }, { batch: second, kg: 100 }], barrels: 3 });
  floor.wait(40);
  workGate(floor, chance, lab, 'batch:P26-190', 'powder-lab');
  floor.wait(15);
  floor.give(lab, 'Lab', { type: 'releaseBatch', batch: 'P26-190' });
  floor.wait(10);
  floor.give(inspector, 'Press 2', { type: 'openLot', lot: 'L26-0480', product: 'SNMG-D3', batch: 'P26-190', quantity: 480, trayCapacity: 60, order: 'D-0480' });
  floor.wait(5);
}
