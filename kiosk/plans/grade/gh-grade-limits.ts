import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { porosityLevels, POROSITY_TYPES, SATURATION_UNITS, type ReckonedGrade } from '../../../shared/carbide/index.ts';
import { BINDER_FLAGS, FLAG_RATINGS } from '../../../shared/traveller/index.ts';
import { binderFlagWords, flagRatingWords } from '../../../shared/words/grade-limits.en.ts';
import { gradePageWords } from '../../../shared/words/grade-page.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { readNumber } from '../../desk/show.ts';
import '../../parts/gh-drop-list.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-saturation-window.ts';
import '../../parts/gh-table.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';
import { faultyLimits, type LimitKey, type LimitTexts } from './grade-form.ts';
import { saturationView } from './saturation-view.ts';

const { limits: words, saturation: window, wrong } = gradePageWords;
type Typed = CustomEvent<{ value: string }>;

/**
 * The limits of a grade: two-sided ones, the window of saturation with its drawing, porosity, and what may be in the binder.
 * @fires limit-typed - with `{ key, text }`
 */
@customElement('gh-grade-limits')
export class GhGradeLimits extends LitElement {
  static override styles = [partStyles, deskStyles, css`:host { display: grid; gap: calc(1.2 * var(--pad)); grid-template-columns: minmax(0, 1fr); } .fields { grid-template-columns: repeat(auto-fit, minmax(min(11rem, 100%), 1fr)); }`];
  @property({ attribute: false }) limits: LimitTexts | null = null;
  @property({ attribute: false }) grade: ReckonedGrade | null = null;

  override render() {
    const { limits } = this;
    if (limits === null) return nothing;
    const faulty = faultyLimits(limits);
    const number = (key: LimitKey, label: string, unit: string) => html`<gh-field label=${label} unit=${unit} entry="decimal" .value=${limits[key]} error=${faulty.includes(key) ? wrong.number : ''} @field-input=${({ detail }: Typed) => this.#put(key, detail.value)}></gh-field>`;
    const both = (name: string, lower: LimitKey, upper: LimitKey, unit: string) => html`${number(lower, words.field(name, words.lower), unit)}${number(upper, words.field(name, words.upper), unit)}`;
    const choice = (key: LimitKey, label: string, options: readonly { readonly value: string; readonly text: string }[]) => html`<gh-drop-list label=${label} .value=${limits[key]} .options=${options} @option-chosen=${({ detail }: Typed) => this.#put(key, detail.value)}></gh-drop-list>`;
    const none = { value: '', text: words.notJudged };
    return html`<div class="fields">${both(words.density, 'densityLower', 'densityUpper', 'g/cm³')}${both(words.coercivity, 'coercivityLower', 'coercivityUpper', 'kA/m')}${both(words.hardness, 'hardnessLower', 'hardnessUpper', 'HV30')}</div>
      <h4>${words.porosity}</h4>
      <div class="fields">${POROSITY_TYPES.map((type) => choice(type, words.porosityType[type], [none, ...porosityLevels(type).map(({ level }) => ({ value: level, text: level }))]))}
        ${BINDER_FLAGS.map((flag) => choice(flag, `${binderFlagWords[flag]}: ${words.flags}`, [none, ...FLAG_RATINGS.map((value) => ({ value, text: flagRatingWords[value] }))]))}</div>
      <h4>${window.heading}</h4>
      <div class="fields">${number('low', window.low, '%')}${number('warnLow', window.warnLow, '%')}${number('warnHigh', window.warnHigh, '%')}${number('high', window.high, '%')}
        ${choice('unit', window.unit, SATURATION_UNITS.map((value) => ({ value, text: value })))}</div>
      ${this.#window(limits)}`;
  }

  #window(limits: LimitTexts) {
    const [lowPercent, warnLowPercent, warnHighPercent, highPercent] = (['low', 'warnLow', 'warnHigh', 'high'] as const).map((key) => readNumber(limits[key]) ?? Number.NaN);
    const unit = SATURATION_UNITS.find((each) => each === limits.unit) ?? SATURATION_UNITS[0];
    const view = this.grade === null || lowPercent === undefined || warnLowPercent === undefined || warnHighPercent === undefined || highPercent === undefined ? null : saturationView({ lowPercent, warnLowPercent, warnHighPercent, highPercent }, unit, this.grade.cobaltFraction);
    if (view === null) return html`<p class="soft">${window.none}</p>`;
    return html`<gh-saturation-window caption=${window.caption} .bands=${view.bands} .axes=${view.axes}></gh-saturation-window>
      <gh-table caption=${window.table} .columns=${[{ key: 'name', head: window.band }, { key: 'from', head: window.from, unit: '%', kind: 'number' }, { key: 'to', head: window.to, unit: '%', kind: 'number' }, { key: 'reading', head: window.reading(unit), kind: 'number' }, { key: 'meaning', head: window.meaning }]}
        .rows=${view.rows.map((row) => ({ key: row.name, cells: { ...row } }))}></gh-table>`;
  }

  #put(key: LimitKey, text: string): void {
    tell(this, 'limit-typed', { key, text });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-grade-limits': GhGradeLimits;
  }
}
