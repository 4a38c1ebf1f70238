import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { certificatePdf, verificationText } from '../../../server/documents/certificate/index.ts';
import { canonicalJson, sealCertificate, verifyCertificate } from '../../../server/documents/signing/index.ts';
import { writeMoment, writeNumber } from '../../../server/documents/sheet/write-numbers.ts';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { certificateContentSchema, type CertificateData } from '../../../shared/wire/certificate-data.ts';
import { readCode } from './read-code.ts';
import { plantKey, plantPublicKey, sampleContent } from './sample-certificate.ts';

const data = sealCertificate(sampleContent, plantKey);
let folder = '';
let file = '';
let pdf: Buffer = Buffer.alloc(0);
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'certificate-'));
  file = join(folder, 'certificate.pdf');
  pdf = await certificatePdf(data);
  writeFileSync(file, pdf);
});
afterAll(() => rmSync(folder, { recursive: true }));

const run = (tool: string, ...parts: readonly string[]): string => execFileSync(tool, parts, { encoding: 'utf8' });
/** The words of a PDF in the order they are written, as a screen reader has them; blanks and line ends as one blank: a passage may be wrapped. */
const textOf = (path: string): string => run('pdftotext', '-raw', path, '-').replace(/\s+/g, ' ');
const write = async (name: string, content: CertificateData): Promise<string> => {
  const path = join(folder, name);
  writeFileSync(path, await certificatePdf(content));
  return path;
};

describe('the page', () => {
  it('says every number, name and day of its data', () => {
    const text = textOf(file);
    const { language, lot, product, certificate, purchaser } = data;
    const expected = [
      certificate.number, certificate.issuedOn, lot.number, `${lot.quantity} pieces`, ...lot.powderBatches, ...lot.furnaceCharges, ...lot.coatingCharges,
      product.designation, product.grade, product.coating, product.specification, product.marking, purchaser?.name, purchaser?.order, data.plant.name, data.plant.address,
      ...data.gates.flatMap(({ gate, workedOn, characteristic, method, plan, n, by, at }) => [gate, workedOn.number, characteristic, method, plan, String(n), `${by.name} (${by.badge})`, writeMoment(at)]),
      ...data.measured.flatMap(({ name, workedOn, n, mean, s, min, max, lower, upper, decimals, decisionRule, uncertainty }) => [
        name, workedOn.number, String(n), decisionRule, writeNumber(mean, decimals + 1, language),
        ...[s, uncertainty].flatMap((value) => (value === null ? [] : [writeNumber(value, decimals + 1, language)])),
        ...[min, max, lower, upper].flatMap((value) => (value === null ? [] : [writeNumber(value, decimals, language)])),
      ]),
      ...data.concessions.flatMap(({ text: words, by, at }) => [words, by.name, writeMoment(at)]),
      ...data.corrections.flatMap(({ what, was, is, reason }) => [what, `was ${was}`, `is ${is}`, reason]),
      ...data.notes, ...data.signatures.flatMap(({ name, badge, role, meaning, at }) => [`${name} (${badge})`, role, meaning, writeMoment(at)]),
      data.verification.shortCode, data.verification.keyId,
    ];
    for (const words of expected) expect(text, String(words)).toContain(words ?? 'missing');
    for (const { result, n } of data.gates) {
      if (result.judgedBy === 'found') expect(text).toContain(`${n} ${result.found} found Ac ${result.acceptance}, Re ${result.rejection}`);
      if (result.judgedBy === 'statistic') expect(text).toContain(`≥ ${writeNumber(result.limit, result.decimals, language)}`);
      if (result.judgedBy === 'limits') expect(text).toContain(writeNumber(result.value, result.decimals, language));
      if (result.judgedBy === 'each') expect(text).toContain(`${result.outside === 0 ? `all ${n} within` : `${result.outside} of ${n} outside`} ${writeNumber(result.lower ?? Number.NaN, result.decimals, language)} … ${writeNumber(result.upper ?? Number.NaN, result.decimals, language)} ${result.unit ?? ''}`);
      if (result.judgedBy === 'none') expect(text).toContain(`${n} none found none`);
      if (result.judgedBy === 'grade') expect(text).toContain(result.grade);
    }
    expect(text.replace(/ /g, '')).toContain(data.verification.digest);
    expect(text.replace(/ /g, '')).toContain(data.verification.signature);
  });

  it('keeps a rejection beside its re-inspection and a concession in plain sight', () => {
    const text = textOf(file);
    expect(text).toMatch(/Final visual lot L26-004217 Günter Weiß \(3401\) 2026-11-16 10:21 \+01:00 REJECTED.*4 found Ac 2, Re 3 REJECTED.*Final visual lot L26-004217 re-inspection Günter/);
    expect(text).toMatch(/2026-11-17 09:48 \+01:00 ON CONCESSION.*9 found Ac 7, Re 8 conceded/);
    expect(text).toContain('except as granted by concession below');
    expect(text).toContain('CONCESSION For 1180 pieces');
  });

  it('says on every page that demo data is invented, numbers its pages and repeats the head of the table and of the verdict', async () => {
    const [first] = sampleContent.gates;
    const path = await write('many.pdf', sealCertificate({ ...sampleContent, gates: Array.from({ length: 60 }, () => first ?? []).flat(), measured: [] }, plantKey));
    const pages = Number(/Pages:\s+(\d+)/.exec(run('pdfinfo', path))?.[1]);
    expect(pages).toBe(3);
    for (let page = 1; page <= pages; page += 1) {
      const text = run('pdftotext', '-f', String(page), '-l', String(page), path, '-');
      expect(text).toContain('INVENTED DEMO DATA');
      expect(text).toContain(`Page ${page} of ${pages}`);
      for (const head of ['Method', 'Limit', 'Verdict', 'Powder lab release', 'powder batch P26-0311']) expect(text, `page ${page}`).toContain(head);
      expect(text.includes('continued'), `page ${page}`).toBe(page > 1);
    }
  });

  it('says nothing of demo data or concessions where there are none', async () => {
    const text = textOf(await write('plain.pdf', sealCertificate({ ...sampleContent, demo: false, concessions: [], purchaser: null }, plantKey)));
    expect(text).not.toContain('INVENTED');
    expect(text).not.toContain('except as granted');
    expect(text).toContain('No concession was granted.');
  });

  it('keeps the signatures with their check, and never alone on a page, however long the table of gates', async () => {
    for (let count = 1; count <= 24; count += 1) {
      const gates = Array.from({ length: count }, (_, i) => sampleContent.gates[i % sampleContent.gates.length] ?? []).flat();
      const path = await write('long.pdf', sealCertificate({ ...sampleContent, gates, notes: [] }, plantKey));
      const pages = run('pdftotext', path, '-').split('\f').filter((text) => text.trim() !== '');
      const last = pages.at(-1) ?? '';
      for (const words of ['Corrected after first entry', 'Signed', 'Rosalind Achterberg (1001)', 'Check this certificate']) expect(last, `${count} gates`).toContain(words);
      expect(pages.length, `${count} gates`).toBeLessThanOrEqual(3);
    }
  });

  it('writes decimals as the language does', async () => {
    expect(textOf(await write('de.pdf', sealCertificate({ ...sampleContent, language: 'de' }, plantKey)))).toContain('12,7034');
  });

  it('refuses a letter the typeface lacks rather than print an empty box', () => {
    const sealed = sealCertificate({ ...sampleContent, purchaser: { name: '硬質合金', order: null, orderLine: null } }, plantKey);
    expect(() => certificatePdf(sealed)).toThrow(OutsideDomain);
  });

  it('shows a square code that holds its number and digest', async () => {
    execFileSync('pdftoppm', ['-r', '200', '-f', '2', '-l', '2', '-singlefile', '-png', file, join(folder, 'page')]);
    const code = await readCode(readFileSync(join(folder, 'page.png')), 'QRCode');
    expect(code).toBe(verificationText(data));
    expect(code).toBe(`CERTIFICATE C26-000417 SHA-256 ${data.verification.digest.toUpperCase()}`);
  });
});

