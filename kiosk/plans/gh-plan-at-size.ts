import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { OwnTable } from '../../shared/sampling/attributes/index.ts';
import type { InspectionPlan } from '../../shared/traveller/index.ts';
import { planRuleWords } from '../../shared/words/plan-rules.en.ts';
import { planVersionsWords as versionsWords } from '../../shared/words/plan-versions.en.ts';
import { plansDeskWords as words } from '../../shared/words/plans-desk.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { labels } from '../desk/words.ts';
import '../parts/gh-field.ts';
import { partStyles } from '../parts/part-styles.ts';
import { sizeOf } from './size-of.ts';

const heads = planRuleWords.asked.columns;
const columns = [
  { key: 'gate', head: words.atSize.columns.gate, filterable: true }, { key: 'characteristic', head: words.atSize.columns.characteristic, filterable: true }, { key: 'class', head: heads.class, filterable: true }, { key: 'severity', head: heads.severity, filterable: true },
  { key: 'letter', head: heads.letter }, { key: 'n', head: heads.n, kind: 'number' as const }, { key: 'samples', head: heads.samples }, { key: 'rest', head: heads.rest }, { key: 'note', head: heads.note },
];

/** For a lot size typed in: letter, n of each sample, Ac and Re, or k and M, on normal, tightened and reduced inspection; and the version on paper at this size. */
@customElement('gh-plan-at-size')
export class GhPlanAtSize extends LitElement {
  static override styles = [partStyles, deskStyles, css`.fields { align-items: center; } .exports { display: flex; flex-wrap: wrap; gap: 0 1.2em; } .exports a { min-block-size: 44px; display: inline-flex; align-items: center; }`];
  @property({ attribute: false }) plan: InspectionPlan | null = null;
  @property({ type: Number }) version = 1;
  @property({ attribute: false }) tables: readonly OwnTable[] = [];
  @state() private text = '1000';
  @state() private rows: readonly DeskRow[] | null = null;
  readonly #table = new SortedTable(this);

  override render() {
    const size = this.#size;
    return html`<section class="sheet" aria-label=${words.lotSize}>
      <div class="fields"><gh-field label=${words.lotSize} hint=${words.lotSizeHint} entry="numeric" max-length="9" .value=${this.text} error=${size === null ? words.lotSizeWrong : ''}
        @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.text = detail.value)}></gh-field>${this.#exports(size)}</div>
      ${size === null || this.rows === null ? nothing : this.#table.table(words.atSize.caption(labels.pieces(size, showFigure(size))), columns, this.rows, { empty: words.atSize.empty, file: `${this.plan?.id ?? ''}-${size}` })}
    </section>`;
  }

  #exports(size: number | null) {
    if (size === null || this.plan === null) return nothing;
    const address = `/api/plans/${encodeURIComponent(this.plan.id)}/versions/${this.version}/plan`;
    return html`<p class="exports screen-only"><a href="${address}.pdf?lotSize=${size}" download>${versionsWords.exports.pdf}</a> <a href="${address}.csv?lotSize=${size}" download>${versionsWords.exports.csv}</a></p>`;
  }

  protected override updated(changed: PropertyValues): void {
    if (changed.has('plan') || changed.has('text') || changed.has('tables')) void this.#reckon();
  }

  get #size(): number | null {
    return sizeOf(this.text);
  }

  async #reckon(): Promise<void> {
    const [plan, size] = [this.plan, this.#size];
    if (plan === null || size === null) return;
    const { plansAtSize } = await import('./plans-at-size.ts');
    // Another size may have been typed while the tables came.
    if (plan === this.plan && size === this.#size) this.rows = plansAtSize(plan, size, this.tables);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-at-size': GhPlanAtSize;
  }
}
