import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { planCompareWords as words } from '../../../shared/words/plan-compare.en.ts';
import { planWhyWords } from '../../../shared/words/plan-why.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import '../../parts/gh-button.ts';
import type { LineLetter } from '../../parts/line-letters.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { goTo } from '../../shell/navigation.ts';
import { planPath } from '../catalogue-view.ts';
import { choiceOf, choiceText, lettered, type Choice, type LetteredChoice } from './choice.ts';
import { comparedPlan, type Outcome } from './compared-plan.ts';
import { comparePath, readComparison, type Comparison, type ModelName, type Settings } from './comparison.ts';
import type { Curves } from './curves.ts';
import type { Figures } from './figures.ts';
import './gh-choice-card.ts';
import './gh-compare-curves.ts';
import './gh-compare-figures.ts';
import './gh-compare-scheme.ts';
import './gh-curve-table.ts';
import './gh-simulated-year.ts';
import './gh-why-sheet.ts';
import { whyOf } from './why.ts';
import type { WhyAsked } from './why-asked.ts';

const most = 4;

/** Plans side by side: how each is chosen, what it asks for, its risks and its effort. The address holds all of it. */
@customElement('gh-plan-compare')
export class GhPlanCompare extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: grid; gap: calc(2.4 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
    .both { display: grid; grid-template-columns: minmax(0, 36rem) minmax(0, 1fr); gap: calc(1.6 * var(--pad)); align-items: start; }
    .cards { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: var(--pad); }
    .chart { position: sticky; inset-block-start: 0; }
    .add { display: grid; place-items: center; border: var(--rule-strong) dashed var(--line-strong); min-block-size: 5.5rem; }
    .add.wide { grid-column: 1 / -1; }
    .add gh-button { --target: 48px; }
    .rest { display: grid; gap: calc(3 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
    @media (width < 1100px) { .both { grid-template-columns: minmax(0, 1fr); } .chart { position: static; } }
    @media (width < 560px) { .cards { grid-template-columns: minmax(0, 1fr); } }
    @media print { .both { grid-template-columns: minmax(0, 1fr); } .chart { position: static; } }
  `];
  @property({ attribute: false }) query = new URLSearchParams();
  @state() private asked: WhyAsked | null = null;
  @state() private curves: Curves | null = null;
  #comparison: Comparison = readComparison(new URLSearchParams());
  #outcomes: readonly { readonly choice: LetteredChoice; readonly outcome: Outcome }[] = [];
  #figures: readonly Figures[] = [];

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('query')) return;
    this.#comparison = readComparison(this.query);
    const { choices, settings } = this.#comparison;
    this.#outcomes = lettered(choices).map((choice) => ({ choice, outcome: this.#worked(choice, settings.model) }));
    this.#plans = this.#outcomes.flatMap(({ outcome }) => ('plan' in outcome ? [outcome.plan] : []));
  }
  #plans: readonly Extract<Outcome, { readonly plan: unknown }>['plan'][] = [];

  override render() {
    const { settings, choices } = this.#comparison;
    const plans = this.#plans;
    const [from = '', version] = settings.from.split('/');
    return html`<div class="head"><div><h2>${words.title}</h2><p class="soft">${words.lead}</p></div>
        <div class="keys screen-only">${from === '' ? nothing : html`<a href=${planPath(from, Number(version) || undefined)}>${words.back(from)}</a>`}<gh-button @click=${() => print()}>${words.print}</gh-button></div></div>
      <div class="both"><div class="cards" @choice-changed=${this.#changed} @choice-removed=${this.#removed} @why-wanted=${this.#why}>
        ${this.#outcomes.map(({ choice, outcome }) => html`<gh-choice-card .choice=${choice} .outcome=${outcome} ?removable=${choices.length > 1} ?perHundred=${settings.model === 'poisson'}></gh-choice-card>`)}
        ${choices.length >= most ? nothing : html`<div class="add screen-only ${choices.length % 2 === 0 ? 'wide' : ''}"><gh-button @click=${this.#add}>${words.add}</gh-button></div>`}
      </div><div class="chart" @settings-changed=${this.#set}><gh-compare-curves .plans=${plans} .settings=${settings} @curves-worked=${({ detail }: CustomEvent<{ curves: Curves | null }>) => (this.curves = detail.curves)}></gh-compare-curves></div></div>
      <div class="rest" @settings-changed=${this.#set} @why-wanted=${this.#why}>
        <gh-compare-figures .plans=${plans} .settings=${settings} @figures-worked=${({ detail }: CustomEvent<{ figures: readonly Figures[] }>) => (this.#figures = detail.figures)}></gh-compare-figures>
        <gh-curve-table .plans=${plans} .curves=${this.curves}></gh-curve-table>
        <gh-compare-scheme .plans=${plans} .settings=${settings}></gh-compare-scheme>
        <gh-simulated-year .plans=${plans} .settings=${settings}></gh-simulated-year>
      </div>
      ${this.#sheet()}`;
  }

  #sheet() {
    const { asked } = this;
    const plan = asked === null ? undefined : this.#plans.find(({ letter }) => letter === asked.letter);
    const why = asked === null || plan === undefined ? null : whyOf(asked.kind, plan, { settings: this.#comparison.settings, figures: this.#figures.find(({ letter }) => letter === asked.letter) ?? null });
    return html`<gh-why-sheet .why=${why} heading=${asked === null ? '' : planWhyWords.heading(asked.name, asked.letter)} shown=${asked?.shown ?? ''} @sheet-closed=${() => (this.asked = null)}></gh-why-sheet>`;
  }

  readonly #why = ({ detail }: CustomEvent<WhyAsked>): void => {
    this.asked = detail;
  };

  readonly #changed = ({ detail }: CustomEvent<{ letter: LineLetter; choice: Choice }>): void => {
    this.#go({ choices: lettered(this.#comparison.choices).map(({ letter, rule, texts }) => (letter === detail.letter ? detail.choice : { rule, texts })) });
  };

  readonly #removed = ({ detail }: CustomEvent<{ letter: LineLetter }>): void => {
    this.#go({ choices: lettered(this.#comparison.choices).filter(({ letter }) => letter !== detail.letter) });
  };

  /** A further plan begins as the last one, so that one thing can be changed and seen. */
  readonly #add = (): void => {
    const { choices } = this.#comparison;
    this.#go({ choices: [...choices, choices.at(-1) ?? choiceOf('attributes')] });
  };

  readonly #set = ({ detail }: CustomEvent<{ changes: Partial<Settings> }>): void => {
    this.#go({ settings: { ...this.#comparison.settings, ...detail.changes } });
  };

  /** Plans that were worked out before are not looked for again: a two-point design may take its time. */
  #worked(choice: LetteredChoice, model: ModelName): Outcome {
    const key = `${choice.letter} ${choiceText(choice)} ${model}`;
    const outcome = this.#known.get(key) ?? comparedPlan(choice, model);
    this.#known.set(key, outcome);
    return outcome;
  }
  readonly #known = new Map<string, Outcome>();

  #go(changes: Partial<Comparison>): void {
    goTo(comparePath({ ...this.#comparison, ...changes }), 'replace');
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-plan-compare': GhPlanCompare;
  }
}
