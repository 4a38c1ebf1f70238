import { evolve } from './evolve.ts';
import type { Batch } from './powder-batch/batch.ts';
import type { Charge } from './charge/charge.ts';
import type { AnyState, Known, Subject } from './known.ts';
import type { Lot } from './lot/lot.ts';
import { Refused } from './refusal.ts';
import type { Refusal } from './refusal.ts';
import type { CommandType } from './command.ts';
import type { Role } from './rights.ts';
import { RIGHTS } from './rights.ts';
import type { NewSlip, SlipBody } from './slip.ts';
import type { Signature, Stamp } from './stamp.ts';
import { streamName, streamParts } from './stream.ts';

/** Leaves the decision with this refusal. */
export function refuse(refusal: Refusal): never {
  throw new Refused(refusal);
}

/**
 * Writes the slips of one decision and shows every stream as it will be after them.
 * It lives for one call of `decide` and is seen by nobody else, so the decision as a whole stays pure.
 */
export class Pen {
  readonly stamp: Stamp;
  readonly slips: NewSlip[] = [];
  readonly #known: Known;
  readonly #after = new Map<string, AnyState>();

  constructor(known: Known, stamp: Stamp) {
    this.#known = known;
    this.stamp = stamp;
  }

  /** The streams written to, as they are after the slips so far. */
  get after(): ReadonlyMap<string, AnyState> {
    return this.#after;
  }

  state(stream: string): AnyState | null {
    return this.#after.get(stream) ?? this.#known.state(stream);
  }

  write(stream: string, body: SlipBody): void {
    const before = this.state(stream);
    const { at, by, bench } = this.stamp;
    this.#after.set(stream, evolve(before, { stream, version: (before?.version ?? 0) + 1, at, by: by.badge, bench, body }));
    this.slips.push({ stream, body });
  }

  /** The state of this kind, or a refusal that names what is missing. */
  find<K extends AnyState['kind']>(stream: string, kind: K, what: Extract<Refusal, { code: 'notFound' }>['what']): Extract<AnyState, { kind: K }> {
    const state = this.state(stream);
    if (state === null || state.kind !== kind) refuse({ code: 'notFound', what, id: streamParts(stream)?.id ?? stream });
    return state as Extract<AnyState, { kind: K }>;
  }
  lot(id: string): Lot { return this.find(streamName('lot', id), 'lot', 'lot'); }
  batch(id: string): Batch { return this.find(streamName('batch', id), 'batch', 'batch'); }
  charge(stream: string): Charge {
    return this.find(stream, streamParts(stream)?.kind === 'coating' ? 'coating' : 'furnace', 'charge');
  }
  subject(stream: string): Subject {
    const parts = streamParts(stream);
    switch (parts?.kind) {
      case 'lot': return this.lot(parts.id);
      case 'batch': return this.batch(parts.id);
      case 'furnace': case 'coating': return this.charge(stream);
      default: return refuse({ code: 'notFound', what: 'lot', id: stream });
    }
  }

  /** Refuses anyone whose roles do not allow this command. */
  requireRole(command: CommandType): void {
    const needed: readonly Role[] | 'anyone' | 'gate' = RIGHTS[command];
    if (typeof needed !== 'string') this.requireOneOf(command, needed);
  }
  requireOneOf(command: string, needed: readonly Role[]): void {
    if (!needed.some((role) => this.stamp.by.roles.includes(role))) refuse({ code: 'notYourRole', command, needed });
  }
  /** The signature of the person who gave the command; the role is the first that entitles to it. */
  signature(command: CommandType, meaning: Signature['meaning']): Signature {
    if (!this.stamp.signed) refuse({ code: 'signatureMissing', command });
    const needed: readonly Role[] | 'anyone' | 'gate' = RIGHTS[command];
    const { badge, name, roles } = this.stamp.by;
    const role = roles.find((each) => typeof needed === 'string' || needed.includes(each)) ?? refuse({ code: 'notYourRole', command, needed: typeof needed === 'string' ? [] : needed });
    return { badge, name, role, at: this.stamp.at, meaning };
  }
}

/** Refuses an empty reason. */
export function requireReason(command: CommandType, reason: string): void {
  if (reason.trim() === '') refuse({ code: 'reasonMissing', command });
}

const FIT = /^[A-Z0-9][A-Z0-9-]{1,15}$/;
/** Refuses numbers that would not fit a label's code: upper-case letters, digits and dashes, 2 to 16 of them (reason: shared/traveller/box-code). */
export function requireFitId(field: string, value: string): void {
  if (!FIT.test(value)) refuse({ code: 'identifierUnfit', field, value, rule: 'number', detail: '' });
}
