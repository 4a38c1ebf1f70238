import { z } from 'zod';
import type { Command, CommandType } from '../traveller/index.ts';
import { chartCommandSchemas } from './chart-command-schema.ts';
import { bench, id, pin } from './field-schemas.ts';
import { gateCommandSchemas } from './gate-command-schema.ts';
import { lotCommandSchemas } from './lot-command-schema.ts';
import { planCommandSchemas } from './plan-schema.ts';
import { chargeCommandSchemas } from './charge-command-schema.ts';
import { studyCommandSchemas } from './study-command-schema.ts';
import { batchCommandSchemas, catalogueCommandSchemas, peopleAndGaugeCommandSchemas } from './record-command-schema.ts';

/** Every command as it comes over the wire: strict, so that a field nobody reads is refused and not dropped in silence. */
export const commandSchema = z.discriminatedUnion('type', [
  ...gateCommandSchemas, ...lotCommandSchemas, ...batchCommandSchemas, ...chargeCommandSchemas, ...chartCommandSchemas, ...planCommandSchemas, ...catalogueCommandSchemas, ...peopleAndGaugeCommandSchemas, ...studyCommandSchemas,
]);

/** The door's envelope around a command. `pin` is re-entered for a signature; `seen` is the stream's version the caller had before them. */
export const envelopeSchema = z.strictObject({
  clientId: z.string().regex(/^[A-Za-z0-9-]{8,64}$/),
  command: commandSchema,
  bench,
  seen: z.int().min(0).exactOptional(),
  pin: pin.exactOptional(),
  /** How long the entry waited at the bench for the network, milliseconds, up to a week. */
  waitedMs: z.int().min(0).max(604_800_000).exactOptional(),
  coSigner: z.strictObject({ badge: id, pin }).exactOptional(),
});

type Frozen<T> = T extends readonly (infer Item)[] ? readonly Frozen<Item>[] : T extends object ? { readonly [Key in keyof T]: Frozen<T[Key]> } : T;
type Same<A, B> = (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
type Parsed = z.infer<typeof commandSchema>;
type ParsedAs<Type> = Frozen<Extract<Parsed, { type: Type }>>;
type Told<Type> = Frozen<Extract<Command, { type: Type }>>;
/**
 * The types whose schema does not say exactly what the command's type says. Being the same does not see an optional field that may also
 * be undefined, so the schema's answer must besides be allowed where the command is asked for.
 */
type Differing<Type> = Type extends CommandType | Parsed['type'] ? ([ParsedAs<Type>] extends [Told<Type>] ? (Same<ParsedAs<Type>, Told<Type>> extends true ? never : Type) : Type) : never;
type Nothing<Found extends never> = Found;
/** Does not compile when a command has no schema, a schema has no command, or any field differs. */
export type CommandSchemaProof = Nothing<Differing<CommandType | Parsed['type']>>;

export type Envelope = Frozen<z.infer<typeof envelopeSchema>>;
