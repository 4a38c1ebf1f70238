import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { OwnTable } from '../../shared/sampling/attributes/index.ts';
import type { InspectionPlan } from '../../shared/traveller/index.ts';
import { planRuleWords } from '../../shared/words/plan-rules.en.ts';
import { plansDeskWords as words } from '../../shared/words/plans-desk.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { labels } from '../desk/words.ts';
import { partStyles } from '../parts/part-styles.ts';

const heads = planRuleWords.asked.columns;
const columns = [
  { key: 'gate', head: words.atSize.columns.gate, filterable: true }, { key: 'characteristic', head: words.atSize.columns.characteristic, filterable: true }, { key: 'class', head: heads.class, filterable: true }, { key: 'severity', head: heads.severity, filterable: true },
  { key: 'letter', head: heads.letter }, { key: 'n', head: heads.n, kind: 'number' as const }, { key: 'samples', head: heads.samples }, { key: 'rest', head: heads.rest }, { key: 'note', head: heads.note },
];

/** What a lot of a size is asked for: letter, n of each sample, Ac and Re, or k and M, on normal, tightened and reduced inspection. */
@customElement('gh-plan-at-size')
export class GhPlanAtSize extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) plan: InspectionPlan | null = null;
  /** Pieces in the lot; null while none is typed. */
  @property({ attribute: false }) size: number | null = null;
  @property({ attribute: false }) tables: readonly OwnTable[] = [];
  @state() private rows: readonly DeskRow[] | null = null;
  readonly #table = new SortedTable(this);

  override render() {
    const { size, rows } = this;
    if (size === null || rows === null) return nothing;
    return html`<section class="sheet" aria-label=${words.lotSize}>${this.#table.table(words.atSize.caption(labels.pieces(size, showFigure(size))), columns, rows, { empty: words.atSize.empty, file: `${this.plan?.id ?? ''}-${size}` })}</section>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('plan') || changed.has('size') || changed.has('tables')) void this.#reckon();
  }

  async #reckon(): Promise<void> {
    const { plan, size } = this;
    if (plan === null || size === null) return;
    const { plansAtSize } = await import('./plans-at-size.ts');
    // Another size may have been typed while the tables came.
    if (plan === this.plan && size === this.size) this.rows = plansAtSize(plan, size, this.tables);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-at-size': GhPlanAtSize;
  }
}
