import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { keyStyles, partStyles } from './part-styles.ts';
import { tableStyles } from './table-styles.ts';
import { tell } from './tell.ts';

/** One column: where its cells come from, its head, and what can be done with it. */
export interface TableColumn {
  readonly key: string;
  readonly head: string;
  readonly unit?: string;
  readonly kind?: 'text' | 'number';
  readonly sortable?: boolean;
  readonly filterable?: boolean;
}

/** One row: a cell a column (text or a template); with `href` its first cell is a link. */
export interface TableRow {
  readonly key: string;
  readonly href?: string;
  readonly cells: Readonly<Record<string, unknown>>;
}

/** Which column a table is ordered by. */
export interface TableOrder {
  readonly key: string;
  readonly direction: 'up' | 'down';
}

/**
 * A compact ruled table. It neither sorts nor filters: it tells what is wanted.
 * @fires sort-wanted - with `{ key }`
 * @fires filter-changed - with `{ key, text }`
 * @fires csv-wanted - when the table is wanted as a file
 */
@customElement('gh-table')
export class GhTable extends LitElement {
  static override styles = [partStyles, keyStyles, tableStyles];
  @property() caption = '';
  @property({ attribute: false }) columns: readonly TableColumn[] = [];
  @property({ attribute: false }) rows: readonly TableRow[] = [];
  @property({ attribute: false }) sorted: TableOrder | null = null;
  @property({ attribute: false }) filters: Readonly<Record<string, string>> = {};
  @property({ attribute: false }) words: { readonly filter: string; readonly sort: string } = { filter: '', sort: '' };
  @property() empty = '';
  @property({ attribute: 'csv-word' }) csvWord = '';
  @property({ type: Boolean, reflect: true }) tall = false;
  /** There are columns beyond the right edge: they fade out there, so that nobody takes the table for whole. */
  @state() private more = false;
  readonly #seen = new ResizeObserver(() => this.#look());

  override disconnectedCallback(): void {
    this.#seen.disconnect();
    super.disconnectedCallback();
  }

  protected override updated(): void {
    const table = this.renderRoot.querySelector('table');
    if (table === null) return;
    this.#seen.observe(this);
    this.#seen.observe(table);
  }

  #look(): void {
    const room = this.renderRoot.querySelector('.room');
    if (room !== null) this.more = room.scrollWidth - room.clientWidth - room.scrollLeft > 2;
  }

  override render() {
    const { columns, rows, caption } = this;
    return html`<div class="top">
        <span class="caption" id="caption">${caption}</span>
        ${this.csvWord === '' ? nothing : html`<button type="button" class="key csv" @click=${() => tell(this, 'csv-wanted')}>${this.csvWord}</button>`}
      </div>
      <div class="room ${this.more ? 'more' : ''}" @scroll=${() => this.#look()} role="region" aria-labelledby="caption" tabindex="0">
        <table aria-labelledby="caption">
          <thead>
            <tr>${columns.map((column) => this.#head(column))}</tr>
            ${columns.some(({ filterable }) => filterable === true)
              ? html`<tr class="filters">${columns.map((column) => this.#filter(column))}</tr>`
              : nothing}
          </thead>
          <tbody>
            ${rows.length === 0 ? html`<tr><td class="none" colspan=${columns.length}>${this.empty}</td></tr>` : nothing}
            ${repeat(rows, ({ key }) => key, (row) => this.#row(row))}
          </tbody>
        </table>
      </div>`;
  }

  #head({ key, head, unit, kind, sortable }: TableColumn) {
    const direction = this.sorted?.key === key ? this.sorted.direction : null;
    const label = html`${head}${unit === undefined ? nothing : html` <span class="unit">${unit}</span>`}`;
    return html`<th scope="col" class=${kind ?? 'text'} aria-sort=${direction === null ? nothing : direction === 'up' ? 'ascending' : 'descending'}>
      ${sortable === true
        ? html`<button type="button" class="sort" title=${this.words.sort} @click=${() => tell(this, 'sort-wanted', { key })}>
            <span>${label}</span><svg viewBox="0 0 10 16" aria-hidden="true"><path class=${direction === 'up' ? 'on' : ''} d="M5 1 9 6.5H1z" /><path class=${direction === 'down' ? 'on' : ''} d="M5 15 1 9.5h8z" /></svg>
          </button>`
        : label}
    </th>`;
  }

  #filter({ key, head, filterable }: TableColumn) {
    if (filterable !== true) return html`<td></td>`;
    return html`<td>
      <input aria-label="${this.words.filter} ${head}" .value=${this.filters[key] ?? ''} autocomplete="off"
        @input=${(event: Event) => event.target instanceof HTMLInputElement && tell(this, 'filter-changed', { key, text: event.target.value })} />
    </td>`;
  }

  #row({ href, cells }: TableRow) {
    return html`<tr>
      ${this.columns.map(({ key, kind }, at) => {
        const cell = cells[key] ?? '';
        if (at > 0) return html`<td class=${kind ?? 'text'}>${cell}</td>`;
        return html`<th scope="row" class=${kind ?? 'text'}>${href === undefined ? cell : html`<a href=${href}>${cell}</a>`}</th>`;
      })}
    </tr>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-table': GhTable;
  }
}
