import { isSubject, remainingPieces } from '../shared/traveller/index.ts';
import type { Disposition } from '../shared/traveller/index.ts';
import { blendedPowder } from './blends.ts';
import type { Chance } from './chance.ts';
import { attachLog, failedCharge, placed } from './charge-story.ts';
import { chanceFrom } from './chance.ts';
import { setUpCharts } from './charts.ts';
import type { DemoEntry } from './floor.ts';
import { Floor } from './floor.ts';
import { checkGauges } from './gauge-checks.ts';
import { studyGauges } from './gauge-studies.ts';
import { openThePlant } from './open-the-plant.ts';
import { KEEPER, PEOPLE } from './people.ts';
import type { DemoPerson } from './people.ts';
import { lotAtPretendPress } from './pretend-press.ts';
import { PRODUCTS } from './plant-records.ts';
import type { Quality } from './work-gate.ts';
import { workGate } from './work-gate.ts';

/** How far a lot of the story has come when the history ends. */
export type Stage = 'pressing' | 'pressingOpen' | 'furnace' | 'furnaceOpen' | 'dimensions' | 'dimensionsOpen' | 'edge' | 'coating' | 'finalVisual' | 'finalVisualHeld' | 'marking' | 'release' | 'packing' | 'shipped';
const ORDER: readonly Stage[] = ['pressing', 'pressingOpen', 'furnace', 'furnaceOpen', 'dimensions', 'dimensionsOpen', 'edge', 'coating', 'finalVisual', 'finalVisualHeld', 'marking', 'release', 'packing', 'shipped'];

/** Somebody of the invented plant by badge. @throws Error where the story names nobody */
export function person(badge: string): DemoPerson {
  const found = PEOPLE.find((each) => each.badge === badge);
  if (found === undefined) throw new Error(`nobody in the story has the badge ${badge}`);
  return found;
}

interface LotPlan { readonly id: string; readonly product: string; readonly quantity: number; readonly until: Stage; readonly quality: Quality; readonly fate: 'sort' | 'concession' | 'scrap' | 'rework' | null }
interface Story { readonly floor: Floor; readonly chance: Chance; shipments: number; charges: number }

/**
 * Six weeks of the invented plant, ending at `endIso`: about 60 lots, some rejected, one product switched to tightened at final visual,
 * and work waiting at every bench. The same seed and end give the same history, slip for slip.
 */
export function makeHistory({ seed, endIso }: { readonly seed: string; readonly endIso: string }): readonly DemoEntry[] {
  const start = new Date(Date.parse(endIso) - 43 * 86_400_000);
  start.setUTCHours(6, 0, 0, 0);
  const floor = new Floor(start.toISOString());
  const story: Story = { floor, chance: chanceFrom(seed), shipments: 0, charges: 0 };
  openThePlant(floor, endIso.slice(0, 10));
  let serial = 0;
  for (let week = 0; week < 6; week += 1) {
    for (const half of [0, 1]) {
      const fine = half === 0;
      floor.waitUntil(new Date(start.getTime() + (week * 7 + half * 3 + 1) * 86_400_000).toISOString());
      if (fine) checkGauges(floor, week);
      const batch = powderBatch(story, fine ? 'DEMO-F8' : 'DEMO-T10', week * 2 + half + 1, {});
      const lots = Array.from({ length: 5 }, (): LotPlan => {
        serial += 1;
        return lotPlan(story.chance, serial, productOf(serial, fine), week === 5);
      });
      runLots(story, batch, lots, endIso);
    }
    if (week === 3) setUpCharts(floor, person('Q-401'), subjectsOf(floor));
  }
  studyGauges(floor);
  floor.waitUntil(new Date(Date.parse(endIso) - 10 * 3_600_000).toISOString());
  openWork(story);
  return floor.entries;
}

/** Streams of everything with a traveller so far, in the order it was opened. */
function subjectsOf(floor: Floor): readonly string[] {
  return [...new Set(floor.entries.flatMap(({ changes }) => changes.map(({ stream }) => stream)))].filter(isSubject);
}

