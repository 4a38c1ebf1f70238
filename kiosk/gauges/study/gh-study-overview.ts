import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { mayGive, nextPlace, readingsWanted, type AnyState, type Study } from '../../../shared/traveller/index.ts';
import { studyKindWords } from '../../../shared/words/study-slips.en.ts';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { showFigure, showMoment } from '../../desk/show.ts';
import { deskWords } from '../../desk/words.ts';
import { Follow, link, type RefusalText } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-progress.ts';
import '../../parts/gh-sheet.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { goTo } from '../../shell/navigation.ts';
import './gh-study-closing.ts';
import './gh-study-readings.ts';
import './gh-study-uncertainty.ts';
import type { LiveStudy } from './live-study.ts';
import { studiesPath } from './studies-path.ts';

const words = studiesDeskWords.page;

/** A study as whoever oversees it sees it: how far everybody is, then the result. Values stay hidden from those who still measure. */
@customElement('gh-study-overview')
export class GhStudyOverview extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: grid; gap: calc(2 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
    summary { min-block-size: 28px; font-weight: 650; cursor: pointer; }
  `];
  @property({ attribute: false }) study: Study | null = null;
  @property({ attribute: false }) gauge: AnyState | null = null;
  @property({ attribute: false }) live: LiveStudy | null = null;
  @state() private abandoning = false;
  @state() private reason = '';
  @state() private refused: RefusalText | null = null;
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { study } = this;
    const session = this.#session.value;
    if (study === null || session === null) return nothing;
    const { parts, people, trials, gaugeThen: { unit, name }, tolerance } = study;
    const f = words.facts;
    const isWhole = study.readings.length === readingsWanted(study);
    const measures = study.standing === 'open' && nextPlace(study, session.badge) !== null;
    const oversees = mayGive('abandonStudy', session.roles);
    const facts = [
      [f.gauge, `${study.gauge}, ${name}`], [f.measured, study.characteristic], [f.size, `${showFigure(parts.length)} × ${showFigure(people.length)} × ${showFigure(trials)}`], [f.opened, showMoment(study.openedAt)],
      [f.standing, studiesDeskWords.list.standings[study.standing]], ...(tolerance === null ? [] : [[f.tolerance, `${showFigure(tolerance)} ${unit}`]]), [f.seed, study.seed],
    ];
    return html`
      <div class="head"><h2>${studyKindWords[study.studyKind]} ${study.id}</h2><a href=${studiesPath()}>${words.back}</a></div>
      <dl class="facts">${facts.map(([label, text]) => html`<div><dt>${label}</dt><dd>${text}</dd></div>`)}</dl>
      ${this.refused === null ? nothing : html`<gh-notice kind="refusal" happened=${this.refused.happened} kept=${this.refused.kept} next=${this.refused.next} dismiss=${deskWords.dismiss} @notice-dismissed=${() => (this.refused = null)}></gh-notice>`}
      ${study.abandoned === null ? nothing : html`<gh-notice happened=${words.abandonedNote(study.abandoned.reason)}></gh-notice>`}
      ${study.standing === 'open' ? this.#progress(study, measures, isWhole) : nothing}
      ${isWhole && (study.closed !== null || oversees) ? html`<gh-study-closing .study=${study} .live=${this.live}></gh-study-closing>` : nothing}
      ${study.closed?.found.by === 'crossed' ? html`<gh-study-uncertainty .study=${study} .gauge=${this.gauge} @gauge-changed=${() => void this.live?.again()}></gh-study-uncertainty>` : nothing}
      ${oversees || study.standing !== 'open' ? html`<details ?open=${study.standing === 'open'}><summary>${words.readingsAll(showFigure(study.readings.length))}</summary><gh-study-readings .study=${study} ?blind=${measures} ?withdraws=${study.standing === 'open'} .live=${this.live}></gh-study-readings></details>` : nothing}
      ${study.standing === 'open' && oversees ? html`<div class="keys screen-only"><gh-button kind="grave" @click=${() => (this.abandoning = true)}>${words.abandon}</gh-button></div>` : nothing}
      ${this.abandoning ? html`<gh-sheet open grave heading=${words.abandonTitle} close-word=${deskWords.cancel} @sheet-closed=${() => (this.abandoning = false)}>
        <gh-field label=${words.reason} max-length="500" .value=${this.reason} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.reason = detail.value)}></gh-field>
        <gh-button slot="actions" kind="primary" @click=${() => void this.#abandon(study.id)}>${words.abandonKey}</gh-button></gh-sheet>` : nothing}`;
  }

  #progress(study: Study, measures: boolean, isWhole: boolean) {
    const each = study.parts.length * study.trials;
    const left = readingsWanted(study) - study.readings.length;
    return html`<section class="sheet" aria-labelledby="progress"><h3 id="progress">${words.progress}</h3>
      ${study.people.map(({ badge, name }) => {
        const taken = study.readings.filter((reading) => reading.badge === badge).length;
        return html`<gh-progress label=${words.progressOf(name)} value=${taken} max=${each} text=${words.count(showFigure(taken), showFigure(each))}></gh-progress>`;
      })}
      <p>${isWhole ? words.whole : words.waiting(showFigure(left))}</p>
      ${measures ? html`<div class="keys screen-only"><gh-button kind="primary" @click=${() => goTo(studiesPath(study.id, 'measure'))}>${words.measure}</gh-button></div>` : nothing}</section>`;
  }

  async #abandon(study: string): Promise<void> {
    const outcome = await this.live?.give({ type: 'abandonStudy', study, reason: this.reason });
    this.abandoning = false;
    this.refused = outcome?.state === 'refused' ? outcome.words : null;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-study-overview': GhStudyOverview;
  }
}
