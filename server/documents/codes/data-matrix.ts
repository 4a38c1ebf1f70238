import bwipjs from 'bwip-js/node';
import { codeWords } from './code-words.ts';
import { matrixOf, type ModuleMatrix } from './module-matrix.ts';

/** What is known of one size of symbol: a drawn one, and which modules one bit of one code word turns over. */
interface Known {
  words: readonly number[];
  dark: readonly boolean[];
  readonly turnedBy: Map<number, readonly boolean[]>;
}

const knownBySize = new Map<number, Known>();
/** More unknown bits than this, and drawing anew is cheaper than learning. */
const mostToLearn = 6;

/**
 * Data Matrix ECC 200, square.
 *
 * The symbol is linear: its error correction is linear over GF(2⁸), hence over GF(2), and its modules are the bits in a fixed order. Two symbols of
 * one size therefore differ by exactly the modules that their differing bits turn over. In a print run only the box number changes, so the
 * encoder is asked for a few symbols and the rest follow from them.
 * @param text characters U+0000 … U+007F
 * @throws OutsideDomain when the text cannot be encoded
 * @see ISO/IEC 16022; tests compare with the encoder's own drawing and with another's decoder
 */
export function dataMatrix(text: string): ModuleMatrix {
  const words = codeWords(text);
  const known = knownBySize.get(words.length);
  const turned = known === undefined ? null : turnedBits(known.words, words);
  if (known === undefined || turned === null || turned.filter((bit) => !known.turnedBy.has(bit)).length > mostToLearn) {
    const drawn = drawWords(words);
    knownBySize.set(words.length, { words, dark: drawn.dark, turnedBy: known?.turnedBy ?? new Map<number, readonly boolean[]>() });
    return drawn;
  }
  const dark = [...known.dark];
  for (const bit of turned) {
    const pattern = known.turnedBy.get(bit) ?? learn(known, bit);
    for (let i = 0; i < dark.length; i += 1) if (pattern[i] === true) dark[i] = dark[i] !== true;
  }
  return { modules: Math.sqrt(dark.length), dark };
}

/** The bits in which two runs of code words differ: word × 8 + bit. */
function turnedBits(from: readonly number[], to: readonly number[]): readonly number[] {
  return to.flatMap((word, i) => {
    const difference = word ^ (from[i] ?? 0);
    return [0, 1, 2, 3, 4, 5, 6, 7].flatMap((bit) => ((difference >> bit) & 1 ? [i * 8 + bit] : []));
  });
}

function learn(known: Known, bit: number): readonly boolean[] {
  const at = Math.floor(bit / 8);
  const { dark } = drawWords(known.words.map((word, i) => (i === at ? word ^ (1 << (bit % 8)) : word)));
  const pattern = dark.map((module, i) => module !== known.dark[i]);
  known.turnedBy.set(bit, pattern);
  return pattern;
}

/** The encoder's own drawing of these code words. */
export function drawWords(words: readonly number[]): ModuleMatrix {
  return matrixOf(bwipjs.raw('datamatrix', words.map((word) => `^${String(word).padStart(3, '0')}`).join(''), 'raw format=square'));
}
