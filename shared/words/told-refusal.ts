import type { Refusal } from '../traveller/index.ts';
import type { DoorRefusal } from '../wire/reply.ts';
import type { Speak } from './speak.ts';
import type { WordsFor } from './words-for.ts';

/** A refusal as a person can act on it: what happened, what was kept, what to do next. */
export interface ToldRefusal { readonly happened: string; readonly kept: string; readonly next: string }
/** A refusal of the trade or of the door without words does not compile. */
export type RefusalWords = WordsFor<Refusal, 'code', ToldRefusal, [Speak]>;
export type DoorRefusalWords = WordsFor<DoorRefusal, 'code', ToldRefusal, [Speak]>;
