import { LitElement, css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { streamOf, streamParts } from '../../shared/traveller/index.ts';
import { formatFor } from '../../shared/words/format.ts';
import { localeFor } from '../../shared/words/locale.ts';
import { Follow, link, type KeptEntry } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-sheet.ts';
import '../parts/gh-slip.ts';
import { partStyles } from '../parts/part-styles.ts';
import { entrySentence } from './entry-sentence.ts';
import { travellerPath } from './routes.ts';
import { locale, shellWords } from './words.ts';

/** Everything the outbox holds, in the order entered; refused entries with their reason, until set aside. */
@customElement('gh-outbox-sheet')
export class GhOutboxSheet extends LitElement {
  static override styles = [partStyles, css`.list { display: grid; } .why { color: var(--bad); } a { color: var(--link); text-underline-offset: 0.2em; display: inline-block; padding-block: 0.4em; }`];
  readonly #entries = new Follow(this, () => link.outbox.entries);

  override render() {
    const words = shellWords();
    const entries = this.#entries.value;
    return html`<gh-sheet open .heading=${words.outbox} .closeWord=${words.close}>
      ${link.outbox.durable ? nothing : html`<gh-notice kind="fault" .happened=${words.notDurable}></gh-notice>`}
      ${entries.length === 0 ? html`<p>${words.outboxEmpty}</p>` : nothing}
      <div class="list" role="list" aria-label=${words.outbox}>${repeat(entries, ({ clientId }) => clientId, (entry) => this.#entry(entry))}</div>
    </gh-sheet>`;
  }

  #entry({ clientId, command, keptAt, name, bench, refused }: KeptEntry) {
    const words = shellWords();
    const parts = streamParts(streamOf(command));
    const at = formatFor(localeFor(locale())).time(keptAt);
    return html`<gh-slip .at=${at} .datetime=${keptAt} .who=${name} .bench=${bench} .number=${parts?.id ?? ''} .sentence=${entrySentence(command)}
      state=${refused === null ? 'kept' : 'refused'} state-word=${refused === null ? words.kept(1) : words.refused(1)}>
      ${refused === null ? nothing : html`<p class="why">${refused.words.happened} ${refused.words.next}</p>`}
      ${parts === null || refused === null ? nothing : html`<p><a href=${`${travellerPath(parts.kind, parts.id)}?work`}>${words.openTraveller}</a></p>`}
      ${refused === null ? nothing : html`<gh-button slot="actions" @click=${() => void link.outbox.dismiss(clientId)}>${words.setAside}</gh-button>`}
    </gh-slip>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-outbox-sheet': GhOutboxSheet;
  }
}
