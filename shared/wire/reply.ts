import type { Refusal } from '../traveller/index.ts';
import type { StampedSlip } from './stamped-slip.ts';

/** A "no" of the door itself, before or beside the rules of the trade. */
export type DoorRefusal =
  | { readonly code: 'notSignedIn' }
  | { readonly code: 'signInFailed'; readonly attemptsLeft: number }
  | { readonly code: 'signInLocked'; readonly untilIso: string }
  | { readonly code: 'wrongPin'; readonly attemptsLeft: number }
  | { readonly code: 'malformed'; readonly problems: readonly { readonly where: string; readonly what: string }[] }
  | { readonly code: 'tooLarge'; readonly mostBytes: number }
  | { readonly code: 'notJson' }
  | { readonly code: 'unknownAddress'; readonly path: string }
  | { readonly code: 'methodNotAllowed'; readonly method: string; readonly allowed: string }
  | { readonly code: 'staleVersion'; readonly stream: string; readonly seen: number; readonly actual: number }
  | { readonly code: 'clientIdReused'; readonly clientId: string }
  | { readonly code: 'tooBusy' }
  | { readonly code: 'storageFault' }
  /** The program itself stumbled: a bug, not the store and not the entry. */
  | { readonly code: 'programFault' }
  | { readonly code: 'setUpFirst' };
export type DoorRefusalCode = DoorRefusal['code'];

/** The answer to every command. `kept` says whether anything was written. */
export type Reply =
  | { readonly ok: true; readonly slips: readonly StampedSlip[]; readonly repeated: boolean }
  | { readonly ok: false; readonly refusal: Refusal | DoorRefusal; /** What happened, what was kept, what to do next, in the kiosk's language. */ readonly words: { readonly happened: string; readonly kept: string; readonly next: string } };
