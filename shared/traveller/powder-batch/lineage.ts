import type { Pen } from '../pen.ts';
import type { Batch } from './batch.ts';

/** The batches this one was blended of, those they were blended of, and so on; nearest first, each once. Empty for powder milled as one. */
export function ancestorsOf(pen: Pen, batch: Batch): readonly Batch[] {
  return walk(pen, batch, ({ blendedFrom }) => blendedFrom);
}

/** The blends that some of this batch went into, near or far; each once. */
export function blendsOf(pen: Pen, batch: Batch): readonly Batch[] {
  return walk(pen, batch, ({ blendedInto }) => blendedInto);
}

function walk(pen: Pen, batch: Batch, next: (batch: Batch) => Batch['blendedFrom']): readonly Batch[] {
  const found = new Map<string, Batch>();
  const toSee = next(batch).map((share) => share.batch);
  for (let id = toSee.shift(); id !== undefined; id = toSee.shift()) {
    if (found.has(id)) continue;
    const other = pen.batch(id);
    found.set(id, other);
    toSee.push(...next(other).map((share) => share.batch));
  }
  return [...found.values()];
}
