import { requireFinite } from '../../ground/outside-domain.ts';
import type { InsertDesignation } from './designation.ts';
import { insertDimensions } from './insert-dimensions.ts';
import { LIMITED_SIZES, toleranceOf } from './tolerance-of.ts';
import type { LimitedSize, ToleranceCell } from './tolerance-of.ts';

/** When the pieces are measured: which of the two the standard's limits mean is not settled, so the plant says it. */
export type MeasuredWhen = { readonly when: 'beforeCoating' } | { readonly when: 'afterCoating'; readonly coatingUm: number };

/** What a person of the plant says beside the designation. */
export type LimitChoices = {
  readonly measured?: MeasuredWhen;
  /** The nominal circle, where the digits leave it open. */
  readonly chosenCircleMm?: number;
  /** ± in mm of sizes whose limits are not in hand; given for others, it goes before the table. */
  readonly givenMm?: Partial<Readonly<Record<LimitedSize, number>>>;
};

/** Target and limits of one size, mm to 0.001; null where the target or the ± is unknown. */
export type InsertSizeLimits = {
  readonly size: LimitedSize;
  readonly targetMm: number | null;
  readonly tolerance: ToleranceCell;
  readonly lowerMm: number | null;
  readonly upperMm: number | null;
};

/** Where the tool rounds lengths: a thousandth of a millimetre. */
export const LENGTH_DECIMALS = 3;

/**
 * Target and limits of d, m and s. Targets are the nominal d and s and the worked-out m, each to 0.001 mm; limits target ± tolerance.
 * Measured after coating, twice the coating's thickness is added to the targets of d and s (common practice, no source): each is the
 * distance of two coated faces, m is not.
 * @throws OutsideDomain for a coating below 0 or above 100 µm, or a given ± not above 0
 * @see ISO 1832 (see toleranceOf and controlDimension)
 * @example // CNMG120408 before coating: d 12.620 … 12.780, m 2.958 … 3.218, s 4.630 … 4.890
 */
export function insertLimits(designation: InsertDesignation, { measured = { when: 'beforeCoating' }, chosenCircleMm, givenMm = {} }: LimitChoices = {}): Readonly<Record<LimitedSize, InsertSizeLimits>> {
  const dimensions = insertDimensions(designation, chosenCircleMm);
  const circleMm = dimensions.inscribedCircle?.nominalMm ?? null;
  if (measured.when === 'afterCoating') requireFinite('coatingUm', measured.coatingUm, 0, 100);
  const coatingMm = measured.when === 'afterCoating' ? (2 * measured.coatingUm) / 1000 : 0;
  const targets: Record<LimitedSize, number | null> = {
    d: circleMm === null ? null : circleMm + coatingMm, m: dimensions.controlDimension?.mm ?? null, s: dimensions.thickness.nominalMm + coatingMm,
  };
  const table = toleranceOf(designation.toleranceClass, designation.shape, circleMm);
  const limits = (size: LimitedSize): InsertSizeLimits => {
    const given = givenMm[size];
    if (given !== undefined) requireFinite(`givenMm.${size}`, given, Number.MIN_VALUE);
    const tolerance: ToleranceCell = table[size].kind === 'none' || given === undefined ? table[size] : { kind: 'limit', plusMinusMm: given, evidence: 'givenByPlant', bySize: false };
    const target = targets[size];
    const targetMm = target === null ? null : thousandths(target);
    if (targetMm === null || tolerance.kind !== 'limit') return { size, targetMm, tolerance, lowerMm: null, upperMm: null };
    return { size, targetMm, tolerance, lowerMm: thousandths(targetMm - tolerance.plusMinusMm), upperMm: thousandths(targetMm + tolerance.plusMinusMm) };
  };
  return { d: limits('d'), m: limits('m'), s: limits('s') };
}

/** Sizes that exist but whose ± a person must give. */
export function sizesNotInHand(limits: Readonly<Record<LimitedSize, InsertSizeLimits>>): readonly LimitedSize[] {
  return LIMITED_SIZES.filter((size) => limits[size].targetMm !== null && limits[size].tolerance.kind === 'notInHand');
}

function thousandths(mm: number): number {
  const factor = 10 ** LENGTH_DECIMALS;
  return Math.round(mm * factor) / factor;
}
