import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { plansDeskWords as words } from '../../shared/words/plans-desk.en.ts';
import { offlineNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-tabs.ts';
import { partStyles } from '../parts/part-styles.ts';
import type { Route } from '../shell/routes.ts';
import './gh-catalogue-lists.ts';
import './gh-plan-list.ts';
import './gh-plan-page.ts';
import './gh-switching-states.ts';

const PARTS = ['list', 'switching', 'catalogue'] as const;
const PATHS = { list: '/plans', switching: '/plans/switching', catalogue: '/plans/catalogue' } as const;

/** The plans desk: plans with their versions, switching states, and the lists of what the plant makes. */
@customElement('gh-plans-desk')
export class GhPlansDesk extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) route: Route | null = null;
  readonly connection = new Follow(this, () => link.connection);

  override render() {
    const part = PARTS.find((each) => each === this.route?.parts[0]) ?? 'list';
    return html`<div class="page">
      <h1>${words.title}</h1>
      <gh-tabs label=${words.partsLabel} current=${PATHS[part]} .tabs=${PARTS.map((each) => ({ href: PATHS[each], text: words.parts[each] }))}></gh-tabs>
      ${offlineNotice()} ${this.#part(part)}
    </div>`;
  }

  #part(part: (typeof PARTS)[number]) {
    const [first = '', second = '', third = ''] = this.route?.parts ?? [];
    if (part === 'catalogue') return html`<gh-catalogue-lists></gh-catalogue-lists>`;
    if (part === 'switching') return html`<gh-switching-states stream=${this.route?.query.get('state') ?? ''}></gh-switching-states>`;
    return first === 'plan' && second !== '' ? html`<gh-plan-page plan=${second} chosen=${third} ?drafting=${this.route?.query.has('draft') ?? false}></gh-plan-page>` : html`<gh-plan-list></gh-plan-list>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plans-desk': GhPlansDesk;
  }
}
