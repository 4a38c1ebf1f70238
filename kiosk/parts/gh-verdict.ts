import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import './gh-state-mark.ts';
import { partStyles } from './part-styles.ts';
import { toneOf, type StateName } from './state-name.ts';

/**
 * The one strong word, with its mark and the sentence it rests on; new verdicts are announced.
 * @slot - detail under the rule
 */
@customElement('gh-verdict')
export class GhVerdict extends LitElement {
  static override styles = [
    partStyles,
    css`
      .stamp {
        display: grid;
        grid-template-columns: auto 1fr;
        background: var(--slip);
        border: calc(2 * var(--rule-strong)) solid var(--tone);
        border-radius: var(--corner);
        outline: var(--rule) solid var(--tone);
        outline-offset: 3px;
        margin: 5px;
      }
      .good { --tone: var(--good); --ground: var(--good-ground); --on: var(--on-good); }
      .bad { --tone: var(--bad); --ground: var(--bad-ground); --on: var(--on-bad); }
      .held { --tone: var(--held); --ground: var(--held-ground); --on: var(--on-held); }
      .link { --tone: var(--link); --ground: var(--link-ground); --on: var(--on-link); }
      .calm { --tone: var(--calm); --ground: var(--calm-ground); --on: var(--on-calm); }
      .sign {
        display: grid;
        place-items: center;
        padding: var(--pad);
        background: var(--ground);
        --good: var(--on); --bad: var(--on); --held: var(--on); --link: var(--on); --calm: var(--on);
        font-size: calc(0.62 * var(--text-verdict));
      }
      .words {
        padding: calc(0.6 * var(--pad)) calc(1.4 * var(--pad));
        min-inline-size: 0;
      }
      .word {
        display: block;
        font-size: var(--text-verdict);
        font-weight: 750;
        line-height: 1.08;
        letter-spacing: -0.015em;
        color: var(--tone);
        hyphens: auto;
        overflow-wrap: anywhere;
      }
      .sentence {
        display: block;
        font-size: var(--text-large);
        line-height: 1.25;
        padding-block: 0.15em 0.2em;
        text-wrap: pretty;
      }
      .detail {
        display: block;
      }
      ::slotted(*) {
        border-block-start: 3px double var(--line-strong);
        margin-block-start: 0.4em;
        padding-block: 0.5em;
      }
      @media print {
        .sign { background: none; --on: #000; border-inline-end: 1px solid #000; }
      }
    `,
  ];
  @property({ reflect: true }) state: StateName = 'waiting';
  @property() word = '';
  @property() sentence = '';
  @property({ type: Boolean, reflect: true }) quiet = false;

  override render() {
    const { word, sentence } = this;
    const given = word !== '';
    const words = given
      ? html`<span class="word">${word}<span class="unseen">: </span></span><span class="sentence">${sentence}</span>`
      : nothing;
    return html`<div class=${given ? `stamp ${toneOf[this.state]}` : ''}>
      ${given ? html`<div class="sign"><gh-state-mark state=${this.state} size="large"></gh-state-mark></div>` : nothing}
      <div class=${given ? 'words' : ''}>
        <div role=${this.quiet ? nothing : 'status'}>${words}</div>
        <div class="detail" ?hidden=${!given}><slot></slot></div>
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-verdict': GhVerdict;
  }
}
