import type { Sheet, TextStyle } from './sheet.ts';
import { ink, mm } from './ink.ts';
import { wrapText } from './wrap-text.ts';

export interface Column {
  readonly head: string;
  /** Points. */
  readonly width: number;
  readonly isFigure?: boolean;
}

export interface CellText {
  readonly text: string;
  readonly style: TextStyle;
  /** Set white on a bar of alarm ink, so that the word is seen from afar. */
  readonly isBarred?: boolean;
}

/** A cell is lines of text, or a drawing whose facts stand in other cells too. */
export type Cell = { readonly lines: readonly CellText[] } | { readonly draw: (x: number, y: number, width: number) => void; readonly height: number };

const padding = 1.9 * mm;
const lineStep = 1.27;
const headStyle: TextStyle = { face: 'narrow', size: 7.2, ink: 'soft' };

/** A ruled table: rows stay whole, the head comes again on each page, figures line up at the right. */
export function drawTable(sheet: Sheet, columns: readonly Column[], rows: readonly (readonly Cell[])[]): void {
  const table = sheet.element('Table');
  const heads = columns.map((column) => wrapText(headStyle.face, headStyle.size, column.head, column.width - padding));
  const headHeight = Math.max(...heads.map((lines) => lines.length)) * headStyle.size * 1.15 + padding;
  const prepared = rows.map((cells) => prepareRow(columns, cells));
  sheet.need(headHeight + (prepared[0]?.height ?? 0) + padding);
  drawHead(sheet, columns, heads, headHeight, table);
  prepared.forEach((row) => {
    if (sheet.need(row.height)) drawHead(sheet, columns, heads, headHeight, null);
    const line = sheet.element('TR', table);
    let x = sheet.left;
    row.cells.forEach((cell, i) => {
      const column = columns[i];
      if (column === undefined) return;
      drawCell(sheet, cell, x, column, line);
      x += column.width;
    });
    line.end();
    sheet.y += row.height;
    sheet.rule(sheet.left, sheet.y, sheet.width, 0.4, 'hair');
  });
  table.end();
  sheet.rule(sheet.left, sheet.y, sheet.width, 0.8, 'ink');
  sheet.y += 3 * mm;
}

type Prepared = { readonly lines: readonly CellText[] } | Extract<Cell, { draw: unknown }>;

function prepareRow(columns: readonly Column[], cells: readonly Cell[]): { readonly cells: readonly Prepared[]; readonly height: number } {
  const wrapped = cells.map((cell, i): Prepared => {
    if ('draw' in cell) return cell;
    const width = (columns[i]?.width ?? 0) - padding;
    return { lines: cell.lines.flatMap((line) => wrapText(line.style.face, line.style.size, line.text, width).map((text) => ({ ...line, text }))) };
  });
  const heights = wrapped.map((cell) => ('draw' in cell ? cell.height : cell.lines.reduce((sum, { style }) => sum + style.size * lineStep, 0)));
  return { cells: wrapped, height: Math.max(...heights) + padding * 1.1 };
}

function drawHead(sheet: Sheet, columns: readonly Column[], heads: readonly (readonly string[])[], height: number, table: PDFKit.PDFStructureElement | null): void {
  const { y } = sheet;
  sheet.rule(sheet.left, y, sheet.width, 0.8, 'ink');
  const row = table === null ? null : sheet.element('TR', table);
  let x = sheet.left;
  columns.forEach((column, i) => {
    const lines = heads[i] ?? [];
    const at = x;
    const draw = (): void => lines.forEach((line, n) => {
      const baseline = y + height - padding / 2 - (lines.length - 1 - n) * headStyle.size * 1.15 - 1;
      sheet.line(line, at, baseline, { ...headStyle, isFigure: column.isFigure === true }, column.width - padding);
    });
    // On later pages the head is for the eye only: a screen reader has it from the first.
    if (row === null) sheet.adorn(draw, 'Pagination');
    else sheet.tag('TH', draw, row, { scope: 'Column' });
    x += column.width;
  });
  row?.end();
  sheet.y += height;
  sheet.rule(sheet.left, sheet.y, sheet.width, 0.4, 'ink');
}

function drawCell(sheet: Sheet, cell: Prepared, x: number, column: Column, row: PDFKit.PDFStructureElement): void {
  if ('draw' in cell) {
    sheet.adorn(() => cell.draw(x, sheet.y, column.width - padding));
    sheet.tag('TD', () => undefined, row);
    return;
  }
  let y = sheet.y + padding * 0.55;
  for (const { text, style, isBarred } of cell.lines) {
    if (isBarred === true) sheet.bar(x - 1.5, y, sheet.textWidth(text, style) + 3, style.size * lineStep - 0.6, 'alarm');
    y += style.size * lineStep;
  }
  sheet.tag('TD', () => {
    let baseline = sheet.y + padding * 0.55;
    for (const { text, style, isBarred } of cell.lines) {
      sheet.line(text, x, baseline + style.size, { ...style, ink: isBarred === true ? 'paper' : style.ink ?? 'ink', isFigure: column.isFigure === true }, column.width - padding);
      baseline += style.size * lineStep;
    }
  }, row);
}

/** Fills a cell of readings: the limits as posts, the span from least to greatest as a beam, the mean as a notch. */
export function drawSpan(sheet: Sheet, span: { readonly min: number; readonly mean: number; readonly max: number; readonly lower: number | null; readonly upper: number | null }, x: number, y: number, width: number): void {
  const { doc } = sheet;
  const marks = [span.min, span.max, ...(span.lower === null ? [] : [span.lower]), ...(span.upper === null ? [] : [span.upper])];
  const [least, most] = [Math.min(...marks), Math.max(...marks)];
  const reach = most - least || 1;
  const at = (value: number): number => x + width * (0.08 + (0.84 * (value - least)) / reach);
  const middle = y + 6.2;
  doc.rect(x, middle - 0.2, width, 0.4).fill(ink.rule);
  for (const limit of [span.lower, span.upper]) if (limit !== null) doc.rect(at(limit) - 0.5, middle - 4.5, 1, 9).fill(ink.ink);
  doc.rect(at(span.min), middle - 1.6, Math.max(0.8, at(span.max) - at(span.min)), 3.2).fill(ink.soft);
  doc.rect(at(span.mean) - 0.9, middle - 3, 1.8, 6).fill(ink.ink);
}
