import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { schemeBehaviour, type SchemeBehaviour } from '../../../shared/sampling/risk/index.ts';
import { planCompareWords } from '../../../shared/words/plan-compare.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { SortedTable, type DeskRow } from '../../desk/sorted-table.ts';
import '../../parts/gh-notice.ts';
import type { LineLetter } from '../../parts/line-marks.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { STANDARD_SETTINGS, SWITCHING_RULES, type Settings } from './comparison.ts';
import { compareStyles } from './compare-styles.ts';
import type { Compared } from './compared-plan.ts';
import { nameOf, percentText, toDigits } from './compared-text.ts';
import { expectedOf, resumeOf } from './read-settings.ts';
import { schemeOf, switchedPlans } from './scheme-of.ts';
import { changeSettings, chosenSetting, typedSetting } from './settings-fields.ts';
import { modelFor } from './values.ts';
import { whyKey } from './why-key.ts';
import { Work, type WorkedOut } from './work.ts';

const words = planCompareWords.scheme;
type Behaviours = readonly { readonly letter: LineLetter; readonly behaviour: SchemeBehaviour }[];
const SHARES = ['normal', 'tightened', 'reduced', 'discontinued'] as const;

/**
 * What becomes of a long run of lots when inspection switches between severities.
 * @fires settings-changed - with `{ changes }`
 * @fires why-wanted - with what was asked
 */
@customElement('gh-compare-scheme')
export class GhCompareScheme extends LitElement {
  static override styles = [partStyles, deskStyles, compareStyles, css`:host { display: grid; gap: calc(1.4 * var(--pad)); grid-template-columns: minmax(0, 1fr); }`];
  @property({ attribute: false }) plans: readonly Compared[] = [];
  @property({ attribute: false }) settings: Settings = STANDARD_SETTINGS;
  readonly #work = new Work<Behaviours>(this);
  readonly #table = new SortedTable(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('plans') && !changed.has('settings')) return;
    const { plans, settings } = this;
    const expected = expectedOf(settings);
    const { switching, reduced, model, resumeAfter } = settings;
    const switched = switchedPlans(plans);
    const key = switched.length === 0 || expected === null ? null : JSON.stringify([switched.map(({ compared: { letter, choice } }) => [letter, choice]), switching, reduced, model, resumeAfter, expected]);
    this.#work.want(key, workSchemes(plans, settings, expected ?? 0));
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
    const names = new Map(this.plans.map((plan) => [plan.letter, nameOf(plan)]));
    const columns = [{ key: 'plan', head: words.plan }, ...(['accepted', ...SHARES, 'asn', 'aoq', 'until'] as const).map((key) => ({ key, head: words.columns[key] }))];
    const rows = (this.#work.last ?? []).map(({ letter, behaviour: { acceptance, shares, averageSampleNumber, averageOutgoingQuality, lotsToDiscontinuation, exact } }): DeskRow => {
      const marked = (text: string): string => (exact ? text : words.about(text));
      const percent = (value: number): string => marked(planCompareWords.percent(percentText(value, 4)));
      const texts = {
        plan: planCompareWords.planColumn(letter, names.get(letter) ?? ''), accepted: percent(acceptance), ...Object.fromEntries(SHARES.map((each) => [each, percent(shares[each])])), asn: marked(toDigits(averageSampleNumber, 4)), aoq: percent(averageOutgoingQuality),
        until: lotsToDiscontinuation === null ? words.never : marked(toDigits(lotsToDiscontinuation, 3)),
      };
      const key = (kind: Parameters<typeof whyKey>[0], name: keyof typeof words.columns) => whyKey(kind, letter, words.columns[name], String(Object.entries(texts).find(([each]) => each === name)?.[1] ?? ''));
      return { key: letter, texts, shown: { accepted: key('scheme', 'accepted'), ...Object.fromEntries(SHARES.map((each) => [each, key('share', each)])), asn: key('schemeAsn', 'asn'), aoq: key('schemeAoq', 'aoq'), until: key('scheme', 'until') } };
    });
    const rough = (this.#work.last ?? []).some(({ behaviour }) => !behaviour.exact);
    return rows.length === 0 ? nothing : html`${this.#table.table(words.caption, columns, rows, { empty: '', file: 'plan-scheme' })}${rough ? html`<p class="soft small">${words.approximated}</p>` : nothing}`;
  }
}

/** One scheme a turn. */
function workSchemes(plans: readonly Compared[], settings: Settings, expected: number): WorkedOut<Behaviours> {
  return async (turns, tell) => {
    const done: Behaviours[number][] = [];
    const switched = switchedPlans(plans);
    for (const each of switched) {
      tell(done.length, switched.length);
      await turns.breathe();
      done.push({ letter: each.compared.letter, behaviour: schemeBehaviour(schemeOf(each, settings), modelFor(each.compared, settings.model), expected) });
    }
    return done;
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-compare-scheme': GhCompareScheme;
  }
}
