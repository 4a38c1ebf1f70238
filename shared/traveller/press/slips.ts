/** A press with the balance that weighs what it makes. */
export interface PressCard { readonly id: string; readonly name: string; readonly bench: string; /** Id of the balance among the gauges. */ readonly balance: string }
/** What has happened to a press. */
export type PressSlip =
  | { readonly type: 'pressRegistered'; readonly press: PressCard }
  | { readonly type: 'pressChanged'; readonly press: PressCard; readonly reason: string }
  /** From now on it presses this lot, and its feed's weights belong to it; null: it stands. `afterSeq` is the last number of its balance's count taken until then, null where none was. */
  | { readonly type: 'pressSet'; readonly lot: string | null; readonly gate: string | null; readonly characteristic: string | null; readonly afterSeq: number | null };
export type PressCommand =
  | { readonly type: 'registerPress'; readonly press: PressCard }
  | { readonly type: 'changePress'; readonly press: PressCard; readonly reason: string }
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
}
