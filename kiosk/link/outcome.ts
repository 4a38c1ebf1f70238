import type { Refusal } from '../../shared/traveller/index.ts';
import type { DoorRefusal } from '../../shared/wire/reply.ts';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';

/** A "no" of the link itself: what could not be asked of the server at all. Nothing of these is kept. */
export type LinkRefusal =
  | { readonly code: 'outOfReach' }
  /** Signed commands carry a PIN, which is never stored, so they cannot wait for the network. */
  | { readonly code: 'signingNeedsNetwork' }
  | { readonly code: 'commandNeedsNetwork' }
  /** It was sent, and no answer came: it may have been taken. */
  | { readonly code: 'answerLost' };
export type AnyRefusal = Refusal | DoorRefusal | LinkRefusal;

/** What happened, what was kept, what to do next: ready to show. */
export interface RefusalText { readonly happened: string; readonly kept: string; readonly next: string }

/** What became of a command. */
export type Outcome =
  | { readonly state: 'acknowledged'; readonly clientId: string; readonly slips: readonly StampedSlip[] }
  /** Written to the outbox of this kiosk; it is sent when the network is back. */
  | { readonly state: 'kept'; readonly clientId: string }
  /** A refused bench entry also stays in the outbox, as refused, until `link.outbox.dismiss(clientId)`. */
  | { readonly state: 'refused'; readonly clientId: string; readonly refusal: AnyRefusal; readonly words: RefusalText };

/** Thrown by `link.ask` and the sign-on: a refusal with its words. */
export class LinkFault extends Error {
  readonly refusal: AnyRefusal;
  readonly words: RefusalText;
  /** The web status, 0 where the server was not reached. */
  readonly status: number;
  constructor(refusal: AnyRefusal, words: RefusalText, status: number) {
    super(refusal.code);
    this.name = 'LinkFault';
    this.refusal = refusal;
    this.words = words;
    this.status = status;
  }
}
