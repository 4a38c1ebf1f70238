import { mm } from './ink.ts';
import type { Sheet, TextStyle } from './sheet.ts';
import { columnGap, drawCell, layCell, type Cell, type LaidCell } from './table-cells.ts';
import { wrapText } from './wrap-text.ts';

export type { Cell, CellText } from './table-cells.ts';

export interface Column {
  readonly head: string;
  /** Points. */
  readonly width: number;
  readonly isFigure?: boolean;
}

/** A row that names what the rows under it have in common. It stays with the first of them. */
export interface GroupRow {
  readonly group: readonly Cell[];
  /** What stands in its place where the rows go on on another page. */
  readonly again: readonly Cell[];
}

export type Row = readonly Cell[] | GroupRow;

interface LaidRow {
  readonly cells: readonly LaidCell[];
  readonly height: number;
  /** Where the first line of every cell stands, points below the row's first. */
  readonly ascent: number;
  /** Set for the row of a group: the row that stands in its place on another page. */
  readonly again: LaidRow | null;
}

/** How much air a row has. */
interface Setting { readonly leading: number; readonly above: number; readonly below: number; readonly inset: number }
const roomy: Setting = { leading: 1.27, above: columnGap * 0.55, below: columnGap * 0.55, inset: 0 };
const close: Setting = { leading: 1.2, above: 0.8, below: 1.2, inset: 1 * mm };

const headStyle: TextStyle = { face: 'narrow', size: 7.5, ink: 'soft' };
const headStep = headStyle.size * 1.15;

/**
 * A ruled table: rows stay whole, the head and the group come again on each page, figures line up at the right. `isClose` sets the rows close, for
 * tables whose rows are lines.
 */
export function drawTable(sheet: Sheet, columns: readonly Column[], rows: readonly Row[], { isClose = false }: { readonly isClose?: boolean } = {}): void {
  const setting = isClose ? close : roomy;
  const table = sheet.element('Table');
  const heads = columns.map((column) => wrapText(headStyle.face, headStyle.size, column.head, column.width - columnGap));
  const headHeight = Math.max(...heads.map((lines) => lines.length)) * headStep + (isClose ? 3 : columnGap);
  const laid = rows.map((row) => layRow(columns, row, setting));
  const kept = (at: number): number => (laid[at]?.height ?? 0) + (laid[at]?.again === null ? 0 : laid[at + 1]?.height ?? 0);
  sheet.need(headHeight + kept(0) + columnGap);
  drawHead(sheet, columns, heads, headHeight, setting, table);
  let group: LaidRow | null = null;
  laid.forEach((row, at) => {
    if (row.again !== null) group = row.again;
    if (sheet.need(kept(at))) {
      drawHead(sheet, columns, heads, headHeight, setting, null);
      if (row.again === null && group !== null) drawRow(sheet, group, setting, null, true);
    }
    const line = sheet.element('TR', table);
    drawRow(sheet, row, setting, line, row.again !== null);
    line.end();
  });
  table.end();
  sheet.rule(sheet.left, sheet.y, sheet.width, 0.8, 'ink');
  sheet.y += (isClose ? 1.2 : 3) * mm;
}

function layRow(columns: readonly Column[], row: Row, setting: Setting): LaidRow {
  const cells = 'group' in row ? row.group : row;
  let at = 0;
  const laid = cells.map((cell) => {
    const over = columns.slice(at, at + (cell.columns ?? 1));
    at += over.length;
    return layCell(cell, over.reduce((sum, { width }) => sum + width, 0), over[0]?.isFigure === true, setting.leading);
  });
  const ascent = Math.max(...laid.map(({ sizes }) => sizes[0] ?? 0));
  const height = Math.max(...laid.map((cell) => cell.height + ascent - (cell.sizes[0] ?? ascent))) + setting.above + setting.below;
  return { cells: laid, height, ascent, again: 'group' in row ? layRow(columns, row.again, setting) : null };
}

function drawRow(sheet: Sheet, { cells, height, ascent }: LaidRow, { above, inset }: Setting, line: PDFKit.PDFStructureElement | null, isGroup: boolean): void {
  if (isGroup) sheet.bar(sheet.left, sheet.y, sheet.width, height, 'wash');
  let x = sheet.left + inset;
  for (const cell of cells) {
    drawCell(sheet, cell, x, sheet.y + above, ascent, line);
    x += cell.width;
  }
  sheet.y += height;
  sheet.rule(sheet.left, sheet.y, sheet.width, 0.4, 'hair');
}

function drawHead(sheet: Sheet, columns: readonly Column[], heads: readonly (readonly string[])[], height: number, { inset }: Setting, table: PDFKit.PDFStructureElement | null): void {
  const { y } = sheet;
  sheet.rule(sheet.left, y, sheet.width, 0.8, 'ink');
  const row = table === null ? null : sheet.element('TR', table);
  let x = sheet.left + inset;
  columns.forEach((column, i) => {
    const lines = heads[i] ?? [];
    const at = x;
    const draw = (): void => lines.forEach((line, n) => {
      const baseline = y + height - 3.5 - (lines.length - 1 - n) * headStep;
      sheet.line(line, at, baseline, { ...headStyle, isFigure: column.isFigure === true }, column.width - columnGap);
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
