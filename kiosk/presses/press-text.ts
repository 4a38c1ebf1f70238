import type { PressRow } from '../../shared/wire/presses-view.ts';
import { pressesDeskWords as words } from '../../shared/words/presses-desk.en.ts';
import { formatFor } from '../../shared/words/format.ts';
import { localeFor } from '../../shared/words/locale.ts';
import { showFigure, showMoment, showNumber } from '../desk/show.ts';
import type { StateName } from '../parts/state-name.ts';

/** A press that sent nothing for so long is said to be silent, minutes. */
const silentMinutes = 3;

const time = (iso: string): string => formatFor(localeFor(document.documentElement.lang)).time(iso);
const written = (value: number | null, decimals: number): string => (value === null ? '–' : showNumber(value, decimals));

const weighed = (value: number | null, decimals: number, unit: string): string => (value === null ? '–' : `${written(value, decimals)} ${unit}`);

/** How the drift of a press stands, with its mark. */
export function driftText({ drift, unit, decimals, target }: PressRow): { readonly mark: StateName; readonly word: string; readonly more: string } {
  if (drift.state !== 'drifting' || drift.side === null) {
    return { mark: drift.state === 'steady' ? 'accepted' : 'waiting', word: words.drift[drift.state === 'drifting' ? 'steady' : drift.state], more: '' };
  }
  const aim = target === null ? '' : ` ${showNumber(target, decimals)} ${unit}`;
  return { mark: 'caution', word: `${words.drift[drift.side]}${aim}`, more: drift.predicted === null ? words.notForetold : words.expected(showFigure(drift.predicted.piece)) };
}

/** When the next look falls due; empty where none is left. */
export function lookText({ look }: PressRow): { readonly text: string; readonly isDue: boolean } {
  if (look === null) return { text: '–', isDue: false };
  if (look.dueSince !== null) return { text: words.lookDue(showFigure(look.look)), isDue: true };
  return { text: look.dueTime === null ? words.lookAt(showFigure(look.dueAt)) : words.lookOr(showFigure(look.dueAt), time(look.dueTime)), isDue: false };
}

/** What is wrong with a press's feed now, one line each. @param nowMs milliseconds since 1970 by the server's clock; null where nobody can tell whether it is silent */
export function warningsOf(row: PressRow, nowMs: number | null): readonly string[] {
  const { lot, balance, balanceStanding, no, lastAt, since, onHold, gateStatus } = row;
  const newest = lastAt !== null && (since === null || lastAt > since) ? lastAt : since;
  const silent = lot === null || gateStatus !== 'open' || onHold || newest === null || nowMs === null ? 0 : Math.floor((nowMs - Date.parse(newest)) / 60_000);
  return [
    ...(balanceStanding === 'counts' ? [] : [`${balance}: ${words.balance[balanceStanding]}`]),
    ...(onHold ? [words.held] : lot !== null && gateStatus !== 'open' ? [words.done] : []),
    ...(silent >= silentMinutes ? [silent < 120 ? words.silent(showFigure(silent)) : words.silentHours(showFigure(Math.floor(silent / 60)))] : []),
    ...(no === null ? [] : [`${words.notTaken}: ${no.words.happened} ${no.words.next}`]),
  ];
}

/** The facts of a press as name and value. */
export function factsOf(row: PressRow): readonly (readonly [string, string])[] {
  const { unit, decimals, pieces, lotSize, mean, s, ppk, outside, missing, waiting, lastAt, missedLooks } = row;
  return [
    [words.pieces, words.of(showFigure(pieces), showFigure(lotSize))], [words.mean, weighed(mean, decimals, unit)], [words.s, weighed(s, decimals + 1, unit)], [words.ppk, written(ppk, 2)], [words.outside, showFigure(outside)],
    ...(missing === 0 ? [] : [[words.missing, showFigure(missing)] as const]), ...(waiting === 0 ? [] : [[words.waiting, showFigure(waiting)] as const]),
    ...(missedLooks === 0 ? [] : [[words.missedLooks, showFigure(missedLooks)] as const]), [words.newest, lastAt === null ? '–' : showMoment(lastAt)],
  ];
}

/** The desk as a table for a file. */
export function csvRows(rows: readonly PressRow[]): readonly (readonly string[])[] {
  return [words.head, ...rows.map((row) => [row.name, row.lot ?? '', String(row.pieces), written(row.mean, row.decimals), written(row.s, row.decimals + 1), written(row.ppk, 2), driftText(row).word, lookText(row).text, String(row.missedLooks), row.lastAt ?? ''])];
}
