import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './gh-state-mark.ts';
import { partStyles } from './part-styles.ts';
import type { StateName } from './state-name.ts';

/** One subject waiting at a bench: a whole-row link to its traveller. */
@customElement('gh-bench-row')
export class GhBenchRow extends LitElement {
  static override shadowRootOptions: ShadowRootInit = { ...LitElement.shadowRootOptions, delegatesFocus: true };
  static override styles = [
    partStyles,
    css`
      :host {
        container-type: inline-size;
      }
      a {
        display: grid;
        grid-template-columns: 26px 8.2em minmax(0, 1fr) minmax(0, 1.2fr) minmax(0, 0.9fr) 1.4em;
        align-items: center;
        column-gap: var(--pad);
        min-block-size: var(--target-primary);
        color: var(--ink);
        background: var(--slip);
        text-decoration: none;
        border-block-end: var(--rule) solid var(--line-strong);
        padding-inline-end: var(--pad);
      }
      a:active { background: var(--slip-under); }
      a:focus-visible { outline-offset: -4px; }
      .edge {
        align-self: stretch;
        border-inline-end: var(--rule) solid var(--line);
        background: radial-gradient(circle at 50% 50%, var(--tray-deep) 0 4.4px, var(--line-strong) 4.5px 5.3px, transparent 5.6px) center top / 26px 22px
          round;
      }
      .lot { font-family: var(--face-figures); font-size: var(--text-large); font-weight: 700; overflow-wrap: anywhere; }
      .pair { display: grid; min-inline-size: 0; }
      .pair > * { overflow-wrap: anywhere; }
      .demand { font-weight: 650; }
      .soft { color: var(--ink-soft); font-size: var(--text-small); }
      .due { font-size: var(--text-small); }
      :host([late]) .due { color: var(--bad); font-weight: 700; text-decoration: underline 2px; text-underline-offset: 0.2em; }
      .go { inline-size: 0.9em; fill: none; stroke: var(--ink-soft); stroke-width: 3; justify-self: end; }
      @container (max-width: 900px) {
        a {
          grid-template-columns: 26px minmax(0, 1.25fr) minmax(0, 1fr) 1.4em;
          grid-template-areas: 'edge lot state go' 'edge product demand go';
          padding-block: calc(0.6 * var(--pad));
          row-gap: 0.2em;
        }
        .edge { grid-area: edge; margin-block: calc(-0.6 * var(--pad)); }
        .lot { grid-area: lot; }
        .product { grid-area: product; align-self: start; }
        .gate { grid-area: demand; align-self: start; }
        .state { grid-area: state; }
        .go { grid-area: go; }
      }
    `,
  ];
  @property() href = '';
  @property() lot = '';
  @property() product = '';
  @property() pieces = '';
  @property() gate = '';
  @property() demand = '';
  @property() due = '';
  @property({ reflect: true }) state: StateName = 'waiting';
  @property({ attribute: 'state-word' }) stateWord = '';
  @property({ type: Boolean, reflect: true }) late = false;

  override connectedCallback(): void {
    super.connectedCallback();
    this.setAttribute('role', 'listitem');
  }

  override render() {
    const { pieces, demand, due } = this;
    return html`<a href=${this.href}>
      <span class="edge" aria-hidden="true"></span>
      <span class="lot">${this.lot} </span>
      <span class="pair product"><span class="figure">${this.product} </span>${pieces === '' ? nothing : html`<span class="soft">${pieces} </span>`}</span>
      <span class="pair gate"><span class="soft">${this.gate} </span>${demand === '' ? nothing : html`<span class="demand">${demand} </span>`}</span>
      <span class="pair state"
        ><gh-state-mark state=${this.state} word=${this.stateWord}></gh-state-mark> ${due === '' ? nothing : html`<span class="due">${due}</span>`}</span
      >
      <svg class="go" viewBox="0 0 24 24" aria-hidden="true"><path d="m8 3 9 9-9 9" /></svg>
    </a>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-bench-row': GhBenchRow;
  }
}
