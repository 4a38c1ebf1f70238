import { planCompareWords as words } from '../../../shared/words/plan-compare.en.ts';
import { showFigure, showNumber } from '../../desk/show.ts';
import type { RiskAxes } from '../../parts/risk-chart-drawing.ts';
import { percentText } from './compared-text.ts';
import type { Curves } from './curves.ts';

/** The axes of the curves, with how their numbers are written. */
export function axesOf({ curve, model, points, top }: Curves): RiskAxes {
  const span = 100 * (points.at(-1) ?? 1);
  const decimals = Math.max(0, Math.min(8, 3 - Math.floor(Math.log10(span))));
  const showY: Readonly<Record<Curves['curve'], (value: number) => string>> = {
    acceptance: (value) => words.percent(percentText(value, 3)), aoq: (value) => words.percent(percentText(value, 3)),
    asn: (value) => showNumber(value, value >= 1000 ? 0 : 1), ati: (value) => showNumber(value, value >= 1000 ? 0 : 1),
  };
  return { points, top, x: words.axis[model], y: words.curveAxis[curve], showX: (p) => showFigure(Number((100 * p).toFixed(decimals))), showY: showY[curve] };
}
