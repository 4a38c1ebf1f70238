import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { formatDesignation } from '../../../shared/carbide/index.ts';
import { AQLS, INSPECTION_LEVELS } from '../../../shared/sampling/attributes/index.ts';
import { VARIABLES_AQLS, VARIABLES_LEVELS } from '../../../shared/sampling/variables/index.ts';
import { FINDING_CLASSES, mayGive } from '../../../shared/traveller/index.ts';
import type { FindingClass, GatePlan, Measured, PlanState } from '../../../shared/traveller/index.ts';
import { designationDeskWords } from '../../../shared/words/designation-desk.en.ts';
import { designationWords } from '../../../shared/words/designation.en.ts';
import { planWritingWords } from '../../../shared/words/plan-writing.en.ts';
import { askedNotice } from '../../desk/asked-notice.ts';
import { Asked } from '../../desk/asked.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { showFigure } from '../../desk/show.ts';
import { Follow, link, LinkFault, type RefusalText } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-drop-list.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-select-list.ts';
import { keyStyles, partStyles } from '../../parts/part-styles.ts';
import { goTo } from '../../shell/navigation.ts';
import { planPath, type CatalogueView } from '../catalogue-view.ts';
import { keepDraft, keptDraft } from '../write/draft-store.ts';
import type { WorkedDesignation } from './limit-texts.ts';
import { firstPlanTexts, proposedFrom, radiusOf, type PlanTexts } from './plan-texts.ts';

const words = designationDeskWords.plan;
const RULES: readonly Measured['decisionRule'][] = ['simple', 'guardedAcceptance', 'guardedRejection'];
type Given = CustomEvent<{ value: string }>;

/** A plan from a designation: AQLs picked, gates of the usual route or of another plan. It becomes a draft to be written on. */
@customElement('gh-designation-plan')
export class GhDesignationPlan extends LitElement {
  static override styles = [partStyles, deskStyles, keyStyles, css`:host { --target: 42px; --target-primary: 46px; } a.key { display: inline-flex; align-items: center; text-decoration: none; }`];
  @property({ attribute: false }) worked: WorkedDesignation | null = null;
  @state() private texts: PlanTexts | null = null;
  @state() private asked = false;
  @state() private fault: RefusalText | null = null;
  #for = '';
  readonly #catalogue = new Asked<CatalogueView>(this, { key: () => '/api/catalogue', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #session = new Follow(this, () => link.session);

