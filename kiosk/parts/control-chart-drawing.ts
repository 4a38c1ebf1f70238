import { svg, type SVGTemplateResult } from 'lit';
import { axisTicks } from './axis-ticks.ts';

/** One lot on the chart, with the limits that hold for it. */
export interface ChartedLot {
  /** What the lot is called. */
  readonly name: string;
  readonly value: number;
  readonly centre: number;
  readonly lower: number | null;
  readonly upper: number | null;
  /** Width of a zone; null where the line has none. */
  readonly sigma: number | null;
  /** Number of the signal that this lot completes, as listed under the chart; null for none. */
  readonly signal: string | null;
  /** The limits rest on this lot. */
  readonly base: boolean;
  /** Sums and runs begin anew with this lot. */
  readonly start: boolean;
}
export interface ControlChartWords {
  readonly x: string; readonly y: string; readonly upper: string; readonly lower: string; readonly centre: string; readonly base: string; readonly start: string; readonly signal: string;
  readonly show: (value: number) => string;
}

const edge = { left: 78, right: 140, top: 34, bottom: 50 };
/** The room inside the frame, px. */
export function controlRoom({ width, height }: { readonly width: number; readonly height: number }): { readonly left: number; readonly top: number; readonly width: number; readonly height: number } {
  return { left: edge.left, top: edge.top, width: Math.max(width - edge.left - edge.right, 10), height: Math.max(height - edge.top - edge.bottom, 10) };
}

/** What the upright axis runs over: every value and every limit, with a little room. */
export function controlRange(lots: readonly ChartedLot[]): { readonly low: number; readonly high: number } {
  const ends = lots.flatMap(({ value, centre, lower, upper }) => [value, centre, ...(lower === null ? [] : [lower]), ...(upper === null ? [] : [upper])]);
  if (ends.length === 0) return { low: 0, high: 1 };
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const room = (high - low || Math.abs(high) || 1) * 0.07;
  return { low: low >= 0 && low - room < 0 ? 0 : low - room, high: high + room };
}

