import type { AttributesPlan } from '../../../shared/sampling/attributes/index.ts';
import { schemeFor, type Scheme } from '../../../shared/sampling/risk/index.ts';
import { STANDARD_SETTINGS, type Settings } from './comparison.ts';
import type { Compared } from './compared-plan.ts';
import { resumeOf } from './read-settings.ts';

/** A plan that switching belongs to. */
export interface Switched { readonly compared: Compared; readonly plan: AttributesPlan }

/** Those of the plans that switching belongs to: by AQL and attributes. */
export function switchedPlans(plans: readonly Compared[]): readonly Switched[] {
  return plans.flatMap((compared) => (compared.judged.by === 'table' ? [{ compared, plan: compared.judged.plan }] : []));
}

/** The settings a scheme depends on, all others as usual: those do not make anything be worked out anew. */
export function settledFor({ model, expected, lots, switching, reduced, spread, resumeAfter, seed }: Settings): Settings {
  return { ...STANDARD_SETTINGS, model, expected, lots, switching, reduced, spread, resumeAfter, seed };
}

/** The scheme a plan belongs to: the plans of its lot, level, AQL and samples on every severity, and the switching rules chosen. */
export function schemeOf({ compared: { choice, lotSize }, plan: { aqlPercent, level } }: Switched, settings: Settings): Scheme {
  const samples = (['single', 'double', 'multiple'] as const).find((each) => each === choice.texts.samples) ?? 'single';
  const { switching, reduced } = settings;
  return schemeFor({ rule: switching, lotSize, level, aqlPercent, samples, steady: reduced, reducedAllowed: reduced, resumeAfter: resumeOf(settings) ?? 0 });
}
