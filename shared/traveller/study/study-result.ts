import { biasOf, COMMON_FITNESS, crossedAnova, distinctCategories, gaugeComponents, gaugeFitness, linearityOf, shareOfSpread } from '../../metrology/gauge-study/index.ts';
import type { Bias, Component, CrossedAnova, CrossedReadings, DistinctCategories, GaugeChoices, GaugeComponents, GaugeFitness, GaugeModel, Linearity, ShareOfSpread } from '../../metrology/gauge-study/index.ts';
import { readingsWanted } from './study.ts';
import type { Study } from './study.ts';

/** What a study gives, worked out from its readings. */
export type StudyResult =
  | {
      readonly by: 'crossed'; readonly anova: CrossedAnova; readonly model: Omit<GaugeComponents, 'components'>; readonly components: readonly (Component & ShareOfSpread)[];
      /** Null where the gauge showed no spread at all. */
      readonly categories: DistinctCategories | null;
      /** By the gauge's share of the spread; null without any spread. */
      readonly fitness: GaugeFitness | null;
    }
  | { readonly by: 'bias'; readonly bias: Bias }
  | { readonly by: 'linearity'; readonly linearity: Linearity };
/** The figures that stand on the closing slip, in the gauge's unit. */
export type StudyFound =
  | {
      readonly by: 'crossed'; readonly model: GaugeModel; readonly repeatabilityS: number; readonly reproducibilityS: number; readonly gaugeS: number; readonly partS: number;
      /** s of the gauge as a share of the spread of all readings; null without any spread. */
      readonly percentOfStudy: number | null;
      readonly percentOfTolerance: number | null;
      /** Null where the gauge showed no spread at all. */
      readonly categories: number | null;
    }
  | { readonly by: 'bias'; readonly bias: number; readonly p: number | null }
  | { readonly by: 'linearity'; readonly slope: number; readonly slopeP: number | null; readonly meanBias: number };

type Measured = Pick<Study, 'studyKind' | 'parts' | 'people' | 'trials' | 'readings' | 'tolerance'>;

/** The readings of a whole study by part, person and trial; null while one is missing. */
export function crossedReadings(study: Measured): CrossedReadings | null {
  if (study.readings.length < readingsWanted(study)) return null;
  const byPlace = new Map(study.readings.map(({ badge, part, trial, value }) => [`${part}/${badge}/${trial}`, value]));
  return study.parts.map((_, part) => study.people.map(({ badge }) => Array.from({ length: study.trials }, (__, trial) => byPlace.get(`${part + 1}/${badge}/${trial + 1}`) ?? NaN)));
}

/** What a whole study gives; null while readings are missing. */
export function studyResult(study: Measured, choices: GaugeChoices): StudyResult | null {
  const readings = crossedReadings(study);
  if (readings === null) return null;
  const references = study.parts.map(({ reference }, at) => ({ reference: reference ?? NaN, readings: (readings[at] ?? []).flat() }));
  switch (study.studyKind) {
    case 'crossed': {
      const anova = crossedAnova(readings);
      const { components, ...model } = gaugeComponents(anova, choices);
      const s = (name: string): number => sOf(components, name);
      const shared = components.map((each) => ({ ...each, ...shareOfSpread(each.s, s('total'), study.tolerance) }));
      const percent = shared.find(({ name }) => name === 'gauge')?.percentOfStudy ?? null;
      return { by: 'crossed', anova, model, components: shared, categories: distinctCategories(s('part'), s('gauge')), fitness: percent === null ? null : gaugeFitness(percent, COMMON_FITNESS) };
    }
    case 'bias': {
      const [only] = references;
      return only === undefined ? null : { by: 'bias', bias: biasOf(only, choices.confidence) };
    }
    case 'linearity': return { by: 'linearity', linearity: linearityOf(references, choices.confidence) };
  }
}

/** The figures for the closing slip. */
export function studyFound(result: StudyResult): StudyFound {
  switch (result.by) {
    case 'crossed': {
      const s = (name: string): number => sOf(result.components, name);
      const gauge = result.components.find(({ name }) => name === 'gauge');
      return {
        by: 'crossed', model: result.model.model, repeatabilityS: s('repeatability'), reproducibilityS: s('reproducibility'), gaugeS: s('gauge'), partS: s('part'),
        percentOfStudy: gauge?.percentOfStudy ?? null, percentOfTolerance: gauge?.percentOfTolerance ?? null, categories: result.categories?.whole ?? null,
      };
    }
    case 'bias': return { by: 'bias', bias: result.bias.bias.value, p: result.bias.bias.p };
    case 'linearity': return { by: 'linearity', slope: result.linearity.slope.value, slopeP: result.linearity.slope.p, meanBias: result.linearity.meanBias.value };
  }
}

function sOf(components: readonly Component[], name: string): number {
  return components.find((each) => each.name === name)?.s ?? 0;
}
