import { fullSaturation, isSaturationWindow, type SaturationUnit, type SaturationWindow } from '../../../shared/carbide/index.ts';
import { gradePageWords } from '../../../shared/words/grade-page.en.ts';
import { showFigure, showNumber } from '../../desk/show.ts';
import type { SaturationAxes, SaturationBand } from '../../parts/gh-saturation-window.ts';

const words = gradePageWords.saturation;
/** A band of the window as a line of the table beside the drawing. */
export interface BandRow { readonly name: string; readonly from: string; readonly to: string; readonly reading: string; readonly meaning: string }
export interface SaturationView { readonly bands: readonly SaturationBand[]; readonly axes: SaturationAxes; readonly rows: readonly BandRow[] }

/** Drawing and table of a window; null where its four steps do not rise or no cobalt is there. */
export function saturationView(window: SaturationWindow, unit: SaturationUnit, cobaltFraction: number): SaturationView | null {
  if (!isSaturationWindow(window) || cobaltFraction < 0.0001) return null;
  const full = fullSaturation(cobaltFraction, unit).value;
  const reading = (percent: number): string => showNumber((percent / 100) * full, full < 100 ? 2 : 1);
  const { lowPercent: low, warnLowPercent: warnLow, warnHighPercent: warnHigh, highPercent: high } = window;
  const axes: SaturationAxes = { from: Math.max(0, low - 8), to: high + 8, x: words.axis, second: words.axisOf(unit), show: showFigure, showSecond: reading };
  const kinds = [['low', axes.from, low], ['warnLow', low, warnLow], ['normal', warnLow, warnHigh], ['warnHigh', warnHigh, high], ['high', high, axes.to]] as const;
  return {
    axes, bands: kinds.map(([kind, from, to]) => ({ kind, from, to, name: words.short[kind] })),
    rows: kinds.map(([kind, from, to]) => ({
      name: words.bands[kind], from: kind === 'low' ? '' : showFigure(from), to: kind === 'high' ? '' : showFigure(to), meaning: words.meanings[kind],
      reading: [kind === 'low' ? '' : reading(from), kind === 'high' ? '' : reading(to)].join(' … ').trim(),
    })),
  };
}
