export type { Judging } from './blocks.ts';
export type { RiskModel } from './model.ts';
export { acceptance, acceptanceAt, averageSampleNumber, outcomes, rejection } from './outcomes.ts';
export type { Outcomes } from './outcomes.ts';
export type { StageOutcome } from './walk.ts';
