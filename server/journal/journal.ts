/** What happened, as a JSON object. Only `type` and `attachment` matter to the journal; the rest is the traveller's business. */
export interface SlipBody {
  readonly type: string;
  /** Digest of a file beside the journal that the slip rests on. */
  readonly attachment?: string;
}

/** One slip as it stands in the journal, for ever. */
export interface StoredSlip {
  /** Place in the whole journal: ascending, no two alike. Not promised to be without gaps. */
  readonly position: number;
  readonly stream: string;
  /** Place in its own stream: 1, 2, 3 … without gaps. */
  readonly version: number;
  readonly type: string;
  /** Shape of `body` for this type, 1 or more; readers lift older shapes to the present one. */
  readonly schema: number;
  /** When, UTC, as `2025-03-01T06:30:00.000Z`. */
  readonly at: string;
  /** Who: a badge. */
  readonly by: string;
  /** Where: a bench. */
  readonly bench: string;
  readonly clientId: string;
  readonly body: SlipBody;
  /** Hash of the slip before it in the stream; `noSlipBefore` for the first. */
  readonly prevHash: string;
  /** SHA-256 in hexadecimal, see slip-hash.ts. */
  readonly hash: string;
}

/** The last slip of a stream. */
export interface Head {
  readonly stream: string;
  readonly version: number;
  readonly hash: string;
}

/** A stream and the version its writer (or reader) believes it has; 0 when it should not exist yet. */
export interface Expectation {
  readonly stream: string;
  readonly expectedVersion: number;
}

/** What one command adds, to one stream or several: all of it or nothing. */
export interface Entry {
  /** Chosen by the sender, once a command, never used again for another. */
  readonly clientId: string;
  readonly at: string;
  readonly by: string;
  readonly bench: string;
  readonly changes: readonly (Expectation & { readonly bodies: readonly SlipBody[] })[];
  /** Streams that were only read, and must not have moved since. */
  readonly checks?: readonly Expectation[];
  /** JSON kept beside the client id, so that a repeated command gets the same reply. */
  readonly answer?: unknown;
}

/** What an entry became. `answer` is undefined when the entry had none. */
export interface Receipt {
  readonly clientId: string;
  readonly slips: readonly StoredSlip[];
  readonly answer: unknown;
  /** True when this client id had been entered before and nothing was written now. */
  readonly repeated: boolean;
}

/** What a walk through the whole journal found. */
export interface Verification {
  /** Slips found whole before the end or the first broken one. */
  readonly slips: number;
  readonly streams: number;
  readonly firstBroken: null | { readonly stream: string; readonly version: number; readonly position: number; readonly why: string };
  /** Files beside the journal that are what was handed in. */
  readonly attachments: number;
  /** The first that is not, or that a slip names and is gone. Looked for only where the slips are whole. */
  readonly brokenAttachment: null | { readonly digest: string; readonly why: string };
}

/** One value that stands for the state of every stream; what a signed checkpoint signs. */
export interface HeadsDigest {
  /** SHA-256 in hexadecimal, see heads-digest.ts. */
  readonly digest: string;
  readonly streams: number;
  /** Position of the last slip counted, 0 when there is none. */
  readonly position: number;
}

/**
 * The append-only store of slips. Nothing in it is ever edited. Everything is asynchronous, whatever lies beneath;
 * tests/server/journal/contract.ts says in full what an implementation must do.
 */
export interface Journal {
  /**
   * Adds an entry whole or not at all, and resolves when it is durable. A client id entered before gives the first receipt again.
   * @throws StaleVersion when a stream has moved; the caller decides again on the new state
   * @throws OutsideDomain when the entry is malformed: a caller's bug
   * @throws JournalFault when it is not known to be durable; send it again under the same client id
   */
  append(entry: Entry): Promise<Receipt>;
  /** The receipt of an entry made before, marked as repeated, or null. */
  receiptFor(clientId: string): Promise<Receipt | null>;
  /** Slips of one stream with a version above `afterVersion` (default 0), in order; all of them unless `limit` says fewer. */
  read(stream: string, afterVersion?: number, limit?: number): Promise<readonly StoredSlip[]>;
  /** Slips of all streams with a position above `afterPosition`, in order. */
  follow(afterPosition: number, limit: number): Promise<readonly StoredSlip[]>;
  /** Version of the last slip of a stream, 0 when there is none. */
  versionOf(stream: string): Promise<number>;
  /** The last slip of each stream, by stream in code-point order. */
  heads(): Promise<readonly Head[]>;
  headsDigest(): Promise<HeadsDigest>;
  /** Walks everything, in pages, letting others work in between: hashes, chains, gaps and heads. */
  verify(): Promise<Verification>;
  /** Finishes what was entered, then closes. Anything asked afterwards is refused with a JournalFault. */
  close(): Promise<void>;
}

/** A stream has another version than the entry was decided on: someone else was first. Nothing was written. */
export class StaleVersion extends Error {
  readonly stream: string;
  readonly expected: number;
  readonly actual: number;
  constructor(stream: string, expected: number, actual: number) {
    super(`${stream} was expected at version ${expected} but stands at ${actual}`);
    this.name = 'StaleVersion';
    this.stream = stream;
    this.expected = expected;
    this.actual = actual;
  }
}
