import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Place, Subject } from '../../../shared/traveller/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-sheet.ts';
import '../../parts/gh-tray-map.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { catalogue, travellerWords } from '../speak.ts';
import { barrelCarrier, trayCarriers } from './carriers.ts';

/** The key that shows which pieces were drawn, and the map behind it. Nothing where no place was drawn. */
@customElement('gh-which-pieces')
export class GhWhichPieces extends LitElement {
  static override styles = [partStyles];
  @property({ attribute: false }) subject: Subject | null = null;
  @property({ attribute: false }) places: readonly Place[] = [];
  /** Place in the draw of the first of them. */
  @property({ type: Number }) first = 1;
  @state() private shown = false;

  override render() {
    const words = travellerWords();
    const [first] = this.places;
    if (first === undefined || first.at === 'position') return nothing;
    const name = first.at === 'barrel' ? words.measure.whichBarrels : words.measure.whichPieces;
    return html`<gh-button @click=${() => (this.shown = true)}>${name}</gh-button>
      <gh-sheet ?open=${this.shown} .heading=${name} .closeWord=${words.close} @sheet-closed=${() => (this.shown = false)}>${this.shown ? this.#map() : nothing}</gh-sheet>`;
  }

  #map() {
    const { subject, places } = this;
    if (subject === null) return nothing;
    const words = travellerWords().tray;
    const list = places.map((place, at) => words.at(at + this.first, catalogue().placeSentence(place)));
    if (subject.kind === 'lot') return html`<gh-tray-map shape="tray" .carriers=${trayCarriers(places, subject.trayCapacity, this.first)} .list=${list} .words=${{ caption: words.caption(places.length), place: words.tray, row: words.row, column: words.column, take: words.take }}></gh-tray-map>`;
    if (subject.kind === 'batch') return html`<gh-tray-map shape="barrel" .carriers=${[barrelCarrier(places, subject.id, subject.barrels)]} .list=${list} .words=${{ caption: words.barrelCaption(new Set(places.flatMap((place) => (place.at === 'barrel' ? [place.barrel] : []))).size), place: words.barrel, row: words.row, column: words.barrelColumn, take: words.take }}></gh-tray-map>`;
    return nothing;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-which-pieces': GhWhichPieces;
  }
}
