import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { chartsDeskWords as words } from '../../shared/words/charts-desk.en.ts';
import { offlineNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Follow, link } from '../link/index.ts';
import { partStyles } from '../parts/part-styles.ts';
import type { Route } from '../shell/routes.ts';
import './gh-characteristic-page.ts';
import './gh-chart-chooser.ts';
import './gh-chart-list.ts';

/** The charts desk: the list, a characteristic's page, or the choice of one that is not charted yet. */
@customElement('gh-charts-desk')
export class GhChartsDesk extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) route: Route | null = null;
  readonly connection = new Follow(this, () => link.connection);

  override render() {
    const [kind = '', owner = '', gate = '', characteristic = ''] = this.route?.parts ?? [];
    if (characteristic !== '') return html`<div class="page"><p class="screen-only"><a href="/charts">${words.back}</a></p>${offlineNotice()}<gh-characteristic-page stream="chart:${[kind, owner, gate, characteristic].join('/')}"></gh-characteristic-page></div>`;
    return html`<div class="page"><h1>${words.title}</h1>${offlineNotice()}
      ${this.route?.query.has('new') === true ? html`<p class="screen-only"><a href="/charts">${words.back}</a></p><gh-chart-chooser></gh-chart-chooser>` : html`<gh-chart-list></gh-chart-list>`}</div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-charts-desk': GhChartsDesk;
  }
}
