import type { AnyState, Command, Decision, Known, NewSlip, Refusal, ServerCommand, SlipBody, Stamp } from '../../shared/traveller/index.ts';
import { decide, decideOwn, evolve, machineOf, NotAtHand, streamOf } from '../../shared/traveller/index.ts';
import type { Envelope } from '../../shared/wire/command-schema.ts';
import { readCommand } from '../../shared/wire/read-command.ts';
import type { DoorRefusal, Reply } from '../../shared/wire/reply.ts';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import type { Entry, Expectation, Journal, Receipt } from '../journal/journal.ts';
import { StaleVersion } from '../journal/journal.ts';
import type { AttachmentStore } from '../journal/attachment-store.ts';
import type { PinVault } from '../journal/pin-vault.ts';
import type { PinDesk } from '../people/pin-desk.ts';
import { Turns } from '../people/turns.ts';
import { attachedFile } from './attached-file.ts';
import { commandDigest } from './command-digest.ts';
import { faultRefusal } from './fault-refusal.ts';
import { newPinOf, withNewPin } from './new-pin.ts';
import { activePerson, personAtHand } from './person-at-hand.ts';
import { Seeds } from './seeds.ts';
import { checkSignatures, unsigned, type Signatures } from './signatures.ts';
import { stamped } from './stamped.ts';
import { settled, StateCache, type KnownStream } from './state-cache.ts';
import { told } from './told.ts';
import { UnderWay } from './under-way.ts';

/** Who gives a command: the badge signed on, or null for nobody. */
export type Giver = { readonly badge: string } | null;

export interface DoorParts {
  readonly journal: Journal;
  readonly vault: PinVault;
  readonly attachments: AttachmentStore;
  readonly pins: PinDesk;
  /** Told of what could not be foreseen: a disk that failed, or a bug. */
  readonly onFault: (fault: unknown) => void;
  readonly now?: () => Date;
}

/** Decisions a command may take, each on newer states, before it is told to come again. */
const mostDecisions = 12;
/** Streams fetched for one decision; far more than the largest charge has members. */
const mostFetches = 2_000;
/** Commands under way at once, all kiosks together. */
const mostUnderWay = 20_000;

type StreamsRead = ReadonlyMap<string, KnownStream>;
type Stamped = Pick<Entry, 'clientId' | 'at' | 'by' | 'bench'>;
/** A receipt as it is answered. */
type Written = Pick<Receipt, 'clientId' | 'answer' | 'repeated'> & { readonly slips: readonly StampedSlip[] };
type Draft = { readonly missing: string } | { readonly slips: readonly NewSlip[]; readonly after: ReadonlyMap<string, AnyState>; readonly read: StreamsRead; readonly stamp: Stamp } | { readonly refusal: Refusal | DoorRefusal; readonly read: StreamsRead } | { readonly missing: string };
/** A stamp and what was decided with it, or a "no" before that. */
type Made = { readonly decision: Decision; readonly stamp: Stamp } | { readonly refusal: Refusal | DoorRefusal };
interface Asked { readonly envelope: Envelope; readonly badge: string | null; readonly signatures: Exclude<Signatures, { readonly refusal: DoorRefusal }>; readonly attached: Pick<Stamp, 'attached'> }

/** What is to be written under one client id, and how it is decided. */
interface Task { readonly clientId: string; readonly bench: string; readonly digest: string; readonly pin: ReturnType<typeof newPinOf>; readonly draft: () => Draft }

/** The one way in: every command, by whichever wire it comes, is read, decided and made durable here. */
export class Door {
  readonly states: StateCache;
  readonly #parts: DoorParts;
  readonly #listeners: ((slips: readonly StampedSlip[]) => void)[] = [];
  readonly #underWay = new UnderWay<Reply>();
  readonly #pinTurns = new Turns();
  readonly #seeds = new Seeds();
  #around: <T>(command: Command, decide: () => Promise<T>) => Promise<T> = (_command, decide) => decide();
  #told = { ms: Number.NaN, text: '' };

