import { remainingPieces } from '../../shared/traveller/index.ts';
import type { CharacteristicWork, Command, Lot, Subject } from '../../shared/traveller/index.ts';
import { inputsGiving, plannedLayersUm } from '../../demo-data/inputs-giving.ts';
import { KEEPER, PEOPLE } from '../../demo-data/people.ts';
import { gaugesOn, GRADES, LAYERS, PLANT, PRODUCTS } from '../../demo-data/plant-records.ts';
import { PLANS } from '../../demo-data/plans.ts';
import type { Caller, PlantClient } from './plant-client.ts';

/** The one lot of the walk and all it is made of. */
export const LOT = 'L26-0001';
export const BATCH = 'P26-001';
export const FURNACE = 'F26-001';
export const COATING = 'C26-001';
const PIECES = 1000;

function caller(badge: string): Caller {
  const found = PEOPLE.find((each) => each.badge === badge);
  if (found === undefined) throw new Error(`nobody has the badge ${badge}`);
  return found;
}
export const LAB = caller('L-201');
export const INSPECTOR = caller('I-301');
export const ENGINEER = caller('Q-401');
const SECOND_ENGINEER = caller('Q-402');
const RELEASER = caller('R-501');
export const PACKER = caller('P-601');

/** Opens the invented plant over the door, as its keeper and engineers would. */
export async function openPlant(plant: PlantClient): Promise<void> {
  await plant.openPlant({ type: 'openPlant', plant: PLANT, keeper: { badge: KEEPER.badge, name: KEEPER.name, pin: KEEPER.pin } });
  const office = (command: Command): Promise<unknown> => plant.give(KEEPER, 'Office', command);
  for (const { badge, name, roles, pin } of PEOPLE) await office({ type: 'enrolPerson', badge, name, roles, pin });
  for (const gauge of gaugesOn(new Date().toISOString().slice(0, 10))) await office({ type: 'registerGauge', gauge });
  const desk = (command: Command): Promise<unknown> => plant.give(ENGINEER, 'Quality desk', command);
  for (const plan of PLANS) {
    await desk({ type: 'draftPlan', plan, why: 'First plan of the invented plant' });
    for (const engineer of [ENGINEER, SECOND_ENGINEER]) await plant.give(engineer, 'Quality desk', { type: 'approvePlan', plan: plan.id, planVersion: 1 }, true);
  }
  for (const grade of GRADES) await desk({ type: 'defineGrade', grade });
  for (const layer of LAYERS) await desk({ type: 'defineLayer', layer });
  for (const product of PRODUCTS) await desk({ type: 'defineProduct', product });
}

/** A value for the nth place: the target, spread evenly over a small part of the tolerance, so that every number on the certificate differs. */
function valueAt(target: number, lower: number | null, upper: number | null, decimals: number, ordinal: number, n: number): number {
  const width = (upper ?? target * 1.02) - (lower ?? target * 0.98);
  return Number((target + width * 0.12 * ((ordinal % 5) / 4 - 0.5) + (n > 1 ? (width * 0.02 * ordinal) / n : 0)).toFixed(decimals));
}
const GAUGES: Readonly<Record<string, string>> = { micrometer: 'MIC-11', balance: 'BAL-21', 'edge microscope': 'OPT-31', 'density balance': 'DEN-41', 'coercivity meter': 'COE-42', 'hardness tester': 'HAR-43', 'crater microscope': 'CRA-44' };

async function subjectOf(plant: PlantClient, by: Caller, stream: string): Promise<Subject> {
  return (await plant.json<{ state: Subject }>(by, `/api/travellers/${stream.replace(':', '/')}?tail=1`)).state;
}
/** The lot as the plant now shows it. */
export async function lotOf(plant: PlantClient): Promise<Lot> {
  const subject = await subjectOf(plant, INSPECTOR, `lot:${LOT}`);
  if (subject.kind !== 'lot') throw new Error(`${LOT} is no lot`);
  return subject;
}

