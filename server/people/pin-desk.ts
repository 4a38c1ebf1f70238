import type { PinVault } from '../journal/pin-vault.ts';
import type { DoorRefusal } from '../../shared/wire/reply.ts';
import { hashPin, verifyPin } from './pin-hash.ts';
import { Turns } from './turns.ts';

/** Wrong PINs in a row before a badge is locked; each further one doubles the lock. */
const freeAttempts = 5;
const firstLockMs = 60_000;
const longestLockMs = 3_600_000;
/** Unknown badges remembered, so that trying a made-up badge looks like trying a real one. */
const mostStrangers = 5_000;

export type PinCheck = { readonly ok: true } | { readonly ok: false; readonly attemptsLeft: number } | { readonly ok: false; readonly lockedUntil: string };

interface Failures { readonly count: number; readonly lastAt: string | null }

/** Checks PINs, one after another for each badge, and locks a badge that is tried too often. Tells nothing about whether the badge exists. */
export class PinDesk {
  readonly #vault: PinVault;
  readonly #now: () => number;
  readonly #turns = new Turns();
  readonly #strangers = new Map<string, Failures>();
  /** Compared against when nobody has the badge, so that the answer takes as long. */
  readonly #decoy = hashPin('no such badge');

  constructor(vault: PinVault, now: () => number = Date.now) {
    this.#vault = vault;
    this.#now = now;
  }

  /** Compares a PIN and counts what is wrong. */
  check(badge: string, pin: string): Promise<PinCheck> {
    return this.#turns.take(badge, () => this.#check(badge, pin));
  }

  async #check(badge: string, pin: string): Promise<PinCheck> {
    const record = await this.#vault.get(badge);
    const before: Failures = record === null ? this.#strangers.get(badge) ?? { count: 0, lastAt: null } : { count: record.failedAttempts, lastAt: record.lastFailedAt };
    const lockedUntil = lockEnd(before);
    if (lockedUntil > this.#now()) return { ok: false, lockedUntil: new Date(lockedUntil).toISOString() };
    const right = await verifyPin(pin, record?.hash ?? await this.#decoy);
    if (right && record !== null) {
      if (record.failedAttempts > 0) await this.#vault.clearFailures(badge);
      return { ok: true };
    }
    const lastAt = new Date(this.#now()).toISOString();
    const count = record === null ? this.#countStranger(badge, before.count + 1, lastAt) : await this.#vault.countFailure(badge, lastAt);
    const until = lockEnd({ count, lastAt });
    return until > this.#now() ? { ok: false, lockedUntil: new Date(until).toISOString() } : { ok: false, attemptsLeft: freeAttempts - count };
  }

  #countStranger(badge: string, count: number, lastAt: string): number {
    this.#strangers.delete(badge);
    this.#strangers.set(badge, { count, lastAt });
    const [oldest] = this.#strangers.keys();
    if (this.#strangers.size > mostStrangers && oldest !== undefined) this.#strangers.delete(oldest);
    return count;
  }
}

/** When the lock of so many wrong PINs ends, ms since 1970; 0 where there is none. */
function lockEnd({ count, lastAt }: Failures): number {
  if (count < freeAttempts || lastAt === null) return 0;
  return Date.parse(lastAt) + Math.min(longestLockMs, firstLockMs * 2 ** (count - freeAttempts));
}

/** What the door says to a PIN that does not count; `code` tells a sign-on from a signature. */
export function pinRefusal(check: Exclude<PinCheck, { readonly ok: true }>, code: 'signInFailed' | 'wrongPin'): DoorRefusal {
  return 'lockedUntil' in check ? { code: 'signInLocked', untilIso: check.lockedUntil } : { code, attemptsLeft: check.attemptsLeft };
}
