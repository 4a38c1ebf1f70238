import { LitElement, css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { planCompareWords as words } from '../../../shared/words/plan-compare.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { showFigure } from '../../desk/show.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-progress.ts';
import '../../parts/gh-risk-chart.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { CURVES, MODELS, STANDARD_SETTINGS, type Settings } from './comparison.ts';
import type { Compared } from './compared-plan.ts';
import { axesOf } from './curve-axes.ts';
import { nameOf } from './compared-text.ts';
import type { Curves } from './curves.ts';
import { numberOf } from './read-choice.ts';
import { tell } from '../../parts/tell.ts';
import { changeSettings, chosenSetting, typedSetting } from './settings-fields.ts';
import { Work } from './work.ts';

/**
 * The chart of all plans, and what is drawn.
 * @fires curves-worked - with `{ curves }`, when they are worked out
 * @fires settings-changed - with `{ changes }`
 */
@customElement('gh-compare-curves')
export class GhCompareCurves extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: grid; gap: calc(2 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
    .bar { display: flex; flex-wrap: wrap; gap: var(--gap) calc(2 * var(--pad)); align-items: end; justify-content: space-between; }
    .curves { display: flex; flex-wrap: wrap; gap: var(--gap); border: 0; margin: 0; padding: 0; }
    .curves gh-button { --target: 40px; }
    .axes { display: grid; grid-template-columns: minmax(15rem, 1fr) 11rem; gap: var(--gap) calc(1.4 * var(--pad)); align-items: start; flex: 0 1 40rem; }
    .room { position: relative; }
    .old { opacity: 0.55; }
    gh-risk-chart { --chart-height: clamp(300px, 42vh, 440px); }
    @media print { .bar { display: none; } }
  `];
  @property({ attribute: false }) plans: readonly Compared[] = [];
  @property({ attribute: false }) settings: Settings = STANDARD_SETTINGS;
  @state() private cursor = 30;
  readonly #work = new Work(this, 'curves');
  #told: Curves | null = null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('plans') && !changed.has('settings')) return;
    const { plans, settings: { curve, model } } = this;
    this.#work.want(plans.length === 0 ? null : { plans, curve, model, upTo: this.#upTo });
  }

  protected override updated(): void {
    const { last } = this.#work;
    if (last === this.#told) return;
    this.#told = last;
    tell(this, 'curves-worked', { curves: last });
  }

  override render() {
    const { settings } = this;
    const { curve, model } = settings;
    return html`<div class="bar">
        <div class="curves" role="group" aria-label=${words.curve}>${CURVES.map((each) => html`<gh-button pressed=${each === curve ? 'true' : 'false'} @click=${() => changeSettings(this, { curve: each })}>${words.curves[each]}</gh-button>`)}</div>
        <div class="axes">${chosenSetting(words.model, model, MODELS.map((value) => ({ value, text: words.models[value] })), (value) => changeSettings(this, { model: value }))}
          ${typedSetting(this, settings, 'upTo', words.upTo, { hint: words.upToHint, error: settings.upTo !== '' && this.#upTo === null ? words.wrong.percent : '' })}</div>
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
    return html`<div class=${old ? 'old' : ''}><gh-risk-chart .lines=${lines} .axes=${axes} .words=${words.chart} .cursor=${Math.min(this.cursor, curves.points.length - 1)} @cursor-moved=${({ detail }: CustomEvent<{ at: number }>) => (this.cursor = detail.at)}></gh-risk-chart></div>`;
  }

  get #upTo(): number | null {
    const percent = numberOf(this.settings.upTo);
    const most = this.settings.model === 'poisson' ? 100_000 : 100;
    return percent !== null && percent > 0 && percent <= most ? percent / 100 : null;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-compare-curves': GhCompareCurves;
  }
}
