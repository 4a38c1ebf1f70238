import { z } from 'zod';

const no = z.object({ ok: z.literal(false), refusal: z.looseObject({ code: z.string() }), words: z.object({ happened: z.string(), kept: z.string(), next: z.string() }) });

/** One press as its desk shows it. */
export const pressRowSchema = z.object({
  id: z.string(), name: z.string(), bench: z.string(), balance: z.string(),
  balanceStanding: z.enum(['counts', 'overdue', 'withdrawn', 'outOfTolerance', 'unknown']).describe('whether what the balance weighs counts today'),
  lot: z.string().nullable().describe('null while the press stands'), since: z.string().nullable(),
  gateName: z.string().nullable(), gateStatus: z.string().nullable(), onHold: z.boolean(),
  unit: z.string(), decimals: z.number(), target: z.number().nullable(), lower: z.number().nullable(), upper: z.number().nullable(),
  pieces: z.number(), lotSize: z.number(), mean: z.number().nullable(), s: z.number().nullable(), least: z.number().nullable(), most: z.number().nullable(),
  pp: z.number().nullable(), ppk: z.number().nullable(), outside: z.number(), missing: z.number(),
  last: z.array(z.number()).describe('the newest weights, 50 at most, written or not'),
  waiting: z.number().describe('weights in memory, not yet written'), lastAt: z.string().nullable().describe('when the newest weight came; null where none has'),
  drift: z.object({
    state: z.enum(['unwatched', 'learning', 'steady', 'drifting']), side: z.enum(['above', 'below']).nullable(), since: z.number().nullable().describe('piece'),
    ewma: z.number().nullable(), predicted: z.object({ piece: z.number(), from: z.number(), to: z.number().nullable() }).nullable(),
  }),
  look: z.object({ look: z.number(), dueAt: z.number(), dueTime: z.string().nullable(), dueSince: z.string().nullable() }).nullable(), missedLooks: z.number(),
  no: no.nullable().describe('why the last batch was not taken'),
});
export type PressRow = z.infer<typeof pressRowSchema>;
export const pressesSchema = z.object({ rows: z.array(pressRowSchema), now: z.string() });
export type Presses = z.infer<typeof pressesSchema>;

/** A press's token, shown once. */
export const pressTokenSchema = z.object({ press: z.string(), token: z.string() });