describe('the file', () => {
  it('is sound, tagged, titled and claims PDF/A-3b', () => {
    expect(run('qpdf', '--check', file)).toContain('No syntax or stream encoding errors found');
    const info = run('pdfinfo', file);
    expect(info).toMatch(/Tagged:\s+yes/);
    expect(info).toMatch(/Title:\s+Inspection certificate C26-000417/);
    expect(run('pdfinfo', '-meta', file)).toMatch(/<pdfaid:part>3<\/pdfaid:part>\s*<pdfaid:conformance>B</);
    const structure = run('pdfinfo', '-struct', file);
    for (const tag of ['Document', 'H1', 'H2', 'Table', 'TR', 'TH', 'TD', 'Figure']) expect(structure).toMatch(new RegExp(`^ *${tag}\\b`, 'm'));
    expect(run('pdffonts', file).split('\n').slice(2).filter((line) => line.trim() !== '').every((line) => /yes yes yes/.test(line))).toBe(true);
  });

  it('is the same to the byte for the same data', async () => {
    expect((await certificatePdf(data)).equals(pdf)).toBe(true);
  });

  it('carries its data as a file, as another tool takes it out', () => {
    run('pdfdetach', '-save', '1', '-o', join(folder, 'data.json'), file);
    const attached = readFileSync(join(folder, 'data.json'), 'utf8');
    expect(JSON.parse(attached)).toEqual(data);
    expect(attached).toBe(canonicalJson(data));
    expect(run('pdfdetach', '-list', file)).toContain('data.json');
    expect(verifyCertificate(attached, [plantPublicKey])).toMatchObject({ ok: true });
  });

  it('still verifies after a common tool has rewritten it', () => {
    for (const [name, ...how] of [['objects', '--object-streams=generate'], ['plain', '--stream-data=uncompress'], ['line', '--linearize']]) {
      const path = join(folder, `${name ?? ''}.pdf`);
      run('qpdf', ...how, file, path);
      expect(verifyCertificate(readFileSync(path), [plantPublicKey]), name).toMatchObject({ ok: true });
    }
  });
});

it('a certificate without gates or with an unknown field is no certificate', () => {
  expect(certificateContentSchema.safeParse({ ...sampleContent, gates: [] }).success).toBe(false);
  expect(certificateContentSchema.safeParse({ ...sampleContent, colour: 'blue' }).success).toBe(false);
  expect(certificateContentSchema.safeParse({ ...sampleContent, lot: { ...sampleContent.lot, number: 'L26\u0007' } }).success).toBe(false);
  expect(certificateContentSchema.safeParse(sampleContent).success).toBe(true);
});
