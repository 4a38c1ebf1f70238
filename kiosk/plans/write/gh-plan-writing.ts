import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { OwnTable } from '../../../shared/sampling/attributes/index.ts';
import type { Characteristic, GatePlan, InspectionPlan, PlanState } from '../../../shared/traveller/index.ts';
import type { WrittenCaution } from '../../../shared/wire/cautions-view.ts';
import { planWritingWords as words } from '../../../shared/words/plan-writing.en.ts';
import { planFaults } from '../../../shared/words/record-refusals.en.ts';
import { Asked } from '../../desk/asked.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { showFigure } from '../../desk/show.ts';
import { deskWords, labels } from '../../desk/words.ts';
import { Follow, link } from '../../link/index.ts';
import '../../gauges/gh-risk-what-if.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-sheet.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { goTo } from '../../shell/navigation.ts';
import { planPath } from '../catalogue-view.ts';
import { characteristicForms, withNewKind, withoutKind } from './characteristic-fields.ts';
import { DraftWork } from './draft-work.ts';
import type { EditField } from './edit-field.ts';
import { gateFields, planFields } from './gate-fields.ts';
import './gh-edit-form.ts';
import type { FieldPut } from './gh-edit-form.ts';
import './gh-plan-outline.ts';
import './gh-plan-review.ts';
import './gh-rule-at-size.ts';
import { characteristicAt, gateAt, moved, placeOf, placeText, without, withCharacteristic, withGate, withNewCharacteristic, withNewGate, type PlanPlace } from './plan-edits.ts';
import { changedPlaces } from './plan-differences.ts';
import { writingStyles } from './writing-styles.ts';

/** Writing a plan: its route at one side, the gate or characteristic being written at the other, what has changed at the foot. */
@customElement('gh-plan-writing')
export class GhPlanWriting extends LitElement {
  static override styles = [partStyles, deskStyles, writingStyles];
  /** The version it begins from; for a plan that is new, the empty plan. */
  @property({ attribute: false }) begins: InspectionPlan | null = null;
  @property({ attribute: false }) from: number | null = null;
  @property({ attribute: false }) versions: PlanState['versions'] = [];
  @property({ attribute: false }) tables: readonly OwnTable[] = [];
  /** `gate/characteristic`, or `review`. */
  @property() place = '';
  /** Texts that make nothing sound, by place and field. */
  @state() private texts: ReadonlyMap<string, string> = new Map();
  @state() private size = '1000';
  @state() private discards = false;
  readonly #work = new DraftWork(this);
  readonly #session = new Follow(this, () => link.session);
  readonly #worded = new Asked<{ readonly cautions: readonly WrittenCaution[] }>(this, { key: () => '/api/cautions', read: (path) => link.ask(path), topics: ['catalogue'] });

  get #cautions(): readonly WrittenCaution[] { return this.#worded.value?.cautions ?? []; }

