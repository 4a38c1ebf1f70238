import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { readPositions } from '../../../shared/carbide/index.ts';
import type { ReadPosition } from '../../../shared/carbide/index.ts';
import { designationDeskWords } from '../../../shared/words/designation-desk.en.ts';
import { designationWords, meaningOf, problemText } from '../../../shared/words/designation.en.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { pageFormat } from '../rule-text.ts';

const words = designationDeskWords.positions;

/** A designation position by position as it is typed: the signs, what they say, and under each what cannot be. */
@customElement('gh-designation-positions')
export class GhDesignationPositions extends LitElement {
  static override styles = [partStyles, css`
    ol { list-style: none; background: var(--slip); border-block: var(--rule-strong) solid var(--line-strong); }
    li { display: grid; grid-template-columns: 1.6em 4.2em minmax(7em, 10em) minmax(0, 1fr); gap: 0 0.7em; align-items: baseline; padding: 0.3em var(--pad); border-block-end: var(--rule) solid var(--line); }
    li:last-child { border-block-end: 0; }
    .at { color: var(--ink-soft); font-size: var(--text-small); }
    .signs { font-family: var(--face-figures); font-weight: 700; font-size: var(--text-large); line-height: 1.15; overflow-wrap: anywhere; }
    .what { color: var(--ink-soft); }
    .empty .signs { color: var(--ink-soft); font-weight: 400; }
    .wrong { box-shadow: inset 0.4em 0 0 var(--bad); }
    .wrong .signs { color: var(--bad); }
    .why { grid-column: 2 / -1; color: var(--bad); font-weight: 650; }
    @media (width < 560px) { li { grid-template-columns: 1.6em 4.2em minmax(0, 1fr); } .says { grid-column: 2 / -1; } }
  `];
  @property() text = '';

  override render() {
    return html`<ol aria-label=${words.listLabel}>${readPositions(this.text).map((position) => this.#row(position))}</ol>`;
  }

  #row({ position, text, meaning, problems }: ReadPosition) {
    // What is merely not typed yet is no mistake.
    const wrong = problems.filter(({ fault }) => fault !== 'missing' && fault !== 'incomplete');
    return html`<li class=${wrong.length > 0 ? 'wrong' : text === '' ? 'empty' : ''}>
      <span class="at">${position}</span><span class="signs">${text === '' ? '–' : text}</span><span class="what">${designationWords.positions[position]}</span>
      <span class="says">${meaning === null ? (text === '' ? html`<span class="what">${words.nothing}</span>` : '') : meaningOf(meaning, pageFormat())}</span>
      ${wrong.map((problem) => html`<span class="why">${problemText(problem, pageFormat())}</span>`)}
    </li>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-designation-positions': GhDesignationPositions;
  }
}
