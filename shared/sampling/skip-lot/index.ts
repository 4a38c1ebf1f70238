export { shouldSkip, skipAfter, startSkip } from './skip-state.ts';
export type { SkipEvent, SkipParameters, SkipState } from './skip-state.ts';
