import { svg, type SVGTemplateResult } from 'lit';
import { axisTicks } from './axis-ticks.ts';
import { letterPlaces, type Place } from './letter-places.ts';
import type { LineLetter } from './line-letters.ts';
import { lineMark } from './line-marks.ts';

/** One line of the chart: a value at each of the chart's points, null where there is none, and its marked points. */
export interface RiskLine {
  readonly letter: LineLetter;
  /** What the line is, ready to read. */
  readonly name: string;
  readonly values: readonly (number | null)[];
  readonly marks: readonly RiskMark[];
}
/** A marked point: filled for the producer's, hollow for the consumer's. */
export interface RiskMark { readonly kind: 'producer' | 'consumer'; readonly x: number; readonly y: number }

/** What a chart is drawn over. */
export interface RiskAxes {
  /** Where the lines have values; rising. */
  readonly points: readonly number[];
  /** Largest value of the upright axis; it begins at 0. */
  readonly top: number;
  readonly x: string;
  readonly y: string;
  readonly showX: (value: number) => string;
  readonly showY: (value: number) => string;
}

const edge = { left: 70, right: 20, top: 34, bottom: 52 };

/** The room inside the frame, px. */
export function chartRoom({ width, height }: { readonly width: number; readonly height: number }) {
  return { left: edge.left, top: edge.top, width: Math.max(width - edge.left - edge.right, 10), height: Math.max(height - edge.top - edge.bottom, 10) };
}

/** Draws frame, ticks, lines, marked points, letters and the cursor. @param cursor which of the points is read out */
export function riskChartDrawing(lines: readonly RiskLine[], axes: RiskAxes, size: { readonly width: number; readonly height: number }, cursor: number): SVGTemplateResult {
  const room = chartRoom(size);
  const [from, to] = [axes.points[0] ?? 0, axes.points.at(-1) ?? 1];
  const x = (value: number): number => room.left + ((value - from) / (to - from || 1)) * room.width;
  const y = (value: number): number => room.top + room.height - (value / axes.top) * room.height;
  const floor = room.top + room.height;
  const paths = lines.map(({ values }) => values.flatMap((value, at): readonly Place[] => (value === null ? [] : [{ x: x(axes.points[at] ?? 0), y: y(value) }])));
  const within = (value: number): boolean => value >= from && value <= to;
  const inRoom = (place: Place): Place => ({ x: place.x - room.left, y: place.y - room.top });
  const marked = lines.flatMap(({ marks }) => marks.filter((mark) => within(mark.x)).map((mark) => inRoom({ x: x(mark.x), y: y(mark.y) })));
  const letters = letterPlaces(paths.map((path) => path.map(inRoom)), room, marked);
  const now = axes.points[cursor] ?? from;
  return svg`
    <rect class="paper" x=${room.left} y=${room.top} width=${room.width} height=${room.height}/>
    ${axisTicks(from, to, Math.max(3, room.width / 70)).map((value) => svg`<line class="rung" x1=${x(value)} x2=${x(value)} y1=${room.top} y2=${floor + 6}/><text x=${x(value)} y=${floor + 22} text-anchor="middle">${axes.showX(value)}</text>`)}
    ${axisTicks(0, axes.top, Math.max(3, room.height / 38)).map((value) => svg`<line class="rung" x1=${room.left - 6} x2=${room.left + room.width} y1=${y(value)} y2=${y(value)}/><text x=${room.left - 10} y=${y(value) + 5} text-anchor="end">${axes.showY(value)}</text>`)}
    <text class="axis" x=${room.left + room.width} y=${floor + 43} text-anchor="end">${axes.x}</text>
    <text class="axis" x="10" y="20">${axes.y}</text>
    <rect class="frame" x=${room.left} y=${room.top} width=${room.width} height=${room.height}/>
    <line class="cursor" x1=${x(now)} x2=${x(now)} y1=${room.top} y2=${floor + 6}/>
    ${lines.map(({ letter }, at) => svg`<g class="line ${letter}"><path class="stroke" d=${pathOf(paths[at] ?? [])}/></g>`)}
    ${lines.map(({ letter, marks, values }, at) => {
      const value = values[cursor] ?? null;
      const place = letters[at] ?? null;
      return svg`<g class="line ${letter}">
        ${marks.filter((mark) => within(mark.x)).map(({ kind, x: markX, y: markY }) => svg`<path class="mark ${kind === 'consumer' ? 'hollow' : ''}" d=${lineMark(letter, x(markX), y(markY), 7.5)}/>`)}
        ${value === null ? '' : svg`<circle class="reading" cx=${x(now)} cy=${y(value)} r="4.5"/>`}
        ${place === null ? '' : svg`<rect class="plate" x=${place.x + room.left - 10} y=${place.y + room.top - 11} width="20" height="22" rx="2"/><text class="letter" x=${place.x + room.left} y=${place.y + room.top + 5.5} text-anchor="middle">${letter}</text>`}
      </g>`;
    })}`;
}

function pathOf(places: readonly Place[]): string {
  return places.map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');
}
