import { travellerSheetWords, type TravellerSheetWords } from '../../../shared/words/traveller-sheet.en.ts';
import { ink, mm } from '../sheet/ink.ts';
import { Sheet, type TextStyle } from '../sheet/sheet.ts';
import { drawTable } from '../sheet/table.ts';
import { writeMoment } from '../sheet/write-numbers.ts';

import { drawCharge, type PrintedCharge } from './draw-charge.ts';

/** One slip as it is read; the sentence comes from the message catalogue. */
export interface PrintedSlip {
  /** ISO 8601 with zone. */
  readonly at: string;
  readonly by: string;
  readonly bench: string;
  readonly sentence: string;
}

export interface TravellerSheetAbout {
  readonly plant: string;
  /** Number of the subject. `A–Z a–z 0–9 -`. */
  readonly number: string;
  /** What it is, in one line: designation, grade, quantity. */
  readonly subject: string;
  /** ISO 8601 with zone. */
  readonly printedAt: string;
  readonly demo: boolean;
  readonly language: string;
}

const small: TextStyle = { face: 'narrow', size: 8.4, ink: 'soft' };

/** The whole thread of one subject on paper, oldest slip first, in the order given. @param charge what a charge shows before its slips */
export function travellerSheetPdf(slips: readonly PrintedSlip[], about: TravellerSheetAbout, charge: PrintedCharge | null = null, words: TravellerSheetWords = travellerSheetWords): Promise<Buffer> {
  const sheet = new Sheet({ title: words.title(about.number), language: about.language, madeAt: new Date(about.printedAt) });
  const { left, width } = sheet;
  const { y } = sheet;
  sheet.tag('P', () => sheet.line(about.plant, left, y + 10, { face: 'textStrong', size: 10.5 }));
  if (about.demo) sheet.tag('P', () => sheet.line(words.demo, left, y + 10, { face: 'narrowStrong', size: 10, ink: 'alarm', isFigure: true }, width));
  sheet.rule(left, y + 17, width, 1.6, 'ink');
  sheet.tag('H1', () => sheet.line(`${words.heading} ${about.number}`, left, y + 43, { face: 'textStrong', size: 22 }));
  sheet.tag('P', () => sheet.line(words.slips(slips.length), left, y + 43, { face: 'textStrong', size: 11, isFigure: true }, width));
  sheet.y = y + 49;
  sheet.passage(about.subject, { face: 'text', size: 9.6 });
  sheet.passage(words.printed(writeMoment(about.printedAt)), { face: 'text', size: 8.4, ink: 'soft' });
  sheet.y += 3 * mm;
  if (charge !== null) drawCharge(sheet, charge);
  if (slips.length === 0) sheet.passage(words.none, { face: 'text', size: 9.6 });
  else {
    const columns = [{ head: words.at, width: 31 * mm }, { head: words.slip, width: 87 * mm }, { head: words.by, width: 33 * mm }, { head: words.bench, width: 25 * mm }];
    drawTable(sheet, columns, slips.map((slip) => [
      { lines: [{ text: writeMoment(slip.at), style: { face: 'narrow', size: 8.6 } }] },
      { lines: [{ text: slip.sentence, style: { face: 'text', size: 9 } }] },
      { lines: [{ text: slip.by, style: small }] },
      { lines: [{ text: slip.bench, style: small }] },
    ]));
  }
  return sheet.finish((page, of) => {
    sheet.doc.rect(left, sheet.bottom + 9, width, 0.5).fill(ink.rule);
    const foot: TextStyle = { face: 'text', size: 7.8, ink: 'soft' };
    sheet.line(`${about.plant} · ${words.title(about.number)}${about.demo ? ` · ${words.demo}` : ''}`, left, sheet.bottom + 20, foot);
    sheet.line(words.page(page, of), left, sheet.bottom + 20, { ...foot, face: 'textStrong', ink: 'ink', isFigure: true }, width);
  });
}
