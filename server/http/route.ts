import type { z } from 'zod';
import type { Role } from '../../shared/traveller/index.ts';
import type { Session } from '../../shared/wire/views.ts';
import type { Answer, Paper } from './answer.ts';
import type { Plant } from './plant.ts';

/** One question as it reaches its reader. */
export interface Question {
  readonly plant: Plant;
  /** Parts of the path by name, decoded. */
  readonly params: Readonly<Record<string, string>>;
  readonly query: URLSearchParams;
  /** Null only where the reader is open to all. */
  readonly session: Session | null;
}

interface Common {
  /** `/api/lots/:id/certificate.pdf` */
  readonly path: string;
  readonly summary: string;
  readonly query?: Readonly<Record<string, string>>;
  /** May be asked before anyone signs on. */
  readonly isOpen?: true;
  /** The roles that may ask; everybody signed on where it is left out. */
  readonly roles?: readonly Role[];
}
/** Answers in JSON: over HTTP and over the live channel alike. */
export interface Reader extends Common {
  readonly answer: z.ZodType;
  readonly read: (question: Question) => Promise<Answer> | Answer;
}
/** Answers with a document, over HTTP alone. */
export interface PaperReader extends Common {
  readonly type: string;
  readonly paint: (question: Question) => Promise<Answer | Paper>;
}

export interface Matched<R> { readonly route: R; readonly params: Record<string, string> }

/** Finds what answers a path. @throws URIError when a part of it is not decodable */
export function matchRoute<R extends Common>(routes: readonly R[], path: string): Matched<R> | null {
  const parts = path.split('/');
  for (const route of routes) {
    const params = paramsOf(route.path.split('/'), parts);
    if (params !== null) return { route, params };
  }
  return null;
}

function paramsOf(wanted: readonly string[], parts: readonly string[]): Record<string, string> | null {
  if (wanted.length !== parts.length) return null;
  const params: Record<string, string> = {};
  for (const [at, part] of parts.entries()) {
    const want = wanted[at] ?? '';
    if (want.startsWith(':') && part !== '') params[want.slice(1)] = decodeURIComponent(part);
    else if (want !== part) return null;
  }
  return params;
}

/** A whole number of the query within limits, `otherwise` where it is left out, null where it is none. */
export function wholeOf(query: URLSearchParams, name: string, otherwise: number, least: number, most: number): number | null {
  const text = query.get(name);
  if (text === null) return otherwise;
  const value = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  return value >= least && value <= most ? value : null;
}
