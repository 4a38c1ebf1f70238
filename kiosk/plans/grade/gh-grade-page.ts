import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { InspectionPlan, SubjectKind } from '../../../shared/traveller/index.ts';
import { formatFor } from '../../../shared/words/format.ts';
import { gradePageWords as words } from '../../../shared/words/grade-page.en.ts';
import { localeFor } from '../../../shared/words/locale.ts';
import { cardFaultText } from '../../../shared/words/record-refusals.en.ts';
import { askedNotice, refusalNotice } from '../../desk/asked-notice.ts';
import { Asked } from '../../desk/asked.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { Giving } from '../../desk/giving.ts';
import { saveCsv } from '../../desk/save-csv.ts';
import { deskWords } from '../../desk/words.ts';
import { link } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-drop-list.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-notice.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { goTo } from '../../shell/navigation.ts';
import { cardPath, type CatalogueView } from '../catalogue-view.ts';
import './gh-carbon-correction.ts';
import './gh-grade-composition.ts';
import './gh-grade-limits.ts';
import './gh-grade-worked.ts';
import { gradeRows } from './grade-csv.ts';
import { cardOf, EMPTY_FORM, faultyLimits, filledLimits, formOf, reckonedOf, shownLimits, type GradeForm, type LimitKey, type PartText } from './grade-form.ts';
import './gh-propose-key.ts';
import { planWithGrade } from './propose-draft.ts';

type Typed = CustomEvent<{ value: string }>;

