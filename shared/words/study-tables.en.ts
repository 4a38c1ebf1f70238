import { decimalsOfStep } from '../traveller/index.ts';
import type { Estimate, GaugeChoices, Study, StudyResult } from '../traveller/index.ts';
import type { Format } from './format.ts';
import { studyWords as words } from './study-sheet.en.ts';

/** A table of a study's result, for a page, a screen reader and paper alike: the first column names the row. */
export interface StudyTable { readonly key: 'anova' | 'components' | 'biases' | 'line'; readonly title: string; readonly columns: readonly string[]; readonly rows: readonly (readonly string[])[] }
type Of = Pick<Study, 'tolerance' | 'gaugeThen'>;

/** Three digits, or as many more as the figure needs before its decimal sign. */
export const studyFigure = (value: number, format: Format): string => format.number(Number(value.toPrecision(value !== 0 && Math.abs(value) >= 1000 ? 6 : 4)));
/** p to three digits; below 0.0001 it is only said to be. */
export const studyP = (p: number | null, format: Format): string => (p === null ? words.noTest : p < 1e-4 ? words.below(format.number(1e-4)) : format.number(Number(p.toPrecision(3))));
const limits = ({ low, high }: { readonly low: number; readonly high: number }, format: Format): string => `${studyFigure(low, format)} … ${studyFigure(high, format)}`;

/** The tables of a result. */
export function studyTables(result: StudyResult, { tolerance, gaugeThen: { unit, resolution } }: Of, { confidence }: GaugeChoices, format: Format): StudyTable[] {
  const percent = format.number(100 * confidence);
  const ofEstimate = (name: string, each: Estimate): string[] => [name, studyFigure(each.value, format), studyFigure(each.standardError, format), limits(each, format), studyP(each.p, format)];
  switch (result.by) {
    case 'crossed': {
      const { components } = result;
      const { rows } = result.model;
      const shown = (value: number | null): string => (value === null ? '–' : format.number(value, 1));
      const { anovaColumns: a, componentColumns: c } = words;
      return [
        {
          key: 'components', title: words.parts, columns: [c.name, c.s(unit), c.interval(percent), c.variance, c.study, ...(tolerance === null ? [] : [c.tolerance])],
          rows: components.map(({ name, s, interval, percentOfVariance, percentOfStudy, percentOfTolerance }) => [
            words.components[name], studyFigure(s, format), limits({ low: Math.sqrt(interval.low), high: Math.sqrt(interval.high) }, format), shown(percentOfVariance), shown(percentOfStudy), ...(tolerance === null ? [] : [shown(percentOfTolerance)]),
          ]),
        },
        {
          key: 'anova', title: words.anova, columns: [a.source, a.df, a.squares, a.meanSquare, a.f, a.p],
          rows: [
            ...rows.map(({ source, df, squares, meanSquare, test }) => [words.sources[source], format.count(df), studyFigure(squares, format), studyFigure(meanSquare, format), test === null ? '–' : studyFigure(test.f, format), source === 'repeatability' ? '–' : studyP(test?.p ?? null, format)]),
            [words.total, format.count(result.anova.total.df), studyFigure(result.anova.total.squares, format), '–', '–', '–'],
          ],
        },
      ];
    }
    case 'bias': case 'linearity': {
      const biases = result.by === 'bias' ? [result.bias] : result.linearity.biases;
      const { biasColumns: b, lineColumns: l, lineNames } = words;
      const decimals = decimalsOfStep(resolution);
      return [
        { key: 'biases', title: words.biases, columns: [b.reference(unit), b.n, b.mean, b.bias, b.limits(percent), b.p], rows: biases.map(({ reference, n, mean, bias }) => [format.number(reference), format.count(n), format.number(mean, decimals + 1), studyFigure(bias.value, format), limits(bias, format), studyP(bias.p, format)]) },
        ...(result.by === 'bias' ? [] : [{
          key: 'line' as const, title: words.line(lineNames.slope.toLowerCase(), lineNames.intercept.toLowerCase()), columns: [l.name, l.value, l.standardError, l.limits(percent), l.p],
          rows: [ofEstimate(lineNames.slope, result.linearity.slope), ofEstimate(lineNames.intercept, result.linearity.intercept), ofEstimate(lineNames.meanBias, result.linearity.meanBias)],
        }]),
      ];
    }
  }
}

/** The result in sentences, the most telling first. */
export function studyTold(result: StudyResult, { gaugeThen: { unit } }: Pick<Of, 'gaugeThen'>, { confidence }: GaugeChoices, format: Format): string[] {
  const figure = (value: number): string => studyFigure(value, format);
  const percent = format.number(100 * confidence);
  switch (result.by) {
    case 'crossed': {
      const { components, categories, fitness, model: { model } } = result;
      const gauge = components.find(({ name }) => name === 'gauge');
      const percentOfTolerance = gauge?.percentOfTolerance ?? null;
      const negative = components.filter((each) => each.negative !== null).map(({ name }) => words.components[name]);
      return [
        ...(fitness === null ? [] : [`${words.fitness[fitness](format.number(gauge?.percentOfStudy ?? 0, 1))}${percentOfTolerance === null ? '' : ` ${words.ofTolerance(format.number(percentOfTolerance, 1))}`}`]),
        categories === null ? words.noCategories : words.categories(categories.whole, format.count(categories.whole)),
        words.models[model],
        ...(negative.length === 0 ? [] : [words.negative(format.list(negative))]),
      ];
    }
    case 'bias': {
      const { bias } = result.bias;
      return [words.bias(figure(bias.value), unit, figure(bias.low), figure(bias.high), percent), words.biasTold[bias.low <= 0 && bias.high >= 0 ? 'unseen' : 'seen']];
    }
    case 'linearity': {
      const { slope, intercept, meanBias } = result.linearity;
      return [words.line(figure(slope.value), figure(intercept.value)), words.lineTold[slope.low <= 0 && slope.high >= 0 ? 'unseen' : 'seen'], words.onAverage(figure(meanBias.value), unit, figure(meanBias.low), figure(meanBias.high), percent)];
    }
  }
}
