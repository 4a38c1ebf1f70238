import { LitElement, css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Lot } from '../../shared/traveller/index.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { saveCsv } from '../desk/save-csv.ts';
import { deskWords } from '../desk/words.ts';
import '../parts/gh-button.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { gateGroups, type GateGroup, type GateLine } from './gate-groups.ts';

const heads = words.gateColumns;

/** Every gate of a lot with what its verdict rests on: one band a verdict, one dense line a judgement. */
@customElement('gh-gate-table')
export class GhGateTable extends LitElement {
  static override styles = [partStyles, css`
    .top { display: flex; flex-wrap: wrap; justify-content: space-between; align-items: end; gap: var(--gap); padding-block-end: 0.3em; }
    .caption { font-weight: 700; }
    .room { overflow-x: auto; background: var(--slip); border-block-start: calc(1.5 * var(--rule-strong)) solid var(--ink); border-block-end: var(--rule-strong) solid var(--line-strong); }
    table { inline-size: 100%; border-collapse: collapse; font-size: var(--text-small); line-height: 1.3; }
    th, td { text-align: start; vertical-align: baseline; padding: 0.12em 0.6em; border-block-end: var(--rule) solid var(--line); font-weight: 400; }
    thead th { color: var(--ink-soft); border-block-end: 3px double var(--line-strong); }
    .band > * { background: var(--slip-under); padding-block: 0.25em; border-block-start: var(--rule-strong) solid var(--line-strong); }
    .band .name { font-weight: 700; font-size: var(--text); }
    .note { display: inline-block; margin-inline-start: 0.8em; color: var(--ink-soft); }
    .strong { color: var(--held); font-weight: 700; }
    .number { text-align: end; font-family: var(--face-figures); white-space: nowrap; }
    .line span { display: inline-block; padding-inline-end: 0.9em; }
    .line span:last-child { padding-inline-end: 0; }
    .line td:nth-child(4) span, .line td:nth-child(5) span { white-space: nowrap; }
    .line .words { white-space: normal !important; }
    .method { color: var(--ink-soft); }
    .verdict { white-space: nowrap; }
    .line th, .line td:nth-child(2) { min-inline-size: 10em; }
    @media (max-width: 900px) { .line td:nth-child(4) span, .line td:nth-child(5) span { white-space: normal; } }
    @media print { .room { overflow: visible; } tr { break-inside: avoid; } thead { display: table-header-group; } }
  `];
  @property({ attribute: false }) lot: Lot | null = null;
  @property({ attribute: false }) names: Readonly<Record<string, string>> = {};

  override render() {
    if (this.lot === null) return html``;
    const groups = gateGroups(this.lot, this.names);
    return html`<div class="top"><span class="caption" id="caption">${words.gatesCaption}</span><gh-button @click=${() => this.#save(groups)}>${deskWords.csv}</gh-button></div>
      <div class="room" role="region" aria-labelledby="caption" tabindex="0"><table aria-labelledby="caption">
        <thead><tr><th scope="col">${heads.characteristic}</th><th scope="col">${heads.plan}</th><th scope="col" class="number">${heads.n}</th><th scope="col">${heads.found}</th><th scope="col">${heads.limit}</th><th scope="col">${heads.verdict}</th></tr></thead>
        ${groups.map((group) => html`<tbody>${this.#band(group)}${group.lines.map((line) => this.#line(line))}</tbody>`)}
      </table></div>`;
  }

  #band({ name, notes, mark, word, who, at }: GateGroup) {
    const strong = [words.reinspection, words.earlier, words.correctedVerdict];
    return html`<tr class="band"><th scope="rowgroup" colspan="5"><span class="name">${name}</span>${notes.map((note) => html`<span class="note ${strong.includes(note) ? 'strong' : ''}">${note}</span>`)}${who === '' ? '' : html`<span class="note">${who}, ${at}</span>`}</th>
      <td class="verdict"><gh-state-mark state=${mark} word=${word} size="small"></gh-state-mark></td></tr>`;
  }

  #line({ name, method, plan, n, found, limit, mark, word }: GateLine) {
    // Short figures stay whole; a statement may be broken over lines.
    const texts = (all: readonly string[]) => all.map((text) => html`<span class=${text.length > 32 ? 'words' : ''}>${text}</span>`);
    return html`<tr class="line"><th scope="row"><span>${name}</span><span class="method">${method}</span></th><td>${plan}</td><td class="number">${n}</td><td>${texts(found)}</td><td>${texts(limit)}</td>
      <td class="verdict"><gh-state-mark state=${mark} word=${word} size="small"></gh-state-mark></td></tr>`;
  }

  #save(groups: readonly GateGroup[]): void {
    const order = ['gate', 'characteristic', 'plan', 'n', 'found', 'limit', 'verdict', 'by', 'at'] as const;
    const rows = groups.flatMap((group) => {
      const gate = [group.name, ...group.notes].join('; ');
      if (group.lines.length === 0) return [[gate, '', '', '', '', '', group.word, group.who, group.at]];
      return group.lines.map(({ name, method, plan, n, found, limit, word }) => [gate, `${name}, ${method}`, plan, String(n), found.join('; '), limit.join('; '), word, group.who, group.at]);
    });
    saveCsv(`gates-${this.lot?.id ?? ''}`, [order.map((key) => heads[key]), ...rows]);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-gate-table': GhGateTable;
  }
}
