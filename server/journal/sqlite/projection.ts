import type { Database } from 'better-sqlite3';
import type { StoredSlip } from '../journal.ts';

/**
 * Tables kept up to date from the slips, inside the append's own transaction: a bench list, a search, a trace. It can be thrown
 * away and filled again at any time, so it keeps all it knows in its tables and nothing in memory, and uses no clock or dice.
 */
export interface Projection {
  readonly name: string;
  /** 1 or more; raise it when `create` or `apply` change, and the tables are filled again at the next opening. */
  readonly version: number;
  /** Creates its tables, indexes, views and triggers. Nothing of the same name exists when this is called. */
  create(db: Database): void;
  /** Takes in slips in order of position. To throw is to refuse the entry they came with. Starts and ends no transaction. */
  apply(db: Database, slips: readonly StoredSlip[]): void;
}

/** A projection threw. The entry was not written; its tables are as they were. A bug, not a person's mistake. */
export class ProjectionFault extends Error {
  readonly projection: string;
  constructor(projection: string, cause: unknown) {
    super(`The read model "${projection}" could not take in a slip, so the entry was not written: ${String(cause)}`, { cause });
    this.name = 'ProjectionFault';
    this.projection = projection;
  }
}

/** Applies slips to each projection in turn. @throws ProjectionFault naming the one that threw */
export function applyAll(db: Database, projections: readonly Projection[], slips: readonly StoredSlip[]): void {
  for (const projection of projections) {
    try {
      projection.apply(db, slips);
    } catch (cause) {
      throw new ProjectionFault(projection.name, cause);
    }
  }
}
