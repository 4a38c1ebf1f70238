import { porosityLevels, POROSITY_TYPES, reckonGrade } from '../../carbide/index.ts';
import type { PorosityType } from '../../carbide/index.ts';
import type { Characteristic, Graded, Measured } from '../plan/characteristic.ts';
import { BINDER_FLAGS, FLAG_RATINGS } from './grade-limits.ts';
import type { BinderFlag, Limits } from './grade-limits.ts';
import type { GradeCard } from './slips.ts';

/** Pieces and places that the proposal is sampled at: measured and graded characteristics share them. */
export type SharedSampling = Measured['sampling'] & Graded['sampling'];
interface Named { readonly name: string; readonly method: string }
/** Names and methods of the proposed characteristics, in the language of the plan. */
export interface SinteredSetNames {
  readonly density: Named; readonly coercivity: Named; readonly saturation: Named; readonly hardness: Named;
  readonly porosity: Readonly<Record<PorosityType, Named>>;
  readonly flags: Readonly<Record<BinderFlag, Named>>;
  /** Ratings of the flags, best first, as many as FLAG_RATINGS. */
  readonly ratings: readonly [string, string, string];
  /** Kinds of gauge that are asked for; null for none. */
  readonly gauges: { readonly density: string | null; readonly coercivity: string | null; readonly hardness: string | null };
}

/**
 * The characteristics that judge sintered pieces of a grade by its own limits: density weighed in water, coercivity, saturation read in its unit,
 * hardness, porosity by type and what does not belong in the binder. What the grade has no limit for is left out; nothing is invented.
 * @param factor the density's mean goes to pressing: for a powder lab
 * @throws OutsideDomain for a composition in which `gradeFault` finds something
 */
export function proposeSinteredSet({ composition, limits = {} }: GradeCard, sampling: SharedSampling, names: SinteredSetNames, factor: boolean): readonly Characteristic[] {
  const { densityGPerCm3: theory, cobaltFraction } = reckonGrade(composition);
  const { densityGPerCm3, coercivityKAPerM, saturation, hardnessHv30, porosity = {}, flags = {} } = limits;
  const measured = (id: string, { name, method }: Named, unit: string, decimals: number, { lower, upper }: Limits, more: Pick<Measured, 'plausible'> & Partial<Measured>): Measured => ({
    kind: 'measured', id, name, method, destructive: false, unit, decimals, lower, upper, target: lower === null || upper === null ? null : Number(((lower + upper) / 2).toFixed(decimals + 1)),
    gaugeKind: null, decisionRule: 'simple', entry: { how: 'direct' }, factor: null, pressTolerancePercent: null, sampling, ...more,
  });
  const graded = (id: string, { name, method }: Named, scale: readonly string[], worstAccepted: string, more: Partial<Graded> = {}): Graded => ({ kind: 'graded', id, name, method, destructive: false, scale, worstAccepted, sampling, ...more });
  return [
    ...(densityGPerCm3 === undefined ? [] : [measured('density', names.density, 'g/cm³', 2, densityGPerCm3, {
      plausible: { least: Number((0.7 * theory).toFixed(1)), most: Number((1.1 * theory).toFixed(1)) }, gaugeKind: names.gauges.density, entry: { how: 'archimedes' }, factor: factor ? 'sinteredDensityGPerCm3' : null,
    })]),
    ...(coercivityKAPerM === undefined ? [] : [measured('coercivity', names.coercivity, 'kA/m', 1, coercivityKAPerM, { plausible: { least: 1, most: 60 }, gaugeKind: names.gauges.coercivity })]),
    ...(saturation === undefined ? [] : [measured('saturation', names.saturation, '%', 1, { lower: saturation.lowPercent, upper: saturation.highPercent }, {
      plausible: { least: 40, most: 105 }, entry: { how: 'saturation', unit: saturation.unit, cobaltFraction: Number(cobaltFraction.toFixed(6)), warnLowPercent: saturation.warnLowPercent, warnHighPercent: saturation.warnHighPercent },
    })]),
    ...(hardnessHv30 === undefined ? [] : [measured('hardness', names.hardness, 'HV30', 0, hardnessHv30, { plausible: { least: 500, most: 2500 }, gaugeKind: names.gauges.hardness })]),
    ...POROSITY_TYPES.flatMap((type) => {
      const worst = porosity[type];
      return worst === undefined ? [] : [graded(POROSITY_IDS[type], names.porosity[type], porosityLevels(type).map(({ level }) => level), worst, { reference: `porosity${type}` })];
    }),
    ...BINDER_FLAGS.flatMap((flag) => {
      const worst = flags[flag];
      return worst === undefined ? [] : [graded(FLAG_IDS[flag], names.flags[flag], names.ratings, names.ratings[FLAG_RATINGS.indexOf(worst)] ?? names.ratings[0])];
    }),
  ];
}
const POROSITY_IDS: Readonly<Record<PorosityType, string>> = { A: 'porosity', B: 'porosity-b', C: 'porosity-c' };
const FLAG_IDS: Readonly<Record<BinderFlag, string>> = { etaPhase: 'eta', freeCarbon: 'free-carbon', binderLakes: 'lakes' };
