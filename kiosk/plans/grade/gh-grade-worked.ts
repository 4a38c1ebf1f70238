import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ReckonedGrade } from '../../../shared/carbide/index.ts';
import { gradePageWords } from '../../../shared/words/grade-page.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { readNumber } from '../../desk/show.ts';
import '../../parts/gh-field.ts';
import { partStyles } from '../../parts/part-styles.ts';
import '../compare/gh-why-sheet.ts';
import { workedOut, type Worked } from './grade-why.ts';

const words = gradePageWords.worked;

/** What follows from a composition, live; each number tells how it came. */
@customElement('gh-grade-worked')
export class GhGradeWorked extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: grid; gap: var(--gap); }
    dl { margin: 0; display: grid; gap: 0; border-block: var(--rule-strong) solid var(--line-strong); }
    dl > div { display: grid; grid-template-columns: minmax(0, 1fr) auto; gap: var(--gap); align-items: center; border-block-end: var(--rule) solid var(--line); }
    dl > div:last-child { border-block-end: 0; }
    dd { margin: 0; }
    button { display: inline-flex; align-items: center; gap: 0.45em; min-block-size: max(32px, var(--target)); font: inherit; font-family: var(--face-figures); font-weight: 650; color: inherit; background: none; border: 0; padding: 0; cursor: pointer; text-align: end; touch-action: manipulation; }
    .figure { border-block-end: 2px dotted var(--line-strong); }
    .ask { font-family: var(--face); font-size: 0.75em; font-weight: 700; color: var(--link); border: 1.5px solid currentColor; border-radius: var(--corner); min-inline-size: 1.5em; text-align: center; line-height: 1.35; flex: none; }
    button:active { background: var(--slip-under); }
    @media print { .ask { display: none; } }
  `];
  @property({ attribute: false }) grade: ReckonedGrade | null = null;
  @state() private intercept = '';
  @state() private asked: string | null = null;

  override render() {
    const { grade } = this;
    if (grade === null) return html`<p class="soft">${words.waits}</p>`;
    const numbers = workedOut(grade, readNumber(this.intercept));
    const why = numbers.find(({ key }) => key === this.asked) ?? null;
    return html`<dl>${numbers.map((each) => this.#number(each))}</dl>
      ${grade.fullSaturation === null ? html`<p class="soft">${words.noCobalt}</p>` : nothing}
      <gh-field label=${words.intercept} unit="µm" entry="decimal" hint=${words.coercivityOutside} .value=${this.intercept} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.intercept = detail.value)}></gh-field>
      <gh-why-sheet .why=${why?.why ?? null} heading=${why?.name ?? ''} shown=${why === null ? '' : `${why.shown} ${why.unit}`} @sheet-closed=${() => (this.asked = null)}></gh-why-sheet>`;
  }

  #number({ key, name, shown, unit }: Worked) {
    return html`<div><dt>${name}</dt><dd><button type="button" aria-label=${words.how(name, `${shown} ${unit}`)} @click=${() => (this.asked = key)}><span class="figure">${shown} ${unit}</span><span class="ask" aria-hidden="true">?</span></button></dd></div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-grade-worked': GhGradeWorked;
  }
}
