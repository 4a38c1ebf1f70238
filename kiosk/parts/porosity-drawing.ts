import { svg, type SVGTemplateResult } from 'lit';
import { fixedScatter } from './fixed-scatter.ts';

/** A pore or a nest of carbon: micrometres from the middle of the field. */
export interface Spot { readonly xUm: number; readonly yUm: number; readonly diameterUm: number }

/** Side of the square that is drawn, µm: B pores are rarer and want a larger one. */
export const FIELD_UM = { A: 600, B: 1200, C: 600 } as const;
/** Nests of free carbon drawn for the steps 0 to 4: invented, for the standard judges by its plates alone. */
const NESTS = [0, 3, 8, 20, 45] as const;

/**
 * Where the spots of one level lie. A pores are 4 to 10 µm wide, B pores 10 to 25 µm; as many are drawn as make up the level's share of the area,
 * which on a plane section is its share of the volume (Delesse's rule, common practice). Our own drawing, the same every time.
 * @param step 0 for level 00 to 4 for 08 @param volumePercent of that level; null for C
 */
export function porositySpots(type: 'A' | 'B' | 'C', step: number, volumePercent: number | null): readonly Spot[] {
  const scatter = fixedScatter(4_499 + 10 * step + { A: 1, B: 2, C: 3 }[type]);
  const side = FIELD_UM[type];
  const spot = (least: number, most: number): Spot => {
    const diameterUm = least + (most - least) * scatter() ** 2;
    const room = side - 2 * most;
    return { diameterUm, xUm: (scatter() - 0.5) * room, yUm: (scatter() - 0.5) * room };
  };
  if (volumePercent === null) return Array.from({ length: NESTS[step] ?? 0 }, () => spot(14, 34));
  const wanted = (volumePercent / 100) * side * side;
  const spots: Spot[] = [];
  for (let filled = 0; filled < wanted; ) {
    const next = type === 'A' ? spot(4, 10) : spot(10, 25);
    spots.push(next);
    filled += (Math.PI / 4) * next.diameterUm ** 2;
  }
  return spots;
}

/** Draws a level: pores as round spots, carbon as nests of small specks. */
export function porosityDrawing(type: 'A' | 'B' | 'C', step: number, volumePercent: number | null): SVGTemplateResult {
  const scale = 200 / FIELD_UM[type];
  const scatter = fixedScatter(77 + step);
  return svg`<rect class="section" x="-100" y="-100" width="200" height="200"/>
    ${porositySpots(type, step, volumePercent).map(({ xUm, yUm, diameterUm }) => {
      const [x, y, radius] = [xUm * scale, yUm * scale, (diameterUm / 2) * scale];
      if (type !== 'C') return svg`<circle class="pore" cx=${x.toFixed(2)} cy=${y.toFixed(2)} r=${radius.toFixed(2)}/>`;
      return Array.from({ length: 7 }, (_, at) => svg`<circle class="pore" cx=${(x + radius * Math.cos(at) * (at / 6)).toFixed(2)} cy=${(y + radius * Math.sin(at) * (at / 6)).toFixed(2)} r=${(0.8 + 0.8 * scatter()).toFixed(2)}/>`);
    })}
    <g class="rule"><line x1="-92" x2=${-92 + 100 * scale} y1="92" y2="92"/><line x1="-92" x2="-92" y1="88" y2="96"/><line x1=${-92 + 100 * scale} x2=${-92 + 100 * scale} y1="88" y2="96"/></g>`;
}
