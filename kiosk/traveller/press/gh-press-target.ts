import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Lot } from '../../../shared/traveller/index.ts';
import { powderToPressWords as words } from '../../../shared/words/powder-to-press.en.ts';
import '../../parts/gh-button.ts';
import { partStyles } from '../../parts/part-styles.ts';
import '../../plans/compare/gh-why-sheet.ts';
import { format } from '../speak.ts';
import { whyOfTarget } from './press-why.ts';

/** What the press is set to for a lot: weight, green height with its limits, die factor, the powder it comes from; and how it comes about. */
@customElement('gh-press-target')
export class GhPressTarget extends LitElement {
  static override styles = [partStyles, css`
    .line { display: flex; flex-wrap: wrap; align-items: center; gap: 0.1em 1.3em; background: var(--slip); border: var(--rule) solid var(--line-strong); padding: 0.15em var(--pad); }
    dl { display: flex; flex: 1 1 20rem; flex-wrap: wrap; gap: 0.1em 1.3em; margin: 0; }
    dt { font-size: var(--text-small); color: var(--ink-soft); }
    dd { margin: 0; font-family: var(--face-figures); font-weight: 700; font-size: var(--text-large); line-height: 1.15; }
    dd small { font-weight: 400; font-size: var(--text); }
    .outdated { background: var(--held-ground); color: var(--on-held); padding: 0.4em var(--pad); font-weight: 650; }
  `];
  @property({ attribute: false }) lot: Lot | null = null;
  /** Only the key that asks how; the figures stand elsewhere on the screen. */
  @property({ type: Boolean }) compact = false;
  @state() private asking = false;

  override render() {
    const { lot } = this;
    if (lot === null) return nothing;
    const { press, pressOutdated, product } = lot;
    const { number } = format();
    const limits = press.greenThicknessLimits;
    const key = html`<gh-button @click=${() => (this.asking = true)}>${words.how}<span class="unseen"> ${words.target.label}</span></gh-button>`;
    return html`${this.compact ? key : html`<div class="line"><dl aria-label=${words.target.label}>
        <div><dt>${words.target.weight}</dt><dd>${number(press.weightG, 3)} g</dd></div>
        <div><dt>${words.target.height}</dt><dd>${number(press.greenThicknessMm, 3)} mm ${limits === undefined ? nothing : html`<small>${words.target.limits(number(limits.lowerMm, 3), number(limits.upperMm, 3))}</small>`}</dd></div>
        ${press.dieFactor === undefined ? nothing : html`<div><dt>${words.target.dieFactor}</dt><dd>${number(press.dieFactor, 4)} ${press.dieMm === undefined ? nothing : html`<small>${words.target.die(number(press.dieMm, 3))}</small>`}</dd></div>`}
      </dl>${key}</div>`}
      ${pressOutdated === null ? nothing : html`<p class="outdated">${words.target.outdated(number(pressOutdated.weightG, 3))}</p>`}
      <gh-why-sheet .heading=${words.why.heading(product.designation)} .shown=${`${number(press.weightG, 3)} g`} .why=${this.asking ? whyOfTarget(press) : null} @sheet-closed=${() => (this.asking = false)}></gh-why-sheet>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-press-target': GhPressTarget;
  }
}
