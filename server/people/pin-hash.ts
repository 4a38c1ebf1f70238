import { randomBytes, scrypt, timingSafeEqual } from 'node:crypto';

/** Cost of one hash: 16 MiB and some tens of milliseconds, so that nobody tries ten thousand PINs in a minute. @see RFC 7914 */
const cost = { N: 2 ** 14, r: 8, p: 1 } as const;
const keyBytes = 32;

function derive(pin: string, salt: Buffer, { N, r, p }: { readonly N: number; readonly r: number; readonly p: number }): Promise<Buffer> {
  return new Promise((resolve, reject) => {
    scrypt(pin, salt, keyBytes, { N, r, p, maxmem: 256 * N * r }, (error, key) => (error === null ? resolve(key) : reject(error)));
  });
}

/** A PIN as it is kept: `scrypt$N$r$p$salt$key`, with a fresh salt each time. The PIN itself cannot be read from it, only tried. */
export async function hashPin(pin: string): Promise<string> {
  const salt = randomBytes(16);
  const key = await derive(pin, salt, cost);
  return ['scrypt', cost.N, cost.r, cost.p, salt.toString('base64url'), key.toString('base64url')].join('$');
}

/** Is this the PIN the hash was made from? Takes as long for a wrong one as for the right one. */
export async function verifyPin(pin: string, hash: string): Promise<boolean> {
  const [method, N, r, p, salt, key] = hash.split('$');
  if (method !== 'scrypt' || salt === undefined || key === undefined) return false;
  const wanted = Buffer.from(key, 'base64url');
  const found = await derive(pin, Buffer.from(salt, 'base64url'), { N: Number(N), r: Number(r), p: Number(p) });
  return found.length === wanted.length && timingSafeEqual(found, wanted);
}
