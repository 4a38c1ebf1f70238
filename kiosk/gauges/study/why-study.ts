import type { StudyComponentName, StudyResult } from '../../../shared/traveller/index.ts';
import { planWhyWords } from '../../../shared/words/plan-why.en.ts';
import { studyWords } from '../../../shared/words/study-sheet.en.ts';
import { studyFigure } from '../../../shared/words/study-tables.en.ts';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import type { Format } from '../../../shared/words/format.ts';
import type { Why } from '../../plans/compare/why.ts';

const words = studiesDeskWords.why;
const { labels } = planWhyWords;
/** What of a result can be asked for its reason. */
export type StudyWhy = StudyComponentName | 'categories' | 'bias' | 'line';

/** Why a figure of a study is what it is: formula, what was put in, source. */
export function whyOfStudy(asked: StudyWhy, result: StudyResult, format: Format): Why {
  if (asked === 'bias' || asked === 'line') {
    return {
      lines: [{ label: labels.formula, text: asked === 'bias' ? words.bias : words.line, formula: true }], excerpt: null,
      sources: [{ text: asked === 'bias' ? 'NIST/SEMATECH e-Handbook 7.2.2' : words.sources.regression, tag: 'memory' }, { text: words.sources.checked, tag: 'computed' }],
    };
  }
  const s = result.by === 'crossed' ? result.components.map(({ name, s: its }) => words.mean(`s ${studyWords.components[name].toLowerCase()}`, studyFigure(its, format))) : [];
  if (asked === 'categories') return { lines: [{ label: labels.formula, text: words.categories, formula: true }, { label: labels.inputs, text: s.join(';  ') }], excerpt: null, sources: [{ text: words.sources.categories, tag: 'memory' }] };
  const squares = result.by === 'crossed' ? result.model.rows.map(({ source, meanSquare, df }) => words.mean(`MS ${studyWords.sources[source].toLowerCase()}`, `${studyFigure(meanSquare, format)} (${format.count(df)})`)) : [];
  const sizes = result.by === 'crossed' ? [`${format.count(result.anova.parts)} × ${format.count(result.anova.people)} × ${format.count(result.anova.trials)}`] : [];
  return {
    lines: [
      { label: labels.rule, text: words.rule }, { label: labels.formula, text: words.formulas[asked], formula: true }, { label: labels.inputs, text: [...squares, ...sizes].join(';  ') },
      ...(result.by === 'crossed' && result.model.model === 'pooled' ? [{ label: labels.rule, text: words.pooled }] : []),
      { label: labels.formula, text: words.share, formula: true }, { label: labels.formula, text: words.limits },
    ],
    excerpt: null,
    sources: [{ text: words.sources.components, tag: 'memory' }, { text: words.sources.intervals, tag: 'memory' }, { text: words.sources.handbook, tag: 'memory' }, { text: words.sources.checked, tag: 'computed' }],
  };
}
