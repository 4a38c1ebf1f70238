import { LitElement, html, nothing } from 'lit';
import { property, state } from 'lit/decorators.js';
import { ref } from 'lit/directives/ref.js';
import type { CharacteristicWork, Command, GateRecord, Subject } from '../../../shared/traveller/index.ts';
import type { Reader } from '../../../shared/words/index.ts';
import type { Outcome, RefusalText } from '../../link/index.ts';
import type { TravellerStore } from '../../link/traveller-store.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-sheet.ts';
import { travellerWords } from '../speak.ts';
import { focusWhenShown } from './focus-when-shown.ts';
import { swallowStrayTyping } from './stray-typing.ts';

/** What a piece of gate work is done on. */
export interface WorkAt {
  readonly store: TravellerStore;
  readonly subject: Subject;
  readonly gate: GateRecord;
  readonly work: CharacteristicWork;
  readonly reader: Reader;
}
/** Names a characteristic of an open gate in a command. */
export interface AtCharacteristic { readonly subject: string; readonly gate: string; readonly characteristic: string }

/** What every kind of gate work shares: where it is done, how an entry is given, and the refusal that is shown until it is understood. */
export abstract class GateWork extends LitElement {
  @property({ attribute: false }) at: WorkAt | null = null;
  @state() protected refusal: { readonly clientId: string; readonly words: RefusalText } | null = null;

  protected override render(): unknown {
    return this.at === null ? nothing : html`${this.refusalNotice()}${this.renderWork(this.at)}`;
  }
  protected abstract renderWork(at: WorkAt): unknown;

  /** Gives an entry and shows its refusal. */
  protected async give(command: Command): Promise<Outcome | null> {
    const { at } = this;
    if (at === null) return null;
    this.refusal = null;
    const outcome = await at.store.give(command);
    if (outcome.state === 'refused' && this.showsItself(outcome)) this.refusal = { clientId: outcome.clientId, words: outcome.words };
    return outcome;
  }

  /** False for a refusal that the work asks about in its own way. */
  protected showsItself(_outcome: Extract<Outcome, { state: 'refused' }>): boolean {
    return true;
  }

  protected characteristicOf({ subject, gate, work }: WorkAt): AtCharacteristic {
    return { subject: subject.stream, gate: gate.id, characteristic: work.demand.characteristic.id };
  }

  protected contextOf({ subject, gate }: WorkAt): string {
    const words = travellerWords();
    return [subject.id, words.gateAt(gate.name, gate.bench), ...(gate.original ? [] : [words.attempt(gate.attempt)])].join(' · ');
  }

  protected refusalNotice(): unknown {
    const { refusal } = this;
    if (refusal === null) return nothing;
    const { happened, kept, next } = refusal.words;
    // A sheet, not a line: a gauge that types must not go on to the next piece before this was seen.
    return html`<gh-sheet open grave .heading=${happened} @keydown=${swallowStrayTyping} @sheet-closed=${this.#understood}>
      <p>${kept}</p><p><strong>${next}</strong></p>
      <gh-button ${ref(focusWhenShown)} slot="actions" kind="primary" @click=${this.#understood}>${travellerWords().dismiss}</gh-button>
    </gh-sheet>`;
  }

  readonly #understood = (): void => {
    const { refusal, at } = this;
    this.refusal = null;
    if (refusal !== null && at !== null) void at.store.dismiss(refusal.clientId);
  };
}
