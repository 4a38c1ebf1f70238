import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './gh-state-mark.ts';
import { partStyles } from './part-styles.ts';
import type { StateName } from './state-name.ts';

/** One fact of a traveller's head: its printed label and what is written there. */
export interface HeadFact {
  readonly label: string;
  readonly text: string;
}

/**
 * The head of a traveller: the eyelet it is tied through, the subject's name, its standing, and the facts written at opening.
 * @slot - keys of the whole traveller
 */
@customElement('gh-traveller-head')
export class GhTravellerHead extends LitElement {
  static override styles = [
    partStyles,
    css`
      :host { container-type: inline-size; }
      .head {
        display: grid;
        grid-template-columns: auto minmax(0, 1fr) auto;
        position: relative;
        isolation: isolate;
        border-block-end: 4px double var(--line-strong);
      }
      /* A tag's cut corners, ruled: the line's colour beneath, the paper a rule smaller above. */
      .head::before,
      .head::after {
        content: '';
        position: absolute;
        inset: 0;
        z-index: -2;
        background: var(--line-strong);
        clip-path: polygon(0 22px, 22px 0, calc(100% - 22px) 0, 100% 22px, 100% 100%, 0 100%);
      }
      .head::after {
        inset: var(--rule) var(--rule) 0;
        z-index: -1;
        background: var(--slip);
      }
      .tie { inline-size: 74px; block-size: 78px; display: block; }
      .paper { fill: var(--slip-under); stroke: var(--line-strong); stroke-width: 1.5; }
      .hole { fill: var(--tray-deep); stroke: var(--line-strong); stroke-width: 1.5; }
      .string { fill: none; stroke: var(--ink-soft); stroke-width: 2.4; stroke-linecap: round; }
      .name { padding-block: var(--pad) calc(0.6 * var(--pad)); min-inline-size: 0; }
      .subject { font-family: var(--face-figures); font-size: calc(1.5 * var(--text-large)); font-weight: 700; line-height: 1.05; overflow-wrap: anywhere; }
      .what { font-size: var(--text-large); line-height: 1.2; }
      .standing { align-self: center; padding-inline: var(--pad) calc(22px + var(--pad)); font-size: var(--text-large); }
      dl { grid-column: 1 / -1; display: flex; flex-wrap: wrap; margin: 0; border-block-start: var(--rule) solid var(--line-strong); }
      dl > div { flex: 1 1 auto; padding: 0.25em var(--pad); border-inline-start: var(--rule) solid var(--line-strong); margin-inline-start: -1px; }
      dt { line-height: 1.2; }
      dd { margin: 0; font-family: var(--face-figures); font-weight: 600; overflow-wrap: anywhere; }
      .keys { grid-column: 1 / -1; display: flex; flex-wrap: wrap; gap: var(--gap); }
      ::slotted(*) { margin: calc(0.7 * var(--pad)) 0 calc(0.7 * var(--pad)) var(--pad); }
      @container (max-width: 820px) { .standing { grid-column: 2 / -1; padding: 0 0 var(--pad); } }
    `,
  ];
  @property() subject = '';
  @property() what = '';
  @property() state: StateName = 'waiting';
  @property({ attribute: 'state-word' }) stateWord = '';
  @property({ type: Number, attribute: 'heading-level' }) headingLevel = 1;
  @property({ attribute: false }) facts: readonly HeadFact[] = [];

  override render() {
    return html`<div class="head">
      <svg class="tie" viewBox="0 0 74 78" aria-hidden="true">
        <circle class="paper" cx="40" cy="40" r="17" /><circle class="hole" cx="40" cy="40" r="7" />
        <path class="string" d="M40 40C30 30 34 12 24 -2M40 40C46 24 38 16 44 -2" />
      </svg>
      <div class="name">
        <div class="subject" role="heading" aria-level=${this.headingLevel}>${this.subject}</div>
        <p class="what">${this.what}</p>
      </div>
      <div class="standing"><gh-state-mark state=${this.state} word=${this.stateWord} boxed></gh-state-mark></div>
      <dl>
        ${this.facts.map(({ label, text }) => html`<div><dt class="printed">${label}</dt><dd>${text}</dd></div>`)}
      </dl>
      <div class="keys"><slot></slot></div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-traveller-head': GhTravellerHead;
  }
}
