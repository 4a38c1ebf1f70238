import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { gaugesDeskWords as words } from '../../shared/words/gauges-desk.en.ts';
import { offlineNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-tabs.ts';
import { partStyles } from '../parts/part-styles.ts';
import type { Route } from '../shell/routes.ts';
import './gh-gauge-page.ts';
import './gh-gauge-recall.ts';
import './gh-gauge-register.ts';
import './gh-recall-list.ts';
import './study/gh-studies-page.ts';

/** The desk's pages in the order of their tabs. Numbers of gauges are upper case, so no gauge has the name of a page. */
const PAGES = ['register', 'recall', 'studies'] as const;
type Page = (typeof PAGES)[number];

/** The desk of the gauges: the register, one gauge's page and its recall. The server decides each command. */
@customElement('gh-gauges-desk')
export class GhGaugesDesk extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) route: Route | null = null;
  readonly connection = new Follow(this, () => link.connection);

  override render() {
    const page = PAGES.find((each) => each === this.route?.parts[0]) ?? 'register';
    // At the bench the part to measure and the keypad have the whole page.
    if (page === 'studies' && this.route?.parts[2] === 'measure') return html`<div class="page">${this.#page(page)}</div>`;
    return html`<div class="page">
      <h1>${words.title}</h1>
      <gh-tabs label=${words.partsLabel} current=${hrefOf(page)} .tabs=${PAGES.map((each) => ({ href: hrefOf(each), text: words.parts[each] }))}></gh-tabs>
      ${offlineNotice()} ${this.#page(page)}
    </div>`;
  }

  #ofGauge([gauge = '', part]: readonly string[]) {
    if (gauge === '') return html`<gh-gauge-register ?registers=${this.route?.query.has('new') ?? false}></gh-gauge-register>`;
    if (part === 'recall') return html`<gh-gauge-recall gauge=${gauge} recall=${this.route?.query.get('recall') ?? ''}></gh-gauge-recall>`;
    return html`<p><a href="/gauges">${words.register.back}</a></p><gh-gauge-page gauge=${gauge}></gh-gauge-page>`;
  }

  #page(page: Page) {
    switch (page) {
      // A page of its own: its name in PAGES, its word in shared/words/gauges-desk, its element here.
      case 'studies': return html`<gh-studies-page .route=${this.route}></gh-studies-page>`;
      case 'register': return this.#ofGauge(this.route?.parts ?? []);
      case 'recall': return html`<gh-recall-list></gh-recall-list>`;
    }
  }
}

function hrefOf(page: Page): string {
  return page === 'register' ? '/gauges' : `/gauges/${page}`;
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-gauges-desk': GhGaugesDesk;
  }
}
