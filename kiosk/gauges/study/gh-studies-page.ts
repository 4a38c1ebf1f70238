import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { deskStyles } from '../../desk/desk-styles.ts';
import { partStyles } from '../../parts/part-styles.ts';
import type { Route } from '../../shell/routes.ts';
import './gh-study-form.ts';
import './gh-study-list.ts';
import './gh-study-page.ts';

/** The gauge studies: the list, a new one, one study. `/gauges/studies`, `/gauges/studies/new`, `/gauges/studies/S26-0007`, and to measure in it `…/measure`. */
@customElement('gh-studies-page')
export class GhStudiesPage extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) route: Route | null = null;

  override render() {
    const [, id, page] = this.route?.parts ?? [];
    if (id === undefined) return html`<gh-study-list></gh-study-list>`;
    if (id === 'new') return html`<gh-study-form></gh-study-form>`;
    return html`<gh-study-page study=${id} ?measures=${page === 'measure'}></gh-study-page>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-studies-page': GhStudiesPage;
  }
}
