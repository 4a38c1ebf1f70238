import { nextHold } from '../gate/give-verdict.ts';
import type { GateRecord } from '../gate/work.ts';
import type { Verdict } from '../gate/verdict.ts';
import type { Subject } from '../known.ts';
import { standingHolds } from '../lot/lot.ts';
import type { Pen } from '../pen.ts';
import type { ChartRecord, ChartState, PointValue } from './chart.ts';
import { drawnChart } from './drawn-chart.ts';
import { chartOwner, chartStream, pointOf } from './point-of.ts';
import type { ChartSignalled } from './slips.ts';

/** Puts a first inspection's verdict on the charts of its characteristics. Re-inspections add nothing: they tell of sorting, not of making. */
export function addChartPoints(pen: Pen, stream: string, gate: GateRecord, verdict: Verdict): void {
  if (!verdict.original) return;
  const subject = pen.subject(stream);
  eachChart(pen, subject, gate, verdict, (chart, value) => {
    if (chart.points.some((point) => point.subject === stream)) return;
    pen.write(chart.stream, { type: 'chartPointAdded', subject: stream, judgedAt: pen.stamp.at, value });
    speak(pen, chart.stream, stream, gate);
  });
}

/** A correction changes the point of the same lot, and what the rules say from it on. Signals once posted stay on the thread. */
export function reviseChartPoints(pen: Pen, stream: string, gate: GateRecord, verdict: Verdict, why: string): void {
  if (!verdict.original) return;
  eachChart(pen, pen.subject(stream), gate, verdict, (chart, value) => {
    const point = chart.points.find(({ subject }) => subject === stream);
    if (point === undefined || JSON.stringify(point.value) === JSON.stringify(value)) return;
    pen.write(chart.stream, { type: 'chartPointRevised', subject: stream, value, why });
    speak(pen, chart.stream, stream, gate);
  });
}

function eachChart(pen: Pen, subject: Subject, gate: GateRecord, verdict: Verdict, take: (chart: ChartState, value: PointValue) => void): void {
  for (const result of verdict.results) {
    const value = pointOf(gate, verdict, result);
    const chart = value === null ? null : pen.state(chartStream(subject.kind, chartOwner(subject).id, gate.id, result.characteristic));
    if (value !== null && chart?.kind === 'chart') take(chart, value);
  }
}

/**
 * Posts what the frozen charts say at this lot, or after it, and was not posted yet: on the chart and on the lot's thread. A chart that may
 * hold stops the lot whose own point completes a pattern.
 */
function speak(pen: Pen, chartStreamName: string, stream: string, gate: GateRecord): void {
  const state = pen.find(chartStreamName, 'chart', 'chart');
  const place = state.points.findIndex(({ subject }) => subject === stream);
  let mayHold = false;
  for (const record of state.charts) {
    if (record.frozen === null) continue;
    for (const { at, ...signal } of newSignals(state, record)) {
      if (at < place) continue;
      pen.write(chartStreamName, signal);
      pen.write(stream, signal);
      mayHold ||= record.card.mayHold && at === place;
    }
  }
  const subject = pen.subject(stream);
  const stands = standingHolds(subject).some(({ cause }) => cause.by === 'chart' && cause.chart === chartStreamName);
  if (mayHold && !stands && subject.ended === null) pen.write(stream, { type: 'held', hold: nextHold(subject), cause: { by: 'chart', gate: gate.id, chart: chartStreamName }, reason: `${gate.name}: ${state.about.characteristicName}` });
}

function newSignals(state: ChartState, record: ChartRecord): readonly (ChartSignalled & { readonly at: number })[] {
  const drawn = drawnChart(state, record);
  if (typeof drawn === 'string') return [];
  const subjectAt = (at: number): string => state.points[drawn.places[at] ?? -1]?.subject ?? '';
  return drawn.signals.flatMap(({ at, from, line, rule, side }) => {
    const subject = subjectAt(at);
    if (record.signals.some((posted) => posted.subject === subject && posted.line === line && posted.rule === rule && posted.side === side)) return [];
    const lots = Array.from({ length: at - from + 1 }, (_, step) => subjectAt(from + step));
    return [{ at: drawn.places[at] ?? 0, type: 'chartSignalled' as const, chart: state.stream, about: state.about, key: record.key, rule, line, side, subject, lots }];
  });
}
