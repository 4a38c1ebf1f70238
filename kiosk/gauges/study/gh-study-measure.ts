import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { nextPlace, readingsWanted, type Refusal, type Study } from '../../../shared/traveller/index.ts';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import { showFigure } from '../../desk/show.ts';
import { deskWords } from '../../desk/words.ts';
import { Follow, link, type RefusalText } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-demand.ts';
import '../../parts/gh-keypad.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-progress.ts';
import '../../parts/gh-sheet.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { announce } from '../../shell/announce.ts';
import { locale } from '../../shell/words.ts';
import { enteredFigure } from '../../traveller/work/entered-figure.ts';
import { swallowStrayTyping } from '../../traveller/work/stray-typing.ts';
import { workStyles } from '../../traveller/work/work-styles.ts';
import type { LiveStudy } from './live-study.ts';
import { studiesPath } from './studies-path.ts';

const words = studiesDeskWords.measure;
type Unlikely = Extract<Refusal, { code: 'unlikelyValue' }>;
/** What the figure of the keypad is for: the next part, or the last reading put right. */
interface Asking { readonly refusal: Unlikely; readonly value: number }

/** Measuring in a study: which part to take now, and the keypad. Nothing of what was read before is shown. */
@customElement('gh-study-measure')
export class GhStudyMeasure extends LitElement {
  static override styles = [partStyles, workStyles, css`
    :host { display: block; }
    .rest { display: grid; gap: var(--gap); }
    /* The whole keypad stays in sight on a tablet that lies on its side. */
    .work > gh-keypad { --key-size: calc(16 * var(--true-mm)); --target-primary: var(--key-size); }
    .turns { list-style: none; margin: 0; padding: 0; display: flex; flex-wrap: wrap; gap: 0.3em 1.2em; }
    a { color: var(--link); min-block-size: var(--target); display: inline-flex; align-items: center; }
  `];
  @property({ attribute: false }) study: Study | null = null;
  @property({ attribute: false }) live: LiveStudy | null = null;
  @property({ type: Number }) waiting = 0;
  @state() private asking: Asking | null = null;
  @state() private refused: RefusalText | null = null;
  @state() private correcting = false;
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { study } = this;
    const badge = this.#session.value?.badge ?? '';
    if (study === null) return nothing;
    if (study.standing !== 'open') return html`<div class="rest"><gh-notice alone kind="done" happened=${words.ended(studiesDeskWords.list.standings[study.standing])}></gh-notice>${this.#foot(study, badge)}</div>`;
    if (!study.people.some((person) => person.badge === badge)) return html`<div class="rest"><gh-notice alone happened=${words.notYours} next=${words.notYoursNext(study.people.map(({ name }) => name).join(', '))}></gh-notice>${this.#foot(study, badge)}</div>`;
    const next = nextPlace(study, badge);
    if (next === null) return html`<div class="rest">${this.#progress(study, badge)}<gh-notice alone kind="done" happened=${words.done} next=${study.readings.length < readingsWanted(study) ? words.doneNext : words.wholeNext}></gh-notice>${this.#foot(study, badge)}${this.#correction(study, badge)}</div>`;
    const label = study.parts[next.part - 1]?.label ?? '';
    return html`<div class="work">
      <div class="pile">
        <gh-demand heading-level="1" .context=${words.context(study.id, study.characteristic)} .demand=${words.take(label)} .hint=${words.hint}></gh-demand>
        ${this.#progress(study, badge)} ${this.#notice()}
      </div>
      <gh-keypad ?hears-all=${this.asking === null && !this.correcting && this.refused === null} .locale=${locale()} .unit=${study.gaugeThen.unit} ?signed=${study.plausible.least < 0}
        .words=${{ ...words.keys, demand: words.keypad(label) }} @value-entered=${(event: CustomEvent<{ plain: string }>) => void this.#take(next.part, label, enteredFigure(event))}></gh-keypad>
      <div class="pile more">${this.#foot(study, badge)}</div>
      ${this.#question(next.part, label)} ${this.#correction(study, badge)}
    </div>`;
  }

  #progress(study: Study, badge: string) {
    const each = study.parts.length * study.trials;
    const taken = study.readings.filter((reading) => reading.badge === badge).length;
    return html`<gh-progress label=${words.progress} value=${taken} max=${each} text=${words.count(showFigure(taken), showFigure(each))}></gh-progress>`;
  }

  #notice() {
    const { refused, waiting } = this;
    if (refused !== null) return html`<gh-notice kind="refusal" happened=${refused.happened} kept=${refused.kept} next=${refused.next} dismiss=${deskWords.dismiss} @notice-dismissed=${() => (this.refused = null)}></gh-notice>`;
    return waiting > 0 && link.connection.value !== 'online' ? html`<p role="status">${words.kept(waiting, showFigure(waiting))}</p>` : nothing;
  }

  /** Who else is to measure, and the way back. */
  #foot(study: Study, badge: string) {
    const each = study.parts.length * study.trials;
    const left = study.people.map((person) => ({ ...person, left: each - study.readings.filter((reading) => reading.badge === person.badge).length })).filter((person) => person.badge !== badge && person.left > 0);
    const last = lastOf(study, badge);
    return html`${study.standing !== 'open' || left.length === 0 ? nothing : html`<div><p class="soft">${words.others}</p><ul class="turns">${left.map((person) => html`<li>${words.left(person.name, showFigure(person.left))}</li>`)}</ul><p class="soft">${words.change}</p></div>`}
      <div class="row">${last === null || study.standing !== 'open' ? nothing : html`<gh-button @click=${() => (this.correcting = true)}>${words.correct}</gh-button>`}<a href=${studiesPath()}>${words.list}</a></div>`;
  }

  #question(part: number, label: string) {
    const { asking } = this;
    if (asking === null) return nothing;
    const unit = this.study?.gaugeThen.unit ?? '';
    const written = (value: number): string => `${showFigure(value)} ${unit}`;
    const { likely, least, most } = asking.refusal;
    return html`<gh-sheet open grave .heading=${likely === null ? words.question(written(asking.value)) : words.likely(written(asking.value), written(likely))} .closeWord=${words.other} @keydown=${swallowStrayTyping} @sheet-closed=${() => (this.asking = null)}>
      <p>${words.range(written(least), written(most))}</p>
      ${likely === null ? nothing : html`<gh-button slot="actions" kind="primary" @click=${() => void this.#answer(part, label, likely, false)}>${words.takeLikely(written(likely))}</gh-button>`}
      <gh-button slot="actions" @click=${() => void this.#answer(part, label, asking.value, true)}>${words.keepIt(written(asking.value))}</gh-button>
    </gh-sheet>`;
  }

  #correction(study: Study, badge: string) {
    const last = lastOf(study, badge);
    if (!this.correcting || last === null) return nothing;
    const label = study.parts[last.part - 1]?.label ?? '';
    return html`<gh-sheet open .heading=${words.correctTitle(label)} .closeWord=${words.other} @sheet-closed=${() => (this.correcting = false)}>
      <p>${words.correctHint}</p>
      <gh-keypad hears-all .locale=${locale()} .unit=${study.gaugeThen.unit} ?signed=${study.plausible.least < 0} .words=${{ ...words.keys, demand: words.keypad(label) }}
        @value-entered=${(event: CustomEvent<{ plain: string }>) => void this.#correct(last.reading, enteredFigure(event))}></gh-keypad></gh-sheet>`;
  }

  async #take(part: number, label: string, value: number, sure = false): Promise<void> {
    const { study, live } = this;
    if (study === null || live === null) return;
    this.refused = null;
    const outcome = await live.give({ type: 'takeStudyReading', study: study.id, part, value, ...(sure ? { sure: true } : {}) });
    if (outcome.state !== 'refused') return announce(words.taken(label));
    void link.outbox.dismiss(outcome.clientId);
    if (outcome.refusal.code === 'unlikelyValue') this.asking = { refusal: outcome.refusal, value };
    else this.refused = outcome.words;
  }

  async #answer(part: number, label: string, value: number, sure: boolean): Promise<void> {
    this.asking = null;
    await this.#take(part, label, value, sure);
  }

  async #correct(reading: number, value: number): Promise<void> {
    const { study, live } = this;
    this.correcting = false;
    if (study === null || live === null) return;
    const outcome = await live.give({ type: 'correctStudyReading', study: study.id, reading, value, reason: words.correctReason });
    if (outcome.state !== 'refused') return;
    void link.outbox.dismiss(outcome.clientId);
    this.refused = outcome.words;
  }
}

/** A person's last reading; null before their first. */
function lastOf(study: Study, badge: string): Study['readings'][number] | null {
  return study.readings.findLast((reading) => reading.badge === badge) ?? null;
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-study-measure': GhStudyMeasure;
  }
}
