import { css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import '../../parts/gh-button.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-progress.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { nextOrdinal } from '../asked-now.ts';
import { catalogue, travellerWords } from '../speak.ts';
import { GateWork, type WorkAt } from './gate-work.ts';
import './gh-which-pieces.ts';
import { workStyles } from './work-styles.ts';

/** Rates test pieces on a scale: one big key a rating, best first. */
@customElement('gh-grade-work')
export class GhGradeWork extends GateWork {
  static override styles = [partStyles, workStyles, css`
    .ratings { display: grid; gap: var(--gap); inline-size: calc(4 * var(--target-primary) + 3 * var(--gap)); --text-large: var(--text-key); }
    .given { list-style: none; display: flex; flex-wrap: wrap; gap: 0.2em 1.6em; background: var(--slip); padding: 0.4em var(--pad); font-family: var(--face-figures); }
    .given:empty { display: none; }
  `];

  protected override renderWork(at: WorkAt): unknown {
    const { work, subject } = at;
    const { characteristic, n, places } = work.demand;
    if (characteristic.kind !== 'graded') return nothing;
    const words = travellerWords();
    const ordinal = nextOrdinal(work) ?? n;
    const place = places[ordinal - 1];
    const limit = characteristic.scale.indexOf(characteristic.worstAccepted);
    const hint = [place === undefined ? null : catalogue().placeSentence(place), characteristic.method, words.grade.hint(characteristic.worstAccepted)].filter((line) => line !== null).join(' · ');
    return html`<div class="work">
      <div class="pile">
        <gh-demand .context=${this.contextOf(at)} .demand=${words.grade.demand(characteristic.name, ordinal, words.measure.takenAs[place?.at ?? 'tray'])} .hint=${hint}></gh-demand>
        <ol class="given">${work.readings.map((reading) => html`<li>${words.tray.at(reading.ordinal, String(reading.value))}</li>`)}</ol>
        <gh-progress .label=${words.grade.progress} .value=${work.readings.length} .max=${n} .text=${words.progress(work.readings.length, n)}></gh-progress>
        <div class="row"><gh-which-pieces .subject=${subject} .places=${places}></gh-which-pieces></div>
      </div>
      <div class="ratings pad" role="group" aria-label=${words.grade.group(characteristic.name)}>
        ${characteristic.scale.map((rating, index) => html`<gh-button wide kind=${index <= limit ? 'primary' : 'quiet'} .hint=${index <= limit ? '' : words.grade.beyond}
          @click=${() => void this.give({ type: 'takeReading', ...this.characteristicOf(at), ordinal, value: rating })}>${rating}</gh-button>`)}
      </div>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-grade-work': GhGradeWork;
  }
}
