import { createHash } from 'node:crypto';
import { readFurnaceLog } from '../shared/carbide/furnace-log/index.ts';
import { decide, evolve, NotAtHand } from '../shared/traveller/index.ts';
import type { AnyState, Charge, Command, Lot, NewSlip, Refusal, Stamp, Subject } from '../shared/traveller/index.ts';
import type { DemoPerson } from './people.ts';

/** One commit as the journal takes it; times are in the past where history is made. */
export interface DemoEntry { readonly clientId: string; readonly at: string; readonly by: string; readonly bench: string; readonly changes: readonly { readonly stream: string; readonly expectedVersion: number; readonly bodies: readonly NewSlip['body'][] }[]; /** The file that a slip of it names; kept beside the journal before the entry. */ readonly file?: string }

/** A command of the story that the rules refused: the story is wrong, not the rules. */
export class StoryRefused extends Error {
  constructor(command: Command, refusal: Refusal) { super(`${JSON.stringify(command)} was refused: ${JSON.stringify(refusal)}`); this.name = 'StoryRefused'; }
}

/**
 * The shop floor of the invented plant while its history is made: it keeps every state in memory, runs each command through the same
 * `decide` as the server, and remembers the commits. Nothing on it could not have happened.
 */
export class Floor {
  readonly entries: DemoEntry[] = [];
  /** Files handed in, by their digest, as the store beside the journal keeps them. */
  readonly files = new Map<string, string>();
  readonly #states = new Map<string, AnyState>();
  #now: number;
  #serial = 0;

  constructor(startIso: string) {
    this.#now = Date.parse(startIso);
  }

  get now(): string { return new Date(this.#now).toISOString(); }
  /** Lets time pass. */
  wait(minutes: number): void { this.#now += minutes * 60_000; }
  /** Goes on at this moment, never back. */
  waitUntil(iso: string): void { this.#now = Math.max(this.#now, Date.parse(iso)); }

  state(stream: string): AnyState | null { return this.#states.get(stream) ?? null; }
  lot(id: string): Lot {
    const state = this.state(`lot:${id}`);
    if (state?.kind !== 'lot') throw new NotAtHand(`lot:${id}`);
    return state;
  }
  subject(stream: string): Subject {
    const state = this.state(stream);
    if (state === null || !('gates' in state)) throw new NotAtHand(stream);
    return state;
  }
  charge(stream: string): Charge {
    const subject = this.subject(stream);
    if (subject.kind !== 'furnace' && subject.kind !== 'coating') throw new NotAtHand(stream);
    return subject;
  }

  /** Hands a file in. @returns its digest, by which a command names it */
  keepFile(text: string): string {
    const digest = createHash('sha256').update(text).digest('hex');
    this.files.set(digest, text);
    return digest;
  }
  #fileOf(command: Command): { readonly file?: string } {
    const file = command.type === 'attachFurnaceLog' ? this.files.get(command.attachment) : undefined;
    return file === undefined ? {} : { file };
  }
  /** What the door brings beside a command that names a file. */
  #attached(command: Command): Pick<Stamp, 'attached'> {
    if (command.type !== 'attachFurnaceLog') return {};
    const text = this.files.get(command.attachment);
    return { attached: text === undefined ? null : { digest: command.attachment, bytes: Buffer.byteLength(text), log: readFurnaceLog(text) } };
  }

  /** Gives a command as this person at this bench; signed, since the story's people know their PINs. @throws StoryRefused */
  give(person: DemoPerson, bench: string, command: Command, coSigner: DemoPerson | null = null): void {
    this.#serial += 1;
    const stamp: Stamp = { at: this.now, by: person, bench, seed: `demo-${this.#serial}`, signed: true, coSigner, ...this.#attached(command) };
    const decision = decide({ state: (stream) => this.state(stream) }, command, stamp);
    if ('refusal' in decision) throw new StoryRefused(command, decision.refusal);
    const changes = new Map<string, { stream: string; expectedVersion: number; bodies: NewSlip['body'][] }>();
    for (const { stream, body } of decision.slips) {
      const before = this.state(stream);
      const version = before?.version ?? 0;
      const change = changes.get(stream) ?? { stream, expectedVersion: version, bodies: [] };
      change.bodies.push(body);
      changes.set(stream, change);
      this.#states.set(stream, evolve(before, { stream, version: version + 1, at: stamp.at, by: person.badge, bench, body }));
    }
    this.entries.push({ clientId: `demo-${String(this.#serial).padStart(7, '0')}`, at: stamp.at, by: person.badge, bench, changes: [...changes.values()], ...this.#fileOf(command) });
  }
}
