import { svg, type SVGTemplateResult } from 'lit';
import { fixedScatter } from './fixed-scatter.ts';

/** A point as the drawing counts: the middle of the indentation is 0, the picture reaches from −100 to 100. */
interface Point { readonly x: number; readonly y: number }

/** What a class shows: cracks out of the rim, flaked fields at it, or the whole rim flaked. */
export interface AdhesionPicture { readonly cracks: readonly (readonly Point[])[]; readonly flaked: readonly (readonly Point[])[]; readonly ring: readonly Point[] | null }

/** Radius of the indentation in the picture. */
export const INDENT = 40;
const around = (angle: number, radius: number): Point => ({ x: radius * Math.cos(angle), y: radius * Math.sin(angle) });

/**
 * The geometry of a class of adhesion, 0 to 3: nothing; cracks; cracks and flaked fields at the rim; flaked all around, where no coating is left to crack. Our own drawing, the same
 * every time. What it shows follows the words of ISO 26443 as seen in secondary text; how long a crack or how wide a field is, is invented.
 */
export function adhesionPicture(grade: 0 | 1 | 2 | 3): AdhesionPicture {
  const scatter = fixedScatter(26_443 + grade);
  const between = (least: number, most: number): number => least + (most - least) * scatter();
  const crack = (angle: number): Point[] => {
    const length = between(10, 32);
    return [0, 0.3, 0.65, 1].map((part) => around(angle + (part === 0 ? 0 : between(-0.07, 0.07)), INDENT - 1 + part * length));
  };
  const cracks = grade === 0 || grade === 3 ? [] : Array.from({ length: 17 }, (_, at) => crack(((at + between(-0.3, 0.3)) / 17) * 2 * Math.PI));
  const field = (middle: number, half: number, depth: number): Point[] => {
    const edge = Array.from({ length: 9 }, (_, at) => around(middle + half * (1 - at / 4), INDENT + depth * Math.sin((Math.PI * at) / 8) * between(0.75, 1.15)));
    return [...Array.from({ length: 7 }, (_, at) => around(middle + half * (at / 3 - 1), INDENT)), ...edge];
  };
  const flaked = grade === 2 ? [field(-0.5, 0.52, 34), field(1.6, 0.42, 26), field(3.5, 0.46, 30)] : [];
  const ring = grade === 3 ? Array.from({ length: 36 }, (_, at) => around((at / 36) * 2 * Math.PI, INDENT + between(17, 33))) : null;
  return { cracks, flaked, ring };
}

/** Draws a class; the colours are the theme's, and what is flaked is hatched as well. */
export function adhesionDrawing(grade: 0 | 1 | 2 | 3): SVGTemplateResult {
  const { cracks, flaked, ring } = adhesionPicture(grade);
  return svg`
    <defs><pattern id="bare" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect class="bare-ground" width="6" height="6"/><line class="bare-line" x1="0" x2="0" y1="0" y2="6"/></pattern></defs>
    <rect class="coat" x="-100" y="-100" width="200" height="200"/>
    ${ring === null ? '' : svg`<path class="bare" d=${closed(ring)}/>`}
    ${flaked.map((points) => svg`<path class="bare" d=${closed(points)}/>`)}
    ${cracks.map((points) => svg`<path class="crack" d=${open(points)}/>`)}
    <circle class="indent" r=${INDENT}/><circle class="inner" r=${INDENT * 0.62}/><circle class="inner" r=${INDENT * 0.28}/>`;
}

const open = (points: readonly Point[]): string => points.map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`).join('');
const closed = (points: readonly Point[]): string => `${open(points)}Z`;
