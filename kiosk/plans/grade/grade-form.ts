import { compositionFault, reckonGrade, USUAL_SATURATION_WINDOW, type GradePart, type ReckonedGrade, type SaturationUnit, SATURATION_UNITS } from '../../../shared/carbide/index.ts';
import { FLAG_RATINGS, gradeFault, type CardFault, type FlagRating, type GradeCard, type GradeLimits } from '../../../shared/traveller/index.ts';
import { readNumber, typedFigure } from '../../desk/show.ts';

/** One component as it is typed. */
export interface PartText { readonly component: string; readonly percent: string; readonly density: string }
/** The limits as they are typed; empty where there is none. */
export const LIMIT_KEYS = [
  'densityLower', 'densityUpper', 'coercivityLower', 'coercivityUpper', 'hardnessLower', 'hardnessUpper', 'low', 'warnLow', 'warnHigh', 'high', 'unit', 'A', 'B', 'C', 'etaPhase', 'freeCarbon', 'binderLakes',
] as const;
export type LimitKey = (typeof LIMIT_KEYS)[number];
export type LimitTexts = Readonly<Record<LimitKey, string>>;
export interface GradeForm { readonly id: string; readonly name: string; readonly powderPlan: string; /** Empty: blends go by the powder plan. */ readonly blendPlan: string; readonly furnacePlan: string; readonly parts: readonly PartText[]; /** What was typed; a limit not typed yet is prefilled on a new grade. */ readonly limits: Partial<LimitTexts> }

/** Density limits are prefilled this far from theory, g/cm³. Common practice, no source. */
const DENSITY_ROOM = 0.05;
const NO_LIMITS: LimitTexts = { densityLower: '', densityUpper: '', coercivityLower: '', coercivityUpper: '', hardnessLower: '', hardnessUpper: '', low: '', warnLow: '', warnHigh: '', high: '', unit: 'µT·m³/kg', A: '', B: '', C: '', etaPhase: '', freeCarbon: '', binderLakes: '' };

/** A form to begin with: tungsten carbide and cobalt, nothing else. */
export const EMPTY_FORM: GradeForm = { id: '', name: '', powderPlan: '', blendPlan: '', furnacePlan: '', parts: [{ component: 'WC', percent: '', density: '' }, { component: 'Co', percent: '', density: '' }], limits: {} };

/** The form of a grade that is there; limits it has not are empty and stay so until they are asked to be filled. */
export function formOf({ id, name, powderPlan, blendPlan = '', furnacePlan, composition, limits = {} }: GradeCard): GradeForm {
  const figure = (value: number | null | undefined): string => (value === null || value === undefined ? '' : typedFigure(value));
  const { densityGPerCm3: density, coercivityKAPerM: coercivity, hardnessHv30: hardness, saturation, porosity = {}, flags = {} } = limits;
  return {
    id, name, powderPlan, blendPlan, furnacePlan, parts: composition.map(({ component, massPercent, densityGPerCm3 }) => ({ component, percent: typedFigure(massPercent), density: figure(densityGPerCm3) })),
    limits: {
      ...NO_LIMITS, densityLower: figure(density?.lower), densityUpper: figure(density?.upper), coercivityLower: figure(coercivity?.lower), coercivityUpper: figure(coercivity?.upper), hardnessLower: figure(hardness?.lower), hardnessUpper: figure(hardness?.upper),
      low: figure(saturation?.lowPercent), warnLow: figure(saturation?.warnLowPercent), warnHigh: figure(saturation?.warnHighPercent), high: figure(saturation?.highPercent), unit: saturation?.unit ?? NO_LIMITS.unit,
      A: porosity.A ?? '', B: porosity.B ?? '', C: porosity.C ?? '', etaPhase: flags.etaPhase ?? '', freeCarbon: flags.freeCarbon ?? '', binderLakes: flags.binderLakes ?? '',
    },
  };
}

/** The composition as typed; lines that are wholly empty are left out, a share that is no number is 0 and so found to be wrong. */
export function compositionOf({ parts }: Pick<GradeForm, 'parts'>): readonly GradePart[] {
  return parts.filter(({ component, percent }) => component.trim() !== '' || percent.trim() !== '').map(({ component, percent, density }) => ({
    component: component.trim(), massPercent: readNumber(percent) ?? 0, ...(density.trim() === '' ? {} : { densityGPerCm3: readNumber(density) ?? 0 }),
  }));
}

/** What follows from the composition; null while it is not whole. */
export function reckonedOf(form: Pick<GradeForm, 'parts'>): ReckonedGrade | null {
  const composition = compositionOf(form);
  return compositionFault(composition) === null ? reckonGrade(composition) : null;
}

