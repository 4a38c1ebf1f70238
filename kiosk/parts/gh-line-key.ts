import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { LineLetter } from './line-letters.ts';
import { lineSample, lineStyles } from './line-marks.ts';
import { partStyles } from './part-styles.ts';

/** The letter of a line with a piece of it as drawn in the chart, for legends and heads. Readers hear the letter. */
@customElement('gh-line-key')
export class GhLineKey extends LitElement {
  static override styles = [
    partStyles,
    lineStyles,
    css`
      :host { display: inline-flex; align-items: center; gap: 0.45em; font: inherit; line-height: 1; vertical-align: middle; }
      b { display: grid; place-items: center; min-inline-size: 1.5em; block-size: 1.5em; border: var(--rule-strong) solid currentColor; border-radius: var(--corner); font-family: var(--face); font-weight: 700; }
      svg { inline-size: 44px; block-size: 16px; flex: none; }
    `,
  ];
  @property() letter: LineLetter = 'A';

  override render() {
    return html`<b>${this.letter}</b><svg viewBox="0 0 44 16" aria-hidden="true">${lineSample(this.letter)}</svg>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-line-key': GhLineKey;
  }
}
