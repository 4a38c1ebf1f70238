import type { ChartLine } from '../../shared/metrology/charts/index.ts';
import type { ChartRecord, ChartState, DrawnChart } from '../../shared/traveller/index.ts';
import type { ChartedLot } from '../parts/gh-control-chart.ts';
import { subjectOf } from './chart-names.ts';

/** One line's lots as the part draws them; signals carry the numbers of the list under the chart. */
export function chartedLots(state: ChartState, { frozen, starts }: ChartRecord, drawn: DrawnChart, line: ChartLine): readonly ChartedLot[] {
  return line.points.map(({ at, value, centre, lower, upper, sigma }) => {
    const place = drawn.places[at] ?? 0;
    const stream = state.points[place]?.subject ?? '';
    const spoken = drawn.signals.flatMap((signal, number) => (signal.line === line.name && signal.at === at ? [String(number + 1)] : []));
    return { name: subjectOf(stream).id, value, centre, lower, upper, sigma, signal: spoken.length === 0 ? null : spoken.join('·'), base: frozen?.lots.includes(stream) ?? false, start: place > 0 && starts.includes(place) };
  });
}
