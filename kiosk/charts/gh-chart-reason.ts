import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { chartsDeskWords } from '../../shared/words/charts-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { focusSheet } from '../desk/focus-sheet.ts';
import { Giving } from '../desk/giving.ts';
import { deskWords } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-sheet.ts';
import '../parts/gh-signature.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { nameOfKey } from './chart-names.ts';

const words = chartsDeskWords.chart;

/**
 * Begins a chart anew, withdraws it, or unfreezes its limits by signature; each with a reason.
 * @fires chart-changed - with `{ done }`
 */
@customElement('gh-chart-reason')
export class GhChartReason extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property() does: 'unfreeze' | 'restart' | 'withdraw' | null = null;
  @property() chart = '';
  @property({ attribute: 'key-of' }) keyOf = '';
  @state() private reason = '';
  readonly #giving = new Giving(this);
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { does } = this;
    const session = this.#session.value;
    if (does === null || session === null) return nothing;
    const name = nameOfKey(this.keyOf);
    const field = html`<gh-field name="reason" label=${words.reasons[does]} .value=${this.reason} required @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.reason = detail.value)}></gh-field>`;
    return html`<gh-sheet open heading="${words[does]}: ${name}" close-word=${deskWords.cancel}>${refusalNotice(this.#giving)}
      ${does === 'unfreeze'
        ? html`<gh-signature meaning=${words.signUnfreeze} who="${session.name} (${session.badge})" statement=${words.unfreezeStatement(name)} .words=${deskWords.pin} .busy=${this.#giving.busy !== null} @signed=${({ detail }: CustomEvent<{ pin: string }>) => void this.#give(does, detail.pin)}>${field}</gh-signature>`
        : html`${field}<gh-button slot="actions" kind="primary" .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#give(does)}>${words[does]}</gh-button>`}</gh-sheet>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('does')) return;
    this.reason = '';
    if (this.does !== null) void focusSheet(this);
  }

  async #give(does: 'unfreeze' | 'restart' | 'withdraw', pin?: string): Promise<void> {
    const type = ({ unfreeze: 'unfreezeChartLimits', restart: 'restartChart', withdraw: 'withdrawChart' } as const)[does];
    const given = await this.#giving.give(does, { type, chart: this.chart, key: this.keyOf, reason: this.reason }, pin === undefined ? {} : { pin });
    if (given !== null) tell(this, 'chart-changed', { done: words.done[does === 'unfreeze' ? 'unfrozen' : does === 'restart' ? 'restarted' : 'withdrawn'] });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-chart-reason': GhChartReason;
  }
}
