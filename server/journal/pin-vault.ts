/** What is kept of a badge's PIN. The hash is made and compared by server/people; the vault only keeps it. */
export interface PinRecord {
  readonly badge: string;
  /** The hash as text, with its method and salt in it. Never the PIN. */
  readonly hash: string;
  /** Wrong PINs in a row since the last right one. */
  readonly failedAttempts: number;
  /** When the last of them was, UTC, or null. */
  readonly lastFailedAt: string | null;
}

/** Keeps PIN hashes outside the journal, where they can be replaced and forgotten. Each promise resolves when durable. */
export interface PinVault {
  /** Sets or replaces the hash of a badge and forgets its failed attempts. */
  put(badge: string, hash: string): Promise<void>;
  get(badge: string): Promise<PinRecord | null>;
  /** Counts one wrong PIN and says how many that makes; 0 for a badge without a PIN, and nothing is kept. */
  countFailure(badge: string, at: string): Promise<number>;
  clearFailures(badge: string): Promise<void>;
  /** Forgets a badge altogether. */
  remove(badge: string): Promise<void>;
}
