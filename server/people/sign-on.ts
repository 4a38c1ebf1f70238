import type { PersonState } from '../../shared/traveller/index.ts';
import type { DoorRefusal } from '../../shared/wire/reply.ts';
import type { SignIn } from '../../shared/wire/sign-in-schema.ts';
import type { Session } from '../../shared/wire/views.ts';
import type { AddressLimit } from './address-limit.ts';
import { pinRefusal, type PinDesk } from './pin-desk.ts';
import type { Sessions, SignedOn } from './sessions.ts';

export interface SignOnParts {
  readonly pins: PinDesk;
  readonly addresses: AddressLimit;
  readonly sessions: Sessions;
  /** The person of a badge as the thread says now, if active. */
  readonly person: (badge: string) => Promise<PersonState | null>;
}

/** Signs people on at a bench and knows who is signed on. */
export class SignOn {
  readonly #parts: SignOnParts;

  constructor(parts: SignOnParts) {
    this.#parts = parts;
  }

  /** @param address the network address the attempt comes from */
  async signIn({ badge, pin, bench }: SignIn, address: string): Promise<Session | { readonly refusal: DoorRefusal }> {
    const { pins, addresses, sessions, person } = this.#parts;
    const locked = addresses.lockedUntil(address);
    if (locked !== null) return { refusal: { code: 'signInLocked', untilIso: locked } };
    const check = await pins.check(badge, pin);
    const who = check.ok ? await person(badge) : null;
    if (who !== null) return sessionOf(await sessions.begin(badge, bench), who, bench);
    addresses.countFailure(address);
    return { refusal: check.ok ? { code: 'signInFailed', attemptsLeft: 0 } : pinRefusal(check, 'signInFailed') };
  }

  /** Who holds this token, or null: nobody, run out, or no longer active. */
  async find(token: string | null): Promise<{ readonly signedOn: SignedOn; readonly session: Session } | null> {
    const signedOn = this.#parts.sessions.find(token);
    const who = signedOn === null ? null : await this.#parts.person(signedOn.badge);
    return signedOn === null || who === null ? null : { signedOn, session: sessionOf(token ?? '', who, signedOn.bench) };
  }
}

function sessionOf(token: string, { badge, name, roles }: PersonState, bench: string): Session {
  return { token, badge, name, roles: [...roles], bench };
}
