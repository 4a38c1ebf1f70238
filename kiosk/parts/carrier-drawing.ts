import { svg, type SVGTemplateResult } from 'lit';

/** A tray, a row of barrels or a level of a charge, with the places pieces are taken from; rows and columns count from 1. */
export interface Carrier {
  readonly name: string;
  readonly rows: number;
  readonly columns: number;
  readonly take: readonly { readonly row: number; readonly column: number; readonly text: string }[];
}

/** What a carrier holds: inserts in a tray, barrels, or positions in a charge. */
export type CarrierShape = 'tray' | 'barrel' | 'charge';

/** Side of one place, px, for each shape. */
export const placeSize: Readonly<Record<CarrierShape, number>> = { tray: 30, barrel: 52, charge: 44 };
const edge = 30;

/** Width and height of a carrier's drawing, px. */
export function carrierSize({ rows, columns }: Carrier, shape: CarrierShape): { readonly width: number; readonly height: number } {
  return { width: edge + columns * placeSize[shape] + 4, height: edge + rows * placeSize[shape] + 4 };
}

/** Draws a carrier with figures at its edge; places to take are filled and carry their text. */
export function carrierDrawing({ rows, columns, take }: Carrier, shape: CarrierShape): SVGTemplateResult {
  const side = placeSize[shape];
  const taken = new Map(take.map(({ row, column, text }) => [`${row}/${column}`, text]));
  const numbers = (count: number) => Array.from({ length: count }, (_, at) => at + 1);
  const centre = (at: number): number => edge + (at - 0.5) * side;
  return svg`
    <rect class="tray" x=${edge - 3} y=${edge - 3} width=${columns * side + 6} height=${rows * side + 6}/>
    ${numbers(columns).map((column) => svg`<text class="index" x=${centre(column)} y=${edge - 10} text-anchor="middle">${column}</text>`)}
    ${numbers(rows).map((row) => svg`<text class="index" x=${edge - 9} y=${centre(row) + 5} text-anchor="end">${row}</text>`)}
    ${numbers(rows).map((row) =>
      numbers(columns).map((column) => {
        const text = taken.get(`${row}/${column}`);
        const [x, y] = [centre(column), centre(row)];
        return text === undefined
          ? svg`<path class="place" d=${outline(shape, x, y, side * 0.32)}/>`
          : svg`<path class="take" d=${outline(shape, x, y, side * 0.47)}/><text class="order" x=${x} y=${y + 5} text-anchor="middle">${text}</text>`;
      }),
    )}`;
}

/** An insert is a square with worn corners, a barrel a circle, a charge position an upright boat. */
function outline(shape: CarrierShape, x: number, y: number, r: number): string {
  if (shape === 'barrel') return `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0z`;
  if (shape === 'charge') return `M${x - r} ${y - r * 0.7}h${2 * r}l${-r * 0.25} ${r * 1.4}h${-r * 1.5}z`;
  const c = r * 0.3;
  return `M${x - r + c} ${y - r}h${2 * r - 2 * c}l${c} ${c}v${2 * r - 2 * c}l${-c} ${c}h${2 * c - 2 * r}l${-c} ${-c}v${2 * c - 2 * r}z`;
}