  protected override willUpdate(changed: PropertyValues<this>): void {
    const text = this.worked === null ? '' : formatDesignation(this.worked.designation);
    if (!changed.has('worked') || text === this.#for) return;
    this.#for = text;
    this.asked = false;
    this.texts = text === '' ? null : firstPlanTexts(text, words.nameOf(text));
  }

  override render() {
    const { worked, texts } = this;
    if (worked === null || texts === null) return nothing;
    if (!mayGive('draftPlan', this.#session.value?.roles ?? [])) return html`<p class="soft">${words.mayNot}</p>`;
    const { value } = this.#catalogue;
    if (value === null) return askedNotice(this.#catalogue);
    return html`<section class="sheet" aria-labelledby="title"><h2 id="title">${words.heading}</h2><p class="soft">${words.lead}</p>
      ${this.fault === null ? nothing : html`<gh-notice kind="fault" happened=${this.fault.happened} kept=${this.fault.kept} next=${this.fault.next}></gh-notice>`}
      <div class="fields">${this.#typed('id', words.id, this.#wrongNumber(value), { most: 64 })}${this.#typed('name', words.name, texts.name.trim() === '' ? words.wrong.missing : '', { most: 80 })}${this.#typed('marking', words.marking, texts.marking.trim() === '' ? words.wrong.missing : '', { most: 70 })}</div>
      <div class="fields">
        ${this.#chosen('route', words.route, texts.route, [{ value: '', text: words.usual }, ...value.plans.filter(({ appliesTo }) => appliesTo === 'lot').map(({ id, name }) => ({ value: id, text: `${name} (${id})` }))])}
        ${texts.route === '' ? html`<gh-select-list label=${words.coated} columns="2" .value=${texts.coated} .options=${(['yes', 'no'] as const).map((each) => ({ value: each, text: words[each] }))} @option-chosen=${({ detail }: Given) => this.#put({ coated: detail.value === 'no' ? 'no' : 'yes' })}></gh-select-list>` : nothing}
      </div>
      <h3>${words.dimensions}</h3><div class="fields">
        ${this.#chosen('aql', planWritingWords.rule.aql, texts.aql, VARIABLES_AQLS.slice(1).map(figure))}${this.#chosen('level', words.level, texts.level, VARIABLES_LEVELS.map((level) => ({ value: level, text: planWritingWords.rule.variablesLevel(level) })))}
        ${this.#chosen('rule', words.decisionRule, texts.rule, RULES.map((rule) => ({ value: rule, text: planWritingWords.characteristic.decisionRules[rule] })))}
        ${worked.dimensions.cornerRadius === null ? nothing : this.#typed('radius', words.radius, radiusOf(texts) === undefined ? words.wrong.number : '', { most: 8, unit: 'mm', hint: words.radiusHint })}
      </div>
      <h3>${words.looks}</h3><div class="fields">${FINDING_CLASSES.map((each) => this.#looks(each))}${this.#chosen('looksLevel', words.level, texts.looksLevel, INSPECTION_LEVELS.map(same))}</div>
      ${this.#leftOut(worked, texts)}
      <div class="keys"><gh-button kind="primary" @click=${() => void this.#write(value)}>${words.write}</gh-button><a class="key" href="/plans/catalogue/product?designation=${encodeURIComponent(formatDesignation(worked.designation))}">${words.card}</a></div>
    </section>`;
  }

  /** Before anything is written: what the plan will not measure, and why. */
  #leftOut(worked: WorkedDesignation, texts: PlanTexts) {
    if (!worked.isWhole) return html`<gh-notice kind="empty" happened=${words.askFirst}></gh-notice>`;
    const { leftOut } = proposedFrom(worked, texts, null);
    return leftOut.length === 0 ? nothing : html`<p><strong>${words.leftOut}:</strong> ${leftOut.map(({ size, why }) => `${size === 'r' ? words.radiusName : designationWords.sizes[size]} (${words.whyLeftOut[why]})`).join('; ')}</p>`;
  }

  #typed(key: 'id' | 'name' | 'marking' | 'radius', label: string, wrong: string, { most, unit = '', hint = '' }: { readonly most: number; readonly unit?: string; readonly hint?: string }) {
    return html`<gh-field label=${label} hint=${hint} unit=${unit} entry=${key === 'radius' ? 'decimal' : 'text'} max-length=${most} .value=${this.texts?.[key] ?? ''} error=${this.asked ? wrong : ''}
      @field-input=${({ detail }: Given) => this.#put({ [key]: key === 'id' ? detail.value.toUpperCase() : detail.value })}></gh-field>`;
  }
  #chosen(key: 'route' | 'aql' | 'level' | 'rule' | 'looksLevel', label: string, value: string, options: readonly { readonly value: string; readonly text: string }[]) {
    return html`<gh-drop-list label=${label} .value=${value} .options=${options} @option-chosen=${({ detail }: Given) => this.#put({ [key]: detail.value })}></gh-drop-list>`;
  }
  #looks(each: FindingClass) {
    return html`<gh-drop-list label=${planWritingWords.rule.aqlClass(words.classes[each])} .value=${this.texts?.looks[each] ?? ''} .options=${AQLS.filter((aql) => aql <= 10).map(figure)}
      @option-chosen=${({ detail }: Given) => this.texts !== null && this.#put({ looks: { ...this.texts.looks, [each]: detail.value } })}></gh-drop-list>`;
  }

  #put(changes: Partial<PlanTexts>): void {
    if (this.texts !== null) this.texts = { ...this.texts, ...changes };
  }

  #wrongNumber({ plans }: CatalogueView): string {
    const id = this.texts?.id.trim() ?? '';
    if (!/^[A-Z0-9][A-Z0-9.-]{0,63}$/.test(id)) return words.wrong.id;
    if (plans.some((plan) => plan.id === id)) return words.wrong.taken;
    return keptDraft(this.#session.value?.badge ?? '', id) === null ? '' : words.wrong.begun;
  }

  async #write(catalogue: CatalogueView): Promise<void> {
    this.asked = true;
    const { worked, texts } = this;
    const badge = this.#session.value?.badge ?? '';
    if (worked === null || texts === null || badge === '' || !worked.isWhole || this.#wrongNumber(catalogue) !== '' || texts.name.trim() === '' || texts.marking.trim() === '' || radiusOf(texts) === undefined) return;
    try {
      const { plan } = proposedFrom(worked, texts, texts.route === '' ? null : await gatesOf(texts.route));
      keepDraft(badge, { plan: plan.id, from: null, before: { ...plan, gates: [] }, now: plan, steps: [], why: '', at: new Date().toISOString() });
      goTo(`${planPath(plan.id)}?draft=${encodeURIComponent('dimensions')}`);
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.fault = error.words;
    }
  }
}

const same = (value: string) => ({ value, text: value });
const figure = (value: number) => ({ value: String(value), text: showFigure(value) });

/** The gates of the version in force, or of the latest. */
async function gatesOf(plan: string): Promise<readonly GatePlan[]> {
  const { state: found } = await link.ask<{ readonly state: PlanState | null }>(`/api/states?stream=${encodeURIComponent(`plan:${plan}`)}`);
  const version = found?.versions.find(({ inForce }) => inForce) ?? found?.versions.at(-1);
  return version?.plan.gates ?? [];
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-designation-plan': GhDesignationPlan;
  }
}
