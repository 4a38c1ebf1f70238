import type { DrawnWindow, LogDrawing } from '../../../shared/carbide/furnace-log/index.ts';
import { ink, mm } from '../sheet/ink.ts';
import type { Sheet, TextStyle } from '../sheet/sheet.ts';

/** One level of a map as it is printed; places from 0 to 1. */
export interface PrintedLevel { readonly name: string; readonly columns: number; readonly rows: number; readonly ring: boolean; readonly cells: readonly { readonly x: number; readonly y: number; readonly mark: string; readonly test: boolean; readonly failed: boolean; readonly near: boolean }[] }
/** What a charge's sheet shows before its slips, its sentences ready made. */
export interface PrintedCharge {
  readonly map: null | { readonly title: string; readonly alternative: string; readonly levels: readonly PrintedLevel[]; readonly lots: readonly string[]; readonly legend: string };
  readonly failed: readonly string[];
  readonly log: null | { readonly title: string; readonly alternative: string; readonly drawing: LogDrawing; readonly axes: { readonly temperature: string; readonly pressure: string; readonly time: string; readonly legend: string }; readonly lines: readonly string[] };
}

const text: TextStyle = { face: 'text', size: 9 };
const small: TextStyle = { face: 'narrow', size: 7.6, ink: 'soft' };

/** Draws the map with its members, what failed, and the furnace log with its limits. */
export function drawCharge(sheet: Sheet, { map, failed, log }: PrintedCharge): void {
  if (map !== null) {
    sheet.heading(map.title, 60 * mm);
    drawMap(sheet, map.levels, map.alternative);
    for (const lot of map.lots) sheet.passage(lot, text);
    sheet.passage(map.legend, small);
  }
  for (const sentence of failed) sheet.passage(sentence, { ...text, face: 'textStrong' });
  if (log !== null) {
    sheet.heading(log.title, 100 * mm);
    drawLog(sheet, log.drawing, log.axes, log.alternative);
    for (const line of log.lines) sheet.passage(line, text);
  }
  sheet.y += 3 * mm;
}

const CELL = 7.2 * mm;

function drawMap(sheet: Sheet, levels: readonly PrintedLevel[], alternative: string): void {
  const { doc, left, width } = sheet;
  let [x, high] = [left, 0];
  for (const level of levels) {
    const [wide, tall] = [level.columns * CELL, level.rows * CELL + 5 * mm];
    if (x + wide > left + width) {
      sheet.y += high + 3 * mm;
      [x, high] = [left, 0];
    }
    if (x === left && sheet.need(tall + 2 * mm)) high = 0;
    const top = sheet.y + 5 * mm;
    sheet.tag('Figure', () => {
      sheet.line(level.name, x, top - 1.6 * mm, { face: 'narrowStrong', size: 8 });
      doc.lineWidth(0.8);
      if (level.ring) doc.circle(x + wide / 2, top + wide / 2, wide / 2).stroke(ink.soft);
      else doc.rect(x, top, wide, level.rows * CELL).stroke(ink.soft);
      for (const cell of level.cells) drawCell(sheet, cell, x + cell.x * wide, top + cell.y * level.rows * CELL);
    }, sheet.root, { alt: `${alternative}: ${level.name}`, bbox: [x, sheet.y, x + wide, sheet.y + tall], placement: 'Block' });
    x += wide + 5 * mm;
    high = Math.max(high, tall);
  }
  sheet.y += high + 3 * mm;
}

function drawCell(sheet: Sheet, { mark, test, failed, near }: PrintedLevel['cells'][number], cx: number, cy: number): void {
  const { doc } = sheet;
  const r = CELL * 0.42;
  doc.lineWidth(mark === '' ? 0.4 : 1.1).rect(cx - r, cy - r, 2 * r, 2 * r).stroke(ink.ink);
  if (near) doc.lineWidth(0.9).dash(2, { space: 1.4 }).rect(cx - r + 1.8, cy - r + 1.8, 2 * r - 3.6, 2 * r - 3.6).stroke(ink.ink).undash();
  if (mark !== '') sheet.line(mark, cx - sheet.textWidth(mark, { face: 'textStrong', size: 10 }) / 2, cy + 3.6, { face: 'textStrong', size: 10 });
  if (test) doc.polygon([cx + r - 5, cy - r + 1], [cx + r - 0.6, cy - r + 1], [cx + r - 2.8, cy - r + 5]).fill(ink.ink);
  if (failed) doc.lineWidth(1.6).moveTo(cx - r, cy - r).lineTo(cx + r, cy + r).moveTo(cx + r, cy - r).lineTo(cx - r, cy + r).stroke(ink.alarm);
}

interface Field { readonly left: number; readonly top: number; readonly width: number; readonly height: number }

