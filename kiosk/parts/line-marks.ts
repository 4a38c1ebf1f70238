import { css, svg, type SVGTemplateResult } from 'lit';
import type { LineLetter } from './line-letters.ts';

/** The mark of a line: outline of an insert as seen from above, with its hole: square, triangle, narrow rhomb, round. @param r half its width, px */
export function lineMark(letter: LineLetter, x: number, y: number, r: number): string {
  const hole = `M${x - 0.36 * r} ${y}a${0.36 * r} ${0.36 * r} 0 1 0 ${0.72 * r} 0a${0.36 * r} ${0.36 * r} 0 1 0 ${-0.72 * r} 0z`;
  switch (letter) {
    case 'A': return `M${x - 0.9 * r} ${y - 0.9 * r}h${1.8 * r}v${1.8 * r}h${-1.8 * r}z${hole}`;
    case 'B': return `M${x} ${y - 1.25 * r}L${x + 1.2 * r} ${y + 0.85 * r}H${x - 1.2 * r}z${hole}`;
    case 'C': return `M${x} ${y - 1.45 * r}L${x + 0.95 * r} ${y}L${x} ${y + 1.45 * r}L${x - 0.95 * r} ${y}z${hole}`;
    case 'D': return `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z${hole}`;
  }
}

/** A short piece of the line with its mark, 44 × 16, for legends and heads. */
export function lineSample(letter: LineLetter): SVGTemplateResult {
  return svg`<g class="line ${letter}"><path class="stroke" d="M1 8H43"/><path class="mark" d=${lineMark(letter, 22, 8, 5.5)}/></g>`;
}

/** Dash and hue of each line. */
export const lineStyles = css`
  .line { color: var(--ink); }
  .line.B { color: var(--link); }
  .line.C { color: var(--held); }
  .line.D { color: var(--good); }
  .stroke { fill: none; stroke: currentColor; stroke-width: 2.4; stroke-linejoin: round; }
  .B .stroke { stroke-dasharray: 11 5; }
  .C .stroke { stroke-dasharray: 2.5 4; stroke-width: 3; }
  .D .stroke { stroke-dasharray: 14 4 2.5 4; }
  .mark { fill: currentColor; fill-rule: evenodd; stroke: var(--slip); stroke-width: 1.5; paint-order: stroke; }
  .mark.hollow { fill: var(--slip); stroke: currentColor; stroke-width: 2; }
`;
