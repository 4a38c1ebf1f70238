import type { ReactiveControllerHost } from 'lit';
import type { OwnTable } from '../../shared/sampling/attributes/index.ts';
import type { LoadedCopy } from '../../shared/wire/own-tables-view.ts';
import { Asked } from '../desk/asked.ts';
import { link } from '../link/index.ts';

/** The plant's own copies of master tables, the latest of each; empty until they are read. */
export class OwnTables {
  readonly asked: Asked<{ readonly tables: readonly LoadedCopy[] }>;

  constructor(host: ReactiveControllerHost) {
    this.asked = new Asked(host, { key: () => '/api/tables', read: (path) => link.ask<{ readonly tables: readonly LoadedCopy[] }>(path), topics: ['catalogue'] });
  }

  #seen: readonly LoadedCopy[] = [];
  #tables: readonly OwnTable[] = [];
  /** The same list as long as the answer is the same. */
  get tables(): readonly OwnTable[] {
    const copies = this.asked.value?.tables ?? this.#seen;
    if (copies !== this.#seen) {
      this.#seen = copies;
      this.#tables = copies.map(({ table }) => table);
    }
    return this.#tables;
  }
}
