import { hash, randomBytes } from 'node:crypto';
import { z } from 'zod';
import type { KeyStore } from '../journal/key-store.ts';

/** Somebody signed on at a bench. Who they are now is asked of their thread each time. */
export interface SignedOn {
  /** SHA-256 of the token: the token itself is kept nowhere. */
  readonly key: string;
  readonly badge: string;
  readonly bench: string;
  /** Ms since 1970. */
  readonly since: number;
  lastUsed: number;
}

const keptSchema = z.array(z.object({ key: z.string(), badge: z.string(), bench: z.string(), since: z.number(), lastUsed: z.number() }));
const storeName = 'sessions';

export interface SessionsOptions {
  /** Signed off after so long without any entry or question. */
  readonly idleMs?: number;
  /** Signed off after so long in any case. */
  readonly longestMs?: number;
  readonly now?: () => number;
}

/** Who is signed on where. A restart of the server signs nobody off: the list is kept, but no token in it. */
export class Sessions {
  readonly #byKey = new Map<string, SignedOn>();
  readonly #keys: KeyStore;
  readonly #idleMs: number;
  readonly #longestMs: number;
  readonly #now: () => number;
  readonly #onEnd: ((key: string) => void)[] = [];

  private constructor(keys: KeyStore, { idleMs = 60 * 60_000, longestMs = 14 * 3_600_000, now = Date.now }: SessionsOptions) {
    this.#keys = keys;
    this.#idleMs = idleMs;
    this.#longestMs = longestMs;
    this.#now = now;
  }

  static async open(keys: KeyStore, options: SessionsOptions = {}): Promise<Sessions> {
    const sessions = new Sessions(keys, options);
    const kept = await keys.getText(storeName);
    if (kept !== null) for (const each of keptSchema.parse(JSON.parse(kept))) sessions.#byKey.set(each.key, each);
    return sessions;
  }

  /** Hears when a session has ended. */
  onEnd(hear: (key: string) => void): void {
    this.#onEnd.push(hear);
  }

  /** @returns the token: 256 random bits, known to the caller alone from now on */
  async begin(badge: string, bench: string): Promise<string> {
    const token = randomBytes(32).toString('base64url');
    const now = this.#now();
    for (const session of [...this.#byKey.values()]) if (this.#isOver(session)) this.#forget(session.key);
    this.#byKey.set(keyOf(token), { key: keyOf(token), badge, bench, since: now, lastUsed: now });
    await this.#keep();
    return token;
  }

  /** The session of a token, counted as used now; null where there is none or it has run out. */
  find(token: string | null): SignedOn | null {
    return token === null || token === '' ? null : this.use(keyOf(token));
  }

  /** The session of this key, counted as used now. */
  use(key: string): SignedOn | null {
    const session = this.#byKey.get(key);
    if (session === undefined) return null;
    if (this.#isOver(session)) {
      this.#forget(key);
      return null;
    }
    session.lastUsed = this.#now();
    return session;
  }

  async end(key: string): Promise<void> {
    if (!this.#byKey.has(key)) return;
    this.#forget(key);
    await this.#keep();
  }

  /** Signs a person off everywhere. */
  async endAllOf(badge: string): Promise<void> {
    const own = [...this.#byKey.values()].filter((session) => session.badge === badge);
    if (own.length === 0) return;
    for (const { key } of own) this.#forget(key);
    await this.#keep();
  }

  #isOver({ since, lastUsed }: SignedOn): boolean {
    const now = this.#now();
    return now - lastUsed > this.#idleMs || now - since > this.#longestMs;
  }

  #forget(key: string): void {
    if (this.#byKey.delete(key)) for (const hear of this.#onEnd) hear(key);
  }

  #keep(): Promise<void> {
    return this.#keys.put(storeName, JSON.stringify([...this.#byKey.values()]));
  }
}

function keyOf(token: string): string {
  return hash('sha256', token, 'base64url');
}
