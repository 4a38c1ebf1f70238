import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { decimalsOfStep, type Study } from '../../../shared/traveller/index.ts';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { showFigure, showMoment, showNumber } from '../../desk/show.ts';
import { SortedTable } from '../../desk/sorted-table.ts';
import { deskWords } from '../../desk/words.ts';
import { link, type RefusalText } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-sheet.ts';
import { partStyles } from '../../parts/part-styles.ts';
import type { LiveStudy } from './live-study.ts';

const words = studiesDeskWords.page;

/** Every reading of a study that stands. Whoever still measures in it sees no values. */
@customElement('gh-study-readings')
export class GhStudyReadings extends LitElement {
  static override styles = [partStyles, deskStyles, css`:host { display: grid; gap: var(--gap); grid-template-columns: minmax(0, 1fr); }`];
  @property({ attribute: false }) study: Study | null = null;
  @property({ attribute: false }) live: LiveStudy | null = null;
  /** The values are hidden. */
  @property({ type: Boolean }) blind = false;
  /** Readings can be taken out. */
  @property({ type: Boolean }) withdraws = false;
  @state() private withdrawing: number | null = null;
  @state() private reason = '';
  @state() private refused: RefusalText | null = null;
  readonly #table = new SortedTable(this);

  override render() {
    const { study } = this;
    if (study === null) return nothing;
    const c = words.readingsColumns;
    const { unit, resolution } = study.gaugeThen;
    const decimals = decimalsOfStep(resolution);
    const columns = [
      { key: 'number', head: c.number, kind: 'number' as const, sortable: true }, { key: 'person', head: c.person, sortable: true, filterable: true }, { key: 'part', head: c.part, sortable: true, filterable: true }, { key: 'trial', head: c.trial, kind: 'number' as const, sortable: true },
      ...(this.blind ? [] : [{ key: 'value', head: c.value, unit, kind: 'number' as const, sortable: true }]), { key: 'at', head: c.at, sortable: true }, { key: 'corrected', head: c.corrected }, ...(this.withdraws ? [{ key: 'withdraw', head: c.withdraw }] : []),
    ];
    return html`${this.refused === null ? nothing : html`<gh-notice kind="refusal" happened=${this.refused.happened} kept=${this.refused.kept} next=${this.refused.next} dismiss=${deskWords.dismiss} @notice-dismissed=${() => (this.refused = null)}></gh-notice>`}
      ${this.#table.table(words.readings, columns, study.readings.map(({ reading, badge, part, trial, value, at, corrected }) => ({
        key: String(reading),
        texts: { number: reading, person: study.people.find((person) => person.badge === badge)?.name ?? badge, part: study.parts[part - 1]?.label ?? '', trial, value: this.blind ? '' : value, at, corrected: corrected ? words.corrected : '', withdraw: '' },
        shown: { value: showNumber(value, decimals), at: showMoment(at), withdraw: html`<gh-button @click=${() => this.#ask(reading)}>${words.withdraw}</gh-button>` },
      })), { empty: words.noReadings, ...(this.blind ? {} : { file: `study-${study.id}` }) })}
      ${this.withdrawing === null ? nothing : html`<gh-sheet open heading=${words.withdrawTitle(showFigure(this.withdrawing))} close-word=${deskWords.cancel} @sheet-closed=${() => (this.withdrawing = null)}><p>${words.withdrawHint}</p>
        <gh-field label=${words.reason} max-length="500" .value=${this.reason} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.reason = detail.value)}></gh-field>
        <gh-button slot="actions" kind="primary" @click=${() => void this.#withdraw(study.id)}>${words.withdraw}</gh-button></gh-sheet>`}`;
  }

  #ask(reading: number): void {
    [this.withdrawing, this.reason] = [reading, ''];
  }

  async #withdraw(study: string): Promise<void> {
    const { withdrawing, live } = this;
    this.withdrawing = null;
    if (withdrawing === null || live === null) return;
    const outcome = await live.give({ type: 'withdrawStudyReading', study, reading: withdrawing, reason: this.reason });
    this.refused = outcome.state === 'refused' ? outcome.words : null;
    if (outcome.state === 'refused') void link.outbox.dismiss(outcome.clientId);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-study-readings': GhStudyReadings;
  }
}
