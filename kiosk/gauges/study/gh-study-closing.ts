import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { mayGive, studyResult, type Study } from '../../../shared/traveller/index.ts';
import { formatFor } from '../../../shared/words/format.ts';
import { signatureSentence } from '../../../shared/words/gate-slips.en.ts';
import { localeFor } from '../../../shared/words/locale.ts';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { deskWords, labels } from '../../desk/words.ts';
import { Follow, link, type RefusalText } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-select-list.ts';
import '../../parts/gh-sheet.ts';
import '../../parts/gh-signature.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { locale } from '../../shell/words.ts';
import './gh-study-result.ts';
import type { LiveStudy } from './live-study.ts';

const words = studiesDeskWords;
const POOLS = ['0.25', '0.05', '1'] as const;
const CONFIDENCES = ['0.9', '0.95', '0.99'] as const;

/** The result of a whole study: open to other choices until an engineer signs, then as signed. */
@customElement('gh-study-closing')
export class GhStudyClosing extends LitElement {
  static override styles = [partStyles, deskStyles, css`:host { display: grid; gap: calc(1.6 * var(--pad)); grid-template-columns: minmax(0, 1fr); }`];
  @property({ attribute: false }) study: Study | null = null;
  @property({ attribute: false }) live: LiveStudy | null = null;
  @state() private pool: (typeof POOLS)[number] = '0.25';
  @state() private confidence: (typeof CONFIDENCES)[number] = '0.95';
  @state() private signing = false;
  @state() private busy = false;
  @state() private refused: RefusalText | null = null;
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { study } = this;
    const session = this.#session.value;
    if (study === null || session === null) return nothing;
    const { closed } = study;
    const choices = closed === null ? { poolAbove: Number(this.pool), confidence: Number(this.confidence) } : { poolAbove: closed.poolAbove, confidence: closed.confidence };
    const result = studyResult(study, choices);
    return html`<h3>${closed === null ? words.result.preliminary : words.result.title}</h3>
      ${closed === null ? this.#choices(study) : html`<p>${signatureSentence(closed.signature, { format: formatFor(localeFor(locale())), labels })}</p>
        <div class="keys screen-only"><a href="/api/studies/${encodeURIComponent(study.id)}/study.pdf">${words.page.pdf}</a><a href="/api/studies/${encodeURIComponent(study.id)}/readings.csv">${words.page.csv}</a></div>`}
      <gh-study-result .study=${study} .result=${result} .choices=${choices}></gh-study-result>
      ${closed === null && mayGive('closeStudy', session.roles) ? html`<div class="keys screen-only"><gh-button kind="primary" @click=${() => (this.signing = true)}>${words.close.key}</gh-button></div>` : nothing}
      ${this.signing && closed === null ? html`<gh-sheet open heading=${words.close.title} close-word=${deskWords.cancel} @sheet-closed=${() => (this.signing = false)}>
        ${this.refused === null ? nothing : html`<gh-notice kind="refusal" happened=${this.refused.happened} kept=${this.refused.kept} next=${this.refused.next}></gh-notice>`}
        <gh-signature meaning=${words.close.meaning} who="${session.name} (${session.badge})" statement=${words.close.statement(study.id)} .words=${deskWords.pin} .busy=${this.busy}
          @signed=${({ detail }: CustomEvent<{ pin: string }>) => void this.#sign(study.id, detail.pin)}></gh-signature></gh-sheet>` : nothing}`;
  }

  #choices({ studyKind }: Study) {
    const confidence = html`<gh-select-list columns="3" label=${words.close.confidence} .value=${this.confidence} .options=${CONFIDENCES.map((value) => ({ value, text: words.close.confidences[value] }))} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => (this.confidence = CONFIDENCES.find((each) => each === detail.value) ?? this.confidence)}></gh-select-list>`;
    return html`<div class="halves screen-only">${studyKind === 'crossed' ? html`<gh-select-list columns="3" label=${words.close.pool} .value=${this.pool} .options=${POOLS.map((value) => ({ value, text: words.close.pools[value] }))} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => (this.pool = POOLS.find((each) => each === detail.value) ?? this.pool)}></gh-select-list>` : nothing}${confidence}</div>`;
  }

  async #sign(study: string, pin: string): Promise<void> {
    if (this.live === null || this.busy) return;
    this.busy = true;
    const outcome = await this.live.give({ type: 'closeStudy', study, poolAbove: Number(this.pool), confidence: Number(this.confidence) }, { pin });
    this.busy = false;
    this.refused = outcome.state === 'refused' ? outcome.words : null;
    if (outcome.state !== 'refused') this.signing = false;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-study-closing': GhStudyClosing;
  }
}
