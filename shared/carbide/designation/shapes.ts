/** Letters of position 1. */
export const SHAPE_LETTERS = ['H', 'O', 'P', 'S', 'T', 'C', 'D', 'E', 'M', 'V', 'W', 'L', 'A', 'B', 'K', 'R'] as const;
export type ShapeLetter = (typeof SHAPE_LETTERS)[number];

/** What the outline is called. */
export type ShapeForm = 'hexagon' | 'octagon' | 'pentagon' | 'square' | 'triangle' | 'rhombus' | 'trigon' | 'rectangle' | 'parallelogram' | 'round';

/** One shape of position 1. */
export type InsertShape = {
  readonly form: ShapeForm;
  /** The smaller angle at a cutting corner; null where there is no corner. */
  readonly includedAngleDeg: number | null;
  /** From which m is measured: an even number of sides to the inscribed circle, an odd one to the opposite side; null without a circle. */
  readonly sides: 'even' | 'odd' | null;
  /** Edge length over inscribed circle, l/d; null where the outline has no inscribed circle or no edge. */
  readonly edgeFactor: number | null;
};

const rad = (deg: number): number => (deg * Math.PI) / 180;
const cot = (deg: number): number => 1 / Math.tan(rad(deg));
const regular = (form: ShapeForm, sideCount: number): InsertShape => ({ form, includedAngleDeg: 180 - 360 / sideCount, sides: sideCount % 2 === 0 ? 'even' : 'odd', edgeFactor: Math.tan(Math.PI / sideCount) });
const rhombus = (includedAngleDeg: number): InsertShape => ({ form: 'rhombus', includedAngleDeg, sides: 'even', edgeFactor: 1 / Math.sin(rad(includedAngleDeg)) });
const uneven = (form: ShapeForm, includedAngleDeg: number): InsertShape => ({ form, includedAngleDeg, sides: null, edgeFactor: null });

/**
 * Shapes by letter. The trigon W has three corners of 80° alternating with three of 160°.
 * @see ISO 1832 position 1, letters and angles (memory); edge factors derived: regular polygon tan(180°/n), rhombus 1/sin ε, trigon ½(cot 40° + cot 80°)
 */
export const SHAPES: Readonly<Record<ShapeLetter, InsertShape>> = {
  H: regular('hexagon', 6), O: regular('octagon', 8), P: regular('pentagon', 5),
  S: { form: 'square', includedAngleDeg: 90, sides: 'even', edgeFactor: 1 },
  T: { form: 'triangle', includedAngleDeg: 60, sides: 'odd', edgeFactor: Math.sqrt(3) },
  C: rhombus(80), D: rhombus(55), E: rhombus(75), M: rhombus(86), V: rhombus(35),
  W: { form: 'trigon', includedAngleDeg: 80, sides: 'even', edgeFactor: (cot(40) + cot(80)) / 2 },
  L: uneven('rectangle', 90), A: uneven('parallelogram', 85), B: uneven('parallelogram', 82), K: uneven('parallelogram', 55),
  R: { form: 'round', includedAngleDeg: null, sides: null, edgeFactor: null },
};
