import { LitElement, css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { firstStepsWords as words } from '../../shared/words/first-steps.en.ts';
import type { PersonRow } from '../../shared/wire/views.ts';
import { link } from '../link/index.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { Asked } from './asked.ts';
import { deskStyles } from './desk-styles.ts';

interface PlantSoFar {
  readonly plans: readonly { readonly versions: readonly { readonly inForce: boolean }[] }[];
  readonly grades: readonly unknown[];
  readonly people: readonly PersonRow[];
}
type Step = keyof typeof words.steps;

/** What a new plant does next, until its first plan is in force; afterwards nothing. */
@customElement('gh-first-steps')
export class GhFirstSteps extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: contents; }
    ol { list-style: none; margin: 0; padding: 0; display: grid; gap: var(--gap); }
    li { display: grid; grid-template-columns: minmax(5em, auto) minmax(0, 1fr); gap: 0 1em; align-items: baseline; }
  `];
  readonly #plant = new Asked<PlantSoFar>(this, {
    key: () => '/api/catalogue', topics: ['catalogue', 'people'],
    read: async (path) => ({ ...(await link.ask<Omit<PlantSoFar, 'people'>>(path)), ...(await link.ask<Pick<PlantSoFar, 'people'>>('/api/people')) }),
  });

  override render() {
    const { value } = this.#plant;
    if (value === null || value.plans.some(({ versions }) => versions.some(({ inForce }) => inForce))) return nothing;
    const engineers = value.people.filter(({ active, roles }) => active && roles.includes('engineer')).length;
    const steps: readonly (readonly [Step, boolean])[] = [['people', engineers >= 2], ['records', value.plans.length > 0 && value.grades.length > 0], ['approval', false], ['batch', false]];
    const next = steps.find(([, done]) => !done)?.[0];
    return html`<section class="sheet" aria-labelledby="title"><h2 id="title">${words.title}</h2><p>${words.lead}</p>
      <ol>${steps.map(([step, done]) => html`<li><gh-state-mark size="small" state=${done ? 'accepted' : step === next ? 'open' : 'waiting'} word=${done ? words.done : step === next ? words.next : words.later}></gh-state-mark><span>${words.steps[step]}</span></li>`)}</ol></section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-first-steps': GhFirstSteps;
  }
}
