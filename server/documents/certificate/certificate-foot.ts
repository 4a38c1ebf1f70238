import type { CertificateData } from '../../../shared/wire/certificate-data.ts';
import type { CertificateWords } from '../../../shared/words/certificate.en.ts';
import { qrCode } from '../codes/module-matrix.ts';
import { mm } from '../sheet/ink.ts';
import type { Sheet, TextStyle } from '../sheet/sheet.ts';
import { drawTable } from '../sheet/table.ts';
import { wrapText } from '../sheet/wrap-text.ts';
import { writeMoment } from '../sheet/write-numbers.ts';

const plain: TextStyle = { face: 'text', size: 8.4 };
const small: TextStyle = { face: 'narrow', size: 7.6, ink: 'soft' };

interface Passage {
  readonly text: string;
  readonly style: TextStyle;
  /** Points below it. */
  readonly after: number;
}

/**
 * The end of the certificate: what was changed after first entry, what the reader must know besides, who signed and how to check it. It stays on
 * one page where it can, and signatures with their check always do: a signature alone on a sheet signs nothing.
 */
export function drawEnd(sheet: Sheet, data: CertificateData, words: CertificateWords): void {
  const corrections = correctionPassages(data, words);
  const notes = data.notes.map((text) => ({ text, style: plain, after: 2 }));
  const before = heightOf(sheet, corrections) + heightOf(sheet, notes);
  const seal = sealHeight(data);
  if (before + seal <= sheet.bottom - sheet.top) sheet.need(before + seal);
  drawPassages(sheet, words.corrections, corrections);
  drawPassages(sheet, words.notes, notes);
  sheet.need(seal);
  drawSignatures(sheet, data, words);
  drawCheck(sheet, data, words);
}

function correctionPassages({ corrections }: CertificateData, words: CertificateWords): readonly Passage[] {
  if (corrections.length === 0) return [{ text: words.noCorrections, style: { ...plain, ink: 'soft' }, after: 0 }];
  return corrections.flatMap(({ what, was, is, reason, by, at }) => [
    { text: words.correction(what, was, is), style: plain, after: 0 },
    { text: words.correctedBy(by.name, by.badge, writeMoment(at), reason), style: small, after: 2 },
  ]);
}

const headingHeight = 14 + mm;
const sectionGap = 1.5 * mm;

function heightOf(sheet: Sheet, passages: readonly Passage[]): number {
  const lines = passages.reduce((sum, { text, style, after }) => sum + sheet.passageHeight(text, style) + after, 0);
  return passages.length === 0 ? 0 : headingHeight + lines + sectionGap;
}

function drawPassages(sheet: Sheet, heading: string, passages: readonly Passage[]): void {
  if (passages.length === 0) return;
  sheet.heading(heading, headingHeight + 24);
  for (const { text, style, after } of passages) {
    sheet.passage(text, style);
    sheet.y += after;
  }
  sheet.y += sectionGap;
}

/** Generous: two lines for each signer. */
function sealHeight({ signatures }: CertificateData): number {
  return headingHeight + 20 + signatures.length * 28 + 3 * mm + 30 * mm;
}

function drawSignatures(sheet: Sheet, { signatures }: CertificateData, words: CertificateWords): void {
  sheet.heading(words.signatures, 0);
  const columns = [
    { head: words.signer, width: 50 * mm }, { head: words.role, width: 34 * mm }, { head: words.meaning, width: 54 * mm }, { head: words.signedAt, width: 38 * mm },
  ];
  drawTable(sheet, columns, signatures.map(({ name, badge, role, meaning, at }) => [
    { lines: [{ text: `${name} (${badge})`, style: { face: 'textStrong', size: 9 } }] },
    { lines: [{ text: role, style: plain }] },
    { lines: [{ text: meaning, style: plain }] },
    { lines: [{ text: writeMoment(at), style: plain }] },
  ]));
}

/** The text in the square code: capitals, digits and marks only, which makes it small. */
export function verificationText({ certificate, verification }: CertificateData): string {
  return `CERTIFICATE ${certificate.number} SHA-256 ${verification.digest.toUpperCase()}`;
}

function drawCheck(sheet: Sheet, data: CertificateData, words: CertificateWords): void {
  const { left, width, y } = sheet;
  const { verification } = data;
  const side = 27 * mm;
  sheet.code(qrCode(verificationText(data)), left + 1 * mm, y + 1 * mm, side, words.codeHolds);
  const x = left + side + 7 * mm;
  const wide = width - side - 7 * mm;
  sheet.tag('H2', () => {
    sheet.line(words.check, x, y + 9, { face: 'textStrong', size: 10 });
  });
  sheet.tag('P', () => {
    sheet.line(verification.shortCode, x, y + 9, { face: 'textStrong', size: 12, isFigure: true }, wide);
  });
  let baseline = y + 21;
  sheet.tag('P', () => {
    for (const line of wrapText('narrow', 7.6, words.checkHow, wide)) {
      sheet.line(line, x, baseline, small);
      baseline += 9.6;
    }
  });
  baseline += 2;
  const groups = verification.digest.match(/.{1,8}/g) ?? [];
  const facts: readonly (readonly [string, readonly string[]])[] = [
    [words.digest, [groups.join(' ')]], [words.key, [verification.keyId]], [words.signature, [verification.signature.slice(0, 64), verification.signature.slice(64)]],
  ];
  for (const [name, lines] of facts) {
    sheet.tag('P', () => {
      sheet.line(name, x, baseline, { ...small, face: 'narrowStrong' });
      for (const line of lines) {
        sheet.line(line, x + 15 * mm, baseline, { face: 'narrow', size: 7.5 });
        baseline += 9.4;
      }
    });
  }
  sheet.y = Math.max(y + side + 3 * mm, baseline);
}
