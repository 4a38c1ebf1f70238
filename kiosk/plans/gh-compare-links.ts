import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Characteristic } from '../../shared/traveller/index.ts';
import { planVersionsWords as words } from '../../shared/words/plan-versions.en.ts';
import { labels } from '../desk/words.ts';
import { partStyles } from '../parts/part-styles.ts';
import { compareLinks } from './compare/compare-link.ts';

/** Links to the comparison of a rule's risks, one a class that it judges; nothing where there is no risk to draw. */
@customElement('gh-compare-links')
export class GhCompareLinks extends LitElement {
  static override styles = [partStyles, css`
    p { display: flex; flex-wrap: wrap; gap: 0 0.8em; align-items: center; }
    a { color: var(--link); text-underline-offset: 0.2em; min-block-size: max(24px, var(--target)); display: inline-flex; align-items: center; }
  `];
  @property({ attribute: false }) characteristic: Characteristic | null = null;
  /** The plan's page, `PLAN/version`. */
  @property() from = '';
  @property({ attribute: false }) lotSize = 1000;

  override render() {
    const links = this.characteristic === null ? [] : compareLinks(this.characteristic, this.from, this.lotSize);
    if (links.length === 0) return nothing;
    return html`<p>${links.map(({ findingClass, href }) => html`<a href=${href}>${findingClass === null ? words.compare : words.compareClass(labels.findingClasses[findingClass])}</a>`)}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-compare-links': GhCompareLinks;
  }
}
