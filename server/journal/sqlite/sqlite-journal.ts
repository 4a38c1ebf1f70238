import { rename, rm } from 'node:fs/promises';
import type { Database } from 'better-sqlite3';
import type { AttachmentStore } from '../attachment-store.ts';
import type { Entry, Head, HeadsDigest, Journal, Receipt, StoredSlip, Verification } from '../journal.ts';
import { digestOfHeads } from '../heads-digest.ts';
import { JournalFault } from '../journal-fault.ts';
import type { KeyStore } from '../key-store.ts';
import type { PinVault } from '../pin-vault.ts';
import { prepareEntry, type PreparedEntry } from '../prepared-entry.ts';
import { GroupWriter } from './group-writer.ts';
import { prepared } from './prepared.ts';
import type { Projection } from './projection.ts';
import { refill } from './projection-shelf.ts';
import { rowsAfter, rowsOfStream, slipOfRow } from './slip-rows.ts';
import { verifyChain } from './verify-chain.ts';

interface Waiting {
  readonly entry: PreparedEntry;
  readonly resolve: (receipt: Receipt) => void;
  readonly reject: (reason: unknown) => void;
}

/**
 * Most entries in one transaction. Past a few hundred a larger group commits hardly more a second, and the last of it waits for all
 * (measured: docs/speed.md); a flood also must not keep the event loop from everything else.
 */
const mostInGroup = 256;

/** What a SqliteJournal is built of; openSqliteJournal puts it together. */
export interface SqliteParts {
  readonly writer: Database;
  readonly reader: Database;
  readonly projections: readonly Projection[];
  readonly group: GroupWriter;
  readonly schemaOf: (type: string) => number;
  readonly pins: PinVault;
  readonly keys: KeyStore;
  readonly attachments: AttachmentStore;
  readonly unlock: () => void;
}

/** The journal in one SQLite file. Entries that arrive in one turn of the event loop share one durable commit. */
export class SqliteJournal implements Journal {
  /** For the queries of server/readmodels; sees what is committed and cannot write. */
  readonly reader: Database;
  readonly pins: PinVault;
  readonly keys: KeyStore;
  readonly attachments: AttachmentStore;
  readonly #parts: SqliteParts;
  #waiting: Waiting[] = [];
  #scheduled = false;
  #closed: JournalFault | null = null;

  constructor(parts: SqliteParts) {
    this.#parts = parts;
    this.reader = parts.reader;
    this.pins = parts.pins;
    this.keys = parts.keys;
    this.attachments = parts.attachments;
  }

  async append(entry: Entry): Promise<Receipt> {
    if (this.#closed !== null) throw this.#closed;
    const ready = prepareEntry(entry, this.#parts.schemaOf);
    return new Promise((resolve, reject) => {
      this.#waiting.push({ entry: ready, resolve, reject });
      this.#schedule();
    });
  }

  async receiptFor(clientId: string): Promise<Receipt | null> {
    this.#requireOpen();
    return this.#parts.group.receiptFor(clientId);
  }

  async read(stream: string, afterVersion = 0, limit = -1): Promise<readonly StoredSlip[]> {
    return rowsOfStream(this.#requireOpen(), stream, afterVersion, limit).map(slipOfRow);
  }

  async follow(afterPosition: number, limit: number): Promise<readonly StoredSlip[]> {
    return rowsAfter(this.#requireOpen(), afterPosition, limit).map(slipOfRow);
  }

  async versionOf(stream: string): Promise<number> {
    return prepared<[string], Head>(this.#requireOpen(), 'SELECT version FROM head WHERE stream = ?').get(stream)?.version ?? 0;
  }

  async heads(): Promise<readonly Head[]> {
    return prepared<[], Head>(this.#requireOpen(), 'SELECT stream, version, hash FROM head ORDER BY stream').all();
  }

  async headsDigest(): Promise<HeadsDigest> {
    const db = this.#requireOpen();
    const heads = prepared<[], Head>(db, 'SELECT stream, version, hash FROM head ORDER BY stream').all();
    const last = prepared<[], { position: number }>(db, 'SELECT coalesce(max(position), 0) AS position FROM slip').get();
    return { digest: digestOfHeads(heads), streams: heads.length, position: last?.position ?? 0 };
  }

  async verify(): Promise<Verification> {
    return verifyChain(this.#requireOpen());
  }

  /** Drops every read model and fills it again from the journal. Other work waits meanwhile: about 10 s for a million slips. */
  async rebuild(): Promise<{ slips: number }> {
    this.#requireOpen();
    return { slips: refill(this.#parts.writer, this.#parts.projections) };
  }

  /**
   * Copies the whole file, attachments, PINs' hashes and keys included, to `toFile` while work goes on. The copy appears under its name only
   * when it is whole.
   */
  async backup(toFile: string): Promise<void> {
    const unfinished = `${toFile}.unfinished`;
    const db = this.#requireOpen();
    await rm(unfinished, { force: true });
    await db.backup(unfinished);
    await rename(unfinished, toFile);
  }

  async close(): Promise<void> {
    if (!this.#parts.writer.open) return;
    while (this.#waiting.length > 0) this.#flush();
    this.#closed ??= new JournalFault('closed', 'The journal is closed.');
    this.#parts.reader.close();
    this.#parts.writer.close();
    this.#parts.unlock();
  }

  #schedule(): void {
    if (this.#scheduled) return;
    this.#scheduled = true;
    setImmediate(() => {
      this.#scheduled = false;
      this.#flush();
      if (this.#waiting.length > 0) this.#schedule();
    });
  }

  #flush(): void {
    const group = this.#waiting.splice(0, mostInGroup);
    if (group.length === 0) return;
    try {
      if (this.#closed !== null) throw this.#closed;
      const outcomes = this.#parts.group.write(group.map(({ entry }) => entry));
      outcomes.forEach((outcome, place) => {
        if ('receipt' in outcome) group[place]?.resolve(outcome.receipt);
        else group[place]?.reject(outcome.refusedBy);
      });
    } catch (fault) {
      if (fault instanceof JournalFault && fault.kind === 'closed') this.#closed = fault;
      for (const { reject } of group) reject(fault);
    }
  }

  #requireOpen(): Database {
    if (!this.#parts.writer.open) throw this.#closed ?? new JournalFault('closed', 'The journal is closed.');
    return this.#parts.writer;
  }
}
