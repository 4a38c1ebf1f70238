export { emptyRunning, merge, summaryOf, takeInto } from './running.ts';
export type { Running } from './running.ts';
export { poolSummaries } from './pool.ts';
export type { Summed } from './pool.ts';
export { summarise } from './summarise.ts';
export type { Summary } from './summarise.ts';
