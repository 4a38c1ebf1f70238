import Database from 'better-sqlite3';
import { StaleVersion, type Expectation, type Receipt, type StoredSlip } from '../journal.ts';
import { JournalFault } from '../journal-fault.ts';
import type { PreparedBody, PreparedEntry } from '../prepared-entry.ts';
import { noSlipBefore, slipHash } from '../slip-hash.ts';
import { prepared } from './prepared.ts';
import { applyAll, ProjectionFault, type Projection } from './projection.ts';
import { leaveBehind } from './projection-shelf.ts';
import { rowsBetween, slipOfRow } from './slip-rows.ts';

/** What became of one entry of a group: a receipt, or the reason it alone was not written. */
export type Outcome = { readonly receipt: Receipt } | { readonly refusedBy: unknown };

interface HeadRow {
  readonly version: number;
  readonly hash: string;
}

interface EntryRow {
  readonly first: number;
  readonly last: number;
  readonly answer: string | null;
}

const unwritten: HeadRow = { version: 0, hash: noSlipBefore };

/** Writes groups of entries, each group as one durable transaction. Holds no state of its own that could disagree with the file. */
export class GroupWriter {
  readonly #db: Database.Database;
  readonly #projections: readonly Projection[];
  #unattended: readonly string[];

  constructor(db: Database.Database, projections: readonly Projection[], unattendedProjections: readonly string[]) {
    this.#db = db;
    this.#projections = projections;
    this.#unattended = unattendedProjections;
  }

  /**
   * Writes a group and commits it. An entry that is stale, or that a projection throws at, is undone alone.
   * @returns one outcome an entry, in order; durable when this returns
   * @throws JournalFault when the disk or the database failed: then nothing of the group is known to be durable
   */
  write(group: readonly PreparedEntry[]): Outcome[] {
    const db = this.#db;
    try {
      prepared(db, 'BEGIN IMMEDIATE').run();
      leaveBehind(db, this.#unattended);
      const outcomes = group.map((entry) => this.#writeAlone(entry));
      prepared(db, 'COMMIT').run();
      this.#unattended = [];
      return outcomes;
    } catch (cause) {
      throw this.#giveUp(cause);
    }
  }

  /** The receipt of an entry written before, or null. */
  receiptFor(clientId: string): Receipt | null {
    const sql = 'SELECT first_position AS first, last_position AS last, answer FROM entry WHERE client_id = ?';
    const row = prepared<[string], EntryRow>(this.#db, sql).get(clientId);
    if (row === undefined) return null;
    const slips = rowsBetween(this.#db, row.first, row.last).map(slipOfRow);
    return { clientId, slips, answer: answerOf(row.answer), repeated: true };
  }

  #writeAlone(entry: PreparedEntry): Outcome {
    const db = this.#db;
    prepared(db, 'SAVEPOINT entry').run();
    try {
      const receipt = this.receiptFor(entry.clientId) ?? this.#writeEntry(entry);
      prepared(db, 'RELEASE entry').run();
      return { receipt };
    } catch (cause) {
      if (!db.inTransaction || isFault(cause)) throw cause;
      prepared(db, 'ROLLBACK TO entry').run();
      prepared(db, 'RELEASE entry').run();
      return { refusedBy: cause };
    }
  }

  #writeEntry(entry: PreparedEntry): Receipt {
    for (const check of entry.checks) this.#expect(check);
    const slips: StoredSlip[] = [];
    for (const change of entry.changes) this.#writeChange(entry, change, slips);
    // An entry without slips has an empty run, 1 … 0, and is remembered all the same.
    const [first, last] = [slips[0]?.position ?? 1, slips.at(-1)?.position ?? 0];
    prepared<[string, number, number, string | null]>(this.#db, 'INSERT INTO entry (client_id, first_position, last_position, answer) VALUES (?, ?, ?, ?)')
      .run(entry.clientId, first, last, entry.answerText);
    if (slips.length > 0) applyAll(this.#db, this.#projections, slips);
    return { clientId: entry.clientId, slips, answer: answerOf(entry.answerText), repeated: false };
  }

  #writeChange(entry: PreparedEntry, change: PreparedEntry['changes'][number], slips: StoredSlip[]): void {
    let head = this.#expect(change);
    for (const body of change.bodies) {
      const slip = this.#writeSlip(entry, change.stream, body, head);
      head = slip;
      slips.push(slip);
    }
    if (change.bodies.length === 0) return;
    prepared<[string, number, string]>(
      this.#db,
      'INSERT INTO head (stream, version, hash) VALUES (?, ?, ?) ON CONFLICT (stream) DO UPDATE SET version = excluded.version, hash = excluded.hash',
    ).run(change.stream, head.version, head.hash);
  }

  #writeSlip({ at, by, bench, clientId }: PreparedEntry, stream: string, { text, body, schema }: PreparedBody, head: HeadRow): StoredSlip {
    const version = head.version + 1;
    const stamped = { stream, version, type: body.type, schema, at, by, bench, clientId, prevHash: head.hash };
    const hash = slipHash({ ...stamped, bodyText: text });
    const { lastInsertRowid } = prepared<[string, number, string, number, string, string, string, string, string, string, string]>(
      this.#db,
      'INSERT INTO slip (stream, version, type, schema, at, by, bench, client_id, body, prev_hash, hash) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)',
    ).run(stream, version, body.type, schema, at, by, bench, clientId, text, head.hash, hash);
    return { position: Number(lastInsertRowid), ...stamped, body, hash };
  }

  #expect({ stream, expectedVersion }: Expectation): HeadRow {
    const head = prepared<[string], HeadRow>(this.#db, 'SELECT version, hash FROM head WHERE stream = ?').get(stream) ?? unwritten;
    if (head.version !== expectedVersion) throw new StaleVersion(stream, expectedVersion, head.version);
    return head;
  }

  /** Undoes the group and says whether the journal can go on. After a failed sync no later one can be believed: then it cannot. */
  #giveUp(cause: unknown): JournalFault {
    let canGoOn = passing.some((code) => sqliteCode(cause).startsWith(code));
    try {
      if (this.#db.inTransaction) prepared(this.#db, 'ROLLBACK').run();
    } catch {
      canGoOn = false; // the first cause is the one to tell
    }
    return canGoOn
      ? new JournalFault('fault', `The journal could not be written: ${String(cause)}. Nothing of this entry is kept for certain; send it again.`, cause)
      : new JournalFault('closed', `The journal failed and takes no more entries until the server is started again: ${String(cause)}`, cause);
  }
}

/** Causes that can pass without a restart: the disk is full, or another program holds the file for a while. */
const passing = ['SQLITE_FULL', 'SQLITE_BUSY', 'SQLITE_NOMEM'];
const faults = [...passing, 'SQLITE_IOERR', 'SQLITE_CORRUPT', 'SQLITE_NOTADB', 'SQLITE_READONLY', 'SQLITE_CANTOPEN', 'SQLITE_PROTOCOL'];

function isFault(cause: unknown): boolean {
  return faults.some((fault) => sqliteCode(cause).startsWith(fault));
}

/** The database's own code for an error, or for what lies beneath a projection's fault; empty when it is not the database's. */
function sqliteCode(cause: unknown): string {
  if (cause instanceof Database.SqliteError) return cause.code;
  return cause instanceof ProjectionFault ? sqliteCode(cause.cause) : '';
}

function answerOf(text: string | null): unknown {
  return text === null ? undefined : JSON.parse(text);
}
