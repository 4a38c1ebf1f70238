import { html, type TemplateResult } from 'lit';
import { planWhyWords } from '../../../shared/words/plan-why.en.ts';
import type { LineLetter } from '../../parts/line-marks.ts';
import { tell } from '../../parts/tell.ts';

/** What can be asked for its reason. */
export const WHY_KINDS = [
  'sample', 'numbers', 'letter', 'producer', 'consumer', 'atLq', 'aoql', 'asnAtAql', 'acceptedExpected', 'asnExpected', 'piecesYear', 'hoursYear', 'usedYear', 'sortedYear', 'scheme', 'schemeAsn', 'schemeAoq', 'share', 'simulated',
] as const;
export type WhyKind = (typeof WHY_KINDS)[number];
export interface WhyAsked { readonly letter: LineLetter; readonly kind: WhyKind; /** The figure as it was shown. */ readonly shown: string; /** What it was called there. */ readonly name: string }

/** A figure that opens its reason: the whole of it is the key. */
export function whyKey(kind: WhyKind, letter: LineLetter, name: string, shown: string): TemplateResult {
  const ask = (event: Event): void => {
    if (event.currentTarget instanceof HTMLElement) tell(event.currentTarget, 'why-wanted', { kind, letter, name, shown } satisfies WhyAsked);
  };
  return html`<button type="button" class="why" aria-label=${planWhyWords.ask(name, letter, shown)} @click=${ask}>${shown}<span class="ask" aria-hidden="true">?</span></button>`;
}
