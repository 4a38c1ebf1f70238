import Database from 'better-sqlite3';
import { StaleVersion, type Expectation, type Receipt, type StoredSlip } from '../journal.ts';
import { JournalFault } from '../journal-fault.ts';
import type { PreparedBody, PreparedEntry } from '../prepared-entry.ts';
import { slipHash } from '../slip-hash.ts';
import { groupStatements, type Statements } from './group-statements.ts';
import { HeadCache, type HeadRow } from './head-cache.ts';
import { applyAll, ProjectionFault, type Projection } from './projection.ts';
import { leaveBehind } from './projection-shelf.ts';
import { rowsBetween, slipOfRow } from './slip-rows.ts';

/** What became of one entry of a group: a receipt, or the reason it alone was not written. */
export type Outcome = { readonly receipt: Receipt } | { readonly refusedBy: unknown };

/** Writes groups of entries, each group as one durable transaction. What it keeps in memory is thrown away whenever it might differ from the file. */
export class GroupWriter {
  readonly #db: Database.Database;
  readonly #projections: readonly Projection[];
  readonly #sql: Statements;
  readonly #heads: HeadCache;
  #unattended: readonly string[];

  constructor(db: Database.Database, projections: readonly Projection[], unattendedProjections: readonly string[]) {
    this.#db = db;
    this.#projections = projections;
    this.#sql = groupStatements(db);
    this.#heads = new HeadCache(db);
    this.#unattended = unattendedProjections;
  }

  /**
   * Writes a group and commits it. An entry that is stale, or that a projection throws at, is undone alone.
   * @returns one outcome an entry, in order; durable when this returns
   * @throws JournalFault when the disk or the database failed: then nothing of the group is known to be durable
   */
  write(group: readonly PreparedEntry[]): Outcome[] {
    try {
      this.#sql.begin.run();
      leaveBehind(this.#db, this.#unattended);
      const outcomes = this.#writeTogether(group) ?? this.#writeOneByOne(group);
      this.#sql.commit.run();
      this.#unattended = [];
      return outcomes;
    } catch (cause) {
      throw this.#giveUp(cause);
    }
  }

  /** The receipt of an entry written before, or null. */
  receiptFor(clientId: string): Receipt | null {
    const row = this.#sql.entry.get(clientId);
    if (row === undefined) return null;
    const slips = rowsBetween(this.#db, row.first, row.last).map(slipOfRow);
    return { clientId, slips, answer: answerOf(row.answer), repeated: true };
  }

  /** As nearly always nothing is stale, repeated or refused, the whole group is written without a way back for each; null when something was, and all of it is undone. */
  #writeTogether(group: readonly PreparedEntry[]): Outcome[] | null {
    this.#sql.savepoint.run();
    this.#heads.refresh();
    try {
      const outcomes = group.map((entry) => ({ receipt: this.#writeEntry(entry) }));
      this.#heads.write();
      this.#sql.release.run();
      return outcomes;
    } catch (cause) {
      this.#undo(cause);
      return null;
    }
  }

  #writeOneByOne(group: readonly PreparedEntry[]): Outcome[] {
    return group.map((entry) => {
      this.#sql.savepoint.run();
      try {
        const receipt = this.receiptFor(entry.clientId) ?? this.#writeEntry(entry);
        this.#heads.write();
        this.#sql.release.run();
        return { receipt };
      } catch (cause) {
        this.#undo(cause);
        return { refusedBy: cause };
      }
    });
  }

  /** Goes back to the savepoint. @throws the cause where there is nothing to go back to, or no point in it */
  #undo(cause: unknown): void {
    this.#heads.forget();
    if (!this.#db.inTransaction || isFault(cause)) throw cause;
    this.#sql.rollbackTo.run();
    this.#sql.release.run();
  }

  #writeEntry(entry: PreparedEntry): Receipt {
    for (const check of entry.checks) this.#expect(check);
    const slips: StoredSlip[] = [];
    for (const change of entry.changes) this.#writeChange(entry, change, slips);
    // An entry without slips has an empty run, 1 … 0, and is remembered all the same. A client id written before is thrown at here.
    this.#sql.addEntry.run(entry.clientId, slips[0]?.position ?? 1, slips.at(-1)?.position ?? 0, entry.answerText);
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
    if (change.bodies.length > 0) this.#heads.move(change.stream, head.version, head.hash);
  }

  #writeSlip({ at, by, bench, clientId }: PreparedEntry, stream: string, { text, body, schema }: PreparedBody, { version: before, hash: prevHash }: HeadRow): StoredSlip {
    const { type } = body;
    const version = before + 1;
    const hash = slipHash({ prevHash, stream, version, type, schema, at, by, bench, clientId, bodyText: text });
    const { lastInsertRowid } = this.#sql.addSlip.run(stream, version, type, schema, at, by, bench, clientId, text, prevHash, hash);
    return { position: Number(lastInsertRowid), stream, version, type, schema, at, by, bench, clientId, body, prevHash, hash };
  }

  #expect({ stream, expectedVersion }: Expectation): HeadRow {
    const head = this.#heads.of(stream);
    if (head.version !== expectedVersion) throw new StaleVersion(stream, expectedVersion, head.version);
    return head;
  }

  /** Undoes the group and says whether the journal can go on. After a failed sync no later one can be believed: then it cannot. */
  #giveUp(cause: unknown): JournalFault {
    let canGoOn = passing.some((code) => sqliteCode(cause).startsWith(code));
    try {
      this.#heads.forget();
      if (this.#db.inTransaction) this.#sql.rollback.run();
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
