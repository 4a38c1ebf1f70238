export { judgedPlan } from './judged-plan.ts';
export { limitNumber } from './limit-numbers.ts';
export { switchingAfter } from './switching-after.ts';
export type { LotJudged, SwitchingEvent } from './switching-after.ts';
export { lastMove, startSwitching } from './switching-state.ts';
export type { JudgedPlan, LotOutcome, Move, MoveReason, SwitchingRule, SwitchingState } from './switching-state.ts';
