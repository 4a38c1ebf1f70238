import type { ChartRecord, DrawnChart } from '../../shared/traveller/index.ts';
import { chartsDeskWords } from '../../shared/words/charts-desk.en.ts';
import type { Why } from '../plans/compare/why.ts';
import { subjectOf } from './chart-names.ts';
import { toFigure } from './chart-figures.ts';

const words = chartsDeskWords.how;

/** Why the limits of a chart are what they are: formula, what was put in, and the sources. */
export function whyOfLimits({ card, frozen }: ChartRecord, { base, places }: DrawnChart): Why {
  const { spec } = card;
  const constants = spec.kind === 'ewma' ? `λ = ${spec.lambda}, ${spec.width} σ\n` : spec.kind === 'cusum' ? `k = ${spec.k}, h = ${spec.h}\n` : '';
  const lots = frozen === null ? chartsDeskWords.freeze.lots(places.length) : frozen.lots.length === 0 ? chartsDeskWords.freeze.ways.given : frozen.lots.map((stream) => subjectOf(stream).id).join(', ');
  return {
    lines: [
      { label: words.formula, text: words.limits[spec.kind], formula: true },
      { label: words.inputs, text: `${constants}${chartsDeskWords.freeze.base(toFigure(base.centre, 9), base.sigma === null ? null : toFigure(base.sigma, 9))}\n${lots}`, formula: true },
      { label: words.holds, text: chartsDeskWords.define.falseAlarms },
    ],
    excerpt: null,
    sources: [{ text: words.chartSources, tag: 'memory' }, { text: words.constants, tag: 'computed' }, { text: words.zoneRules, tag: 'memory' }],
  };
}