/** The serial numbers made as the second product of their grade; none of them is among the lots that go wrong. */
const SECOND_PRODUCT: readonly number[] = [2, 4, 8, 10, 14, 17, 20, 24, 27, 30, 33, 35, 38, 43, 53, 57, 60];
function productOf(serial: number, fine: boolean): string {
  const second = SECOND_PRODUCT.includes(serial);
  return fine ? (second ? 'SNMG-D3' : 'CNMG-D1') : second ? 'DCGT-D4' : 'TNMG-D2';
}

/** What befalls a lot; the numbers of the lots that go wrong are fixed, so that the story can be told. */
function lotPlan(chance: Chance, serial: number, product: string, lastWeek: boolean): LotPlan {
  const id = `L26-${String(400 + serial).padStart(4, '0')}`;
  const quantity = serial % 7 === 0 ? 480 : 1000;
  const minor = chance.whole(0, 3);
  const base: Quality = { found: minor === 0 ? [] : [{ code: chance.pick(['ST', 'HM', 'PT']), pieces: minor }] };
  // Two lots of TNMG-D2 among five in a row fail at final visual: the next one is inspected on tightened.
  if (serial === 46 || serial === 48) return { id, product, quantity: 1000, until: 'shipped', quality: { found: [{ code: 'CH', pieces: 3 }, { code: 'ST', pieces: 2 }] }, fate: 'sort' };
  if (serial === 12) return { id, product, quantity: 1000, until: 'shipped', quality: { found: [{ code: 'ST', pieces: 7 }] }, fate: 'concession' };
  if (serial === 23) return { id, product, quantity: 1000, until: 'shipped', quality: { found: [{ code: 'FL', pieces: 6 }] }, fate: 'scrap' };
  if (serial === 31) return { id, product, quantity: 1000, until: 'shipped', quality: { shift: { circle: 5 } }, fate: 'rework' };
  if (serial === 55) return { id, product, quantity: 1000, until: 'finalVisualHeld', quality: { found: [{ code: 'FL', pieces: 4 }, { code: 'ST', pieces: 1 }] }, fate: null };
  return { id, product, quantity, until: lastWeek ? STAGES_AT_THE_END[serial % STAGES_AT_THE_END.length] ?? 'shipped' : 'shipped', quality: base, fate: null };
}
const STAGES_AT_THE_END: readonly Stage[] = ['furnace', 'dimensions', 'edge', 'coating', 'release', 'finalVisualHeld', 'finalVisual', 'packing', 'marking', 'dimensionsOpen'];

function powderBatch(story: Story, grade: string, serial: number, quality: Quality): string {
  const { floor, chance } = story;
  const id = `P26-${String(100 + serial)}`;
  const lab = person(serial % 2 === 0 ? 'L-201' : 'L-202');
  floor.give(lab, 'Lab', { type: 'openBatch', batch: id, grade, barrels: 12, kgPerBarrel: 100, rawLots: [{ rawLot: `R26-${String(500 + serial)}`, material: 'Tungsten carbide', kg: 1098 }, { rawLot: `R26-${String(600 + Math.ceil(serial / 3))}`, material: 'Cobalt', kg: 96 }] });
  floor.wait(45);
  workGate(floor, chance, lab, `batch:${id}`, 'powder-lab', quality);
  floor.wait(20);
  floor.give(lab, 'Lab', { type: 'releaseBatch', batch: id });
  return id;
}

const reached = (plan: LotPlan, stage: Stage): boolean => ORDER.indexOf(plan.until) >= ORDER.indexOf(stage);

function runLots(story: Story, batch: string, plans: readonly LotPlan[], endIso: string): void {
  const { floor, chance } = story;
  const inspector = person('I-301');
  for (const plan of plans) {
    floor.wait(60);
    floor.give(inspector, 'Press 2', { type: 'openLot', lot: plan.id, product: plan.product, batch, quantity: plan.quantity, trayCapacity: 60, order: `D-${plan.id.slice(4)}` });
    workGate(floor, chance, inspector, `lot:${plan.id}`, 'pressing');
  }
  const fired = plans.filter((plan) => reached(plan, 'furnaceOpen'));
  charge(story, 'furnace', fired, {});
  for (const plan of fired) if (reached(plan, 'dimensionsOpen') && floorAndEdge(story, plan) === 'ended') continue;
  const coated = fired.filter((plan) => reached(plan, 'finalVisual') && floor.lot(plan.id).ended === null && floor.lot(plan.id).holds.every(({ lifted }) => lifted !== null));
  charge(story, 'coating', coated, {});
  for (const plan of coated) finish(story, plan, endIso);
}

