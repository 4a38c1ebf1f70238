import { LitElement, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { deskWords } from '../../desk/words.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-notice.ts';
import { partStyles } from '../../parts/part-styles.ts';
import './gh-study-measure.ts';
import './gh-study-overview.ts';
import { LiveStudy } from './live-study.ts';
import { studiesPath } from './studies-path.ts';

const words = studiesDeskWords.page;

/** One study: measured in by one of its people, or looked at with its progress and its result. */
@customElement('gh-study-page')
export class GhStudyPage extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property() study = '';
  @property({ type: Boolean }) measures = false;
  readonly #live = new LiveStudy(this, () => this.study);

  override render() {
    const { view } = this.#live;
    switch (view.state) {
      case 'loading': return html`<gh-notice kind="loading" happened=${deskWords.loading}></gh-notice>`;
      case 'faulty': return html`<gh-notice kind="fault" happened=${view.words.happened} kept=${view.words.kept} next=${view.words.next}><gh-button @click=${() => void this.#live.again()}>${deskWords.again}</gh-button></gh-notice>`;
      case 'missing': return html`<gh-notice kind="empty" happened=${words.unknown(this.study).happened} next=${words.unknown(this.study).next}></gh-notice><p><a href=${studiesPath()}>${words.back}</a></p>`;
      case 'here': return this.measures
        ? html`<gh-study-measure .study=${view.study} waiting=${view.waiting} .live=${this.#live}></gh-study-measure>`
        : html`<gh-study-overview .study=${view.study} .gauge=${view.gauge} .live=${this.#live}></gh-study-overview>`;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-study-page': GhStudyPage;
  }
}
