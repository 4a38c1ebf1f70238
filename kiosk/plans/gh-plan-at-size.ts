import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { InspectionPlan } from '../../shared/traveller/index.ts';
import { plansDeskWords as words } from '../../shared/words/plans-desk.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { readNumber, showFigure } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { labels } from '../desk/words.ts';
import '../parts/gh-field.ts';
import { partStyles } from '../parts/part-styles.ts';

const heads = words.atSize.columns;
const columns = [
  { key: 'gate', head: heads.gate, filterable: true }, { key: 'characteristic', head: heads.characteristic, filterable: true }, { key: 'class', head: heads.class, filterable: true }, { key: 'severity', head: heads.severity, filterable: true },
  { key: 'letter', head: heads.letter }, { key: 'n', head: heads.n, kind: 'number' as const }, { key: 'accept', head: heads.accept }, { key: 'reject', head: heads.reject }, { key: 'note', head: heads.note },
];
const largestLot = 1_000_000;

/** For a lot size typed in: letter, n, Ac and Re, or k and M, on normal, tightened and reduced inspection. */
@customElement('gh-plan-at-size')
export class GhPlanAtSize extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) plan: InspectionPlan | null = null;
  @state() private text = '1000';
  @state() private rows: readonly DeskRow[] | null = null;
  readonly #table = new SortedTable(this);

  override render() {
    const size = this.#size;
    return html`<section class="sheet" aria-label=${words.lotSize}>
      <div class="fields"><gh-field label=${words.lotSize} hint=${words.lotSizeHint} entry="numeric" max-length="9" .value=${this.text} error=${size === null ? words.lotSizeWrong : ''}
        @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.text = detail.value)}></gh-field></div>
      ${size === null || this.rows === null ? nothing : this.#table.table(words.atSize.caption(labels.pieces(size, showFigure(size))), columns, this.rows, { empty: words.atSize.empty, file: `${this.plan?.id ?? ''}-${size}` })}
    </section>`;
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has('plan') || changed.has('text')) void this.#reckon();
  }

  get #size(): number | null {
    const size = readNumber(this.text);
    return size !== null && Number.isInteger(size) && size >= 2 && size <= largestLot ? size : null;
  }

  async #reckon(): Promise<void> {
    const [plan, size] = [this.plan, this.#size];
    if (plan === null || size === null) return;
    const { plansAtSize } = await import('./plans-at-size.ts');
    // Another size may have been typed while the tables came.
    if (plan === this.plan && size === this.#size) this.rows = plansAtSize(plan, size);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-at-size': GhPlanAtSize;
  }
}
