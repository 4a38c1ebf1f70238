import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';
import type { Evidence } from './evidence.ts';
import { SHAPES } from './shapes.ts';
import type { ShapeLetter } from './shapes.ts';

/** The control dimension m, with what it was worked out from. */
export type ControlDimension = {
  /** Unrounded, mm. */
  readonly mm: number;
  /** Even number of sides: from the rounded corner to the inscribed circle. Odd: to the side opposite. */
  readonly rule: 'even' | 'odd';
  /** k = 1/sin(ε/2) − 1, ε the included angle. */
  readonly factor: number;
  readonly evidence: Evidence;
};

/** Shapes whose m was compared with printed tables. */
const CHECKED: readonly ShapeLetter[] = ['C', 'T'];

/**
 * The control dimension m of a shape with an inscribed circle: even number of sides m = (d/2 − r)·k, odd m = d + (d/2 − r)·k, with
 * k = 1/sin(ε/2) − 1. A drawing's m goes before this one. The trigon W is taken as a rhombus of its corner's 80°.
 * @param shape not R, L, A, B, K, which have no m
 * @param exactMm inscribed circle d, converted inch, above 0
 * @param radiusUsedMm corner radius r, converted inch, 0 (sharp) … d/2
 * @throws OutsideDomain otherwise
 * @see definitions of ISO 1832 (memory); formula derived, agrees with printed m of GOST 19057-80 and GOST 19046-80 for C and T within 0.0015 mm (seen)
 * @example controlDimension('C', 12.7, 0.79375).mm // 3.0877
 */
export function controlDimension(shape: ShapeLetter, exactMm: number, radiusUsedMm: number): ControlDimension {
  const { sides, includedAngleDeg } = SHAPES[shape];
  if (sides === null || includedAngleDeg === null) throw new OutsideDomain('shape', 'one with an inscribed circle and corners', shape);
  requireFinite('exactMm', exactMm, Number.MIN_VALUE);
  requireFinite('radiusUsedMm', radiusUsedMm, 0, exactMm / 2);
  const factor = 1 / Math.sin((includedAngleDeg * Math.PI) / 360) - 1;
  const beyondCircle = (exactMm / 2 - radiusUsedMm) * factor;
  return { mm: sides === 'even' ? beyondCircle : exactMm + beyondCircle, rule: sides, factor, evidence: CHECKED.includes(shape) ? 'derivedChecked' : 'derived' };
}
