import { LitElement, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { SUBJECT_KINDS, type InspectionPlan, type PlanState, type SubjectKind } from '../../../shared/traveller/index.ts';
import { planWritingWords } from '../../../shared/words/plan-writing.en.ts';
import { askedNotice } from '../../desk/asked-notice.ts';
import { Asked } from '../../desk/asked.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { deskWords, labels } from '../../desk/words.ts';
import { Follow, link, LinkFault, type RefusalText } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-drop-list.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-select-list.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { goTo } from '../../shell/navigation.ts';
import { planPath, type CatalogueView } from '../catalogue-view.ts';
import { keepDraft, keptDraft } from './draft-store.ts';
import { writingStyles } from './writing-styles.ts';

const words = planWritingWords.newPlan;

/** Begins a plan: its number for good, what it is for, and the plan whose gates it starts with. */
@customElement('gh-new-plan')
export class GhNewPlan extends LitElement {
  static override styles = [partStyles, deskStyles, writingStyles];
  @state() private number = '';
  @state() private name = '';
  @state() private appliesTo: SubjectKind = 'lot';
  @state() private like = '';
  @state() private asked = false;
  @state() private fault: RefusalText | null = null;
  readonly #catalogue = new Asked<CatalogueView>(this, { key: () => '/api/catalogue', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const { value } = this.#catalogue;
    if (value === null) return askedNotice(this.#catalogue);
    const likes = value.plans.filter(({ appliesTo }) => appliesTo === this.appliesTo);
    return html`<section class="page-part sheet" aria-labelledby="title"><h2 id="title">${words.title}</h2>
      ${this.fault === null ? nothing : html`<gh-notice kind="fault" happened=${this.fault.happened} kept=${this.fault.kept} next=${this.fault.next}></gh-notice>`}
      <div class="fields">
        <gh-field label=${words.id} hint=${words.idHint} max-length="64" .value=${this.number} error=${this.asked ? this.#wrongNumber(value) : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.number = detail.value.toUpperCase())}></gh-field>
        <gh-field label=${words.name} max-length="80" .value=${this.name} error=${this.asked && this.name.trim() === '' ? planWritingWords.wrong.missing : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.name = detail.value)}></gh-field>
      </div>
      <gh-select-list label=${words.appliesTo} columns="4" .value=${this.appliesTo} .options=${SUBJECT_KINDS.map((kind) => ({ value: kind, text: labels.subjectKinds[kind] }))} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => this.#for(detail.value)}></gh-select-list>
      <gh-drop-list label=${words.from} .value=${this.like} .options=${[{ value: '', text: words.empty }, ...likes.map(({ id, name }) => ({ value: id, text: `${name} (${id})` }))]} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => (this.like = detail.value)}></gh-drop-list>
      <div class="keys"><gh-button kind="primary" @click=${() => void this.#begin(value)}>${words.begin}</gh-button> <a href="/plans">${deskWords.cancel}</a></div>
    </section>`;
  }

  #for(kind: string): void {
    this.appliesTo = SUBJECT_KINDS.find((each) => each === kind) ?? this.appliesTo;
    this.like = '';
  }

  #wrongNumber({ plans }: CatalogueView): string {
    const id = this.number.trim();
    if (!/^[A-Z0-9][A-Z0-9.-]{0,63}$/.test(id)) return words.wrongId;
    if (plans.some((plan) => plan.id === id)) return words.taken;
    return keptDraft(this.#session.value?.badge ?? '', id) === null ? '' : words.chosenTwice;
  }

  async #begin(catalogue: CatalogueView): Promise<void> {
    this.asked = true;
    const badge = this.#session.value?.badge ?? '';
    if (this.#wrongNumber(catalogue) !== '' || this.name.trim() === '' || badge === '') return;
    const before: InspectionPlan = { id: this.number.trim(), name: this.name.trim(), appliesTo: this.appliesTo, gates: [] };
    try {
      const now = this.like === '' ? before : { ...before, gates: await gatesOf(this.like) };
      keepDraft(badge, { plan: before.id, from: null, before, now, steps: [], why: '', at: new Date().toISOString() });
      goTo(`${planPath(before.id)}?draft`);
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.fault = error.words;
    }
  }
}

/** The gates of the version in force, or of the latest. */
async function gatesOf(plan: string): Promise<InspectionPlan['gates']> {
  const { state } = await link.ask<{ readonly state: PlanState | null }>(`/api/states?stream=${encodeURIComponent(`plan:${plan}`)}`);
  const version = state?.versions.find(({ inForce }) => inForce) ?? state?.versions.at(-1);
  return version?.plan.gates ?? [];
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-new-plan': GhNewPlan;
  }
}