/** Puts lots into one charge and lets the lab work it. */
function charge(story: Story, kind: 'furnace' | 'coating', plans: readonly LotPlan[], quality: Quality): void {
  if (plans.length === 0) return;
  const { floor, chance } = story;
  story.charges += 1;
  const id = `${kind === 'furnace' ? 'F' : 'C'}26-${String(200 + story.charges)}`;
  const lab = person('L-201');
  const product = PRODUCTS.find((each) => each.id === plans[0]?.product);
  floor.wait(90);
  floor.give(lab, 'Lab', {
    type: 'openCharge', charge: id, kind, specification: (kind === 'furnace' ? product?.grade : product?.layer) ?? '', programme: kind === 'furnace' ? 'SINTER-07' : 'COAT-03', ...placed(kind, plans.map((plan) => plan.id)),
  });
  floor.wait(kind === 'furnace' ? 13 * 60 : 9 * 60);
  if (kind === 'furnace') attachLog(floor, lab, id);
  workGate(floor, chance, lab, `${kind}:${id}`, kind === 'furnace' ? 'sinter-check' : 'coating-check', quality);
}

function floorAndEdge(story: Story, plan: LotPlan): 'on' | 'ended' {
  const { floor, chance } = story;
  const gauge = person('I-302');
  floor.wait(30);
  const rework = plan.fate === 'rework';
  const left = plan.until === 'dimensionsOpen';
  const accepted = workGate(floor, chance, gauge, `lot:${plan.id}`, 'dimensions', { ...(rework ? plan.quality : {}), leaveOpen: left });
  if (left) return 'ended';
  if (accepted === false) {
    dispose(story, plan, 'dimensions', { kind: 'rework', instruction: 'Regrind the inscribed circle to the middle of its tolerance' }, 'Inscribed circle lies high, wheel was not dressed');
    floor.wait(240);
    workGate(floor, chance, gauge, `lot:${plan.id}`, 'dimensions');
  }
  if (!reached(plan, 'coating')) return 'ended';
  floor.wait(30);
  workGate(floor, chance, gauge, `lot:${plan.id}`, 'edge');
  return 'on';
}

function finish(story: Story, plan: LotPlan, endIso: string): void {
  const { floor, chance } = story;
  const inspector = person(plan.fate === null ? 'I-303' : 'I-301');
  const stream = `lot:${plan.id}`;
  if (!reached(plan, 'finalVisualHeld')) return;
  floor.wait(30);
  const accepted = workGate(floor, chance, inspector, stream, 'final-visual', plan.fate === 'rework' ? {} : plan.quality);
  if (plan.until === 'finalVisualHeld') return;
  if (accepted === false && afterReject(story, plan, inspector) === 'ended') return;
  if (!reached(plan, 'release')) return;
  floor.wait(25);
  workGate(floor, chance, person('I-302'), stream, 'marking');
  if (!reached(plan, 'packing')) return;
  floor.wait(40);
  floor.give(person('R-501'), 'Release desk', { type: 'releaseLot', lot: plan.id });
  if (!reached(plan, 'shipped') || floor.now > endIso) return;
  packAndShip(story, plan);
}

function afterReject(story: Story, plan: LotPlan, inspector: DemoPerson): 'on' | 'ended' {
  const { floor, chance } = story;
  const gate = 'final-visual';
  const stream = `lot:${plan.id}`;
  floor.wait(35);
  switch (plan.fate) {
    case 'concession':
      dispose(story, plan, gate, { kind: 'concession', statement: 'Stains off the cutting edge up to 7 in the sample of 80; no effect on use' }, 'Looks only; agreed with the purchaser of this order');
      return 'on';
    case 'scrap':
      dispose(story, plan, gate, { kind: 'scrap' }, 'Coating flaked on the cutting edge');
      return 'ended';
    default:
      dispose(story, plan, gate, { kind: 'sort' }, 'Chips come from one tray; sorting is worth it');
      floor.wait(180);
      floor.give(inspector, 'Final visual 1', { type: 'recordSort', lot: plan.id, gate, looked: remainingPieces(floor.lot(plan.id).balance), removed: [{ code: 'CH', pieces: 21 }, { code: 'ST', pieces: 4 }] });
      floor.wait(30);
      workGate(floor, chance, inspector, stream, gate, { found: [{ code: 'ST', pieces: 1 }] });
      return 'on';
  }
}

