import { SUBJECT_KINDS, streamParts } from '../../shared/traveller/stream.ts';
import type { AnyState } from '../../shared/traveller/index.ts';
import type { SearchHit } from '../../shared/wire/views.ts';
import { LinkFault, type Link } from '../link/index.ts';
import { travellerPath } from './routes.ts';

export type Scanned =
  | { readonly what: 'subject'; readonly path: string }
  | { readonly what: 'badge'; readonly badge: string }
  | { readonly what: 'nothing' }
  | { readonly what: 'noNetwork' };

/** Finds out what a scanned code stands for: a subject with a traveller, a box (its lot), or a person's badge. */
export async function openScanned(link: Link, text: string): Promise<Scanned> {
  try {
    const { hits } = await link.ask<{ hits: readonly SearchHit[] }>(`/api/search?q=${encodeURIComponent(text)}`);
    for (const { stream } of hits) {
      const parts = streamParts(stream);
      if (parts !== null && SUBJECT_KINDS.some((kind) => kind === parts.kind)) return { what: 'subject', path: `${travellerPath(parts.kind, parts.id)}?work` };
    }
    const { state } = await link.ask<{ state: AnyState | null }>(`/api/states?stream=${encodeURIComponent(`person:${text.trim()}`)}`);
    return state === null ? { what: 'nothing' } : { what: 'badge', badge: text.trim() };
  } catch (error) {
    if (error instanceof LinkFault) return error.status === 0 ? { what: 'noNetwork' } : { what: 'nothing' };
    throw error;
  }
}
