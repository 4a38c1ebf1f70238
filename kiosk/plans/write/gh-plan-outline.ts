import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Characteristic, GatePlan, InspectionPlan } from '../../../shared/traveller/index.ts';
import { planWritingWords as words } from '../../../shared/words/plan-writing.en.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-drop-list.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-state-mark.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import { planPath } from '../catalogue-view.ts';
import { placeText, type PlanPlace } from './plan-edits.ts';
import { kindsFor } from './rule-choices.ts';

/**
 * The route of a plan being written: gates in their order with what each inspects, those changed and the one to be put right marked.
 * @fires gate-added - with `{ name }`
 * @fires characteristic-added - with `{ gate, name, kind }`
 */
@customElement('gh-plan-outline')
export class GhPlanOutline extends LitElement {
  static override styles = [partStyles, css`
    ol { list-style: none; display: grid; border-inline-start: var(--rule-strong) solid var(--line-strong); margin-inline-start: 0.4em; }
    li li { padding-inline-start: 1em; }
    li ol { border: 0; margin: 0; }
    a { display: flex; align-items: center; gap: 0.4em; min-block-size: var(--target); padding: 0.15em 0.6em; color: inherit; text-decoration: none; border-block-end: var(--rule) solid var(--line); overflow-wrap: anywhere; }
    .gate { font-weight: 700; }
    a[aria-current] { background: var(--calm-ground); color: var(--on-calm); --bad: var(--on-calm); --held: var(--on-calm); }
    a:not([aria-current]):hover { background: var(--slip-under); }
    .changed { border-inline-start: 0.4em solid var(--link); }
    .name { flex: 1; min-inline-size: 0; }
    .add { display: grid; gap: var(--gap); padding: var(--pad) 0 var(--pad) 0.6em; }
    :host { position: relative; }
    nav { background: var(--slip); border: var(--rule) solid var(--line-strong); padding: var(--pad); }
  `];
  @property({ attribute: false }) plan: InspectionPlan | null = null;
  @property() version = '';
  /** Where the page is: `gate/characteristic`. */
  @property() current = '';
  @property({ attribute: false }) changed: ReadonlySet<string> = new Set();
  @property() fault: string | null = null;
  @state() private adds: 'gate' | 'characteristic' | null = null;
  @state() private name = '';
  @state() private kind: Characteristic['kind'] = 'counted';

  /** The place being written stays in sight of the outline; the page stays where it is. */
  protected override updated(changed: PropertyValues<this>): void {
    const here = this.renderRoot.querySelector('[aria-current]');
    if (changed.has('current') && here instanceof HTMLElement) this.scrollTop = here.offsetTop - this.clientHeight / 4;
  }

  override render() {
    const { plan } = this;
    if (plan === null) return nothing;
    return html`<nav aria-label=${words.outline}>
      ${this.#link({ gate: '', characteristic: '' }, words.planItself, 'gate')}
      <ol>${plan.gates.map((gate, at) => html`<li>${this.#link({ gate: gate.id, characteristic: '' }, `${at + 1}. ${gate.name}`, 'gate')}
        <ol>${gate.characteristics.map(({ id, name }) => html`<li>${this.#link({ gate: gate.id, characteristic: id }, name, '')}</li>`)}${this.#adding(plan, gate)}</ol></li>`)}</ol>
      <div class="add">${this.adds === 'gate' ? this.#form(words.newGate, words.addGate, () => tell(this, 'gate-added', { name: this.name.trim() })) : html`<gh-button @click=${() => this.#begin('gate')}>${words.addGate}</gh-button>`}</div>
    </nav>`;
  }

  #link(place: PlanPlace, name: string, kind: string) {
    const text = placeText(place);
    const wrong = this.fault === text;
    return html`<a class="${kind} ${this.changed.has(text) ? 'changed' : ''}" href="${planPath(this.plan?.id ?? '')}${this.version === '' ? '' : `/${this.version}`}?draft=${encodeURIComponent(text)}" aria-current=${text === this.current ? 'page' : nothing}><span class="name">${name}</span>
      ${wrong ? html`<gh-state-mark state="refused" word=${words.faultHere} size="small"></gh-state-mark>` : this.changed.has(text) ? html`<span class="unseen">, ${words.change.changed}</span>` : nothing}</a>`;
  }

  /** Characteristics are added to the gate that is open, where it has any of its own. */
  #adding(plan: InspectionPlan, gate: GatePlan) {
    if (this.current.split('/')[0] !== gate.id || gate.workedOn !== plan.appliesTo) return nothing;
    const kinds = kindsFor(plan.appliesTo);
    return html`<li class="add">${this.adds !== 'characteristic'
      ? html`<gh-button @click=${() => this.#begin('characteristic')}>${words.addCharacteristic}</gh-button>`
      : this.#form(words.newCharacteristic, words.addCharacteristic, () => tell(this, 'characteristic-added', { gate: gate.id, name: this.name.trim(), kind: this.kind }), html`<gh-drop-list label=${words.newKind} .value=${this.kind}
          .options=${kinds.map((value) => ({ value, text: words.sections.limits[value] }))} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => (this.kind = kinds.find((each) => each === detail.value) ?? this.kind)}></gh-drop-list>`)}</li>`;
  }

  #form(label: string, key: string, add: () => void, more: unknown = nothing) {
    const done = () => {
      if (this.name.trim() === '') return;
      add();
      this.adds = null;
    };
    return html`<gh-field label=${label} max-length="60" .value=${this.name} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.name = detail.value)}></gh-field>${more}<gh-button kind="primary" @click=${done}>${key}</gh-button>`;
  }
  #begin(adds: 'gate' | 'characteristic'): void {
    this.adds = adds;
    this.name = '';
    const [first = 'counted'] = kindsFor(this.plan?.appliesTo ?? 'lot');
    this.kind = first;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-outline': GhPlanOutline;
  }
}
