import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { labelOf } from '../../shared/words/words-for.ts';
import { traceDeskWords as words } from '../../shared/words/trace-desk.en.ts';
import type { Trace, TraceNode } from '../../shared/wire/views.ts';
import { showFigure } from '../desk/show.ts';
import { labels } from '../desk/words.ts';
import '../parts/gh-button.ts';
import '../parts/gh-state-mark.ts';
import { partStyles } from '../parts/part-styles.ts';
import { ladderCells, ladderRows, type LadderCell, type LadderRow } from './ladder-rows.ts';
import { nodeTrace, nodeTraveller, traceMark } from './trace-marks.ts';

/** The line of a subject as a ruled ladder: raw material at the top left, shipments at the bottom right, each rung a link. */
@customElement('gh-ladder')
export class GhLadder extends LitElement {
  static override styles = [partStyles, css`
    ol { list-style: none; background: var(--slip); border-block: var(--rule-strong) solid var(--line-strong); overflow-x: auto; }
    li { display: flex; align-items: stretch; border-block-end: var(--rule) solid var(--line); min-block-size: max(44px, var(--target)); }
    li:last-child { border-block-end: 0; }
    .here { background: var(--slip-under); box-shadow: inset 6px 0 0 var(--ink); }
    .cell { position: relative; flex: none; inline-size: 26px; }
    .cell:first-child { margin-inline-start: 8px; }
    .above::before, .below::after, .right > i, .left > b { content: ''; position: absolute; background: var(--line-strong); }
    .above::before { inset-block: -1px 50%; inset-inline-start: 12px; inline-size: 2px; }
    .below::after { inset-block: 50% -1px; inset-inline-start: 12px; inline-size: 2px; }
    .right > i { inset-block-start: calc(50% - 1px); block-size: 2px; inset-inline: 12px 0; }
    .left > b { inset-block-start: calc(50% - 1px); block-size: 2px; inset-inline: 0 12px; }
    .knot > span { position: absolute; z-index: 1; inset-block-start: calc(50% - 6px); inset-inline-start: 7px; inline-size: 12px; block-size: 12px; background: var(--slip); border: 2px solid var(--ink); }
    .here .knot > span { background: var(--ink); }
    .rung { flex: 1; display: grid; grid-template-columns: minmax(11rem, 1.3fr) minmax(8rem, 0.9fr) minmax(10.5rem, 0.6fr) minmax(8rem, 1.4fr) 6.5em; gap: 0 var(--pad); align-items: center; padding: 0.3em var(--pad) 0.3em 0.5em; min-inline-size: 0; }
    .name { display: grid; overflow-wrap: anywhere; }
    .name a, .name .figure { font-family: var(--face-figures); font-weight: 700; }
    a { color: var(--link); text-underline-offset: 0.2em; min-block-size: 24px; min-inline-size: 24px; display: inline-block; }
    .number { text-align: end; font-family: var(--face-figures); }
    .soft { color: var(--ink-soft); overflow-wrap: anywhere; }
    .fold { grid-column: span 2; font-weight: 650; }
    .print-hint { font-size: var(--text-small); }
    @media (max-width: 900px) { .rung { grid-template-columns: minmax(0, 1.2fr) minmax(0, 1fr) 6.5em; } .number { grid-area: 2 / 1; text-align: start; } .detail { grid-area: 2 / 2 / 3 / 4; } .trace { grid-area: 1 / 3; } .cell { inline-size: 20px; } .above::before, .below::after { inset-inline-start: 9px; } .right > i { inset-inline-start: 9px; } .left > b { inset-inline-end: 9px; } .knot > span { inset-inline-start: 4px; } }
    @media print { .trace { display: none; } ol { overflow: visible; } li { break-inside: avoid; } }
  `];
  @property({ attribute: false }) here: TraceNode | null = null;
  @property({ attribute: false }) trace: Trace | null = null;
  @state() private unfolded: ReadonlySet<string> = new Set();

  override render() {
    if (this.here === null || this.trace === null) return nothing;
    const rows = ladderRows(this.here, this.trace, this.unfolded);
    const cells = ladderCells(rows);
    return html`<ol aria-label=${words.title}>${rows.map((row, at) => html`<li class=${row.direction} aria-current=${row.direction === 'here' ? 'true' : nothing}>
      ${(cells[at] ?? []).map(cellOf)}
      <div class="rung">${row.fold === null ? this.#rung(row) : this.#fold(row, row.fold)}</div>
    </li>`)}</ol>`;
  }

  #rung({ node, direction }: LadderRow) {
    const traveller = nodeTraveller(node);
    const here = direction === 'here';
    return html`
      <span class="name"><span class="soft print-hint">${labels.traceKinds[node.kind]}${here ? `, ${words.here}` : ''}</span>
        ${traveller === null ? html`<span class="figure">${node.id}</span>` : html`<a href=${traveller}>${node.id}</a>`}</span>
      ${node.standing === '' ? html`<span></span>` : html`<gh-state-mark state=${traceMark(node.standing)} word=${labelOf(words.standings, node.standing)} size="small"></gh-state-mark>`}
      <span class="number">${countOf(node)}</span>
      <span class="soft detail">${node.detail ?? ''}</span>
      ${here ? html`<span></span>` : html`<a class="trace" href=${nodeTrace(node)} aria-label="${words.traceThis}: ${node.id}">${words.traceThis}</a>`}`;
  }

  #fold(_: LadderRow, { lot, boxes, pieces }: NonNullable<LadderRow['fold']>) {
    const shown = labels.boxes(boxes, showFigure(boxes));
    return html`<span class="fold">${words.boxesOf(shown, labels.pieces(pieces, showFigure(pieces)), lot)}</span>
      <gh-button @click=${() => (this.unfolded = new Set([...this.unfolded, lot]))}>${words.foldBoxes(shown)}</gh-button>`;
  }
}

/** A batch is counted in barrels, a lot by what is still loose in it, everything else in pieces. */
function countOf({ kind, pieces }: TraceNode): string {
  if (pieces === null) return '';
  const shown = showFigure(pieces);
  return kind === 'batch' ? labels.barrels(pieces, shown) : kind === 'lot' ? words.loose(labels.pieces(pieces, shown)) : labels.pieces(pieces, shown);
}

function cellOf({ above, below, right, left, knot }: LadderCell) {
  const kinds = Object.entries({ cell: true, above, below, right, left, knot }).filter(([, is]) => is).map(([kind]) => kind);
  return html`<span class=${kinds.join(' ')} aria-hidden="true"><i></i><b></b><span></span></span>`;
}

declare global {
  interface HTMLElementTagNameMap {
    'gh-ladder': GhLadder;
  }
}
