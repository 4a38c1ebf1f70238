import { tighterWouldAccept } from '../attributes/index.ts';
import type { AttributesPlan, OwnTable } from '../attributes/index.ts';
import type { JudgedPlan } from './switching-state.ts';

/**
 * What the switching rules ask of a judged lot's plan.
 * @param sample the sample that decided, counted from 1
 * @param found nonconforming pieces in all samples up to it, 0 or more
 * @param tables the plant's own copies of master tables, for a single plan's tighter neighbour
 * @throws OutsideDomain unless `found` is a whole number, 0 or more
 * @see ISO 2859-1:1999 9.3.3.2 (from memory)
 */
export function judgedPlan(plan: AttributesPlan, sample: number, found: number, tables: readonly OwnTable[] = []): JudgedPlan {
  switch (plan.samples) {
    case 'double': return { kind: 'double', onFirstSample: sample === 1 };
    case 'multiple': return { kind: 'multiple', byThirdSample: sample <= 3 };
    default: return { kind: 'single', ac: plan.ac, tighterAccepted: tighterWouldAccept(plan, found, tables) };
  }
}
