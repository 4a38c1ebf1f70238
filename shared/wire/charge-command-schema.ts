import { z } from 'zod';
import { MOST_SEGMENTS } from '../traveller/index.ts';
import { id, line, positive } from './field-schemas.ts';

/** Charges, the maps they are placed on, the programmes their logs are held against. */
const cell = { level: z.int().min(1).max(1000), position: z.int().min(1).max(10_000) };
const side = z.int().min(1).max(100);
const layout = z.discriminatedUnion('by', [z.strictObject({ by: z.literal('grid'), rows: side, columns: side }), z.strictObject({ by: z.literal('ring'), positions: side })]);
export const equipmentSchema = z.strictObject({
  id, kind: z.enum(['furnace', 'coating']), name: line(60),
  levels: z.array(z.strictObject({ name: line(30), layout })).max(100), testPositions: z.array(z.strictObject({ name: line(40), ...cell })).max(200),
});

/** °C that a furnace can be set to. */
const celsius = z.number().min(-100).max(4000);
const rate = z.number().min(0).max(1000).nullable();
const minutes = z.number().min(0).max(100_000);
const millibar = z.number().min(0).max(10_000_000);
const ramp = { name: line(40), toC: celsius, leastRateCPerMin: rate, mostRateCPerMin: rate };
const segment = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.enum(['heat', 'cool']), ...ramp }),
  z.strictObject({ kind: z.literal('soak'), name: line(40), lowerC: celsius, upperC: celsius, leastMin: minutes, mostMin: minutes.nullable(), pressure: z.strictObject({ lowerMbar: millibar, upperMbar: millibar, leastMin: minutes }).nullable() }),
]);
export const programmeSchema = z.strictObject({ id, name: line(60), segments: z.array(segment).max(MOST_SEGMENTS), rateOverMin: positive.max(600), largestGapMin: positive.max(600) });

export const chargeCommandSchemas = [
  z.strictObject({
    type: z.literal('openCharge'), charge: id, kind: z.enum(['furnace', 'coating']), specification: id, programme: line(60), equipment: line(60), equipmentId: id.exactOptional(),
    members: z.array(z.strictObject({ lot: id, places: z.array(line(40)).max(200), cells: z.array(z.strictObject(cell)).max(500).exactOptional() })).max(200),
  }),
  z.strictObject({ type: z.literal('attachFurnaceLog'), charge: id, attachment: z.string().regex(/^[0-9a-f]{64}$/), fileName: line(120) }),
  z.strictObject({ type: z.literal('defineEquipment'), equipment: equipmentSchema }),
  z.strictObject({ type: z.literal('defineProgramme'), programme: programmeSchema }),
] as const;
