import { createHash } from 'node:crypto';
import type { Head } from './journal.ts';

/**
 * SHA-256 over one line a stream, `["stream",version,"hash"]` and a line feed, streams in code-point order.
 * Two journals with the same digest hold the same slips, for each head's hash covers its whole stream.
 * @param heads in code-point order of the stream, as `Journal.heads` gives them
 */
export function digestOfHeads(heads: Iterable<Head>): string {
  const digest = createHash('sha256');
  for (const { stream, version, hash } of heads) digest.update(`${JSON.stringify([stream, version, hash])}\n`);
  return digest.digest('hex');
}
