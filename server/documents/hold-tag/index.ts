import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { holdTagWords, type HoldTagWords } from '../../../shared/words/hold-tag.en.ts';
import { dataMatrix } from '../codes/data-matrix.ts';
import { writeMoment } from '../sheet/write-numbers.ts';
import { ink, mm } from '../sheet/ink.ts';
import { Sheet, type TextStyle } from '../sheet/sheet.ts';
import { wrapText } from '../sheet/wrap-text.ts';
import { sizeToFit } from '../type/typefaces.ts';

/** What a hold tag says. */
export interface HoldTagData {
  readonly kind: keyof HoldTagWords['kinds'];
  /** Number of the subject held; the square code holds it too. `A–Z a–z 0–9 -`. */
  readonly number: string;
  readonly product: string | null;
  readonly quantity: number | null;
  readonly gate: string | null;
  readonly reason: string;
  readonly by: { readonly name: string; readonly badge: string };
  /** ISO 8601 with zone. */
  readonly at: string;
  readonly demo: boolean;
  readonly language: string;
}

/** A tag to tie to a tray: A4 across, its word readable from the other end of the hall, its frame hatched so that a grey print shows it too. @throws OutsideDomain when the reason is too long for a tag */
export function holdTagPdf(data: HoldTagData, words: HoldTagWords = holdTagWords): Promise<Buffer> {
  const sheet = new Sheet({ title: words.title(data.number), language: data.language, madeAt: new Date(data.at), isLandscape: true, marginMm: 24 });
  const { left, width, doc } = sheet;
  drawFrame(sheet);
  const right = left + width;
  sheet.tag('H1', () => sheet.line(words.word, left, 52 * mm, { face: 'narrowStrong', size: 118 }));
  const side = 38 * mm;
  sheet.code(dataMatrix(data.number), right - side, 21 * mm, side, words.codeHolds(data.number));
  const ruleX = left + sheet.textWidth(words.word, { face: 'narrowStrong', size: 118 }) + 9 * mm;
  sheet.tag('P', () => wrapText('textStrong', 22, words.rule, right - side - 8 * mm - ruleX).forEach((line, i) => sheet.line(line, ruleX, 31 * mm + i * 28, { face: 'textStrong', size: 22 })));
  sheet.rule(left, 64 * mm, width, 1.5, 'ink');

  const numberSize = sizeToFit('narrowStrong', data.number, width, 66);
  sheet.tag('P', () => {
    sheet.line(words.kinds[data.kind], left, 72 * mm, { face: 'text', size: 13, ink: 'soft' });
    sheet.line(data.number, left, 94 * mm, { face: 'narrowStrong', size: numberSize });
  });
  if (data.product !== null) {
    const size = sizeToFit('textStrong', data.product, width, 20);
    const product = data.product;
    sheet.tag('P', () => sheet.line(product, left, 104 * mm, { face: 'textStrong', size }));
  }
  sheet.rule(left, 109 * mm, width, 0.8, 'ink');

  const caption: TextStyle = { face: 'text', size: 12, ink: 'soft' };
  const shown = fitReason(data.reason, width);
  sheet.tag('P', () => {
    sheet.line(words.reason, left, 116 * mm, caption);
    shown.lines.forEach((line, i) => sheet.line(line, left, 124 * mm + i * shown.size * 1.25, { face: 'textStrong', size: shown.size }));
  });
  const facts: readonly (readonly [string, string])[] = [
    ...(data.quantity === null ? [] : [[words.quantity, words.pieces(data.quantity)] as const]),
    ...(data.gate === null ? [] : [[words.gate, data.gate] as const]),
    [words.by, `${data.by.name} (${data.by.badge})`], [words.at, writeMoment(data.at)],
  ];
  facts.forEach(([name, text], i) => {
    const x = left + (i * width) / facts.length;
    sheet.tag('P', () => {
      sheet.line(name, x, 164 * mm, caption);
      sheet.line(text, x, 171 * mm, { face: 'textStrong', size: sizeToFit('textStrong', text, width / facts.length - 3 * mm, 15) });
    });
  });
  sheet.rule(left, 176 * mm, width, 0.5);
  sheet.tag('P', () => sheet.line(words.lift, left, 182 * mm, { face: 'text', size: sizeToFit('text', words.lift, width * (data.demo ? 0.78 : 1), 11.5) }));
  if (data.demo) sheet.tag('P', () => sheet.line(words.demo, left, 182 * mm, { face: 'narrowStrong', size: 12, ink: 'alarm', isFigure: true }, width));
  doc.fillColor(ink.ink);
  return sheet.finish(() => undefined);
}

/** The reason, whole, as large as its length allows. */
function fitReason(reason: string, width: number): { readonly lines: readonly string[]; readonly size: number } {
  for (const size of [19, 15, 12, 10, 8.5]) {
    const lines = wrapText('textStrong', size, reason, width);
    if (lines.length * size * 1.25 <= 34 * mm) return { lines, size };
  }
  throw new OutsideDomain('data.reason', 'short enough for a tag, about 1000 letters', `${reason.length} letters long`);
}

/** A border of slanting bars, 9 mm wide. */
function drawFrame(sheet: Sheet): void {
  const { doc } = sheet;
  const { width, height } = doc.page;
  const [out, thick, pitch] = [7 * mm, 9 * mm, 9 * mm];
  sheet.adorn(() => {
    doc.save();
    doc.rect(out, out, width - 2 * out, height - 2 * out).rect(out + thick, out + thick, width - 2 * (out + thick), height - 2 * (out + thick)).clip('even-odd');
    for (let x = out - height; x < width; x += 2 * pitch) doc.polygon([x, height], [x + pitch, height], [x + pitch + height, 0], [x + height, 0]);
    doc.fill(ink.ink);
    doc.restore();
    doc.lineWidth(1.2).rect(out, out, width - 2 * out, height - 2 * out).stroke(ink.ink);
    doc.rect(out + thick, out + thick, width - 2 * (out + thick), height - 2 * (out + thick)).stroke(ink.ink);
  });
}
