import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { SchemeBehaviour } from '../../../shared/sampling/risk/index.ts';
import { planCompareWords } from '../../../shared/words/plan-compare.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { SortedTable, type DeskRow } from '../../desk/sorted-table.ts';
import '../../parts/gh-notice.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { STANDARD_SETTINGS, SWITCHING_RULES, type Settings } from './comparison.ts';
import type { Compared } from './compared-plan.ts';
import { nameOf, percentText, toDigits } from './compared-text.ts';
import { expectedOf, resumeOf } from './read-settings.ts';
import { settledFor, switchedPlans } from './scheme-of.ts';
import { changeSettings, chosenSetting, typedSetting } from './settings-fields.ts';
import { whyKey } from './gh-why-key.ts';
import { Work } from './work.ts';

const words = planCompareWords.scheme;
/** What is shown of a scheme, in this order, and which reason each opens. */
const ROWS = [
  { name: 'accepted', kind: 'scheme' }, { name: 'normal', kind: 'share' }, { name: 'tightened', kind: 'share' }, { name: 'reduced', kind: 'share' }, { name: 'discontinued', kind: 'share' },
  { name: 'asn', kind: 'schemeAsn' }, { name: 'aoq', kind: 'schemeAoq' }, { name: 'until', kind: 'scheme' },
] as const;

/**
 * What becomes of a long run of lots when inspection switches between severities.
 * @fires settings-changed - with `{ changes }`
 * @fires why-wanted - with what was asked
 */
@customElement('gh-compare-scheme')
export class GhCompareScheme extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: grid; gap: calc(1.4 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
    @media (width >= 700px) { gh-table { --table-layout: fixed; } }
  `];
  @property({ attribute: false }) plans: readonly Compared[] = [];
  @property({ attribute: false }) settings: Settings = STANDARD_SETTINGS;
  readonly #work = new Work(this, 'schemes');
  readonly #table = new SortedTable(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('plans') && !changed.has('settings')) return;
    const { plans, settings } = this;
    const expected = expectedOf(settings);
    const asked = { plans, settings: settledFor(settings), expected: expected ?? 0 };
    this.#work.want(switchedPlans(plans).length === 0 || expected === null || resumeOf(settings) === null ? null : asked);
  }

  override render() {
    const { settings, plans } = this;
    const switched = switchedPlans(plans);
    return html`<h2>${words.heading}</h2>
      ${switched.length === 0 ? html`<p class="soft">${words.onlyTables}</p>` : html`<p class="soft">${words.lead(percentText(expectedOf(settings) ?? 0))}</p>
        <div class="sheet fields screen-only">
          ${chosenSetting(words.switching, settings.switching, SWITCHING_RULES.map((value) => ({ value, text: value })), (value) => changeSettings(this, { switching: value }))}
          ${chosenSetting(words.reduced, settings.reduced ? 'yes' : 'no', [{ value: 'yes', text: words.allowed }, { value: 'no', text: words.notAllowed }], (value) => changeSettings(this, { reduced: value === 'yes' }))}
          ${typedSetting(this, settings, 'resumeAfter', words.resume, { hint: words.resumeHint, error: resumeOf(settings) === null ? planCompareWords.wrong.resume : '' })}
        </div>
        ${this.#work.view.state === 'failed' ? html`<gh-notice kind="fault" happened=${planCompareWords.failed.happened} next=${planCompareWords.failed.next}></gh-notice>` : this.#behaviours()}`}`;
  }

  #behaviours() {
    const behaviours = this.#work.last ?? [];
    if (behaviours.length === 0) return nothing;
    const names = new Map(this.plans.map((plan) => [plan.letter, nameOf(plan)]));
    const columns = [{ key: 'figure', head: planCompareWords.figures.figure }, ...behaviours.map(({ letter }) => ({ key: letter, head: planCompareWords.planColumn(letter, names.get(letter) ?? '') }))];
    const rows = ROWS.map(({ name, kind }): DeskRow => {
      const texts = behaviours.map(({ letter, behaviour }) => [letter, textOf(name, behaviour)] as const);
      return { key: name, texts: { figure: words.rows[name], ...Object.fromEntries(texts) }, shown: Object.fromEntries(texts.map(([letter, text]) => [letter, whyKey(kind, letter, words.rows[name], text)])) };
    });
    const rough = behaviours.some(({ behaviour }) => !behaviour.exact);
    return html`${this.#table.table(words.caption, columns, rows, { empty: '', file: 'plan-scheme' })}${rough ? html`<p class="soft small">${words.approximated}</p>` : nothing}`;
  }
}

/** A figure of a scheme as it is read; ≈ where it is approximated. */
function textOf(name: (typeof ROWS)[number]['name'], { acceptance, shares, averageSampleNumber, averageOutgoingQuality, lotsToDiscontinuation, exact }: SchemeBehaviour): string {
  const marked = (text: string): string => (exact ? text : words.about(text));
  const percent = (value: number): string => marked(planCompareWords.percent(percentText(value, 4)));
  switch (name) {
    case 'accepted': return percent(acceptance);
    case 'asn': return marked(toDigits(averageSampleNumber, 4));
    case 'aoq': return percent(averageOutgoingQuality);
    case 'until': return lotsToDiscontinuation === null ? words.never : marked(toDigits(lotsToDiscontinuation, 3));
    default: return percent(shares[name]);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-compare-scheme': GhCompareScheme;
  }
}
