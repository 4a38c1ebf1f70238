import { z } from 'zod';
import { benchRowSchema, personRowSchema, searchHitSchema, skipRowSchema, stampedSlipSchema, switchingRowSchema } from '../../shared/wire/views.ts';

/** What each question is answered with, for the description of the API. States are described in docs/architecture.md and not field by field. */
const anyState = z.looseObject({ kind: z.string(), stream: z.string(), version: z.number() });
export const rowsView = z.object({ rows: z.array(benchRowSchema) });
export const slipsView = z.object({ slips: z.array(stampedSlipSchema) });
export const travellerView = z.object({ state: anyState, slips: z.array(stampedSlipSchema), names: z.record(z.string(), z.string()) });
export const stateView = z.object({ state: anyState.nullable() });
export const peopleView = z.object({ people: z.array(personRowSchema) });
export const switchingView = z.object({ rows: z.array(switchingRowSchema), skips: z.array(skipRowSchema) });
export const searchView = z.object({ hits: z.array(searchHitSchema) });
export const plantView = z.object({
  opened: z.boolean(), plant: z.object({ name: z.string(), address: z.string(), country: z.string(), demo: z.boolean() }).nullable(),
  demoPeople: z.array(z.object({ badge: z.string(), pin: z.string(), name: z.string(), roles: z.array(z.string()) })).nullable(), benches: z.array(z.string()),
});
export const catalogueView = z.object({
  products: z.array(z.looseObject({ id: z.string() })), grades: z.array(z.looseObject({ id: z.string() })), layers: z.array(z.looseObject({ id: z.string() })),
  plans: z.array(z.object({ id: z.string(), name: z.string(), appliesTo: z.string(), versions: z.array(z.object({ planVersion: z.number(), inForce: z.boolean(), approvals: z.number(), why: z.string() })) })),
  gauges: z.array(z.looseObject({ id: z.string(), withdrawn: z.string().nullable() })),
  equipment: z.array(z.looseObject({ id: z.string() })), programmes: z.array(z.looseObject({ id: z.string() })),
});
export const verificationView = z.object({
  slips: z.number(), streams: z.number(), firstBroken: z.object({ stream: z.string(), version: z.number(), position: z.number(), why: z.string() }).nullable(),
  attachments: z.number(), brokenAttachment: z.object({ digest: z.string(), why: z.string() }).nullable(),
});
export const checkpointView = z.object({ slip: stampedSlipSchema.nullable(), publicKey: z.string(), keyId: z.string() });
export const keyView = z.object({ keyId: z.string(), publicKey: z.string() });
export const healthView = z.object({ ok: z.literal(true), opened: z.boolean() });
export const certificateVerdictView = z.object({
  verdict: z.enum(['genuine', 'altered', 'notOurs', 'withdrawn']), why: z.string().nullable(), keyId: z.string().nullable(),
  certificate: z.object({ number: z.string(), lot: z.string(), designation: z.string(), quantity: z.number(), issuedOn: z.string() }).nullable(),
});
/** Every refusal, whatever its code. */
export const noView = z.object({ ok: z.literal(false), refusal: z.looseObject({ code: z.string() }), words: z.object({ happened: z.string(), kept: z.string(), next: z.string() }) });
export const replyView = z.union([z.object({ ok: z.literal(true), slips: z.array(stampedSlipSchema), repeated: z.boolean() }), noView]);
