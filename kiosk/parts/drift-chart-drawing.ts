import { svg, type SVGTemplateResult } from 'lit';
import { axisTicks } from './axis-ticks.ts';

/** One block of weights as drawn. */
export interface DriftPoint { readonly piece: number; readonly mean: number; readonly ewma: number }
/** A stream of weights by blocks, and the lines it is seen against. */
export interface DriftPicture {
  readonly points: readonly DriftPoint[];
  readonly target: number;
  readonly lower: number | null;
  readonly upper: number | null;
  /** Limits of the running average; null while σ is learned. */
  readonly control: null | { readonly lower: number; readonly upper: number };
  /** Where the line leads: from the newest average to the piece at which it reaches this value. */
  readonly predicted: null | { readonly piece: number; readonly from: number; readonly to: number | null; readonly value: number };
}
/** Short names written in the drawing. */
export interface DriftChartWords { readonly piece: string; readonly value: string; readonly limit: string; readonly target: string; readonly control: string; readonly predicted: string; readonly write: (value: number) => string; readonly count: (piece: number) => string }

const margin = { left: 74, right: 96, top: 14, bottom: 44 };

/** Block means, their running average, target, limits and the foretold crossing. It draws numbers it is given and judges nothing. @param width @param height px */
export function driftDrawing({ points, target, lower, upper, control, predicted }: DriftPicture, words: DriftChartWords, width: number, height: number): SVGTemplateResult {
  const first = points[0]?.piece ?? 0;
  const newest = points.at(-1) ?? { piece: 1, mean: target, ewma: target };
  // A crossing far away is drawn at the edge: what has been weighed stays readable.
  const end = predicted === null ? newest.piece : Math.min(predicted.piece, newest.piece + (newest.piece - first) + 100);
  const values = [target, ...[lower, upper].flatMap((limit) => limit ?? []), ...points.flatMap(({ mean, ewma }) => [mean, ewma]), ...(control === null ? [] : [control.lower, control.upper])];
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const pad = (high - low || Math.abs(target) * 0.001 || 1) * 0.08;
  const x = (piece: number): number => margin.left + ((width - margin.left - margin.right) * (piece - first)) / Math.max(1, end - first);
  const y = (value: number): number => height - margin.bottom - ((height - margin.top - margin.bottom) * (value - low + pad)) / (high - low + 2 * pad);
  const [right, bottom] = [width - margin.right, height - margin.bottom];
  const across = (value: number, kind: string, name: string, down = 5): SVGTemplateResult => svg`<path class="across ${kind}" d="M${margin.left} ${y(value)}H${right}"/><text class="name ${kind}" x=${right + 6} y=${y(value) + down}>${name}</text>`;
  const run = (of: (point: DriftPoint) => number): string => points.map((point, at) => `${at === 0 ? 'M' : 'L'}${x(point.piece)} ${y(of(point))}`).join('');
  return svg`
    <rect class="paper" x=${margin.left} y=${margin.top} width=${right - margin.left} height=${bottom - margin.top}/>
    ${control === null ? '' : svg`<rect class="band" x=${margin.left} y=${y(control.upper)} width=${right - margin.left} height=${y(control.lower) - y(control.upper)}/>${across(control.upper, 'control', words.control, 0)}${across(control.lower, 'control', '')}`}
    ${upper === null ? '' : across(upper, 'limit', words.limit)} ${lower === null ? '' : across(lower, 'limit', words.limit)} ${across(target, 'target', words.target, 9)}
    <path class="means" d=${points.map((point) => `M${x(point.piece) - 3.5} ${y(point.mean)}h7m-3.5 -3.5v7`).join('')}/>
    <path class="ewma" d=${run(({ ewma }) => ewma)}/>
    ${predicted === null ? '' : svg`<path class="ahead" d="M${x(newest.piece)} ${y(newest.ewma)}L${x(end)} ${y(newest.ewma + ((predicted.value - newest.ewma) * (end - newest.piece)) / Math.max(1, predicted.piece - newest.piece))}"/>
      <text class="name ahead-name" x=${x(end) - 6} y=${y(newest.ewma + ((predicted.value - newest.ewma) * (end - newest.piece)) / Math.max(1, predicted.piece - newest.piece)) + 22} text-anchor="end">${words.predicted}</text>`}
    ${axisTicks(first, end, Math.max(2, Math.floor(width / 130))).filter(Number.isInteger).map((at) => svg`<path class="tick" d="M${x(at)} ${bottom}v6"/><text x=${x(at)} y=${bottom + 20} text-anchor="middle">${words.count(at)}</text>`)}
    ${axisTicks(low, high, Math.max(3, Math.floor(height / 44))).map((at) => svg`<path class="tick" d="M${margin.left} ${y(at)}h-6"/><text x=${margin.left - 10} y=${y(at) + 5} text-anchor="end">${words.write(at)}</text>`)}
    <text class="axis" x=${(margin.left + right) / 2} y=${height - 6} text-anchor="middle">${words.piece}</text>
    <text class="axis" x="13" y=${(margin.top + bottom) / 2} text-anchor="middle" transform="rotate(-90 13 ${(margin.top + bottom) / 2})">${words.value}</text>
    <rect class="frame" x=${margin.left} y=${margin.top} width=${right - margin.left} height=${bottom - margin.top}/>`;
}
