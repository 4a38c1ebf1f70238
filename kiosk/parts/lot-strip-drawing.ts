import { svg, type SVGTemplateResult } from 'lit';

/** How hard a lot was inspected; the height of its bar. */
export type StripSeverity = 'reduced' | 'normal' | 'tightened' | 'discontinued';
/** One lot of the strip, in the order in which they came. */
export interface StripLot { readonly severity: StripSeverity; readonly accepted: boolean }

const heights: Readonly<Record<StripSeverity, number>> = { reduced: 9, normal: 18, tightened: 29, discontinued: 29 };
const sky = 15;
const rowHeight = sky + heights.tightened + 22;

/** How the lots are set in rows. @param width room, px */
export function stripRows(lots: number, width: number): { readonly perRow: number; readonly cell: number; readonly height: number } {
  const least = lots > 400 ? 9 : 13;
  const fit = Math.max(10, Math.floor(Math.max(width, 100) / least / 10) * 10);
  const perRow = Math.min(fit, Math.max(10, Math.ceil(lots / 10) * 10));
  const rows = Math.max(1, Math.ceil(lots / perRow));
  return { perRow, cell: Math.min(width / perRow, 26), height: rows * rowHeight };
}

/** Draws the lots as bars: low on reduced, middle on normal, high on tightened, hatched where inspection is discontinued. A lot not accepted bears a split rhomb. @param cell width of a lot, px */
export function lotStripDrawing(lots: readonly StripLot[], { perRow, cell }: { readonly perRow: number; readonly cell: number }): SVGTemplateResult {
  const size = Math.min(6, cell * 0.45);
  return svg`<defs><pattern id="stopped" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line class="hatch" x1="0" x2="0" y1="0" y2="6"/></pattern></defs>
    ${lots.map(({ severity, accepted }, at) => {
      const [row, column] = [Math.floor(at / perRow), at % perRow];
      const floor = row * rowHeight + sky + heights.tightened;
      const x = column * cell;
      const top = floor - heights[severity];
      const centre = x + cell / 2;
      const named = (at + 1) % 10 === 0;
      const mark = top - size - 1;
      return svg`<rect class=${severity} x=${x + 0.75} y=${top} width=${Math.max(cell - 1.5, 1)} height=${heights[severity]}/>
        ${accepted || severity === 'discontinued' ? '' : svg`<path class="not" d="M${centre} ${mark - size}L${centre + size} ${mark}L${centre} ${mark + size}L${centre - size} ${mark}zM${centre - size} ${mark}h${2 * size}"/>`}
        ${named ? svg`<line class="tick" x1=${x + cell} x2=${x + cell} y1=${floor} y2=${floor + 5}/><text x=${x + cell} y=${floor + 17} text-anchor="end">${at + 1}</text>` : ''}`;
    })}
    ${Array.from({ length: Math.ceil(lots.length / perRow) }, (_, row) => {
      const floor = row * rowHeight + sky + heights.tightened;
      return svg`<line class="floor" x1="0" x2=${Math.min(perRow, lots.length - row * perRow) * cell} y1=${floor} y2=${floor}/>`;
    })}`;
}
