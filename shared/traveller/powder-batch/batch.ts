import type { Concession, SubjectCommon } from '../lot/lot.ts';
import type { PowderFactor } from '../plan/powder-factor.ts';
import type { Signature } from '../stamp.ts';

/** One raw-material lot that went into the batch. */
export interface RawShare { readonly rawLot: string; readonly material: string; readonly kg: number }
/** So much of another batch that went into a blend, or of this one that went into it. */
export interface BlendShare { readonly batch: string; readonly kg: number }
/** What the powder tells pressing; means of the lab's readings, or of a blend's parts. Shrinkage is even where a direction is left out, further loss then 0. */
export interface PowderFactors {
  readonly linearShrinkagePercent: number;
  readonly sinteredDensityGPerCm3: number;
  readonly binderPercent: number;
  readonly widthShrinkagePercent?: number;
  readonly heightShrinkagePercent?: number;
  /** Of the mass left without binder: carbon, oxygen. */
  readonly furtherLossPercent?: number;
  /** Standard uncertainty of each mean, s/√n of the readings, in the factor's unit; that of the gauges is not in it. */
  readonly standardUncertainty?: Partial<Readonly<Record<PowderFactor, number>>>;
  /** Factors that were not measured on this batch but weighted from the parts it was blended of. */
  readonly weighted?: readonly PowderFactor[];
}

/** A powder batch: the fold of its traveller. */
export interface Batch extends SubjectCommon {
  readonly kind: 'batch';
  readonly grade: { readonly id: string; readonly name: string };
  readonly plan: string;
  readonly planVersion: number;
  readonly barrels: number;
  readonly kgPerBarrel: number;
  readonly rawLots: readonly RawShare[];
  /** Batches it was blended of; empty for powder milled as one. */
  readonly blendedFrom: readonly BlendShare[];
  readonly blendedInto: readonly BlendShare[];
  /** Powder booked for lots, kg. Lots opened before powder was booked count nothing. */
  readonly lotsKg: number;
  readonly concessions: readonly Concession[];
  /** The factors as they stand now, corrections included. */
  readonly released: null | { readonly factors: PowderFactors; readonly signature: Signature };
  readonly lots: readonly string[];
}