  constructor(parts: DoorParts) {
    this.#parts = parts;
    this.states = new StateCache(parts.journal);
  }

  /** Hears of everything that has become durable, in order of arrival. */
  onWritten(hear: (slips: readonly StampedSlip[]) => void): void {
    this.#listeners.push(hear);
  }

  /** What is to be done around the deciding of a command, such as writing first what still waits for it. */
  around(take: <T>(command: Command, decide: () => Promise<T>) => Promise<T>): void {
    this.#around = take;
  }

  /** Carries out what the server itself gives: a press's weights, the clock. An answer that says ok means durable, or that nothing was to be written. Never throws. */
  async own(command: ServerCommand, clientId: string, bench: string): Promise<Reply> {
    try {
      return await this.#carryOut({ clientId, bench, digest: '', pin: null, draft: () => this.#draft((known) => this.#ownDecision(known, command, bench)) });
    } catch (fault) {
      this.#parts.onFault(fault);
      return told(faultRefusal(fault));
    }
  }

  /** The refusal that what the server would give met now; null where it would be taken. Writes nothing. */
  async foretell(command: ServerCommand, bench: string): Promise<Refusal | DoorRefusal | null> {
    for (let fetches = 0; fetches < mostFetches; fetches += 1) {
      const draft = this.#draft((known) => this.#ownDecision(known, command, bench));
      if (!('missing' in draft)) return 'refusal' in draft ? draft.refusal : null;
      await this.states.load(draft.missing);
    }
    return { code: 'tooBusy' };
  }

  #ownDecision(known: Known, command: ServerCommand, bench: string): Made {
    const stamp: Stamp = { at: this.#at(), by: machineOf(command), bench, seed: '', signed: false, coSigner: null };
    return { stamp, decision: decideOwn(known, command, stamp) };
  }

