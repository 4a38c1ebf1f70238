import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { POWDER_FACTORS, pressTarget, readFactors, sinteredSizes } from '../../../shared/traveller/index.ts';
import type { Batch, FactorsRead, PowderFactors, PressTarget, ProductCard } from '../../../shared/traveller/index.ts';
import { powderToPressWords as words } from '../../../shared/words/powder-to-press.en.ts';
import { askedNotice } from '../../desk/asked-notice.ts';
import { Asked } from '../../desk/asked.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-notice.ts';
import { partStyles } from '../../parts/part-styles.ts';
import '../../plans/compare/gh-why-sheet.ts';
import { catalogue, format } from '../speak.ts';
import { factorTable } from './factor-table.ts';
import { readPowderLine, type PowderLine } from './powder-line.ts';
import { whyOfTarget } from './press-why.ts';

/** What a powder batch gives pressing: its factors by direction, and from them the targets of every product of its grade at once. */
@customElement('gh-powder-gives')
export class GhPowderGives extends LitElement {
  static override styles = [partStyles, css`
    :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--gap); }
    .room { overflow-x: auto; background: var(--slip); border: var(--rule) solid var(--line); }
    table { border-collapse: collapse; inline-size: 100%; }
    caption { text-align: start; font-weight: 700; padding: 0.4em 0.5em; }
    th, td { text-align: start; padding: 0.3em 0.5em; border-block-end: var(--rule) solid var(--line); font-weight: 400; vertical-align: middle; }
    thead th { color: var(--ink-soft); font-size: var(--text-small); }
    td.number { font-family: var(--face-figures); text-align: end; white-space: nowrap; }
    small { display: block; color: var(--ink-soft); }
    thead th.number { text-align: end; }
    td.main { font-weight: 700; font-size: var(--text-large); }
  `];
  @property({ attribute: false }) batch: Batch | null = null;
  @state() private asking: { readonly product: ProductCard; readonly press: PressTarget } | null = null;
  readonly #line = new Asked<PowderLine>(this, {
    key: () => (this.batch === null ? null : `${this.batch.stream} ${this.batch.version}`), read: async () => (this.batch === null ? { parts: new Map(), products: [] } : readPowderLine(this.batch)), topics: ['catalogue', 'bench'],
  });

  override render() {
    const { batch } = this;
    const line = this.#line.value;
    if (batch === null) return nothing;
    if (line === null) return askedNotice(this.#line);
    const read = factorsHere(batch, line);
    if ('missing' in read) {
      const { happened, next } = words.missing(read.missing.batch, catalogue().labels.factors[read.missing.factor]);
      return html`<gh-notice kind="refusal" .happened=${happened} .next=${next}></gh-notice>`;
    }
    const { factors } = read;
    return html`<div class="room">${factorTable(words.gives, POWDER_FACTORS, factors)}</div>
      ${factors.heightShrinkagePercent === undefined ? html`<p>${words.even}</p>` : nothing}
      ${line.products.length === 0 ? html`<p>${words.noProduct}</p>` : this.#targets(batch, line.products, factors)}`;
  }

  #targets(batch: Batch, products: readonly ProductCard[], factors: PowderFactors) {
    const { targetColumns: columns } = words;
    const heads = [columns.weight, columns.height, columns.die];
    return html`<div class="room"><table><caption>${words.targets(batch.grade.name)}</caption>
      <thead><tr><th scope="col">${columns.product}</th>${heads.map((head) => html`<th scope="col" class="number">${head}</th>`)}<th scope="col"><span class="unseen">${columns.how}</span></th></tr></thead>
      <tbody>${products.map((product) => this.#target(product, pressTarget(sinteredSizes(product), factors, batch)))}</tbody></table></div>
      <gh-why-sheet .heading=${words.why.heading(this.asking?.product.designation ?? '')} .shown=${`${format().number(this.asking?.press.weightG ?? 0, 3)} g`} .why=${this.asking === null ? null : whyOfTarget(this.asking.press)} @sheet-closed=${() => (this.asking = null)}></gh-why-sheet>`;
  }

  #target(product: ProductCard, press: PressTarget) {
    const { number } = format();
    const limits = press.greenThicknessLimits;
    return html`<tr><th scope="row">${product.designation}<small>${product.id}</small></th>
      <td class="number main">${number(press.weightG, 3)} g</td>
      <td class="number">${number(press.greenThicknessMm, 3)} mm${limits === undefined ? nothing : html`<small>${words.target.limits(number(limits.lowerMm, 3), number(limits.upperMm, 3))}</small>`}</td>
      <td class="number">${press.dieMm === undefined ? words.notStated : `${number(press.dieMm, 3)} mm`}${press.dieFactor === undefined ? nothing : html`<small>${words.factor(number(press.dieFactor, 4))}</small>`}</td>
      <td><gh-button @click=${() => (this.asking = { product, press })}>${words.how}<span class="unseen"> ${product.designation}</span></gh-button></td></tr>`;
  }
}

function factorsHere(batch: Batch, { parts }: PowderLine): FactorsRead {
  // A part that could not be fetched has told nothing: it is named as the one that lacks the factor.
  return readFactors(batch, (id) => parts.get(id) ?? { ...batch, id, gates: [], blendedFrom: [] });
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-powder-gives': GhPowderGives;
  }
}
