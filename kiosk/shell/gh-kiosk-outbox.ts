import { LitElement, css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { Follow, link, type KeptEntry } from '../link/index.ts';
import '../parts/gh-outbox-bar.ts';
import { partStyles } from '../parts/part-styles.ts';
import { shellWords } from './words.ts';

const loadSheet = (): Promise<unknown> => import('./gh-outbox-sheet.ts');

/** The line at the foot of the kiosk: the network, how many entries are kept here, how many were refused. */
@customElement('gh-kiosk-outbox')
export class GhKioskOutbox extends LitElement {
  static override styles = [
    partStyles,
    css`
      :host { position: sticky; inset-block-end: 0; z-index: 1; }
      @media print { :host { display: none; } }
    `,
  ];
  @state() private shown = false;
  readonly #entries = new Follow(this, () => link.outbox.entries);
  readonly #connection = new Follow(this, () => link.connection);
  readonly #session = new Follow(this, () => link.session);

  override connectedCallback(): void {
    super.connectedCallback();
    // Without a network its code could not be fetched, and that is when it is wanted.
    requestIdleCallback(() => void loadSheet().catch(() => null));
  }

  override render() {
    const words = shellWords();
    const entries = this.#entries.value;
    const connection = this.#connection.value;
    const unsent = entries.filter(({ refused }) => refused === null);
    const refused = entries.length - unsent.length;
    const moving = connection === 'online' && unsent.some(({ by }) => by === this.#session.value?.badge);
    return html`<gh-outbox-bar
        link=${connection === 'offline' ? 'offline' : moving ? 'sending' : 'online'}
        link-word=${words.linkWord[connection]}
        kept-word=${this.#keptWord(unsent, moving)}
        refused-word=${refused === 0 ? '' : words.refused(refused)}
        open-word=${entries.length === 0 ? '' : words.showKept}
        @outbox-opened=${this.#show}
      ></gh-outbox-bar>
      ${this.shown ? html`<gh-outbox-sheet @sheet-closed=${() => (this.shown = false)}></gh-outbox-sheet>` : nothing}`;
  }

  #keptWord(unsent: readonly KeptEntry[], moving: boolean): string {
    const words = shellWords();
    if (unsent.length === 0) return '';
    const others = [...new Set(unsent.filter(({ by }) => by !== this.#session.value?.badge).map(({ name }) => name))];
    const count = moving ? words.sending(unsent.length) : words.kept(unsent.length);
    return others.length === 0 ? count : `${count}, ${words.otherPeople(others)}`;
  }

  readonly #show = async (): Promise<void> => {
    // Fetched ahead at sign-on; where even that failed, the key does nothing until the network is back.
    this.shown = await import('./gh-outbox-sheet.ts').then(() => true, () => false);
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-kiosk-outbox': GhKioskOutbox;
  }
}
