import type { ReckonedGrade } from '../../../shared/carbide/index.ts';
import { BINDER_FLAGS, type GradeCard, type Limits } from '../../../shared/traveller/index.ts';
import { binderFlagWords, flagRatingWords } from '../../../shared/words/grade-limits.en.ts';
import { gradePageWords as words } from '../../../shared/words/grade-page.en.ts';
import { showFigure } from '../../desk/show.ts';
import { workedOut } from './grade-why.ts';

const { csvParts: part, limits: names, saturation: window } = words;

/** The page as a table: composition, what follows from it with its sources, and the limits. */
export function gradeRows({ composition, limits = {} }: GradeCard, reckoned: ReckonedGrade | null): readonly (readonly string[])[] {
  const { densityGPerCm3, coercivityKAPerM, hardnessHv30, saturation, porosity = {}, flags = {} } = limits;
  const limit = (name: string, value: string, unit = ''): readonly string[] => [part.limits, name, value, unit, ''];
  const both = (name: string, each: Limits | undefined, unit: string): readonly (readonly string[])[] => (each === undefined ? [] : (['lower', 'upper'] as const).flatMap((side) => {
    const value = each[side];
    return value === null ? [] : [limit(names.field(name, names[side]), showFigure(value), unit)];
  }));
  return [
    [words.csvHead.part, words.csvHead.name, words.csvHead.value, words.csvHead.unit, words.csvHead.source],
    ...composition.map(({ component, massPercent, densityGPerCm3: own }) => [part.composition, component, showFigure(massPercent), 'wt%', own === undefined ? '' : `${words.how.sources.own(component)}: ${showFigure(own)} g/cm³`]),
    ...(reckoned === null ? [] : workedOut(reckoned, null).map(({ name, shown, unit, why }) => [part.worked, name, shown, unit, why.sources.map(({ text }) => text).join('; ')])),
    ...both(names.density, densityGPerCm3, 'g/cm³'), ...both(names.coercivity, coercivityKAPerM, 'kA/m'), ...both(names.hardness, hardnessHv30, 'HV30'),
    ...(saturation === undefined ? [] : [
      limit(window.low, showFigure(saturation.lowPercent), '%'), limit(window.warnLow, showFigure(saturation.warnLowPercent), '%'), limit(window.warnHigh, showFigure(saturation.warnHighPercent), '%'),
      limit(window.high, showFigure(saturation.highPercent), '%'), limit(window.unit, saturation.unit),
    ]),
    ...(['A', 'B', 'C'] as const).flatMap((type) => (porosity[type] === undefined ? [] : [limit(`${names.porosity}: ${type}`, porosity[type])])),
    ...BINDER_FLAGS.flatMap((flag) => (flags[flag] === undefined ? [] : [limit(binderFlagWords[flag], flagRatingWords[flags[flag]])])),
  ];
}
