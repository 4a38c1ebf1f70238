import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';

/**
 * One text for one value, whoever writes it: no blanks, names sorted by UTF-16 code units, numbers and strings as ECMAScript writes them.
 * @param value plain JSON: null, booleans, finite numbers, strings, arrays, plain objects; a property that is undefined is no property
 * @throws OutsideDomain for anything else: it could not be read back the same
 * @see RFC 8785, JSON Canonicalization Scheme (from memory)
 */
export function canonicalJson(value: unknown): string {
  if (value === null || typeof value === 'boolean') return JSON.stringify(value);
  if (typeof value === 'string') {
    if (/\p{Surrogate}/u.test(value)) throw new OutsideDomain('value', 'well-formed text', JSON.stringify(value));
    return JSON.stringify(value);
  }
  if (typeof value === 'number') {
    if (!Number.isFinite(value)) throw new OutsideDomain('value', 'a finite number', value);
    return JSON.stringify(value);
  }
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value === 'object') {
    const entries = Object.entries(value).filter(([, member]) => member !== undefined).sort(([a], [b]) => (a < b ? -1 : 1));
    return `{${entries.map(([name, member]) => `${canonicalJson(name)}:${canonicalJson(member)}`).join(',')}}`;
  }
  throw new OutsideDomain('value', 'plain JSON', typeof value);
}
