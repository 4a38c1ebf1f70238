export { capability, GOOD_CAPABILITY_VALUES, LEAST_CAPABILITY_VALUES } from './capability.ts';
export type { Capability, CapabilityBy } from './capability.ts';
export { centredIndex, sideIndex, widthIndex } from './capability-index.ts';
export type { CapabilityIndex, CapabilitySpread, IntervalBy } from './capability-index.ts';
export { fractionCounted, fractionOutside } from './fraction-outside.ts';
export type { FractionOutside } from './fraction-outside.ts';
export { spreadOverall, spreadWithin } from './pooled-spread.ts';
export type { LotSpread } from './pooled-spread.ts';
