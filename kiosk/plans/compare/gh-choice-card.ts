import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { AQLS, INSPECTION_LEVELS } from '../../../shared/sampling/attributes/index.ts';
import { VARIABLES_AQLS, VARIABLES_LEVELS } from '../../../shared/sampling/variables/index.ts';
import { planCompareWords as words } from '../../../shared/words/plan-compare.en.ts';
import { showFigure, typedFigure } from '../../desk/show.ts';
import { labels } from '../../desk/words.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-drop-list.ts';
import type { DropOption } from '../../parts/gh-drop-list.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-line-key.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import { choiceOf, FIELDS_OF, RULES, SAME_AQL, withText, type Choice, type FieldName, type LetteredChoice } from './choice.ts';
import type { Outcome } from './compared-plan.ts';
import { briefNumbers, briefSamples, briefWay, noteText } from './compared-text.ts';
import { settled } from './read-choice.ts';
import { whyKey } from './gh-why-key.ts';

/**
 * One plan of the comparison: how it is chosen and what comes of it.
 * @fires choice-changed - with `{ letter, choice }`
 * @fires choice-removed - with `{ letter }`
 * @fires why-wanted - with `{ letter, kind }`
 */
@customElement('gh-choice-card')
export class GhChoiceCard extends LitElement {
  static override styles = [partStyles, css`
    :host { display: grid; grid-template-rows: auto auto 1fr; background: var(--slip); border: var(--rule) solid var(--line-strong); border-block-start: calc(1.5 * var(--rule-strong)) solid var(--ink); }
    .head { display: flex; align-items: center; justify-content: space-between; gap: var(--gap); padding: 0.4em var(--pad); border-block-end: 3px double var(--line-strong); min-block-size: 44px; }
    h2 { font-size: var(--text); font-weight: 700; display: flex; align-items: center; gap: 0.6em; }
    .entries { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: 0.5em var(--gap); padding: var(--pad); align-content: start; }
    .entries > :first-child { grid-column: 1 / -1; }
    .first { grid-column-start: 1; }
    .result { border-block-start: var(--rule) solid var(--line); padding: calc(0.8 * var(--pad)) var(--pad); display: grid; gap: 0.35em; align-content: start; background: var(--slip-under); }
    .lot { display: flex; flex-wrap: wrap; gap: 0.1em 0.9em; align-items: baseline; }
    .way { font-size: var(--text-small); }
    .notes { list-style: none; font-size: var(--text-small); color: var(--ink-soft); display: grid; gap: 0.25em; }
    .notes li { padding-inline-start: 0.7em; border-inline-start: 3px solid var(--held); }
    .fault { color: var(--bad); font-weight: 650; border-inline-start: 0.5em solid var(--bad); padding-inline-start: 0.6em; }
    @media print { .entries { display: none; } .head gh-button { display: none; } }
  `];
  @property({ attribute: false }) choice: LetteredChoice = { ...choiceOf('attributes'), letter: 'A' };
  @property({ attribute: false }) outcome: Outcome | null = null;
  @property({ type: Boolean }) removable = false;
  @property({ type: Boolean }) perHundred = false;

  override render() {
    const { choice: { letter, rule }, outcome } = this;
    const faults = outcome !== null && 'faults' in outcome ? outcome.faults : {};
    return html`<div class="head"><h2><gh-line-key letter=${letter}></gh-line-key><span class="unseen">${words.plan(letter)}</span></h2>
        ${this.removable ? html`<gh-button aria-label=${words.remove(letter)} @click=${() => tell(this, 'choice-removed', { letter })}><span aria-hidden="true">✕</span><span class="unseen">${words.remove(letter)}</span></gh-button>` : nothing}</div>
      <div class="entries">
        <gh-drop-list label=${words.rule} .value=${rule} .options=${RULES.map((value) => ({ value, text: words.rules[value] }))} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => this.#toRule(detail.value)}></gh-drop-list>
        ${FIELDS_OF[rule].map((field) => this.#field(field, faults[field] ?? ''))}
      </div>
      <div class="result" role="status">${outcome === null ? nothing : 'faults' in outcome ? html`<p class="fault">${outcome.said}</p>` : this.#result(outcome)}</div>`;
  }

  #result({ plan }: Extract<Outcome, { readonly plan: unknown }>) {
    const { letter } = plan;
    return html`<div class="lot">${whyKey('sample', letter, words.figures.rows.sample, briefSamples(plan))}${briefNumbers(plan).map((line) => whyKey('numbers', letter, words.figures.rows.numbers, line))}</div>
      <p class="way">${whyKey('letter', letter, words.figures.rows.letter, briefWay(plan))}</p>
      ${plan.notes.length === 0 ? nothing : html`<ul class="notes">${plan.notes.map((note) => html`<li>${noteText(note)}</li>`)}</ul>`}`;
  }

  #field(field: FieldName, fault: string) {
    const text = this.choice.texts[field];
    const options = this.#options(field);
    const change = ({ detail }: CustomEvent<{ value: string }>): void => this.#change(withText(this.choice, field, options === null ? settled(detail.value) : detail.value));
    if (options !== null) return html`<gh-drop-list label=${words.fields[field]} .value=${text} .options=${options} error=${fault} @option-chosen=${change}></gh-drop-list>`;
    return html`<gh-field class=${field === 'p1' || field === 'p2' ? 'first' : ''} label=${words.fields[field]} entry="decimal" max-length="14" .value=${/^\d+(\.\d+)?$/.test(text) ? typedFigure(Number(text)) : text} error=${fault} @field-changed=${change}></gh-field>`;
  }

  /** What a field may be where it is one of a few; null where it is typed. */
  #options(field: FieldName): readonly DropOption[] | null {
    const same = (values: readonly string[]): readonly DropOption[] => values.map((value) => ({ value, text: value }));
    const severities = (['normal', 'tightened', 'reduced'] as const).map((value) => ({ value, text: labels.severities[value] }));
    switch (field) {
      case 'level': return same(INSPECTION_LEVELS);
      case 'variablesLevel': return same(VARIABLES_LEVELS);
      case 'aql': return this.choice.rule === 'variables' ? this.#aqls(VARIABLES_AQLS, false) : this.#aqls(this.perHundred ? AQLS : AQLS.filter((aql) => aql <= 10 || String(aql) === this.choice.texts.aql), this.perHundred);
      case 'aqlOther': return [{ value: SAME_AQL, text: words.sameAql }, ...this.#aqls(VARIABLES_AQLS, false)];
      case 'samples': return (['single', 'double', 'multiple'] as const).map((value) => ({ value, text: words.samples[value] }));
      case 'severity': return severities;
      case 'variablesSeverity': return severities.slice(0, 2);
      case 'method': return (['s', 'sigma'] as const).map((value) => ({ value, text: words.methods[value] }));
      default: return null;
    }
  }

  #aqls(known: readonly number[], perHundred: boolean): readonly DropOption[] {
    return known.map((aql) => ({ value: String(aql), text: words.aqlUnit(showFigure(aql), perHundred) }));
  }

  #toRule(value: string): void {
    const rule = RULES.find((each) => each === value);
    if (rule !== undefined) this.#change(choiceOf(rule, { ...this.choice.texts, ...(rule === 'variables' && !VARIABLES_AQLS.map(String).includes(this.choice.texts.aql) ? { aql: '1' } : {}) }));
  }

  #change({ rule, texts }: Choice): void {
    tell(this, 'choice-changed', { letter: this.choice.letter, choice: { rule, texts } });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-choice-card': GhChoiceCard;
  }
}
