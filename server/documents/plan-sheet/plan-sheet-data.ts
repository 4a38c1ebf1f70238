import type { OwnTable } from '../../../shared/sampling/attributes/index.ts';
import type { CautionState, InspectionPlan, PlanState } from '../../../shared/traveller/index.ts';

/** A version of a plan as it is exported, at a stated lot size. Plain data. */
export interface PlanSheetData {
  readonly plant: string;
  readonly demo: boolean;
  readonly language: string;
  readonly plan: InspectionPlan;
  readonly planVersion: number;
  readonly standing: 'inForce' | 'draft' | 'former';
  readonly why: string;
  readonly draftedBy: string;
  /** ISO 8601 with zone. */
  readonly draftedAt: string;
  readonly approvals: readonly { readonly name: string; readonly badge: string; readonly at: string }[];
  readonly lotSize: number;
  /** The plant's own tables that its rules name. */
  readonly tables: readonly OwnTable[];
  /** What the plant wrote of the cautions that the plan names. */
  readonly cautions: readonly Pick<CautionState, 'caution' | 'text' | 'shown'>[];
  /** ISO 8601 with zone. */
  readonly printedAt: string;
}

/** How a version stands: signed by fewer than two it is a draft. */
export function standingOf({ inForce, approvals }: Pick<PlanState['versions'][number], 'inForce' | 'approvals'>): PlanSheetData['standing'] {
  return inForce ? 'inForce' : approvals.length < 2 ? 'draft' : 'former';
}
