import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { averageAndRange, crossedReadings, decimalsOfStep, distinctCategories, type GaugeChoices, type Study, type StudyResult } from '../../../shared/traveller/index.ts';
import { formatFor } from '../../../shared/words/format.ts';
import { localeFor } from '../../../shared/words/locale.ts';
import { studiesDeskWords } from '../../../shared/words/studies-desk.en.ts';
import { studyTables, studyTold, type StudyTable } from '../../../shared/words/study-tables.en.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { saveCsv } from '../../desk/save-csv.ts';
import { showFigure, showNumber } from '../../desk/show.ts';
import { deskWords } from '../../desk/words.ts';
import '../../parts/gh-table.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { locale } from '../../shell/words.ts';
import '../../plans/compare/gh-why-sheet.ts';
import './gh-study-bars.ts';
import './gh-study-plot.ts';
import './gh-study-why.ts';
import { biasPlot, interactionPlot, readingsPlot } from './study-plots.ts';
import { whyOfStudy, type StudyWhy } from './why-study.ts';

const words = studiesDeskWords.result;
interface Asked { readonly what: StudyWhy; readonly name: string; readonly shown: string }

/** What a whole study says: in sentences, tables and drawings, each figure with its reason. */
@customElement('gh-study-result')
export class GhStudyResult extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    :host { display: grid; gap: calc(1.6 * var(--pad)); grid-template-columns: minmax(0, 1fr); }
    .told { font-size: var(--text-large); display: grid; gap: 0.3em; max-inline-size: 68rem; }
    .told p:first-child { font-weight: 700; }
    .plots { display: grid; grid-template-columns: repeat(auto-fit, minmax(min(30rem, 100%), 1fr)); gap: calc(1.4 * var(--pad)); }
    .tables { display: grid; grid-template-columns: minmax(0, 1fr); gap: calc(1.4 * var(--pad)); max-inline-size: 72rem; }
  `];
  @property({ attribute: false }) study: Study | null = null;
  @property({ attribute: false }) result: StudyResult | null = null;
  @property({ attribute: false }) choices: GaugeChoices = { poolAbove: 0.25, confidence: 0.95 };
  @state() private asked: Asked | null = null;

  override render() {
    const { study, result, choices, asked } = this;
    if (study === null || result === null) return nothing;
    const format = formatFor(localeFor(locale()));
    const people = study.people.map(({ name }) => name);
    return html`<div class="told" @study-why=${this.#why}>${studyTold(result, study, choices, format).map((sentence) => html`<p>${sentence}</p>`)}
        ${result.by === 'crossed' && result.categories !== null ? html`<p class="soft">${words.exactCategories} <gh-study-why what="categories" name=${studiesDeskWords.list.columns.categories} shown=${showNumber(result.categories.exact, 2)}></gh-study-why></p>` : nothing}</div>
      <div class="plots">${result.by === 'crossed'
        ? html`<gh-study-bars .result=${result}></gh-study-bars><gh-study-plot heading=${words.byPart} .plot=${readingsPlot(study)} .people=${people}></gh-study-plot><gh-study-plot heading=${words.interaction} note=${words.interactionNote} .plot=${interactionPlot(study)} .people=${people}></gh-study-plot>`
        : html`<gh-study-plot heading=${words.biases} .plot=${biasPlot(study, result)} .people=${result.by === 'linearity' ? [...people, words.line] : people}></gh-study-plot>`}</div>
      <div class="tables" @study-why=${this.#why}>${studyTables(result, study, choices, format).map((table) => this.#table(study, result, table))}${result.by === 'crossed' ? this.#means(study) : nothing}</div>
      ${result.by === 'crossed' ? this.#ranges(study) : nothing}
      <gh-why-sheet .why=${asked === null ? null : whyOfStudy(asked.what, result, format)} heading=${asked === null ? '' : words.whyHeading(asked.name)} shown=${asked?.shown ?? ''} @sheet-closed=${() => (this.asked = null)}></gh-why-sheet>`;
  }

  readonly #why = ({ detail }: CustomEvent<Asked>): void => {
    this.asked = detail;
  };

  /** The figure that a row stands for has the key to its reason. */
  #table(study: Study, result: StudyResult, { key, title, columns, rows }: StudyTable) {
    const whats: readonly StudyWhy[] = key === 'components' && result.by === 'crossed' ? result.components.map(({ name }) => name) : key === 'biases' ? rows.map(() => 'bias') : key === 'line' ? rows.map(() => 'line') : [];
    const place = key === 'biases' ? 3 : 1;
    return html`<gh-table caption=${title} .columns=${columns.map((head, at) => ({ key: String(at), head, kind: at === 0 ? ('text' as const) : ('number' as const) }))} csv-word=${deskWords.csv}
      .rows=${rows.map((row, nth) => ({ key: row[0] ?? '', cells: Object.fromEntries(row.map((text, at) => [String(at), at === place && whats[nth] !== undefined ? html`<gh-study-why what=${whats[nth] ?? ''} name=${row[0] ?? ''} shown=${text}></gh-study-why>` : text])) }))}
      @csv-wanted=${() => saveCsv(`study-${study.id}-${key}`, [columns, ...rows])}></gh-table>`;
  }

  /** What the plots draw, as a table: mean and range of every person on every part. */
  #means(study: Study) {
    const readings = crossedReadings(study);
    if (readings === null) return nothing;
    const decimals = decimalsOfStep(study.gaugeThen.resolution);
    const columns = [{ key: 'part', head: words.axisPart }, ...study.people.flatMap(({ badge, name }) => [{ key: `${badge} mean`, head: words.meanColumn(name), kind: 'number' as const }, { key: `${badge} range`, head: words.rangeColumn(name), kind: 'number' as const }])];
    const rows = study.parts.map(({ label }, part) => ({
      key: label,
      cells: Object.fromEntries([['part', label], ...study.people.flatMap(({ badge }, person) => {
        const values = readings[part]?.[person] ?? [];
        return [[`${badge} mean`, showNumber(values.reduce((sum, value) => sum + value, 0) / Math.max(values.length, 1), decimals + 1)], [`${badge} range`, showNumber(Math.max(...values) - Math.min(...values), decimals)]];
      })]),
    }));
    return html`<gh-table caption=${words.means} .columns=${columns} .rows=${rows} csv-word=${deskWords.csv} @csv-wanted=${() => saveCsv(`study-${study.id}-means`, [columns.map(({ head }) => head), ...rows.map(({ cells }) => columns.map(({ key }) => String(cells[key] ?? '')))])}></gh-table>`;
  }

  /** The older method, so that nobody wonders why another program says something else. */
  #ranges(study: Study) {
    const readings = crossedReadings(study);
    if (readings === null) return nothing;
    const { gaugeS, totalS, partS } = averageAndRange(readings);
    const categories = distinctCategories(partS, gaugeS);
    return totalS === 0 || categories === null ? nothing : html`<p class="soft">${words.rangesTold(showNumber((100 * gaugeS) / totalS, 1), showFigure(categories.whole))}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-study-result': GhStudyResult;
  }
}
