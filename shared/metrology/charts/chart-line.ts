/** What a line of a chart shows. */
export type LineName = 'mean' | 's' | 'range' | 'movingRange' | 'ewma' | 'cusumUp' | 'cusumDown' | 'share' | 'count' | 'rate';

/**
 * One lot on one line: its value, and the limits that hold for that lot. `sigma` is the width of a zone, null where the line has no zones.
 * A point that stands on a limit is within it.
 */
export type LinePoint = { readonly at: number; readonly value: number; readonly centre: number; readonly lower: number | null; readonly upper: number | null; readonly sigma: number | null };

/** One line of a chart, lots in the order made; `at` counts the chart's points from 0, and a lot without a value on this line is left out. */
export type ChartLine = { readonly name: LineName; readonly points: readonly LinePoint[] };
