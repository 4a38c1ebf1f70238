import { z } from 'zod';

/** What the lists and pages of the kiosk read; the same over HTTP and over the live channel. Every shape is also an entry of the API description. */
const subjectKind = z.enum(['lot', 'batch', 'furnace', 'coating']);
const severity = z.enum(['normal', 'tightened', 'reduced', 'discontinued']);

export const benchRowSchema = z.object({
  stream: z.string(), kind: subjectKind, id: z.string(),
  /** Product name, grade or coating in words. */
  title: z.string(), designation: z.string().nullable(),
  gate: z.string().nullable().describe('id of the gate that is due; null where none is'), gateName: z.string().nullable(), bench: z.string(),
  /** `due`: to be begun here; `open`: work under way; `sorting`: a sort is to be entered; `held`; `toRelease`; `toPack`; `done`. */
  standing: z.enum(['due', 'open', 'sorting', 'held', 'inCharge', 'toRelease', 'toPack', 'done']),
  pieces: z.number(), severity, discontinued: z.boolean(),
  severityLots: z.array(z.string()).describe('lots for which inspection was switched to this severity; empty on normal and where the gate was opened under another'),
  waitsFor: z.enum(['furnace', 'coating']).nullable().describe('the kind of charge a lot waits to be put into; null where it waits for none, or stands in one already'),
  holdReason: z.string().nullable(), attempt: z.number(), since: z.string(), demo: z.boolean(),
  lookDue: z.object({ look: z.number(), since: z.string(), piece: z.number() }).nullable().describe('a look that fell due and was not taken yet'),
  drift: z.object({ side: z.enum(['above', 'below']), piece: z.number(), predicted: z.number().nullable() }).nullable().describe('a drift of the weights that stands'),
});
export type BenchRow = z.infer<typeof benchRowSchema>;

export const benchListSchema = z.object({ bench: z.string(), waiting: z.array(benchRowSchema), held: z.array(benchRowSchema), dueSoon: z.array(z.object({ what: z.enum(['calibration']), id: z.string(), name: z.string(), due: z.string(), overdue: z.boolean() })) });
export type BenchList = z.infer<typeof benchListSchema>;

export const traceNodeSchema = z.object({ kind: z.enum(['raw', 'batch', 'lot', 'furnace', 'coating', 'box', 'shipment']), id: z.string(), stream: z.string().nullable(), depth: z.number(), via: z.string().nullable().describe('id of the node it hangs on'), standing: z.string(), pieces: z.number().nullable(), detail: z.string().nullable() });
export type TraceNode = z.infer<typeof traceNodeSchema>;
export const traceSchema = z.object({ of: z.string(), up: z.array(traceNodeSchema), down: z.array(traceNodeSchema) });
export type Trace = z.infer<typeof traceSchema>;

export const searchHitSchema = z.object({ stream: z.string(), kind: z.string(), id: z.string(), title: z.string(), standing: z.string() });
export type SearchHit = z.infer<typeof searchHitSchema>;

export const switchingRowSchema = z.object({
  stream: z.string(), product: z.string(), gate: z.string(), characteristic: z.string(), class: z.string().nullable(), severity,
  score: z.number(), acceptedInRow: z.number(), notAcceptedOnTightened: z.number(), steady: z.boolean(), reducedAllowed: z.boolean(),
  movedAt: z.string().nullable(), movedWhy: z.string().nullable(), movedLots: z.array(z.string()), recent: z.array(z.object({ lot: z.string(), accepted: z.boolean() })),
});
export type SwitchingRow = z.infer<typeof switchingRowSchema>;

/** How far a stream of lots has come towards being passed over (SkSP-2). `lots` are the accepted ones it rests on. */
export const skipRowSchema = z.object({ stream: z.string(), product: z.string(), gate: z.string(), characteristic: z.string(), clearance: z.number(), oneIn: z.number(), skipping: z.boolean(), acceptedInRow: z.number(), lots: z.array(z.string()), endedBy: z.string().nullable() });
export type SkipRow = z.infer<typeof skipRowSchema>;

export const personRowSchema = z.object({ badge: z.string(), name: z.string(), roles: z.array(z.string()), active: z.boolean() });
export type PersonRow = z.infer<typeof personRowSchema>;

export const sessionSchema = z.object({ token: z.string(), badge: z.string(), name: z.string(), roles: z.array(z.enum(['inspector', 'lab', 'engineer', 'releaser', 'packer', 'keeper'])), bench: z.string() });
export type Session = z.infer<typeof sessionSchema>;

export const stampedSlipSchema = z.object({ position: z.number(), stream: z.string(), version: z.number(), at: z.string(), by: z.string(), bench: z.string(), clientId: z.string(), body: z.looseObject({ type: z.string() }), hash: z.string() });
