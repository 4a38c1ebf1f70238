import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import type { KeyStore } from '../journal/key-store.ts';

/** The tokens by which balances, and no people, send weights. Only their digests are kept. */
export class PressTokens {
  readonly #keys: KeyStore;
  readonly #digests = new Map<string, Buffer>();

  constructor(keys: KeyStore) {
    this.#keys = keys;
  }

  /** Makes a press's token anew; the one before counts no longer. It is shown this once. */
  async renew(press: string): Promise<string> {
    const token = randomBytes(24).toString('base64url');
    await this.#keys.put(nameOf(press), digestOf(token).toString('base64url'));
    this.#digests.set(press, digestOf(token));
    return token;
  }

  /** Ends a press's token at once; nothing is sent until another is made. */
  async end(press: string): Promise<void> {
    this.#digests.set(press, none);
    await this.#keys.put(nameOf(press), '');
  }

  /** Does this token belong to this press? */
  async fits(press: string, token: string | null): Promise<boolean> {
    if (token === null) return false;
    let digest = this.#digests.get(press);
    if (digest === undefined) {
      const kept = await this.#keys.getText(nameOf(press));
      if (kept === null) return false;
      digest = Buffer.from(kept, 'base64url');
      this.#digests.set(press, digest);
    }
    return digest.length > 0 && timingSafeEqual(digest, digestOf(token));
  }
}

/** The digest of a press whose token was ended. */
const none = Buffer.alloc(0);
const nameOf = (press: string): string => `press-token:${press}`;
const digestOf = (token: string): Buffer => createHash('sha256').update(token).digest();
