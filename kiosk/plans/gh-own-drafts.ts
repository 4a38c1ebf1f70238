import { LitElement, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { planWritingWords } from '../../shared/words/plan-writing.en.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { showFigure, showMoment } from '../desk/show.ts';
import { partStyles } from '../parts/part-styles.ts';
import { planPath } from './catalogue-view.ts';
import type { KeptDraft } from './write/draft-store.ts';

const words = planWritingWords.drafts;

/** What a person has begun to write on this kiosk and not yet drafted. */
@customElement('gh-own-drafts')
export class GhOwnDrafts extends LitElement {
  static override styles = [partStyles, deskStyles];
  @property() badge = '';
  @state() private drafts: readonly KeptDraft[] = [];

  override willUpdate(): void {
    void this.#read();
  }
  override render() {
    if (this.drafts.length === 0) return nothing;
    return html`<section class="sheet" aria-labelledby="title"><h2 id="title">${words.title}</h2><ul class="lines">${this.drafts.map(({ plan, from, now, at }) => html`<li>
      <a href="${planPath(plan, from ?? undefined)}?draft">${words.open(now.name, from === null ? null : showFigure(from))}</a> <span class="soft">${words.at(showMoment(at))}</span></li>`)}</ul></section>`;
  }

  async #read(): Promise<void> {
    const { keptDrafts } = await import('./write/draft-store.ts');
    const drafts = this.badge === '' ? [] : keptDrafts(this.badge);
    if (drafts.length !== this.drafts.length || drafts.some(({ at, plan }, i) => this.drafts[i]?.at !== at || this.drafts[i].plan !== plan)) this.drafts = drafts;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-own-drafts': GhOwnDrafts;
  }
}
