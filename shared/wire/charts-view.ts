import { z } from 'zod';
import { CHART_RULES, SUBJECT_KINDS } from '../traveller/index.ts';

/** One chart in the list: whose, of what, and how it stands. `provisional`: no limits are signed, so nothing is signalled. */
export const chartRowSchema = z.object({
  stream: z.string(), key: z.string(), subjectKind: z.enum(SUBJECT_KINDS), owner: z.string(), ownerName: z.string(), gate: z.string(), gateName: z.string(), characteristic: z.string(), characteristicName: z.string(),
  standing: z.enum(['provisional', 'inControl', 'signal']), mayHold: z.boolean(), lots: z.number(), lastAt: z.string().nullable(), signals: z.number(),
  lastSignal: z.object({ rule: z.enum(CHART_RULES), subject: z.string(), at: z.string() }).nullable(),
});
export type ChartRow = z.infer<typeof chartRowSchema>;
export const chartsSchema = z.object({ rows: z.array(chartRowSchema) });
/** Streams of subjects that have been judged at the gate a chart is about, the oldest first. */
export const chartLotsSchema = z.object({ lots: z.array(z.string()) });
