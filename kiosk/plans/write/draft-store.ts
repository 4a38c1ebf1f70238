import '../read-without-eval.ts';
import { z } from 'zod';
import { inspectionPlanSchema } from '../../../shared/wire/plan-schema.ts';
import type { InspectionPlan } from '../../../shared/traveller/index.ts';

/** A draft as it is kept in the browser: its beginning, what it has become, and the steps that can be undone. */
export interface KeptDraft {
  readonly plan: string;
  /** The version it began from; null for a plan that is new. */
  readonly from: number | null;
  readonly before: InspectionPlan;
  readonly now: InspectionPlan;
  readonly steps: readonly InspectionPlan[];
  readonly why: string;
  /** ISO 8601. */
  readonly at: string;
}

const keptSchema = z.object({ plan: z.string(), from: z.number().nullable(), before: inspectionPlanSchema, now: inspectionPlanSchema, steps: z.array(inspectionPlanSchema), why: z.string(), at: z.string() });

const prefix = (badge: string): string => `gatehand-plan-draft:${badge}:`;

/** Keeps a draft for one person on this kiosk. Nothing is kept where the browser keeps nothing; the draft then lives as long as its page. */
export function keepDraft(badge: string, draft: KeptDraft): void {
  try {
    localStorage.setItem(prefix(badge) + draft.plan, JSON.stringify(draft));
  } catch (error) {
    if (!(error instanceof DOMException)) throw error;
  }
}
export function throwAwayDraft(badge: string, plan: string): void {
  localStorage.removeItem(prefix(badge) + plan);
}
/** The draft this person began here; null where there is none, or one of an older shape. */
export function keptDraft(badge: string, plan: string): KeptDraft | null {
  return readDraft(localStorage.getItem(prefix(badge) + plan));
}
/** All drafts of this person on this kiosk, the latest written first. */
export function keptDrafts(badge: string): readonly KeptDraft[] {
  const keys = Array.from({ length: localStorage.length }, (_, at) => localStorage.key(at) ?? '').filter((key) => key.startsWith(prefix(badge)));
  return keys.flatMap((key) => readDraft(localStorage.getItem(key)) ?? []).sort((a, b) => b.at.localeCompare(a.at));
}

function readDraft(text: string | null): KeptDraft | null {
  if (text === null) return null;
  try {
    const kept = keptSchema.safeParse(JSON.parse(text));
    return kept.success ? kept.data : null;
  } catch (error) {
    if (error instanceof SyntaxError) return null;
    throw error;
  }
}
