import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { planCompareWords } from '../../../shared/words/plan-compare.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { showFigure } from '../../desk/show.ts';
import { SortedTable, type DeskRow } from '../../desk/sorted-table.ts';
import '../../parts/gh-notice.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import { STANDARD_SETTINGS, type Settings } from './comparison.ts';
import type { Compared } from './compared-plan.ts';
import { briefNumbers, briefSamples, briefWay, nameOf, percentText, toDigits } from './compared-text.ts';
import type { Figures } from './figures.ts';
import { numberOf } from './read-choice.ts';
import { expectedOf, lotsOf, minutesOf } from './read-settings.ts';
import { chosenSetting, changeSettings, typedSetting } from './settings-fields.ts';
import { whyKey } from './gh-why-key.ts';
import type { WhyKind } from './why-asked.ts';
import { Work } from './work.ts';

const words = planCompareWords.figures;
type Row = keyof typeof words.rows;

/**
 * Risks and effort of every plan, one row a figure; each figure opens its reason.
 * @fires settings-changed - with `{ changes }`
 * @fires why-wanted - with what was asked
 * @fires figures-worked - with `{ figures }`, when they are worked out
 */
@customElement('gh-compare-figures')
export class GhCompareFigures extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: grid; gap: calc(1.4 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
    @media (width >= 700px) { gh-table { --table-layout: fixed; } }
  `];
  @property({ attribute: false }) plans: readonly Compared[] = [];
  @property({ attribute: false }) settings: Settings = STANDARD_SETTINGS;
  readonly #work = new Work(this, 'figures');
  readonly #table = new SortedTable(this);
  #told: readonly Figures[] | null = null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('plans') && !changed.has('settings')) return;
    const { plans, settings: { model } } = this;
    const expected = expectedOf(this.settings);
    this.#work.want(plans.length === 0 || expected === null ? null : { plans, model, expected });
  }

  protected override updated(): void {
    const { last } = this.#work;
    if (last === this.#told) return;
    this.#told = last;
    tell(this, 'figures-worked', { figures: last ?? [] });
  }

  override render() {
    const { settings } = this;
    const { wrong } = planCompareWords;
    const yesNo = (['no', 'yes'] as const).map((value) => ({ value, text: words[value] }));
    return html`<h2 id="figures">${words.heading}</h2>
      <div class="sheet fields screen-only">
        ${typedSetting(this, settings, 'expected', words.expected, { error: expectedOf(settings) === null ? wrong.percent : '' })} ${typedSetting(this, settings, 'lots', words.lots, { error: lotsOf(settings) === null ? wrong.lots : '' })}
        ${typedSetting(this, settings, 'minutes', words.minutes, { error: minutesOf(settings) === null ? wrong.positive : '' })}
        ${chosenSetting(words.destructive, settings.destructive ? 'yes' : 'no', yesNo, (value) => changeSettings(this, { destructive: value === 'yes' }))}
      </div>
      ${this.plans.length === 0 ? nothing : this.#table.table(words.caption, this.#columns, this.#rows, { empty: '', file: 'plan-figures' })}`;
  }

  get #columns() {
    return [{ key: 'figure', head: words.figure }, ...this.plans.map((plan) => ({ key: plan.letter, head: planCompareWords.planColumn(plan.letter, nameOf(plan)) }))];
  }

  get #rows(): readonly DeskRow[] {
    const { destructive } = this.settings;
    const shown: readonly Row[] = ['sample', 'numbers', 'letter', 'producer', 'consumer', 'atLq', 'aoql', 'asnAtAql', 'acceptedExpected', 'asnExpected', 'piecesYear', 'hoursYear', destructive ? 'usedYear' : 'sortedYear'];
    return shown.map((row) => {
      const texts = this.plans.map((plan) => [plan.letter, this.#text(row, plan)] as const);
      return {
        key: row, texts: { figure: words.rows[row], ...Object.fromEntries(texts.map(([letter, text]) => [letter, text ?? words.none])) },
        shown: Object.fromEntries(texts.map(([letter, text]) => [letter, text === null ? words.none : whyKey(row satisfies WhyKind, letter, words.rows[row], text)])),
      };
    });
  }

  #text(row: Row, plan: Compared): string | null {
    if (row === 'sample') return briefSamples(plan);
    if (row === 'numbers') return briefNumbers(plan).join('; ');
    if (row === 'letter') return briefWay(plan);
    const figures = this.#work.last?.find(({ letter }) => letter === plan.letter);
    if (figures === undefined) return null;
    const { producer, tenPercent, atLq, aoql, asnAtAql, expected } = figures;
    const lots = lotsOf(this.settings);
    const year = (each: number): string | null => (lots === null ? null : showFigure(Math.round(lots * each)));
    switch (row) {
      case 'producer': return producer === null ? null : words.riskAt(percentText(producer.risk), percentText(producer.p));
      case 'consumer': return planCompareWords.percent(percentText(tenPercent));
      case 'atLq': return atLq === null ? null : words.riskAt(percentText(atLq.risk), percentText(atLq.p));
      case 'aoql': return words.at(percentText(aoql.aoql), percentText(aoql.at));
      case 'asnAtAql': return asnAtAql === null ? null : toDigits(asnAtAql, 4);
      case 'acceptedExpected': return planCompareWords.percent(percentText(expected.accepted, 4));
      case 'asnExpected': return toDigits(expected.asn, 4);
      case 'piecesYear':
      case 'usedYear': return year(expected.asn);
      case 'sortedYear': return year(expected.ati);
      case 'hoursYear': return lots === null ? null : words.hours(showFigure(Math.round((lots * expected.asn * (numberOf(this.settings.minutes) ?? 0)) / 60)));
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-compare-figures': GhCompareFigures;
  }
}
