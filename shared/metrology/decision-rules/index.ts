export { acceptanceLimits, isWithin } from './acceptance-limits.ts';
export type { AcceptanceLimits, DecisionRequest, DecisionRule } from './acceptance-limits.ts';
export { afterMeasuring, conformanceProbability, nonconformanceProbability } from './conformance-probability.ts';
export type { Limits, Measurement, Normal } from './conformance-probability.ts';
export { globalRisk, measurementCapability, processDeviation } from './global-risk.ts';
export type { GlobalRisk, RiskRequest } from './global-risk.ts';
export { guardBandForConsumerRisk, guardBandForSpecificRisk } from './guard-band-for.ts';
