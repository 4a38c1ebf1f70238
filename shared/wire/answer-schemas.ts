import { z } from 'zod';
import { equipmentSchema, programmeSchema } from './charge-command-schema.ts';
import { gradeSchema, layerSchema, productSchema } from './record-command-schema.ts';
import { gaugeRowSchema } from './gauge-views.ts';
import { REFUSAL_STATUS } from './refusal-status.ts';
import { benchRowSchema, personRowSchema, searchHitSchema, stampedSlipSchema, skipRowSchema, switchingRowSchema } from './views.ts';

/** Shapes of the answers, for the description of the interface. Folded states are told by their kind and grow with the traveller. */
const state = z.looseObject({ kind: z.string(), stream: z.string(), version: z.number() });
const told = z.object({ happened: z.string(), kept: z.string(), next: z.string() });

/** Every "no": what a program goes by, and what a person reads. */
export const refusedSchema = z.object({ ok: z.literal(false), refusal: z.looseObject({ code: z.enum(Object.keys(REFUSAL_STATUS)) }), words: told });
export const writtenSchema = z.object({ ok: z.literal(true), slips: z.array(stampedSlipSchema), repeated: z.boolean().describe('true when the same clientId was answered before: the same slips, written once') });

export const plantSchema = z.object({
  opened: z.boolean(), plant: z.object({ name: z.string(), address: z.string(), country: z.string(), demo: z.boolean() }).nullable(),
  demoPeople: z.array(z.object({ badge: z.string(), pin: z.string(), name: z.string(), roles: z.array(z.string()) })).nullable().describe('only in plants that say of themselves that they are invented'),
  benches: z.array(z.string()),
});
export const travellerSchema = z.object({ state, slips: z.array(stampedSlipSchema).describe('the last ones, ascending'), names: z.record(z.string(), z.string()).describe('people by badge') });
export const slipsSchema = z.object({ slips: z.array(stampedSlipSchema) });
export const stateAnswerSchema = z.object({ state: state.nullable() });
export const rowsSchema = z.object({ rows: z.array(benchRowSchema) });
export const switchingRowsSchema = z.object({ rows: z.array(switchingRowSchema), skips: z.array(skipRowSchema) });
export const peopleSchema = z.object({ people: z.array(personRowSchema) });
export const hitsSchema = z.object({ hits: z.array(searchHitSchema) });
export const catalogueAnswerSchema = z.object({
  products: z.array(productSchema), grades: z.array(gradeSchema), layers: z.array(layerSchema),
  plans: z.array(z.object({
    id: z.string(), name: z.string(), appliesTo: z.string(), versions: z.array(z.object({ planVersion: z.number(), inForce: z.boolean(), approvals: z.number(), why: z.string() })),
  })),
  equipment: z.array(equipmentSchema), programmes: z.array(programmeSchema),
  gauges: z.array(gaugeRowSchema),
});
export const handInSchema = z.object({ text: z.string().describe('CSV of a furnace log') });
export const handedInSchema = z.object({ digest: z.string().describe('SHA-256 of the file, hexadecimal'), bytes: z.number() });
/** Where the journal's chain was checked; more fields say what was found. */
export const verificationSchema = z.looseObject({});
export const healthSchema = z.looseObject({});
export const certificateVerdictSchema = z.looseObject({ verdict: z.enum(['genuine', 'altered', 'notOurs', 'withdrawn']) });
