import type { GateRecord } from '../gate/work.ts';
import type { Hold } from '../gate/hold.ts';
import type { SinteredSizes } from '../catalogue/sintered-sizes.ts';
import type { PowderFactor } from '../plan/powder-factor.ts';
import type { BlendShare } from '../powder-batch/batch.ts';
import type { PieceBalance } from '../piece-balance/piece-balance.ts';
import type { Cell } from '../equipment/charge-map.ts';
import type { Signature } from '../stamp.ts';
import type { SubjectKind } from '../stream.ts';

/** The product as it was when the lot was opened. */
export interface LotProduct { readonly id: string; readonly designation: string; readonly name: string; readonly grade: string; readonly layer: string | null; readonly marking: string; readonly piecesPerBox: number; readonly itemCode: string }
export interface RouteStep { readonly id: string; readonly name: string; readonly workedOn: SubjectKind; readonly bench: string }
/** What pressing aims at, from the powder batch's factors. Source of the formulas: shared/carbide/press-by-direction. What is left out stands on slips of before, or is not known. */
export interface PressTarget {
  readonly weightG: number;
  readonly greenThicknessMm: number;
  readonly linearShrinkagePercent: number;
  readonly sinteredDensityGPerCm3: number;
  readonly binderPercent: number;
  readonly fromBatch: string;
  readonly widthShrinkagePercent?: number;
  readonly heightShrinkagePercent?: number;
  readonly furtherLossPercent?: number;
  readonly sizes?: SinteredSizes;
  readonly dieFactor?: number;
  /** Die that the powder asks for across the sintered size. */
  readonly dieMm?: number;
  readonly greenDensityGPerCm3?: number;
  /** The sintered limits of the thickness, each carried to the green piece. */
  readonly greenThicknessLimits?: { readonly lowerMm: number; readonly upperMm: number };
  /** Weights that the sintered limits of the thickness leave room for, at one density and one die. */
  readonly weightRoom?: { readonly lowerG: number; readonly upperG: number };
  /** Expanded, k = 2, from the spread of the lab's readings. */
  readonly uncertainty?: { readonly weightG: number; readonly greenThicknessMm: number; readonly dieFactor: number };
  /** Of powder from a blend: its parts, and the factors weighted from theirs. */
  readonly blendedFrom?: readonly BlendShare[];
  readonly weighted?: readonly PowderFactor[];
}
export interface Box { readonly serial: string; readonly pieces: number; readonly packedAt: string; readonly packedBy: string; readonly copies: number; readonly payload: string | null; readonly readBack: boolean; readonly voided: string | null; readonly shipped: null | { readonly shipment: string; readonly order: string; readonly consignee: string; readonly at: string; readonly by: string } }
export interface Concession { readonly gate: string | null; readonly statement: string; readonly signature: Signature; readonly from: string | null }
export interface CorrectionNote { readonly gate: string; readonly characteristic: string; readonly ordinal: number | null; readonly from: string; readonly to: string; readonly reason: string; readonly at: string; readonly by: string }
export interface Release { readonly certificate: string; readonly quantity: number; readonly at: string; readonly signatures: readonly Signature[]; readonly withdrawn: null | { readonly at: string; readonly reason: string } }

/** What every subject with a traveller has. */
export interface SubjectCommon {
  readonly id: string;
  readonly stream: string;
  readonly version: number;
  readonly openedAt: string;
  readonly lastAt: string;
  readonly demo: boolean;
  readonly gates: readonly GateRecord[];
  readonly holds: readonly Hold[];
  readonly corrections: readonly CorrectionNote[];
  /** Set when the subject has left the route for good. */
  readonly ended: null | { readonly how: 'scrapped' | 'returned' | 'reprocessed'; readonly at: string };
}

/** How often a lot has come to the gate of a charge before, and why it came again. */
export interface CameAgain { readonly how: 'reSinter' | 'recoat'; /** Attempts that were made at the gate before this charge. */ readonly earlierAttempts: number }
/** A charge that a lot joined. */
export interface ChargeLink {
  readonly charge: string; readonly gate: string; readonly places: readonly string[]; /** False when a re-sinter or recoat took the lot out again. */ readonly current: boolean;
  /** Null where the charge has no map. */ readonly cells: readonly Cell[] | null;
  /** Null for a lot that came to the gate for the first time. */ readonly again: CameAgain | null;
  /** The member of the charge that this lot is, or was split from. */ readonly member: string;
}

/** An insert lot: the fold of its traveller. */
export interface Lot extends SubjectCommon {
  readonly kind: 'lot';
  readonly product: LotProduct;
  readonly plan: string;
  readonly planVersion: number;
  readonly batch: string;
  readonly order: string | null;
  readonly trayCapacity: number;
  readonly balance: PieceBalance;
  readonly press: PressTarget;
  /** The target as it would be now, where the powder's factors were corrected after the lot was pressed; null otherwise. */
  readonly pressOutdated: PressTarget | null;
  /** How far each press's own count has been taken here; absent where no press fed this lot. */
  readonly feeds?: readonly { readonly press: string; readonly toSeq: number; readonly at: string; readonly count?: number }[];
  readonly splitFrom: string | null;
  readonly splitInto: readonly string[];
  /** Streams of the charges joined, latest last, with the gate each stands for. */
  readonly charges: readonly ChargeLink[];
  readonly concessions: readonly Concession[];
  readonly release: Release | null;
  readonly releases: number;
  readonly boxes: readonly Box[];
}

/** Holds that still stand. */
export function standingHolds(subject: SubjectCommon): readonly Hold[] {
  return subject.holds.filter((hold) => hold.lifted === null);
}
/** The gate to be worked next: the first that does not let the subject pass; null when all do. */
export function nextGate(subject: SubjectCommon): GateRecord | null {
  return subject.gates.find((gate) => gate.status !== 'accepted' && gate.status !== 'conceded') ?? null;
}
/** Boxes that are packed and have not left. */
export function standingBoxes(lot: Lot): readonly Box[] {
  return lot.boxes.filter(({ voided, shipped }) => voided === null && shipped === null);
}
/** True when the lot stands released and nothing on its own traveller stops it. */
export function isReleased(lot: Lot): boolean {
  return lot.ended === null && lot.release !== null && lot.release.withdrawn === null && standingHolds(lot).length === 0;
}
