import { isCounted, LEAST_BASE_LOTS, requireChartBase, requireChartSpec } from '../../metrology/charts/index.ts';
import type { ChartBase } from '../../metrology/charts/index.ts';
import { OutsideDomain } from '../../ground/outside-domain.ts';
import type { Subject } from '../known.ts';
import type { Pen } from '../pen.ts';
import { refuse, requireReason } from '../pen.ts';
import type { ChartCard, ChartPoint, ChartRecord, ChartState } from './chart.ts';
import { chartKey } from './chart.ts';
import { chartedThing } from './charted-thing.ts';
import type { ChartCommand, DefineChart, FreezeChartLimits } from './commands.ts';
import { baseFrom } from './drawn-chart.ts';
import { chartOwner, chartStream, pointOf } from './point-of.ts';

/** Decides what engineers do with charts: define, freeze and unfreeze limits (signed), begin anew, withdraw. */
export function decideChart(pen: Pen, command: ChartCommand): void {
  pen.requireRole(command.type);
  if (command.type === 'defineChart') return defineChart(pen, command);
  requireReason(command.type, command.reason);
  const state = pen.find(command.chart, 'chart', 'chart');
  const record = state.charts.find(({ key }) => key === command.key) ?? refuse({ code: 'notFound', what: 'chart', id: command.key });
  switch (command.type) {
    case 'freezeChartLimits': return freeze(pen, state, record, command);
    case 'unfreezeChartLimits':
      if (record.frozen === null) refuse({ code: 'nothingChanged', what: state.about.characteristicName });
      return pen.write(state.stream, { type: 'chartLimitsUnfrozen', key: record.key, reason: command.reason, signature: pen.signature(command.type, 'limitsUnfrozenBy') });
    case 'restartChart':
      if (record.frozen === null || record.starts.includes(state.points.length)) refuse({ code: 'nothingChanged', what: state.about.characteristicName });
      return pen.write(state.stream, { type: 'chartRestarted', key: record.key, reason: command.reason });
    case 'withdrawChart': return pen.write(state.stream, { type: 'chartWithdrawn', key: record.key, reason: command.reason });
  }
}

function defineChart(pen: Pen, { chart, card, lots }: DefineChart): void {
  const there = pen.state(chart);
  const thing = there?.kind === 'chart' ? there.about : chartedThing(pen, chart);
  requireFit(card, thing.unit !== null, thing.characteristicName);
  const key = chartKey(card);
  if (there?.kind === 'chart') {
    if (lots.length > 0) refuse({ code: 'alreadyThere', what: 'chart', id: thing.characteristicName });
    const before = there.charts.find((record) => record.key === key);
    if (before !== undefined && JSON.stringify(before.card) === JSON.stringify(card)) refuse({ code: 'nothingChanged', what: thing.characteristicName });
    if (before !== undefined && before.frozen !== null && JSON.stringify(before.card.spec) !== JSON.stringify(card.spec)) refuse({ code: 'chartLimitsFrozen', chart: key });
  }
  pen.write(chart, { type: 'chartDefined', key, card, about: thing });
  for (const point of earlierPoints(pen, chart, lots)) pen.write(chart, { type: 'chartPointAdded', ...point });
}

/** A chart of counts needs something counted, every other something measured; rules are named once each. */
function requireFit({ spec, rules, class: each }: ChartCard, isMeasured: boolean, characteristic: string): void {
  const fits = isCounted(spec) ? !isMeasured : isMeasured && each === null;
  if (!fits) refuse({ code: 'chartUnfit', characteristic, why: 'kind' });
  if (rules.length === 0 || new Set(rules).size !== rules.length) refuse({ code: 'chartUnfit', characteristic, why: 'rules' });
  within(() => requireChartSpec(spec), () => refuse({ code: 'chartUnfit', characteristic, why: 'constants' }));
}

/** The first verdicts of these subjects, in the order they fell. */
function earlierPoints(pen: Pen, chart: string, streams: readonly string[]): readonly Omit<ChartPoint, 'revised'>[] {
  return [...new Set(streams)].flatMap((stream) => {
    const subject = pen.subject(stream);
    const point = earlierPoint(subject, chart);
    return point === null ? [] : [{ subject: stream, ...point }];
  }).sort((one, other) => (one.judgedAt < other.judgedAt ? -1 : 1));
}

function earlierPoint(subject: Subject, chart: string): Pick<ChartPoint, 'judgedAt' | 'value'> | null {
  for (const gate of subject.gates) {
    const given = gate.verdicts.filter(({ verdict, from }) => verdict.original && from === null);
    const [first, last] = [given[0], given.at(-1)];
    const result = last?.verdict.results.find(({ characteristic }) => chartStream(subject.kind, chartOwner(subject).id, gate.id, characteristic) === chart);
    const value = last === undefined || result === undefined ? null : pointOf(gate, last.verdict, result);
    if (first !== undefined && value !== null) return { judgedAt: first.at, value };
  }
  return null;
}

function freeze(pen: Pen, state: ChartState, { key, card }: ChartRecord, { lots, given, reason }: FreezeChartLimits): void {
  const base = given ?? estimated(state, card, lots);
  if (given !== null) {
    if (lots.length > 0) refuse({ code: 'chartBaseUnfit', why: 'notOnChart', have: 0, least: 0 });
    within(() => requireChartBase(card.spec, given), () => refuse({ code: 'chartBaseUnfit', why: 'noSpread', have: 0, least: 0 }));
  }
  const kept = isCounted(card.spec) ? { centre: base.centre, sigma: null } : base;
  pen.write(state.stream, { type: 'chartLimitsFrozen', key, base: kept, lots, reason, signature: pen.signature('freezeChartLimits', 'limitsFrozenBy') });
}

function estimated(state: ChartState, card: ChartCard, lots: readonly string[]): ChartBase {
  const points = state.points.filter(({ subject }) => lots.includes(subject));
  if (points.length !== lots.length) return refuse({ code: 'chartBaseUnfit', why: 'notOnChart', have: points.length, least: lots.length });
  const base = baseFrom(card, points);
  return typeof base === 'string' ? refuse({ code: 'chartBaseUnfit', why: base, have: points.length, least: LEAST_BASE_LOTS }) : base;
}

/** People's numbers are refused and not thrown. */
function within(check: () => void, otherwise: () => never): void {
  try {
    check();
  } catch (error) {
    if (error instanceof OutsideDomain) otherwise();
    throw error;
  }
}
