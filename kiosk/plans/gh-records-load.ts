import './read-without-eval.ts';
import { LitElement, css, html, nothing } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { recordsFileWords as words } from '../../shared/words/records-file.en.ts';
import { commandsOf, readRecordsFile, type RecordCommand, type RecordsFault } from '../../shared/wire/records-file.ts';
import { askedNotice, refusalNotice } from '../desk/asked-notice.ts';
import { Asked } from '../desk/asked.ts';
import { deskStyles } from '../desk/desk-styles.ts';
import { Giving } from '../desk/giving.ts';
import { Round } from '../desk/round.ts';
import { showFigure } from '../desk/show.ts';
import { SortedTable, type DeskRow } from '../desk/sorted-table.ts';
import { labels } from '../desk/words.ts';
import type { AnyRefusal, RefusalText } from '../link/index.ts';
import '../parts/gh-button.ts';
import '../parts/gh-notice.ts';
import '../parts/gh-progress.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import type { StateName } from '../parts/state-name.ts';
import { readRecordsHere } from './read-records-here.ts';
import { standingsOf, type FiledRecord, type RecordsHere } from './record-standing.ts';

const heads = words.columns;
const columns = [
  { key: 'kind', head: heads.kind, filterable: true, sortable: true }, { key: 'id', head: heads.id, filterable: true, sortable: true },
  { key: 'name', head: heads.name }, { key: 'standing', head: heads.standing, filterable: true, sortable: true },
];
type Shown = keyof typeof words.standings;
const markOf: Readonly<Record<Exclude<Shown, 'same'>, StateName>> = { new: 'waiting', newVersion: 'corrected', barred: 'refused', loaded: 'accepted', refused: 'rejected' };
/** Refusals that are about the line or the server and not about the record: the next record would meet the same. */
const STOPS: readonly AnyRefusal['code'][] = ['outOfReach', 'commandNeedsNetwork', 'signingNeedsNetwork', 'answerLost', 'notSignedIn', 'tooBusy', 'storageFault', 'setUpFirst'];

interface Chosen { readonly name: string; readonly commands: readonly RecordCommand[] }

/** Loads a records file: what it would do here, and, at the press of a key, each record entered in turn. */
@customElement('gh-records-load')
export class GhRecordsLoad extends LitElement {
  static override styles = [partStyles, deskStyles, css`
    input { font: inherit; min-block-size: var(--target); max-inline-size: 100%; }
    input::file-selector-button { font: inherit; min-block-size: var(--target); }
    label { display: grid; gap: 0.2em; }
  `];
  @state() private chosen: Chosen | null = null;
  @state() private fault: RecordsFault | null = null;
  @state() private loaded: ReadonlySet<string> = new Set();
  @state() private refused: ReadonlyMap<string, RefusalText> = new Map();
  @state() private ended: number | null = null;
  readonly #here = new Asked<RecordsHere>(this, { key: () => 'records', read: readRecordsHere });
  readonly #giving = new Giving(this);
  readonly #round = new Round(this);
  readonly #table = new SortedTable(this);

  override render() {
    const { fault } = this;
    return html`<div class="page-part sheet"><h2>${words.load}</h2>
      <label><span class="printed">${words.choose}</span><input type="file" accept="application/json,.json" aria-describedby="hint" ?disabled=${this.#round.now !== null} @change=${this.#choose} /></label>
      <p id="hint" class="printed">${words.chooseHint}</p>
      ${fault === null ? nothing : html`<gh-notice kind="refusal" happened=${faultText(fault)} kept=${words.faultKept} next=${words.faultNext}></gh-notice>`}
      ${askedNotice(this.#here)} ${this.chosen === null || this.#here.value === null ? nothing : this.#would(this.chosen, standingsOf(this.chosen.commands, this.#here.value))}
    </div>`;
  }

  #would({ name }: Chosen, records: readonly FiledRecord[]) {
    const open = this.#open(records);
    const { now } = this.#round;
    return html`${refusalNotice(this.#giving)} ${this.#ending()}
      ${now !== null
        ? html`<gh-progress label=${words.progress} text=${words.progressText(showFigure(now.done), showFigure(now.of))} .value=${now.done} .max=${now.of}></gh-progress><div class="keys"><gh-button @click=${() => this.#round.stop()}>${words.stop}</gh-button></div>`
        : open.length === 0
          ? html`<p class="soft">${words.nothingToLoad}</p>`
          : html`<div class="keys"><gh-button kind="primary" @click=${() => void this.#load(open)}>${words.loadThem(open.length, showFigure(open.length))}</gh-button></div>`}
      ${this.#table.table(words.caption(name), columns, records.map((record, at) => this.#row(record, at)), { empty: words.empty })}`;
  }

