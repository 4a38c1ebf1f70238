import { z } from 'zod';
import { benchRowSchema } from './views.ts';

/** A lot of a plan that is still in the plant's hands, with the version it is inspected by. */
export const planLotRowSchema = benchRowSchema.pick({ id: true, title: true, standing: true, gateName: true }).extend({ planVersion: z.number() });
export type PlanLotRow = z.infer<typeof planLotRowSchema>;
export const planLotsSchema = z.object({ rows: z.array(planLotRowSchema) });
