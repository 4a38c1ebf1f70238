import type { Database, Statement } from 'better-sqlite3';
import { noSlipBefore } from '../slip-hash.ts';

/** Where a stream stands. */
export interface HeadRow {
  readonly version: number;
  readonly hash: string;
}

const unwritten: HeadRow = { version: 0, hash: noSlipBefore };
/** About 200 bytes each. */
const mostKept = 20_000;

/**
 * The heads of the streams written and checked last. True only inside a write transaction and after `refresh`, which throws all of it
 * away when anyone else has written to the file; whoever rolls back must `forget`.
 */
export class HeadCache {
  readonly #known = new Map<string, HeadRow>();
  readonly #moved = new Set<string>();
  readonly #dataVersion: Statement<[], number>;
  readonly #select: Statement<[string], HeadRow>;
  readonly #put: Statement<[string, number, string]>;
  #seenVersion = -1;

  constructor(db: Database) {
    // SQLite's own word on whether another connection has changed the file; what this one writes does not move it.
    this.#dataVersion = db.prepare<[], number>('PRAGMA data_version').pluck();
    this.#select = db.prepare('SELECT version, hash FROM head WHERE stream = ?');
    this.#put = db.prepare('INSERT INTO head (stream, version, hash) VALUES (?, ?, ?) ON CONFLICT (stream) DO UPDATE SET version = excluded.version, hash = excluded.hash');
  }

  /** To be asked once the transaction has the file. */
  refresh(): void {
    const version = this.#dataVersion.get() ?? -1;
    if (version !== this.#seenVersion || this.#known.size > mostKept) this.forget();
    this.#seenVersion = version;
  }

  of(stream: string): HeadRow {
    const known = this.#known.get(stream);
    if (known !== undefined) return known;
    const head = this.#select.get(stream) ?? unwritten;
    this.#known.set(stream, head);
    return head;
  }

  /** Says where a stream stands now; it is in the file after the next `write`. */
  move(stream: string, version: number, hash: string): void {
    this.#known.set(stream, { version, hash });
    this.#moved.add(stream);
  }

  /** Writes the heads that have moved, each once, however many slips its stream has got. */
  write(): void {
    for (const stream of this.#moved) {
      const { version, hash } = this.of(stream);
      this.#put.run(stream, version, hash);
    }
    this.#moved.clear();
  }

  forget(): void {
    this.#known.clear();
    this.#moved.clear();
  }
}
