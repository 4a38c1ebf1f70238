import type { CertificateData } from '../../../shared/wire/certificate-data.ts';
import type { CertificateWords } from '../../../shared/words/certificate.en.ts';
import { mm } from '../sheet/ink.ts';
import type { Sheet, TextStyle } from '../sheet/sheet.ts';
import { wrapText } from '../sheet/wrap-text.ts';
import { writeMoment } from '../sheet/write-numbers.ts';

const caption: TextStyle = { face: 'narrow', size: 7.5, ink: 'soft' };
const value: TextStyle = { face: 'textStrong', size: 9 };

/** Who certifies, what kind of paper it is, its number and day. */
export function drawTitle(sheet: Sheet, data: CertificateData, words: CertificateWords): void {
  const { left, width } = sheet;
  const { y } = sheet;
  sheet.tag('P', () => sheet.line(data.plant.name, left, y + 10, { face: 'textStrong', size: 10.5 }));
  sheet.tag('P', () => sheet.line(data.plant.address, left, y + 20, { face: 'text', size: 7.6, ink: 'soft' }));
  sheet.rule(left, y + 27, width, 1.6, 'ink');
  sheet.tag('H1', () => sheet.line(words.title, left, y + 54, { face: 'textStrong', size: 23 }));
  sheet.tag('P', () => sheet.line(words.kind, left, y + 67, { face: 'text', size: 8.6, ink: 'soft' }));
  sheet.tag('P', () => {
    sheet.line(words.number, left, y + 38, { ...caption, isFigure: true }, width);
    sheet.line(data.certificate.number, left, y + 54, { face: 'textStrong', size: 15, isFigure: true }, width);
    sheet.line(`${words.issued} ${data.certificate.issuedOn}`, left, y + 67, { face: 'text', size: 8.6, ink: 'soft', isFigure: true }, width);
  });
  sheet.y = y + 76;
}

/** On demo data nobody may be in doubt. */
export function drawDemo(sheet: Sheet, words: CertificateWords): void {
  const { left, width, y } = sheet;
  sheet.bar(left, y, width, 17, 'alarm');
  sheet.tag('P', () => {
    sheet.line(words.demo, left + 6, y + 11.8, { face: 'narrowStrong', size: 9.5, ink: 'paper' });
    sheet.line(words.demoMeans, left + 6 + sheet.textWidth(words.demo, { face: 'narrowStrong', size: 9.5 }) + 8, y + 11.8, { face: 'narrow', size: 8.4, ink: 'paper' });
  });
  sheet.y = y + 24;
}

/** What the goods are: a grid of captioned facts, four to a row. */
export function drawFacts(sheet: Sheet, { product, lot, purchaser }: CertificateData, words: CertificateWords): void {
  const list = (numbers: readonly string[]): string => (numbers.length === 0 ? words.none : numbers.join(', '));
  const order = [purchaser?.order ?? null, purchaser?.orderLine == null ? null : words.orderLine(purchaser.orderLine)].filter((part) => part !== null);
  const rows: readonly (readonly (readonly [string, string])[])[] = [
    [[words.designation, product.designation], [words.grade, product.grade], [words.coating, product.coating ?? words.uncoated], [words.marking, product.marking ?? words.none]],
    [[words.lot, lot.number], [words.quantity, words.pieces(lot.quantity)], [words.purchaser, purchaser?.name ?? words.none], [words.order, list(order)]],
    [[words.powderBatch, list(lot.powderBatches)], [words.furnaceCharge, list(lot.furnaceCharges)], [words.coatingCharge, list(lot.coatingCharges)], [words.specification, product.specification]],
  ];
  const width = sheet.width / 4;
  rows.forEach((facts, i) => {
    const style = i === 0 ? { ...value, size: 10.6 } : value;
    const wrapped = facts.map(([name, text]) => ({ name, lines: wrapText(style.face, style.size, text, width - 4 * mm) }));
    const height = 15.5 + Math.max(...wrapped.map(({ lines }) => lines.length)) * style.size * 1.2;
    wrapped.forEach(({ name, lines }, column) => {
      const x = sheet.left + column * width;
      sheet.tag('P', () => {
        sheet.line(name, x, sheet.y + 9, caption);
        lines.forEach((line, n) => sheet.line(line, x, sheet.y + 11.5 + style.size * (1 + n * 1.2), style));
      });
    });
    sheet.y += height;
    sheet.rule(sheet.left, sheet.y, sheet.width, 0.4, i === rows.length - 1 ? 'ink' : 'hair');
    sheet.y += 1;
  });
  sheet.y += 2.5 * mm;
}

/** The statement, and under it, framed and in alarm ink, what was accepted although it does not comply. */
export function drawStatement(sheet: Sheet, { product, concessions }: CertificateData, words: CertificateWords): void {
  const say = concessions.length === 0 ? words.statement : words.statementWithConcessions;
  sheet.passage(say(product.specification), { face: 'text', size: 9.4 }, { width: sheet.width * 0.84 });
  sheet.y += 1.5 * mm;
  if (concessions.length === 0) {
    sheet.passage(words.noConcession, { face: 'text', size: 8.6, ink: 'soft' });
    sheet.y += 2 * mm;
    return;
  }
  const inset = 4 * mm;
  const style: TextStyle = { face: 'text', size: 9 };
  concessions.forEach(({ text, quantity, by, at }, i) => {
    const lines = wrapText(style.face, style.size, text, sheet.width - inset - 2 * mm);
    const height = 15 + lines.length * 12.2 + 16;
    sheet.need(height + 4);
    const { y } = sheet;
    sheet.bar(sheet.left, y, sheet.width, height, 'wash');
    sheet.bar(sheet.left, y, 3.5, height, 'alarm');
    sheet.tag('P', () => {
      const head = i === 0 ? words.concessions(concessions.length) : `${i + 1}`;
      sheet.line(head, sheet.left + inset, y + 12, { face: 'textStrong', size: 9.6, ink: 'alarm' });
      sheet.line(words.concessionFor(words.pieces(quantity)), sheet.left + inset + sheet.textWidth(head, { face: 'textStrong', size: 9.6 }) + 8, y + 12, { face: 'textStrong', size: 9 });
      lines.forEach((line, n) => sheet.line(line, sheet.left + inset, y + 26 + n * 12.2, style));
      sheet.line(words.grantedBy(by.name, by.badge, writeMoment(at)), sheet.left + inset, y + height - 5.5, { face: 'narrow', size: 7.8, ink: 'soft' });
    });
    sheet.y = y + height + 1.5 * mm;
  });
  sheet.y += 1 * mm;
}
