import { html, type TemplateResult } from 'lit';
import type { BenchRow } from '../../shared/wire/views.ts';
import '../parts/gh-bench-row.ts';
import type { StateName } from '../parts/state-name.ts';
import { travellerPath } from '../shell/routes.ts';
import { benchWords, format } from './words.ts';

const STATES = { due: 'waiting', open: 'open', sorting: 'open', held: 'hold', inCharge: 'waiting', toRelease: 'due', toPack: 'due', done: 'accepted' } as const satisfies Readonly<Record<BenchRow['standing'], StateName>>;

/** What touching a row does: "Start Final visual". */
export function demandOf({ standing, gateName, attempt, waitsFor }: BenchRow): string {
  const words = benchWords();
  const gate = gateName ?? '';
  const again = attempt > 1 && (standing === 'due' || standing === 'open') ? `, ${words.attempt(attempt)}` : '';
  switch (standing) {
    case 'due': return `${words.start(gate)}${again}`;
    case 'open': return `${words.goOn(gate)}${again}`;
    case 'sorting': return words.sort(gate);
    case 'held': return words.decide;
    case 'inCharge': return waitsFor === null ? words.inCharge(gate) : words.waitsForCharge[waitsFor](gate);
    case 'toRelease': return words.toRelease;
    case 'toPack': return words.toPack;
    case 'done': return words.done;
  }
}

/** What calls somebody to the press: a look that is due goes before a drift. */
function callOf({ standing, lookDue, drift }: BenchRow): { readonly state: StateName; readonly word: string } | null {
  if (standing !== 'open') return null;
  const words = benchWords();
  if (lookDue !== null) return { state: 'overdue', word: words.lookDue(format().count(lookDue.look), format().time(lookDue.since)) };
  return drift === null ? null : { state: 'caution', word: words.drift[drift.side] };
}

/** One row of a bench list: a link that opens the traveller in working mode. */
export function benchRow(row: BenchRow): TemplateResult {
  const words = benchWords();
  const { count, dateTime, list } = format();
  const strict = row.standing !== 'held' && row.severity !== 'normal';
  const call = callOf(row);
  const state: StateName = call !== null ? call.state : row.discontinued ? 'discontinued' : strict ? row.severity : STATES[row.standing];
  const stateWord = call !== null ? call.word : row.discontinued ? words.discontinued : strict ? words.severity[row.severity] : row.waitsFor !== null ? words.state.waitsForCharge : words.state[row.standing];
  return html`<gh-bench-row .href=${`${travellerPath(row.kind, row.id)}?work`} .lot=${row.id} .product=${row.designation ?? row.title} .pieces=${words.pieces[row.kind](row.pieces, count(row.pieces))}
    .gate=${row.holdReason ?? (row.designation === null ? words.kinds[row.kind] : row.title)} .demand=${demandOf(row)} .state=${state} .stateWord=${stateWord} .due=${strict && row.severityLots.length > 0 ? words.switchedFor(list(row.severityLots)) : words.since(dateTime(row.since))}></gh-bench-row>`;
}
