import { LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { planCompareWords as words } from '../../../shared/words/plan-compare.en.ts';
import { SortedTable, type DeskRow } from '../../desk/sorted-table.ts';
import { partStyles } from '../../parts/part-styles.ts';
import type { Compared } from './compared-plan.ts';
import { axesOf } from './curve-axes.ts';
import type { Curves } from './curves.ts';

/** Which of the 201 points stand in the table: 21 of them. */
const everyTenth = 10;

/** The curves of the chart as a table, for readers and for a file. */
@customElement('gh-curve-table')
export class GhCurveTable extends LitElement {
  static override styles = partStyles;
  @property({ attribute: false }) plans: readonly Compared[] = [];
  @property({ attribute: false }) curves: Curves | null = null;
  readonly #table = new SortedTable(this);

  override render() {
    const { curves, plans } = this;
    if (curves === null || plans.length === 0) return nothing;
    const { showX, showY } = axesOf(curves);
    const columns = [{ key: 'p', head: words.pColumn, kind: 'number' as const }, ...curves.lines.map(({ letter }) => ({ key: letter, head: words.plan(letter), kind: 'number' as const }))];
    const rows = curves.points.flatMap((p, at): readonly DeskRow[] => (at % everyTenth > 0 ? [] : [{ key: String(at), texts: { p: showX(p), ...Object.fromEntries(curves.lines.map(({ letter, values }) => [letter, showY(values[at] ?? 0)])) } }]));
    return this.#table.table(words.tableOf(words.curveCaption[curves.curve]), columns, rows, { empty: '', file: `plans-${curves.curve}` });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-curve-table': GhCurveTable;
  }
}
