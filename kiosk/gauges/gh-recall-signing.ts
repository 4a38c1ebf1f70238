import { LitElement, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { gaugesDeskWords } from '../../shared/words/gauges-desk.en.ts';
import { refusalNotice } from '../desk/asked-notice.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { focusSheet } from '../desk/focus-sheet.ts';
import { Giving } from '../desk/giving.ts';
import { showFigure } from '../desk/show.ts';
import { deskWords } from '../desk/words.ts';
import { Follow, link } from '../link/index.ts';
import '../parts/gh-field.ts';
import { partStyles } from '../parts/part-styles.ts';
import '../parts/gh-sheet.ts';
import '../parts/gh-signature.ts';
import { tell } from '../parts/tell.ts';

const words = gaugesDeskWords.recall;
/** Subjects of one commit; more are held by one commit after another under the same signature. */
const perCommit = 500;

/**
 * Signs that everything still here is held, or that the recall is closed.
 * @fires recall-signed - with `{ done }`, words of what was done
 */
@customElement('gh-recall-signing')
export class GhRecallSigning extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property({ attribute: false }) what: 'hold' | 'close' | null = null;
  @property() gauge = '';
  @property() recall = '';
  @property({ attribute: false }) subjects: readonly string[] = [];
  @state() private reason = '';
  @state() private error = '';
  @state() private sent = 0;
  readonly #giving = new Giving(this);
  readonly #session = new Follow(this, () => link.session);

  override render() {
    const session = this.#session.value;
    if (this.what === null || session === null) return nothing;
    const [heading, meaning, statement] = this.what === 'hold' ? [words.holdHeading, words.holdMeaning, words.holdStatement(this.recall, showFigure(this.subjects.length))] : [words.closeHeading, words.closeMeaning, words.closeStatement(this.recall)];
    return html`<gh-sheet grave open heading=${heading} close-word=${deskWords.cancel}>
      ${refusalNotice(this.#giving)}
      ${this.sent > 0 ? html`<p role="status">${words.progress(showFigure(this.sent), showFigure(this.subjects.length))}</p>` : nothing}
      <gh-signature meaning=${meaning} who="${session.name} (${session.badge})" statement=${statement} .words=${deskWords.pin} .busy=${this.#giving.busy !== null} @signed=${this.#sign}>
        <gh-field multiline label=${deskWords.reason} hint=${words.reasonHint} max-length="500" .value=${this.reason} error=${this.error} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.reason = detail.value)}></gh-field>
      </gh-signature>
    </gh-sheet>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (this.what !== null && changed.has('what')) void focusSheet(this);
  }

  async #sign({ detail: { pin } }: CustomEvent<{ pin: string }>): Promise<void> {
    const { gauge, recall, what } = this;
    const reason = this.reason.trim();
    this.error = reason === '' ? gaugesDeskWords.register.reasonMissing : '';
    if (reason === '' || what === null) return;
    if (what === 'close') {
      if ((await this.#giving.give('close', { type: 'closeRecall', gauge, recall, reason }, { pin })) === null) return;
      return this.#done(words.closed(recall));
    }
    // The list is taken as it is now: it shrinks while the holds come in.
    const subjects = [...this.subjects];
    for (this.sent = 0; this.sent < subjects.length; this.sent += perCommit) {
      if ((await this.#giving.give('hold', { type: 'holdRecall', gauge, recall, subjects: subjects.slice(this.sent, this.sent + perCommit), reason }, { pin })) === null) return;
    }
    this.#done(words.heldDone(subjects.length, showFigure(subjects.length)));
  }

  #done(done: string): void {
    this.reason = '';
    this.sent = 0;
    tell(this, 'recall-signed', { done });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-recall-signing': GhRecallSigning;
  }
}
