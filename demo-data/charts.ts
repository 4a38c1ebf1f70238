import { chartKey, chartStream, drawnChart } from '../shared/traveller/index.ts';
import type { ChartCard, ChartState, SubjectKind } from '../shared/traveller/index.ts';
import type { Floor } from './floor.ts';
import type { DemoPerson } from './people.ts';

const ZONES: ChartCard['rules'] = ['beyondLimits', 'twoOfThreeBeyondTwo', 'fourOfFiveBeyondOne', 'eightOnOneSide'];
const card = (spec: ChartCard['spec'], rules: ChartCard['rules'] = ['beyondLimits']): ChartCard => ({ spec, rules, mayHold: false, class: null });

interface Charted { readonly kind: SubjectKind; readonly owner: string; readonly gate: string; readonly characteristic: string; readonly cards: readonly ChartCard[] }
/** What the invented plant charts. */
const CHARTED: readonly Charted[] = [
  { kind: 'lot', owner: 'CNMG-D1', gate: 'dimensions', characteristic: 'circle', cards: [card({ kind: 'meanAndS' }, ZONES), card({ kind: 'cusum', k: 0.5, h: 5, spread: 'withinLots' })] },
  { kind: 'lot', owner: 'CNMG-D1', gate: 'edge', characteristic: 'radius', cards: [card({ kind: 'individuals' }, ZONES), card({ kind: 'ewma', lambda: 0.2, width: 3, spread: 'betweenLots' })] },
  { kind: 'lot', owner: 'CNMG-D1', gate: 'final-visual', characteristic: 'looks', cards: [card({ kind: 'p', limits: 'exact' })] },
  { kind: 'furnace', owner: 'DEMO-F8', gate: 'sinter-check', characteristic: 'density', cards: [card({ kind: 'individuals' })] },
];

/** An engineer sets the charts up from the lots judged so far and freezes the limits of those that have enough. */
export function setUpCharts(floor: Floor, engineer: DemoPerson, subjects: readonly string[]): void {
  for (const { kind, owner, gate, characteristic, cards } of CHARTED) {
    const chart = chartStream(kind, owner, gate, characteristic);
    cards.forEach((each, at) => {
      floor.wait(2);
      floor.give(engineer, 'Quality desk', { type: 'defineChart', chart, card: each, lots: at === 0 ? subjects.filter((stream) => stream.startsWith(`${kind}:`)) : [] });
      const state = floor.state(chart);
      const lots = state?.kind === 'chart' ? steadyLots(state, each) : [];
      if (lots.length < 8) return;
      floor.wait(5);
      floor.give(engineer, 'Quality desk', { type: 'freezeChartLimits', chart, key: each.spec.kind, lots, given: null, reason: 'First weeks, without lots whose cause was found' });
      // A sum goes on carrying a lot whose cause is gone.
      if (each.spec.kind === 'cusum') floor.give(engineer, 'Quality desk', { type: 'restartChart', chart, key: each.spec.kind, reason: 'The cause of the lots left out was found and removed' });
    });
  }
}

/** The lots within the limits that they all together give: the engineer leaves out those whose cause is known. */
function steadyLots(state: ChartState, card: ChartCard): readonly string[] {
  const all = state.points.map(({ subject }) => subject);
  const record = state.charts.find(({ key }) => key === chartKey(card));
  const drawn = record === undefined ? 'tooFew' : drawnChart(state, { ...record, card: { ...card, spec: card.spec.kind === 'cusum' || card.spec.kind === 'ewma' ? { kind: 'individuals' } : card.spec, rules: ['beyondLimits'] } });
  return typeof drawn === 'string' ? all : all.filter((_, at) => drawn.signals.every((signal) => signal.line === 'movingRange' || drawn.places[signal.at] !== at));
}
