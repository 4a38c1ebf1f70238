import { html, type TemplateResult } from 'lit';
import type { BenchRow } from '../../shared/wire/views.ts';
import '../parts/gh-bench-row.ts';
import type { StateName } from '../parts/state-name.ts';
import { travellerPath } from '../shell/routes.ts';
import { benchWords, format } from './words.ts';

const STATES = { due: 'waiting', open: 'open', sorting: 'open', held: 'hold', inCharge: 'waiting', toRelease: 'due', toPack: 'due', done: 'accepted' } as const satisfies Readonly<Record<BenchRow['standing'], StateName>>;

/** What touching a row does: "Start Final visual". */
export function demandOf({ standing, gateName, attempt }: BenchRow): string {
  const words = benchWords();
  const gate = gateName ?? '';
  const again = attempt > 1 && (standing === 'due' || standing === 'open') ? `, ${words.attempt(attempt)}` : '';
  switch (standing) {
    case 'due': return `${words.start(gate)}${again}`;
    case 'open': return `${words.goOn(gate)}${again}`;
    case 'sorting': return words.sort(gate);
    case 'held': return words.decide;
    case 'inCharge': return words.inCharge(gate);
    case 'toRelease': return words.toRelease;
    case 'toPack': return words.toPack;
    case 'done': return words.done;
  }
}

/** One row of a bench list: a link that opens the traveller in working mode. */
export function benchRow(row: BenchRow): TemplateResult {
  const words = benchWords();
  const { count, dateTime, list } = format();
  const strict = row.standing !== 'held' && row.severity !== 'normal';
  const state: StateName = row.discontinued ? 'discontinued' : strict ? row.severity : STATES[row.standing];
  const stateWord = row.discontinued ? words.discontinued : strict ? words.severity[row.severity] : words.state[row.standing];
  return html`<gh-bench-row .href=${`${travellerPath(row.kind, row.id)}?work`} .lot=${row.id} .product=${row.designation ?? row.title} .pieces=${words.pieces[row.kind](row.pieces, count(row.pieces))}
    .gate=${row.holdReason ?? (row.designation === null ? words.kinds[row.kind] : row.title)} .demand=${demandOf(row)} .state=${state} .stateWord=${stateWord} .due=${strict && row.severityLots.length > 0 ? words.switchedFor(list(row.severityLots)) : words.since(dateTime(row.since))}></gh-bench-row>`;
}
