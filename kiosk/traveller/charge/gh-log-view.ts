import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { logDrawing } from '../../../shared/carbide/furnace-log/index.ts';
import type { DrawnMark, DrawnTick } from '../../../shared/carbide/furnace-log/index.ts';
import type { AttachedLog } from '../../../shared/traveller/index.ts';
import { findingSentence, logVerdict, segmentSentence } from '../../../shared/words/charge-slips.en.ts';
import { kioskChargeWords } from '../../../shared/words/kiosk-charge.en.ts';
import '../../parts/gh-log-chart.ts';
import type { ChartField, ChartTick } from '../../parts/gh-log-chart.ts';
import '../../parts/gh-state-mark.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { catalogue, format } from '../speak.ts';

const words = kioskChargeWords.log;

/** A furnace log: verdict of its check, curve, and beside it the same in tables. */
@customElement('gh-log-view')
export class GhLogView extends LitElement {
  static override styles = [partStyles, css`
    :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: calc(0.6 * var(--gap)); }
    :host([short]) { --chart-height: 280px; }
    .head { display: flex; flex-wrap: wrap; gap: 0.3em 1.2em; align-items: center; }
    .head a { color: var(--link); text-underline-offset: 0.2em; min-block-size: var(--target); display: inline-flex; align-items: center; }
    .scroll { overflow-x: auto; }
    table { border-collapse: collapse; background: var(--slip); inline-size: 100%; font-variant-numeric: tabular-nums; }
    caption { text-align: start; font-weight: 650; padding-block: 0.3em; }
    th, td { padding: 0.3em 0.6em; border-block-end: var(--rule) solid var(--line); text-align: end; font-weight: 400; }
    th:first-child, td.text { text-align: start; }
    thead th:nth-child(2) { text-align: start; }
    thead th { color: var(--ink-soft); font-size: var(--text-small); }
    ol { margin: 0; padding-inline-start: 1.8em; background: var(--slip); padding-block: 0.4em; }
    li::marker { font-weight: 700; font-family: var(--face-figures); }
    summary { min-block-size: var(--target); display: list-item; align-content: center; cursor: pointer; color: var(--ink-soft); }
    summary:focus-visible { outline: 3px solid var(--focus); }
  `];
  @property({ attribute: false }) log: AttachedLog | null = null;
  /** Without the segments' table: for the foot of a gate at work. */
  @property({ type: Boolean, reflect: true }) short = false;

  override render() {
    const { log } = this;
    if (log === null) return nothing;
    const { check, programme } = log;
    const verdict = check.within ? words.within : words.outside;
    const { count } = format();
    return html`<div class="head"><gh-state-mark boxed state=${check.within ? 'accepted' : 'rejected'} word=${verdict}></gh-state-mark>
        <span>${words.file(log.fileName, count(log.rows), programme.id, log.programmeVersion)}</span> <a href=${`/api/attachments/${log.attachment}/file.csv`} target="_blank" rel="noopener">${words.whole}</a></div>
      ${this.#chart(log)} ${this.#findings(log)}
      ${this.short ? nothing : html`${this.#segments(log)}<details><summary>${kioskChargeWords.map.howTitle}</summary><p>${words.how}</p></details>`}`;
  }

  #chart({ curve, check, programme }: AttachedLog) {
    const drawing = logDrawing(curve, check, programme);
    const { number } = format();
    const ticks = (drawn: readonly DrawnTick[]): readonly ChartTick[] => drawn.map(({ at, value }) => ({ at, text: number(value) }));
    const marks = (field: DrawnMark['field']): ChartField['marks'] => drawing.marks.filter((mark) => mark.field === field).map(({ number: each, x, y, kind }) => ({ number: each, x, y, word: words.kinds[kind] }));
    const fields: readonly ChartField[] = [
      { title: words.temperature, curve: drawing.temperature, windows: drawing.windows, ramps: drawing.rates, ticks: ticks(drawing.celsius), marks: marks('temperature') },
      ...(drawing.pressure === null ? [] : [{ title: words.pressure, curve: drawing.pressure.curve, windows: drawing.pressure.windows, ramps: [], ticks: ticks(drawing.pressure.ticks.filter((_, at) => at % 2 === 0)), marks: marks('pressure') }]),
    ];
    return html`<gh-log-chart .fields=${fields} .time=${{ title: words.time, ticks: ticks(drawing.minutes) }} .legend=${words.legend} summary=${words.summary(logVerdict(check, { ...catalogue(), labels: catalogue().labels, format: format() }), check.segments.length)}></gh-log-chart>`;
  }

  #findings({ check }: AttachedLog) {
    if (check.findings.length === 0) return nothing;
    const speak = { format: format(), labels: catalogue().labels };
    return html`<section aria-label=${words.findings}><p><strong>${words.findings}</strong></p><ol>${check.findings.map((finding) => html`<li>${words.kinds[finding.kind]}: ${findingSentence(finding, speak)}</li>`)}</ol></section>`;
  }

  #segments({ check, programme }: AttachedLog) {
    const speak = { format: format(), labels: catalogue().labels };
    const figure = (value: number | null): string => (value === null ? '' : format().number(Math.round(value * 10) / 10));
    return html`<div class="scroll"><table><caption>${words.segments}</caption>
      <thead><tr><th scope="col">${words.segment}</th><th scope="col">${words.limits}</th><th scope="col">${words.from}</th><th scope="col">${words.to}</th><th scope="col">${words.minutes}</th><th scope="col">${words.least}</th><th scope="col">${words.most}</th></tr></thead>
      <tbody>${check.segments.map((outcome, at) => {
        const segment = programme.segments[at];
        return html`<tr><th scope="row">${outcome.name}</th><td class="text">${segment === undefined ? '' : segmentSentence(segment, speak).replace(`${segment.name}: `, '')}</td>
          ${outcome.fromMin === null ? html`<td colspan="5">${words.notBegun}</td>` : html`<td>${figure(outcome.fromMin)}</td><td>${figure(outcome.toMin)}</td><td>${figure(outcome.minutesWithin)}</td><td>${figure(outcome.leastC)}</td><td>${figure(outcome.mostC)}</td>`}</tr>`;
      })}</tbody></table></div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-log-view': GhLogView;
  }
}
