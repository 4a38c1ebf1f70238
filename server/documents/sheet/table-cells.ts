import { mm } from './ink.ts';
import type { Sheet, TextStyle } from './sheet.ts';
import { textWidth } from '../type/typefaces.ts';
import { wrapText } from './wrap-text.ts';

export interface CellText {
  readonly text: string;
  readonly style: TextStyle;
  /** Set white on a bar of alarm ink, so that the word is seen from afar. */
  readonly isBarred?: boolean;
}

interface Reach {
  /** Columns of the table the cell reaches over; 1 if not said. */
  readonly columns?: number;
  /** It heads its row. */
  readonly isHead?: boolean;
}

/**
 * A cell is lines of text one under the other, or texts side by side that go on in a new line where they must, or a drawing whose facts stand in
 * other cells too.
 */
export type Cell =
  | (Reach & { readonly lines: readonly CellText[] })
  | (Reach & { readonly beside: readonly CellText[]; readonly isRight?: boolean })
  | (Reach & { readonly draw: (x: number, y: number, width: number) => void; readonly height: number });

/** One text of a cell at its place: points from the cell's left edge, and the line it stands on. */
interface Placed extends CellText {
  readonly dx: number;
  readonly line: number;
}

/** A cell laid out in its width. */
export interface LaidCell {
  readonly cell: Cell;
  readonly width: number;
  readonly isFigure: boolean;
  readonly texts: readonly Placed[];
  /** Heights of its lines and largest sizes of type in them, points. */
  readonly steps: readonly number[];
  readonly sizes: readonly number[];
  readonly height: number;
}

/** Room between two columns. */
export const columnGap = 1.9 * mm;

/** Lays a cell out in the width of the columns it reaches over; `leading` is the height of a line in sizes of its type. */
export function layCell(cell: Cell, width: number, isFigure: boolean, leading: number): LaidCell {
  if ('draw' in cell) return { cell, width, isFigure, texts: [], steps: [], sizes: [], height: cell.height };
  const texts = 'lines' in cell ? stack(cell.lines, width - columnGap) : flow(cell.beside, width - columnGap, cell.isRight === true);
  const sizes: number[] = [];
  for (const { line, style } of texts) sizes[line] = Math.max(sizes[line] ?? 0, style.size);
  const steps = sizes.map((size) => size * leading);
  return { cell, width, isFigure, texts, steps, sizes, height: steps.reduce((sum, step) => sum + step, 0) };
}

function stack(lines: readonly CellText[], width: number): readonly Placed[] {
  return lines.flatMap((line) => wrapText(line.style.face, line.style.size, line.text, width).map((text) => ({ ...line, text })))
    .map((text, line) => ({ ...text, dx: 0, line }));
}

const between = 1.6 * mm;

function flow(texts: readonly CellText[], width: number, isRight: boolean): readonly Placed[] {
  const placed: (Placed & { readonly wide: number })[] = [];
  let line = 0;
  let filled = 0;
  for (const each of texts) {
    const { face, size } = each.style;
    wrapText(face, size, each.text, width).forEach((text, part) => {
      const wide = textWidth(face, text, size);
      if (filled > 0 && (part > 0 || filled + between + wide > width)) {
        line += 1;
        filled = 0;
      }
      const dx = filled === 0 ? 0 : filled + between;
      placed.push({ ...each, text, dx, line, wide });
      filled = dx + wide;
    });
  }
  if (!isRight) return placed;
  return placed.map((text) => {
    const last = placed.findLast((other) => other.line === text.line) ?? text;
    return { ...text, dx: text.dx + width - last.dx - last.wide };
  });
}

/** Draws a laid-out cell with its upper left corner at `x`, `y`, as content of a row; without a row it is for the eye only. `ascent` is the first baseline of the row. */
export function drawCell(sheet: Sheet, laid: LaidCell, x: number, y: number, ascent: number, row: PDFKit.PDFStructureElement | null): void {
  const { cell, width, isFigure, texts, steps, sizes } = laid;
  const inner = width - columnGap;
  const type = cell.isHead === true ? 'TH' : 'TD';
  const span = { ...(cell.isHead === true ? { scope: 'Row' as const } : {}), columns: cell.columns ?? 1 };
  if ('draw' in cell) {
    sheet.adorn(() => cell.draw(x, y, inner));
    if (row !== null) sheet.tableCell(type, () => undefined, row, span);
    return;
  }
  const top = (line: number): number => y + ascent - (sizes[0] ?? ascent) + steps.slice(0, line).reduce((sum, step) => sum + step, 0);
  const baseline = (line: number): number => top(line) + (sizes[line] ?? 0);
  for (const { text, style, isBarred, dx, line } of texts) {
    if (isBarred !== true) continue;
    const wide = sheet.textWidth(text, style);
    const from = isFigure && 'lines' in cell ? x + inner - wide : x + dx;
    sheet.bar(from - 2, top(line), wide + 4, steps[line] ?? style.size, 'alarm');
  }
  const draw = (): void => {
    texts.forEach(({ text, style, isBarred, dx, line }, at) => {
      const paper = { ...style, ink: isBarred === true ? 'paper' as const : style.ink ?? 'ink' };
      // Read aloud, the texts of a cell must not run into one word.
      const ended = at < texts.length - 1 && !isFigure ? `${text} ` : text;
      if ('lines' in cell) sheet.line(ended, x, baseline(line), { ...paper, isFigure }, inner);
      else sheet.line(ended, x + dx, baseline(line), paper);
    });
  };
  if (row === null) sheet.adorn(draw, 'Pagination');
  else sheet.tableCell(type, draw, row, span);
}
