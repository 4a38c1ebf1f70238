import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { formatDesignation, readDesignation } from '../../../shared/carbide/index.ts';
import { designationDeskWords as words } from '../../../shared/words/designation-desk.en.ts';
import { designationWords } from '../../../shared/words/designation.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { Scans } from '../../desk/scans.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-state-mark.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { goTo } from '../../shell/navigation.ts';
import './gh-designation-plan.ts';
import './gh-designation-positions.ts';
import './gh-designation-sizes.ts';
import './gh-insert-drawing.ts';
import './gh-limit-choices.ts';
import { NO_LIMIT_TEXTS, workedDesignation } from './limit-texts.ts';
import type { LimitTexts, WorkedDesignation } from './limit-texts.ts';

/** A product from its designation: typed or scanned, explained position by position, with dimensions, limits, a drawing and a plan. */
@customElement('gh-designation')
export class GhDesignation extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: grid; gap: calc(2 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
    .two { display: grid; gap: calc(1.6 * var(--pad)); grid-template-columns: minmax(0, 5fr) minmax(0, 6fr); align-items: start; }
    .side { display: grid; gap: var(--pad); grid-template-columns: minmax(0, 1fr); }
    .entry { --target: 52px; font-size: var(--text-large); }
    @media (width < 900px) { .two { grid-template-columns: minmax(0, 1fr); } }
  `];
  /** As the address has it. */
  @property() text = '';
  @state() private choices: LimitTexts = NO_LIMIT_TEXTS;
  /** Kept between renderings, so that the plan below does not begin anew with every one. */
  #worked: WorkedDesignation | null = null;

  protected readonly scans = new Scans(this, (event) => this.#scanned(event));

  protected override willUpdate(changed: PropertyValues): void {
    // Limits given for one designation are not those of the next.
    if (changed.has('text') && changed.get('text') !== undefined) this.choices = { ...NO_LIMIT_TEXTS, when: this.choices.when, coating: this.choices.coating };
    const read = readDesignation(this.text);
    this.#worked = read.ok ? workedDesignation(read.designation, this.choices) : null;
  }

  override render() {
    const worked = this.#worked;
    return html`<div><h2>${words.title}</h2><p class="soft">${words.lead}</p></div>
      <div class="two">
        <div class="side"><gh-field class="entry" label=${words.designation} hint=${words.hint} max-length="60" .value=${this.text} @field-input=${({ detail }: CustomEvent<{ value: string }>) => this.#go(detail.value)}></gh-field>
          ${this.#standing()}<gh-designation-positions text=${this.text}></gh-designation-positions></div>
        <div class="side">${worked === null ? nothing : html`<gh-insert-drawing .designation=${worked.designation} .circle=${worked.circle}></gh-insert-drawing>
          <gh-limit-choices .worked=${worked} .texts=${this.choices} @texts-changed=${({ detail }: CustomEvent<LimitTexts>) => (this.choices = detail)}></gh-limit-choices>`}</div>
      </div>
      ${worked === null ? nothing : html`<gh-designation-sizes .worked=${worked}></gh-designation-sizes>
        <p class="soft small">${words.tables(designationWords.edition(worked.designation.tables.standard, worked.designation.tables.edition))}</p><gh-designation-plan class="screen-only" .worked=${worked}></gh-designation-plan>`}`;
  }

  #standing() {
    const read = readDesignation(this.text);
    const wrong = read.ok ? 0 : new Set(read.problems.filter(({ fault }) => fault !== 'missing' && fault !== 'incomplete').map(({ position }) => position)).size;
    const [mark, word] = read.ok ? (['accepted', words.standing.read(formatDesignation(read.designation))] as const) : wrong > 0 ? (['refused', words.standing.problems(wrong)] as const) : (['waiting', this.text.trim() === '' ? words.standing.empty : words.standing.unfinished] as const);
    return html`<div role="status"><gh-state-mark state=${mark} word=${word}></gh-state-mark></div>`;
  }

  /** A scanned designation is taken; any other code goes its usual way. */
  readonly #scanned = (event: Event): void => {
    if (!(event instanceof CustomEvent)) return;
    const text = String((event.detail as { text: string }).text);
    if (!readDesignation(text).ok) return;
    event.preventDefault();
    this.#go(text);
  };

  #go(text: string): void {
    goTo(text.trim() === '' ? '/plans/designation' : `/plans/designation/${encodeURIComponent(text)}`, 'replace');
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-designation': GhDesignation;
  }
}