/** Limits with their names, zones, lots and signals. @param cursor the lot that is read out */
export function controlChartDrawing(lots: readonly ChartedLot[], words: ControlChartWords, size: { readonly width: number; readonly height: number }, cursor: number): SVGTemplateResult {
  const room = controlRoom(size);
  const { low, high } = controlRange(lots);
  const wide = room.width / Math.max(lots.length, 1);
  const x = (at: number): number => room.left + (at + 0.5) * wide;
  const y = (value: number): number => room.top + room.height - ((value - low) / (high - low)) * room.height;
  const floor = room.top + room.height;
  /** A line that steps from lot to lot. */
  const steps = (pick: (lot: ChartedLot) => number | null): string => {
    let open = false;
    return lots.map((lot, at) => {
      const value = pick(lot);
      if (value === null) {
        open = false;
        return '';
      }
      const [from, to] = [(room.left + at * wide).toFixed(1), (room.left + (at + 1) * wide).toFixed(1)];
      const path = `${open ? 'L' : 'M'}${from} ${y(value).toFixed(1)}L${to} ${y(value).toFixed(1)}`;
      open = true;
      return path;
    }).join('');
  };
  const zone = (times: number): string => steps(({ centre, sigma }) => (sigma === null || centre + times * sigma > high || centre + times * sigma < low ? null : centre + times * sigma));
  const last = lots.at(-1);
  const names = last === undefined ? [] : spread([{ name: words.upper, value: last.upper }, { name: words.centre, value: last.centre }, { name: words.lower, value: last.lower }].flatMap(({ name, value }) => (value === null ? [] : [{ name, value, at: y(value) }])), room.top, floor);
  const [firstBase, lastBase] = [lots.findIndex(({ base }) => base), lots.findLastIndex(({ base }) => base)];
  return svg`
    <rect class="paper" x=${room.left} y=${room.top} width=${room.width} height=${room.height}/>
    ${axisTicks(low, high, Math.max(3, room.height / 42)).map((value) => svg`<line class="rung" x1=${room.left - 6} x2=${room.left} y1=${y(value)} y2=${y(value)}/><text x=${room.left - 10} y=${y(value) + 5} text-anchor="end">${words.show(value)}</text>`)}
    ${axisTicks(1, Math.max(lots.length, 2), Math.max(3, room.width / 60)).filter((value) => Number.isInteger(value)).map((value) => svg`<line class="rung" x1=${x(value - 1)} x2=${x(value - 1)} y1=${floor} y2=${floor + 6}/><text x=${x(value - 1)} y=${floor + 21} text-anchor="middle">${value}</text>`)}
    ${[1, -1, 2, -2].map((times) => svg`<path class="zone" d=${zone(times)}/>`)}
    <path class="centre" d=${steps(({ centre }) => centre)}/>
    <path class="limit" d=${steps(({ upper }) => upper)}/><path class="limit" d=${steps(({ lower }) => lower)}/>
    ${lots.map(({ start }, at) => (start ? svg`<line class="start" x1=${room.left + at * wide} x2=${room.left + at * wide} y1=${room.top} y2=${floor}/><text class="axis" x=${room.left + at * wide + 4} y=${room.top + 15}>${words.start}</text>` : ''))}
    ${firstBase === -1 ? '' : svg`<path class="base" d="M${room.left + firstBase * wide + 2} ${floor - 9}V${floor - 3}H${room.left + (lastBase + 1) * wide - 2}V${floor - 9}"/><text class="axis" x=${room.left + firstBase * wide + 6} y=${floor - 12}>${words.base}</text>`}
    <rect class="frame" x=${room.left} y=${room.top} width=${room.width} height=${room.height}/>
    <line class="cursor" x1=${x(cursor)} x2=${x(cursor)} y1=${room.top} y2=${floor + 6}/>
    <path class="trail" d=${lots.map(({ value }, at) => `${at === 0 ? 'M' : 'L'}${x(at).toFixed(1)} ${y(value).toFixed(1)}`).join('')}/>
    ${lots.map(({ value, signal }, at) => (signal === null ? svg`<rect class="lot" x=${x(at) - 3.6} y=${y(value) - 3.6} width="7.2" height="7.2"/>` : ''))}
    ${lots.map((lot, at) => (lot.signal === null ? '' : signalMark(x(at), y(lot.value), lot, words, room)))}
    ${names.map(({ name, value, at }) => svg`<text class="named" x=${room.left + room.width + 8} y=${at + 5}>${name} ${words.show(value)}</text>`)}
    <text class="axis" x=${room.left + room.width} y=${floor + 41} text-anchor="end">${words.x}</text>
    <text class="axis" x="10" y="20">${words.y}</text>`;
}

/** A rhomb with the word and its number, on the side where there is room. */
function signalMark(x: number, y: number, { signal, value, centre }: ChartedLot, words: ControlChartWords, room: { readonly top: number; readonly height: number }): SVGTemplateResult {
  const above = value >= centre ? y - 14 > room.top + 12 : y + 26 > room.top + room.height;
  return svg`<path class="signal" d="M${x} ${y - 9}L${x + 9} ${y}L${x} ${y + 9}L${x - 9} ${y}z"/><text class="called" x=${x} y=${above ? y - 13 : y + 23} text-anchor="middle">${words.signal}${signal}</text>`;
}

/** Names beside the frame, moved apart where they would stand on each other. */
function spread<T extends { readonly at: number }>(names: readonly T[], top: number, floor: number): readonly T[] {
  const sorted = [...names].sort((one, other) => one.at - other.at);
  let least = top - 4;
  return sorted.map((name) => {
    const at = Math.min(Math.max(name.at, least), floor);
    least = at + 17;
    return { ...name, at };
  });
}
