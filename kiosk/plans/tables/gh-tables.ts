import { LitElement, css, html, nothing } from 'lit';
import { customElement } from 'lit/decorators.js';
import { nameOfTable, tableLines, writeTableCsv, type Samples, type Severity } from '../../../shared/sampling/attributes/index.ts';
import { mayGive, type PlanState } from '../../../shared/traveller/index.ts';
import { planTablesWords as words } from '../../../shared/words/plan-tables.en.ts';
import { askedNotice } from '../../desk/asked-notice.ts';
import { Asked } from '../../desk/asked.ts';
import { deskStyles } from '../../desk/desk-styles.ts';
import { saveFile } from '../../desk/save-csv.ts';
import { showFigure, showMoment } from '../../desk/show.ts';
import { SortedTable, type DeskRow } from '../../desk/sorted-table.ts';
import { labels } from '../../desk/words.ts';
import { Follow, link } from '../../link/index.ts';
import '../../parts/gh-button.ts';
import '../../parts/gh-state-mark.ts';
import { partStyles } from '../../parts/part-styles.ts';
import type { StateName } from '../../parts/state-name.ts';
import type { CatalogueView } from '../catalogue-view.ts';
import type { LoadedCopy } from '../../../shared/wire/own-tables-view.ts';
import { OwnTables } from '../own-tables.ts';
import './gh-load-table.ts';
import { namedBy } from './named-by.ts';

const SAMPLES: readonly Samples[] = ['single', 'double', 'multiple'];
const SEVERITIES: readonly Severity[] = ['normal', 'tightened', 'reduced'];
type Standing = keyof typeof words.held.standings;
/** How sure each table is; what was seen stands in the words. @see docs/methods/attributes.md */
const STANDINGS: Readonly<Record<ReturnType<typeof nameOfTable>, Standing>> = { 'II-A': 'inPart', 'II-B': 'inPart', 'II-C': 'memory', 'III-A': 'memory', 'III-B': 'memory', 'III-C': 'memory', 'IV-A': 'inPart', 'IV-B': 'inPart', 'IV-C': 'missing' };
const MARKS: Readonly<Record<Standing, StateName>> = { seen: 'accepted', inPart: 'open', memory: 'caution', missing: 'rejected' };
const heldHeads = words.held.columns;
const heldColumns = [{ key: 'table', head: heldHeads.table }, { key: 'what', head: heldHeads.what }, { key: 'standing', head: heldHeads.standing }, { key: 'note', head: heldHeads.note }, { key: 'file', head: heldHeads.file }];
const ownHeads = words.own.columns;
const ownColumns = [{ key: 'id', head: ownHeads.id }, { key: 'name', head: ownHeads.name }, { key: 'what', head: ownHeads.what }, { key: 'loaded', head: ownHeads.loaded }, { key: 'why', head: ownHeads.why }, { key: 'plans', head: ownHeads.plans }, { key: 'file', head: ownHeads.file }];

/** The master tables held here and the plant's own copies: how sure each is, as a file, and loading a copy. */
@customElement('gh-tables')
export class GhTables extends LitElement {
  static override styles = [partStyles, deskStyles, css`:host { display: grid; gap: calc(2 * var(--pad)); grid-template-columns: minmax(0, 1fr); --target: 42px; --target-primary: 46px; }`];
  readonly #session = new Follow(this, () => link.session);
  readonly #own = new OwnTables(this);
  readonly #catalogue = new Asked<CatalogueView>(this, { key: () => '/api/catalogue', read: (path) => link.ask(path), topics: ['catalogue'] });
  readonly #plans = new Asked<readonly PlanState[]>(this, { key: () => this.#catalogue.value?.plans.map(({ id }) => id).join('\n') ?? null, read: readPlans, topics: ['catalogue'] });
  readonly #people = new Asked<{ readonly people: readonly { readonly badge: string; readonly name: string }[] }>(this, { key: () => '/api/people', read: (path) => link.ask(path) });
  readonly #heldTable = new SortedTable(this);
  readonly #ownTable = new SortedTable(this);

  override render() {
    const copies = this.#own.asked.value?.tables ?? null;
    return html`<section class="sheet" aria-labelledby="title"><h2 id="title">${words.title}</h2><p>${words.lead}</p>
        ${this.#heldTable.table(words.held.caption, heldColumns, SAMPLES.flatMap((samples) => SEVERITIES.map((severity) => heldRow(samples, severity))), { empty: '' })}</section>
      <div class="sheet">${askedNotice(this.#own.asked)}
        ${copies === null ? nothing : this.#ownTable.table(words.own.caption, ownColumns, copies.map((copy) => this.#ownRow(copy)), { empty: words.own.empty })}</div>
      ${mayGive('loadTable', this.#session.value?.roles ?? []) ? html`<gh-load-table @table-loaded=${() => void this.#own.asked.again()}></gh-load-table>` : html`<p class="soft">${words.load.mayNot}</p>`}`;
  }

  #ownRow({ table, at, by, reason }: LoadedCopy): DeskRow {
    const names = new Map(this.#people.value?.people.map(({ badge, name }) => [badge, name]));
    const plans = namedBy(table.id, this.#plans.value ?? []).map(({ plan, planVersion }) => words.own.by(plan, showFigure(planVersion)));
    return {
      key: table.id,
      texts: { id: table.id, name: table.name, what: whatOf(table.samples, table.severity), loaded: words.own.loaded(names.get(by) ?? by, showMoment(at)), why: reason, plans: plans.length === 0 ? words.own.noPlan : plans.join('; '), file: '' },
      shown: { plans: plans.length === 0 ? words.own.noPlan : plans.map((plan) => html`<div>${plan}</div>`), file: fileKey(table.id, () => save(table.id, table)) },
    };
  }
}

function heldRow(samples: Samples, severity: Severity): DeskRow {
  const table = nameOfTable(samples, severity);
  const rows = tableLines(samples, severity);
  const standing = STANDINGS[table];
  const word = words.held.standings[standing];
  return {
    key: table, texts: { table, what: whatOf(samples, severity), standing: word, note: words.held.notes[table], file: '' },
    shown: { standing: html`<gh-state-mark state=${MARKS[standing]} word=${word} size="small"></gh-state-mark>`, file: rows === null ? '' : fileKey(table, () => save(`table-${table}`, { samples, rows })) },
  };
}
function fileKey(table: string, press: () => void) {
  return html`<gh-button @click=${press}>${words.held.download}<span class="unseen"> ${table}</span></gh-button>`;
}
function save(name: string, table: Parameters<typeof writeTableCsv>[0]): void {
  saveFile(`${name}.csv`, new Blob([writeTableCsv(table)], { type: 'text/csv;charset=utf-8' }));
}
function whatOf(samples: Samples, severity: Severity): string {
  return words.held.what(words.held.samples[samples], labels.severities[severity]);
}

async function readPlans(ids: string): Promise<readonly PlanState[]> {
  const answers = await Promise.all(ids.split('\n').filter((id) => id !== '').map((id) => link.ask<{ readonly state: PlanState | null }>(`/api/states?stream=${encodeURIComponent(`plan:${id}`)}`)));
  return answers.flatMap(({ state }) => state ?? []);
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-tables': GhTables;
  }
}
