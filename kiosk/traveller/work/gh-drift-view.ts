import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { crossingText } from '../../../shared/words/gate-slips.en.ts';
import { pressesDeskWords as words } from '../../../shared/words/presses-desk.en.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-drift-chart.ts';
import '../../parts/gh-sheet.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { format } from '../speak.ts';
import { driftPicture } from './drift-picture.ts';
import type { WorkAt } from './gate-work.ts';

/** A drift of the weights as it stands, said once for each alarm, and the picture of the stream behind it. */
@customElement('gh-drift-view')
export class GhDriftView extends LitElement {
  static override styles = [partStyles, css`
    :host { display: grid; gap: var(--gap); grid-template-columns: minmax(0, 1fr); }
    .drift { background: var(--held-ground); color: var(--on-held); padding: 0.5em var(--pad); font-weight: 650; font-size: var(--text-large); line-height: 1.25; margin: 0; }
    .drift:empty { display: none; }
    .row { display: flex; justify-content: end; }
  `];
  @property({ attribute: false }) at: WorkAt | null = null;
  /** The notice stands with what is asked; the picture has its place below. */
  @property() shows: 'notice' | 'picture' = 'picture';
  @state() private asking = false;

  override render() {
    const { at } = this;
    const basis = at?.work.demand.basis;
    if (at === null || basis?.by !== 'everyPiece' || basis.drift === undefined) return nothing;
    if (this.shows === 'notice') return html`<p class="drift" role="status">${this.#said(at)}</p>`;
    const { number, count } = format();
    const { characteristic } = at.work.demand;
    const decimals = characteristic.kind === 'measured' ? characteristic.decimals : 3;
    const view = at.store.view.value;
    const picture = view.state === 'open' ? driftPicture(at.work, view.slips, at.gate.id) : null;
    const write = (value: number): string => number(value, decimals);
    return html`${picture === null || picture.points.length < 2 ? nothing : html`<gh-drift-chart .picture=${picture} caption=${words.chart.caption(count(picture.points.length))} .words=${{ ...words.chart, write, count }}></gh-drift-chart>
        <div class="row"><gh-button @click=${() => (this.asking = true)}>${words.chart.how}</gh-button></div>`}
      <gh-sheet ?open=${this.asking} .heading=${words.chart.howTitle} .closeWord=${words.chart.close} @sheet-closed=${() => (this.asking = false)}><p>${words.chart.howText(number(basis.drift.lambda), number(basis.drift.limitFactor))}</p></gh-sheet>`;
  }

  /** What the newest slip about this alarm says: it changes with the alarm and when a piece is first foretold, and not with each block. */
  #said({ work, store, gate }: WorkAt): string {
    const { characteristic } = work.demand;
    const state = work.weights?.drift ?? null;
    const view = store.view.value;
    if (characteristic.kind !== 'measured' || state?.alarm == null || state.alarm.ended !== null || view.state !== 'open') return '';
    const slip = view.slips.map(({ body }) => body).findLast((body) => body.type === 'driftAnnounced' && body.gate === gate.id && body.characteristic === characteristic.id && body.alarm === state.alarms);
    if (slip?.type !== 'driftAnnounced') return '';
    const { number, count } = format();
    const written = (value: number): string => `${number(value, characteristic.decimals)} ${characteristic.unit}`;
    return `${words.drift[slip.side]} ${written(slip.target)}, since piece ${count(slip.piece)}. ${crossingText(slip.predicted, slip.limit === null ? null : written(slip.limit), { format: format() })}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-drift-view': GhDriftView;
  }
}
