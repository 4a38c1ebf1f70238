import { html, nothing, type TemplateResult } from 'lit';
import { deskWords } from './words.ts';
import { link } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import type { AskedView } from './asked.ts';
import type { Giving } from './giving.ts';

/** What stands in a page's place while an answer is awaited or could not be had; nothing once it is there and fresh. */
export function askedNotice(asked: { readonly view: AskedView<unknown>; again(): Promise<void> }): TemplateResult | typeof nothing {
  const { view } = asked;
  const again = html`<gh-button @click=${() => void asked.again()}>${deskWords.again}</gh-button>`;
  if (view.state === 'loading') return html`<gh-notice kind="loading" happened=${deskWords.loading}></gh-notice>`;
  if (view.state === 'faulty') return html`<gh-notice kind="fault" happened=${view.words.happened} kept=${view.words.kept} next=${view.words.next}>${again}</gh-notice>`;
  if (view.state === 'here' && view.old !== null && link.connection.value !== 'offline') return html`<gh-notice kind="fault" happened=${deskWords.old} next=${view.old.next}>${again}</gh-notice>`;
  return nothing;
}

/** Says that the network is gone; nothing while it is there. */
export function offlineNotice(): TemplateResult | typeof nothing {
  const { happened, kept, next } = deskWords.offline;
  return link.connection.value === 'offline' ? html`<gh-notice kind="offline" happened=${happened} kept=${kept} next=${next}></gh-notice>` : nothing;
}

/** The last refusal, in its own words, until it is dismissed. */
export function refusalNotice(giving: Giving, keys?: readonly string[]): TemplateResult | typeof nothing {
  const { refused } = giving;
  if (refused === null || (keys !== undefined && !keys.includes(refused.key))) return nothing;
  const { happened, kept, next } = refused.words;
  return html`<gh-notice kind="refusal" happened=${happened} kept=${kept} next=${next} dismiss=${deskWords.dismiss} @notice-dismissed=${() => giving.forget()}></gh-notice>`;
}
