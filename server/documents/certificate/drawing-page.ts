import { explainDesignation, formatDesignation, insertDrawing, INSERT_DRAWING, insertLimits, insertOutline, LENGTH_DECIMALS, LIMITED_SIZES, readDesignation } from '../../../shared/carbide/index.ts';
import type { DrawingMark, InsertDesignation } from '../../../shared/carbide/index.ts';
import type { CertificateData } from '../../../shared/wire/certificate-data.ts';
import { certificateDrawingWords as words } from '../../../shared/words/certificate-drawing.en.ts';
import { designationWords, dimensionTexts, meaningOf } from '../../../shared/words/designation.en.ts';
import { formatOfTag } from '../../../shared/words/format.ts';
import { ink, mm } from '../sheet/ink.ts';
import type { Sheet, TextStyle } from '../sheet/sheet.ts';
import { drawTable, type Cell } from '../sheet/table.ts';
import { writeNumber } from '../sheet/write-numbers.ts';

const plain: TextStyle = { face: 'narrow', size: 8.4 };
const strong: TextStyle = { face: 'narrowStrong', size: 8.4 };
const soft: TextStyle = { face: 'narrow', size: 7.6, ink: 'soft' };
const beside: TextStyle = { face: 'text', size: 9 };
const cell = (text: string, style: TextStyle): Cell => ({ lines: [{ text, style }] });

/**
 * The last page on request: what the designation says, the drawing with its dimensions, the limits, and how each is known. It is derived from
 * the designation in the sealed data and adds nothing to it.
 */
export function drawDrawingPage(sheet: Sheet, { product, language }: CertificateData): void {
  sheet.newPage();
  sheet.heading(words.heading(product.designation), 0);
  const read = readDesignation(product.designation);
  if (!read.ok) return sheet.passage(words.unreadable(product.designation), { face: 'text', size: 9 });
  const { designation } = read;
  drawPositions(sheet, designation, language);
  sheet.y += 3 * mm;
  drawFigure(sheet, designation, language);
  sheet.y += 3 * mm;
  drawSizes(sheet, designation, language);
  sheet.y += 2 * mm;
  for (const note of words.notes(designationWords.edition(designation.tables.standard, designation.tables.edition))) {
    sheet.passage(note, { face: 'text', size: 8, ink: 'soft' });
    sheet.y += 2;
  }
}

function drawPositions(sheet: Sheet, designation: InsertDesignation, language: string): void {
  const { at, signs, what, says } = words.positions;
  const columns = [{ head: at, width: 16 * mm }, { head: signs, width: 20 * mm }, { head: what, width: 48 * mm }, { head: says, width: 100 * mm }];
  const format = formatOfTag(language, 'UTC');
  drawTable(sheet, columns, explainDesignation(designation).map(({ position, text, meaning }) => [
    cell(String(position), soft), { ...cell(text, strong), isHead: true }, cell(designationWords.positions[position], plain), cell(meaningOf(meaning, format), plain),
  ]), { isClose: true });
}

function drawFigure(sheet: Sheet, designation: InsertDesignation, language: string): void {
  const outline = insertOutline(designation);
  if (outline === null) return sheet.passage(words.noFigure, { face: 'text', size: 9 });
  const scale = sheet.width / INSERT_DRAWING.width;
  const height = INSERT_DRAWING.height * scale;
  sheet.need(height);
  const marks = insertDrawing(outline);
  const texts = dimensionTexts(designation, formatOfTag(language, 'UTC'));
  const said = marks.flatMap((mark) => (mark.kind === 'text' ? [texts[mark.dimension]] : [])).join(', ');
  const { left, y, width } = sheet;
  sheet.tag('Figure', () => {
    sheet.doc.save().translate(left, y).scale(scale);
    for (const mark of marks) if (mark.kind === 'path') drawPath(sheet, mark);
    sheet.doc.restore();
    for (const mark of marks) if (mark.kind === 'text') drawText(sheet, mark, texts[mark.dimension], scale);
  }, sheet.root, { alt: words.figure(formatDesignation(designation), said), bbox: [left, y, left + width, y + height], placement: 'Block' });
  sheet.y += height;
}

function drawPath({ doc }: Sheet, { data, line }: Extract<DrawingMark, { kind: 'path' }>): void {
  if (line === 'solid') return void doc.path(data).fill(ink.soft);
  doc.path(data).lineWidth(line === 'outline' ? 0.6 : 0.2).lineJoin('round');
  if (line === 'hidden') doc.dash(2, { space: 1 });
  doc.stroke(line === 'outline' ? ink.ink : ink.soft);
  doc.undash();
}

function drawText(sheet: Sheet, { at, anchor, turnDeg }: Extract<DrawingMark, { kind: 'text' }>, text: string, scale: number): void {
  const wide = sheet.textWidth(text, beside);
  const back = anchor === 'start' ? 0 : anchor === 'middle' ? wide / 2 : wide;
  sheet.doc.save().translate(sheet.left + at.x * scale, sheet.y + at.y * scale).rotate(turnDeg);
  sheet.line(text, -back, 0, beside);
  sheet.doc.restore();
}

function drawSizes(sheet: Sheet, designation: InsertDesignation, language: string): void {
  const { size, target, plusMinus, lower, upper, source } = words.sizes;
  const columns = [
    { head: size, width: 44 * mm }, { head: target, width: 20 * mm, isFigure: true }, { head: plusMinus, width: 16 * mm, isFigure: true }, { head: lower, width: 20 * mm, isFigure: true }, { head: upper, width: 20 * mm, isFigure: true },
    { head: source, width: 64 * mm },
  ];
  const length = (value: number | null): string => (value === null ? words.none : writeNumber(value, LENGTH_DECIMALS, language));
  const limits = insertLimits(designation);
  const limited = LIMITED_SIZES.filter((each) => limits[each].tolerance.kind !== 'none').map((each) => {
    const { targetMm, tolerance, lowerMm, upperMm } = limits[each];
    const known = targetMm === null ? words.absent : tolerance.kind === 'limit' ? designationWords.evidence[tolerance.evidence] : tolerance.kind === 'notInHand' ? designationWords.notInHand[tolerance.why] : words.none;
    return [{ ...cell(designationWords.sizes[each], strong), isHead: true }, cell(length(targetMm), plain), cell(tolerance.kind === 'limit' ? length(tolerance.plusMinusMm) : words.none, plain), cell(length(lowerMm), plain), cell(length(upperMm), plain), cell(known, soft)];
  });
  drawTable(sheet, columns, limited, { isClose: true });
}
