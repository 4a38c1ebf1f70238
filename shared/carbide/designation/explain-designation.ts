import { cornerCode, formatDesignation } from './designation.ts';
import type { Chamfer, InsertDesignation } from './designation.ts';
import { insertDimensions } from './insert-dimensions.ts';
import type { InsertDimensions } from './insert-dimensions.ts';
import { CLEARANCES, EDGES, FIXINGS, HANDS, WIPER_ANGLES, WIPER_CLEARANCES } from './letters.ts';
import type { Fixing, ToleranceClass } from './letters.ts';
import type { DesignationPosition } from './problem.ts';
import { SHAPES } from './shapes.ts';
import type { InsertShape, ShapeLetter } from './shapes.ts';
import type { CornerRadius } from './corner.ts';
import type { InsertThickness } from './thickness.ts';

/** What one position says. */
export type PositionMeaning =
  | { readonly kind: 'shape'; readonly letter: ShapeLetter; readonly shape: InsertShape }
  | { readonly kind: 'clearance'; readonly angleDeg: number | null }
  | { readonly kind: 'toleranceClass'; readonly toleranceClass: ToleranceClass }
  | { readonly kind: 'fixing'; readonly fixing: Fixing | null }
  | { readonly kind: 'size'; readonly dimensions: InsertDimensions }
  | { readonly kind: 'thickness'; readonly thickness: InsertThickness }
  | { readonly kind: 'radius'; readonly radius: CornerRadius }
  | { readonly kind: 'round'; readonly isMetric: boolean }
  | { readonly kind: 'wiper'; readonly angleDeg: number | null; readonly clearanceDeg: number | null }
  | { readonly kind: 'edge'; readonly edge: (typeof EDGES)[keyof typeof EDGES] }
  | { readonly kind: 'hand'; readonly hand: (typeof HANDS)[keyof typeof HANDS] }
  | { readonly kind: 'chamfer'; readonly chamfer: Chamfer }
  | { readonly kind: 'makersSign'; readonly sign: string };

/** One position with the signs that stand there. */
export type ExplainedPosition = { readonly position: DesignationPosition; readonly text: string; readonly meaning: PositionMeaning };

/** Every position that is there, from left to right, with what it says. Joined, the texts are the designation (a dash before the maker's sign). */
export function explainDesignation(designation: InsertDesignation): readonly ExplainedPosition[] {
  const { shape, clearance, toleranceClass, fixing, size, thickness, corner, edge, hand, chamfer, makersSign } = designation;
  const dimensions = insertDimensions(designation);
  const explained: (ExplainedPosition | null)[] = [
    { position: 1, text: shape, meaning: { kind: 'shape', letter: shape, shape: SHAPES[shape] } },
    { position: 2, text: clearance, meaning: { kind: 'clearance', angleDeg: CLEARANCES[clearance] } },
    { position: 3, text: toleranceClass, meaning: { kind: 'toleranceClass', toleranceClass } },
    { position: 4, text: fixing, meaning: { kind: 'fixing', fixing: FIXINGS[fixing] } },
    { position: 5, text: size, meaning: { kind: 'size', dimensions } },
    { position: 6, text: thickness, meaning: { kind: 'thickness', thickness: dimensions.thickness } },
    { position: 7, text: cornerCode(corner), meaning: cornerMeaning(designation, dimensions) },
    edge === null ? null : { position: 8, text: edge, meaning: { kind: 'edge', edge: EDGES[edge] } },
    hand === null ? null : { position: 9, text: hand, meaning: { kind: 'hand', hand: HANDS[hand] } },
    chamfer === null ? null : { position: 10, text: /\d{5}$/.exec(formatDesignation({ ...designation, makersSign: null }))?.[0] ?? '', meaning: { kind: 'chamfer', chamfer } },
    makersSign === null ? null : { position: 13, text: makersSign, meaning: { kind: 'makersSign', sign: makersSign } },
  ];
  return explained.filter((position) => position !== null);
}

function cornerMeaning({ corner }: InsertDesignation, { cornerRadius }: InsertDimensions): PositionMeaning {
  if (corner.kind === 'wiper') return { kind: 'wiper', angleDeg: WIPER_ANGLES[corner.angle], clearanceDeg: WIPER_CLEARANCES[corner.clearance] };
  return cornerRadius === null ? { kind: 'round', isMetric: corner.kind === 'roundMetric' } : { kind: 'radius', radius: cornerRadius };
}
