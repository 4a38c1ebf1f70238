import { componentOf, convertSaturation, expectedCoercivityKAPerM, grainClass, SATURATION_UNITS, type Evidence, type GrainClass, type ReckonedGrade } from '../../../shared/carbide/index.ts';
import { gradePageWords as words } from '../../../shared/words/grade-page.en.ts';
import type { SourceTag } from '../../../shared/words/plan-why.en.ts';
import { showFigure, showNumber } from '../../desk/show.ts';
import type { Why } from '../compare/why.ts';

/** A number that follows from the composition, as it is shown, with its reason. */
export interface Worked { readonly key: string; readonly name: string; readonly shown: string; readonly unit: string; readonly why: Why }

const TAGS: Readonly<Record<Evidence, SourceTag>> = { seen: 'seen', memory: 'memory', 'common practice': 'practice', derived: 'derived' };
const { how, worked } = words;

/** Everything that follows from a composition, each number with formula, inputs and sources. @param interceptUm null where no grain size is given */
export function workedOut(grade: ReckonedGrade, interceptUm: number | null): readonly Worked[] {
  const { densityGPerCm3, binderVolumeFraction, carbonPercent, carbonWindow, fullSaturation, cobaltFraction } = grade;
  const cobalt = how.cobalt(showNumber(100 * cobaltFraction, 2));
  return [
    { key: 'density', name: worked.density, shown: showNumber(densityGPerCm3, 2), unit: 'g/cm³', why: whyOf(how.density, ingredients(grade, false), [{ text: how.sources.mixture, tag: 'practice' }, ...densitySources(grade)], [{ label: how.limitsNote, text: how.densityLimits }]) },
    { key: 'binder', name: worked.binder, shown: showNumber(100 * binderVolumeFraction, 1), unit: 'vol%', why: whyOf(how.binder, ingredients(grade, false), [{ text: how.sources.mixture, tag: 'practice' }, ...densitySources(grade)]) },
    { key: 'carbon', name: worked.carbon, shown: showNumber(carbonPercent, 3), unit: 'wt%', why: whyOf(how.carbon, ingredients(grade, true), [{ text: how.sources.atomic, tag: 'derived' }]) },
    ...(carbonWindow === null ? [] : [{
      key: 'window', name: worked.window, shown: worked.range(showNumber(carbonWindow.lowerPercent, 2), showNumber(carbonWindow.upperPercent, 2)), unit: 'wt%',
      why: whyOf(how.window, [how.carbonOf(showNumber(carbonPercent, 3)), cobalt], [{ text: how.sources.window, tag: 'memory' }, { text: how.sources.place, tag: 'derived' }], [{ label: how.limitsNote, text: how.approximate }]),
    }]),
    ...(fullSaturation === null ? [] : [{
      key: 'full', name: worked.full, shown: showNumber(fullSaturation.value, 2), unit: fullSaturation.unit,
      why: whyOf(how.full, [cobalt], [{ text: how.sources.cobalt, tag: 'derived' }], [{ label: how.units, text: SATURATION_UNITS.map((unit) => `${showNumber(convertSaturation(fullSaturation, unit).value, 2)} ${unit}`).join(' · ') }]),
    }]),
    ...coercivity(grade, interceptUm, cobalt),
  ];
}

function coercivity({ cobaltFraction }: ReckonedGrade, interceptUm: number | null, cobalt: string): readonly Worked[] {
  if (interceptUm === null || interceptUm <= 0) return [];
  const inside = cobaltFraction >= 0.03 && cobaltFraction <= 0.25 && interceptUm >= 0.2 && interceptUm <= 10;
  const grain: GrainClass = grainClass(interceptUm);
  const intercept = how.intercept(showFigure(interceptUm));
  return [
    { key: 'grain', name: worked.grain, shown: words.grains[grain], unit: '', why: whyOf(how.grain, [intercept], [{ text: how.sources.grain, tag: 'memory' }]) },
    ...(inside ? [{
      key: 'coercivity', name: worked.coercivity, shown: showNumber(expectedCoercivityKAPerM(100 * cobaltFraction, interceptUm), 1), unit: 'kA/m',
      why: whyOf(how.coercivity, [cobalt, intercept], [{ text: how.sources.roebuck, tag: 'memory' as const }], [{ label: how.limitsNote, text: how.noLimit }]),
    }] : [])];
}

function whyOf(formula: string, inputs: readonly string[], sources: Why['sources'], more: Why['lines'] = []): Why {
  return { lines: [{ label: how.formula, text: formula, formula: true }, { label: how.inputs, text: inputs.join('\n'), formula: true }, ...more], excerpt: null, sources };
}

function ingredients({ parts }: ReckonedGrade, carbon: boolean): readonly string[] {
  return parts.map(({ component, massFraction, densityGPerCm3, carbonFraction }) => how.ingredient(component, showNumber(100 * massFraction, 2), showFigure(densityGPerCm3), carbon ? showNumber(100 * carbonFraction, 2) : ''));
}

function densitySources({ parts }: ReckonedGrade): Why['sources'] {
  return parts.map(({ component, ownDensity }) => {
    const known = componentOf(component);
    return ownDensity || known === null ? { text: how.sources.own(component), tag: 'practice' as const } : { text: how.sources.component(component, known.source), tag: TAGS[known.evidence] };
  });
}
