import type { Signature } from '../stamp.ts';
import type { InspectionPlan } from './gate-plan.ts';

export type PlanSlip =
  | { readonly type: 'planDrafted'; readonly planVersion: number; readonly plan: InspectionPlan; readonly why: string }
  | { readonly type: 'planApproved'; readonly planVersion: number; readonly signature: Signature; /** True when this signature was the second and the version is now in force. */ readonly inForce: boolean };
