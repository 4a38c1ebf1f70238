import { LitElement, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { labelOf } from '../../shared/words/words-for.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import type { SkipRow, SwitchingRow } from '../../shared/wire/views.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { deskWords, labels } from '../desk/words.ts';
import { link } from '../link/index.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import './gh-switching-state.ts';
import { movedText } from './moved-text.ts';

const words = plansDeskWords.switching;
const heads = words.columns;
const columns = [
  { key: 'product', head: heads.product, sortable: true, filterable: true }, { key: 'gate', head: heads.gate, sortable: true, filterable: true }, { key: 'characteristic', head: heads.characteristic, sortable: true, filterable: true },
  { key: 'class', head: heads.class, sortable: true }, { key: 'severity', head: heads.severity, sortable: true, filterable: true }, { key: 'score', head: heads.score, kind: 'number' as const, sortable: true },
  { key: 'inRow', head: heads.inRow, kind: 'number' as const, sortable: true }, { key: 'recent', head: heads.recent }, { key: 'moved', head: heads.moved },
];

const skipHeads = words.skip.columns;
const skipColumns = [
  { key: 'product', head: heads.product, sortable: true }, { key: 'gate', head: heads.gate, sortable: true }, { key: 'characteristic', head: heads.characteristic, sortable: true },
  { key: 'standing', head: skipHeads.standing }, { key: 'lots', head: skipHeads.lots }, { key: 'endedBy', head: skipHeads.endedBy },
];

/** All switching states, those off normal easy to find; with `stream` the one. */
@customElement('gh-switching-states')
export class GhSwitchingStates extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property() stream = '';
  readonly #states = new Asked<{ readonly rows: readonly SwitchingRow[]; readonly skips: readonly SkipRow[] }>(this, { key: () => '/api/switching', read: (path) => link.ask(path), topics: ['switching'] });
  readonly #table = new SortedTable(this);
  readonly #skips = new SortedTable(this);

  override render() {
    const { value } = this.#states;
    if (value === null) return askedNotice(this.#states);
    if (this.stream === '') return html`${askedNotice(this.#states)} ${this.#table.table(words.caption, columns, offNormalFirst(value.rows).map(rowOf), { empty: words.empty, file: 'switching' })}
      ${value.skips.length === 0 ? nothing : this.#skips.table(words.skip.caption, skipColumns, value.skips.map(skipRowOf), { empty: '', file: 'skip-lot' })}`;
    const row = value.rows.find(({ stream }) => stream === this.stream);
    return html`<p><a href="/plans/switching">${words.back}</a></p>${askedNotice(this.#states)}
      ${row === undefined ? html`<gh-notice kind="empty" happened=${words.unknown.happened} next=${words.unknown.next}></gh-notice>` : html`<gh-switching-state .row=${row} @switching-changed=${() => void this.#states.again()}></gh-switching-state>`}`;
  }
}

/** States that ask for attention stand first. */
function offNormalFirst(rows: readonly SwitchingRow[]): readonly SwitchingRow[] {
  return [...rows.filter(({ severity }) => severity !== 'normal'), ...rows.filter(({ severity }) => severity === 'normal')];
}

function rowOf(row: SwitchingRow): DeskRow {
  const severity = labels.severities[row.severity];
  const accepted = row.recent.filter((each) => each.accepted).length;
  return {
    key: row.stream, href: `/plans/switching?state=${encodeURIComponent(row.stream)}`,
    texts: {
      product: row.product, gate: row.gate, characteristic: row.characteristic, class: row.class === null ? deskWords.none : labelOf(labels.findingClasses, row.class), severity, score: row.score, inRow: row.acceptedInRow,
      recent: row.recent.length === 0 ? deskWords.none : words.recentCount(showFigure(accepted), showFigure(row.recent.length)), moved: movedText(row),
    },
    shown: {
      severity: html`<gh-state-mark state=${row.severity} word=${severity} size="small"></gh-state-mark>`,
    },
  };
}

function skipRowOf({ stream, product, gate, characteristic, skipping, clearance, oneIn, acceptedInRow, lots, endedBy }: SkipRow): DeskRow {
  const standing = skipping ? words.skip.skipping(showFigure(oneIn)) : words.skip.counting(showFigure(acceptedInRow), showFigure(clearance));
  return { key: stream, texts: { product, gate, characteristic, standing, lots: lots.length === 0 ? deskWords.none : lots.join(', '), endedBy: endedBy ?? deskWords.none } };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-switching-states': GhSwitchingStates;
  }
}
