import { html, nothing } from 'lit';
import type { GateRecord, Lot, VerdictRecord } from '../../shared/traveller/index.ts';
import { streamParts } from '../../shared/traveller/index.ts';
import { labels } from '../desk/words.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { showMoment } from '../desk/show.ts';
import type { DeskRow } from '../desk/sorted-table.ts';
import { markOfGate } from '../desk/state-of.ts';
import '../parts/gh-state-mark.ts';
import { verdictCells } from './verdict-cells.ts';

/** The gates of a lot as rows: each judgement of every verdict given, earlier attempts before the one in force; a gate without a verdict has one row. */
export function gateRows(lot: Lot, names: Readonly<Record<string, string>>): readonly DeskRow[] {
  return lot.gates.flatMap((gate) => (gate.verdicts.length === 0 ? [waitingRow(gate)] : [
    ...gate.verdicts.flatMap((given, at) => verdictRows(gate, given, at === gate.verdicts.length - 1, names)),
    // A gate begun again after its last verdict says so.
    ...(gate.status === 'waiting' || gate.status === 'open' || gate.status === 'sorting' ? [waitingRow(gate)] : []),
  ]));
}

function waitingRow(gate: GateRecord): DeskRow {
  const verdict = words.gateStatus[gate.status];
  return {
    key: `${gate.id}/now`,
    texts: { gate: gate.name, characteristic: '', plan: '', n: '', found: '', limit: '', verdict, by: '', at: '' },
    shown: { verdict: html`<gh-state-mark state=${markOfGate[gate.status]} word=${verdict} size="small"></gh-state-mark>` },
  };
}

function verdictRows(gate: GateRecord, given: VerdictRecord, last: boolean, names: Readonly<Record<string, string>>): readonly DeskRow[] {
  const { verdict, from, at, by, revises, slip } = given;
  const source = from === null ? null : streamParts(from);
  const notes = [
    ...(source === null ? [] : [words.workedOn(labels.streamKinds[source.kind], source.id)]),
    ...(verdict.original ? [] : [words.reinspection]), ...(verdict.attempt > 1 ? [words.attempt(verdict.attempt)] : []),
    ...(revises === null ? [] : [words.correctedVerdict]), ...(last ? [] : [words.earlier]),
  ];
  const who = (verdict.workers.length === 0 ? [by] : verdict.workers).map((badge) => `${names[badge] ?? badge} (${badge})`).join(', ');
  return verdict.results.flatMap((result, resultAt) =>
    verdictCells(result).map(({ plan, n, found, limit, accepted }, lineAt): DeskRow => {
      const conceded = !accepted && last && gate.status === 'conceded';
      const word = conceded ? words.verdicts.conceded : accepted ? words.verdicts.accepted : words.verdicts.rejected;
      const lines = (texts: readonly string[]) => texts.map((text) => html`<div>${text}</div>`);
      const first = resultAt === 0 && lineAt === 0;
      return {
        key: `${gate.id}/${slip}/${resultAt}/${lineAt}`,
        texts: { gate: [gate.name, ...notes].join('; '), characteristic: `${result.name}, ${result.method}`, plan, n, found: found.join('; '), limit: limit.join('; '), verdict: word, by: who, at: showMoment(at) },
        shown: {
          gate: html`<div>${gate.name}</div>${first ? notes.map((note) => html`<small>${note}</small> `) : nothing}`,
          characteristic: html`<div>${result.name}</div><small>${result.method}</small>`, found: lines(found), limit: lines(limit),
          verdict: html`<gh-state-mark state=${conceded ? 'concession' : accepted ? 'accepted' : 'rejected'} word=${word} size="small"></gh-state-mark>`,
        },
      };
    }),
  );
}
