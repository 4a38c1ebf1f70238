import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { planWhyWords as words } from '../../../shared/words/plan-why.en.ts';
import '../../parts/gh-sheet.ts';
import { partStyles } from '../../parts/part-styles.ts';
import type { Why } from './why.ts';

/**
 * Why a number is what it is, on a sheet over the page.
 * @fires sheet-closed - when it is put away
 */
@customElement('gh-why-sheet')
export class GhWhySheet extends LitElement {
  static override styles = [partStyles, css`
    .answer { font-family: var(--face-figures); font-size: var(--text-demand); font-weight: 700; line-height: 1.2; padding-block-end: 0.4em; overflow-wrap: anywhere; }
    dl { margin: 0; display: grid; grid-template-columns: max-content minmax(0, 1fr); border-block-start: var(--rule-strong) solid var(--line-strong); }
    dt, dd { margin: 0; padding: 0.4em 0; border-block-end: var(--rule) solid var(--line); }
    dt { font-size: var(--text-small); color: var(--ink-soft); padding-inline-end: 1.4em; padding-block-start: 0.55em; }
    .formula { white-space: pre-line; font-family: var(--face-figures); background: var(--slip-under); padding-inline: 0.6em; overflow-wrap: anywhere; }
    .tag { display: inline-block; font-size: var(--text-small); font-weight: 650; border: var(--rule) solid currentColor; border-radius: var(--corner); padding: 0 0.45em; white-space: nowrap; }
    .tag.memory, .tag.practice { color: var(--held); border-style: dashed; border-width: 2px; }
    table { border-collapse: collapse; margin-block: 1em 0.2em; inline-size: 100%; }
    caption { text-align: start; font-weight: 700; padding-block-end: 0.3em; }
    th, td { text-align: start; font-weight: 400; padding: 0.3em 0.8em; border-block-end: var(--rule) solid var(--line); font-family: var(--face-figures); }
    thead th { font-size: var(--text-small); font-family: var(--face); color: var(--ink-soft); border-block-end: 3px double var(--line-strong); }
    .this > * { font-weight: 700; border-block: var(--rule-strong) solid var(--ink); }
    .way { font-family: var(--face); }
    ul { list-style: none; }
    li + li { margin-block-start: 0.3em; }
    @media (width < 560px) { dl { grid-template-columns: minmax(0, 1fr); } dt { border: 0; padding-block-end: 0; } }
  `];
  @property({ attribute: false }) why: Why | null = null;
  @property() heading = '';
  @property() shown = '';

  override render() {
    const { why } = this;
    return html`<gh-sheet ?open=${why !== null} heading=${this.heading} close-word=${words.close}>${why === null ? nothing : html`<p class="answer">${this.shown}</p>
      <dl>${why.lines.map(({ label, text, formula }) => html`<dt>${label}</dt><dd class=${formula === true ? 'formula' : ''}>${text}</dd>`)}
        <dt>${words.labels.source}</dt><dd><ul>${why.sources.map(({ text, tag }) => html`<li>${text} <span class="tag ${tag}">${words.tags[tag]}</span></li>`)}</ul></dd></dl>
      ${this.#excerpt(why)}`}</gh-sheet>`;
  }

  #excerpt({ excerpt }: Why) {
    if (excerpt === null) return nothing;
    const heads = words.excerpt;
    return html`<table><caption>${excerpt.caption}</caption>
      <thead><tr><th scope="col">${heads.letter}</th><th scope="col">${heads.size}</th><th scope="col">${heads.cell}</th><th scope="col">${heads.way}</th></tr></thead>
      <tbody>${excerpt.rows.map(({ letter, size, cell, way, marked }) => html`<tr class=${marked ? 'this' : ''}><th scope="row">${letter}</th><td>${size}</td><td>${cell}</td><td class="way">${way}</td></tr>`)}</tbody></table>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-why-sheet': GhWhySheet;
  }
}
