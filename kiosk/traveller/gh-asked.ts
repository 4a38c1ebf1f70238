import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { GateRecord, Subject } from '../../shared/traveller/index.ts';
import { hasBeenPressed, streamParts } from '../../shared/traveller/index.ts';
import type { Reader } from '../../shared/words/index.ts';
import type { RefusalText } from '../link/index.ts';
import type { TravellerStore } from '../link/traveller-store.ts';
import '../parts/gh-button.ts';
import '../parts/gh-demand.ts';
import '../parts/gh-notice.ts';
import { partStyles } from '../parts/part-styles.ts';
import { travellerPath } from '../shell/routes.ts';
import type { AskedNow } from './asked-now.ts';
import { travellerWords } from './speak.ts';
import './gh-before-work.ts';
import './press/gh-powder-gives.ts';
import './press/gh-press-target.ts';
import './work/gh-confirm-work.ts';
import './work/gh-count-work.ts';
import './work/gh-grade-work.ts';
import './work/gh-hold-work.ts';
import './work/gh-look-work.ts';
import './work/gh-measure-work.ts';
import './work/gh-powder-release.ts';
import './work/gh-sort-work.ts';
import './work/gh-weigh-work.ts';
import type { WorkAt } from './work/gate-work.ts';
import { workStyles } from './work/work-styles.ts';

/** The foot of a traveller: the one thing asked now, and what answers it. */
@customElement('gh-asked')
export class GhAsked extends LitElement {
  static override styles = [partStyles, workStyles];
  @property({ attribute: false }) store: TravellerStore | null = null;
  @property({ attribute: false }) subject: Subject | null = null;
  @property({ attribute: false }) asked: AskedNow = { what: 'nothing' };
  @property({ attribute: false }) reader: Reader = {};
  /** The verdict of the gate just worked stands above. */
  @property({ type: Boolean }) verdictShown = false;
  @state() private opening = false;
  @state() private refusal: RefusalText | null = null;

  override render() {
    const { subject, asked, store } = this;
    if (subject === null || store === null) return nothing;
    const words = travellerWords();
    const context = subject.id;
    switch (asked.what) {
      case 'work': return this.#work({ store, subject, gate: asked.gate, work: asked.work, reader: this.reader });
      case 'decide': return html`<gh-hold-work .store=${store} .subject=${subject} .hold=${asked.hold} .reader=${this.reader} ?seen=${this.verdictShown}></gh-hold-work>`;
      case 'sort': return subject.kind === 'lot' ? html`<gh-sort-work .store=${store} .lot=${subject} .gate=${asked.gate}></gh-sort-work>` : nothing;
      case 'open': return this.#open(subject, asked.gate);
      case 'releasePowder': return subject.kind === 'batch' ? html`<gh-powder-release .store=${store} .batch=${subject}></gh-powder-release>` : nothing;
      case 'elsewhere': return this.#elsewhere(context, asked.gate, asked.charge);
      case 'release': return html`<gh-demand .context=${context} .demand=${words.release.demand} .hint=${words.release.hint}><a class="key primary" href=${`/release/${encodeURIComponent(subject.id)}`}>${words.release.key}</a></gh-demand>`;
      case 'pack': return html`<gh-demand .context=${context} .demand=${words.pack.demand} .hint=${words.pack.hint}><a class="key primary" href=${`/packing/${encodeURIComponent(subject.id)}`}>${words.pack.key}</a></gh-demand>`;
      case 'ended': return html`<gh-demand .context=${context} .demand=${words.ended[asked.how].demand} .hint=${words.ended[asked.how].hint}></gh-demand>`;
      case 'nothing': return html`<gh-demand .context=${context} .demand=${subject.kind === 'batch' && subject.released !== null ? words.powder.done : words.nothing.demand} .hint=${words.nothing.hint}></gh-demand>
        ${subject.kind === 'batch' && subject.released !== null ? html`<gh-powder-gives .batch=${subject}></gh-powder-gives>` : nothing}`;
    }
  }

  /** Opens the gate: the server draws the sample. */
  async openGate(subject: Subject, gate: GateRecord): Promise<void> {
    if (this.opening || this.store === null) return;
    this.opening = true;
    const outcome = await this.store.give({ type: 'openGate', subject: subject.stream, gate: gate.id });
    this.opening = false;
    this.refusal = outcome.state === 'refused' ? outcome.words : null;
  }

  #work(at: WorkAt) {
    const { basis, characteristic } = at.work.demand;
    switch (basis.by) {
      case 'attributes': return html`<gh-count-work .at=${at}></gh-count-work>`;
      case 'interval': return html`<gh-look-work .at=${at}></gh-look-work>`;
      case 'everyPiece': return html`<gh-weigh-work .at=${at}></gh-weigh-work>`;
      case 'skipped': return nothing;
      case 'once': return html`<gh-confirm-work .at=${at}></gh-confirm-work>`;
      case 'grade': return html`<gh-grade-work .at=${at}></gh-grade-work>`;
      case 'variables': case 'limits': return characteristic.kind === 'measured' ? html`<gh-measure-work .at=${at}></gh-measure-work>` : nothing;
    }
  }

  #open(subject: Subject, gate: GateRecord) {
    const words = travellerWords().open;
    const { refusal } = this;
    return html`${refusal === null ? nothing : html`<gh-notice kind="refusal" .happened=${refusal.happened} .kept=${refusal.kept} .next=${refusal.next} .dismiss=${travellerWords().dismiss} @notice-dismissed=${() => (this.refusal = null)}></gh-notice>`}
      ${subject.kind === 'lot' && !hasBeenPressed(subject) ? html`<gh-press-target .lot=${subject}></gh-press-target>` : nothing}
      ${subject.kind === 'lot' ? html`<gh-before-work .lot=${subject} .gate=${gate}></gh-before-work>` : nothing}
      <gh-demand .context=${subject.id} .demand=${words.demand(gate.name)} .hint=${[words.hint(gate.bench), ...(gate.attempt === 0 ? [] : [words.again(gate.attempt + 1)])].join(' ')}>
        <gh-button kind="primary" ?busy=${this.opening} busy-word=${words.busy} @click=${() => void this.openGate(subject, gate)}>${words.key(gate.name)}</gh-button>
      </gh-demand>`;
  }

  #elsewhere(context: string, gate: GateRecord, charge: string | null) {
    const words = travellerWords().elsewhere;
    const parts = charge === null ? null : streamParts(charge);
    const said = gate.workedOn === 'batch' ? words.batch(gate.name) : parts === null ? words.waits(gate.name) : words.inCharge(gate.name, parts.id);
    return html`<gh-demand .context=${context} .demand=${said.demand} .hint=${said.hint}>${parts === null ? nothing : html`<a class="key primary" href=${`${travellerPath(parts.kind, parts.id)}?work`}>${words.openCharge}</a>`}</gh-demand>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-asked': GhAsked;
  }
}
