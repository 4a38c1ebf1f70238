import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { mayGive } from '../../shared/traveller/index.ts';
import { plansDeskWords as words } from '../../shared/words/plans-desk.en.ts';
import { offlineNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-tabs.ts';
import { partStyles } from '../parts/part-styles.ts';
import type { Route } from '../shell/routes.ts';
import { CARD_KINDS } from './catalogue-view.ts';
import './gh-card-form.ts';
import './gh-catalogue-lists.ts';
import './gh-furnace-record-form.ts';
import './gh-furnace-records.ts';
import './gh-plan-list.ts';
import './gh-plan-page.ts';
import './gh-records-load.ts';
import './gh-switching-states.ts';

const PARTS = ['list', 'designation', 'compare', 'tables', 'switching', 'catalogue', 'cautions'] as const;
const PATHS = { list: '/plans', designation: '/plans/designation', compare: '/plans/compare', tables: '/plans/tables', switching: '/plans/switching', catalogue: '/plans/catalogue', cautions: '/plans/cautions' } as const;

/** The plans desk: plans with their versions, switching states, and the lists of what the plant makes. */
@customElement('gh-plans-desk')
export class GhPlansDesk extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) route: Route | null = null;
  readonly #session = new Follow(this, () => link.session);
  readonly connection = new Follow(this, () => link.connection);

  // Fetched with the desk but not before it: comparing works without a network, and brings the whole sampling engine.
  protected override firstUpdated(): void {
    void import('./compare/gh-plan-compare.ts');
    void import('./cautions/gh-plan-cautions.ts');
    void import('./designation/gh-designation.ts');
    void import('./grade/gh-grade-page.ts');
    void import('./tables/gh-tables.ts');
    void import('./write/gh-new-plan.ts');
  }

  override render() {
    const part = this.route?.parts[0] === 'grade' ? 'catalogue' : PARTS.find((each) => each === this.route?.parts[0]) ?? 'list';
    return html`<div class="page">
      <h1>${words.title}</h1>
      <gh-tabs label=${words.partsLabel} current=${PATHS[part]} .tabs=${PARTS.map((each) => ({ href: PATHS[each], text: words.parts[each] }))}></gh-tabs>
      ${offlineNotice()} ${this.#part(part)}
    </div>`;
  }

  #part(part: (typeof PARTS)[number]) {
    const [first = '', second = '', third = ''] = this.route?.parts ?? [];
    if (part === 'catalogue' && first !== 'grade') return this.#catalogue(second, third);
    if (part === 'designation') return html`<gh-designation text=${second}></gh-designation>`;
    if (part === 'compare') return html`<gh-plan-compare .query=${this.route?.query ?? new URLSearchParams()}></gh-plan-compare>`;
    if (part === 'switching') return html`<gh-switching-states stream=${this.route?.query.get('state') ?? ''}></gh-switching-states>`;
    if (part === 'cautions') return html`<gh-plan-cautions></gh-plan-cautions>`;
    if (part === 'tables') return html`<gh-tables></gh-tables>`;
    if (first === 'grade') return this.#grade(second === 'new' ? '' : second);
    if (first === 'new') return mayGive('draftPlan', this.#session.value?.roles ?? []) ? html`<p class="screen-only"><a href="/plans">${words.back}</a></p><gh-new-plan></gh-new-plan>` : html`<p class="soft">${words.approve.mayNot}</p>`;
    return first === 'plan' && second !== '' ? html`<gh-plan-page plan=${second} chosen=${third} .writing=${this.route?.query.get('draft') ?? null}></gh-plan-page>` : html`<gh-plan-list></gh-plan-list>`;
  }

  #grade(id: string) {
    return html`<p class="screen-only"><a href="/plans/catalogue">${words.catalogue.back}</a></p>${mayGive('defineGrade', this.#session.value?.roles ?? []) ? html`<gh-grade-page grade=${id}></gh-grade-page>` : html`<p class="soft">${words.catalogue.mayNot}</p>`}`;
  }

  #catalogue(kind: string, id: string) {
    const roles = this.#session.value?.roles ?? [];
    const card = CARD_KINDS.find((each) => each === kind);
    const furnace = kind === 'equipment' || kind === 'programme' ? kind : null;
    if (furnace !== null) return html`<p class="screen-only"><a href="/plans/catalogue">${words.catalogue.back}</a></p>${mayGive('defineEquipment', roles) ? html`<gh-furnace-record-form kind=${furnace} card=${id}></gh-furnace-record-form>` : html`<p class="soft">${words.catalogue.mayNot}</p>`}`;
    const loads = this.route?.query.has('load') ?? false;
    if (card === undefined && !loads) return html`<gh-catalogue-lists></gh-catalogue-lists><gh-furnace-records></gh-furnace-records>`;
    const page = !mayGive('draftPlan', roles) ? html`<p class="soft">${words.catalogue.mayNot}</p>` : card === undefined ? html`<gh-records-load></gh-records-load>` : html`<gh-card-form kind=${card} card=${id} designation=${this.route?.query.get('designation') ?? ''}></gh-card-form>`;
    return html`<p class="screen-only"><a href="/plans/catalogue">${words.catalogue.back}</a></p>${page}`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plans-desk': GhPlansDesk;
  }
}
