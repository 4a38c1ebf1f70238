import type { InsertDesignation } from './designation.ts';
import { DESIGNATION_TABLES } from './evidence.ts';
import type { DesignationProblem } from './problem.ts';
import { readParts } from './read-parts.ts';

/** A designation read, or everything that cannot be, in the order of the positions. */
export type ReadDesignation =
  | { readonly ok: true; readonly designation: InsertDesignation }
  | { readonly ok: false; readonly problems: readonly DesignationProblem[] };

/**
 * Reads the designation of an indexable insert: `CNMG120408`, `DCGT11T304FN`, `SEKN1203AFTN`, `RCMT1204M0`, `TNGA160408S01020-XY`. Blanks and
 * lower case do not matter. Metric designations only. Every position is judged by itself, and against the ones before it: a size that no
 * standard inscribed circle has, a corner on a round insert, a radius larger than the circle.
 * @param text as typed or scanned
 * @returns the positions, or the problems with position, fault and what might stand there
 * @see ISO 1832:2017 (letters and codes from memory, see each table); reading rule derived
 * @example readDesignation('cnmg 12 04 08') // ok, shape C, size 12, thickness 04, corner radius 08
 */
export function readDesignation(text: string): ReadDesignation {
  const { shape, clearance, toleranceClass, fixing, size, thickness, corner, tail: { edge, hand, chamfer, makersSign }, problems } = readParts(text);
  if (problems.length > 0 || shape === null || clearance === null || toleranceClass === null || fixing === null || size === null || thickness === null || corner === null) return { ok: false, problems };
  return { ok: true, designation: { tables: DESIGNATION_TABLES, shape, clearance, toleranceClass, fixing, size, thickness, corner, edge, hand, chamfer, makersSign } };
}