function drawLog(sheet: Sheet, drawing: LogDrawing, axes: NonNullable<PrintedCharge['log']>['axes'], alternative: string): void {
  const { doc, left, width } = sheet;
  const tall = (drawing.pressure === null ? 62 : 92) * mm;
  sheet.need(tall + 4 * mm);
  const [indent, top] = [16 * mm, sheet.y + 5 * mm];
  const fields: readonly Field[] = [{ left: left + indent, top, width: width - indent, height: 50 * mm }, ...(drawing.pressure === null ? [] : [{ left: left + indent, top: top + 57 * mm, width: width - indent, height: 24 * mm }])];
  const floor = top + tall - 11 * mm;
  sheet.tag('Figure', () => {
    const [temperature, pressure] = fields;
    if (temperature !== undefined) {
      frame(sheet, temperature, axes.temperature, drawing.celsius.map(({ at, value }) => ({ at, text: String(value) })));
      windows(sheet, temperature, drawing.windows);
      for (const { from, to } of drawing.rates) doc.lineWidth(0.7).dash(3, { space: 2 }).moveTo(...point(temperature, from)).lineTo(...point(temperature, to)).stroke(ink.soft).undash();
      curve(sheet, temperature, drawing.temperature);
    }
    if (pressure !== undefined && drawing.pressure !== null) {
      frame(sheet, pressure, axes.pressure, drawing.pressure.ticks.filter((_, at) => at % 2 === 0).map(({ at, value }) => ({ at, text: String(value) })));
      windows(sheet, pressure, drawing.pressure.windows);
      curve(sheet, pressure, drawing.pressure.curve);
    }
    for (const mark of drawing.marks) {
      const field = mark.field === 'pressure' ? pressure ?? temperature : temperature;
      if (field !== undefined) flag(sheet, field, mark);
    }
    for (const { at, value } of drawing.minutes) {
      const said = String(value);
      sheet.line(said, left + indent + at * (width - indent) - sheet.textWidth(said, small) / 2, floor + 3.4 * mm, small);
    }
    sheet.line(axes.time, left + width - sheet.textWidth(axes.time, small), floor + 7 * mm, small);
    sheet.line(axes.legend, left + indent, floor + 7 * mm, small);
  }, sheet.root, { alt: alternative, bbox: [left, sheet.y, left + width, sheet.y + tall], placement: 'Block' });
  sheet.y += tall + 2 * mm;
}

function point({ left, top, width, height }: Field, { x, y }: { readonly x: number; readonly y: number }): [number, number] {
  return [left + x * width, top + height - y * height];
}

function frame(sheet: Sheet, field: Field, title: string, ticks: readonly { readonly at: number; readonly text: string }[]): void {
  const { doc } = sheet;
  for (const { at, text: said } of ticks) {
    const [x, y] = point(field, { x: 0, y: at });
    doc.rect(x, y - 0.15, field.width, 0.3).fill(ink.hair);
    sheet.line(said, x - 3 - sheet.textWidth(said, small), y + 2.4, small);
  }
  doc.lineWidth(0.8).rect(field.left, field.top, field.width, field.height).stroke(ink.ink);
  sheet.line(title, sheet.left, field.top - 5.5, small);
}

/** Bands, washed and framed, so that a grey print shows them too. */
function windows({ doc }: Sheet, field: Field, drawn: readonly DrawnWindow[]): void {
  for (const { x1, x2, low, high } of drawn) {
    const [x, y] = point(field, { x: x1, y: high });
    doc.lineWidth(0.7).rect(x, y - 0.8, Math.max(2, (x2 - x1) * field.width), Math.max(2, (high - low) * field.height + 1.6)).fillAndStroke(ink.wash, ink.soft);
  }
}

function curve({ doc }: Sheet, field: Field, drawn: readonly { readonly x: number; readonly low: number; readonly high: number }[]): void {
  doc.lineWidth(0.9);
  for (const pick of ['low', 'high'] as const) drawn.forEach((stretch, at) => (at === 0 ? doc.moveTo(...point(field, { x: stretch.x, y: stretch[pick] })) : doc.lineTo(...point(field, { x: stretch.x, y: stretch[pick] }))));
  for (const { x, low, high } of drawn) if (high - low > 0.004) doc.moveTo(...point(field, { x, y: low })).lineTo(...point(field, { x, y: high }));
  doc.stroke(ink.ink);
}

function flag(sheet: Sheet, field: Field, mark: LogDrawing['marks'][number]): void {
  const { doc } = sheet;
  const [x, y] = point(field, mark);
  const up = y - field.top > 34;
  const tip = up ? Math.max(field.top + 7, y - 20 - (mark.number % 3) * 12) : y + 20 + (mark.number % 3) * 12;
  doc.lineWidth(0.8).moveTo(x, y).lineTo(x, tip).stroke(ink.alarm);
  doc.polygon([x - 6, tip - 5], [x + 6, tip - 5], [x + 6, tip + 3], [x, tip + 7], [x - 6, tip + 3]).fillAndStroke(ink.paper, ink.alarm);
  const said = String(mark.number);
  sheet.line(said, x - sheet.textWidth(said, { face: 'narrowStrong', size: 7 }) / 2, tip + 2, { face: 'narrowStrong', size: 7 });
}
