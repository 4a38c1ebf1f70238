import { z } from 'zod';
import { count, id, line, passage, place, typed } from './field-schemas.ts';

const box = { lot: id, box: id };
/** The code as a scanner gave it: the separators of ISO/IEC 15434 are control characters and belong to it. */
const payload = z.string().min(1).max(500);

/** What only an insert lot knows: opening, sorting, splitting, release, boxes. */
export const lotCommandSchemas = [
  z.strictObject({ type: z.literal('openLot'), lot: id, product: id, batch: id, quantity: count, trayCapacity: z.int().min(1).max(10_000), order: line(60).exactOptional() }),
  z.strictObject({ type: z.literal('recordSort'), lot: id, gate: id, looked: count, removed: z.array(z.strictObject({ code: id, pieces: count })).max(60) }),
  z.strictObject({ type: z.literal('destroyPieces'), lot: id, pieces: count, reason: passage() }),
  z.strictObject({ type: z.literal('scrapPieces'), lot: id, pieces: count, reason: passage() }),
  z.strictObject({ type: z.literal('splitLot'), lot: id, into: id, pieces: count, reason: passage() }),
  z.strictObject({ type: z.literal('releaseLot'), lot: id }),
  z.strictObject({ type: z.literal('withdrawRelease'), lot: id, reason: passage() }),
  z.strictObject({ type: z.literal('packBox'), lot: id, pieces: count }),
  z.strictObject({ type: z.literal('printLabel'), ...box, reason: passage().exactOptional() }),
  z.strictObject({ type: z.literal('readLabel'), ...box, payload }),
  z.strictObject({ type: z.literal('voidBox'), ...box, reason: passage() }),
  z.strictObject({ type: z.literal('shipBox'), ...box, shipment: typed(40), order: typed(60), consignee: typed(100) }),
  z.strictObject({ type: z.literal('moveLotToPlan'), lot: id, planVersion: place, reason: passage() }),
] as const;
