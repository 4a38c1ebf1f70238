import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { blendMeans, factorsFrom, isMassToTheGram, POWDER_FACTORS, readFactors, remainingKg } from '../../shared/traveller/index.ts';
import type { Batch, BlendShare, GradeCard, PowderFactors } from '../../shared/traveller/index.ts';
import type { BenchRow } from '../../shared/wire/views.ts';
import { localeFor, parseCount, parseNumber } from '../../shared/words/index.ts';
import { powderToPressWords } from '../../shared/words/powder-to-press.en.ts';
import { link, LinkFault, type RefusalText } from '../link/index.ts';
import '../desk/gh-step-cautions.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-select-list.ts';
import '../parts/gh-sheet.ts';
import { partStyles } from '../parts/part-styles.ts';
import { tell } from '../parts/tell.ts';
import { locale } from '../shell/words.ts';
import { factorTable } from '../traveller/press/factor-table.ts';
import { readBatch, readParts } from '../traveller/press/powder-line.ts';
import { format } from '../traveller/speak.ts';
import { formStyles } from './form-styles.ts';
import { labWords } from './words.ts';

const words = powderToPressWords.blend;
/** The newest batches that are offered; older powder is rarely left. */
const offered = 24;

interface Part { readonly batch: Batch; readonly factors: PowderFactors; readonly left: number }

/**
 * Blends released batches of one grade: how much of each, what is left of each, and what the blend would give pressing while it is entered.
 * @fires subject-opened - with `{ kind, id }`
 * @fires form-left
 */
@customElement('gh-blend-batches')
export class GhBlendBatches extends LitElement {
  static override styles = [partStyles, formStyles, css`
    .parts { display: grid; gap: var(--gap); grid-template-columns: repeat(auto-fill, minmax(15rem, 1fr)); align-items: start; }
    .live { background: var(--slip-under); padding: var(--pad); overflow-x: auto; }
    table { border-collapse: collapse; inline-size: 100%; }
    caption { text-align: start; font-weight: 700; padding-block-end: 0.3em; }
    th, td { text-align: start; padding: 0.3em 0.8em 0.3em 0; border-block-end: var(--rule) solid var(--line); font-weight: 400; }
    td.number, th.number { text-align: end; font-family: var(--face-figures); white-space: nowrap; }
    td.main { font-weight: 700; }
    th small { display: block; color: var(--ink-soft); }
    thead th { font-size: var(--text-small); color: var(--ink-soft); }
  `];
  @property({ attribute: false }) grades: readonly GradeCard[] = [];
  @property({ attribute: false }) batches: readonly BenchRow[] = [];
  @state() private grade = '';
  @state() private number = '';
  @state() private barrels = '';
  @state() private parts: readonly Part[] | null = null;
  @state() private taken: Readonly<Record<string, string>> = {};
  @state() private missing = false;
  @state() private busy = false;
  @state() private refusal: RefusalText | null = null;

  override render() {
    const lab = labWords();
    const { missing, refusal } = this;
    const grades = this.grades.filter(({ name }) => this.batches.some(({ standing, title }) => standing === 'done' && title === name));
    const need = (wrong: boolean): string => (missing && wrong ? lab.missing : '');
    return html`<gh-sheet open .heading=${words.title} .closeWord=${lab.cancel} @sheet-closed=${() => tell(this, 'form-left')}>
      <form @submit=${this.#blend}>
        <gh-step-cautions .step=${'blendBatches' as const}></gh-step-cautions>
        <gh-select-list columns="2" .label=${words.grade} .value=${this.grade} .error=${need(this.grade === '')} .options=${grades.map(({ id, name }) => ({ value: id, text: name, hint: id }))} @option-chosen=${(event: CustomEvent<{ value: string }>) => void this.#choose(event.detail.value)}></gh-select-list>
        ${this.#chosen()}
        <div class="pair">
          <gh-field .label=${words.number} .hint=${lab.numberHint} .value=${this.number} .error=${need(this.number === '')} @field-input=${(event: CustomEvent<{ value: string }>) => (this.number = event.detail.value.toUpperCase())}></gh-field>
          <gh-field entry="numeric" .label=${words.barrels} .value=${this.barrels} .error=${missing && (parseCount(this.barrels) ?? 0) < 1 ? lab.whole : ''} @field-input=${(event: CustomEvent<{ value: string }>) => (this.barrels = event.detail.value)}></gh-field>
        </div>
        ${refusal === null ? nothing : html`<gh-notice kind="refusal" .happened=${refusal.happened} .kept=${refusal.kept} .next=${refusal.next}></gh-notice>`}
        <div><gh-button kind="primary" type="submit" ?busy=${this.busy} busy-word=${words.busy}>${words.open}</gh-button></div>
      </form>
    </gh-sheet>`;
  }

