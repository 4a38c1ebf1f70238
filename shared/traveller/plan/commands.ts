import type { InspectionPlan } from './gate-plan.ts';

export interface DraftPlan { readonly type: 'draftPlan'; readonly plan: InspectionPlan; readonly why: string }
/** Signed. Two different engineers must approve before a version is in force. */
export interface ApprovePlan { readonly type: 'approvePlan'; readonly plan: string; readonly planVersion: number }
export type PlanCommand = DraftPlan | ApprovePlan;
