import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { planWritingWords } from '../../shared/words/plan-writing.en.ts';
import { partStyles } from '../parts/part-styles.ts';
import type { PlanDifference } from './write/plan-differences.ts';

const words = planWritingWords.change;

/** What differs between two versions of a plan, one a line: where, what it was, what it is. */
@customElement('gh-plan-changes')
export class GhPlanChanges extends LitElement {
  static override styles = [partStyles, css`
    ul { list-style: none; border-block: var(--rule-strong) solid var(--line-strong); background: var(--slip); }
    li { display: grid; grid-template-columns: minmax(0, 2fr) minmax(0, 3fr); gap: 0.1em 1em; padding: 0.45em var(--pad); border-block-end: var(--rule) solid var(--line); }
    li:last-child { border-block-end: 0; }
    .where { font-weight: 650; overflow-wrap: anywhere; }
    .sides { overflow-wrap: anywhere; }
    del { color: var(--ink-soft); text-decoration-thickness: 1px; }
    ins { text-decoration: none; font-weight: 650; }
    .tag { border: var(--rule) solid currentColor; padding: 0 0.4em; margin-inline-end: 0.5em; font-size: var(--text-small); }
    @media (max-width: 40rem) { li { grid-template-columns: minmax(0, 1fr); } }
  `];
  @property({ attribute: false }) changes: readonly PlanDifference[] = [];
  @property() empty = '';

  override render() {
    if (this.changes.length === 0) return html`<p>${this.empty}</p>`;
    return html`<ul>${this.changes.map((change) => html`<li><span class="where">${change.where}</span><span class="sides">${sides(change)}</span></li>`)}</ul>`;
  }
}

function sides({ what, from, to }: PlanDifference) {
  if (what === 'changed') return html`<del>${from}</del> → <ins>${to}</ins>`;
  return html`<span class="tag">${words[what]}</span>${what === 'moved' ? html`${from} → <ins>${to}</ins>` : what === 'added' ? html`<ins>${to}</ins>` : from === '' ? nothing : html`<del>${from}</del>`}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-changes': GhPlanChanges;
  }
}