  #ending() {
    const { ended, refused } = this;
    if (ended === null) return nothing;
    if (this.#giving.refused !== null) return html`<p role="status">${words.loaded(ended, showFigure(ended))} ${words.stopped}</p>`;
    const next = refused.size > 0 ? words.refusedCount(refused.size, showFigure(refused.size)) : words.signNext;
    return html`<gh-notice kind="done" happened=${words.loaded(ended, showFigure(ended))} next=${next}><a href="/plans">${words.toPlans}</a></gh-notice>`;
  }

  #row(record: FiledRecord, at: number): DeskRow {
    const { kind, id, name, standing } = record;
    const refusal = this.refused.get(keyOf(record));
    const shown: Shown = standing.is === 'barred' ? 'barred' : this.loaded.has(keyOf(record)) ? 'loaded' : refusal !== undefined ? 'refused' : standing.is;
    const why = shown === 'barred' ? barredText(record) : shown === 'refused' && refusal !== undefined ? `${refusal.happened} ${refusal.next}` : '';
    const word = words.standings[shown];
    return {
      key: String(at), texts: { kind: labels.streamKinds[kind], id, name, standing: `${word} ${why}`.trim() },
      shown: shown === 'same' ? {} : { standing: html`<gh-state-mark state=${markOf[shown]} word=${word} size="small"></gh-state-mark>${why === '' ? nothing : html`<div>${why}</div>`}` },
    };
  }

  /** What is not here yet and may be entered; what was refused before is tried again. */
  #open(records: readonly FiledRecord[]): readonly FiledRecord[] {
    return records.filter((record) => (record.standing.is === 'new' || record.standing.is === 'newVersion') && !this.loaded.has(keyOf(record)));
  }

  readonly #choose = async (event: Event): Promise<void> => {
    const input = event.target;
    const file = input instanceof HTMLInputElement ? input.files?.[0] : undefined;
    if (file === undefined) return;
    const read = readRecordsFile(await file.text());
    this.#giving.forget();
    this.ended = null;
    this.loaded = new Set();
    this.refused = new Map();
    this.fault = 'fault' in read ? read : null;
    this.chosen = 'fault' in read ? null : { name: file.name, commands: commandsOf(read, words.why(file.name)) };
    await this.#here.again();
  };

  async #load(open: readonly FiledRecord[]): Promise<void> {
    this.ended = null;
    this.refused = new Map();
    const before = this.loaded.size;
    await this.#round.run(open.length, async (at) => {
      const record = open[at];
      return record !== undefined && this.#enter(record);
    });
    await this.#here.again();
    this.ended = this.loaded.size - before;
  }

  /** Enters one record; answers whether to go on with the next. */
  async #enter(record: FiledRecord): Promise<boolean> {
    const key = keyOf(record);
    if ((await this.#giving.give(key, record.command)) !== null) {
      this.loaded = new Set(this.loaded).add(key);
      return true;
    }
    const { refused } = this.#giving;
    if (refused === null || STOPS.includes(refused.refusal.code)) return false;
    this.refused = new Map(this.refused).set(key, refused.words);
    this.#giving.forget();
    return true;
  }
}

function keyOf({ kind, id }: FiledRecord): string {
  return `${kind}:${id}`;
}
function faultText(fault: RecordsFault): string {
  switch (fault.fault) {
    case 'missingList': case 'unknownList': return words.faults[fault.fault](fault.list);
    case 'nameless': return words.faults.nameless(fault.list, showFigure(fault.place));
    default: return words.faults[fault.fault]();
  }
}
function barredText({ standing }: FiledRecord): string {
  if (standing.is !== 'barred') return '';
  return standing.why === 'lacks' ? words.barred.lacks(labels.streamKinds[standing.what], standing.id) : words.barred[standing.why]();
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-records-load': GhRecordsLoad;
  }
}
