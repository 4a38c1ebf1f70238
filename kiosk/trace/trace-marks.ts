import type { TraceNode } from '../../shared/wire/views.ts';
import { streamParts } from '../../shared/traveller/stream.ts';
import type { StateName } from '../parts/state-name.ts';
import { travellerPath } from '../shell/routes.ts';

const MARKS: Readonly<Record<string, StateName>> = {
  held: 'hold', onHold: 'hold', rejected: 'rejected', accepted: 'accepted', released: 'released', toPack: 'released', toRelease: 'accepted', done: 'accepted', scrapped: 'scrapped',
  returned: 'recalled', reprocessed: 'corrected', withdrawn: 'recalled', open: 'open', sorting: 'open', readBack: 'accepted', shipped: 'released', voided: 'scrapped', printed: 'next-sample', labelled: 'next-sample',
};

/** The drawn mark of a standing; one that is not known here is drawn as waiting, and its word says it. */
export function traceMark(standing: string): StateName {
  return MARKS[standing] ?? 'waiting';
}

/** True where a node stands on hold. */
export function isHeldNode({ standing }: TraceNode): boolean {
  return standing === 'held' || standing === 'onHold';
}

/** Where a node's traveller is; null for what has none of its own. */
export function nodeTraveller({ stream }: TraceNode): string | null {
  const parts = stream === null ? null : streamParts(stream);
  return parts === null || !['lot', 'batch', 'furnace', 'coating'].includes(parts.kind) ? null : travellerPath(parts.kind, parts.id);
}
/** Where a node itself is traced. */
export function nodeTrace({ kind, id }: Pick<TraceNode, 'kind' | 'id'>): string {
  return `/trace/${kind}/${encodeURIComponent(id)}`;
}
