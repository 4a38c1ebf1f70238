import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';

/** Data code words of the square symbols, 10 × 10 … 64 × 64. @see ISO/IEC 16022 (from memory; digits = 2 × data words checks them) */
const capacities = [3, 5, 8, 12, 18, 22, 30, 36, 44, 62, 86, 114, 144, 174, 204, 280] as const;

/** One code word stands for the whole frame `[)> RS 06 GS … RS EOT`; a reader gives back all nine characters. @see ISO/IEC 16022, Macro 06 (from memory) */
const macro06 = 237;
const frame = /^\[\)>\x1e06\x1d([\s\S]*)\x1e\x04$/;

/**
 * A text as Data Matrix code words in the ASCII scheme, two digits to a word, padded to the least square symbol that holds it.
 * Our numbers are mostly digits, so no other scheme would make a smaller symbol of a usual label.
 * @param text characters U+0000 … U+007F
 * @throws OutsideDomain for other characters or more than 280 words
 * @see ISO/IEC 16022, 5.2.3 ASCII encodation and 5.2.4 padding (from memory; held by a decoder that shares no code with this)
 */
export function codeWords(text: string): readonly number[] {
  const framed = frame.exec(text)?.[1];
  const words = framed === undefined ? asciiWords(text) : [macro06, ...asciiWords(framed)];
  const capacity = capacities.find((most) => most >= words.length);
  if (capacity === undefined) throw new OutsideDomain('text', 'at most 280 code words', text);
  return [...words, ...Array.from({ length: capacity - words.length }, (_, i) => (i === 0 ? 129 : padWord(words.length + i + 1)))];
}

function asciiWords(text: string): readonly number[] {
  const words: number[] = [];
  for (let i = 0; i < text.length; i += 1) {
    const pair = /^\d\d/.exec(text.slice(i, i + 2))?.[0];
    const character = text.charCodeAt(i);
    if (character > 127) throw new OutsideDomain('text', 'of characters U+0000 … U+007F', JSON.stringify(text));
    words.push(pair === undefined ? character + 1 : 130 + Number(pair));
    if (pair !== undefined) i += 1;
  }
  return words;
}

/** Padding is scrambled by its place, so that no even field of modules confuses a reader. */
function padWord(place: number): number {
  const word = 129 + ((149 * place) % 253) + 1;
  return word <= 254 ? word : word - 254;
}
