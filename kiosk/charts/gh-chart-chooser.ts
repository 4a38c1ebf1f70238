import { LitElement, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { SUBJECT_KINDS } from '../../shared/traveller/index.ts';
import type { GradeCard, LayerCard, PlanState, ProductCard, SubjectKind } from '../../shared/traveller/index.ts';
import { chartsDeskWords } from '../../shared/words/charts-desk.en.ts';
import { askedNotice } from '../desk/asked-notice.ts';
import { chartAddress } from '../desk/chart-address.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { link } from '../link/index.ts';
import '../parts/gh-drop-list.ts';
import { partStyles } from '../parts/part-styles.ts';

const words = chartsDeskWords.choose;
interface Cards { readonly products: readonly ProductCard[]; readonly grades: readonly GradeCard[]; readonly layers: readonly LayerCard[] }
interface Owner { readonly id: string; readonly name: string; readonly plan: string }

/** Leads to the page of a characteristic that is not charted yet. */
@customElement('gh-chart-chooser')
export class GhChartChooser extends LitElement {
  static override styles = [partStyles, deskStyles];
  @state() private kind: SubjectKind = 'lot';
  @state() private owner = '';
  @state() private thing = '';
  readonly #cards = new Asked<Cards>(this, { key: () => '/api/catalogue', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #plan = new Asked<PlanState | null>(this, {
    key: () => this.#chosen()?.plan ?? null,
    read: async (plan) => (await link.ask<{ state: PlanState | null }>(`/api/states?stream=${encodeURIComponent(`plan:${plan}`)}`)).state,
  });

  override render() {
    if (this.#cards.value === null) return askedNotice(this.#cards);
    const owners = this.#owners();
    const things = this.#things();
    const [gate = '', characteristic = ''] = (things.some(({ value }) => value === this.thing) ? this.thing : things[0]?.value ?? '').split('/');
    return html`<section class="sheet"><h2>${words.title}</h2><p class="soft">${words.lead}</p>
      <div class="fields">
        <gh-drop-list label=${words.kind} value=${this.kind} .options=${SUBJECT_KINDS.map((value) => ({ value, text: words.kinds[value] }))} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => this.#turn(detail.value)}></gh-drop-list>
        ${owners.length === 0 ? html`<p class="soft">${words.noOwner}</p>` : html`<gh-drop-list label=${words.owner} value=${this.#chosen()?.id ?? ''} .options=${owners.map(({ id, name }) => ({ value: id, text: name }))} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => (this.owner = detail.value)}></gh-drop-list>`}
        ${things.length === 0 ? nothing : html`<gh-drop-list label=${words.thing} value=${[gate, characteristic].join('/')} .options=${things} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => (this.thing = detail.value)}></gh-drop-list>`}
      </div>
      ${owners.length > 0 && this.#plan.value !== null && things.length === 0 ? html`<p class="soft">${words.none}</p>` : nothing}
      ${characteristic === '' ? nothing : html`<p><a href=${chartAddress({ subjectKind: this.kind, owner: this.#chosen()?.id ?? '', gate, characteristic })}>${words.go}</a></p>`}
    </section>`;
  }

  #turn(value: string): void {
    this.kind = SUBJECT_KINDS.find((kind) => kind === value) ?? 'lot';
    this.owner = this.thing = '';
  }

  #owners(): readonly Owner[] {
    const { products = [], grades = [], layers = [] } = this.#cards.value ?? {};
    switch (this.kind) {
      case 'lot': return products.map(({ id, designation, plan }) => ({ id, name: `${id} · ${designation}`, plan }));
      case 'batch': return grades.map(({ id, name, powderPlan }) => ({ id, name, plan: powderPlan }));
      case 'furnace': return grades.map(({ id, name, furnacePlan }) => ({ id, name, plan: furnacePlan }));
      case 'coating': return layers.map(({ id, name, coatingPlan }) => ({ id, name, plan: coatingPlan }));
    }
  }

  #chosen(): Owner | null {
    const owners = this.#owners();
    return owners.find(({ id }) => id === this.owner) ?? owners[0] ?? null;
  }

  #things(): readonly { readonly value: string; readonly text: string }[] {
    const gates = this.#plan.value?.versions.find(({ inForce }) => inForce)?.plan.gates ?? [];
    return gates.flatMap((gate) => gate.characteristics.filter(({ kind }) => kind === 'measured' || kind === 'counted').map(({ id, name }) => ({ value: `${gate.id}/${id}`, text: `${gate.name}: ${name}` })));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-chart-chooser': GhChartChooser;
  }
}
