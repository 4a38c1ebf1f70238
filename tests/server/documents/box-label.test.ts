import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { boxLabelCode, boxLabelPdf, boxLabelPng, boxLabelSvg, labelSheetPdf, labelSizes, type LabelSize, type PrinterDpi } from '../../../server/documents/label/index.ts';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { readBoxCode } from '../../../shared/traveller/box-code/index.ts';
import { readCode } from './read-code.ts';
import { sampleLabel } from './sample-label.ts';

let folder = '';
beforeAll(() => { folder = mkdtempSync(join(tmpdir(), 'label-')); });
afterAll(() => rmSync(folder, { recursive: true }));

const decode = (png: Uint8Array): Promise<string> => readCode(png, 'DataMatrix');

const choices = (Object.keys(labelSizes) as LabelSize[]).flatMap((size) => ([203, 300] as PrinterDpi[]).map((dpi) => ({ size, dpi })));

describe('the picture of a label', () => {
  it.each(choices)('$size mm at $dpi dpi decodes, by a decoder that is not the encoder, to the very bytes', async ({ size, dpi }) => {
    const code = await decode(boxLabelPng(sampleLabel, { size, dpi }));
    expect(code).toBe(boxLabelCode(sampleLabel));
    expect(readBoxCode(code)).toEqual({
      ok: true,
      fields: { item: 'CNMG120408-M7', lot: 'L26-004217', serial: 'B26004217-013', quantity: 10, packedOn: '2026-11-18', country: 'PT' },
    });
  });

  it.each([
    { dpi: 203, dots: [800, 400], perMetre: 8000, source: '8 dots a millimetre' },
    { dpi: 300, dots: [1181, 591], perMetre: 11811, source: '300 / 25.4 dots a millimetre' },
  ] as const)('knows its size at $dpi dpi ($source)', ({ dpi, dots, perMetre }) => {
    const png = boxLabelPng(sampleLabel, { dpi });
    const { width, height } = PNG.sync.read(png);
    expect([width, height]).toEqual(dots);
    expect(png.readUInt32BE(png.indexOf('pHYs') + 4)).toBe(perMetre);
  });

  // ≥ 0.25 mm: common practice; whole dots a module: derived from the printer's pitch; quiet zone of one module: ISO/IEC 16022, from memory.
  it.each(choices)('$size mm at $dpi dpi: every module is one number of whole dots, at least 0.25 mm, and white lies around the code', ({ size, dpi }) => {
    const { width, height, data } = PNG.sync.read(boxLabelPng(sampleLabel, { size, dpi }));
    const isDark = (x: number, y: number): boolean => (data[(y * width + x) * 4] ?? 255) < 128;
    const margin = Math.round(0.03 * width);
    const column = (x: number): number => Array.from({ length: height }, (_, y) => y).slice(Math.round(height * 0.19), Math.round(height * 0.87)).filter((y) => isDark(x, y)).length;
    // The left bar of the code is its longest column of dots right of the text; walk to it from the right.
    const inner = Array.from({ length: Math.round(width * 0.24) }, (_, i) => width - margin - 1 - i);
    const left = inner.reduce((best, x) => (column(x) >= column(best) ? x : best));
    const side = column(left);
    const dots = side / 32;
    expect(Number.isInteger(dots), `${side} dots for 32 modules`).toBe(true);
    expect(dots / (width / labelSizes[size].widthMm)).toBeGreaterThanOrEqual(0.25);
    for (let x = left - dots; x < left; x += 1) expect(column(x), `column ${x} left of the code`).toBe(0);
    for (let x = left + side; x < left + side + dots; x += 1) expect(column(x), `column ${x} right of the code`).toBe(0);
  });
});

describe('the other ways of drawing it', () => {
  it('writes every word of the label into the PDF, and the page has the label\'s size', async () => {
    const file = join(folder, 'label.pdf');
    writeFileSync(file, await boxLabelPdf({ ...sampleLabel, reprint: 2, customerItem: '4711-22' }));
    const text = execFileSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' });
    for (const words of ['CNMG 120408-M7', 'DEMO-7', 'Ti(C,N) + Al₂O₃', '10 pcs', 'L26-004217', 'B26004217-013', '2026-11-18', 'C26-000417', 'PT', '4711-22',
      'REPRINT 2', 'INVENTED DEMO DATA', 'SHARP', 'HEAVY', 'Follow your site’s rules']) expect(text).toContain(words);
    expect(execFileSync('pdfinfo', [file], { encoding: 'utf8' })).toMatch(/Page size:\s+283\.46\d* x 141\.73\d* pts/);
    execFileSync('qpdf', ['--check', file]);
  });

  it('the PDF, printed at 203 dpi, decodes to the very bytes', async () => {
    const file = join(folder, 'print.pdf');
    writeFileSync(file, await boxLabelPdf(sampleLabel));
    execFileSync('pdftoppm', ['-r', '203.2', '-png', '-singlefile', file, join(folder, 'print')]);
    expect(await decode(readFileSync(join(folder, 'print.png')))).toBe(boxLabelCode(sampleLabel));
  });

  it('the SVG has true millimetres and names the box for those who cannot see it', () => {
    const svg = boxLabelSvg({ ...sampleLabel, plant: 'Bar & <Rod>' });
    expect(svg).toContain('width="100mm" height="50mm"');
    expect(svg).toContain('<title>Box label, CNMG 120408-M7, box B26004217-013</title>');
    expect(svg).toContain('Bar &amp; &lt;Rod&gt;');
    expect(svg).not.toMatch(/NaN|undefined/);
  });

  it('marks a reprint and demo data, and neither when it is neither', () => {
    const plain = boxLabelSvg({ ...sampleLabel, demo: false });
    expect(plain).not.toContain('REPRINT');
    expect(plain).not.toContain('INVENTED');
    expect(boxLabelSvg({ ...sampleLabel, reprint: 3 })).toContain('REPRINT 3');
    expect(boxLabelSvg(sampleLabel)).toContain('INVENTED DEMO DATA');
  });

  it('prints many labels, a page each', async () => {
    const file = join(folder, 'many.pdf');
    const many = Array.from({ length: 40 }, (_, i) => ({ ...sampleLabel, boxSerial: `B26004217-${String(i + 1).padStart(3, '0')}` }));
    writeFileSync(file, await labelSheetPdf(many, { size: '70x35', dpi: 300 }));
    expect(execFileSync('pdfinfo', [file], { encoding: 'utf8' })).toMatch(/Pages:\s+40/);
    expect(execFileSync('pdftotext', ['-f', '40', file, '-'], { encoding: 'utf8' })).toContain('B26004217-040');
  });
});

it('the longest numbers still make a code that decodes on the smallest label', async () => {
  const longest = { ...sampleLabel, item: 'W'.repeat(25), lot: 'X9'.repeat(10), boxSerial: 'Z8'.repeat(10), quantity: 99_999_999 };
  expect(await decode(boxLabelPng(longest, { size: '70x35', dpi: 203 }))).toBe(boxLabelCode(longest));
});

it('a number that cannot stand in the code is the caller\'s bug', () => {
  expect(() => boxLabelPng({ ...sampleLabel, lot: 'L26/4217' })).toThrow(OutsideDomain);
  expect(() => boxLabelPng({ ...sampleLabel, reprint: -1 })).toThrow(OutsideDomain);
});
