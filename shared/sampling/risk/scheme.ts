import { attributesPlan, stagesOf } from '../attributes/index.ts';
import type { AttributesPlan, AttributesPlanRequest, Severity } from '../attributes/index.ts';
import { tighterWouldAccept } from '../attributes/index.ts';
import type { JudgedPlan, SwitchingRule } from '../switching/index.ts';

/** A stream of lots of one size under switching rules, with the plan of each severity. Plain data. */
export interface Scheme {
  readonly rule: SwitchingRule;
  readonly lotSize: number;
  /** Production is steady, as a person has stated it; without it nothing comes to reduced inspection. */
  readonly steady: boolean;
  /** The responsible authority wants reduced inspection. */
  readonly reducedAllowed: boolean;
  readonly plans: Readonly<Record<Severity, AttributesPlan>>;
  /**
   * Lots that pass uninspected while inspection is discontinued, before the authority resumes it on tightened inspection. Left out or 0: it
   * is resumed before the next lot. No standard says how long; it is the plant's own figure.
   */
  readonly resumeAfter?: number;
}

/** The scheme of a lot size by the tables: one look-up for each severity. Arguments as for `attributesPlan`. */
export function schemeFor(
  request: Omit<AttributesPlanRequest, 'severity'> & Pick<Scheme, 'rule' | 'steady' | 'reducedAllowed'> & { readonly resumeAfter?: number },
): Scheme {
  const { rule, steady, reducedAllowed, resumeAfter, ...asked } = request;
  const planOn = (severity: Severity): AttributesPlan => attributesPlan({ ...asked, severity });
  return {
    rule, steady, reducedAllowed, lotSize: asked.lotSize,
    plans: { normal: planOn('normal'), tightened: planOn('tightened'), reduced: planOn('reduced') },
    ...(resumeAfter === undefined ? {} : { resumeAfter }),
  };
}

/**
 * What the switching rules ask of a judged lot's plan.
 * @param stage the sample that decided, counted from 1
 * @param found nonconforming pieces in all samples up to it
 * @see ISO 2859-1:1999 9.3.3.2 (from memory)
 */
export function judgedPlan(plan: AttributesPlan, stage: number, found: number): JudgedPlan {
  switch (plan.samples) {
    case 'double': return { kind: 'double', onFirstSample: stage === 1 };
    case 'multiple': return { kind: 'multiple', byThirdSample: stage <= 3 };
    default: return { kind: 'single', ac: plan.ac, tighterAccepted: tighterWouldAccept(plan, found) };
  }
}

/** The samples of a scheme's plan on one severity. */
export function judgingOn({ plans }: Scheme, severity: Severity): { readonly stages: ReturnType<typeof stagesOf> } {
  return { stages: stagesOf(plans[severity]) };
}
