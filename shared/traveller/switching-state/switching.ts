import type { SwitchingEvent, Move, SwitchingRule, SwitchingState } from '../../sampling/switching/index.ts';

/** The switching state of one product, gate, characteristic and class: the fold of its thread. */
export interface Switching {
  readonly kind: 'switching';
  readonly stream: string;
  readonly version: number;
  readonly product: string;
  readonly gate: string;
  readonly characteristic: string;
  readonly class: string | null;
  readonly rule: SwitchingRule;
  readonly aqlPercent: number;
  /** Rule and AQL it began with; `rule` and `aqlPercent` are those of now. */
  readonly begunWith: { readonly rule: SwitchingRule; readonly aqlPercent: number };
  /** All that counted, in order, so that a corrected verdict can be counted anew. */
  readonly events: readonly SwitchingEvent[];
  readonly state: SwitchingState;
  readonly lastMove: (Move & { readonly at: string }) | null;
}
