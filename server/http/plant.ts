import type { Logger } from 'pino';
import type { Certificates } from './certificates.ts';
import type { Checkpoints } from '../door/checkpoints.ts';
import type { Door } from '../door/door.ts';
import type { PressFeeds } from '../feed/press-feeds.ts';
import type { PressTokens } from '../feed/press-tokens.ts';
import type { SqliteJournal } from '../journal/sqlite/sqlite-journal.ts';
import type { Sessions } from '../people/sessions.ts';
import type { SignOn } from '../people/sign-on.ts';
import type { BenchLists } from '../readmodels/bench-lists.ts';
import type { Records } from '../readmodels/records.ts';

/** A person of an invented plant, whose PIN is public on purpose. */
export interface PersonAtDoor { readonly badge: string; readonly pin: string; readonly name: string; readonly roles: readonly string[] }

/** Everything the wires need of one running plant. */
export interface Plant {
  readonly door: Door;
  readonly journal: SqliteJournal;
  readonly lists: BenchLists;
  readonly records: Records;
  readonly sessions: Sessions;
  readonly signOn: SignOn;
  readonly certificates: Certificates;
  readonly checkpoints: Checkpoints;
  readonly feeds: PressFeeds;
  readonly pressTokens: PressTokens;
  readonly log: Logger;
  /** Behind a proxy that says who is asking and over what. */
  readonly trustProxy: boolean;
  /** Shown before anyone signs on, where the plant says of itself that it is invented; empty for every other. */
  readonly demoPeople: readonly PersonAtDoor[];
}
