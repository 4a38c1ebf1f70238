import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { certificatePdf } from '../../../server/documents/certificate/index.ts';
import { sealCertificate, verifyCertificate } from '../../../server/documents/signing/index.ts';
import { certificateWords } from '../../../shared/words/certificate.en.ts';
import { plantKey, plantPublicKey, sampleContent } from './sample-certificate.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'drawing-'));
});
afterAll(() => rmSync(folder, { recursive: true }));

const run = (tool: string, ...parts: readonly string[]): string => execFileSync(tool, parts, { encoding: 'utf8' });
const sealed = (designation: string) => sealCertificate({ ...sampleContent, product: { ...sampleContent.product, designation } }, plantKey);
async function drawn(designation: string, drawing = true): Promise<{ readonly path: string; readonly pages: number; readonly last: string }> {
  const path = join(folder, 'drawn.pdf');
  writeFileSync(path, await certificatePdf(sealed(designation), certificateWords, { drawing }));
  const pages = Number(/Pages:\s+(\d+)/.exec(run('pdfinfo', path))?.[1]);
  // Once line by line for the table, once in the order of the file for what stands aslant in the drawing.
  const last = ['-layout', '-raw'].map((how) => run('pdftotext', how, '-f', String(pages), '-l', String(pages), path, '-')).join('\n').replace(/[^\S\n]+/g, ' ');
  return { path, pages, last };
}

describe('the drawing page of a certificate', () => {
  it('comes last, on request, with every position, the drawing’s sizes and the limits of the class', async () => {
    const [without, { pages, last }] = [await drawn('CNMG 120408-M7', false), await drawn('CNMG 120408-M7')];
    expect(pages).toBe(without.pages + 1);
    expect(without.last).not.toContain('Drawing from the designation');
    // Limits of class M at d 12.7 and m: worked list of tests/reference/designation.test.ts.
    for (const words of ['Drawing from the designation CNMG 120408-M7', 'Rhombus, corner of 80°', 'd 12.7', 'm 3.088', 'l 12.9', 's 4.76', 'r 0.8', 'ε 80°', 'α 0°', '12.700 0.080 12.620 12.780', '3.088 0.130 2.958 3.218', '4.760 0.130 4.630 4.890', 'ISO 1832:2017', 'from memory, agrees with reproductions read', 'The seal is over the certificate’s data', `Page ${pages} of ${pages}`]) expect(last).toContain(words);
  });

  it('is tagged, its figure told in words, and the file stays sound', async () => {
    const { path } = await drawn('DCGT11T304FN');
    expect(run('qpdf', '--check', path)).toContain('No syntax or stream encoding errors found');
    const structure = run('pdfinfo', '-struct-text', path);
    expect(structure).toMatch(/Drawing from the designation/);
    expect((run('pdfinfo', '-struct', path).match(/^ *Figure\b/gm) ?? []).length).toBe(2);
    expect(run('qpdf', '--qdf', '--object-streams=disable', path, '-')).toContain('/Alt');
    expect(run('pdffonts', path).split('\n').slice(2).filter((line) => line.trim() !== '').every((line) => /yes yes yes/.test(line))).toBe(true);
  });

  it('changes nothing in the sealed data, and the seal holds', async () => {
    const { path } = await drawn('CNMG 120408-M7');
    const plain = await certificatePdf(sealed('CNMG 120408-M7'));
    const [one, other] = [verifyCertificate(readFileSync(path), [plantPublicKey]), verifyCertificate(plain, [plantPublicKey])];
    expect(one).toEqual(other);
    expect(one).toMatchObject({ ok: true });
  });

  it('is the same to the byte for the same data', async () => {
    const again = await certificatePdf(sealed('TNMG160404'), certificateWords, { drawing: true });
    expect((await certificatePdf(sealed('TNMG160404'), certificateWords, { drawing: true })).equals(again)).toBe(true);
  });

  it('says what it does not know: limits not in hand, a circle not in the code, a designation that is none', async () => {
    expect((await drawn('VNMG220408')).last).toContain('This limit changed between the editions of 2004 and');
    expect((await drawn('LNMG150408')).last).toContain('the code does not settle the inscribed circle');
    expect((await drawn('Wear ring 40/28')).last).toContain('“Wear ring 40/28” is no designation of ISO 1832 that can be read');
    expect((await drawn('RCMT1204M0')).last).not.toContain('Control dimension m');
  });

  it.each(['RCMT1204M0', 'SEKN1203AFTN', 'TNGA160408SN01020-QX', 'CCMT040204'])('%s takes one page', async (designation) => {
    expect((await drawn(designation)).pages).toBe((await drawn(designation, false)).pages + 1);
  });
});