  protected override willUpdate(changed: PropertyValues<this>): void {
    const badge = this.#session.value?.badge ?? '';
    if (this.begins !== null && badge !== '' && (this.#work.draft === null || (changed.has('begins') && this.#work.draft.plan !== this.begins.id))) this.#work.take(badge, { plan: this.begins, from: this.from });
  }

  override render() {
    const { draft, differences, fault } = this.#work;
    if (draft === null) return nothing;
    const latest = this.versions.at(-1)?.planVersion ?? null;
    const behind = draft.from !== null && latest !== null && latest > draft.from;
    if (this.place === 'review') return html`<gh-plan-review .work=${this.#work} .unsound=${this.#unsound()} back=${this.#path('')} @plan-drafted=${this.#drafted}></gh-plan-review>`;
    return html`<div class="page-part writing">
      <div class="head"><h2>${words.title(draft.now.name, draft.from === null ? null : showFigure(draft.from))}</h2><p class="soft">${words.kept}</p></div>
      ${behind ? html`<gh-notice kind="empty" happened=${words.fromOld(showFigure(draft.from ?? 0), showFigure(latest))}></gh-notice>` : nothing}
      <div class="sides">
        <gh-plan-outline .plan=${draft.now} version=${this.from ?? ''} current=${this.place} .changed=${changedPlaces(differences)} .fault=${fault === null ? null : placeText(fault.place)}
          @gate-added=${({ detail }: CustomEvent<{ name: string }>) => this.#add(withNewGate(draft.now, detail.name))}
          @characteristic-added=${({ detail }: CustomEvent<{ gate: string; name: string; kind: Characteristic['kind'] }>) => this.#add(withNewCharacteristic(draft.now, detail.gate, detail.name, detail.kind))}></gh-plan-outline>
        <div class="written">${this.#writtenAt(draft.now)}</div>
      </div>
      <div class="foot">
        <p role="status">${differences.length === 0 ? words.nothing : words.changed(showFigure(differences.length))}</p>
        ${draft.steps.length === 0 ? nothing : html`<gh-button @click=${this.#undo}>${words.undo}</gh-button>`}
        <gh-button @click=${() => (this.discards = true)}>${words.discard}</gh-button>
        ${differences.length === 0 ? nothing : html`<gh-button kind="primary" @click=${() => goTo(this.#path('review'))}>${words.review}</gh-button>`}
      </div>
      <gh-sheet ?open=${this.discards} heading=${words.discardHeading} close-word=${deskWords.cancel} @sheet-closed=${() => (this.discards = false)}>
        <p>${words.discardText}</p><gh-button slot="actions" kind="grave" @click=${this.#discard}>${words.discardDo}</gh-button>
      </gh-sheet>
    </div>`;
  }

  #writtenAt(plan: InspectionPlan) {
    const place = placeOf(this.place);
    const gate = gateAt(plan, place);
    const characteristic = characteristicAt(plan, place);
    if (gate !== null && characteristic !== null) return this.#characteristic(plan, gate, characteristic, place);
    if (gate !== null) return this.#gate(plan, gate, place);
    return html`<section class="sheet" aria-label=${words.planItself}><h3>${words.planItself}</h3>${this.#faultAt(place)}${this.#form(place, planFields(plan), (changed) => changed)}</section>`;
  }

  #gate(plan: InspectionPlan, gate: GatePlan, place: PlanPlace) {
    const at = plan.gates.indexOf(gate);
    return html`<section class="sheet" aria-label=${gate.name}><div class="head"><h3>${gate.name}</h3>${this.#placeKeys(place, at, plan.gates.length)}</div>
      <p class="soft">${words.gate.inPlace(showFigure(at + 1), showFigure(plan.gates.length))}${gate.workedOn === plan.appliesTo ? nothing : html`. ${words.gate.noCharacteristics(labels.subjectKinds[gate.workedOn])}`}</p>
      ${this.#faultAt(place)}${this.#form(place, gateFields(gate, plan, this.#cautions), (changed) => withGate(plan, gate.id, changed))}</section>`;
  }

  #characteristic(plan: InspectionPlan, gate: GatePlan, characteristic: Characteristic, place: PlanPlace) {
    const { what, limits, rule } = characteristicForms(characteristic, plan.appliesTo, this.tables);
    const whole = (changed: Characteristic) => withCharacteristic(plan, place, changed);
    const at = gate.characteristics.indexOf(characteristic);
    return html`<section class="sheet" aria-label=${characteristic.name}>
        <div class="head"><h3>${gate.name}: ${characteristic.name}</h3>${this.#placeKeys(place, at, gate.characteristics.length)}</div>${this.#faultAt(place)}
        <h4>${words.sections.what}</h4>${this.#form(place, what, whole)}
        <h4>${words.sections.rule}</h4>${this.#form(place, rule, whole)}
        <gh-rule-at-size .characteristic=${characteristic} .tables=${this.tables} text=${this.size} from=${this.from === null ? '' : `${plan.id}/${this.from}`} @size-typed=${({ detail }: CustomEvent<{ text: string }>) => (this.size = detail.text)}></gh-rule-at-size>
        <h4>${words.sections.limits[characteristic.kind]}</h4>${characteristic.kind === 'counted' ? this.#kinds(characteristic, place, limits, whole) : this.#form(place, limits, whole)}
        ${characteristic.kind === 'measured' && characteristic.entry.how === 'direct' ? html`<gh-risk-what-if .characteristic=${characteristic}></gh-risk-what-if>` : nothing}
      </section>`;
  }

  /** Each kind of nonconformity on a line of its own, with a key that takes it out. */
  #kinds(counted: Extract<Characteristic, { kind: 'counted' }>, place: PlanPlace, fields: readonly EditField<Characteristic>[], whole: (changed: Characteristic) => InspectionPlan) {
    return html`${counted.kinds.map((kind, at) => html`<div class="kind">${this.#form(place, fields.filter(({ key }) => key.startsWith(`kinds.${at}.`)), whole, true)}
        ${counted.kinds.length < 2 ? nothing : html`<gh-button @click=${() => this.#work.put(whole(withoutKind(counted, at)), '')}>${words.remove}<span class="unseen">: ${kind.name}</span></gh-button>`}</div>`)}
      <div class="keys"><gh-button @click=${() => this.#work.put(whole(withNewKind(counted)), '')}>${words.addKind}</gh-button></div>`;
  }

  #placeKeys(place: PlanPlace, at: number, of: number) {
    const plan = this.#work.draft?.now;
    if (plan === undefined) return nothing;
    return html`<div class="keys">
      ${at > 0 ? html`<gh-button @click=${() => this.#work.put(moved(plan, place, -1), '')}>${words.up}</gh-button>` : nothing} ${at < of - 1 ? html`<gh-button @click=${() => this.#work.put(moved(plan, place, 1), '')}>${words.down}</gh-button>` : nothing}
      <gh-button @click=${() => this.#remove(plan, place)}>${words.remove}</gh-button></div>`;
  }

  #form<T>(place: PlanPlace, fields: readonly EditField<T>[], whole: (changed: T) => InspectionPlan, line = false) {
    const here = placeText(place);
    const texts: Record<string, string> = {};
    const faults: Record<string, string> = {};
    const { fault } = this.#work;
    for (const field of fields) {
      const text = this.texts.get(`${here} ${field.key}`);
      const put = text === undefined ? null : field.put(text);
      if (text !== undefined) texts[field.key] = text;
      if (put !== null && 'fault' in put) faults[field.key] = put.fault;
      else if (fault !== null && placeText(fault.place) === here && fault.fields.some((start) => field.key === start || (start.endsWith('.') && field.key.startsWith(start)))) faults[field.key] = planFaults[fault.why];
    }
    return html`<gh-edit-form ?line=${line} .fields=${fields} .texts=${texts} .faults=${faults} @field-put=${({ detail: { key, text } }: CustomEvent<FieldPut>) => this.#put(here, fields.find((field) => field.key === key), text, whole)}></gh-edit-form>`;
  }

  #put<T>(here: string, field: EditField<T> | undefined, text: string, whole: (changed: T) => InspectionPlan): void {
    if (field === undefined) return;
    const key = `${here} ${field.key}`;
    const put = field.put(text);
    // What was typed stays as it was typed, `12.` too, until the place is left.
    this.texts = new Map(this.texts).set(key, text);
    if ('value' in put) this.#work.put(whole(put.value), field.kind === 'text' || field.kind === 'number' || field.kind === 'whole' || field.kind === 'lines' ? key : '');
  }

  #faultAt(place: PlanPlace) {
    const { fault } = this.#work;
    return fault === null || placeText(fault.place) !== placeText(place) ? nothing : html`<gh-notice kind="refusal" happened=${words.unsound} next="${planFaults[fault.why]}."></gh-notice>`;
  }

  /** Fields whose text makes nothing sound: the plan stands without them, so they hold back the draft. */
  #unsound(): readonly string[] {
    const plan = this.#work.draft?.now;
    if (plan === undefined) return [];
    return [...this.texts].flatMap(([key, text]) => {
      const [here = '', ...rest] = key.split(' ');
      const place = placeOf(here);
      const [gate, characteristic] = [gateAt(plan, place), characteristicAt(plan, place)];
      const { what, limits, rule } = characteristic === null ? { what: [], limits: [], rule: [] } : characteristicForms(characteristic, plan.appliesTo, this.tables);
      const fields: readonly EditField<unknown>[] = characteristic !== null ? [...what, ...limits, ...rule] : gate !== null ? gateFields(gate, plan, this.#cautions) : here === '' ? planFields(plan) : [];
      const field = fields.find((each) => each.key === rest.join(' '));
      const put = field?.put(text);
      return field === undefined || put === undefined || !('fault' in put) ? [] : [words.unsoundAt([gate?.name, characteristic?.name, field.label].filter((part) => part !== undefined).join(', '), put.fault)];
    });
  }

  #add({ plan, place }: { readonly plan: InspectionPlan; readonly place: PlanPlace }): void {
    this.#work.put(plan, '');
    goTo(this.#path(placeText(place)));
  }
  #remove(plan: InspectionPlan, place: PlanPlace): void {
    this.#work.put(without(plan, place), '');
    goTo(this.#path(place.characteristic === '' ? '' : place.gate), 'replace');
  }
  readonly #undo = (): void => {
    this.texts = new Map();
    this.#work.undo();
  };
  readonly #discard = (): void => {
    this.discards = false;
    this.#work.end();
    goTo(this.begins === null || this.from === null ? '/plans' : planPath(this.begins.id, this.from), 'replace');
  };
  readonly #drafted = ({ detail }: CustomEvent<{ plan: string; planVersion: number }>): void => {
    this.#work.end();
    goTo(planPath(detail.plan, detail.planVersion), 'replace');
  };
  #path(place: string): string {
    return `${planPath(this.begins?.id ?? '', this.from ?? undefined)}?draft=${encodeURIComponent(place)}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-writing': GhPlanWriting;
  }
}
