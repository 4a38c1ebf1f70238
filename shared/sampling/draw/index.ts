export { drawOrder } from './draw-order.ts';
export { drawSample, drawStratified, drawSystematic, LARGEST_POPULATION } from './draw-sample.ts';
export type { Stratum, StratumDraw } from './draw-sample.ts';
