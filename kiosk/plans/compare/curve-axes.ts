import { planCompareWords as words } from '../../../shared/words/plan-compare.en.ts';
import { showFigure } from '../../desk/show.ts';
import type { RiskAxes } from '../../parts/risk-chart-drawing.ts';
import { percentText } from './compared-text.ts';
import type { Curves } from './curves.ts';

const pieces = (value: number): string => showFigure(Number(value.toFixed(value >= 1000 ? 0 : 1)));
const least = 1e-5;
/** A probability as percent; the far ends are said to be beyond a thousandth of a percent. */
function chanceText(value: number): string {
  if (value > 0 && value < least) return words.below(showFigure(100 * least));
  return value < 1 && value > 1 - least ? words.above(showFigure(100 - 100 * least)) : percentText(value, 3);
}

/** The axes of the curves, with how their numbers are written. */
export function axesOf({ curve, model, points, top }: Curves): RiskAxes {
  const span = 100 * (points.at(-1) ?? 1);
  const decimals = Math.max(0, Math.min(8, 3 - Math.floor(Math.log10(span))));
  const showY: Readonly<Record<Curves['curve'], (value: number) => string>> = {
    acceptance: (value) => words.percent(chanceText(value)), aoq: (value) => words.percent(percentText(value, 3)),
    asn: pieces, ati: pieces,
  };
  return { points, top, x: words.axis[model], y: words.curveAxis[curve], showX: (p) => showFigure(Number((100 * p).toFixed(decimals))), showY: showY[curve] };
}
