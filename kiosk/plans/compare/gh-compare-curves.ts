import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { planCompareWords as words } from '../../../shared/words/plan-compare.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { showFigure, showNumber } from '../../desk/show.ts';
import { SortedTable, type DeskRow } from '../../desk/sorted-table.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-progress.ts';
import '../../parts/gh-risk-chart.ts';
import type { RiskAxes } from '../../parts/gh-risk-chart.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { CURVES, MODELS, STANDARD_SETTINGS, type Settings } from './comparison.ts';
import type { Compared } from './compared-plan.ts';
import { nameOf, percentText } from './compared-text.ts';
import { workCurves, type Curves } from './curves.ts';
import { numberOf } from './read-choice.ts';
import { changeSettings, chosenSetting, typedSetting } from './settings-fields.ts';
import { Work } from './work.ts';

/** Which of the 201 points stand in the table: 21 of them. */
const everyTenth = 10;

/**
 * The chart of all plans, with the same in a table, and what is drawn.
 * @fires settings-changed - with `{ changes }`
 */
@customElement('gh-compare-curves')
export class GhCompareCurves extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: grid; gap: calc(2 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
    .bar { display: flex; flex-wrap: wrap; gap: var(--gap) calc(2 * var(--pad)); align-items: end; justify-content: space-between; }
    .curves { display: flex; flex-wrap: wrap; gap: var(--gap); border: 0; margin: 0; padding: 0; }
    .curves gh-button { --target: 40px; }
    .axes { display: grid; grid-template-columns: minmax(15rem, 1fr) 9rem; gap: var(--gap) calc(1.4 * var(--pad)); align-items: start; flex: 0 1 34rem; }
    .room { position: relative; }
    .old { opacity: 0.55; }
    gh-risk-chart { --chart-height: clamp(300px, 48vh, 460px); }
    @media print { .bar { display: none; } }
  `];
  @property({ attribute: false }) plans: readonly Compared[] = [];
  @property({ attribute: false }) settings: Settings = STANDARD_SETTINGS;
  @state() private cursor = 30;
  readonly #work = new Work<Curves>(this);
  readonly #table = new SortedTable(this);

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('plans') && !changed.has('settings')) return;
    const { plans, settings: { curve, model } } = this;
    const upTo = this.#upTo;
    this.#work.want(plans.length === 0 ? null : JSON.stringify([plans.map(({ letter, choice }) => [letter, choice]), curve, model, upTo]), workCurves(plans, curve, model, upTo));
  }

  override render() {
    const { settings } = this;
    const { curve, model } = settings;
    return html`<div class="bar">
        <div class="curves" role="group" aria-label=${words.curve}>${CURVES.map((each) => html`<gh-button pressed=${each === curve ? 'true' : 'false'} @click=${() => changeSettings(this, { curve: each })}>${words.curves[each]}</gh-button>`)}</div>
        <div class="axes">${chosenSetting(words.model, model, MODELS.map((value) => ({ value, text: words.models[value] })), (value) => changeSettings(this, { model: value }))}
          ${typedSetting(this, settings, 'upTo', words.upTo, { error: settings.upTo !== '' && this.#upTo === null ? words.wrong.percent : '' })}</div>
      </div>
      ${this.#content()}`;
  }

  #content() {
    const { view, last } = this.#work;
    if (this.plans.length === 0) return html`<gh-notice kind="empty" happened=${words.empty.happened} next=${words.empty.next}></gh-notice>`;
    if (view.state === 'failed') return html`<gh-notice kind="fault" happened=${words.failed.happened} next=${words.failed.next}></gh-notice>`;
    const progress = view.state === 'working' ? html`<gh-progress .value=${view.done} .max=${view.all} label=${words.workingLabel} text=${words.working(showFigure(view.done), showFigure(view.all))}></gh-progress>` : nothing;
    return html`${last === null ? nothing : this.#drawn(last, view.state === 'working')} ${progress}`;
  }

  #drawn(curves: Curves, old: boolean) {
    const names = new Map(this.plans.map((plan) => [plan.letter, nameOf(plan)]));
    const lines = curves.lines.map((line) => ({ ...line, name: names.get(line.letter) ?? '' }));
    const axes = axesOf(curves);
    const columns = [{ key: 'p', head: words.pColumn, kind: 'number' as const }, ...lines.map(({ letter, name }) => ({ key: letter, head: words.planColumn(letter, name), kind: 'number' as const }))];
    const rows = curves.points.flatMap((p, at): readonly DeskRow[] => (at % everyTenth > 0 ? [] : [{ key: String(at), texts: { p: axes.showX(p), ...Object.fromEntries(lines.map(({ letter, values }) => [letter, axes.showY(values[at] ?? 0)])) } }]));
    const caption = words.curveCaption[curves.curve];
    return html`<div class=${old ? 'old' : ''}><gh-risk-chart .lines=${lines} .axes=${axes} .words=${words.chart} .cursor=${Math.min(this.cursor, curves.points.length - 1)} @cursor-moved=${({ detail }: CustomEvent<{ at: number }>) => (this.cursor = detail.at)}></gh-risk-chart></div>
      ${this.#table.table(words.tableOf(caption), columns, rows, { empty: '', file: `plans-${curves.curve}` })}`;
  }

  get #upTo(): number | null {
    const percent = numberOf(this.settings.upTo);
    const most = this.settings.model === 'poisson' ? 100_000 : 100;
    return percent !== null && percent > 0 && percent <= most ? percent / 100 : null;
  }
}

function axesOf({ curve, model, points, top }: Curves): RiskAxes {
  const span = 100 * (points.at(-1) ?? 1);
  const decimals = Math.max(0, Math.min(8, 3 - Math.floor(Math.log10(span))));
  const showY: Readonly<Record<Curves['curve'], (value: number) => string>> = {
    acceptance: (value) => words.percent(percentText(value, 3)), aoq: (value) => words.percent(percentText(value, 3)),
    asn: (value) => showNumber(value, value >= 1000 ? 0 : 1), ati: (value) => showNumber(value, value >= 1000 ? 0 : 1),
  };
  return { points, top, x: words.axis[model], y: words.curveAxis[curve], showX: (p) => showFigure(Number((100 * p).toFixed(decimals))), showY: showY[curve] };
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-compare-curves': GhCompareCurves;
  }
}
