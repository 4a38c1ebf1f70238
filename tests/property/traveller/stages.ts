import type { InspectionPlan } from '../../../shared/traveller/index.ts';
import { PLANS } from '../../../demo-data/plans.ts';
import { littlePlant, LittlePlant, lookAtAll, openLot, releasedBatch, SHORT_ROUTE, workThrough } from './little-plant.ts';
import { checkFurnace, labelledBox, load, passGate, releasedLot, twoInTheFurnace } from './on-the-way.ts';

const FULL_ROUTE = PLANS.find(({ id }) => id === 'ROUTE-CNMG') as InspectionPlan;

/** The plant at moments where much is open, for commands that may be anything. Each is built once and played on from a copy. */
const MOMENTS: Readonly<Record<string, (plant: LittlePlant) => void>> = {
  'nothing made yet': () => undefined,
  'powder half tested': (plant) => {
    plant.must({ type: 'openBatch', batch: 'P1', grade: 'DEMO-F8', barrels: 12, kgPerBarrel: 100, rawLots: [] });
    plant.must({ type: 'openGate', subject: 'batch:P1', gate: 'powder-lab' });
    plant.must({ type: 'takeReading', subject: 'batch:P1', gate: 'powder-lab', characteristic: 'moisture', ordinal: 1, value: 0.1 });
  },
  'powder held and lots made of it': (plant) => {
    releasedBatch(plant);
    openLot(plant, 'A1', 1);
    openLot(plant, 'A2', 2);
    plant.must({ type: 'hold', subject: 'batch:P1', reason: 'a doubt' });
  },
  'pressing under way': (plant) => {
    releasedBatch(plant);
    openLot(plant, 'A1', 3);
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'pressing' });
    plant.must({ type: 'takeWeights', subject: 'lot:A1', gate: 'pressing', characteristic: 'weight', fromPiece: 1, values: [9.8], gauge: 'BAL-21' });
  },
  'furnace check under way': (plant) => {
    twoInTheFurnace(plant);
    plant.must({ type: 'splitLot', lot: 'A1', into: 'A3', pieces: 10, reason: 'goes ahead' });
    plant.must({ type: 'openGate', subject: 'furnace:F1', gate: 'sinter-check' });
    plant.must({ type: 'takeReading', subject: 'furnace:F1', gate: 'sinter-check', characteristic: 'programme', ordinal: 1, value: true, despite: 'read on the strip' });
  },
  'furnace charge rejected': (plant) => {
    twoInTheFurnace(plant);
    checkFurnace(plant, 'F1', { hardness: 1900 });
  },
  'coating check under way, dimensions measured': (plant) => {
    twoInTheFurnace(plant);
    checkFurnace(plant, 'F1');
    passGate(plant, 'A1', 'dimensions');
    passGate(plant, 'A1', 'edge');
    load(plant, 'coating', 'C1', ['A1']);
    plant.must({ type: 'openGate', subject: 'coating:C1', gate: 'coating-check' });
    plant.must({ type: 'openGate', subject: 'lot:A2', gate: 'dimensions' });
    plant.must({ type: 'takeReading', subject: 'lot:A2', gate: 'dimensions', characteristic: 'circle', ordinal: 1, value: 12.7, gauge: 'MIC-11' });
  },
};
const SHORT_MOMENTS: Readonly<Record<string, (plant: LittlePlant) => void>> = {
  'final visual under way': (plant) => {
    releasedBatch(plant);
    openLot(plant, 'A1');
    plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'final-visual' });
    plant.must({ type: 'recordFinding', subject: 'lot:A1', gate: 'final-visual', characteristic: 'looks', code: 'ST', pieces: 1, ordinals: [1] });
  },
  'final visual rejected': (plant) => {
    releasedBatch(plant);
    openLot(plant, 'A1');
    passGate(plant, 'A1', 'final-visual', [{ code: 'CH', pieces: 9 }]);
  },
  'sort asked for': (plant) => {
    releasedBatch(plant);
    openLot(plant, 'A1', 5);
    workThrough(plant, 'lot:A1', 'final-visual');
    lookAtAll(plant, 'A1', 'final-visual', 'looks', [{ code: 'CR', pieces: 2 }]);
    plant.must({ type: 'dispose', subject: 'lot:A1', hold: 'A1-H1', disposition: { kind: 'sort' }, reason: 'worth it' });
  },
  'released, boxes packed, shipped and voided': (plant) => {
    releasedBatch(plant);
    releasedLot(plant, 'A1', 50);
    const first = labelledBox(plant, 'A1');
    labelledBox(plant, 'A1');
    plant.must({ type: 'packBox', lot: 'A1', pieces: 3 });
    plant.must({ type: 'voidBox', lot: 'A1', box: 'A1-003', reason: 'torn' });
    plant.must({ type: 'shipBox', lot: 'A1', box: first, shipment: 'S1', order: 'O1', consignee: 'Invented shop' });
  },
};

function built(route: InspectionPlan, moments: Readonly<Record<string, (plant: LittlePlant) => void>>): { readonly name: string; readonly plant: LittlePlant }[] {
  return Object.entries(moments).map(([name, play]) => {
    const plant = littlePlant(route);
    play(plant);
    return { name, plant };
  });
}
export const STAGES = [...built(FULL_ROUTE, MOMENTS), ...built(SHORT_ROUTE, SHORT_MOMENTS)];
/** A plant that stands where this one stands and goes its own way. */
export function copyOf(plant: LittlePlant): LittlePlant {
  return new LittlePlant(plant.states);
}