  /** Answers a command. An answer that says ok means durable. Never throws. */
  async give(input: unknown, giver: Giver): Promise<Reply> {
    const read = readCommand(input);
    if (!read.ok) return told({ code: 'malformed', problems: read.problems });
    const { envelope } = read;
    if (/\p{Cs}/u.test(envelope.bench)) return told({ code: 'malformed', problems: [{ where: 'bench', what: 'must be well-formed text' }] });
    if (this.#underWay.size >= mostUnderWay) return told({ code: 'tooBusy' });
    // The same client id twice at once: the second one learns what became of the first.
    for (let earlier = this.#underWay.get(envelope.clientId); earlier !== undefined; earlier = this.#underWay.get(envelope.clientId)) await earlier;
    const answer = this.#answer(envelope, giver);
    this.#underWay.set(envelope.clientId, answer);
    try {
      return await answer;
    } finally {
      this.#underWay.delete(envelope.clientId);
    }
  }

  /**
   * Writes a slip that the server itself makes, such as a signed checkpoint. `make` is asked again when the stream has moved.
   * @throws JournalFault when it is not durable
   */
  async record(stream: string, by: string, clientId: string, make: () => Promise<SlipBody>): Promise<readonly StampedSlip[]> {
    for (let attempt = 1; ; attempt += 1) {
      const body = await make();
      const known = await this.states.fresh(stream);
      const stampedWith = { clientId, at: this.#at(), by, bench: 'server' };
      const after = new Map([[stream, evolve(known.state, { ...stampedWith, stream, version: known.version + 1, body })]]);
      try {
        return (await this.#write(stampedWith, [{ stream, body }], after, new Map([[stream, known]]), undefined)).slips;
      } catch (fault) {
        if (!(fault instanceof StaleVersion) || attempt >= mostDecisions) throw fault;
      }
    }
  }

  async #answer(envelope: Envelope, giver: Giver): Promise<Reply> {
    try {
      const by = giver === null ? null : personAtHand(this.states, giver.badge) ?? await activePerson(this.states, giver.badge);
      if (by === null && envelope.command.type !== 'openPlant') return told({ code: (await this.states.fresh('plant:plant')).state === null ? 'setUpFirst' : 'notSignedIn' });
      const signatures = envelope.pin === undefined ? unsigned : await checkSignatures(this.#parts.pins, this.states, envelope, by);
      if ('refusal' in signatures) return told(signatures.refusal);
      const asked: Asked = { envelope, badge: by?.badge ?? null, signatures, attached: await attachedFile(this.#parts.attachments, envelope.command) };
      const { clientId, bench, command } = envelope;
      return await this.#around(command, () => this.#carryOut({ clientId, bench, digest: commandDigest(by?.badge ?? '', command), pin: newPinOf(command), draft: () => this.#draft((known) => this.#decide(known, asked)) }));
    } catch (fault) {
      this.#parts.onFault(fault);
      return told(faultRefusal(fault));
    }
  }

  /** Decides until the decision stands. Between a decision and its handing to the journal nothing else has a turn. */
  async #carryOut({ clientId, bench, digest, pin, draft: drafted }: Task): Promise<Reply> {
    for (let decisions = 1, fetches = 0; decisions <= mostDecisions && fetches < mostFetches;) {
      const draft = drafted();
      if ('missing' in draft) {
        await this.states.load(draft.missing);
        fetches += 1;
        continue;
      }
      decisions += 1;
      if ('refusal' in draft) {
        if (!(await this.#stillStands(draft.read))) continue;
        return (await this.#earlierReply(clientId, digest)) ?? told(draft.refusal);
      }
      const { slips, after, read, stamp } = draft;
      if (slips.length === 0) return { ok: true, slips: [], repeated: false };
      // Nothing is awaited between the decision and the hand-over: of two commands in one turn the second must see the first.
      const write = (): Promise<Written> => this.#write({ clientId, at: stamp.at, by: stamp.by.badge, bench }, slips, after, read, digest);
      try {
        return replyOf(pin === null ? await write() : await this.#pinTurns.take(pin.badge, () => withNewPin(this.#parts.vault, pin, write)), digest);
      } catch (fault) {
        if (!(fault instanceof StaleVersion)) throw fault;
      }
    }
    return told({ code: 'tooBusy' });
  }

  /** Decides on what is at hand, all of one moment; or says which stream must be fetched first. */
  #draft(make: (known: Known) => Made): Draft {
    const read = new Map<string, KnownStream>();
    try {
      const made = make({ state: (stream) => {
        const there = this.states.peek(stream);
        if (there === undefined) throw new NotAtHand(stream);
        read.set(stream, there);
        return there.state;
      } });
      if ('refusal' in made) return { refusal: made.refusal, read };
      const { decision, stamp } = made;
      return 'refusal' in decision ? { refusal: decision.refusal, read } : { ...decision, read, stamp };
    } catch (missing) {
      if (!(missing instanceof NotAtHand)) throw missing;
      return { missing: missing.stream };
    }
  }

  #decide(known: Known, { envelope: { command, bench, seen, waitedMs }, badge, signatures, attached }: Asked): Made {
    const person = badge === null ? keeperToBe(command) : known.state(`person:${badge}`);
    if (person === null || !('roles' in person) || ('active' in person && !person.active)) return { refusal: { code: 'notSignedIn' } };
    const at = this.#at();
    const stamp: Stamp = { at, ...(waitedMs === undefined ? {} : { takenAt: new Date(Date.parse(at) - waitedMs).toISOString() }), by: { badge: person.badge, name: person.name, roles: person.roles }, bench, seed: this.#seeds.next(), ...signatures, ...attached };
    if (seen !== undefined) {
      const stream = streamOf(command);
      const actual = known.state(stream)?.version ?? 0;
      if (actual !== seen) return { refusal: { code: 'staleVersion', stream, seen, actual } };
    }
    return { stamp, decision: decide(known, command, stamp) };
  }

  /** Hands slips to the journal and takes them into the states at once, so that the next command of this very turn is decided on them. */
  async #write(stampedWith: Stamped, slips: readonly NewSlip[], after: ReadonlyMap<string, AnyState>, read: StreamsRead, answer: string | undefined): Promise<Written> {
    const bodies = new Map<string, SlipBody[]>();
    for (const { stream, body } of slips) {
      const own = bodies.get(stream);
      if (own === undefined) bodies.set(stream, [body]);
      else own.push(body);
    }
    const appended = this.#parts.journal.append(entryOf(stampedWith, bodies, read, answer));
    for (const [stream, state] of after) {
      const decidedOn = read.get(stream);
      if (decidedOn !== undefined) this.states.advance(stream, decidedOn, state, appended);
    }
    try {
      const { slips: stored, repeated, answer: kept } = await appended;
      const news = stored.map(stamped);
      // A repeated entry wrote nothing: what was taken into the states did not happen a second time.
      if (repeated) this.#forget(read, bodies.keys());
      else {
        for (const stream of bodies.keys()) this.states.settle(stream, appended);
        for (const hear of this.#listeners) hear(news);
      }
      return { clientId: stampedWith.clientId, slips: news, repeated, answer: kept };
    } catch (fault) {
      this.#forget(read, read.keys());
      throw fault;
    }
  }

  /** A refusal may rest only on what is durable. Waits for what is under way, and says whether what was read had really happened. */
  async #stillStands(read: StreamsRead): Promise<boolean> {
    for (const { underWay } of read.values()) await settled(underWay);
    let stands = true;
    for (const [stream, { version, lineage }] of read) {
      const actual = await this.#parts.journal.versionOf(stream);
      if (actual === version) continue;
      const now = this.states.peek(stream);
      // Moved on since, and by this door: what was read is a true earlier state, and the refusal an answer to it.
      if (actual > version && now?.lineage === lineage && now.version >= actual) continue;
      if (now !== undefined) this.states.forget(stream, now.lineage);
      stands = false;
    }
    return stands;
  }

  async #earlierReply(clientId: string, digest: string): Promise<Reply | null> {
    const receipt = await this.#parts.journal.receiptFor(clientId);
    return receipt === null ? null : replyOf({ ...receipt, slips: receipt.slips.map(stamped) }, digest);
  }

  #forget(read: StreamsRead, streams: Iterable<string>): void {
    for (const stream of streams) this.states.forget(stream, read.get(stream)?.lineage ?? 0);
  }

  /** Now, UTC. Hundreds of commands may share a millisecond, and with it its text. */
  #at(): string {
    const now = this.#parts.now?.() ?? new Date();
    if (now.getTime() !== this.#told.ms) this.#told = { ms: now.getTime(), text: now.toISOString() };
    return this.#told.text;
  }
}

/** The first command of all is given by the keeper it enrols. */
function keeperToBe(command: Command): Stamp['by'] | null {
  return command.type === 'openPlant' ? { badge: command.keeper.badge, name: command.keeper.name, roles: ['keeper'] } : null;
}

function entryOf(stampedWith: Stamped, bodies: ReadonlyMap<string, readonly SlipBody[]>, read: StreamsRead, answer: string | undefined): Entry {
  const changes: Entry['changes'][number][] = [];
  const checks: Expectation[] = [];
  for (const [stream, own] of bodies) changes.push({ stream, expectedVersion: read.get(stream)?.version ?? 0, bodies: own });
  for (const [stream, { version }] of read) if (!bodies.has(stream)) checks.push({ stream, expectedVersion: version });
  const { clientId, at, by, bench } = stampedWith;
  return { clientId, at, by, bench, changes, checks, answer };
}

function replyOf({ slips, answer, repeated, clientId }: Written, digest: string): Reply {
  if (repeated && answer !== digest) return told({ code: 'clientIdReused', clientId });
  return { ok: true, slips, repeated };
}
