import { svg, type SVGTemplateResult } from 'lit';
import { axisTicks } from './axis-ticks.ts';

/** A reading on normal probability paper: where a normal distribution would have it, in standard deviations, and where it is. */
export interface PlottedReading { readonly z: number; readonly value: number }

/** The straight line that normal readings lie along. */
export interface PlotLine { readonly mean: number; readonly s: number }

/** Short names written in the drawing, and how a value is written. */
export interface NormalPlotWords { readonly value: string; readonly expected: string; readonly show: (value: number) => string }

const margin = { left: 70, right: 18, top: 14, bottom: 46 };

/** What the axes run over: the readings with the line at their ends, and a little room. */
export function plotRange(points: readonly PlottedReading[], line: PlotLine): { readonly z: number; readonly low: number; readonly high: number } {
  const z = Math.max(1, ...points.map((point) => Math.abs(point.z))) * 1.12;
  const ends = [...points.map(({ value }) => value), line.mean - z * line.s, line.mean + z * line.s];
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const room = (high - low || 1) * 0.04;
  return { z, low: low - room, high: high + room };
}

/** Limits, line and readings. A limit beyond the range is not drawn. @param limits in the values' unit @param width @param height px */
export function normalPlotDrawing(points: readonly PlottedReading[], line: PlotLine, limits: readonly number[], words: NormalPlotWords, width: number, height: number): SVGTemplateResult {
  const { z, low, high } = plotRange(points, line);
  const [left, right, top, bottom] = [margin.left, width - margin.right, margin.top, height - margin.bottom];
  const x = (at: number): number => left + ((right - left) * (at + z)) / (2 * z);
  const y = (value: number): number => bottom - ((bottom - top) * (value - low)) / (high - low);
  return svg`
    <rect class="paper" x=${left} y=${top} width=${right - left} height=${bottom - top}/>
    ${axisTicks(-z, z, Math.max(3, Math.floor(width / 110))).map((at) => svg`<line class="rung" x1=${x(at)} x2=${x(at)} y1=${top} y2=${bottom + 6}/><text x=${x(at)} y=${bottom + 20} text-anchor="middle">${at}</text>`)}
    ${axisTicks(low, high, Math.max(3, Math.floor(height / 44))).map((at) => svg`<line class="rung" x1=${left - 6} x2=${right} y1=${y(at)} y2=${y(at)}/><text x=${left - 10} y=${y(at) + 5} text-anchor="end">${words.show(at)}</text>`)}
    ${limits.filter((limit) => limit >= low && limit <= high).map((limit) => svg`<line class="limit" x1=${left} x2=${right} y1=${y(limit)} y2=${y(limit)}/>`)}
    <line class="expected" x1=${x(-z)} y1=${y(line.mean - z * line.s)} x2=${x(z)} y2=${y(line.mean + z * line.s)}/>
    ${points.map((point) => svg`<circle class="reading" cx=${x(point.z)} cy=${y(point.value)} r="4.5"/>`)}
    <text class="axis" x=${right} y=${height - 6} text-anchor="end">${words.expected}</text>
    <text class="axis" x="14" y=${(top + bottom) / 2} text-anchor="middle" transform="rotate(-90 14 ${(top + bottom) / 2})">${words.value}</text>
    <rect class="frame" x=${left} y=${top} width=${right - left} height=${bottom - top}/>`;
}
