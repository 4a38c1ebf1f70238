import { svg, type SVGTemplateResult } from 'lit';
import { axisTicks } from './axis-ticks.ts';

/** One band of the window from left to right; the first and the last are open outward. */
export interface SaturationBand { readonly kind: 'low' | 'warnLow' | 'normal' | 'warnHigh' | 'high'; readonly from: number; readonly to: number; readonly name: string }
/** What is drawn: bands over the axis, the limits between them, and a second scale in the unit of the bench. */
export interface SaturationAxes { readonly from: number; readonly to: number; readonly x: string; readonly second: string; readonly show: (percent: number) => string; readonly showSecond: (percent: number) => string }

const [LEFT, RIGHT, TOP, FOOT] = [16, 16, 46, 60];
/** Half of the room a figure of the second scale takes: one at the edge moves inward by as much. */
const SECOND_ROOM = 24;

/** Draws the window of saturation in pixels: bands with their names, limits with their figures, both scales. */
export function saturationDrawing(bands: readonly SaturationBand[], axes: SaturationAxes, { width, height }: { readonly width: number; readonly height: number }): SVGTemplateResult {
  const [across, floor] = [Math.max(width - LEFT - RIGHT, 1), height - FOOT];
  const x = (percent: number): number => LEFT + ((percent - axes.from) / (axes.to - axes.from)) * across;
  const ticks = axisTicks(axes.from, axes.to, Math.max(3, Math.floor(across / 80)));
  return svg`
    <rect class="paper" width=${width} height=${height}/>
    ${bands.map(({ kind, from, to, name }) => {
      const [start, end] = [x(Math.max(from, axes.from)), x(Math.min(to, axes.to))];
      return svg`<rect class="band ${kind}" x=${start} y=${TOP} width=${Math.max(end - start, 0)} height=${floor - TOP}/>
        ${end - start < 8.2 * name.length ? '' : svg`<text class="name ${kind}" x=${(start + end) / 2} y=${(TOP + floor) / 2 + 5} text-anchor="middle">${name}</text>`}`;
    })}
    ${bands.slice(1).map(({ from, kind }) => svg`<line class="wall ${kind === 'warnLow' || kind === 'high' ? 'limit' : ''}" x1=${x(from)} x2=${x(from)} y1=${TOP - 4} y2=${floor + 4}/>
      <text class="figure" x=${x(from)} y=${TOP - 8} text-anchor="middle">${axes.show(from)}</text>`)}
    <rect class="frame" x=${LEFT} y=${TOP} width=${across} height=${floor - TOP}/>
    ${ticks.map((tick) => svg`<line class="tick" x1=${x(tick)} x2=${x(tick)} y1=${floor} y2=${floor + 5}/><text class="figure" x=${x(tick)} y=${floor + 18} text-anchor="middle">${axes.show(tick)}</text>
      <text class="second" x=${Math.min(Math.max(x(tick), SECOND_ROOM), width - SECOND_ROOM)} y=${floor + 34} text-anchor="middle">${axes.showSecond(tick)}</text>`)}
    <text class="axis" x=${LEFT} y="16">${axes.x}</text><text class="axis" x=${width - RIGHT} y=${height - 3} text-anchor="end">${axes.second}</text>`;
}
