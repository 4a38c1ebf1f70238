import type { Batch } from './powder-batch/batch.ts';
import type { CautionState } from './caution/slips.ts';
import type { Charge } from './charge/charge.ts';
import type { ChartState } from './chart/chart.ts';
import type { GaugeState } from './gauge/gauge.ts';
import type { GradeCard, LayerCard, ProductCard } from './catalogue/slips.ts';
import type { EquipmentState } from './equipment/slips.ts';
import type { Lot } from './lot/lot.ts';
import type { InspectionPlan } from './plan/gate-plan.ts';
import type { PressState } from './press/slips.ts';
import type { PlantCard } from './plant/slips.ts';
import type { ProgrammeState } from './programme/slips.ts';
import type { Role } from './rights.ts';
import type { Signature } from './stamp.ts';
import type { Skipping } from './skip-lot/slips.ts';
import type { Study } from './study/study.ts';
import type { Switching } from './switching-state/switching.ts';
import type { TableState } from './table/slips.ts';

export interface PlanState { readonly kind: 'plan'; readonly stream: string; readonly version: number; readonly id: string; readonly versions: readonly { readonly planVersion: number; readonly plan: InspectionPlan; readonly why: string; readonly draftedBy: string; readonly at: string; readonly approvals: readonly Signature[]; readonly inForce: boolean }[] }
export interface ProductState { readonly kind: 'product'; readonly stream: string; readonly version: number; readonly card: ProductCard }
export interface GradeState { readonly kind: 'grade'; readonly stream: string; readonly version: number; readonly card: GradeCard }
export interface LayerState { readonly kind: 'layer'; readonly stream: string; readonly version: number; readonly card: LayerCard }
export interface PersonState { readonly kind: 'person'; readonly stream: string; readonly version: number; readonly badge: string; readonly name: string; readonly roles: readonly Role[]; readonly active: boolean }
export interface PlantState { readonly kind: 'plant'; readonly stream: string; readonly version: number; readonly card: PlantCard; readonly keepers: readonly string[] }

export type { GaugeState };

/** A subject with a traveller. */
export type Subject = Lot | Batch | Charge;
/** The state of any stream. */
export type AnyState = Subject | Switching | Skipping | TableState | CautionState | ChartState | PlanState | ProductState | GradeState | LayerState | EquipmentState | ProgrammeState | GaugeState | Study | PressState | PersonState | PlantState;

/**
 * What a decision may look at. `state` answers null where nothing has ever happened.
 * Where the answer is not at hand it throws NotAtHand; the caller fetches the stream and decides anew, which is harmless, for `decide` is pure.
 */
export interface Known { state(stream: string): AnyState | null }

/** Says which stream must be fetched before the decision can be made. */
export class NotAtHand extends Error {
  readonly stream: string;
  constructor(stream: string) { super(`${stream} is not at hand`); this.stream = stream; }
}