/** A grade: composition, what follows from it, limits, and the plans proposed from them. Without `grade` a new one. */
@customElement('gh-grade-page')
export class GhGradePage extends LitElement {
  static override styles = [partStyles, deskStyles, css`.two { display: grid; gap: calc(2 * var(--pad)); grid-template-columns: repeat(auto-fit, minmax(min(26rem, 100%), 1fr)); align-items: start; }`];
  @property() grade = '';
  /** What was typed; null until then. */
  @state() private form: GradeForm | null = null;
  @state() private asked = false;
  @state() private said: { readonly text: string; readonly of: string } | null = null;
  readonly #catalogue = new Asked<CatalogueView>(this, { key: () => '/api/catalogue', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #giving = new Giving(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('grade')) return;
    this.form = null;
    this.asked = false;
    // A new grade, once saved, goes on at its own address, and what was said of it comes along.
    if (this.grade === '' || this.said?.of !== this.grade) this.said = null;
  }

  override render() {
    const { value } = this.#catalogue;
    if (value === null) return askedNotice(this.#catalogue);
    const saved = value.grades.find(({ id }) => id === this.grade);
    if (this.grade !== '' && saved === undefined) return html`<gh-notice kind="empty" happened=${words.unknown(this.grade).happened} next=${words.unknown(this.grade).next}></gh-notice>`;
    const form = this.form ?? (saved === undefined ? EMPTY_FORM : formOf(saved));
    const reckoned = reckonedOf(form);
    const limits = shownLimits(form);
    const { card, fault } = cardOf(form);
    const changed = this.form !== null;
    return html`<section class="page-part sheet" aria-labelledby="title">
        <div class="head"><h2 id="title">${saved === undefined ? words.titleNew : words.title(saved.id)}</h2>
          <div class="keys"><gh-button @click=${() => saveCsv(`grade-${card.id === '' ? 'new' : card.id}`, gradeRows(card, reckoned))}>${words.csv}</gh-button></div></div>
        ${saved === undefined ? nothing : html`<p class="soft">${words.changeNote}</p>`}
        ${this.said === null ? nothing : html`<gh-notice kind="done" happened=${this.said.text}></gh-notice>`} ${askedNotice(this.#catalogue)} ${refusalNotice(this.#giving)}
        <div class="fields">
          <gh-field label=${words.fields.id} hint=${words.fields.idHint} max-length="16" ?readonly=${saved !== undefined} .value=${form.id} error=${this.#missing(form.id)} @field-input=${({ detail }: Typed) => this.#put({ ...form, id: detail.value.toUpperCase() })}></gh-field>
          <gh-field label=${words.fields.name} max-length="60" .value=${form.name} error=${this.#missing(form.name)} @field-input=${({ detail }: Typed) => this.#put({ ...form, name: detail.value })}></gh-field>
          ${this.#plan('powderPlan', 'batch', form, value)} ${this.#plan('blendPlan', 'batch', form, value)} ${this.#plan('furnacePlan', 'furnace', form, value)}
        </div>
        <div class="two">
          <div><h3>${words.composition.heading}</h3><gh-grade-composition .parts=${form.parts} @parts-typed=${({ detail }: CustomEvent<{ parts: readonly PartText[] }>) => this.#put({ ...form, parts: detail.parts })}></gh-grade-composition></div>
          <div><h3>${words.worked.heading}</h3><gh-grade-worked .grade=${reckoned}></gh-grade-worked></div>
        </div>
      </section>
      <section class="page-part sheet" aria-labelledby="limits">
        <div class="head"><h3 id="limits">${words.limits.heading}</h3>${saved === undefined ? nothing : html`<gh-button @click=${() => this.#put(filledLimits(form))}>${words.limits.fill}</gh-button>`}</div>
        <p class="soft">${words.limits.note}</p>
        <gh-grade-limits .limits=${limits} .grade=${reckoned} @limit-typed=${({ detail }: CustomEvent<{ key: LimitKey; text: string }>) => this.#put({ ...form, limits: { ...form.limits, [detail.key]: detail.text } })}></gh-grade-limits>
        ${this.asked && fault !== null ? html`<gh-notice kind="refusal" happened=${sentence(cardFaultText(fault, formatFor(localeFor(document.documentElement.lang))))}></gh-notice>` : nothing}
        <div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#save(form)}>${words.save}</gh-button> <a href="/plans/catalogue">${deskWords.cancel}</a></div>
      </section>
      ${saved === undefined ? nothing : html`<section class="page-part sheet" aria-labelledby="proposal"><h3 id="proposal">${words.proposal.heading}</h3>
        <p class="soft">${changed ? words.proposal.save : words.proposal.note}</p>
        ${changed ? nothing : html`<div class="keys">${(['furnace', 'powder'] as const).map((which) => {
          const plan = which === 'furnace' ? saved.furnacePlan : saved.powderPlan;
          return html`<gh-propose-key plan=${plan} label=${words.proposal[which](plan)} .propose=${(now: InspectionPlan) => planWithGrade(now, saved)}></gh-propose-key>`;
        })}</div>`}
      </section>`}
      <section class="page-part sheet" aria-labelledby="correction"><h3 id="correction">${words.correction.heading}</h3><gh-carbon-correction></gh-carbon-correction></section>`;
  }

  #plan(name: 'powderPlan' | 'blendPlan' | 'furnacePlan', subject: SubjectKind, form: GradeForm, { plans }: CatalogueView) {
    const options = plans.filter(({ appliesTo }) => appliesTo === subject).map(({ id, name: text }) => ({ value: id, text: `${text} (${id})` }));
    return html`<gh-drop-list label=${words.fields[name]} .value=${form[name]} .options=${[{ value: '', text: name === 'blendPlan' ? words.fields.ownPowderPlan : '–' }, ...options]} error=${name === 'blendPlan' ? '' : this.#missing(form[name])} @option-chosen=${({ detail }: Typed) => this.#put({ ...form, [name]: detail.value })}></gh-drop-list>`;
  }

  #missing(text: string): string {
    return this.asked && text.trim() === '' ? words.wrong.missing : '';
  }
  #put(form: GradeForm): void {
    this.form = form;
    this.said = null;
  }

  async #save(form: GradeForm): Promise<void> {
    this.asked = true;
    const { card, fault } = cardOf(form);
    if (fault !== null || faultyLimits(shownLimits(form)).length > 0 || [card.id, card.name, card.powderPlan, card.furnacePlan].some((text) => text === '')) return;
    const { grade } = this;
    if ((await this.#giving.give('save', { type: 'defineGrade', grade: card })) === null || grade !== this.grade) return;
    await this.#catalogue.again();
    this.asked = false;
    this.form = null;
    this.said = { text: words.saved(card.id), of: card.id };
    if (grade === '') goTo(cardPath('grade', card.id), 'replace');
  }
}

function sentence(clause: string): string {
  return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`;
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-grade-page': GhGradePage;
  }
}
