import bwipjs from 'bwip-js/node';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { codeWords } from '../../../server/documents/codes/code-words.ts';
import { dataMatrix, drawWords } from '../../../server/documents/codes/data-matrix.ts';
import type { ModuleMatrix } from '../../../server/documents/codes/module-matrix.ts';
import { bilevelPng } from '../../../server/documents/label/png-file.ts';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { buildBoxCode } from '../../../shared/traveller/box-code/index.ts';
import { readCode } from './read-code.ts';

/** Four dots a module, four modules of white around. */
function picture({ modules, dark }: ModuleMatrix): Buffer {
  const side = (modules + 8) * 4;
  const dots = Uint8Array.from({ length: side * side }, (_, i) => {
    const [x, y] = [Math.floor((i % side) / 4) - 4, Math.floor(i / side / 4) - 4];
    return x >= 0 && y >= 0 && x < modules && y < modules && dark[y * modules + x] === true ? 1 : 0;
  });
  return bilevelPng(dots, side, side, 8);
}

describe('code words', () => {
  // "123456" → 142 164 186 is the worked example of ISO/IEC 16022 (from memory).
  it('follow the worked example of the standard', () => {
    expect(codeWords('123456')).toEqual([142, 164, 186]);
  });

  it.each([
    { name: 'example A', text: '[)>\x1e06\x1d1PCNMG120408-M7\x1d1TL26-004217\x1dSB26004217-013\x1dQ10\x1d16D20261118\x1d4LPT\x1e\x04', modules: 32 },
    { name: 'example B', text: '[)>\x1e06\x1d1PDCGT11T304FN-F2\x1d1TL26-004219\x1dQ10\x1d9D20261120\x1d4LPT\x1e\x04', modules: 26 },
  ])('$name makes a symbol of $modules modules, as an open encoder found (derived)', ({ text, modules }) => {
    expect(dataMatrix(text).modules).toBe(modules);
    const [encoder] = bwipjs.raw('datamatrix', text, 'format=square');
    expect(encoder).toMatchObject({ pixx: modules });
  });

  it('refuse a letter outside ASCII and a text too long', () => {
    expect(() => dataMatrix('Ř')).toThrow(OutsideDomain);
    expect(() => dataMatrix('A'.repeat(281))).toThrow(OutsideDomain);
  });
});

it('what follows from a known symbol is what the encoder draws itself', () => {
  const boxes = fc.record({ lot: fc.integer({ min: 0, max: 9999 }), box: fc.integer({ min: 0, max: 999 }), quantity: fc.integer({ min: 1, max: 500 }) });
  fc.assert(fc.property(fc.array(boxes, { minLength: 2, maxLength: 12 }), (many) => {
    for (const { lot, box, quantity } of many) {
      const text = buildBoxCode({ item: 'CNMG120408-M7', lot: `L26-${lot}`, serial: `B${lot}-${box}`, quantity, packedOn: '2026-11-18' });
      expect(dataMatrix(text)).toEqual(drawWords(codeWords(text)));
    }
  }), { numRuns: 40 });
});

it('every box of a run of 300 decodes, by another\'s decoder, to its own bytes', async () => {
  for (let box = 0; box < 300; box += 1) {
    const text = buildBoxCode({ item: 'CNMG120408-M7', lot: 'L26-004217', serial: `B26004217-${String(box).padStart(3, '0')}`, quantity: 10, packedOn: '2026-11-18', country: 'PT' });
    expect(await readCode(picture(dataMatrix(text)), 'DataMatrix')).toBe(text);
  }
});

it('texts of every length decode to themselves', async () => {
  for (let length = 1; length <= 280; length += 3) {
    const text = Array.from({ length }, (_, i) => 'AB-7Z90K'[(i * 5 + length) % 8]).join('');
    expect(await readCode(picture(dataMatrix(text)), 'DataMatrix'), `${length} characters`).toBe(text);
  }
});
