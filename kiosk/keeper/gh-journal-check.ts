import { LitElement, css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { keeperDeskWords } from '../../shared/words/keeper-desk.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure, showMoment } from '../desk/show.ts';
import { link, LinkFault, type RefusalText } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-verdict.ts';
import { partStyles } from '../parts/part-styles.ts';

const words = keeperDeskWords.journal;

/** What a walk through the whole journal found, as the server tells it. */
interface Verification {
  readonly slips: number;
  readonly streams: number;
  readonly attachments: number;
  readonly brokenAttachment: null | { readonly digest: string; readonly why: string };
  readonly firstBroken: null | { readonly stream: string; readonly version: number; readonly why: string };
}

/** A checkpoint as the server signs it; null where nothing has happened since the last. */
interface Checkpoint { readonly slip: null | { readonly body: { readonly digest: string; readonly streams: number; readonly position: number } } }

/** Has the journal walked through from end to end, and says how to keep a copy of it. */
@customElement('gh-journal-check')
export class GhJournalCheck extends LitElement {
  static override styles = [partStyles, deskStyles, css`.digest { overflow-wrap: anywhere; user-select: all; }`];
  @state() private busy: 'no' | 'verify' | 'checkpoint' = 'no';
  @state() private found: { readonly verification: Verification; readonly at: string } | null = null;
  @state() private signed: Checkpoint | null = null;
  @state() private fault: RefusalText | null = null;

  override render() {
    const { found, fault } = this;
    const broken = found?.verification.firstBroken ?? null;
    const [state, word, sentence] = found === null ? (['waiting', '', ''] as const)
      : found.verification.brokenAttachment !== null ? (['rejected', words.broken.word, words.broken.file(found.verification.brokenAttachment.why)] as const)
      : broken === null ? (['accepted', words.whole.word, words.whole.sentence(showFigure(found.verification.slips), showFigure(found.verification.streams), showFigure(found.verification.attachments))] as const)
      : (['rejected', words.broken.word, words.broken.sentence(broken.stream, showFigure(broken.version), broken.why)] as const);
    const body = this.signed?.slip?.body ?? null;
    return html`<div class="halves">
      <section class="sheet" aria-labelledby="title"><h2 id="title">${words.title}</h2><p>${words.lead}</p>
        <div class="keys"><gh-button kind="primary" .busy=${this.busy === 'verify'} busy-word=${words.verifying} @click=${() => void this.#verify()}>${words.verify}</gh-button>
          <gh-button .busy=${this.busy === 'checkpoint'} busy-word=${words.checkpointing} @click=${() => void this.#checkpoint()}>${words.checkpoint}</gh-button></div>
        ${fault === null ? nothing : html`<gh-notice kind="fault" happened=${fault.happened} kept=${fault.kept} next=${fault.next}></gh-notice>`}
        <gh-verdict state=${state} word=${word} sentence=${sentence}>${found === null ? nothing : html`<p>${words.at(showMoment(found.at))}</p>`}</gh-verdict>
        <gh-verdict state="signed" word=${body === null ? '' : words.checkpointDone.word} sentence=${body === null ? '' : words.checkpointDone.sentence(showFigure(body.streams), showFigure(body.position))}>${body === null ? nothing : html`<p class="figure digest">${body.digest}</p>`}</gh-verdict>
      </section>
      <section class="sheet" aria-labelledby="backup"><h2 id="backup">${words.backupTitle}</h2><p>${words.backup}</p></section>
    </div>`;
  }

  #verify(): Promise<void> {
    return this.#ask('verify', async () => {
      this.found = { verification: await link.ask<Verification>('/api/journal/verify'), at: new Date().toISOString() };
    });
  }

  #checkpoint(): Promise<void> {
    return this.#ask('checkpoint', async () => {
      this.signed = await link.act<Checkpoint>('/api/journal/checkpoint');
    });
  }

  async #ask(what: 'verify' | 'checkpoint', asking: () => Promise<void>): Promise<void> {
    if (this.busy !== 'no') return;
    this.busy = what;
    this.fault = null;
    try {
      await asking();
    } catch (error) {
      if (!(error instanceof LinkFault)) throw error;
      this.fault = error.words;
    } finally {
      this.busy = 'no';
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-journal-check': GhJournalCheck;
  }
}
