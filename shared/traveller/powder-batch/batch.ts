import type { Concession, SubjectCommon } from '../lot/lot.ts';
import type { Signature } from '../stamp.ts';

/** One raw-material lot that went into the batch. */
export interface RawShare { readonly rawLot: string; readonly material: string; readonly kg: number }
/** What the powder tells pressing; means of the lab's readings. */
export interface PowderFactors { readonly linearShrinkagePercent: number; readonly sinteredDensityGPerCm3: number; readonly binderPercent: number }

/** A powder batch: the fold of its traveller. */
export interface Batch extends SubjectCommon {
  readonly kind: 'batch';
  readonly grade: { readonly id: string; readonly name: string };
  readonly plan: string;
  readonly planVersion: number;
  readonly barrels: number;
  readonly kgPerBarrel: number;
  readonly rawLots: readonly RawShare[];
  readonly concessions: readonly Concession[];
  readonly released: null | { readonly factors: PowderFactors; readonly signature: Signature };
  readonly lots: readonly string[];
}
