import { hash } from 'node:crypto';

/** Stands where the first slip of a stream names the hash of the slip before it. */
export const noSlipBefore = '0'.repeat(64);

/** Everything a slip's hash covers. `bodyText` is the body's JSON exactly as it is stored. */
export interface HashedParts {
  readonly prevHash: string;
  readonly stream: string;
  readonly version: number;
  readonly type: string;
  readonly schema: number;
  readonly at: string;
  readonly by: string;
  readonly bench: string;
  readonly clientId: string;
  readonly bodyText: string;
}

/**
 * The text a slip's hash is taken over: a JSON array of the nine parts around the body, a line feed, the body text.
 * JSON text holds no bare line feed, so no two slips share a text.
 */
export function canonicalText(slip: HashedParts): string {
  const around = [slip.prevHash, slip.stream, slip.version, slip.type, slip.schema, slip.at, slip.by, slip.bench, slip.clientId];
  return `${JSON.stringify(around)}\n${slip.bodyText}`;
}

/** SHA-256 (FIPS 180-4) of the canonical text in UTF-8, 64 hexadecimal digits. */
export function slipHash(slip: HashedParts): string {
  return hash('sha256', canonicalText(slip));
}
