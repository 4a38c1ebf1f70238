import { LitElement, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import type { GaugeCard, StudyKind, StudyPart } from '../../../shared/traveller/index.ts';
import type { PersonRow } from '../../../shared/wire/views.ts';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import { Asked } from '../../desk/asked.ts';
import { askedNotice, refusalNotice } from '../../desk/asked-notice.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { Giving } from '../../desk/giving.ts';
import { readNumber, showFigure } from '../../desk/show.ts';
import { deskWords } from '../../desk/words.ts';
import { link } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-select-list.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { goTo } from '../../shell/navigation.ts';
import { today } from '../gauge-standing.ts';
import { studiesPath } from './studies-path.ts';

const words = studiesDeskWords.form;
const KINDS = ['crossed', 'bias', 'linearity'] as const satisfies readonly StudyKind[];
const TEXTS = ['id', 'characteristic', 'tolerance', 'least', 'most', 'trials'] as const;
type Key = (typeof TEXTS)[number];
type Gauge = GaugeCard & { readonly withdrawn: string | null };
interface Choices { readonly gauges: readonly Gauge[]; readonly people: readonly PersonRow[] }

/** Opens a study: what is measured with which gauge, on which parts, by whom, how often. */
@customElement('gh-study-form')
export class GhStudyForm extends LitElement {
  static override styles = [partStyles, deskStyles];
  @state() private kind: StudyKind = 'crossed';
  @state() private fields: Readonly<Record<Key, string>> = { id: '', characteristic: '', tolerance: '', least: '', most: '', trials: '3' };
  @state() private parts = '';
  @state() private gauge = '';
  @state() private people: readonly string[] = [];
  @state() private asked = false;
  readonly #giving = new Giving(this);
  readonly #choices = new Asked<Choices>(this, {
    key: () => 'choices', topics: ['catalogue', 'people'],
    read: async () => {
      const [{ gauges }, { people }] = await Promise.all([link.ask<{ gauges: readonly Gauge[] }>('/api/catalogue'), link.ask<{ people: readonly PersonRow[] }>('/api/people')]);
      return { gauges: gauges.filter(({ withdrawn, calibrationDue }) => withdrawn === null && calibrationDue >= today()), people: people.filter(({ active }) => active) };
    },
  });

  override render() {
    const choices = this.#choices.value;
    return html`<section class="sheet" aria-labelledby="title"><div class="head"><h2 id="title">${words.title}</h2><a href=${studiesPath()}>${words.back}</a></div>
      <p class="soft">${words.lead}</p>${askedNotice(this.#choices)} ${refusalNotice(this.#giving)}
      ${choices === null ? nothing : choices.gauges.length === 0 ? html`<gh-notice happened=${words.noGauge}></gh-notice>` : this.#form(choices)}</section>`;
  }

  #form({ gauges, people }: Choices) {
    const unit = gauges.find(({ id }) => id === this.gauge)?.unit ?? '';
    const field = (key: Key, entry: 'text' | 'decimal' | 'numeric' = 'text', hint = '') => html`<gh-field label=${words.fields[key]} hint=${hint} entry=${entry} unit=${['tolerance', 'least', 'most'].includes(key) ? unit : ''} max-length="80" .value=${this.fields[key]}
      error=${this.asked ? this.#faultOf(key) : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.fields = { ...this.fields, [key]: detail.value })}></gh-field>`;
    const referenced = this.kind !== 'crossed';
    return html`
      <gh-select-list columns="3" label=${words.kind} .value=${this.kind} .options=${KINDS.map((value) => ({ value, text: words.kinds[value], hint: words.kindHints[value] }))} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => (this.kind = KINDS.find((each) => each === detail.value) ?? this.kind)}></gh-select-list>
      <div class="halves">
        <gh-select-list columns="2" label=${words.fields.gauge} .value=${this.gauge} error=${this.asked && this.gauge === '' ? words.chooseGauge : ''} .options=${gauges.map(({ id, name, unit: its }) => ({ value: id, text: id, hint: `${name}, ${its}` }))} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => this.#choose(gauges, detail.value)}></gh-select-list>
        <gh-select-list columns="2" label=${words.fields.people} multiple .values=${this.people} error=${this.asked && this.people.length === 0 ? words.choosePeople : ''} .options=${people.map(({ badge, name }) => ({ value: badge, text: name, hint: badge }))} @options-chosen=${({ detail }: CustomEvent<{ values: readonly string[] }>) => (this.people = detail.values)}></gh-select-list>
      </div>
      <div class="fields">${field('id', 'text', words.hints.id)} ${field('characteristic')} ${field('tolerance', 'decimal')} ${field('least', 'decimal', words.hints.plausible)} ${field('most', 'decimal')} ${field('trials', 'numeric')}</div>
      <gh-field multiline label=${referenced ? words.fields.references : words.fields.parts} hint=${referenced ? words.hints.references : words.hints.parts} .value=${this.parts} error=${this.asked ? this.#partsFault() : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.parts = detail.value)}></gh-field>
      <p class="soft">${words.size(showFigure(this.#lines().length * this.people.length * (readNumber(this.fields.trials) ?? 0)))}</p>
      <div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#open()}>${words.save}</gh-button></div>`;
  }

  /** A gauge's own range stands in for what to expect until something narrower is entered. */
  #choose(gauges: readonly Gauge[], id: string): void {
    const chosen = gauges.find((each) => each.id === id);
    this.gauge = id;
    if (chosen !== undefined) this.fields = { ...this.fields, least: String(chosen.least), most: String(chosen.most) };
  }

  #lines(): readonly string[] {
    return this.parts.split('\n').map((line) => line.trim()).filter((line) => line !== '');
  }
  #partOf(line: string): StudyPart | null {
    if (this.kind === 'crossed') return { label: line.slice(0, 24), reference: null };
    const [label = '', value = ''] = line.split(';').map((text) => text.trim());
    const reference = readNumber(value);
    return label === '' || reference === null ? null : { label: label.slice(0, 24), reference };
  }
  #partsFault(): string {
    const wrong = this.#lines().find((line) => this.#partOf(line) === null);
    return wrong !== undefined ? words.badLine(wrong) : this.#lines().length === 0 ? words.missing : '';
  }
  #faultOf(key: Key): string {
    const text = this.fields[key].trim();
    if (key === 'tolerance' && text === '') return '';
    if (text === '') return words.missing;
    if (key === 'id' || key === 'characteristic') return '';
    const value = readNumber(text);
    if (value === null || (key === 'trials' && !Number.isInteger(value))) return words.noNumber;
    return (key === 'tolerance' || key === 'trials') && value <= 0 ? words.notPositive : '';
  }

  async #open(): Promise<void> {
    this.asked = true;
    if (TEXTS.some((key) => this.#faultOf(key) !== '') || this.#partsFault() !== '' || this.gauge === '' || this.people.length === 0) return;
    const { fields } = this;
    const study = fields.id.trim();
    const done = await this.#giving.give('open', {
      type: 'openStudy', study, studyKind: this.kind, gauge: this.gauge, characteristic: fields.characteristic.trim(), tolerance: fields.tolerance.trim() === '' ? null : readNumber(fields.tolerance),
      plausible: { least: readNumber(fields.least) ?? 0, most: readNumber(fields.most) ?? 0 }, parts: this.#lines().flatMap((line) => this.#partOf(line) ?? []), people: this.people, trials: readNumber(fields.trials) ?? 0,
    });
    if (done !== null) goTo(studiesPath(study));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-study-form': GhStudyForm;
  }
}
