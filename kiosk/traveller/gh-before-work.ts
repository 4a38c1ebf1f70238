import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { severityFor } from '../../shared/traveller/index.ts';
import type { GateRecord, Lot } from '../../shared/traveller/index.ts';
import type { SkipRow, SwitchingRow } from '../../shared/wire/views.ts';
import { labelOf } from '../../shared/words/words-for.ts';
import { Asked } from '../desk/asked.ts';
import { link } from '../link/index.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { catalogue, format, travellerWords } from './speak.ts';

/** How hard the gate will be inspected, said before it is started: what is off normal with the lots that caused it, and what skip-lot has in store. Silent where all is normal. */
@customElement('gh-before-work')
export class GhBeforeWork extends LitElement {
  static override styles = [partStyles, css`
    ul { list-style: none; margin: 0; padding: 0.6em var(--pad); background: var(--slip); border: var(--rule) solid var(--line-strong); display: grid; gap: 0.5em; }
    li { display: flex; flex-wrap: wrap; align-items: center; gap: 0.3em 0.8em; }
  `];
  @property({ attribute: false }) lot: Lot | null = null;
  @property({ attribute: false }) gate: GateRecord | null = null;
  readonly #standing = new Asked<{ readonly rows: readonly SwitchingRow[]; readonly skips: readonly SkipRow[] }>(this, { key: () => (this.lot === null ? null : '/api/switching'), read: (path) => link.ask(path), topics: ['switching'] });

  override render() {
    const { lot, gate } = this;
    const { value } = this.#standing;
    if (lot === null || gate === null || value === null) return nothing;
    const here = ({ product, gate: at }: { readonly product: string; readonly gate: string }): boolean => product === lot.product.id && at === gate.id;
    const strict = value.rows.filter(here).map((row) => ({ ...row, severity: severityFor(row.severity, gate.original) })).filter(({ severity }) => severity !== 'normal');
    const skips = gate.original ? value.skips.filter((row) => here(row) && row.skipping) : [];
    if (strict.length + skips.length === 0) return nothing;
    return html`<ul>${strict.map((row) => this.#switched(row))}${skips.map(({ oneIn, lots }) => html`<li>${travellerWords().open.mayPass(oneIn, format().list(lots))}</li>`)}</ul>`;
  }

  #switched({ severity, class: each, characteristic, movedWhy, movedLots }: SwitchingRow) {
    const words = travellerWords().open;
    const { labels } = catalogue();
    const what = each === null ? characteristic : labelOf(labels.findingClasses, each);
    return html`<li><gh-state-mark boxed state=${severity} word=${labels.severities[severity]}></gh-state-mark> ${words.stands(what, movedWhy === null ? '' : labelOf(labels.moveReasons, movedWhy), format().list(movedLots))}</li>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-before-work': GhBeforeWork;
  }
}
