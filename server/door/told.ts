import type { Refusal } from '../../shared/traveller/index.ts';
import type { DoorRefusal, Reply } from '../../shared/wire/reply.ts';
import { words } from '../../shared/words/index.ts';

/** The answer that says no, with its words. */
export type No = Extract<Reply, { readonly ok: false }>;

/** A refusal as it is answered: the code for programs, the words for people. */
export function told(refusal: Refusal | DoorRefusal): No {
  const { happened, kept, next } = words('en').refusal(refusal);
  return { ok: false, refusal, words: { happened, kept, next } };
}
