import { requireFinite } from '../../ground/outside-domain.ts';
import type { Evidence } from './evidence.ts';
import type { ToleranceClass } from './letters.ts';
import { SHAPES } from './shapes.ts';
import type { ShapeLetter } from './shapes.ts';
import { CLASS_ROWS, M_CHANGED_BY_EDITION, sizeRows } from './tolerance-tables.ts';
import type { SizeRow } from './tolerance-tables.ts';

/** Sizes that carry limits: inscribed circle d, control dimension m, thickness s. */
export type LimitedSize = 'd' | 'm' | 's';
export const LIMITED_SIZES: readonly LimitedSize[] = ['d', 'm', 's'];

/** Why a ± cannot be given. */
export type NotInHand =
  /** L, A, B and K: no table. */
  | 'shapeWithoutTable'
  /** Class U for D and V. */
  | 'classWithoutTable'
  /** The table has no row for this circle. */
  | 'sizeNotInTable'
  /** It differs between editions and the remembered figure may be either. */
  | 'changedByEdition'
  /** It depends on the circle, and the digits leave that open. */
  | 'circleUnknown';

/** One ±, mm, or why there is none: a person of the plant must give it, or the insert has no such size. */
export type ToleranceCell =
  | { readonly kind: 'limit'; readonly plusMinusMm: number; readonly evidence: Evidence; readonly bySize: boolean }
  | { readonly kind: 'notInHand'; readonly why: NotInHand; readonly rememberedMm: number | null }
  | { readonly kind: 'none' };

/**
 * ± of d, m and s for a tolerance class. Classes A F C H E G have fixed figures; d of J to U and m of M, N and U go by shape and circle.
 * What is not in hand is said to be so: a remembered figure comes along as a proposal, never as a limit.
 * @param inscribedCircleMm nominal (or exact) d, above 0; null where it is unknown
 * @throws OutsideDomain for a circle not above 0
 * @see ISO 1832 (memory; see each table)
 * @example toleranceOf('M', 'C', 12.7).m // ±0.13
 */
export function toleranceOf(toleranceClass: ToleranceClass, shape: ShapeLetter, inscribedCircleMm: number | null): Readonly<Record<LimitedSize, ToleranceCell>> {
  if (inscribedCircleMm !== null) requireFinite('inscribedCircleMm', inscribedCircleMm, Number.MIN_VALUE);
  const rows = sizeRows(shape);
  if (rows === null) return { d: absent('shapeWithoutTable'), m: absent('shapeWithoutTable'), s: absent('shapeWithoutTable') };
  const { d, m, s } = CLASS_ROWS[toleranceClass];
  const bySize = (pick: (row: SizeRow) => number | null): ToleranceCell => cellOf(rows, inscribedCircleMm, pick);
  const isU = toleranceClass === 'U';
  return {
    d: d === 'bySize' ? bySize((row) => (isU ? row.dU : row.d)) : fixed(d),
    m: SHAPES[shape].form === 'round' ? { kind: 'none' } : m === 'bySize' ? settled(shape, inscribedCircleMm, bySize((row) => (isU ? row.mU : row.m))) : fixed(m),
    s: fixed(s),
  };
}

const absent = (why: NotInHand, rememberedMm: number | null = null): ToleranceCell => ({ kind: 'notInHand', why, rememberedMm });
const fixed = (plusMinusMm: number): ToleranceCell => ({ kind: 'limit', plusMinusMm, evidence: 'memory', bySize: false });
/** Nominal and exact values of one circle differ by less than this, two circles by far more. */
const isSameCircle = (one: number, other: number): boolean => Math.abs(one - other) < 0.005;

function cellOf(rows: readonly SizeRow[], circleMm: number | null, pick: (row: SizeRow) => number | null): ToleranceCell {
  // A column without a single figure is a class that the shape has no table for.
  if (rows.every((row) => pick(row) === null)) return absent('classWithoutTable');
  if (circleMm === null) return absent('circleUnknown');
  const row = rows.find(({ nominalMm }) => isSameCircle(nominalMm, circleMm));
  const plusMinusMm = row === undefined ? null : pick(row);
  return row === undefined || plusMinusMm === null ? absent('sizeNotInTable') : { kind: 'limit', plusMinusMm, evidence: row.evidence, bySize: true };
}

function settled(shape: ShapeLetter, circleMm: number | null, cell: ToleranceCell): ToleranceCell {
  const isInDoubt = shape === M_CHANGED_BY_EDITION.shape && circleMm !== null && isSameCircle(circleMm, M_CHANGED_BY_EDITION.nominalMm);
  return isInDoubt && cell.kind === 'limit' ? absent('changedByEdition', cell.plusMinusMm) : cell;
}