/**
 * Limits where the trade has a formula or a usual figure: density about theory, the usual window of saturation, A02 B00 C00 and nothing in the
 * binder (common practice). Coercivity and hardness are the grade's own and stay empty.
 */
export function suggestedLimits(reckoned: ReckonedGrade | null): LimitTexts {
  if (reckoned === null) return NO_LIMITS;
  const { densityGPerCm3, fullSaturation } = reckoned;
  const window = USUAL_SATURATION_WINDOW;
  return {
    ...NO_LIMITS, densityLower: typedFigure(rounded(densityGPerCm3 - DENSITY_ROOM)), densityUpper: typedFigure(rounded(densityGPerCm3 + DENSITY_ROOM)), A: 'A02', B: 'B00', C: 'C00', etaPhase: 'none', binderLakes: 'none',
    ...(fullSaturation === null ? {} : { low: typedFigure(window.lowPercent), warnLow: typedFigure(window.warnLowPercent), warnHigh: typedFigure(window.warnHighPercent), high: typedFigure(window.highPercent) }),
  };
}

/** The limits as the form shows them: what was typed, and else what is suggested. */
export function shownLimits(form: GradeForm): LimitTexts {
  return { ...suggestedLimits(reckonedOf(form)), ...form.limits };
}

/** The form with its empty limits filled from the formulas. */
export function filledLimits(form: GradeForm): GradeForm {
  const suggested = suggestedLimits(reckonedOf(form));
  const shown = shownLimits(form);
  return { ...form, limits: Object.fromEntries(LIMIT_KEYS.map((key) => [key, shown[key] === '' ? suggested[key] : shown[key]])) };
}

/** Which fields are no numbers; empty where all can be read. */
export function faultyLimits(limits: LimitTexts): readonly LimitKey[] {
  return (['densityLower', 'densityUpper', 'coercivityLower', 'coercivityUpper', 'hardnessLower', 'hardnessUpper', 'low', 'warnLow', 'warnHigh', 'high'] as const).filter((key) => limits[key].trim() !== '' && !((readNumber(limits[key]) ?? 0) > 0));
}

/** The grade as the form has it, and the first thing wrong with it. */
export function cardOf(form: GradeForm): { readonly card: GradeCard; readonly fault: CardFault | null } {
  const limits = limitsOf(shownLimits(form));
  const card: GradeCard = { id: form.id.trim(), name: form.name.trim(), composition: compositionOf(form), powderPlan: form.powderPlan, ...(form.blendPlan === '' ? {} : { blendPlan: form.blendPlan }), furnacePlan: form.furnacePlan, ...(Object.keys(limits).length === 0 ? {} : { limits }) };
  return { card, fault: gradeFault(card) };
}

function limitsOf(texts: LimitTexts): GradeLimits {
  const figure = (key: LimitKey): number | null => (texts[key].trim() === '' ? null : readNumber(texts[key]));
  const pair = (lower: LimitKey, upper: LimitKey) => (figure(lower) === null && figure(upper) === null ? null : { lower: figure(lower), upper: figure(upper) });
  const [density, coercivity, hardness] = [pair('densityLower', 'densityUpper'), pair('coercivityLower', 'coercivityUpper'), pair('hardnessLower', 'hardnessUpper')];
  const steps = (['low', 'warnLow', 'warnHigh', 'high'] as const).map(figure);
  const [lowPercent, warnLowPercent, warnHighPercent, highPercent] = steps.map((step) => step ?? Number.NaN);
  const unit: SaturationUnit = SATURATION_UNITS.find((each) => each === texts.unit) ?? 'µT·m³/kg';
  const levels = (['A', 'B', 'C'] as const).flatMap((type) => (texts[type] === '' ? [] : [[type, texts[type]] as const]));
  const flags = (['etaPhase', 'freeCarbon', 'binderLakes'] as const).flatMap((flag): (readonly [typeof flag, FlagRating])[] => {
    const rating = FLAG_RATINGS.find((each) => each === texts[flag]);
    return rating === undefined ? [] : [[flag, rating]];
  });
  return {
    ...(density === null ? {} : { densityGPerCm3: density }), ...(coercivity === null ? {} : { coercivityKAPerM: coercivity }), ...(hardness === null ? {} : { hardnessHv30: hardness }),
    ...(steps.every((step) => step === null) || lowPercent === undefined || warnLowPercent === undefined || warnHighPercent === undefined || highPercent === undefined ? {} : { saturation: { lowPercent, warnLowPercent, warnHighPercent, highPercent, unit } }),
    ...(levels.length === 0 ? {} : { porosity: Object.fromEntries(levels) }), ...(flags.length === 0 ? {} : { flags: Object.fromEntries(flags) }),
  };
}

function rounded(value: number): number {
  return Number(value.toFixed(2));
}
