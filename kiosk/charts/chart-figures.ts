import type { ChartedThing, LineName } from '../../shared/traveller/index.ts';
import { showFigure, showNumber } from '../desk/show.ts';

/** How a value of a line is written: means with two decimals more than a reading has, shares in percent, sums in sigma. */
export function showOn(line: LineName, { decimals, unit }: Pick<ChartedThing, 'decimals' | 'unit'>): (value: number) => string {
  switch (line) {
    case 'mean': case 's': case 'range': case 'movingRange': case 'ewma': return (value) => `${showNumber(value, decimals + 1)}${unit === null ? '' : ` ${unit}`}`;
    case 'cusumUp': case 'cusumDown': return (value) => showNumber(value, 2);
    case 'share': return (value) => `${showNumber(100 * value, 2)} %`;
    case 'rate': return (value) => showNumber(value, 4);
    case 'count': return (value) => showNumber(value, Number.isInteger(value) ? 0 : 1);
  }
}

/** Without the unit, for axes and the names of limits. */
export function plainOn(line: LineName, thing: Pick<ChartedThing, 'decimals'>): (value: number) => string {
  return line === 'share' ? (value) => showNumber(100 * value, 2) : showOn(line, { ...thing, unit: null });
}

/** The unit of a line's axis. */
export function unitOn(line: LineName, { unit }: Pick<ChartedThing, 'unit'>): string {
  switch (line) {
    case 'mean': case 's': case 'range': case 'movingRange': case 'ewma': return unit ?? '';
    case 'cusumUp': case 'cusumDown': return 'σ';
    case 'share': return '%';
    case 'rate': case 'count': return '';
  }
}

/** So many digits that matter. */
export function toFigure(value: number, digits = 6): string {
  return showFigure(Number(value.toPrecision(digits)));
}
