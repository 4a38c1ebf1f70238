import type { CautionKey } from '../../shared/traveller/index.ts';

/** Steps that are no gates, and what whoever does them is reminded of (common practice, no source): barrels near 100 kg, milled in ethanol; hot furnaces under inert gas; heavy, sharp boxes. */
export const STEP_CAUTIONS = {
  openBatch: ['dust', 'lifting', 'ethanol'],
  blendBatches: ['lifting', 'dust'],
  openFurnace: ['furnace', 'inertGas', 'lifting'],
  openCoating: ['coatingGases', 'inertGas'],
  packing: ['lifting', 'sharpEdges'],
} as const satisfies Readonly<Record<string, readonly CautionKey[]>>;
export type CautionedStep = keyof typeof STEP_CAUTIONS;
export const CAUTIONED_STEPS: readonly CautionedStep[] = ['openBatch', 'blendBatches', 'openFurnace', 'openCoating', 'packing'];
