import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { holdTagPdf, type HoldTagData } from '../../../server/documents/hold-tag/index.ts';
import { travellerSheetPdf, type TravellerSheetAbout } from '../../../server/documents/traveller-sheet/index.ts';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { readCode } from './read-code.ts';

let folder = '';
beforeAll(() => { folder = mkdtempSync(join(tmpdir(), 'sheets-')); });
afterAll(() => rmSync(folder, { recursive: true }));

const textOf = (name: string, pdf: Buffer): string => {
  const path = join(folder, name);
  writeFileSync(path, pdf);
  execFileSync('qpdf', ['--check', path]);
  return execFileSync('pdftotext', ['-raw', path, '-'], { encoding: 'utf8' }).replace(/[ \n]+/g, ' ');
};

const tag: HoldTagData = {
  kind: 'insertLot', number: 'L26-004217', product: 'CNMG 120408-M7', quantity: 1180, gate: 'Final visual', reason: 'Rejected: 4 found in 80, accept to 2.',
  by: { name: 'Günter Weiß', badge: '3401' }, at: '2026-11-16T10:21:00+01:00', demo: true, language: 'en',
};
const about: TravellerSheetAbout = {
  plant: 'Haldenau Carbide Works', number: 'L26-004217', subject: 'CNMG 120408-M7, grade DEMO-7', printedAt: '2026-11-18T08:00:00+01:00', demo: true, language: 'en',
};

it('a hold tag says what is held, why, by whom, and what not to do', async () => {
  const text = textOf('tag.pdf', await holdTagPdf(tag));
  for (const words of ['HOLD', 'Do not move', 'L26-004217', 'CNMG 120408-M7', '1180 pieces', 'Final visual', tag.reason, 'Günter Weiß (3401)', '2026-11-16 10:21 +01:00', 'INVENTED DEMO DATA']) expect(text).toContain(words);
  execFileSync('pdftoppm', ['-r', '100', '-singlefile', '-png', join(folder, 'tag.pdf'), join(folder, 'tag')]);
  expect(await readCode(readFileSync(join(folder, 'tag.png')), 'DataMatrix')).toBe('L26-004217');
});

it('a hold tag says a long reason to its end, on one page, and takes none it could not', async () => {
  const reason = `${'A crack was seen on the rake face. '.repeat(24)}The last word.`;
  const text = textOf('long-tag.pdf', await holdTagPdf({ ...tag, reason, product: 'X'.repeat(90), gate: null, quantity: null, demo: false }));
  expect(execFileSync('pdfinfo', [join(folder, 'long-tag.pdf')], { encoding: 'utf8' })).toMatch(/Pages:\s+1\n/);
  expect(text).toContain(reason);
  expect(() => holdTagPdf({ ...tag, reason: reason.repeat(4) })).toThrow(OutsideDomain);
});

it('a printed traveller says every slip, in the order given, on numbered pages', async () => {
  const slips = Array.from({ length: 150 }, (_, i) => ({ at: '2026-11-16T10:21:00+01:00', by: 'Marisol Peña (3348)', bench: 'Gauge bench 1', sentence: `Piece ${i + 1}: 12.70${i % 10} mm` }));
  const text = textOf('traveller.pdf', await travellerSheetPdf(slips, about));
  const places = slips.map(({ sentence }) => text.indexOf(`${sentence} `));
  expect(places.every((place, i) => place > (places[i - 1] ?? 0))).toBe(true);
  expect(text).toContain('150 slips');
  expect(text).toMatch(/Page 4 of 4/);
  expect(text).toContain('INVENTED DEMO DATA');
});

it('an empty traveller says so', async () => {
  expect(textOf('empty.pdf', await travellerSheetPdf([], about))).toContain('No slip hangs on this traveller yet.');
});
