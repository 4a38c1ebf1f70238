export { FIRST_NUMBER, readGaugeLine } from './gauge-line.ts';
export type { GaugeLine, LineRead } from './gauge-line.ts';
