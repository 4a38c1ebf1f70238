import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { labelOf } from '../../shared/words/words-for.ts';
import { traceDeskWords as words } from '../../shared/words/trace-desk.en.ts';
import type { SearchHit } from '../../shared/wire/views.ts';
import { askedNotice, offlineNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { saveCsv } from '../desk/save-csv.ts';
import { showFigure } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { labels } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import { Scans } from '../desk/scans.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { goTo } from '../shell/navigation.ts';
import type { Route } from '../shell/routes.ts';
import './gh-ladder.ts';
import { readTrace, TRACE_KINDS, type FullTrace } from './read-trace.ts';
import { isHeldNode, nodeTrace, traceMark } from './trace-marks.ts';

const hitColumns = [
  { key: 'id', head: words.hitColumns.id, sortable: true }, { key: 'kind', head: words.hitColumns.kind, sortable: true },
  { key: 'title', head: words.hitColumns.title }, { key: 'standing', head: words.hitColumns.standing },
];

/** The trace desk: find a subject, then see its whole line up to the raw material and down to the shipments. */
@customElement('gh-trace-desk')
export class GhTraceDesk extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    form.find { display: flex; flex-wrap: wrap; gap: var(--gap); align-items: center; }
    .find gh-field { flex: 1 1 18rem; }
  `];
  @property({ attribute: false }) route: Route | null = null;
  @state() private typed: string | null = null;
  readonly #hits = new Asked<{ readonly hits: readonly SearchHit[] }>(this, {
    key: () => (this.#key === null && this.#query !== '' ? this.#query : null), read: (text) => link.ask(`/api/search?q=${encodeURIComponent(text)}`),
  });
  readonly #trace = new Asked<FullTrace>(this, { key: () => this.#key, read: readTrace, topics: ['bench', 'release', 'packing'] });
  readonly #table = new SortedTable(this);
  readonly connection = new Follow(this, () => link.connection);

  protected readonly scans = new Scans(this, (event) => this.#scanned(event));

  get #query(): string {
    return this.route?.query.get('q') ?? '';
  }
  get #key(): string | null {
    const [kind, id] = this.route?.parts ?? [];
    return id === undefined || !TRACE_KINDS.some((known) => known === kind) ? null : `${kind}/${id}`;
  }

  override render() {
    const full = this.#trace.value;
    return html`<div class="page">
      <div class="head"><h1>${words.title}${this.#key === null ? nothing : html`: <span class="figure">${this.#key.slice(this.#key.indexOf('/') + 1)}</span>`}</h1></div>
      <form class="find screen-only" role="search" @submit=${this.#find}>
        <gh-field type="search" label=${words.search} hint=${words.hint} max-length="500" .value=${this.typed ?? this.#query} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.typed = detail.value)}></gh-field>
        <gh-button type="submit" kind="primary">${words.searchKey}</gh-button>
      </form>
      ${offlineNotice()} ${this.#key === null ? this.#found() : html`${askedNotice(this.#trace)} ${full === null ? nothing : this.#line(full)}`}
    </div>`;
  }

  #found() {
    if (this.#query === '') return html`<gh-notice kind="empty" happened=${words.start.happened} next=${words.start.next}></gh-notice>`;
    const { value } = this.#hits;
    if (value === null) return askedNotice(this.#hits);
    const none = words.noHit(this.#query);
    if (value.hits.length === 0) return html`<gh-notice kind="empty" happened=${none.happened} next=${none.next}></gh-notice>`;
    return this.#table.table(words.hits(value.hits.length, showFigure(value.hits.length)), hitColumns, value.hits.map(hitRow), { empty: '' });
  }

  #line({ here, trace }: FullTrace) {
    const all = [here, ...trace.up, ...trace.down];
    const count = (kind: (typeof TRACE_KINDS)[number]) => new Set(all.filter((node) => node.kind === kind).map(({ id }) => id)).size;
    const held = new Set(all.filter(isHeldNode).map(({ kind, id }) => `${kind}:${id}`)).size;
    return html`
      <dl class="facts" aria-label=${words.counts}>
        ${TRACE_KINDS.map((kind) => html`<div><dt>${words.counted[kind]}</dt><dd>${showFigure(count(kind))}</dd></div>`)}
        <div><dt>${words.onHold}</dt><dd>${held === 0 ? showFigure(0) : html`<gh-state-mark state="hold" word=${showFigure(held)}></gh-state-mark>`}</dd></div>
      </dl>
      <div class="keys screen-only"><gh-button @click=${() => this.#save({ here, trace })}>${words.csv}</gh-button><gh-button @click=${() => window.print()}>${words.print}</gh-button></div>
      <gh-ladder .here=${here} .trace=${trace}></gh-ladder>
      ${trace.up.length === 0 ? html`<p class="soft">${words.upNone}</p>` : nothing} ${trace.down.length === 0 ? html`<p class="soft">${words.downNone}</p>` : nothing}`;
  }

  #save({ here, trace }: FullTrace): void {
    const columns = words.csvColumns;
    const line = (direction: keyof typeof words.directions) => (node: FullTrace['here']) =>
      [words.directions[direction], String(node.depth), labels.traceKinds[node.kind], node.id, node.via ?? '', labelOf(words.standings, node.standing), ...measuresOf(node)];
    saveCsv(`trace-${here.id}`, [Object.values(columns), ...trace.up.map(line('up')), line('here')(here), ...trace.down.map(line('down'))]);
  }

  readonly #find = (event: Event): void => {
    event.preventDefault();
    this.#search(this.typed ?? this.#query);
  };

  readonly #scanned = (event: Event): void => {
    event.preventDefault();
    if (event instanceof CustomEvent) this.#search(String((event.detail as { text: string }).text));
  };

  #search(text: string): void {
    const query = text.trim();
    this.typed = null;
    if (query === '') return;
    goTo(`/trace?q=${encodeURIComponent(query)}`);
  }

  protected override updated(): void {
    const [only, ...others] = this.#hits.value?.hits ?? [];
    if (this.#key !== null || only === undefined || others.length > 0) return;
    goTo(hitTrace(only), 'replace');
  }
}

/** Pieces and detail of a node as the CSV has them. A batch has barrels instead of pieces; they stand with its detail. */
function measuresOf({ kind, pieces, detail }: FullTrace['here']): readonly [pieces: string, detail: string] {
  if (pieces === null || kind !== 'batch') return [pieces === null ? '' : String(pieces), detail ?? ''];
  return ['', [detail, labels.barrels(pieces, showFigure(pieces))].filter((each) => each !== null).join(', ')];
}

function hitTrace({ kind, id }: SearchHit): string {
  return nodeTrace({ kind: TRACE_KINDS.find((known) => known === kind) ?? 'lot', id });
}

function hitRow(hit: SearchHit): DeskRow {
  const standing = labelOf(words.standings, hit.standing);
  const kind = labelOf(labels.traceKinds, hit.kind);
  return {
    key: `${hit.kind}:${hit.id}`, href: hitTrace(hit), texts: { id: hit.id, kind, title: hit.title, standing },
    shown: { standing: hit.standing === '' ? '' : html`<gh-state-mark state=${traceMark(hit.standing)} word=${standing} size="small"></gh-state-mark>` },
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-trace-desk': GhTraceDesk;
  }
}
