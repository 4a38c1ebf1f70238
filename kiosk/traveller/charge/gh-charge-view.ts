import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { mayGive } from '../../../shared/traveller/index.ts';
import type { Charge } from '../../../shared/traveller/index.ts';
import { failedPositionSentence } from '../../../shared/words/charge-slips.en.ts';
import { placesByLevel } from '../../../shared/words/charge-places.ts';
import { kioskChargeWords } from '../../../shared/words/kiosk-charge.en.ts';
import { Follow, link } from '../../link/index.ts';
import '../../parts/gh-charge-map.ts';
import '../../parts/gh-notice.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { catalogue, format } from '../speak.ts';
import { drawnLevels, failedOf, lotMark } from './drawn-map.ts';
import './gh-attach-log.ts';
import './gh-log-view.ts';

/** What a charge's traveller shows beside its slips: the map with its members, positions that failed and what lay near them, the furnace log. */
@customElement('gh-charge-view')
export class GhChargeView extends LitElement {
  static override styles = [partStyles, css`
    :host { display: grid; grid-template-columns: minmax(0, 1fr); gap: var(--gap); }
    section { background: var(--slip); border: var(--rule) solid var(--line); padding: var(--pad) calc(1.4 * var(--pad)); display: grid; grid-template-columns: minmax(0, 1fr); gap: calc(0.6 * var(--gap)); }
    section.failed { border-inline-start: calc(3 * var(--rule-strong)) solid var(--bad); }
    h2 { font-size: var(--text-large); margin: 0; }
    summary { min-block-size: var(--target); display: list-item; align-content: center; cursor: pointer; color: var(--ink-soft); }
    summary:focus-visible { outline: 3px solid var(--focus); }
  `];
  @property({ attribute: false }) charge: Charge | null = null;
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { charge } = this;
    if (charge === null) return nothing;
    return html`${this.#map(charge)} ${this.#failed(charge)} ${this.#log(charge)}`;
  }

  #map(charge: Charge) {
    const { map, members } = charge;
    if (map === null) return nothing;
    const words = kioskChargeWords.map;
    const failed = failedOf(charge);
    const nearOf = (lot: string) => failed.flatMap(({ position, near }) => near.filter((each) => each.lot === lot).map(({ how }) => `${position}: ${catalogue().labels.nearness[how]}`));
    const lots = members.map(({ lot, cells = [] }, at) => ({ lot, mark: lotMark(at), cells, near: nearOf(lot).length > 0 }));
    const list = members.map(({ lot, places, cells = [], again, left }, at) => ({ mark: lotMark(at), text: words.lot(lot, placesByLevel(map, cells, places, format()), left === true ? words.left : again === undefined ? null : catalogue().labels.reprocessed[again], nearOf(lot).join(', ')) }));
    return html`<section aria-label=${words.caption(charge.equipment)}><h2>${words.caption(charge.equipment)}</h2>
      <gh-charge-map .levels=${drawnLevels(map, lots, failed.map(({ position }) => position))} .lots=${list} .words=${{ caption: words.caption(charge.equipment), test: words.test, failed: words.failed, near: words.near }}></gh-charge-map></section>`;
  }

  #failed(charge: Charge) {
    const failed = failedOf(charge);
    if (failed.length === 0) return nothing;
    const speak = { format: format(), labels: catalogue().labels };
    return html`<section class="failed" aria-labelledby="failed"><h2 id="failed">${kioskChargeWords.failed.title}</h2>${failed.map((each) => html`<p>${failedPositionSentence(each, speak)}</p>`)}
      <details><summary>${kioskChargeWords.map.howTitle}</summary><p>${kioskChargeWords.map.how}</p></details></section>`;
  }

  #log(charge: Charge) {
    if (charge.kind !== 'furnace') return nothing;
    const log = charge.logs.at(-1) ?? null;
    const may = mayGive('attachFurnaceLog', this.#session.value?.roles ?? []);
    return html`<section aria-labelledby="log"><h2 id="log">${kioskChargeWords.log.title}</h2>
      ${log === null ? html`<p>${kioskChargeWords.log.none}</p>` : html`<gh-log-view .log=${log}></gh-log-view>`}
      ${may ? html`<gh-attach-log .charge=${charge}></gh-attach-log>` : nothing}</section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-charge-view': GhChargeView;
  }
}
