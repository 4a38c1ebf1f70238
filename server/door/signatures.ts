import type { PersonState, Stamp } from '../../shared/traveller/index.ts';
import { needsSignature } from '../../shared/traveller/index.ts';
import type { Envelope } from '../../shared/wire/command-schema.ts';
import type { DoorRefusal } from '../../shared/wire/reply.ts';
import { pinRefusal, type PinDesk } from '../people/pin-desk.ts';
import { activePerson } from './person-at-hand.ts';
import type { StateCache } from './state-cache.ts';

export type Signatures = Pick<Stamp, 'signed' | 'coSigner'> | { readonly refusal: DoorRefusal };

/** A command that came without a PIN. */
export const unsigned = { signed: false, coSigner: null } as const;

/** Checks the PINs that came with a command. One that needs no signature leaves none; a person changing their own PIN shows the one so far. */
export async function checkSignatures(pins: PinDesk, states: StateCache, { command, pin, coSigner }: Envelope, by: PersonState | null): Promise<Signatures> {
  if (by === null || pin === undefined || !(needsSignature(command.type) || command.type === 'changePin')) return unsigned;
  const own = await pins.check(by.badge, pin);
  if (!own.ok) return { refusal: pinRefusal(own, 'wrongPin') };
  if (coSigner === undefined) return { signed: true, coSigner: null };
  const other = await pins.check(coSigner.badge, coSigner.pin);
  if (!other.ok) return { refusal: pinRefusal(other, 'wrongPin') };
  const person = await activePerson(states, coSigner.badge);
  if (person === null) return { refusal: { code: 'wrongPin', attemptsLeft: 0 } };
  return { signed: true, coSigner: { badge: person.badge, name: person.name, roles: person.roles } };
}