/** Opens a gate and enters all it asks for; `found` are the nonconformities seen. */
async function workGate(plant: PlantClient, by: Caller, bench: string, stream: string, gate: string, found: readonly { readonly code: string; readonly pieces: number }[] = []): Promise<void> {
  const give = (command: Command): Promise<unknown> => plant.give(by, bench, command);
  await give({ type: 'openGate', subject: stream, gate });
  const works = (await subjectOf(plant, by, stream)).gates.find(({ id }) => id === gate)?.work ?? [];
  const weighing = works.find(({ demand }) => demand.basis.by === 'everyPiece');
  for (const work of works) if (work !== weighing) await enterAll(give, { subject: stream, gate }, work, works, weighing, found);
}

async function enterAll(give: (command: Command) => Promise<unknown>, at: { readonly subject: string; readonly gate: string }, { demand }: CharacteristicWork, works: readonly CharacteristicWork[], weighing: CharacteristicWork | undefined, found: readonly { readonly code: string; readonly pieces: number }[]): Promise<void> {
  const { characteristic, n, basis } = demand;
  const here = { ...at, characteristic: characteristic.id };
  if (basis.by === 'interval' && weighing !== undefined) return weighAndLook(give, at, weighing, here.characteristic, basis.looks, basis.everyPieces);
  if (characteristic.kind === 'counted') {
    for (const finding of found) if (characteristic.kinds.some(({ code }) => code === finding.code)) await give({ ...here, type: 'recordFinding', ...finding });
    await give({ ...here, type: 'completeSample', looked: n });
    return;
  }
  for (let ordinal = 1; ordinal <= n; ordinal += 1) {
    const reading = { ...here, type: 'takeReading' as const, ordinal };
    if (characteristic.kind === 'confirmed') { await give({ ...reading, value: true, despite: 'Read on the strip of the recorder' }); continue; }
    if (characteristic.kind === 'graded') { await give({ ...reading, value: characteristic.scale[ordinal % 2] ?? '' }); continue; }
    const { target, lower, upper, decimals, entry, gaugeKind } = characteristic;
    const gauge = gaugeKind === null ? {} : { gauge: GAUGES[gaugeKind] ?? '' };
    const value = valueAt(target ?? 0, lower, upper, decimals, ordinal, n);
    const inputs = inputsGiving(entry, value, { layersUm: plannedLayersUm(works, characteristic) });
    if (entry.how === 'craterLayer') continue;
    if (inputs !== null) await give({ ...reading, value: null, inputs, ...gauge });
    else await give({ ...reading, value, ...gauge });
  }
}

async function weighAndLook(give: (command: Command) => Promise<unknown>, at: { readonly subject: string; readonly gate: string }, weighing: CharacteristicWork, looking: string, looks: number, everyPieces: number): Promise<void> {
  const { characteristic, n } = weighing.demand;
  if (characteristic.kind !== 'measured') return;
  const { target, lower, upper } = characteristic;
  for (let look = 1, made = 0; look <= looks; look += 1) {
    const until = look === looks ? n : look * everyPieces;
    const values = Array.from({ length: until - made }, (_, index) => valueAt(target ?? 0, lower, upper, 3, index + look, 200));
    await give({ ...at, type: 'takeWeights', characteristic: characteristic.id, fromPiece: made + 1, values, gauge: 'BAL-21' });
    made = until;
    await give({ ...at, type: 'takeLook', characteristic: looking, look, found: 0 });
  }
}

async function dispose(plant: PlantClient, disposition: Extract<Command, { type: 'dispose' }>['disposition'], reason: string): Promise<void> {
  const hold = (await lotOf(plant)).holds.find(({ lifted }) => lifted === null);
  await plant.give(ENGINEER, 'Quality desk', { type: 'dispose', subject: `lot:${LOT}`, hold: hold?.id ?? '', disposition, reason }, true);
}

