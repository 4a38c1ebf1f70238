import { randomBytes } from 'node:crypto';

const seedBytes = 16;
const seedsAtOnce = 256;

/** Fresh random seeds in hexadecimal. Fetched many at a time: one by one they cost more than the decision they are for. */
export class Seeds {
  #bytes = Buffer.alloc(0);
  #at = 0;

  next(): string {
    if (this.#at >= this.#bytes.length) {
      this.#bytes = randomBytes(seedBytes * seedsAtOnce);
      this.#at = 0;
    }
    this.#at += seedBytes;
    return this.#bytes.toString('hex', this.#at - seedBytes, this.#at);
  }
}
