import { z } from 'zod';
import { certificateReason, count, id, line, passage, place, positive, notNegative, quantity, saturationUnit, stream } from './field-schemas.ts';

const at = { subject: stream, gate: id, characteristic: id };
/** A number, a rating, or yes/no; null where `inputs` give the value. */
const value = z.union([quantity, z.string().max(100), z.boolean(), z.null()], { error: 'must be a finite number, a rating of at most 100 characters, true or false, or null' });
const inputs = z.union([
  z.strictObject({ outerMm: positive, innerMm: notNegative }), z.strictObject({ diametersMm: z.array(notNegative).min(2).max(13) }), z.strictObject({ sinteredMm: positive, greenMm: positive.exactOptional() }),
  z.strictObject({ massInAirG: positive, massInWaterG: notNegative, waterTemperatureC: quantity }), z.strictObject({ saturation: notNegative, unit: saturationUnit }),
], { error: 'must be `outerMm` with `innerMm`, `diametersMm`, `sinteredMm` (with `greenMm` where that is read), `massInAirG` with `massInWaterG` and `waterTemperatureC`, or `saturation` with `unit`' });
const someMembers = z.strictObject({ lots: z.array(id).max(200), rest: z.discriminatedUnion('by', [z.strictObject({ by: z.literal('retest') }), z.strictObject({ by: z.literal('concession'), statement: passage() })]) });
const disposition = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('sort') }),
  z.strictObject({ kind: z.literal('rework'), instruction: passage() }),
  z.strictObject({ kind: z.literal('retest') }),
  z.strictObject({ kind: z.literal('reSinter'), some: someMembers.exactOptional() }),
  z.strictObject({ kind: z.literal('recoat'), some: someMembers.exactOptional() }),
  z.strictObject({ kind: z.literal('concession'), statement: passage() }),
  z.strictObject({ kind: z.literal('regrade'), toProduct: id }),
  z.strictObject({ kind: z.literal('scrap') }),
  z.strictObject({ kind: z.literal('return'), to: line(100) }),
  z.strictObject({ kind: z.literal('clear') }),
]);

/** Work at a gate, holds and notes, on whichever subject. */
export const gateCommandSchemas = [
  z.strictObject({ type: z.literal('openGate'), subject: stream, gate: id }),
  z.strictObject({ type: z.literal('takeReading'), ...at, ordinal: count, value, inputs: inputs.exactOptional(), gauge: id.exactOptional(), sure: z.boolean().exactOptional(), despite: certificateReason.exactOptional() }),
  z.strictObject({ type: z.literal('takeWeights'), ...at, fromPiece: count, values: z.array(quantity).min(1).max(5000), gauge: id.exactOptional() }),
  z.strictObject({ type: z.literal('recordFinding'), ...at, code: id, pieces: count, ordinals: z.array(count).max(5000).exactOptional() }),
  z.strictObject({ type: z.literal('withdrawFinding'), ...at, finding: place, reason: certificateReason }),
  z.strictObject({ type: z.literal('takeLook'), ...at, look: count, found: count, code: id.exactOptional() }),
  z.strictObject({ type: z.literal('completeSample'), ...at, looked: count }),
  z.strictObject({ type: z.literal('correctReading'), ...at, ordinal: count, value, inputs: inputs.exactOptional(), gauge: id.exactOptional(), reason: certificateReason, sure: z.boolean().exactOptional() }),
  z.strictObject({ type: z.literal('hold'), subject: stream, reason: passage() }),
  z.strictObject({ type: z.literal('dispose'), subject: stream, hold: id, disposition, reason: passage() }),
  z.strictObject({ type: z.literal('addNote'), subject: stream, text: passage() }),
] as const;
