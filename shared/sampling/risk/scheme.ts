import { attributesPlan, stagesOf } from '../attributes/index.ts';
import type { AttributesPlan, AttributesPlanRequest, Severity } from '../attributes/index.ts';
import type { SwitchingRule } from '../switching/index.ts';

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

/** The samples of a scheme's plan on one severity. */
export function judgingOn({ plans }: Scheme, severity: Severity): { readonly stages: ReturnType<typeof stagesOf> } {
  return { stages: stagesOf(plans[severity]) };
}
