import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { componentOf, COMPONENTS } from '../../../shared/carbide/index.ts';
import { gradePageWords } from '../../../shared/words/grade-page.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { readNumber, showFigure } from '../../desk/show.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-field.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import type { PartText } from './grade-form.ts';

const words = gradePageWords.composition;
type Typed = CustomEvent<{ value: string }>;

/**
 * The components of a grade, one a line: share by mass, and the plant's own density where it has one.
 * @fires parts-typed - with `{ parts }`
 */
@customElement('gh-grade-composition')
export class GhGradeComposition extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: grid; gap: var(--gap); }
    .part { display: grid; grid-template-columns: minmax(5rem, 1.2fr) minmax(5rem, 1fr) minmax(6rem, 1.2fr) auto; gap: var(--gap); align-items: start; border-block-end: var(--rule) solid var(--line); padding-block-end: 0.3em; }
    .part gh-button { align-self: end; }
    .known { grid-column: 1 / -1; font-size: var(--text-small); color: var(--ink-soft); }
  `];
  @property({ attribute: false }) parts: readonly PartText[] = [];

  override render() {
    const sum = this.parts.reduce((total, { percent }) => total + (readNumber(percent) ?? 0), 0);
    return html`${this.parts.map((part, at) => this.#part(part, at))}
      <div class="head"><gh-button @click=${() => this.#put([...this.parts, { component: '', percent: '', density: '' }])}>${words.add}</gh-button><p role="status">${words.sum(showFigure(Number(sum.toFixed(4))))}</p></div>`;
  }

  #part(part: PartText, at: number) {
    const known = componentOf(part.component);
    const put = (change: Partial<PartText>) => this.#put(this.parts.map((each, index) => (index === at ? { ...each, ...change } : each)));
    const said = part.component.trim() === '' ? '' : part.density.trim() !== '' ? words.own : known === null ? words.unknown : `${words.table(showFigure(known.densityGPerCm3))}, ${known.source} (${known.evidence})`;
    return html`<div class="part" role="group" aria-label=${words.row(at + 1)}>
      <gh-field label=${words.component} max-length="40" .value=${part.component} .suggestions=${COMPONENTS.map(({ formula }) => formula)} @field-input=${({ detail }: Typed) => put({ component: detail.value })}></gh-field>
      <gh-field label=${words.percent} unit="wt%" entry="decimal" .value=${part.percent} @field-input=${({ detail }: Typed) => put({ percent: detail.value })}></gh-field>
      <gh-field label=${words.density} unit="g/cm³" entry="decimal" .value=${part.density} @field-input=${({ detail }: Typed) => put({ density: detail.value })}></gh-field>
      <gh-button ?disabled=${this.parts.length < 2} @click=${() => this.#put(this.parts.toSpliced(at, 1))}><span aria-hidden="true">×</span><span class="unseen">${words.remove(part.component)}</span></gh-button>
      <p class="known">${said}</p></div>`;
  }

  #put(parts: readonly PartText[]): void {
    tell(this, 'parts-typed', { parts });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-grade-composition': GhGradeComposition;
  }
}
