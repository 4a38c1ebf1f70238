export { acceptanceLimits, isWithin } from './acceptance-limits.ts';
export type { AcceptanceLimits, DecisionRequest, DecisionRule } from './acceptance-limits.ts';
