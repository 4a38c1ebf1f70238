import { expect, it } from 'vitest';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { shouldSkip, skipAfter, startSkip } from '../../../shared/sampling/skip-lot/index.ts';
import type { SkipState } from '../../../shared/sampling/skip-lot/index.ts';

// SkSP-2: Perry, Journal of Quality Technology 5 (1973) 123 (from memory). "decided here" = the source is silent.

const start = startSkip({ clearance: 4, oneIn: 3 });
/** A accepted, R not accepted, s passed over, r came back and was not accepted, a came back and was accepted. */
const after = (lots: string, from: SkipState = start): SkipState =>
  [...lots].reduce((state, lot) => skipAfter(state, { accepted: lot === 'A' || lot === 'a', original: lot !== 'a' && lot !== 'r', skipped: lot === 's' }), from);

it('inspects every lot until the clearance number of lots in a row was accepted', () => {
  expect(after('AAA')).toMatchObject({ skipping: false, acceptedInRow: 3 });
  expect(after('AAAA')).toMatchObject({ skipping: true, acceptedInRow: 4 });
  expect(after('AAARAAA')).toMatchObject({ skipping: false, acceptedInRow: 3 });
});

it('goes on skipping while inspected lots are accepted, and stops at the first that is not', () => {
  expect(after('AAAAsAssAs').skipping).toBe(true);
  expect(after('AAAAsR')).toMatchObject({ skipping: false, acceptedInRow: 0 });
  expect(after('AAAAsRAAAA').skipping).toBe(true);
});

it('counts neither lots passed over nor lots that came back (decided here)', () => {
  expect(after('AAsa')).toEqual(after('AA'));
  expect(after('AAAAr').skipping).toBe(true);
});

it('passes a lot over only while skipping, and inspects a third of them', () => {
  expect(shouldSkip(start, 0.99)).toBe(false);
  const chances = Array.from({ length: 3000 }, (_, at) => (at + 0.5) / 3000);
  expect(chances.filter((chance) => !shouldSkip(after('AAAA'), chance))).toHaveLength(1000);
});

it('refuses parameters and chances outside their range', () => {
  for (const wrong of [{ clearance: 0, oneIn: 2 }, { clearance: 4, oneIn: 1 }, { clearance: 2.5, oneIn: 2 }]) expect(() => startSkip(wrong)).toThrow(OutsideDomain);
  expect(() => shouldSkip(start, 1.5)).toThrow(OutsideDomain);
});
