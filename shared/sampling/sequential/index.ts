export { acceptAt, judgeSequential, linesAt, nextDecision, rejectAt } from './judge-sequential.ts';
export type { SequentialVerdict } from './judge-sequential.ts';
export { sequentialPlan } from './sequential-plan.ts';
export type { LotPlan, SequentialPlan, SequentialRequest } from './sequential-plan.ts';
