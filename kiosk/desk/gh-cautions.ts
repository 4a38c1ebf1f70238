import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { words as catalogueOf } from '../../shared/words/index.ts';
import '../parts/gh-caution.ts';
import { partStyles } from '../parts/part-styles.ts';
import { deskWords } from './words.ts';

/** More than this at a step and none is read (common practice, no source). */
const MOST = 2;
const catalogue = catalogueOf('en');

/** The cautions of a step: at most two stand open, the rest wait behind a line. Nothing is to be clicked away. */
@customElement('gh-cautions')
export class GhCautions extends LitElement {
  static override styles = [partStyles, css`
    :host { display: grid; }
    gh-caution + gh-caution { margin-block-start: calc(-1 * var(--rule-strong)); }
    summary { min-block-size: var(--target); display: list-item; list-style-position: inside; align-content: center; padding-inline: var(--pad); cursor: pointer; color: var(--ink-soft); }
    summary:focus-visible { outline: 3px solid var(--focus); outline-offset: -3px; }
    details > p { padding: 0 var(--pad) 0.35em; color: var(--ink-soft); }
  `];
  @property({ attribute: false }) cautions: readonly { readonly caution: string; readonly text: string | null }[] = [];

  override render() {
    const [open, folded] = [this.cautions.slice(0, MOST), this.cautions.slice(MOST)];
    return html`${open.map(line)} ${folded.length === 0 ? nothing : html`<details><summary>${deskWords.moreCautions(folded.length)}</summary><p>${catalogue.cautionLead}</p>${folded.map(line)}</details>`}`;
  }
}

function line(shown: { readonly caution: string; readonly text: string | null }) {
  const { word, text, rule } = catalogue.caution(shown);
  return html`<gh-caution .word=${word} .text=${text} .rule=${rule}></gh-caution>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-cautions': GhCautions;
  }
}
