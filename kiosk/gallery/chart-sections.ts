import { html, type TemplateResult } from 'lit';
import type { ChartedLot, ControlChartSays, LineLetter, RiskAxes, RiskChartWords, RiskLine, StripLot } from '../parts/index.ts';

/* Invented curves for the gallery only: they have the look of an operating characteristic and stand for no plan. */
const points = Array.from({ length: 101 }, (_, at) => at / 1000);
const curve = (letter: LineLetter, name: string, middle: number, steep: number): RiskLine => {
  const value = (p: number): number => 1 / (1 + (p / middle) ** steep);
  return { letter, name, values: points.map(value), marks: [{ kind: 'producer', x: 0.01, y: value(0.01) }, { kind: 'consumer', x: middle * 9 ** (1 / steep), y: 0.1 }] };
};
const axes: RiskAxes = { points, top: 1, x: 'p, percent nonconforming', y: 'Probability of acceptance', showX: (p) => String(Number((100 * p).toFixed(1))), showY: (value) => `${(100 * value).toFixed(1)} %` };
const words: RiskChartWords = { cursor: 'Quality read out', back: 'One step better', on: 'One step worse', at: (x) => `p ${x} %`, none: '–', producer: 'producer’s point', consumer: 'consumer’s point' };
const four = [curve('A', 'first plan', 0.022, 3.2), curve('B', 'second plan', 0.03, 4), curve('C', 'third plan', 0.041, 2.4), curve('D', 'fourth plan', 0.05, 6)];
const year: readonly StripLot[] = Array.from({ length: 180 }, (_, at) => ({ severity: at > 40 && at < 60 ? 'tightened' : at > 90 && at < 140 ? 'reduced' : at > 172 ? 'discontinued' : 'normal', accepted: at % 37 !== 3 && at !== 39 && at !== 45 }));

const invented: readonly ChartedLot[] = [12.701, 12.699, 12.703, 12.7, 12.698, 12.702, 12.701, 12.699, 12.704, 12.716].map((value, at) => ({ name: `L${at + 1}`, value, centre: 12.7, lower: 12.688, upper: 12.712, sigma: 0.004, signal: value > 12.712 ? '1' : null, base: at < 8, start: at === 8 }));
const says: ControlChartSays = {
  x: 'lots in the order judged', y: 'mean, mm', upper: 'upper', lower: 'lower', centre: 'centre', base: 'base period', start: 'begins anew', signal: 'S', cursor: 'Lot read out', back: 'One lot earlier', on: 'One lot later',
  show: (value) => value.toFixed(3), read: ({ name, value }) => `${name}: ${value.toFixed(3)} mm`,
};
const classes = [1, 4, 9, 12, 8, 5, 1].map((count, at) => ({ from: 12.69 + at * 0.003, to: 12.693 + at * 0.003, count }));

/** The parts that draw risks, each in its states. */
export const chartSections: readonly (readonly [string, TemplateResult])[] = [
  ['gh-risk-chart', html`<div data-density="desk" class="pile"><gh-risk-chart .lines=${four} .axes=${axes} .words=${words} cursor="25"></gh-risk-chart><gh-risk-chart .lines=${four.slice(0, 1)} .axes=${axes} .words=${words} cursor="10"></gh-risk-chart></div>`],
  ['gh-rating-picture', html`<div class="halves">${([0, 1, 2, 3] as const).map((step) => html`<gh-rating-picture .picture=${{ of: 'adhesion' as const, step }}></gh-rating-picture>`)}${([['A', 2, 0.06], ['B', 2, 0.06], ['C', 2, null]] as const).map(([of, step, volumePercent]) => html`<gh-rating-picture .picture=${{ of, step, volumePercent }}></gh-rating-picture>`)}</div>`],
  ['gh-control-chart', html`<div data-density="desk" class="pile"><gh-control-chart .lots=${invented} .says=${says}></gh-control-chart><gh-control-chart .lots=${invented.slice(0, 1)} .says=${says}></gh-control-chart></div>`],
  ['gh-histogram', html`<div data-density="desk"><gh-histogram .classes=${classes} .marks=${{ lower: 12.685, upper: 12.715, mean: 12.7 }} caption="40 invented values" .words=${{ x: 'mm', y: 'values', lower: 'lower limit', upper: 'upper limit', mean: 'mean', show: (value: number) => value.toFixed(3) }}></gh-histogram></div>`],
  ['gh-line-key', html`<div class="row">${(['A', 'B', 'C', 'D'] as const).map((letter) => html`<gh-line-key letter=${letter}></gh-line-key>`)}</div>`],
  ['gh-lot-strip', html`<gh-lot-strip .lots=${year} .words=${{ caption: '180 invented lots', notAccepted: 'not accepted', severities: { reduced: 'reduced', normal: 'normal', tightened: 'tightened', discontinued: 'discontinued' } }}></gh-lot-strip>`],
  ['gh-drop-list', html`<div data-density="desk" class="halves"><gh-drop-list label="AQL" value="1" .options=${['0.65', '1', '1.5'].map((value) => ({ value, text: `${value} %` }))}></gh-drop-list><gh-drop-list label="Level" value="II" error="Not at this size." .options=${['I', 'II', 'III'].map((value) => ({ value, text: value }))}></gh-drop-list></div>`],
];
