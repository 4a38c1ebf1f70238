import { isReleased, remainingPieces, standingHolds, SUBJECT_KINDS, type Subject } from '../../shared/traveller/index.ts';
import type { Trace, TraceNode } from '../../shared/wire/views.ts';
import { readTraveller } from '../desk/traveller-page.ts';
import { link } from '../link/index.ts';

export const TRACE_KINDS: readonly TraceNode['kind'][] = ['raw', 'batch', 'lot', 'furnace', 'coating', 'box', 'shipment'];
/** A trace with the node it starts from. */
export interface FullTrace { readonly here: TraceNode; readonly trace: Trace }

/** Reads the whole line of a subject, and how the subject itself stands. @param key kind and number, with a slash between @throws LinkFault */
export async function readTrace(key: string): Promise<FullTrace> {
  const slash = key.indexOf('/');
  const kind = TRACE_KINDS.find((known) => known === key.slice(0, slash)) ?? 'lot';
  const id = key.slice(slash + 1);
  const isSubject = SUBJECT_KINDS.some((known) => known === kind);
  const [trace, page] = await Promise.all([link.ask<Trace>(`/api/trace/${kind}/${encodeURIComponent(id)}`), isSubject ? readTraveller(kind, id) : null]);
  const listed = [...trace.up, ...trace.down].find((node) => node.kind === kind && node.id === id);
  const without = ({ up, down, of }: Trace): Trace => ({ of, up: up.filter((node) => node !== listed), down: down.filter((node) => node !== listed) });
  return { here: listed ?? { kind, id, stream: page?.state.stream ?? null, depth: 0, via: null, detail: null, ...standingOf(page?.state ?? null) }, trace: without(trace) };
}

function standingOf(state: Subject | null): { readonly standing: string; readonly pieces: number | null } {
  if (state === null) return { standing: 'opened', pieces: null };
  const pieces = state.kind === 'lot' ? remainingPieces(state.balance) : state.kind === 'batch' ? state.barrels : null;
  if (standingHolds(state).length > 0) return { standing: 'held', pieces };
  if (state.ended !== null) return { standing: state.ended.how, pieces };
  const released = state.kind === 'lot' ? isReleased(state) : state.kind === 'batch' && state.released !== null;
  return { standing: released ? 'released' : 'open', pieces };
}
