import { certificateWords, type CertificateWords } from '../../../shared/words/certificate.en.ts';
import type { CertificateData } from '../../../shared/wire/certificate-data.ts';
import { Sheet } from '../sheet/sheet.ts';
import { canonicalJson } from '../signing/canonical-json.ts';
import { drawEnd } from './certificate-foot.ts';
import { drawDemo, drawFacts, drawStatement, drawTitle } from './certificate-head.ts';
import { drawDrawingPage } from './drawing-page.ts';
import { drawGates } from './gate-table.ts';
import { drawMeasured } from './measured-table.ts';

export { verificationText } from './certificate-foot.ts';

/** The name of the data file inside every certificate. */
export const attachedName = 'data.json';

/**
 * The certificate as a tagged PDF/A-3b of A4 pages, its sealed data attached. The same data makes the same bytes. Whether the lot may have a
 * certificate at all is asked before: see the traveller. With `drawing` a last page shows what the designation says, drawn and with its
 * dimensions; the attached data stays the same.
 * @throws OutsideDomain when a text has a character the typeface lacks
 */
export function certificatePdf(data: CertificateData, words: CertificateWords = certificateWords, { drawing = false }: { readonly drawing?: boolean } = {}): Promise<Buffer> {
  const { number, issuedOn } = data.certificate;
  const madeAt = new Date(`${issuedOn}T00:00:00Z`);
  const sheet = new Sheet({ title: words.documentTitle(number), language: data.language, madeAt, marginMm: 13 });
  sheet.doc.file(Buffer.from(canonicalJson(data), 'utf8'), {
    name: attachedName, type: 'application/json', description: words.attached, relationship: 'Data', creationDate: madeAt, modifiedDate: madeAt,
  });
  drawTitle(sheet, data, words);
  if (data.demo) drawDemo(sheet, words);
  drawFacts(sheet, data, words);
  drawStatement(sheet, data, words);
  drawGates(sheet, data, words);
  drawMeasured(sheet, data, words);
  drawEnd(sheet, data, words);
  if (drawing) drawDrawingPage(sheet, data);
  return sheet.finish((page, of) => drawMargins(sheet, data, words, page, of));
}

function drawMargins(sheet: Sheet, data: CertificateData, words: CertificateWords, page: number, of: number): void {
  const { left, width, bottom, top, doc } = sheet;
  const foot = { face: 'text', size: 7.8, ink: 'soft' } as const;
  const baseline = bottom + 20;
  doc.rect(left, bottom + 9, width, 0.5).fill('#aab2b7');
  sheet.line(`${data.plant.name} · ${words.number} ${data.certificate.number} · ${words.lot} ${data.lot.number}`, left, baseline, foot);
  sheet.line(words.page(page, of), left, baseline, { ...foot, face: 'textStrong', ink: 'ink', isFigure: true }, width);
  if (page === 1) return;
  sheet.line(words.documentTitle(data.certificate.number), left, top - 14, { face: 'textStrong', size: 9 });
  if (data.demo) sheet.line(words.demo, left, top - 14, { face: 'narrowStrong', size: 9, ink: 'alarm', isFigure: true }, width);
}
