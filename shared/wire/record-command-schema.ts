import { z } from 'zod';
import { FLAG_RATINGS, ROLES } from '../traveller/index.ts';
import { bench, country, day, id, line, notNegative, passage, percent, pin, positive, quantity, saturationUnit, stream, typed } from './field-schemas.ts';

const roles = z.array(z.enum(ROLES)).max(ROLES.length);

/** Powder batches and switching states. */
export const batchCommandSchemas = [
  z.strictObject({
    type: z.literal('openBatch'), batch: id, grade: id, barrels: z.int().min(0).max(10_000), kgPerBarrel: positive.max(10_000),
    rawLots: z.array(z.strictObject({ rawLot: line(40), material: line(60), kg: positive.max(1_000_000) })).max(60),
  }),
  z.strictObject({ type: z.literal('blendBatches'), batch: id, from: z.array(z.strictObject({ batch: id, kg: positive.max(10_000_000) })).max(60), barrels: z.int().min(0).max(10_000) }),
  z.strictObject({ type: z.literal('releaseBatch'), batch: id }),
  z.strictObject({ type: z.literal('setSwitching'), switching: stream, steady: z.boolean().nullable(), reducedAllowed: z.boolean().nullable(), reason: passage() }),
  z.strictObject({ type: z.literal('resumeInspection'), switching: stream, reason: passage() }),
] as const;

export const productSchema = z.strictObject({
  id, designation: line(60), name: line(80), itemCode: id, grade: id, layer: id.nullable(), marking: line(100), piecesPerBox: z.int().min(1).max(100_000), plan: id,
  sinteredVolumeMm3: positive, thicknessMm: positive, byDrawing: z.boolean().exactOptional(),
  thicknessLimits: z.strictObject({ lowerMm: positive, upperMm: positive }).exactOptional(), inscribedCircleMm: positive.exactOptional(),
}).refine(({ thicknessMm, thicknessLimits }) => thicknessLimits === undefined || (thicknessLimits.lowerMm <= thicknessMm && thicknessMm <= thicknessLimits.upperMm && thicknessLimits.lowerMm < thicknessLimits.upperMm), { path: ['thicknessLimits'], message: 'must enclose `thicknessMm`' });
const limits = z.strictObject({ lower: quantity.nullable(), upper: quantity.nullable() });
const flag = z.enum(FLAG_RATINGS);
export const gradeSchema = z.strictObject({
  id, name: line(60), composition: z.array(z.strictObject({ component: line(40), massPercent: percent, densityGPerCm3: positive.exactOptional() })).max(40), powderPlan: id, blendPlan: id.exactOptional(), furnacePlan: id,
  limits: z.strictObject({
    densityGPerCm3: limits.exactOptional(), coercivityKAPerM: limits.exactOptional(), hardnessHv30: limits.exactOptional(),
    saturation: z.strictObject({ lowPercent: quantity, warnLowPercent: quantity, warnHighPercent: quantity, highPercent: quantity, unit: saturationUnit }).exactOptional(),
    porosity: z.strictObject({ A: line(8).exactOptional(), B: line(8).exactOptional(), C: line(8).exactOptional() }).exactOptional(),
    flags: z.strictObject({ etaPhase: flag.exactOptional(), freeCarbon: flag.exactOptional(), binderLakes: flag.exactOptional() }).exactOptional(),
  }).exactOptional(),
});
export const layerSchema = z.strictObject({ id, name: line(60), coatingPlan: id, layers: z.array(z.strictObject({ name: line(40), lowerUm: quantity.nullable(), upperUm: quantity.nullable() })).min(1).max(12).exactOptional() });

/** What the plant makes, of what, and coated with what. */
export const catalogueCommandSchemas = [
  z.strictObject({ type: z.literal('defineProduct'), product: productSchema }),
  z.strictObject({ type: z.literal('defineGrade'), grade: gradeSchema }),
  z.strictObject({ type: z.literal('defineLayer'), layer: layerSchema }),
] as const;

/** How a line of a gauge on a serial port is read. */
const gaugeLine = z.strictObject({ number: z.int().min(1).max(20), after: typed(20), unit: typed(12), factor: positive });
const coverageFactor = z.number().min(1).max(5);
const asFound = z.strictObject({ error: quantity, allowedError: positive });

export const gaugeSchema = z.strictObject({
  id, name: line(80), gaugeKind: line(60), unit: line(12), resolution: positive, expandedUncertainty: notNegative, least: quantity, most: quantity, calibrationDue: day, bench: bench.nullable(),
  coverageFactor: coverageFactor.exactOptional(), intervalMonths: z.int().min(1).max(240).exactOptional(), benches: z.array(bench).max(40).exactOptional(), certificate: line(60).exactOptional(),
  allowedError: positive.exactOptional(), line: gaugeLine.exactOptional(),
}).refine(({ least, most }) => least < most, { path: ['most'], message: 'must be above `least`' });

/** A press and its balance. */
const press = z.strictObject({ id, name: line(80), bench, balance: id });

/** Gauges, presses, people and the plant itself. PINs pass through here and never reach a slip. */
export const peopleAndGaugeCommandSchemas = [
  z.strictObject({ type: z.literal('registerGauge'), gauge: gaugeSchema }),
  z.strictObject({ type: z.literal('calibrateGauge'), gauge: id, calibrationDue: day, expandedUncertainty: notNegative, certificate: line(60), coverageFactor: coverageFactor.exactOptional(), asFound: asFound.exactOptional() }),
  z.strictObject({ type: z.literal('checkGauge'), gauge: id, master: line(60), nominal: quantity, found: quantity, allowedError: positive.exactOptional() }),
  z.strictObject({ type: z.literal('setGaugeLine'), gauge: id, line: gaugeLine }),
  z.strictObject({ type: z.literal('holdRecall'), gauge: id, recall: id, subjects: z.array(stream).min(1).max(1_000), reason: passage() }),
  z.strictObject({ type: z.literal('closeRecall'), gauge: id, recall: id, reason: passage() }),
  z.strictObject({ type: z.literal('setGaugeUncertainty'), gauge: id, study: id }),
  z.strictObject({ type: z.literal('withdrawGauge'), gauge: id, reason: passage() }),
  z.strictObject({ type: z.literal('registerPress'), press }),
  z.strictObject({ type: z.literal('changePress'), press, reason: passage(), countsAnew: z.boolean().exactOptional() }),
  z.strictObject({ type: z.literal('setPress'), press: id, lot: id.nullable() }),
  z.strictObject({ type: z.literal('enrolPerson'), badge: id, name: line(80), roles: roles.min(1), pin }),
  z.strictObject({ type: z.literal('changePerson'), badge: id, name: line(80), roles, active: z.boolean(), reason: passage() }),
  z.strictObject({ type: z.literal('changePin'), badge: id, pin }),
  z.strictObject({
    type: z.literal('openPlant'), plant: z.strictObject({ name: line(80), address: line(160), country, demo: z.boolean() }),
    keeper: z.strictObject({ badge: id, name: line(80), pin }),
  }),
] as const;
