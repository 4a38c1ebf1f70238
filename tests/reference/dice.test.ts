import { expect, it } from 'vitest';
import { fnv1a64, nextWord, spread } from '../../shared/sampling/draw/dice.ts';

it.each([
  ['', 0xcbf29ce484222325n],
  ['a', 0xaf63dc4c8601ec8cn],
  ['foobar', 0x85944171f73967e8n],
])('64-bit FNV-1a of "%s" (published vectors of Fowler, Noll, Vo; seen)', (text, hash) => {
  expect(fnv1a64(text)).toBe(hash);
});

it('SplitMix64 from 1234567 (published first two values; seen)', () => {
  const halves = [...spread(1234567n)].map(BigInt);
  const [low = 0n, high = 0n, nextLow = 0n, nextHigh = 0n] = halves;
  expect([low | (high << 32n), nextLow | (nextHigh << 32n)]).toEqual([6457827717110365317n, 3203168211198807973n]);
});

it('xoshiro128** from 1, 2, 3, 4 (values of the authors\' reference program, version 1.1; seen)', () => {
  const words = Uint32Array.of(1, 2, 3, 4);
  expect(Array.from({ length: 10 }, () => nextWord(words))).toEqual([
    11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
  ]);
});
