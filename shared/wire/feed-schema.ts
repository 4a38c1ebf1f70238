import { z } from 'zod';
import { place, positive } from './field-schemas.ts';

/** Most weights of one message: 40 minutes of a press at two a second. */
export const MOST_FED = 5000;

/** A batch of weights as a press's balance sends it: numbered from `fromSeq` in its own count, in grams or whatever the gate asks for. */
export const feedBatchSchema = z.strictObject({
  fromSeq: place,
  values: z.array(positive).min(1).max(MOST_FED),
  /** The weights between the last one taken and these are lost for good. */
  lost: z.boolean().exactOptional(),
  /** Written at once, without waiting for a block to fill. */
  now: z.boolean().exactOptional(),
});
export type FeedBatch = z.infer<typeof feedBatchSchema>;

/** What became of a batch. Only what is stored is safe: a sender keeps everything above that number. */
export const feedAnswerSchema = z.object({
  ok: z.literal(true),
  stored: z.number().nullable().describe('last number that is durable; null where none is'),
  held: z.number().nullable().describe('last number taken into memory and not yet durable; null where nothing waits'),
  next: z.number().nullable().describe('number that comes next; null where any may begin'),
});
export type FeedAnswer = z.infer<typeof feedAnswerSchema>;
