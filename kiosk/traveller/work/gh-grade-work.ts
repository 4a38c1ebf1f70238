import { css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import type { RatingReference } from '../../../shared/traveller/index.ts';
import { ratingReferenceWords } from '../../../shared/words/rating-references.en.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-progress.ts';
import '../../parts/gh-rating-picture.ts';
import { keyStyles, partStyles } from '../../parts/part-styles.ts';
import { nextOrdinal } from '../asked-now.ts';
import { catalogue, travellerWords } from '../speak.ts';
import { GateWork, type WorkAt } from './gate-work.ts';
import './gh-which-pieces.ts';
import { ratingShown } from './rating-references.ts';
import { workStyles } from './work-styles.ts';

/** Rates test pieces on a scale: one big key a rating, best first. */
@customElement('gh-grade-work')
export class GhGradeWork extends GateWork {
  static override styles = [partStyles, keyStyles, workStyles, css`
    .ratings { display: grid; gap: var(--gap); inline-size: calc(4 * var(--target-primary) + 3 * var(--gap)); --text-large: var(--text-key); }
    .given { list-style: none; display: flex; flex-wrap: wrap; gap: 0.2em 1.6em; background: var(--slip); padding: 0.4em var(--pad); font-family: var(--face-figures); }
    .given:empty { display: none; }
    .pictures { display: grid; gap: var(--gap); grid-template-columns: repeat(auto-fit, minmax(9.5rem, 1fr)); }
    .pictures .picture { display: grid; grid-template-columns: minmax(0, 1fr); justify-items: center; align-content: start; gap: 0.2em; text-align: center; padding: 0.5em; text-wrap: balance; }
    .picture gh-rating-picture { inline-size: min(100%, 12rem); }
    .picture strong { font-family: var(--face-figures); font-size: var(--text-key); line-height: 1; }
    .picture small { color: var(--bad); font-weight: 650; }
    .source { color: var(--ink-soft); font-size: var(--text-small); }
    @media (max-width: 1000px) { .pictures { grid-template-columns: repeat(auto-fit, minmax(14rem, 1fr)); } .picture gh-rating-picture { inline-size: min(100%, 11rem); } }
  `];

  protected override renderWork(at: WorkAt): unknown {
    const { work } = at;
    const { characteristic, n, places } = work.demand;
    if (characteristic.kind !== 'graded') return nothing;
    const words = travellerWords();
    const ordinal = nextOrdinal(work) ?? n;
    const place = places[ordinal - 1];
    const limit = characteristic.scale.indexOf(characteristic.worstAccepted);
    const hint = [place === undefined ? null : catalogue().placeSentence(place), characteristic.method, words.grade.hint(characteristic.worstAccepted)].filter((line) => line !== null).join(' · ');
    const { reference } = characteristic;
    const give = (rating: string) => void this.give({ type: 'takeReading', ...this.characteristicOf(at), ordinal, value: rating });
    return html`<div class=${reference === undefined ? 'work' : 'pile'}>
      <div class="pile">
        <gh-demand .context=${this.contextOf(at)} .demand=${words.grade.demand(characteristic.name, ordinal, words.measure.takenAs[place?.at ?? 'tray'])} .hint=${hint}></gh-demand>
        <ol class="given">${work.readings.map((reading) => html`<li>${words.tray.at(reading.ordinal, String(reading.value))}</li>`)}</ol>
        ${reference === undefined ? this.#progress(at) : nothing}
      </div>
      ${reference === undefined
        ? html`<div class="ratings pad" role="group" aria-label=${words.grade.group(characteristic.name)}>
            ${characteristic.scale.map((rating, index) => html`<gh-button wide kind=${index <= limit ? 'primary' : 'quiet'} .hint=${index <= limit ? '' : words.grade.beyond} @click=${() => give(rating)}>${rating}</gh-button>`)}
          </div>`
        : html`<div class="pictures" role="group" aria-label=${ratingReferenceWords.choose}>${characteristic.scale.map((rating, index) => this.#picture(reference, rating, index > limit, give))}</div>
          <p class="source">${ratingReferenceWords.source[reference]}</p>${this.#progress(at)}`}
    </div>`;
  }

  #progress({ work, subject }: WorkAt) {
    const words = travellerWords();
    const { n, places } = work.demand;
    return html`<gh-progress .label=${words.grade.progress} .value=${work.readings.length} .max=${n} .text=${words.progress(work.readings.length, n)}></gh-progress>
      <div class="row"><gh-which-pieces .subject=${subject} .places=${places}></gh-which-pieces></div>`;
  }

  #picture(reference: RatingReference, rating: string, beyond: boolean, give: (rating: string) => void) {
    const shown = ratingShown(reference, rating);
    return html`<button type="button" class="picture key" @click=${() => give(rating)}>
      ${shown === null ? nothing : html`<gh-rating-picture .picture=${shown.picture}></gh-rating-picture>`}
      <strong>${rating}</strong><span>${shown?.text ?? ''}</span>${beyond ? html`<small>${travellerWords().grade.beyond}</small>` : nothing}
    </button>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-grade-work': GhGradeWork;
  }
}
