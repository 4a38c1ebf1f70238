import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { keeperDeskWords as words } from '../../shared/words/keeper-desk.en.ts';
import { offlineNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-tabs.ts';
import { partStyles } from '../parts/part-styles.ts';
import { goTo } from '../shell/navigation.ts';
import type { Route } from '../shell/routes.ts';
import './gh-journal-check.ts';
import './gh-own-pin.ts';
import './gh-people.ts';
import './gh-plant-facts.ts';

const PARTS = ['people', 'plant', 'journal', 'pin'] as const;
type Part = (typeof PARTS)[number];

/** The keeper's desk. The journal's check is for engineers too, the own PIN for everyone; the server decides each command. The gauges have a desk of their own. */
@customElement('gh-keeper-desk')
export class GhKeeperDesk extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) route: Route | null = null;
  readonly #session = new Follow(this, () => link.session);
  readonly connection = new Follow(this, () => link.connection);

  protected override willUpdate(): void {
    // Addresses of before the gauges had a desk.
    if (this.route?.parts[0] === 'gauges') goTo(['/gauges', ...this.route.parts.slice(1).map(encodeURIComponent)].join('/'), 'replace');
  }

  override render() {
    const roles = this.#session.value?.roles ?? [];
    const keeps = roles.includes('keeper');
    const parts = PARTS.filter((part) => keeps || part === 'pin' || (part === 'journal' && roles.includes('engineer')));
    const part = parts.find((each) => each === this.route?.parts[0]) ?? parts[0] ?? 'pin';
    return html`<div class="page">
      <h1>${words.title}</h1>
      <gh-tabs label=${words.partsLabel} current="/keeper/${part}" .tabs=${[...parts.map((each) => ({ href: `/keeper/${each}`, text: words.parts[each] })), ...(keeps ? [{ href: '/gauges', text: words.parts.gauges }] : [])]}></gh-tabs>
      ${offlineNotice()} ${this.#part(part)}
    </div>`;
  }

  #part(part: Part) {
    const chosen = this.route?.parts[1] ?? '';
    const adds = this.route?.query.has('new') ?? false;
    switch (part) {
      case 'people': return html`<gh-people badge=${chosen} ?enrols=${adds}></gh-people>`;
      case 'plant': return html`<gh-plant-facts></gh-plant-facts>`;
      case 'journal': return html`<gh-journal-check></gh-journal-check>`;
      case 'pin': return html`<gh-own-pin></gh-own-pin>`;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-keeper-desk': GhKeeperDesk;
  }
}
