import { z } from 'zod';
import { FINDING_CLASSES, POWDER_FACTORS, RATING_REFERENCES, ROLES, SUBJECT_KINDS } from '../traveller/index.ts';
import { id, line, newKey, passage, percent, place, positive, quantity, saturationUnit, typed } from './field-schemas.ts';

/** Percent nonconforming; that it is one of the preferred values is asked by the traveller, which names the place. */
const aqlPercent = z.number().min(0.01).max(1000);
const accept = z.enum(['each', 'mean']);
const many = z.int().min(1).max(5000);

/** A value for each class the rule judges; a class left out is not counted. */
const byClass = <Value extends z.ZodType>(value: Value) => z.strictObject({ critical: value.exactOptional(), major: value.exactOptional(), minor: value.exactOptional() });
/** Percent that lies between the ends; a plan for 0 or 100 has nothing to find out. */
const share = z.number().gt(0).lt(100);
/** A risk as a fraction. */
const risk = z.number().gt(0).lt(1);
const riskPoints = z.strictObject({ p1Percent: share, producerRisk: risk, p2Percent: share, consumerRisk: risk });

const attributes = z.strictObject({
  rule: z.literal('attributes'), switching: z.enum(['ISO 2859-1', 'MIL-STD-105E']), level: z.enum(['S-1', 'S-2', 'S-3', 'S-4', 'I', 'II', 'III']),
  aqlPercent: byClass(aqlPercent), samples: z.enum(['single', 'double', 'multiple']).exactOptional(), counts: z.enum(['nonconforming', 'nonconformities']).exactOptional(),
  skipLot: z.strictObject({ clearance: z.int().min(1).max(1000), oneIn: z.int().min(2).max(100) }).exactOptional(),
  ownTables: z.strictObject({ normal: newKey.exactOptional(), tightened: newKey.exactOptional(), reduced: newKey.exactOptional() }).exactOptional(),
});
const limitingQuality = z.strictObject({ rule: z.literal('limitingQuality'), lqPercent: byClass(share), consumerRisk: risk });
const zeroAcceptance = z.strictObject({ rule: z.literal('zeroAcceptance'), lqPercent: byClass(share), consumerRisk: risk });
const twoPoint = z.strictObject({ rule: z.literal('twoPoint'), samples: z.enum(['single', 'double']), points: byClass(riskPoints) });
const sequential = z.strictObject({ rule: z.literal('sequential'), points: byClass(riskPoints) });
const variables = z.strictObject({
  rule: z.literal('variables'), level: z.enum(['I', 'II', 'III', 'IV', 'V']), aqlPercent: share, sigma: positive.exactOptional(), form: z.enum(['k', 'M']).exactOptional(),
  separate: z.strictObject({ lowerAqlPercent: share, upperAqlPercent: share }).exactOptional(), points: riskPoints.exactOptional(),
});
const fixed = z.strictObject({ rule: z.literal('fixed'), n: many, accept });
const barrels = z.strictObject({ rule: z.literal('barrels'), barrels: many, each: z.int().min(1).max(60), accept });
const positions = z.strictObject({ rule: z.literal('positions'), positions: z.array(line(40)).min(1).max(60), each: z.int().min(1).max(60), accept });
const drift = z.strictObject({ lambda: z.union([z.literal(0.05), z.literal(0.1), z.literal(0.2)]).exactOptional(), sigma: positive.exactOptional(), holds: z.boolean().exactOptional() });
const everyPiece = z.strictObject({ rule: z.literal('everyPiece'), ejectAtMostPercent: percent, drift: drift.exactOptional() });
const minutes = z.int().min(1).max(1440).exactOptional();
const interval = z.strictObject({ rule: z.literal('interval'), everyPieces: place.max(1_000_000), n: many, everyMinutes: minutes, graceMinutes: minutes });
const once = z.strictObject({ rule: z.literal('once') });

const common = { id: newKey, name: line(80), method: line(100), destructive: z.boolean() };
const entry = z.discriminatedUnion('how', [
  z.strictObject({ how: z.literal('direct') }),
  z.strictObject({ how: z.literal('crater'), ballDiameterMm: positive, layers: z.int().min(2).max(12).exactOptional() }),
  z.strictObject({ how: z.literal('craterLayer'), of: newKey, layer: z.int().min(1).max(12) }),
  z.strictObject({ how: z.literal('shrinkage'), dieMm: positive, greenRead: z.literal(true).exactOptional() }),
  z.strictObject({ how: z.literal('archimedes') }),
  z.strictObject({ how: z.literal('saturation'), unit: saturationUnit, cobaltFraction: z.number().gt(0).max(1), warnLowPercent: percent.exactOptional(), warnHighPercent: percent.exactOptional() }),
]);

const characteristic = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('measured'), ...common, unit: line(12), decimals: z.int().min(0).max(6),
    lower: quantity.nullable(), upper: quantity.nullable(), target: quantity.nullable(), plausible: z.strictObject({ least: quantity, most: quantity }),
    gaugeKind: line(60).nullable(), decisionRule: z.enum(['simple', 'guardedAcceptance', 'guardedRejection']), guardFactor: positive.max(3).exactOptional(), entry,
    factor: z.enum(POWDER_FACTORS).nullable(), pressTolerancePercent: z.number().gt(0).lt(100).nullable(), limitsFrom: z.enum(['pressWeight', 'greenHeight']).exactOptional(),
    sampling: z.discriminatedUnion('rule', [variables, fixed, barrels, positions, everyPiece]),
  }),
  z.strictObject({
    kind: z.literal('counted'), ...common,
    kinds: z.array(z.strictObject({ code: newKey, name: line(60), class: z.enum(FINDING_CLASSES) })).min(1).max(60),
    sampling: z.discriminatedUnion('rule', [attributes, limitingQuality, zeroAcceptance, twoPoint, sequential, interval]),
  }),
  z.strictObject({
    kind: z.literal('graded'), ...common, scale: z.array(line(24)).min(1).max(40), worstAccepted: line(24), reference: z.enum(RATING_REFERENCES).exactOptional(),
    sampling: z.discriminatedUnion('rule', [fixed, barrels, positions]),
  }),
  z.strictObject({ kind: z.literal('confirmed'), ...common, statement: line(200), backedBy: z.literal('furnaceLog').exactOptional(), sampling: once }),
]);

const gatePlan = z.strictObject({
  id: newKey, name: line(60), workedOn: z.enum(SUBJECT_KINDS), bench: line(60),
  roles: z.array(z.enum(ROLES)).max(ROLES.length), cautions: z.array(newKey).max(20), characteristics: z.array(characteristic).max(60),
});

/** An inspection plan as it is drafted. Whether it can be worked is asked by the traveller, which names the first place that is wrong. */
export const inspectionPlanSchema = z.strictObject({ id: newKey, name: line(80), appliesTo: z.enum(SUBJECT_KINDS), gates: z.array(gatePlan).max(60) });

/** A table is some 4 kB; the reader says itself what is wrong with a longer text. */
const csv = z.string().max(220_000);

export const planCommandSchemas = [
  z.strictObject({ type: z.literal('loadTable'), table: newKey, name: line(80), severity: z.enum(['normal', 'tightened', 'reduced']), csv, reason: passage() }),
  z.strictObject({ type: z.literal('writeCaution'), caution: newKey, text: typed(200).nullable(), shown: z.boolean(), reason: passage() }),
  z.strictObject({ type: z.literal('draftPlan'), plan: inspectionPlanSchema, why: passage() }),
  z.strictObject({ type: z.literal('approvePlan'), plan: id, planVersion: place }),
] as const;
