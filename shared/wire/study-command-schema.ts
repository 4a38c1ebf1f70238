import { z } from 'zod';
import { id, line, passage, place, positive, quantity } from './field-schemas.ts';

/** Gauge studies. */
export const studyCommandSchemas = [
  z.strictObject({
    type: z.literal('openStudy'), study: id, studyKind: z.enum(['crossed', 'bias', 'linearity']), gauge: id, characteristic: line(80), tolerance: positive.nullable(),
    plausible: z.strictObject({ least: quantity, most: quantity }), parts: z.array(z.strictObject({ label: line(24), reference: quantity.nullable() })).max(200), people: z.array(id).max(20), trials: z.int().min(1).max(100),
  }),
  z.strictObject({ type: z.literal('takeStudyReading'), study: id, part: place, value: quantity, sure: z.boolean().exactOptional() }),
  z.strictObject({ type: z.literal('correctStudyReading'), study: id, reading: place, value: quantity, reason: passage(), sure: z.boolean().exactOptional() }),
  z.strictObject({ type: z.literal('withdrawStudyReading'), study: id, reading: place, reason: passage() }),
  z.strictObject({ type: z.literal('closeStudy'), study: id, poolAbove: z.number().min(0).max(1), confidence: z.number().min(0.5).max(0.999) }),
  z.strictObject({ type: z.literal('abandonStudy'), study: id, reason: passage() }),
] as const;
