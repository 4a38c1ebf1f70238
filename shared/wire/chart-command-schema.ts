import { z } from 'zod';
import { CHART_RULES, FINDING_CLASSES } from '../traveller/index.ts';
import { passage, quantity, stream } from './field-schemas.ts';

const spread = z.enum(['betweenLots', 'withinLots']);
/** How far the constants may go is for the traveller to say. */
const constant = z.number().min(0).max(1000);
export const chartSpecSchema = z.union([
  z.strictObject({ kind: z.enum(['meanAndS', 'meanAndRange', 'individuals']) }),
  z.strictObject({ kind: z.literal('ewma'), lambda: constant, width: constant, spread }),
  z.strictObject({ kind: z.literal('cusum'), k: constant, h: constant, spread }),
  z.strictObject({ kind: z.enum(['p', 'np', 'c', 'u']), limits: z.enum(['threeSigma', 'exact']) }),
]);
const card = z.strictObject({ spec: chartSpecSchema, rules: z.array(z.enum(CHART_RULES)).max(CHART_RULES.length), mayHold: z.boolean(), class: z.enum(FINDING_CLASSES).nullable() });
const lots = z.array(stream).max(500);
const ofChart = { chart: stream, key: z.string().regex(/^[A-Za-z]{1,20}(?:-[a-z]{1,20})?$/), reason: passage() };

/** Control charts. */
export const chartCommandSchemas = [
  z.strictObject({ type: z.literal('defineChart'), chart: stream, card, lots }),
  z.strictObject({ type: z.literal('freezeChartLimits'), ...ofChart, lots, given: z.strictObject({ centre: quantity, sigma: quantity.nullable() }).nullable() }),
  z.strictObject({ type: z.literal('unfreezeChartLimits'), ...ofChart }),
  z.strictObject({ type: z.literal('restartChart'), ...ofChart }),
  z.strictObject({ type: z.literal('withdrawChart'), ...ofChart }),
] as const;
