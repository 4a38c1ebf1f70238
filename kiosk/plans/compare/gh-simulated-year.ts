import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { SimulatedYear } from '../../../shared/sampling/risk/index.ts';
import { planCompareWords } from '../../../shared/words/plan-compare.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { showFigure } from '../../desk/show.ts';
import { SortedTable } from '../../desk/sorted-table.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-lot-strip.ts';
import '../../parts/gh-notice.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { announce } from '../../shell/announce.ts';
import { STANDARD_SETTINGS, type Settings } from './comparison.ts';
import type { Compared } from './compared-plan.ts';
import { nameOf, percentText } from './compared-text.ts';
import { expectedOf, lotsOf, resumeOf, seedOf, spreadOf } from './read-settings.ts';
import { settledFor, switchedPlans, type Switched } from './scheme-of.ts';
import { changeSettings, chosenSetting, typedSetting } from './settings-fields.ts';
import { whyKey } from './gh-why-key.ts';
import { Work } from './work.ts';
import { yearRows, yearSums } from './year-rows.ts';

const words = planCompareWords.year;

/**
 * A year of lots drawn by chance from a seed, inspected and switched by the rules of the floor.
 * @fires settings-changed - with `{ changes }`
 * @fires why-wanted - with what was asked
 */
@customElement('gh-simulated-year')
export class GhSimulatedYear extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: grid; gap: calc(1.4 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
    .facts > div { min-inline-size: 7.5rem; }
    gh-button { --target: 40px; }
    .go { align-self: end; }
  `];
  @property({ attribute: false }) plans: readonly Compared[] = [];
  @property({ attribute: false }) settings: Settings = STANDARD_SETTINGS;
  readonly #work = new Work(this, 'year');
  readonly #table = new SortedTable(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('plans') && !changed.has('settings')) return;
    const { settings } = this;
    const chosen = this.#chosen;
    const sound = [lotsOf(settings), expectedOf(settings), seedOf(settings), spreadOf(settings), resumeOf(settings)].every((value) => value !== null);
    this.#work.want(chosen === null || !sound ? null : { plans: [chosen.compared], settings: settledFor(settings), letter: chosen.compared.letter });
  }

  override render() {
    const { settings } = this;
    const { wrong } = planCompareWords;
    const switched = switchedPlans(this.plans);
    if (switched.length === 0) return nothing;
    return html`<h2>${words.heading}</h2>
      <div class="sheet fields screen-only">
        ${chosenSetting(words.of, this.#chosen?.compared.letter ?? 'A', switched.map(({ compared }) => ({ value: compared.letter, text: planCompareWords.planColumn(compared.letter, nameOf(compared)) })), (value) => changeSettings(this, { simulated: value }))}
        ${typedSetting(this, settings, 'spread', words.spread, { hint: words.spreadHint, error: spreadOf(settings) === null ? wrong.spread : '' })}
        ${typedSetting(this, settings, 'seed', words.seed, { error: seedOf(settings) === null ? wrong.seed : '' })}
        <div class="go"><gh-button wide @click=${this.#again}>${words.again}</gh-button></div>
      </div>
      ${this.#year()}`;
  }

  #year() {
    const { view, last } = this.#work;
    if (view.state === 'failed') return html`<gh-notice kind="fault" happened=${planCompareWords.failed.happened} next=${planCompareWords.failed.next}></gh-notice>`;
    const letter = this.#chosen?.compared.letter;
    if (last === null || letter === undefined) return nothing;
    const { settings } = this;
    const rows = yearRows(last);
    const columns = (['lot', 'severity', 'n', 'found', 'what'] as const).map((key) => ({ key, head: words.columns[key], ...(key === 'n' || key === 'found' || key === 'lot' ? { kind: 'number' as const } : {}) }));
    const caption = words.caption(letter, showFigure(last.lots.length), percentText(expectedOf(settings) ?? 0), settings.seed);
    return html`<div class="sheet"><gh-lot-strip .lots=${last.lots} .words=${{ caption, notAccepted: words.notAccepted, severities: words.severities }}></gh-lot-strip></div>
      <dl class="facts">${yearSums(last).map(({ label, text }) => html`<div><dt>${label}</dt><dd>${whyKey('simulated', letter, label, text)}</dd></div>`)}</dl>
      ${this.#table.table(words.events, columns, rows, { empty: words.noEvents, file: `year-${letter}-${settings.seed}`, tall: rows.length > 14 })}`;
  }

  get #chosen(): Switched | null {
    const switched = switchedPlans(this.plans);
    return switched.find(({ compared }) => compared.letter === this.settings.simulated) ?? switched[0] ?? null;
  }

  protected override updated(): void {
    const { view, last } = this.#work;
    if (view.state !== 'done' || last === null || last === this.#said) return;
    // The first year stands there with the page; later ones were asked for and are said.
    if (this.#said !== null) announce(words.done(showFigure(last.accepted), showFigure(last.lots.length)));
    this.#said = last;
  }
  #said: SimulatedYear | null = null;

  readonly #again = (): void => {
    changeSettings(this, { seed: String((seedOf(this.settings) ?? 0) + 1) });
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-simulated-year': GhSimulatedYear;
  }
}
