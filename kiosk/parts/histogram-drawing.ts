import { svg, type SVGTemplateResult } from 'lit';
import { axisTicks, roundStep } from './axis-ticks.ts';

/** Values in equal classes: `from` included, `to` not. */
export interface HistogramClass { readonly from: number; readonly to: number; readonly count: number }
export interface HistogramWords { readonly x: string; readonly y: string; readonly lower: string; readonly upper: string; readonly mean: string; readonly show: (value: number) => string }

/**
 * Equal classes at round places, about √n of them (common practice, no source), 5 to 30; no finer than what is read.
 * @param resolution least step of a value; a class is a whole number of these wide, so that no class catches more steps than another
 */
export function histogramClasses(values: readonly number[], resolution: number): readonly HistogramClass[] {
  if (values.length === 0) return [];
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const wanted = Math.min(30, Math.max(5, Math.round(Math.sqrt(values.length))));
  const width = Math.max(resolution, Math.ceil(roundStep(Math.max((most - least) / wanted, resolution)) / resolution - 1e-9) * resolution);
  // Half a step aside, so that no value stands on a boundary.
  const first = Math.floor((least + resolution / 2) / width + 1e-9) * width - resolution / 2;
  const count = Math.floor((most - first) / width + 1e-9) + 1;
  return Array.from({ length: count }, (_, at) => {
    const [from, to] = [first + at * width, first + (at + 1) * width];
    return { from, to, count: values.filter((value) => value >= from && value < to).length };
  });
}

const edge = { left: 60, right: 20, top: 40, bottom: 50 };

/** Bars, limits with their names, and the mean. */
export function histogramDrawing(classes: readonly HistogramClass[], marks: { readonly lower: number | null; readonly upper: number | null; readonly mean: number }, words: HistogramWords, { width, height }: { readonly width: number; readonly height: number }): SVGTemplateResult {
  const given = [marks.lower, marks.upper].filter((limit) => limit !== null);
  const ends = [...given, classes[0]?.from ?? 0, classes.at(-1)?.to ?? 1];
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const slack = (most - least || 1) * 0.06;
  const [low, high] = [least - slack, most + slack];
  const top = Math.max(1, ...classes.map(({ count }) => count));
  const room = { left: edge.left, top: edge.top, width: Math.max(width - edge.left - edge.right, 10), height: Math.max(height - edge.top - edge.bottom, 10) };
  const x = (value: number): number => room.left + ((value - low) / (high - low)) * room.width;
  const y = (count: number): number => room.top + room.height * (1 - count / top);
  const floor = room.top + room.height;
  const limit = (value: number | null, name: string, anchor: 'start' | 'end'): SVGTemplateResult | string => (value === null ? '' : svg`<line class="limit" x1=${x(value)} x2=${x(value)} y1=${room.top - 4} y2=${floor}/><text x=${x(value) + (anchor === 'start' ? -4 : 4)} y=${room.top - 9} text-anchor=${anchor}>${name} ${words.show(value)}</text>`);
  return svg`
    <rect class="paper" x=${room.left} y=${room.top} width=${room.width} height=${room.height}/>
    ${axisTicks(low, high, Math.max(3, room.width / 84)).map((value) => svg`<line class="rung" x1=${x(value)} x2=${x(value)} y1=${floor} y2=${floor + 6}/><text x=${x(value)} y=${floor + 21} text-anchor="middle">${words.show(value)}</text>`)}
    ${axisTicks(0, top, Math.max(3, room.height / 40)).filter((count) => Number.isInteger(count)).map((count) => svg`<line class="rung" x1=${room.left - 6} x2=${room.left + room.width} y1=${y(count)} y2=${y(count)}/><text x=${room.left - 10} y=${y(count) + 5} text-anchor="end">${count}</text>`)}
    ${classes.map(({ from, to, count }) => (count === 0 ? '' : svg`<rect class="bar" x=${x(from)} y=${y(count)} width=${Math.max(1, x(to) - x(from))} height=${floor - y(count)}/>`))}
    <line class="mean" x1=${x(marks.mean)} x2=${x(marks.mean)} y1=${room.top} y2=${floor}/>
    ${limit(marks.lower, words.lower, 'start')}${limit(marks.upper, words.upper, 'end')}
    <rect class="frame" x=${room.left} y=${room.top} width=${room.width} height=${room.height}/>
    <text class="axis" x=${room.left + room.width} y=${floor + 41} text-anchor="end">${words.x}</text><text class="axis" x="10" y="18">${words.y}</text>`;
}
