import type { Refusal } from '../../shared/traveller/index.ts';
import { refusalStatus } from '../../shared/wire/refusal-status.ts';
import type { DoorRefusal } from '../../shared/wire/reply.ts';
import { told } from '../door/told.ts';

/** What is answered to a question, whichever wire it came by. */
export interface Answer { readonly status: number; readonly body: unknown }
/** A document instead of JSON. */
export interface Paper { readonly status: 200; readonly bytes: Uint8Array; readonly type: string; readonly name: string }

export function found(body: unknown): Answer {
  return { status: 200, body };
}

export function refused(refusal: Refusal | DoorRefusal): Answer {
  return { status: refusalStatus(refusal.code), body: told(refusal) };
}

export function notFound(what: Extract<Refusal, { readonly code: 'notFound' }>['what'], id: string): Answer {
  return refused({ code: 'notFound', what, id });
}

/** One thing that is wrong with a question. */
export function malformed(where: string, what: string): Answer {
  return refused({ code: 'malformed', problems: [{ where, what }] });
}

export function isPaper(answer: Answer | Paper): answer is Paper {
  return 'bytes' in answer;
}
