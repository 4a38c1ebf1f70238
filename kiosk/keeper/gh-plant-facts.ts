import { LitElement, html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { keeperDeskWords } from '../../shared/words/keeper-desk.en.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showList } from '../desk/show.ts';
import { deskWords } from '../desk/words.ts';
import { link, type PlantAtDoor } from '../link/index.ts';
import { partStyles } from '../parts/part-styles.ts';

const words = keeperDeskWords.plant;

/** What stands on every document of the plant. */
@customElement('gh-plant-facts')
export class GhPlantFacts extends LitElement {
  static override styles = [partStyles, deskStyles];
  readonly #plant = new Asked<PlantAtDoor>(this, { key: () => 'plant', read: () => link.plant() });

  override render() {
    const { value } = this.#plant;
    if (value === null) return askedNotice(this.#plant);
    const { plant, benches } = value;
    const facts = [[words.name, plant?.name ?? deskWords.none], [words.address, plant?.address ?? deskWords.none], [words.country, plant?.country ?? deskWords.none], [words.demo, plant?.demo === true ? words.yes : words.no], [words.benches, benches.length === 0 ? deskWords.none : showList(benches)]];
    return html`<section class="sheet" aria-labelledby="title"><h2 id="title">${words.title}</h2>
      <dl class="facts">${facts.map(([label, text]) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`)}</dl><p class="soft">${words.note}</p></section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plant-facts': GhPlantFacts;
  }
}
