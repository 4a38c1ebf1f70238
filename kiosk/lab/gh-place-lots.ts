import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { cellName, sameCell } from '../../shared/traveller/index.ts';
import type { Cell, EquipmentCard } from '../../shared/traveller/index.ts';
import { kioskChargeWords } from '../../shared/words/kiosk-charge.en.ts';
import '../parts/gh-charge-map.ts';
import '../parts/gh-select-list.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { drawnLevels, lotMark } from '../traveller/charge/drawn-map.ts';

/** Cells by lot. */
export type Placing = Readonly<Record<string, readonly Cell[]>>;

/**
 * Puts lots on the map of a furnace or coating plant: one lot is in hand, a tap on a cell puts it there or takes it off.
 * @fires placing-changed - with `{ placing }`
 */
@customElement('gh-place-lots')
export class GhPlaceLots extends LitElement {
  static override styles = [partStyles, css`:host { display: grid; grid-template-columns: minmax(0, 1fr); gap: calc(0.7 * var(--gap)); } .error { color: var(--bad); font-weight: 650; } .error:empty { display: none; } p { margin: 0; min-block-size: 1.4em; }`];
  @property({ attribute: false }) equipment: EquipmentCard | null = null;
  @property({ attribute: false }) lots: readonly string[] = [];
  @property({ attribute: false }) placing: Placing = {};
  @property() error = '';
  @state() private hand = '';
  @state() private said = '';

  protected override willUpdate(changed: PropertyValues<this>): void {
    // A lot that was just chosen is in hand; one that was taken out no longer is.
    if (changed.has('lots') && !this.lots.includes(this.hand)) this.hand = this.lots.find((lot) => (this.placing[lot] ?? []).length === 0) ?? this.lots[0] ?? '';
  }

  override render() {
    const { equipment, lots, placing, hand } = this;
    if (equipment === null || lots.length === 0) return nothing;
    const words = kioskChargeWords.place;
    const cellsOf = (lot: string): readonly Cell[] => placing[lot] ?? [];
    const drawn = lots.map((lot, at) => ({ lot, mark: lotMark(at), cells: cellsOf(lot), chosen: lot === hand }));
    const options = lots.map((lot, at) => ({ value: lot, text: `${lotMark(at)} · ${lot}`, hint: cellsOf(lot).length === 0 ? words.none : words.cells(cellsOf(lot).length) }));
    const { map } = kioskChargeWords;
    return html`<gh-select-list columns="3" .label=${words.hand} .options=${options} .value=${hand} @option-chosen=${(event: CustomEvent<{ value: string }>) => (this.hand = event.detail.value)}></gh-select-list>
      <p role="status">${this.said === '' ? words.choose : this.said}</p><p class="error">${this.error}</p>
      <gh-charge-map open .levels=${drawnLevels(equipment, drawn)} .words=${{ caption: map.caption(equipment.name), test: map.test, failed: map.failed, near: map.near }} @cell-tapped=${(event: CustomEvent<Cell>) => this.#tap(equipment, event.detail)}></gh-charge-map>`;
  }

  #tap(equipment: EquipmentCard, cell: Cell): void {
    const words = kioskChargeWords.place;
    const name = cellName(equipment, cell);
    const here = this.lots.find((lot) => (this.placing[lot] ?? []).some((each) => sameCell(each, cell)));
    if (this.hand === '') this.said = words.no;
    else if (here !== undefined && here !== this.hand) this.said = words.taken(name, here);
    else {
      const own = this.placing[this.hand] ?? [];
      this.said = here === undefined ? words.placed(this.hand, name) : words.off(this.hand, name);
      tell(this, 'placing-changed', { placing: { ...this.placing, [this.hand]: here === undefined ? [...own, { level: cell.level, position: cell.position }] : own.filter((each) => !sameCell(each, cell)) } });
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-place-lots': GhPlaceLots;
  }
}
