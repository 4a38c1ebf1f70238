export { driftRun, driftSide } from './drift-side.ts';
