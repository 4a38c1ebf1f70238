import { LitElement, css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { mayGive, positionsOf } from '../../shared/traveller/index.ts';
import type { EquipmentCard, ProgrammeCard } from '../../shared/traveller/index.ts';
import { segmentSentence } from '../../shared/words/charge-slips.en.ts';
import { furnaceRecordWords as words } from '../../shared/words/furnace-records.en.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { labels } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import { partStyles } from '../parts/part-styles.ts';
import { pageFormat } from './rule-text.ts';

const columnsOf = (heads: Readonly<Record<string, string>>) => Object.entries(heads).map(([key, head]) => ({ key, head, sortable: true }));
/** Where a furnace, coating plant or programme is changed. */
const pathOf = (kind: 'equipment' | 'programme', id: string): string => `/plans/catalogue/${kind}/${encodeURIComponent(id)}`;

/** Furnaces and coating plants with their maps, and furnace programmes with their limits. */
@customElement('gh-furnace-records')
export class GhFurnaceRecords extends LitElement {
  static override styles = [partStyles, deskStyles, css`:host { display: grid; grid-template-columns: minmax(0, 1fr); gap: calc(2 * var(--pad)); }`];
  readonly #records = new Asked<{ readonly equipment: readonly EquipmentCard[]; readonly programmes: readonly ProgrammeCard[] }>(this, { key: () => '/api/catalogue', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #equipment = new SortedTable(this);
  readonly #programmes = new SortedTable(this);
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { value } = this.#records;
    if (value === null) return askedNotice(this.#records);
    const defines = mayGive('defineEquipment', this.#session.value?.roles ?? []);
    const adds = (kind: 'equipment' | 'programme') => (defines ? html`<p class="screen-only"><a href="/plans/catalogue/${kind}?new">${words.defineNew[kind]}</a></p>` : nothing);
    const linked = (kind: 'equipment' | 'programme', id: string) => (defines ? { href: pathOf(kind, id) } : {});
    const speak = { format: pageFormat(), labels };
    const equipment = value.equipment.map(({ id, name, kind, levels, testPositions }): DeskRow => ({
      key: id, ...linked('equipment', id), texts: { id, name, kind: words.kinds[kind], levels: levels.map((level) => `${level.name} (${showFigure(positionsOf(level))})`).join(', '), testPositions: testPositions.map((test) => test.name).join(', ') },
    }));
    const programmes = value.programmes.map(({ id, name, segments }): DeskRow => ({ key: id, ...linked('programme', id), texts: { id, name, segments: segments.map((segment) => segmentSentence(segment, speak)).join('; ') } }));
    return html`<div class="page-part sheet">${askedNotice(this.#records)}
      ${this.#equipment.table(words.equipment, columnsOf(words.heads.equipment), equipment, { empty: words.emptyEquipment, file: 'equipment' })} ${adds('equipment')}
      ${this.#programmes.table(words.programmes, columnsOf(words.heads.programme), programmes, { empty: words.emptyProgrammes, file: 'furnace-programmes' })} ${adds('programme')}</div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-furnace-records': GhFurnaceRecords;
  }
}
