import { BrokenThread } from '../broken-thread.ts';
import type { Slip } from '../slip.ts';
import type { ChartRecord, ChartState } from './chart.ts';
import type { ChartSlip } from './slips.ts';

/** Folds one slip into the charts of a characteristic. @throws BrokenThread on a thread that cannot have happened */
export function evolveChart(chart: ChartState | null, slip: Slip<ChartSlip>): ChartState {
  const { body, stream, version, at } = slip;
  if (chart === null) {
    if (body.type !== 'chartDefined') throw new BrokenThread(`the thread of ${stream} begins with ${body.type}`);
    return { kind: 'chart', stream, version, about: body.about, points: [], charts: [{ key: body.key, card: body.card, frozen: null, starts: [], signals: [] }] };
  }
  const next = { ...chart, version };
  const withChart = (key: string, change: (record: ChartRecord) => ChartRecord): ChartState => {
    if (!chart.charts.some((record) => record.key === key)) throw new BrokenThread(`no chart ${key} on ${stream}`);
    return { ...next, charts: chart.charts.map((record) => (record.key === key ? change(record) : record)) };
  };
  switch (body.type) {
    case 'chartDefined':
      if (chart.charts.some(({ key }) => key === body.key)) return withChart(body.key, (record) => ({ ...record, card: body.card }));
      return { ...next, charts: [...chart.charts, { key: body.key, card: body.card, frozen: null, starts: [], signals: [] }] };
    case 'chartPointAdded': return { ...next, points: [...chart.points, { subject: body.subject, judgedAt: body.judgedAt, value: body.value, revised: false }] };
    case 'chartPointRevised': return { ...next, points: chart.points.map((point) => (point.subject === body.subject ? { ...point, value: body.value, revised: true } : point)) };
    case 'chartLimitsFrozen': return withChart(body.key, (record) => ({ ...record, frozen: { base: body.base, lots: body.lots, reason: body.reason, signature: body.signature, at }, starts: [firstOf(chart, body.lots)] }));
    case 'chartLimitsUnfrozen': return withChart(body.key, (record) => ({ ...record, frozen: null, starts: [] }));
    case 'chartRestarted': return withChart(body.key, (record) => ({ ...record, starts: [...record.starts, chart.points.length] }));
    case 'chartWithdrawn': return { ...next, charts: chart.charts.filter(({ key }) => key !== body.key) };
    case 'chartSignalled': {
      // A chart may have been withdrawn by the time an older lot of it is corrected; then there is nothing to mark.
      const { key, rule, line, side, subject, lots } = body;
      return { ...next, charts: chart.charts.map((record) => (record.key === key ? { ...record, signals: [...record.signals, { key, rule, line, side, subject, lots, at }] } : record)) };
    }
  }
}

/** Sums begin with the first lot of the base period; with limits that were given, with the next lot. */
function firstOf({ points }: ChartState, lots: readonly string[]): number {
  const first = points.findIndex(({ subject }) => lots.includes(subject));
  return first === -1 ? points.length : first;
}
