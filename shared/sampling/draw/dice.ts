import { requireWhole } from '../../ground/outside-domain.ts';

/** Dice that fall the same way for the same seed, on every machine. Not for secrets. */
export type Dice = {
  /** A whole number 1 … sides, each equally likely. @throws OutsideDomain unless sides is 1 … 2³² */
  readonly roll: (sides: number) => number;
};

const MASK_64 = (1n << 64n) - 1n;
const TWO_32 = 4_294_967_296;

/**
 * Dice from a seed text. The UTF-8 bytes are hashed by 64-bit FNV-1a, the hash is spread by SplitMix64 over four words, and these start
 * xoshiro128**, which gives 32 bits a turn (period 2¹²⁸ − 1). A roll throws away the incomplete last stretch of those 32 bits, so
 * no side is likelier than another.
 * @see Fowler, Noll, Vo (FNV-1a); Steele, Lea & Flood, OOPSLA 2014 (SplitMix64); Blackman & Vigna, ACM TOMS 47 (2021) (xoshiro)
 */
export function diceFrom(seed: string): Dice {
  const words = spread(fnv1a64(seed));
  return {
    roll: (sides) => {
      requireWhole('sides', sides, 1, TWO_32);
      const usable = TWO_32 - (TWO_32 % sides);
      for (;;) {
        const drawn = nextWord(words);
        if (drawn < usable) return 1 + (drawn % sides);
      }
    },
  };
}

/** 64-bit FNV-1a of the text's UTF-8 bytes. */
export function fnv1a64(text: string): bigint {
  let hash = 0xcbf29ce484222325n;
  for (const byte of new TextEncoder().encode(text)) hash = ((hash ^ BigInt(byte)) * 0x100000001b3n) & MASK_64;
  return hash;
}

/** Two turns of SplitMix64 as four 32-bit words, low half first. */
export function spread(start: bigint): Uint32Array {
  const words = new Uint32Array(4);
  let state = start;
  for (const at of [0, 2]) {
    state = (state + 0x9e3779b97f4a7c15n) & MASK_64;
    let mixed = state;
    mixed = ((mixed ^ (mixed >> 30n)) * 0xbf58476d1ce4e5b9n) & MASK_64;
    mixed = ((mixed ^ (mixed >> 27n)) * 0x94d049bb133111ebn) & MASK_64;
    mixed ^= mixed >> 31n;
    words[at] = Number(mixed & 0xffffffffn);
    words[at + 1] = Number(mixed >> 32n);
  }
  return words;
}

/** One turn of xoshiro128** on four words, in place: a whole number 0 … 2³² − 1. */
export function nextWord(words: Uint32Array): number {
  const [a = 0, b = 0, c = 0, d = 0] = words;
  const drawn = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
  words[0] = a ^ d ^ b;
  words[1] = b ^ c ^ a;
  words[2] = c ^ a ^ (b << 9);
  words[3] = rotated(d ^ b, 11);
  return drawn;
}

function rotated(word: number, bits: number): number {
  return (word << bits) | (word >>> (32 - bits));
}
