import { isReleased, remainingPieces, standingHolds, SUBJECT_KINDS, type Subject } from '../../shared/traveller/index.ts';
import type { SearchHit, Trace, TraceNode } from '../../shared/wire/views.ts';
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
  const [trace, page, hit] = await Promise.all([link.ask<Trace>(`/api/trace/${kind}/${encodeURIComponent(id)}`), isSubject ? readTraveller(kind, id) : null, isSubject ? null : readHit(kind, id)]);
  const listed = [...trace.up, ...trace.down].find((node) => node.kind === kind && node.id === id);
  const without = ({ up, down, of }: Trace): Trace => ({ of, up: up.filter((node) => node !== listed), down: down.filter((node) => node !== listed) });
  const start = { kind, id, depth: 0, via: null };
  const here = page === null ? { ...start, ...standingOfHit(kind, hit), pieces: null } : { ...start, stream: page.state.stream, detail: null, ...standingOf(page.state) };
  return { here: listed ?? here, trace: without(trace) };
}

/** What has no traveller of its own is told by the search: how a box stands, what a raw lot is, who gets a shipment. */
async function readHit(kind: TraceNode['kind'], id: string): Promise<SearchHit | null> {
  const { hits } = await link.ask<{ readonly hits: readonly SearchHit[] }>(`/api/search?q=${encodeURIComponent(id)}`);
  return hits.find((hit) => hit.kind === kind && hit.id === id) ?? null;
}
function standingOfHit(kind: TraceNode['kind'], hit: SearchHit | null): Pick<TraceNode, 'stream' | 'standing' | 'detail'> {
  if (kind === 'box') return { stream: hit?.stream ?? null, standing: hit?.standing ?? '', detail: null };
  return { stream: null, standing: kind === 'shipment' ? 'shipped' : '', detail: hit === null || hit.title === '' ? null : hit.title };
}

function standingOf(state: Subject): { readonly standing: string; readonly pieces: number | null } {
  const pieces = state.kind === 'lot' ? remainingPieces(state.balance) : state.kind === 'batch' ? state.barrels : null;
  if (standingHolds(state).length > 0) return { standing: 'held', pieces };
  if (state.ended !== null) return { standing: state.ended.how, pieces };
  const released = state.kind === 'lot' ? isReleased(state) : state.kind === 'batch' && state.released !== null;
  return { standing: released ? 'released' : 'open', pieces };
}