/** From the opened powder batch to the released lot, with one reject, a sort and a concession on the way. */
export async function walkToRelease(plant: PlantClient): Promise<void> {
  const stream = `lot:${LOT}`;
  await plant.give(LAB, 'Lab', { type: 'openBatch', batch: BATCH, grade: 'DEMO-F8', barrels: 12, kgPerBarrel: 100, rawLots: [{ rawLot: 'R26-001', material: 'Tungsten carbide', kg: 1098 }, { rawLot: 'R26-002', material: 'Cobalt', kg: 96 }] });
  await workGate(plant, LAB, 'Lab', `batch:${BATCH}`, 'powder-lab');
  await plant.give(LAB, 'Lab', { type: 'releaseBatch', batch: BATCH }, true);

  await plant.give(INSPECTOR, 'Press 2', { type: 'openLot', lot: LOT, product: 'CNMG-D1', batch: BATCH, quantity: PIECES, trayCapacity: 60, order: 'D-0001' });
  await workGate(plant, INSPECTOR, 'Press 2', stream, 'pressing');
  await plant.give(LAB, 'Lab', { type: 'openCharge', charge: FURNACE, kind: 'furnace', specification: 'DEMO-F8', programme: 'SINTER-07', equipment: 'Furnace 1', members: [{ lot: LOT, places: ['Top', 'Middle'] }] });
  await workGate(plant, LAB, 'Lab', `furnace:${FURNACE}`, 'sinter-check');
  await workGate(plant, INSPECTOR, 'Gauge room', stream, 'dimensions');
  await workGate(plant, INSPECTOR, 'Edge bench', stream, 'edge');
  await plant.give(LAB, 'Lab', { type: 'openCharge', charge: COATING, kind: 'coating', specification: 'DEMO-CVD', programme: 'COAT-03', equipment: 'Coater 2', members: [{ lot: LOT, places: ['Level 4'] }] });
  await workGate(plant, LAB, 'Lab', `coating:${COATING}`, 'coating-check');

  await workGate(plant, INSPECTOR, 'Final visual 1', stream, 'final-visual', [{ code: 'CH', pieces: 3 }, { code: 'ST', pieces: 2 }]);
  await dispose(plant, { kind: 'sort' }, 'Chips come from one tray; sorting is worth it');
  await plant.give(INSPECTOR, 'Final visual 1', { type: 'recordSort', lot: LOT, gate: 'final-visual', looked: remainingPieces((await lotOf(plant)).balance), removed: [{ code: 'CH', pieces: 19 }, { code: 'ST', pieces: 4 }] });
  await workGate(plant, INSPECTOR, 'Final visual 1', stream, 'final-visual', [{ code: 'ST', pieces: 1 }]);

  await workGate(plant, INSPECTOR, 'Marking', stream, 'marking', [{ code: 'OP', pieces: 1 }]);
  await dispose(plant, { kind: 'concession', statement: 'Marking up to 0.4 mm out of place, legible; no effect on use' }, 'Legible on every piece; agreed with the purchaser of this order');
  await plant.give(RELEASER, 'Release desk', { type: 'releaseLot', lot: LOT }, true);
}

/** Packs every piece, prints and reads back each label with what `readBack` decodes, and ships every box. Calls `label` with the first box's. */
export async function packAndShip(plant: PlantClient, readBack: (serial: string, png: Uint8Array) => Promise<string>): Promise<readonly string[]> {
  for (let lot = await lotOf(plant); remainingPieces(lot.balance) > 0; lot = await lotOf(plant)) {
    await plant.give(PACKER, 'Packing', { type: 'packBox', lot: LOT, pieces: Math.min(lot.product.piecesPerBox, remainingPieces(lot.balance)) });
  }
  const boxes = (await lotOf(plant)).boxes.map(({ serial }) => serial);
  for (const box of boxes) {
    await plant.give(PACKER, 'Packing', { type: 'printLabel', lot: LOT, box });
    const payload = await readBack(box, await plant.bytes(PACKER, `/api/lots/${LOT}/boxes/${box}/label.png`));
    await plant.give(PACKER, 'Packing', { type: 'readLabel', lot: LOT, box, payload });
  }
  for (const box of boxes) await plant.give(PACKER, 'Packing', { type: 'shipBox', lot: LOT, box, shipment: 'S26-001', order: 'D-0001', consignee: 'Invented Turning Shop' });
  return boxes;
}
