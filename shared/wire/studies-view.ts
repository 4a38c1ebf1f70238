import { z } from 'zod';

/** One gauge study in the list of studies. */
export const studyRowSchema = z.object({
  id: z.string(), stream: z.string(), studyKind: z.enum(['crossed', 'bias', 'linearity']), gauge: z.string(), gaugeName: z.string(), characteristic: z.string(), standing: z.enum(['open', 'closed', 'abandoned']),
  parts: z.number(), people: z.array(z.object({ badge: z.string(), name: z.string() })), trials: z.number(), taken: z.number().describe('readings that stand'), wanted: z.number(), openedAt: z.string(), closedAt: z.string().nullable(),
  percentOfStudy: z.number().nullable(), percentOfTolerance: z.number().nullable(), categories: z.number().nullable(),
});
export type StudyRow = z.infer<typeof studyRowSchema>;
export const studiesSchema = z.object({ rows: z.array(studyRowSchema) });
