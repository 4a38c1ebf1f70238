import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Characteristic, GatePlan, PlanState } from '../../shared/traveller/index.ts';
import { plansDeskWords } from '../../shared/words/plans-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { showFigure } from '../desk/show.ts';
import { deskWords } from '../desk/words.ts';
import '../parts/gh-button.ts';
import '../parts/gh-field.ts';
import { partStyles } from '../parts/part-styles.ts';
import { goTo } from '../shell/navigation.ts';
import { planPath } from './catalogue-view.ts';
import { draftFault, draftFields, draftKey, withChanges, type DraftField, type KnownAqls } from './draft-fields.ts';

const words = plansDeskWords.draft;

/** A new version of a plan: the numbers of the one before it, changed, with the reason. */
@customElement('gh-plan-draft')
export class GhPlanDraft extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    .row { border-block-start: var(--rule) solid var(--line); padding-block: var(--pad); }
    .foot { border-block-start: var(--rule-strong) solid var(--ink); }
  `];
  @property({ attribute: false }) version: PlanState['versions'][number] | null = null;
  @state() private texts: ReadonlyMap<string, string> = new Map();
  @state() private why = '';
  @state() private asked = false;
  @state() private aqls: KnownAqls | null = null;
  readonly #giving = new Giving(this);

  override connectedCallback(): void {
    super.connectedCallback();
    void this.#loadAqls();
  }

  override render() {
    const { version } = this;
    if (version === null) return nothing;
    const changes = this.#changes();
    return html`<div class="page-part sheet">
      <h2>${words.title(version.plan.name, version.planVersion)}</h2><p class="soft">${words.lead}</p>
      ${version.plan.gates.filter(({ characteristics }) => characteristics.length > 0).map((gate) => html`<section aria-label=${gate.name}><h3>${gate.name}</h3>${gate.characteristics.map((characteristic) => this.#characteristic(gate, characteristic))}</section>`)}
      <div class="sheet foot">
        ${refusalNotice(this.#giving)}
        <p role="status">${changes.size === 0 ? words.nothing : words.changed(showFigure(changes.size))}</p>
        <gh-field label=${words.why} hint=${words.whyHint} max-length="500" .value=${this.why} error=${this.asked && this.why.trim() === '' ? words.whyMissing : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.why = detail.value)}></gh-field>
        <div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#save()}>${words.save}</gh-button> <a href=${planPath(version.plan.id, version.planVersion)}>${deskWords.cancel}</a></div>
      </div>
    </div>`;
  }

  #characteristic(gate: GatePlan, characteristic: Characteristic) {
    const fields = draftFields(characteristic);
    if (fields.length === 0) return nothing;
    return html`<div class="row"><h4>${characteristic.name}</h4><div class="fields">${fields.map((field) => this.#field(draftKey(gate.id, characteristic.id, field.name), field, characteristic))}</div></div>`;
  }

  #field(key: string, field: DraftField, characteristic: Characteristic) {
    const text = this.texts.get(key) ?? field.text;
    const known = this.#aqlsFor(field);
    return html`<gh-field label=${field.label} unit=${characteristic.kind === 'measured' && field.kind === 'number' ? characteristic.unit : ''} entry=${field.kind === 'rating' ? 'text' : 'decimal'} max-length="40"
      .value=${text} hint=${text === field.text ? '' : words.was(field.text)} error=${this.#faultOf(field, text)} .suggestions=${field.kind === 'rating' ? field.scale : known}
      @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.texts = new Map(this.texts).set(key, detail.value))}></gh-field>`;
  }

  #aqlsFor({ kind }: DraftField): readonly string[] {
    return kind === 'attributesAql' ? (this.aqls?.attributes ?? []).map(showFigure) : kind === 'variablesAql' ? (this.aqls?.variables ?? []).map(showFigure) : [];
  }

  #faultOf(field: DraftField, text: string): string {
    return this.aqls === null ? '' : draftFault(field, text, this.aqls);
  }

  /** The fields that differ from the version before. */
  #changes(): ReadonlyMap<string, string> {
    const before = new Map(this.#allFields().map(({ key, field }) => [key, field.text]));
    return new Map([...this.texts].filter(([key, text]) => before.get(key) !== text.trim()));
  }

  #allFields(): readonly { readonly key: string; readonly field: DraftField }[] {
    const gates = this.version?.plan.gates ?? [];
    return gates.flatMap((gate) => gate.characteristics.flatMap((characteristic) => draftFields(characteristic).map((field) => ({ key: draftKey(gate.id, characteristic.id, field.name), field }))));
  }

  async #save(): Promise<void> {
    const { version } = this;
    this.asked = true;
    const changes = this.#changes();
    const sound = this.#allFields().every(({ key, field }) => this.#faultOf(field, changes.get(key) ?? field.text) === '');
    if (version === null || changes.size === 0 || !sound || this.why.trim() === '') return;
    const done = await this.#giving.give('draft', { type: 'draftPlan', plan: withChanges(version.plan, changes), why: this.why.trim() });
    const drafted = done?.state === 'acknowledged' ? done.slips.find(({ body }) => body.type === 'planDrafted')?.body : undefined;
    if (drafted?.type === 'planDrafted') goTo(planPath(version.plan.id, drafted.planVersion), 'replace');
  }

  /** The preferred values stand with the tables, which come only when somebody drafts. */
  async #loadAqls(): Promise<void> {
    const [{ AQLS }, { VARIABLES_AQLS }] = await Promise.all([import('../../shared/sampling/attributes/index.ts'), import('../../shared/sampling/variables/index.ts')]);
    // Plans count nonconforming pieces, so only the percentages to 10; the smallest variables column has no tightened plan beside it.
    this.aqls = { attributes: AQLS.filter((aql) => aql <= 10), variables: VARIABLES_AQLS.slice(1) };
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-draft': GhPlanDraft;
  }
}
