import { svg, type SVGTemplateResult } from 'lit';
import { axisTicks } from '../../parts/axis-ticks.ts';
import type { LineLetter } from '../../parts/line-letters.ts';
import { lineMark } from '../../parts/line-marks.ts';

/** One mark of a plot: where along the axis (0 … 1), its value, whose it is. */
export interface PlotMark { readonly at: number; readonly value: number; readonly letter: LineLetter }
/** A line through marks of one person, or a straight one. */
export interface PlotLine { readonly letter: LineLetter; readonly points: readonly { readonly at: number; readonly value: number }[] }
/** What stands along the axis: a name at its middle, between two borders. */
export interface PlotSlot { readonly at: number; readonly text: string }
export interface Plot {
  readonly marks: readonly PlotMark[];
  readonly lines: readonly PlotLine[];
  readonly slots: readonly PlotSlot[];
  /** Borders between slots, 0 … 1. */
  readonly borders: readonly number[];
  /** Values that a level line is drawn at, with their words. */
  readonly levels: readonly { readonly value: number; readonly text: string }[];
  readonly x: string;
  readonly y: string;
  readonly show: (value: number) => string;
}

/** The room inside the axes. */
const around = { left: 74, right: 14, top: 26, bottom: 46 };

/** Marks and lines over named places; every axis with its name and unit. */
export function studyPlotDrawing({ marks, lines, slots, borders, levels, x, y, show }: Plot, { width, height }: { readonly width: number; readonly height: number }): SVGTemplateResult {
  const values = [...marks.map(({ value }) => value), ...lines.flatMap(({ points }) => points.map(({ value }) => value)), ...levels.map(({ value }) => value)];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const spare = (most - least || Math.abs(most) || 1) * 0.06;
  const [from, to] = [least - spare, most + spare];
  const [wide, high] = [Math.max(width - around.left - around.right, 10), Math.max(height - around.top - around.bottom, 10)];
  const xOf = (at: number): number => around.left + at * wide;
  const yOf = (value: number): number => around.top + (1 - (value - from) / (to - from)) * high;
  return svg`<rect class="paper" x=${around.left} y=${around.top} width=${wide} height=${high} />
    ${axisTicks(from, to, Math.max(3, Math.floor(high / 44))).map((tick) => svg`<line class="rung" x1=${around.left} x2=${around.left + wide} y1=${yOf(tick)} y2=${yOf(tick)} /><text x=${around.left - 6} y=${yOf(tick) + 5} text-anchor="end">${show(tick)}</text>`)}
    ${borders.map((at) => svg`<line class="rung" x1=${xOf(at)} x2=${xOf(at)} y1=${around.top} y2=${around.top + high} />`)}
    ${levels.map(({ value, text }) => svg`<line class="level" x1=${around.left} x2=${around.left + wide} y1=${yOf(value)} y2=${yOf(value)} /><text class="axis" x=${around.left + wide - 4} y=${yOf(value) - 4} text-anchor="end">${text}</text>`)}
    ${lines.map(({ letter, points }) => svg`<g class="line ${letter}"><path class="stroke" d=${points.map(({ at, value }, nth) => `${nth === 0 ? 'M' : 'L'}${xOf(at)} ${yOf(value)}`).join('')} /></g>`)}
    ${marks.map(({ at, value, letter }) => svg`<g class="line ${letter}"><path class="mark" d=${lineMark(letter, xOf(at), yOf(value), 5.5)} /></g>`)}
    <rect class="frame" x=${around.left} y=${around.top} width=${wide} height=${high} />
    ${slots.map(({ at, text }) => svg`<text x=${xOf(at)} y=${around.top + high + 18} text-anchor="middle">${text}</text>`)}
    <text class="axis" x=${around.left} y=${around.top - 9}>${y}</text><text class="axis" x=${around.left + wide} y=${height - 8} text-anchor="end">${x}</text>`;
}
