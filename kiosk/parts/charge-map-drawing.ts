import { svg, type SVGTemplateResult } from 'lit';

/** One cell of a level as it is drawn; `x` and `y` from 0 to 1 within the level, its middle. */
export interface MapCell {
  readonly position: number;
  readonly x: number;
  readonly y: number;
  /** Letter of the lot that lies here; empty: free. */
  readonly mark: string;
  readonly chosen: boolean;
  /** A test piece lies here. */
  readonly test: boolean;
  readonly failed: boolean;
  readonly near: boolean;
  /** All of it in words. */
  readonly label: string;
}
export interface MapLevelDrawing { readonly name: string; readonly columns: number; readonly rows: number; readonly ring: boolean; readonly cells: readonly MapCell[] }

/** Side of a cell in the drawing's own units. */
export const CELL = 60;

/** Cells side by side that a ring of so many needs as its diameter, so that they do not touch. */
export function ringCells(positions: number): number {
  return Math.max(3, Math.ceil(positions / (0.8 * Math.PI) + 0.35));
}

/** The outline of a level: a tray's edge, or the two circles of a turntable. */
export function levelOutline({ columns, rows, ring }: MapLevelDrawing): SVGTemplateResult {
  const [width, height] = [columns * CELL, rows * CELL];
  return ring
    ? svg`<circle class="tray" cx=${width / 2} cy=${height / 2} r=${width / 2 - 2}/><circle class="hub" cx=${width / 2} cy=${height / 2} r=${Math.max(6, width / 2 - 1.45 * CELL)}/>`
    : svg`<rect class="tray" x="1" y="1" width=${width - 2} height=${height - 2}/>`;
}

/** A cell: an upright boat; with its lot's letter, a small foot for a test piece, a double edge for near, a cross for failed. */
export function cellShape({ x, y, mark, chosen, test, failed, near, position }: MapCell, { columns, rows }: MapLevelDrawing): SVGTemplateResult {
  const [cx, cy, r] = [x * columns * CELL, y * rows * CELL, CELL * 0.42];
  const boat = (size: number): string => `M${cx - size} ${cy - size}h${2 * size}v${1.5 * size}l${-0.5 * size} ${0.5 * size}h${-size}l${-0.5 * size} ${-0.5 * size}z`;
  return svg`<path class="place ${mark === '' ? '' : 'held'} ${chosen ? 'chosen' : ''}" d=${boat(r)}/>
    ${near ? svg`<path class="near" d=${boat(r - 5)}/>` : ''}
    ${mark === '' ? svg`<text class="position" x=${cx} y=${cy + 5} text-anchor="middle">${position}</text>` : svg`<text class="mark ${chosen ? 'on' : ''}" x=${cx} y=${cy + 8} text-anchor="middle">${mark}</text>`}
    ${test ? svg`<path class="test ${mark !== '' && chosen ? 'on' : ''}" d="M${cx + r - 15} ${cy - r + 3}h12l-6 11z"/>` : ''}
    ${failed ? svg`<path class="failed" d="M${cx - r} ${cy - r}L${cx + r} ${cy + r}M${cx + r} ${cy - r}L${cx - r} ${cy + r}"/>` : ''}`;
}
