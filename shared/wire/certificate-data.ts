import { z } from 'zod';

/** One printed line: no control characters, no blanks at its ends. */
const line = (most: number) => z.string().min(1).max(most).regex(/^[^\p{Cc}\s](?:[^\p{Cc}]*[^\p{Cc}\s])?$/u);
/** A passage of several lines. */
const passage = (most: number) => z.string().min(1).max(most).regex(/^(?:[^\p{Cc}]|\n)+$/u);
const number = line(40);
const moment = z.iso.datetime({ offset: true });
const person = z.strictObject({ name: line(80), badge: line(20) });
/** Decimals shown: those of one reading. Means and standard deviations get one more. */
const decimals = z.int().min(0).max(6);

/** What a verdict rests on, one form for each way of judging. */
const gateResult = z.discriminatedUnion('judgedBy', [
  z.strictObject({ judgedBy: z.literal('found'), found: z.int().min(0), /** Null where the sample that decided could not accept (reject). */ acceptance: z.int().min(0).nullable(), rejection: z.int().min(1).nullable() }),
  z.strictObject({ judgedBy: z.literal('skipped') }),
  z.strictObject({ judgedBy: z.literal('statistic'), symbol: line(12), value: z.number(), relation: z.enum(['≥', '≤']), limit: z.number(), decimals }),
  z.strictObject({
    judgedBy: z.literal('limits'), symbol: line(12), value: z.number(), lower: z.number().nullable(), upper: z.number().nullable(), unit: line(12).nullable(), decimals,
  }),
  /** Every one of the n by itself within the limits it was judged by. */
  z.strictObject({ judgedBy: z.literal('each'), outside: z.int().min(0), lower: z.number().nullable(), upper: z.number().nullable(), unit: line(12).nullable(), decimals }),
  /** None may be found. Not written as Ac and Re, for no sampling table stands behind it. */
  z.strictObject({ judgedBy: z.literal('none'), found: z.int().min(0) }),
  z.strictObject({ judgedBy: z.literal('grade'), grade: line(24), limit: line(24) }),
  z.strictObject({ judgedBy: z.literal('confirmed') }),
]);

/** The subject a gate was worked on: the lot itself, or the batch or charge whose verdict stands on it. */
const workedOn = z.strictObject({ kind: z.enum(['insertLot', 'powderBatch', 'furnaceCharge', 'coatingCharge']), number });

const gateRow = z.strictObject({
  gate: line(60),
  workedOn,
  characteristic: line(100),
  method: line(100),
  /** Standard, level, letter, severity, AQL, in words. */
  plan: line(200),
  /** Pieces, test pieces or readings judged. */
  n: z.int().min(0),
  result: gateResult,
  verdict: z.enum(['accepted', 'rejected', 'acceptedOnConcession']),
  by: person,
  at: moment,
  /** The lot came back to this gate after sorting or rework. */
  isReinspection: z.boolean(),
});

const measuredRow = z.strictObject({
  name: line(80),
  workedOn,
  unit: line(12).nullable(),
  n: z.int().min(1),
  mean: z.number(),
  /** Standard deviation of the sample; null for one reading. */
  s: z.number().min(0).nullable(),
  min: z.number(),
  max: z.number(),
  lower: z.number().nullable(),
  upper: z.number().nullable(),
  decimals,
  decisionRule: line(120),
  /** Expanded uncertainty U (k = 2) of one reading, in the same unit; null where it is not stated. */
  uncertainty: z.number().min(0).nullable(),
});

/** Everything a certificate states, before it is sealed. Plain JSON; the same bytes are attached to the PDF. */
export const certificateContentSchema = z.strictObject({
  form: z.literal('gatehand-certificate-1'),
  language: z.enum(['en', 'de', 'es', 'cs']),
  /** True in the invented plant; said on every page. */
  demo: z.boolean(),
  plant: z.strictObject({ name: line(80), address: line(160) }),
  certificate: z.strictObject({
    number: z.string().regex(/^[A-Z0-9-]{1,24}$/),
    issuedOn: z.iso.date(),
    /** Type in the manner of EN 10204:2004, by agreement. */
    documentType: z.literal('3.1'),
  }),
  /** Whose order it is, as far as the plant knew at release. */
  purchaser: z.strictObject({ name: line(100).nullable(), order: line(60).nullable(), orderLine: line(20).nullable() }).nullable(),
  product: z.strictObject({
    designation: line(60),
    grade: line(60),
    coating: line(60).nullable(),
    /** What the goods were inspected to: the plant's specification and its edition. */
    specification: line(100),
    marking: line(100).nullable(),
  }),
  lot: z.strictObject({
    number,
    quantity: z.int().min(1),
    /** The heat numbers of carbide. */
    powderBatches: z.array(number).min(1).max(20),
    furnaceCharges: z.array(number).max(20),
    coatingCharges: z.array(number).max(20),
  }),
  gates: z.array(gateRow).min(1).max(120),
  measured: z.array(measuredRow).max(120),
  concessions: z.array(z.strictObject({ text: passage(800), quantity: z.int().min(1), by: person, at: moment })).max(20),
  /** Entries changed after they were first made. */
  corrections: z.array(z.strictObject({ what: line(120), was: line(60), is: line(60), reason: line(200), by: person, at: moment })).max(60),
  /** Such as tables not yet compared with the standard's own text. */
  notes: z.array(passage(600)).max(60),
  signatures: z.array(z.strictObject({ ...person.shape, role: line(60), meaning: line(160), at: moment })).min(1).max(8),
});
export type CertificateContent = z.infer<typeof certificateContentSchema>;

/** The seal: it stands for the content, not for the look of a page. */
export const certificateVerificationSchema = z.strictObject({
  algorithm: z.literal('Ed25519'),
  /** SHA-256 of the content's canonical form (RFC 8785), hexadecimal. */
  digest: z.string().regex(/^[0-9a-f]{64}$/),
  /** The first 16 hexadecimal digits of the SHA-256 of the public key (SubjectPublicKeyInfo, DER). */
  keyId: z.string().regex(/^[0-9a-f]{16}$/),
  /** Over the bytes of the canonical form, base64. */
  signature: z.string().regex(/^[A-Za-z0-9+/]{86}==$/),
  /** The first 60 bits of the digest for the telephone: three groups of four characters. */
  shortCode: z.string().regex(/^[0-9A-HJKMNP-TV-Z]{4}(-[0-9A-HJKMNP-TV-Z]{4}){2}$/),
});
export type CertificateVerification = z.infer<typeof certificateVerificationSchema>;

/** A sealed certificate. */
export const certificateDataSchema = certificateContentSchema.extend({ verification: certificateVerificationSchema });
export type CertificateData = z.infer<typeof certificateDataSchema>;
export type CertificateGate = CertificateData['gates'][number];
export type CertificateMeasured = CertificateData['measured'][number];
