import type { AnyState, Batch, ProductCard } from '../../../shared/traveller/index.ts';
import { link } from '../../link/index.ts';

/** What a batch's targets are worked out from: the batches it was blended of, near and far, and the products of its grade. */
export interface PowderLine { readonly parts: ReadonlyMap<string, Batch>; readonly products: readonly ProductCard[] }

/** A batch as it stands. @throws LinkFault */
export async function readBatch(id: string): Promise<Batch | null> {
  const { state } = await link.ask<{ readonly state: AnyState | null }>(`/api/states?stream=${encodeURIComponent(`batch:${id}`)}`);
  return state?.kind === 'batch' ? state : null;
}

/** The parts of a blend, the parts of its parts, and so on. @throws LinkFault */
export async function readParts(batch: Pick<Batch, 'blendedFrom'>): Promise<ReadonlyMap<string, Batch>> {
  const parts = new Map<string, Batch>();
  for (let wanted = batch.blendedFrom.map((share) => share.batch); wanted.length > 0; ) {
    const read = await Promise.all([...new Set(wanted)].filter((id) => !parts.has(id)).map(readBatch));
    const found = read.filter((part) => part !== null);
    for (const part of found) parts.set(part.id, part);
    wanted = found.flatMap(({ blendedFrom }) => blendedFrom.map((share) => share.batch)).filter((id) => !parts.has(id));
  }
  return parts;
}

/** All that the targets of a batch rest on beside itself. @throws LinkFault */
export async function readPowderLine(batch: Batch): Promise<PowderLine> {
  const [parts, { products }] = await Promise.all([readParts(batch), link.ask<{ readonly products: readonly ProductCard[] }>('/api/catalogue')]);
  return { parts, products: products.filter(({ grade }) => grade === batch.grade.id) };
}
