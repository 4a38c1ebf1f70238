import { svg, type SVGTemplateResult } from 'lit';
import { axisTicks } from './axis-ticks.ts';

/** Two lines over the pieces looked at, and where they are cut off. */
export interface SequentialLines {
  /** Accept on or below slope · n − h1. */
  readonly h1: number;
  /** Reject on or above slope · n + h2. */
  readonly h2: number;
  readonly slope: number;
  readonly truncateAt: number;
  readonly truncateAc: number;
}

/** How far a sample has come: which pieces showed something, rising, and how many were looked at. */
export interface SequentialPath {
  readonly foundAt: readonly number[];
  readonly looked: number;
}

/** Short names written in the drawing. */
export interface SequentialWords {
  readonly pieces: string;
  readonly found: string;
  readonly accept: string;
  readonly reject: string;
}

const margin = { left: 52, right: 16, top: 14, bottom: 46 };

/**
 * The fields above and below two lines, the cut-off, and the stair of what was found so far. It draws numbers it is given and judges nothing.
 * @param width @param height px
 */
export function sequentialDrawing(lines: SequentialLines, path: SequentialPath, words: SequentialWords, width: number, height: number): SVGTemplateResult {
  const most = Math.max(lines.truncateAc + 2, path.foundAt.length + 1, Math.ceil(lines.h2) + 1);
  const x = (pieces: number): number => margin.left + ((width - margin.left - margin.right) * pieces) / lines.truncateAt;
  const y = (found: number): number => height - margin.bottom - ((height - margin.top - margin.bottom) * found) / most;
  const [right, bottom, top] = [x(lines.truncateAt), y(0), y(most)];
  const acceptFrom = Math.min(lines.truncateAt, lines.h1 / lines.slope);
  const acceptEnd = Math.max(0, Math.min(lines.slope * lines.truncateAt - lines.h1, most));
  const cut = lines.truncateAc + 1;
  const rejectMeetsCut = Math.min(lines.truncateAt, Math.max(0, (cut - lines.h2) / lines.slope));
  return svg`
    <rect class="paper" x=${margin.left} y=${top} width=${right - margin.left} height=${bottom - top}/>
    <path class="rejecting" d="M${x(0)} ${y(lines.h2)}L${x(rejectMeetsCut)} ${y(Math.min(cut, lines.h2 + lines.slope * rejectMeetsCut))}H${right}V${top}H${x(0)}z"/>
    <path class="accepting" d="M${x(acceptFrom)} ${bottom}L${right} ${y(acceptEnd)}V${bottom}z"/>
    <path class="line reject" d="M${x(0)} ${y(lines.h2)}L${x(rejectMeetsCut)} ${y(Math.min(cut, lines.h2 + lines.slope * rejectMeetsCut))}H${right}"/>
    <path class="line accept" d="M${x(acceptFrom)} ${bottom}L${right} ${y(acceptEnd)}"/>
    <path class="cut" d="M${right} ${top}V${bottom}"/>
    ${axisTicks(0, lines.truncateAt, Math.max(3, Math.floor(width / 90))).map((at) => svg`<path class="tick" d="M${x(at)} ${bottom}v6"/><text x=${x(at)} y=${bottom + 20} text-anchor="middle">${at}</text>`)}
    ${axisTicks(0, most, Math.max(3, Math.floor(height / 34))).filter(Number.isInteger).map((at) => svg`<path class="tick" d="M${x(0)} ${y(at)}h-6"/><text x=${x(0) - 10} y=${y(at) + 5} text-anchor="end">${at}</text>`)}
    <text class="axis" x=${(margin.left + right) / 2} y=${height - 8} text-anchor="middle">${words.pieces}</text>
    <text class="axis" x="14" y=${(top + bottom) / 2} text-anchor="middle" transform="rotate(-90 14 ${(top + bottom) / 2})">${words.found}</text>
    <text class="field reject" x=${x(0) + 10} y=${top + 20}>${words.reject}</text>
    <text class="field accept" x=${right - 10} y=${bottom - 10} text-anchor="end">${words.accept}</text>
    <path class="path" d=${stair(path, x, y)}/>
    ${path.foundAt.map((piece, at) => svg`<path class="found" d="M${x(piece) - 5} ${y(at + 1) - 5}l10 10m0 -10l-10 10"/>`)}
    <circle class="now" cx=${x(path.looked)} cy=${y(path.foundAt.length)} r="6"/>
    <rect class="frame" x=${margin.left} y=${top} width=${right - margin.left} height=${bottom - top}/>`;
}

function stair({ foundAt, looked }: SequentialPath, x: (pieces: number) => number, y: (found: number) => number): string {
  return `M${x(0)} ${y(0)}${foundAt.map((piece, at) => `H${x(piece)}V${y(at + 1)}`).join('')}H${x(looked)}`;
}
