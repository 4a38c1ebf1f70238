import { LitElement, css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { readTableCsv, type OwnTable, type Severity, type TableProblem } from '../../../shared/sampling/attributes/index.ts';
import { planTablesWords } from '../../../shared/words/plan-tables.en.ts';
import { refusalNotice } from '../../desk/asked-notice.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { Giving } from '../../desk/giving.ts';
import { showFigure } from '../../desk/show.ts';
import { deskWords, labels } from '../../desk/words.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-field.ts';
import '../../parts/gh-notice.ts';
import '../../parts/gh-select-list.ts';
import '../../parts/gh-table.ts';
import { partStyles } from '../../parts/part-styles.ts';
import { tell } from '../../parts/tell.ts';

const words = planTablesWords.load;
const SEVERITIES: readonly Severity[] = ['normal', 'tightened', 'reduced'];
/** What numbers of records look like; the server asks the same. */
const FIT = /^[A-Z0-9][A-Z0-9-]{1,15}$/;
type Checked = { readonly table: OwnTable } | { readonly problems: readonly TableProblem[] };
const heads = words.columns;
const columns = [{ key: 'line', head: heads.line, kind: 'number' as const }, { key: 'column', head: heads.column }, { key: 'found', head: heads.found }, { key: 'problem', head: heads.problem }];

/**
 * Loads the plant's own copy of a master table from a file or from pasted text: checked first, problems by line and column, then loaded with a reason.
 * @fires table-loaded - when it stands
 */
@customElement('gh-load-table')
export class GhLoadTable extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    input { font: inherit; min-block-size: var(--target); max-inline-size: 100%; } input::file-selector-button { font: inherit; min-block-size: var(--target); }
    label { display: grid; gap: 0.2em; }
  `];
  @state() private number = '';
  @state() private name = '';
  @state() private severity: Severity = 'normal';
  @state() private text = '';
  @state() private why = '';
  @state() private asked = false;
  @state() private checked: Checked | null = null;
  @state() private done = '';
  readonly #giving = new Giving(this);

  override render() {
    const { checked, asked } = this;
    return html`<section class="sheet" aria-labelledby="title"><h2 id="title">${words.title}</h2><p>${words.lead}</p>
      ${this.done === '' ? nothing : html`<gh-notice kind="done" happened=${words.loaded(this.done)} kept=${words.loadedKept} next=${words.loadedNext}></gh-notice>`} ${refusalNotice(this.#giving)}
      <div class="fields">
        ${this.#field('number', words.id, words.idHint, 16, asked && !FIT.test(this.number.trim()) ? words.wrongId : '')}
        ${this.#field('name', words.name, words.nameHint, 80, asked && this.name.trim() === '' ? words.missing : '')}
      </div>
      <gh-select-list label=${words.severity} columns="3" .value=${this.severity} .options=${SEVERITIES.map((value) => ({ value, text: labels.severities[value] }))} @option-chosen=${({ detail }: CustomEvent<{ value: string }>) => this.#for(detail.value)}></gh-select-list>
      <label><span class="printed">${words.file}</span><input type="file" accept=".csv,.txt,text/csv,text/plain" aria-describedby="hint" @change=${this.#choose} /></label><p id="hint" class="printed">${words.fileHint}</p>
      <gh-field label=${words.paste} multiline max-length="200001" .value=${this.text} error=${asked && this.text.trim() === '' ? words.missing : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => this.#take(detail.value)}></gh-field>
      ${checked === null ? nothing : 'problems' in checked ? this.#problems(checked.problems) : this.#sound(checked.table)}
      <div class="keys"><gh-button kind=${checked !== null && 'table' in checked ? 'quiet' : 'primary'} @click=${this.#check}>${words.check}</gh-button></div>
    </section>`;
  }

  #field(name: 'number' | 'name', label: string, hint: string, most: number, error: string) {
    return html`<gh-field label=${label} hint=${hint} max-length=${most} .value=${this[name]} error=${error} @field-input=${({ detail }: CustomEvent<{ value: string }>) => this.#said(name, detail.value)}></gh-field>`;
  }

  #problems(problems: readonly TableProblem[]) {
    const rows = problems.map((problem, at) => ({ key: String(at), cells: { line: showFigure(problem.line), column: problem.column === null ? words.wholeLine : `${showFigure(problem.column)}${problem.head === null ? '' : ` (${problem.head})`}`, found: problem.found, problem: planTablesWords.problems[problem.code](problem) } }));
    const happened = words.faults(showFigure(problems.length));
    return html`<gh-notice kind="refusal" happened=${happened} kept=${words.kept} next=${words.next}></gh-notice><gh-table caption=${words.where} .columns=${columns} .rows=${rows}></gh-table>`;
  }

  #sound(table: OwnTable) {
    const what = planTablesWords.held.what(planTablesWords.held.samples[table.samples], labels.severities[table.severity]);
    return html`<gh-notice kind="done" happened=${words.sound(what, showFigure(table.rows.length))} next=${words.soundNext}></gh-notice>
      <gh-field label=${words.why} max-length="200" .value=${this.why} error=${this.asked && this.why.trim() === '' ? words.whyMissing : ''} @field-input=${({ detail }: CustomEvent<{ value: string }>) => (this.why = detail.value)}></gh-field>
      <div class="keys"><gh-button kind="primary" .busy=${this.#giving.busy !== null} busy-word=${deskWords.busy} @click=${() => void this.#load()}>${words.load}</gh-button></div>`;
  }

  #said(name: 'number' | 'name', text: string): void {
    this[name] = name === 'number' ? text.toUpperCase() : text;
    this.checked = null;
  }
  #for(severity: string): void {
    this.severity = SEVERITIES.find((each) => each === severity) ?? this.severity;
    this.checked = null;
  }
  #take(text: string): void {
    this.text = text;
    this.checked = null;
    this.done = '';
  }

  readonly #choose = async (event: Event): Promise<void> => {
    const input = event.target;
    const file = input instanceof HTMLInputElement ? input.files?.[0] : undefined;
    if (file !== undefined) this.#take(await file.text());
  };

  readonly #check = (): void => {
    this.asked = true;
    this.#giving.forget();
    if (this.text.trim() === '' || this.name.trim() === '' || !FIT.test(this.number.trim())) return;
    this.checked = readTableCsv(this.text, { id: this.number.trim(), name: this.name.trim(), severity: this.severity });
    this.asked = false;
  };

  async #load(): Promise<void> {
    const { checked } = this;
    this.asked = true;
    if (checked === null || 'problems' in checked || this.why.trim() === '') return;
    const { id, name, severity } = checked.table;
    if ((await this.#giving.give('load', { type: 'loadTable', table: id, name, severity, csv: this.text, reason: this.why.trim() })) === null) return;
    this.number = this.name = this.text = this.why = '';
    this.checked = null;
    this.asked = false;
    this.done = name;
    tell(this, 'table-loaded', { id });
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-load-table': GhLoadTable;
  }
}
