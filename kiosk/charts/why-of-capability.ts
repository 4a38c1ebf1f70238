import type { CapabilityIndex, CapabilitySpread, FractionOutside } from '../../shared/metrology/capability/index.ts';
import { chartsDeskWords } from '../../shared/words/charts-desk.en.ts';
import type { Why } from '../plans/compare/why.ts';
import { toFigure } from './chart-figures.ts';

const words = chartsDeskWords.how;
export type CapabilityAsked =
  | { readonly kind: 'width' | 'side' | 'centred'; readonly name: string; readonly shown: string; readonly index: CapabilityIndex; readonly spread: CapabilitySpread; readonly by: 'within' | 'overall'; readonly limits: string }
  | { readonly kind: 'share' | 'counted'; readonly name: string; readonly shown: string; readonly share: FractionOutside; readonly inputs: string };

/** Why a figure of capability is what it is. */
export function whyOfCapability(asked: CapabilityAsked): Why {
  if ('share' in asked) {
    return {
      lines: [{ label: words.formula, text: words[asked.kind], formula: true }, { label: words.inputs, text: asked.inputs, formula: true }, ...(asked.kind === 'share' ? [{ label: words.holds, text: words.holdsText }] : [])],
      excerpt: null,
      sources: asked.kind === 'share' ? [{ text: words.handbook, tag: 'memory' }, { text: words.shareSource, tag: 'derived' }] : [{ text: words.clopper, tag: 'memory' }],
    };
  }
  const { spread, by, limits, kind, index } = asked;
  return {
    lines: [
      { label: words.formula, text: `${index.by === 'noncentralT' ? words.side : words[kind]}\n${words.spread[by]}`, formula: true },
      { label: words.inputs, text: `${limits}\nx̄ = ${toFigure(spread.mean, 8)}, s = ${toFigure(spread.s)}, N = ${spread.values}, df = ${spread.df}`, formula: true }, { label: words.holds, text: words.holdsText },
    ],
    excerpt: null,
    sources: [{ text: words.handbook, tag: 'memory' }, ...(index.by === 'bissell' ? [{ text: words.bissell, tag: 'memory' as const }] : index.by === 'noncentralT' ? [{ text: words.kushler, tag: 'memory' as const }] : [])],
  };
}