  #chosen() {
    if (this.grade === '') return nothing;
    const { parts } = this;
    if (parts === null) return html`<gh-notice kind="loading" .happened=${powderToPressWords.loading}></gh-notice>`;
    if (parts.length < 2) return html`<p>${words.none}</p>`;
    return html`<h3>${words.from}</h3>
      <div class="parts">${parts.map(({ batch, left }) => html`<gh-field entry="decimal" unit="kg" .label=${words.kg(batch.id)} .hint=${words.left(format().number(left))} .value=${this.taken[batch.id] ?? ''} .error=${this.#wrong(batch.id, left)}
        @field-input=${(event: CustomEvent<{ value: string }>) => (this.taken = { ...this.taken, [batch.id]: event.detail.value })}></gh-field>`)}</div>
      ${this.#live(parts)}`;
  }

  /** What the blend would give, as soon as two parts are entered: worked out by the very rule the server uses. */
  #live(parts: readonly Part[]) {
    const shares = this.#shares();
    if (shares === null || shares.length < 2) return html`<p class="live" role="status">${words.notYet}</p>`;
    const mixed = shares.flatMap(({ batch, kg }) => parts.filter((part) => part.batch.id === batch).map(({ factors }) => ({ kg, factors })));
    const whole = shares.reduce((sum, { kg }) => sum + kg, 0);
    const means = blendMeans(mixed);
    return html`<div class="live" role="status">${factorTable(`${words.live}: ${words.together(format().number(whole))}`, POWDER_FACTORS, factorsFrom(means, POWDER_FACTORS))}<p>${words.rule}</p></div>`;
  }

  #wrong(batch: string, left: number): string {
    const text = this.taken[batch] ?? '';
    if (text.trim() === '') return '';
    const kg = parseNumber(text, localeFor(locale()));
    return kg === null || !isMassToTheGram(kg) ? words.unfit : kg > left ? words.tooMuch : '';
  }

  /** The parts as they will be written; null while one is no mass. */
  #shares(): BlendShare[] | null {
    const entered = Object.entries(this.taken).filter(([, text]) => text.trim() !== '').map(([batch, text]) => ({ batch, kg: parseNumber(text, localeFor(locale())) }));
    const shares = entered.flatMap(({ batch, kg }) => (kg !== null && isMassToTheGram(kg) ? [{ batch, kg }] : []));
    return shares.length < entered.length ? null : shares;
  }

  async #choose(grade: string): Promise<void> {
    this.grade = grade;
    this.parts = null;
    this.taken = {};
    const name = this.grades.find(({ id }) => id === grade)?.name;
    const ids = this.batches.filter(({ standing, title }) => standing === 'done' && title === name).slice(0, offered).map(({ id }) => id);
    try {
      const batches = (await Promise.all(ids.map(readBatch))).filter((batch) => batch !== null);
      const parts = (await Promise.all(batches.map(partOf))).flat();
      if (this.grade === grade) this.parts = parts;
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.refusal = error.words;
      this.parts = [];
    }
  }

  readonly #blend = async (event: Event): Promise<void> => {
    event.preventDefault();
    const [shares, barrels] = [this.#shares(), parseCount(this.barrels) ?? 0];
    this.missing = this.grade === '' || this.number === '' || barrels < 1 || shares === null || shares.length < 2;
    if (this.missing || this.busy || shares === null) return;
    this.busy = true;
    const outcome = await link.give({ type: 'blendBatches', batch: this.number, from: shares, barrels });
    this.busy = false;
    if (outcome.state === 'refused') this.refusal = outcome.words;
    else tell(this, 'subject-opened', { kind: 'batch', id: this.number });
  };
}

/** A released batch with powder left and factors that can be weighted; nothing where one of these is not so. */
async function partOf(batch: Batch): Promise<readonly Part[]> {
  const left = remainingKg(batch);
  if (batch.released === null || left <= 0) return [];
  const parts = await readParts(batch);
  const read = readFactors(batch, (id) => parts.get(id) ?? { ...batch, id, gates: [], blendedFrom: [] });
  return 'missing' in read ? [] : [{ batch, factors: read.factors, left }];
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-blend-batches': GhBlendBatches;
  }
}
