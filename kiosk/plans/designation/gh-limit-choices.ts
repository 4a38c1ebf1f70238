import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { designationDeskWords } from '../../../shared/words/designation-desk.en.ts';
import { designationWords } from '../../../shared/words/designation.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { showFigure, typedFigure } from '../../desk/show.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-select-list.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import { coatingOf, givenOf, NO_LIMIT_TEXTS } from './limit-texts.ts';
import type { LimitTexts, WorkedDesignation } from './limit-texts.ts';

const words = designationDeskWords;
type Given = CustomEvent<{ value: string }>;

/**
 * What the tables leave open: the circle where the digits fit several, limits that are not in hand, and when the pieces are measured.
 * @fires texts-changed - with the texts
 */
@customElement('gh-limit-choices')
export class GhLimitChoices extends LitElement {
  static override styles = [partStyles, deskStyles, css`:host { display: grid; gap: calc(1.2 * var(--pad)); } .fields { --target: 42px; }`];
  @property({ attribute: false }) worked: WorkedDesignation | null = null;
  @property({ attribute: false }) texts: LimitTexts = NO_LIMIT_TEXTS;

  override render() {
    const { worked, texts } = this;
    if (worked === null) return nothing;
    const { fittingCircles } = worked.dimensions;
    return html`${fittingCircles.length < 2 ? nothing : html`<gh-select-list label=${words.circle.label} columns="2" .value=${texts.circle}
        .options=${fittingCircles.map(({ nominalMm, inch }) => ({ value: typedFigure(nominalMm), text: words.circle.option(showFigure(nominalMm), inch ?? '') }))} @option-chosen=${({ detail }: Given) => this.#put({ circle: detail.value })}></gh-select-list>`}
      ${this.#given(worked)}
      <div class="fields"><gh-select-list label=${words.measured.label} columns="2" .value=${texts.when} .options=${[{ value: 'beforeCoating', text: words.measured.before }, { value: 'afterCoating', text: words.measured.after }]}
          @option-chosen=${({ detail }: Given) => this.#put({ when: detail.value === 'afterCoating' ? 'afterCoating' : 'beforeCoating' })}></gh-select-list>
        ${texts.when === 'beforeCoating' ? nothing : html`<gh-field label=${words.measured.coating} unit="µm" entry="decimal" max-length="6" .value=${texts.coating} error=${coatingOf(texts) === null ? words.measured.wrong : ''} @field-input=${({ detail }: Given) => this.#put({ coating: detail.value })}></gh-field>`}</div>
      <p class="soft small">${words.measured.note}</p>`;
  }

  #given({ asked, limits }: WorkedDesignation) {
    if (asked.length === 0) return nothing;
    const { texts } = this;
    return html`<h3>${words.given.heading}</h3><p>${words.given.next}</p><div class="fields">${asked.map((size) => {
      const { tolerance } = limits[size];
      const [why, remembered] = tolerance.kind === 'notInHand' ? [designationWords.notInHand[tolerance.why], tolerance.rememberedMm] : ['', null];
      const hint = `${why} ${remembered === null ? '' : words.given.remembered(showFigure(remembered))}`.trim();
      return html`<gh-field label=${words.given.ask(designationWords.sizes[size])} unit="mm" entry="decimal" max-length="8" hint=${hint} .value=${texts.given[size]} error=${texts.given[size] !== '' && givenOf(texts, size) === null ? words.given.wrong : ''}
        @field-input=${({ detail }: Given) => this.#put({ given: { ...texts.given, [size]: detail.value } })}></gh-field>`;
    })}</div>`;
  }

  #put(changes: Partial<LimitTexts>): void {
    tell(this, 'texts-changed', { ...this.texts, ...changes });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-limit-choices': GhLimitChoices;
  }
}
