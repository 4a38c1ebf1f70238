import type { Lot } from '../../shared/traveller/index.ts';
import { standingHolds } from '../../shared/traveller/index.ts';
import { labelSizes, type BoxLabelData, type LabelChoice, type LabelSize, type PrinterDpi } from '../documents/label/index.ts';
import { malformed, notFound, refused, type Answer } from './answer.ts';
import type { Plant } from './plant.ts';

/** What the label of a box says, or the answer why it may not be shown. A preview may be seen before the first print. */
export async function labelOf({ door, records }: Plant, id: string, serial: string, isPreview: boolean): Promise<BoxLabelData | Answer> {
  const { state: lot } = await door.states.fresh(`lot:${id}`);
  if (lot?.kind !== 'lot') return notFound('lot', id);
  const why = whyNotReleased(lot);
  if (why !== null) return refused({ code: 'notReleased', lot: id, why });
  const box = lot.boxes.find((each) => each.serial === serial);
  if (box === undefined) return notFound('box', serial);
  if (box.voided !== null) return refused({ code: 'boxIsGone', box: serial, why: 'voided' });
  if (box.copies === 0 && !isPreview) return refused({ code: 'labelNotPrinted', box: serial });
  const plant = records.plant();
  const { state: batch } = await door.states.fresh(`batch:${lot.batch}`);
  const layer = lot.product.layer === null ? null : (await door.states.fresh(`layer:${lot.product.layer}`)).state;
  return {
    plant: plant?.name ?? '', designation: lot.product.designation, item: lot.product.itemCode, grade: batch?.kind === 'batch' ? batch.grade.name : lot.product.grade,
    coating: layer?.kind === 'layer' ? layer.card.name : lot.product.layer, quantity: box.pieces, lot: lot.id, boxSerial: box.serial, packedOn: box.packedAt.slice(0, 10),
    certificateNumber: lot.release?.certificate ?? null, ...(plant === null ? {} : { country: plant.country }), reprint: Math.max(0, box.copies - 1), demo: lot.demo,
  };
}

function whyNotReleased(lot: Lot): 'never' | 'withdrawn' | 'held' | null {
  if (lot.release === null) return 'never';
  if (lot.release.withdrawn !== null) return 'withdrawn';
  return standingHolds(lot).length > 0 ? 'held' : null;
}

/** Size and resolution asked for, or the answer that they are none of ours. */
export function labelChoice(query: URLSearchParams): Pick<LabelChoice, 'size' | 'dpi'> | Answer {
  const sizes = Object.keys(labelSizes);
  const size = query.get('size') ?? '100x50';
  const dpi = query.get('dpi') ?? '203';
  if (!isSize(size)) return malformed('size', `must be one of: ${sizes.join(', ')}`);
  if (dpi !== '203' && dpi !== '300') return malformed('dpi', 'must be one of: 203, 300');
  const resolution: PrinterDpi = dpi === '203' ? 203 : 300;
  return { size, dpi: resolution };
}

function isSize(size: string): size is LabelSize {
  return Object.keys(labelSizes).includes(size);
}
