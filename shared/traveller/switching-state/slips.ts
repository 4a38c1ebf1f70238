import type { Severity } from '../../sampling/attributes/index.ts';
import type { SwitchingEvent, Move, SwitchingRule } from '../../sampling/switching/index.ts';
import type { Signature } from '../stamp.ts';

export type SwitchingSeverity = Severity | 'discontinued';
/** What moves one switching state; every slip says how the state stood after it, so that the thread explains itself. */
export type SwitchingSlip =
  | { readonly type: 'switchingStarted'; readonly product: string; readonly gate: string; readonly characteristic: string; readonly class: string | null; readonly rule: SwitchingRule; readonly aqlPercent: number }
  /** A lot under the plan in force was judged by other rules or another AQL than those before: the severity stands, score and counts begin anew. */
  | { readonly type: 'switchingRuleSet'; readonly rule: SwitchingRule; readonly aqlPercent: number }
  | { readonly type: 'lotCounted'; readonly event: Extract<SwitchingEvent, { type: 'lotJudged' }>; readonly counts: boolean; readonly moved: Move | null }
  | { readonly type: 'lotRecounted'; /** The lot whose verdict a correction turned. */ readonly event: Extract<SwitchingEvent, { type: 'lotJudged' }>; readonly moved: Move | null }
  | { readonly type: 'switchingSet'; readonly steady: boolean | null; readonly reducedAllowed: boolean | null; readonly reason: string; readonly moved: Move | null }
  | { readonly type: 'inspectionResumed'; readonly reason: string; readonly signature: Signature };
