import { expect, someone } from './plant.ts';
import type { Kiosk, Story } from './plant.ts';

/** A lot of a story: its number, its pieces, and the product it is to become. */
export interface StoryLot { readonly id: string; readonly pieces?: number; readonly product?: 'CNMG-D1' | 'TNMG-D2' }
type Stage = 'press' | 'furnace' | 'dimensions' | 'edge' | 'coating' | 'final-visual' | 'marking' | 'release' | 'packing';
const STAGES: readonly Stage[] = ['press', 'furnace', 'dimensions', 'edge', 'coating', 'final-visual', 'marking', 'release', 'packing'];

/** Brings lots of one product so far that this is what waits for them next; everything before it was accepted at the first go. */
export function lotsWaitingFor(story: Story, stage: Stage, lots: readonly StoryLot[]): void {
  const { floor, gate } = story;
  const product = lots[0]?.product ?? 'CNMG-D1';
  const reached = (other: Stage): boolean => STAGES.indexOf(stage) > STAGES.indexOf(other);
  const batch = powderFor(story, product);
  const furnace = floor.state(`furnace:F26-90${product.slice(-1)}`) === null ? `F26-90${product.slice(-1)}` : `F26-95${product.slice(-1)}`;
  for (const { id, pieces = 1000 } of lots) {
    floor.give(someone('I-301'), 'Press 2', { type: 'openLot', lot: id, product, batch, quantity: pieces, trayCapacity: 60, order: `D-${id.slice(4)}` });
    if (reached('press')) gate('I-301', `lot:${id}`, 'pressing');
  }
  if (reached('furnace')) chargeOf(story, 'furnace', furnace, product, lots);
  for (const { id } of lots) {
    if (reached('dimensions')) gate('I-302', `lot:${id}`, 'dimensions');
    if (reached('edge')) gate('I-302', `lot:${id}`, 'edge');
  }
  if (reached('coating')) chargeOf(story, 'coating', furnace.replace('F', 'C'), product, lots);
  for (const { id } of lots) {
    if (reached('final-visual')) gate('I-303', `lot:${id}`, 'final-visual');
    if (reached('marking')) gate('I-302', `lot:${id}`, 'marking');
    if (reached('release')) floor.give(someone('R-501'), 'Release desk', { type: 'releaseLot', lot: id });
  }
}

/** Packs, prints and reads back so many boxes of a released lot. */
export function boxesOf({ floor }: Story, lot: string, boxes: number): void {
  const packer = someone('P-601');
  for (let packed = 0; packed < boxes; packed += 1) {
    floor.give(packer, 'Packing', { type: 'packBox', lot, pieces: 10 });
    const box = floor.lot(lot).boxes.at(-1)?.serial ?? '';
    floor.give(packer, 'Packing', { type: 'printLabel', lot, box });
    floor.give(packer, 'Packing', { type: 'readLabel', lot, box, payload: floor.lot(lot).boxes.at(-1)?.payload ?? '' });
  }
}

function powderFor({ floor, gate }: Story, product: string): string {
  const [batch, grade] = product === 'CNMG-D1' ? ['P26-180', 'DEMO-F8'] : ['P26-181', 'DEMO-T10'];
  if (floor.state(`batch:${batch}`) !== null) return batch;
  floor.give(someone('L-201'), 'Lab', { type: 'openBatch', batch, grade, barrels: 12, kgPerBarrel: 100, rawLots: [{ rawLot: 'R26-510', material: 'Tungsten carbide', kg: 1098 }, { rawLot: 'R26-611', material: 'Cobalt', kg: 96 }] });
  gate('L-201', `batch:${batch}`, 'powder-lab');
  floor.give(someone('L-201'), 'Lab', { type: 'releaseBatch', batch });
  return batch;
}

function chargeOf({ floor, gate }: Story, kind: 'furnace' | 'coating', charge: string, product: string, lots: readonly StoryLot[]): void {
  const specification = kind === 'furnace' ? (product === 'CNMG-D1' ? 'DEMO-F8' : 'DEMO-T10') : product === 'CNMG-D1' ? 'DEMO-CVD' : 'DEMO-PVD';
  const placeOf = (at: number): string => (kind === 'furnace' ? ['Top', 'Middle', 'Bottom'][at % 3] ?? 'Top' : `Level ${1 + (at % 5)}`);
  floor.give(someone('L-201'), 'Lab', {
    type: 'openCharge', charge, kind, specification, programme: kind === 'furnace' ? 'SINTER-07' : 'COAT-03', equipment: kind === 'furnace' ? 'Furnace 1' : 'Coater 2',
    members: lots.map(({ id }, at) => ({ lot: id, places: [placeOf(at)] })),
  });
  gate('L-201', `${kind}:${charge}`, kind === 'furnace' ? 'sinter-check' : 'coating-check');
}

/** One slip as the public door gives it. */
export interface ToldSlip { readonly version: number; readonly by: string; readonly body: { readonly type: string } & Readonly<Record<string, unknown>> }

/** The whole thread of a lot, read over the public door by whoever is signed on at the kiosk. */
export async function threadOf({ page }: Kiosk, lot: string): Promise<readonly ToldSlip[]> {
  const reply = await page.request.get(`/api/travellers/lot/${lot}/traveller.json`);
  expect(reply.status()).toBe(200);
  return ((await reply.json()) as { slips: readonly ToldSlip[] }).slips;
}
