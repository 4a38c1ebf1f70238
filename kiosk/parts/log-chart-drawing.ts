import { svg, type SVGTemplateResult } from 'lit';

/** What the chart draws, from 0 to 1 in both directions; y runs upwards. */
export interface ChartStretch { readonly x: number; readonly low: number; readonly high: number }
export interface ChartWindow { readonly name: string; readonly x1: number; readonly x2: number; readonly low: number; readonly high: number }
export interface ChartTick { readonly at: number; readonly text: string }
export interface ChartField {
  readonly title: string;
  readonly curve: readonly ChartStretch[];
  readonly windows: readonly ChartWindow[];
  readonly ramps: readonly { readonly from: { readonly x: number; readonly y: number }; readonly to: { readonly x: number; readonly y: number } }[];
  readonly ticks: readonly ChartTick[];
  readonly marks: readonly { readonly number: number; readonly x: number; readonly y: number; readonly word: string }[];
}

export interface LogField { readonly left: number; readonly top: number; readonly width: number; readonly height: number }
const edge = { left: 76, right: 18, top: 26, gap: 34, bottom: 46 };

/** Where the fields lie, the first twice as high as the second. @param fields 1 or 2 */
export function logFields({ width, height }: { readonly width: number; readonly height: number }, fields: number): readonly LogField[] {
  const inner = Math.max(height - edge.top - edge.bottom - (fields - 1) * edge.gap, 40);
  const shares = fields === 1 ? [1] : [2 / 3, 1 / 3];
  let top = edge.top;
  return shares.map((share) => {
    const field = { left: edge.left, top, width: Math.max(width - edge.left - edge.right, 40), height: inner * share };
    top += field.height + edge.gap;
    return field;
  });
}

/** Draws the fields over one time axis: windows as bands, steepest ramps dashed, the curve from its least to its greatest value, findings as numbered flags. */
export function logChartDrawing(fields: readonly ChartField[], time: { readonly title: string; readonly ticks: readonly ChartTick[] }, size: { readonly width: number; readonly height: number }): SVGTemplateResult {
  const rooms = logFields(size, fields.length);
  const last = rooms.at(-1);
  const floor = last === undefined ? 0 : last.top + last.height;
  return svg`${fields.map((field, at) => {
    const room = rooms[at];
    return room === undefined ? '' : drawField(field, room, time.ticks);
  })}
    ${time.ticks.map(({ at, text }) => svg`<text x=${edge.left + at * (last?.width ?? 0)} y=${floor + 19} text-anchor="middle">${text}</text>`)}
    <text class="axis" x=${edge.left + (last?.width ?? 0)} y=${floor + 38} text-anchor="end">${time.title}</text>`;
}

function drawField({ title, curve, windows, ramps, ticks, marks }: ChartField, { left, top, width, height }: LogField, times: readonly ChartTick[]): SVGTemplateResult {
  const x = (at: number): number => left + at * width;
  const y = (at: number): number => top + height - at * height;
  const line = (pick: (stretch: ChartStretch) => number): string => curve.map((stretch, at) => `${at === 0 ? 'M' : 'L'}${x(stretch.x).toFixed(1)} ${y(pick(stretch)).toFixed(1)}`).join('');
  return svg`<rect class="paper" x=${left} y=${top} width=${width} height=${height}/>
    ${times.map(({ at }) => svg`<line class="rung" x1=${x(at)} x2=${x(at)} y1=${top} y2=${top + height}/>`)}
    ${ticks.map(({ at, text }) => svg`<line class="rung" x1=${left - 5} x2=${left + width} y1=${y(at)} y2=${y(at)}/><text x=${left - 9} y=${y(at) + 5} text-anchor="end">${text}</text>`)}
    <text class="axis" x="8" y=${top - 9}>${title}</text>
    ${windows.map(({ x1, x2, low, high }) => svg`<rect class="window" x=${x(x1)} width=${Math.max(3, x(x2) - x(x1))} y=${y(high) - 1} height=${Math.max(3, y(low) - y(high) + 2)}/>`)}
    ${ramps.map(({ from, to }) => svg`<line class="ramp" x1=${x(from.x)} y1=${y(from.y)} x2=${x(to.x)} y2=${y(to.y)}/>`)}
    <path class="stroke" d=${line(({ high }) => high)}/><path class="stroke" d=${line(({ low }) => low)}/>
    ${curve.filter(({ low, high }) => high - low > 0.004).map((stretch) => svg`<line class="stroke" x1=${x(stretch.x)} x2=${x(stretch.x)} y1=${y(stretch.low)} y2=${y(stretch.high)}/>`)}
    <rect class="frame" x=${left} y=${top} width=${width} height=${height}/>
    ${marks.map((mark, at) => flag(x(mark.x), y(mark.y), mark, { top, height, end: left + width }, at))}`;
}

/** A flag on a pole, its foot on the curve; on it the number that the table explains, and what it is in a word. Flags in a row step down so that they do not cover each other. */
function flag(x: number, y: number, { number, word }: { readonly number: number; readonly word: string }, { top, height, end }: { readonly top: number; readonly height: number; readonly end: number }, at: number): SVGTemplateResult {
  const up = y - top > 54;
  const tip = up ? Math.max(top + 12, y - 34 - (at % 3) * 22) : Math.min(top + height - 12, y + 34 + (at % 3) * 22);
  const isLeft = end - x < 150;
  return svg`<g class="flag"><title>${word}</title><line x1=${x} y1=${y} x2=${x} y2=${tip}/><path class="foot" d="M${x - 5} ${y}l5 ${up ? -8 : 8}l5 ${up ? 8 : -8}z"/>
    <path class="plate" d="M${x - 12} ${tip - 10}h24v14l-12 7l-12 -7z"/><text class="number" x=${x} y=${tip + 4} text-anchor="middle">${number}</text>
    <text class="word" x=${isLeft ? x - 17 : x + 17} y=${tip + 4} text-anchor=${isLeft ? 'end' : 'start'}>${word}</text></g>`;
}
