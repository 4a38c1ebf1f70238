export { emptyRunning, merge, summaryOf, takeInto } from './running.ts';
export type { Running } from './running.ts';
export { summarise } from './summarise.ts';
export type { Summary } from './summarise.ts';
