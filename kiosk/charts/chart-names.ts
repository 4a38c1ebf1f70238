import type { ChartRow } from '../../shared/wire/charts-view.ts';
import { chartKeyName, chartNames, signalClause } from '../../shared/words/chart-signal.en.ts';
import { labels } from '../desk/words.ts';
import { streamParts } from '../../shared/traveller/index.ts';
import type { StateName } from '../parts/state-name.ts';
import { travellerPath } from '../shell/routes.ts';

/** A lot's number and its traveller's address from its stream. */
export function subjectOf(stream: string): { readonly id: string; readonly href: string } {
  const parts = streamParts(stream);
  return parts === null ? { id: stream, href: '/trace' } : { id: parts.id, href: travellerPath(parts.kind, parts.id) };
}

export const nameOfKey = (key: string): string => chartKeyName(key, { labels });
export const { rules: ruleNames, lines: lineNames, kinds: kindNames, baseFaults } = chartNames;
export { signalClause };
export const MARKS: Readonly<Record<ChartRow['standing'], StateName>> = { provisional: 'waiting', inControl: 'normal', signal: 'caution' };
