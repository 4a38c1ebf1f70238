import { html, type ReactiveController, type ReactiveControllerHost, type TemplateResult } from 'lit';
import { deskWords } from './words.ts';
import '../parts/gh-table.ts';
import type { TableColumn, TableOrder } from '../parts/gh-table.ts';
import { saveCsv } from './save-csv.ts';

/** One row of a desk's table: what is read, ordered and filtered as text or number, and what is shown where that is more than its text. */
export interface DeskRow {
  readonly key: string;
  readonly href?: string;
  readonly texts: Readonly<Record<string, string | number>>;
  readonly shown?: Readonly<Record<string, unknown>>;
}

/** A table that orders, filters and saves its rows. One a table, held by the element. */
export class SortedTable implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  #order: TableOrder | null;
  #filters: Readonly<Record<string, string>> = {};

  constructor(host: ReactiveControllerHost, order: TableOrder | null = null) {
    this.#host = host;
    this.#order = order;
    host.addController(this);
  }

  hostConnected(): void {}

  /** The table with those of the rows that fit the filters. @param file name of the CSV file; without it none is offered */
  table(caption: string, columns: readonly TableColumn[], rows: readonly DeskRow[], { empty, file, tall }: { readonly empty: string; readonly file?: string; readonly tall?: boolean }): TemplateResult {
    const fitting = this.#fitting(rows);
    return html`<gh-table
      caption=${caption} .columns=${columns} .sorted=${this.#order} .filters=${this.#filters} .words=${{ filter: deskWords.filter, sort: deskWords.sort }}
      .rows=${fitting.map(({ key, href, texts, shown }) => ({ key, ...(href === undefined ? {} : { href }), cells: { ...texts, ...shown } }))}
      empty=${rows.length === 0 ? empty : deskWords.noMatch} csv-word=${file === undefined ? '' : deskWords.csv} ?tall=${tall === true}
      @sort-wanted=${(event: CustomEvent<{ key: string }>) => this.#turn(event.detail.key)}
      @filter-changed=${({ detail: { key, text } }: CustomEvent<{ key: string; text: string }>) => this.#set({ ...this.#filters, [key]: text })}
      @csv-wanted=${() => saveCsv(file ?? 'table', [columns.map(({ head, unit }) => (unit === undefined ? head : `${head} ${unit}`)), ...fitting.map(({ texts }) => columns.map(({ key }) => String(texts[key] ?? '')))])}
    ></gh-table>`;
  }

  #fitting(rows: readonly DeskRow[]): readonly DeskRow[] {
    const wanted = Object.entries(this.#filters).filter(([, text]) => text.trim() !== '');
    const fitting = rows.filter(({ texts }) => wanted.every(([key, text]) => String(texts[key] ?? '').toLocaleLowerCase().includes(text.trim().toLocaleLowerCase())));
    const order = this.#order;
    if (order === null) return fitting;
    const way = order.direction === 'up' ? 1 : -1;
    return [...fitting].sort((a, b) => way * compare(a.texts[order.key] ?? '', b.texts[order.key] ?? ''));
  }

  #turn(key: string): void {
    this.#order = { key, direction: this.#order?.key === key && this.#order.direction === 'up' ? 'down' : 'up' };
    this.#host.requestUpdate();
  }

  #set(filters: Readonly<Record<string, string>>): void {
    this.#filters = filters;
    this.#host.requestUpdate();
  }
}

function compare(a: string | number, b: string | number): number {
  return typeof a === 'number' && typeof b === 'number' ? a - b : String(a).localeCompare(String(b), undefined, { numeric: true });
}
