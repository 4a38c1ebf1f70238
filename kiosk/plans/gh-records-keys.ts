import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { recordsFileWords as words } from '../../shared/words/records-file.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { saveFile } from '../desk/save-csv.ts';
import { deskWords } from '../desk/words.ts';
import { LinkFault, type RefusalText } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import { partStyles } from '../parts/part-styles.ts';
import { readRecordsHere } from './read-records-here.ts';
import { recordsFileOf } from './record-standing.ts';

/** Saves the plant's records as a file, and leads to where one is loaded. */
@customElement('gh-records-keys')
export class GhRecordsKeys extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ type: Boolean }) loads = false;
  @state() private busy = false;
  @state() private fault: RefusalText | null = null;

  override render() {
    const { fault } = this;
    return html`<section class="sheet screen-only" aria-labelledby="title"><h2 id="title">${words.title}</h2><p class="soft">${words.lead}</p>
      ${fault === null ? nothing : html`<gh-notice kind="fault" happened=${fault.happened} kept=${fault.kept} next=${fault.next}></gh-notice>`}
      <div class="keys"><gh-button .busy=${this.busy} busy-word=${deskWords.busy} @click=${() => void this.#save()}>${words.save}</gh-button>
        ${this.loads ? html`<a href="/plans/catalogue?load">${words.load}</a>` : html`<p class="soft">${words.mayNot}</p>`}</div></section>`;
  }

  async #save(): Promise<void> {
    this.busy = true;
    this.fault = null;
    try {
      const text = JSON.stringify(recordsFileOf(await readRecordsHere()), null, 2);
      saveFile(words.fileName(new Date().toISOString().slice(0, 10)), new Blob([text, '\n'], { type: 'application/json' }));
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.fault = error.words;
    } finally {
      this.busy = false;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-records-keys': GhRecordsKeys;
  }
}
