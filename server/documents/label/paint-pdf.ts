import PDFDocument from 'pdfkit';
import { collectPdf } from '../type/collect-pdf.ts';
import { openedFace, type Face } from '../type/typefaces.ts';
import type { LabelLayout } from './label-layout.ts';

const pointsPerMm = 72 / 25.4;

/** Labels as one PDF, a page each, all vector: the printer rounds nothing, a thousand take about a second. */
export function paintPdf(layouts: Iterable<LabelLayout>, about: { readonly title: string; readonly language: string }): Promise<Buffer> {
  const doc = new PDFDocument({ autoFirstPage: false, pdfVersion: '1.7', lang: about.language, displayTitle: true, info: { Title: about.title } });
  const whole = collectPdf(doc);
  for (const face of ['textStrong', 'narrowMedium', 'narrowStrong'] satisfies Face[]) doc.registerFont(face, openedFace(face));
  for (const layout of layouts) paintPage(doc, layout);
  doc.end();
  return whole;
}

function paintPage(doc: PDFKit.PDFDocument, { widthMm, heightMm, marks }: LabelLayout): void {
  doc.addPage({ size: [widthMm * pointsPerMm, heightMm * pointsPerMm], margin: 0 });
  marks.forEach((mark, i) => {
    if (mark.kind === 'bar') {
      doc.rect(mark.x * pointsPerMm, mark.y * pointsPerMm, mark.widthMm * pointsPerMm, mark.heightMm * pointsPerMm);
      const next = marks[i + 1];
      // Neighbouring bars become one path, so that no hairline shows between the rows of the code.
      if (next === undefined || next.kind === 'text' || next.ink !== mark.ink) doc.fill(mark.ink);
    } else {
      doc.font(mark.face).fontSize(mark.sizeMm * pointsPerMm).fillColor(mark.ink);
      doc.text(mark.text, mark.x * pointsPerMm, mark.y * pointsPerMm, { lineBreak: false, baseline: 'alphabetic' });
    }
  });
}
