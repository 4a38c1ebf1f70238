import type { FurnaceLog, LogFault } from '../carbide/furnace-log/index.ts';
import type { Role } from './rights.ts';

/** What the clock, the dice and the door say beside a command. Nothing in the core asks for these itself. */
export interface Stamp {
  /** ISO 8601, UTC. */
  readonly at: string;
  readonly by: { readonly badge: string; readonly name: string; readonly roles: readonly Role[] };
  readonly bench: string;
  /** Fresh for each command; it seeds the draw and is recorded there. */
  readonly seed: string;
  /** When it was entered at the bench, where it waited there for the network; `at` where absent. */
  readonly takenAt?: string;
  /** True when the person re-entered the PIN with this very command and the door has checked it. */
  readonly signed: boolean;
  /** A second person who signed the same command with badge and PIN, checked by the door. */
  readonly coSigner: { readonly badge: string; readonly name: string; readonly roles: readonly Role[] } | null;
  /** The file a command names, read; null where the store has none of that digest. Absent where nobody looked, as at a kiosk. */
  readonly attached?: AttachedFile | null;
}

/** A furnace log out of the store. `digest` is SHA-256 in hexadecimal, `bytes` the size of the file. */
export interface AttachedFile { readonly digest: string; readonly bytes: number; readonly log: FurnaceLog | { readonly fault: LogFault } }

/** What a signature leaves on a slip: who, in which role, when, and what it means. */
export interface Signature {
  readonly badge: string;
  readonly name: string;
  readonly role: Role;
  readonly at: string;
  readonly meaning: 'releasedBy' | 'releasedTogetherWith' | 'concessionGrantedBy' | 'disposedBy' | 'powderReleasedBy' | 'planApprovedBy' | 'resumedBy' | 'releaseWithdrawnBy' | 'movedBy' | 'recallHeldBy' | 'recallClosedBy' | 'studyClosedBy' | 'uncertaintySetBy' | 'limitsFrozenBy' | 'limitsUnfrozenBy';
}
