import { z } from 'zod';
import { gaugeSchema } from './record-command-schema.ts';
import { benchRowSchema } from './views.ts';

const subjectKind = z.enum(['lot', 'batch', 'furnace', 'coating']);
const moment = z.string().describe('ISO 8601, UTC');

/** A gauge as the lists show it. */
export const gaugeRowSchema = z.object({
  ...gaugeSchema.shape, withdrawn: z.string().nullable().describe('why, where it may be used no longer'),
  outOfTolerance: z.string().nullable().describe('the recall that stopped it'), lastGoodAt: moment.nullable().describe('the last check or calibration that found it good'),
  openRecalls: z.number().describe('recalls not yet closed'),
});

/** What a gauge has measured of one subject. A block of weights is one reading of several pieces. */
export const gaugeUseRowSchema = z.object({ stream: z.string(), kind: subjectKind, id: z.string(), title: z.string(), readings: z.number(), pieces: z.number(), firstAt: moment, lastAt: moment });
export type GaugeUseRow = z.infer<typeof gaugeUseRowSchema>;

export const gaugeUsesSchema = z.object({ rows: z.array(gaugeUseRowSchema), readings: z.number(), subjects: z.number() });
export type GaugeUses = z.infer<typeof gaugeUsesSchema>;

/** One subject that a recall puts in doubt. */
export const recallRowSchema = gaugeUseRowSchema.extend({
  measuredAgain: z.number().describe('of its readings, those corrected with another gauge since'),
  through: z.string().nullable().describe('stream it rests on, where the gauge did not read it itself'),
  standing: benchRowSchema.shape.standing, here: z.boolean().describe('something of it is still in the plant'), heldForThis: z.boolean(),
  certificate: z.string().nullable().describe('of the release that stands'),
  shipped: z.array(z.object({ shipment: z.string(), order: z.string(), consignee: z.string(), boxes: z.number(), pieces: z.number() })),
});
export type RecallRow = z.infer<typeof recallRowSchema>;
const recall = z.object({
  id: z.string(), found: z.enum(['check', 'calibration']), openedAt: moment, openedBy: z.string(), since: moment.nullable().describe('null: no good check is known'), error: z.number(), allowedError: z.number(),
  held: z.array(z.object({ subject: z.string(), hold: z.string() })), closed: z.object({ at: moment, by: z.string(), reason: z.string() }).nullable(),
});
export const recallViewSchema = z.object({ gauge: gaugeSchema, recall, rows: z.array(recallRowSchema), readings: z.number(), names: z.record(z.string(), z.string()) });
export type RecallView = z.infer<typeof recallViewSchema>;

/** One reading, or one block of weights, that a recall puts in doubt, and how it would have been judged by itself. */
export const recalledReadingSchema = z.object({
  stream: z.string(), version: z.number(), at: moment, gate: z.string(), characteristic: z.string(), unit: z.string(), decimals: z.number(), ordinal: z.number(), pieces: z.number(),
  value: z.number().nullable().describe('null for a block'), acceptedAsRead: z.number().nullable().describe('pieces; null where it cannot be said'), acceptedWithError: z.number().nullable(), again: z.string().nullable().describe('gauge it was measured again with'),
});
export type RecalledReading = z.infer<typeof recalledReadingSchema>;
export const recalledReadingsSchema = z.object({ rows: z.array(recalledReadingSchema), total: z.number() });
export type RecalledReadings = z.infer<typeof recalledReadingsSchema>;

/** A process as its last lots show it; mean and s null where nothing of it was measured yet. */
export const processSchema = z.object({ lots: z.array(z.string()), n: z.number(), mean: z.number().nullable(), s: z.number().nullable() });
export type ProcessSeen = z.infer<typeof processSchema>;