function dispose(story: Story, plan: LotPlan, gate: string, disposition: Disposition, reason: string): void {
  const hold = story.floor.lot(plan.id).holds.find(({ lifted, cause }) => lifted === null && cause.by === 'verdict' && cause.gate === gate);
  story.floor.wait(50);
  story.floor.give(person('Q-401'), 'Quality desk', { type: 'dispose', subject: `lot:${plan.id}`, hold: hold?.id ?? '', disposition, reason });
}

/** Packs the lot's boxes. A lot of 1,000 gives some 97 boxes: the story packs and ships all of them. */
function packAndShip(story: Story, plan: LotPlan): void {
  const { floor } = story;
  const packer = person('P-601');
  story.shipments += 1;
  const shipment = `S26-${String(story.shipments).padStart(3, '0')}`;
  const consignee = ['Invented Turning Shop', 'Invented Valve Works', 'Invented Gear Company'][story.shipments % 3] ?? '';
  floor.wait(60);
  while (remainingPieces(floor.lot(plan.id).balance) > 0) {
    const lot = floor.lot(plan.id);
    floor.give(packer, 'Packing', { type: 'packBox', lot: plan.id, pieces: Math.min(lot.product.piecesPerBox, remainingPieces(lot.balance)) });
    const box = floor.lot(plan.id).boxes.at(-1)?.serial ?? '';
    floor.wait(0.3);
    floor.give(packer, 'Packing', { type: 'printLabel', lot: plan.id, box });
    floor.wait(0.2);
    floor.give(packer, 'Packing', { type: 'readLabel', lot: plan.id, box, payload: floor.lot(plan.id).boxes.at(-1)?.payload ?? '' });
  }
  floor.wait(120);
  for (const { serial } of floor.lot(plan.id).boxes) floor.give(packer, 'Packing', { type: 'shipBox', lot: plan.id, box: serial, shipment, order: floor.lot(plan.id).order ?? '', consignee });
}

/** What lies on the benches when a visitor comes: a powder batch in the lab, one fresh lot at the press, one on hold by hand. */
function openWork(story: Story): void {
  const { floor, chance } = story;
  const batch = powderBatch(story, 'DEMO-F8', 21, {});
  floor.wait(20);
  floor.give(person('I-301'), 'Press 2', { type: 'openLot', lot: 'L26-0470', product: 'CNMG-D1', batch, quantity: 1000, trayCapacity: 60, order: 'D-0470' });
  floor.wait(10);
  floor.give(person('L-202'), 'Lab', { type: 'openBatch', batch: 'P26-122', grade: 'DEMO-T10', barrels: 12, kgPerBarrel: 100, rawLots: [{ rawLot: 'R26-522', material: 'Tungsten carbide', kg: 1080 }, { rawLot: 'R26-608', material: 'Cobalt', kg: 120 }] });
  floor.wait(5);
  for (const id of ['L26-0471', 'L26-0472', 'L26-0473', 'L26-0474', 'L26-0475', 'L26-0476']) {
    floor.give(person('I-301'), 'Press 2', { type: 'openLot', lot: id, product: 'CNMG-D1', batch, quantity: 480, trayCapacity: 60, order: `D-${id.slice(4)}` });
    workGate(floor, chance, person('I-301'), `lot:${id}`, 'pressing');
  }
  blendedPowder(floor, chance, person('L-201'), person('I-301'), ['P26-109', 'P26-111']);
  floor.give(person('L-201'), 'Lab', { type: 'openCharge', charge: 'F26-290', kind: 'furnace', specification: 'DEMO-F8', programme: 'SINTER-07', ...placed('furnace', ['L26-0471', 'L26-0472', 'L26-0473']) });
  failedCharge(story, person('L-202'), 'F26-291', ['L26-0474', 'L26-0475', 'L26-0476']);
  lotAtPretendPress(floor, { keeper: KEEPER, inspector: person('I-301') }, 'P26-112');
  floor.wait(10);
}
