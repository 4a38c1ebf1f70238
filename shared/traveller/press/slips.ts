/** A press with the balance that weighs what it makes. */
export interface PressCard { readonly id: string; readonly name: string; readonly bench: string; /** Id of the balance among the gauges. */ readonly balance: string }
/** What has happened to a press. */
export type PressSlip =
  | { readonly type: 'pressRegistered'; readonly press: PressCard }
  /** `count`: which count of pieces its feed is in from now on, where another began: with another balance, or one that starts from 1 again. */
  | { readonly type: 'pressChanged'; readonly press: PressCard; readonly reason: string; readonly count?: number }
  /** From now on it presses this lot, and its feed's weights belong to it; null: it stands. `afterSeq` is the last number of its balance's count taken until then, null where none was. */
  | { readonly type: 'pressSet'; readonly lot: string | null; readonly gate: string | null; readonly characteristic: string | null; readonly afterSeq: number | null };
export type PressCommand =
  | { readonly type: 'registerPress'; readonly press: PressCard }
  /** `countsAnew`: its balance begins its count again. Another balance always does. */
  | { readonly type: 'changePress'; readonly press: PressCard; readonly reason: string; readonly countsAnew?: boolean }
  | { readonly type: 'setPress'; readonly press: string; readonly lot: string | null };

/** A press after its slips. */
export interface PressState {
  readonly kind: 'press';
  readonly stream: string;
  readonly version: number;
  readonly card: PressCard;
  /** What it presses now; null while it stands. */
  readonly running: null | { readonly lot: string; readonly gate: string; readonly characteristic: string; readonly since: string; readonly by: string };
  readonly afterSeq: number | null;
  /** Which count of its feed's pieces this is: 1, 2 after the first that began anew. Numbers of another count say nothing in it. */
  readonly count: number;
}
