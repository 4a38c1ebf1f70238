import type { InsertCorner } from './corner.ts';
import type { DesignationTables } from './evidence.ts';
import type { ClearanceLetter, EdgeLetter, FixingLetter, HandLetter, ToleranceClass } from './letters.ts';
import type { ShapeLetter } from './shapes.ts';
import type { ThicknessCode } from './thickness.ts';

/** Width and angle of a chamfered edge, position 10. */
export type Chamfer = { readonly widthMm: number; readonly angleDeg: number };

/** A designation that could be read: every position by itself, and which tables it was read by. */
export type InsertDesignation = {
  readonly tables: DesignationTables;
  readonly shape: ShapeLetter;
  readonly clearance: ClearanceLetter;
  readonly toleranceClass: ToleranceClass;
  readonly fixing: FixingLetter;
  /** Two digits: edge length, diameter, or the longer side of L, A, B and K, decimals dropped. */
  readonly size: string;
  readonly thickness: ThicknessCode;
  readonly corner: InsertCorner;
  readonly edge: EdgeLetter | null;
  readonly hand: HandLetter | null;
  readonly chamfer: Chamfer | null;
  /** What stands after the dash: the maker's own. */
  readonly makersSign: string | null;
};

/** The designation as one word, without blanks: what readDesignation gives back unchanged. */
export function formatDesignation(designation: InsertDesignation): string {
  const { shape, clearance, toleranceClass, fixing, size, thickness, edge, hand, chamfer, makersSign } = designation;
  const chamferCode = chamfer === null ? '' : `${String(Math.round(chamfer.widthMm * 100)).padStart(3, '0')}${String(chamfer.angleDeg).padStart(2, '0')}`;
  return `${shape}${clearance}${toleranceClass}${fixing}${size}${thickness}${cornerCode(designation.corner)}${edge ?? ''}${hand ?? ''}${chamferCode}${makersSign === null ? '' : `-${makersSign}`}`;
}

/** The signs of position 7. */
export function cornerCode(corner: InsertCorner): string {
  switch (corner.kind) {
    case 'radius': return corner.code;
    case 'roundInch': return '00';
    case 'roundMetric': return 'M0';
    case 'wiper': return `${corner.angle}${corner.clearance}`;
  }
}
