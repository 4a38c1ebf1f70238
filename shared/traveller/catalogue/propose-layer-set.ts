import type { Measured } from '../plan/characteristic.ts';
import type { LayerCard } from './slips.ts';

/** Names that the proposal writes into the plan. */
export interface LayerSetNames { readonly total: string; readonly method: string; readonly gaugeKind: string | null }

/**
 * The characteristics that judge a coating layer by layer from one crater a piece: the whole with the sums of the layers' limits, then each layer.
 * Empty for a coating whose layers are not named. A coating of one layer is judged as a whole from two diameters.
 */
export function proposeLayerSet({ layers = [] }: LayerCard, ballDiameterMm: number, sampling: Measured['sampling'], names: LayerSetNames): readonly Measured[] {
  if (layers.length === 0) return [];
  const sum = (limits: readonly (number | null)[]): number | null => limits.reduce<number | null>((total, each) => (total === null || each === null ? null : Number((total + each).toFixed(6))), 0);
  const [lower, upper] = [sum(layers.map(({ lowerUm }) => lowerUm)), sum(layers.map(({ upperUm }) => upperUm))];
  const measured = (id: string, name: string, limits: Pick<Measured, 'lower' | 'upper'>, entry: Measured['entry'], gaugeKind: string | null): Measured => ({
    kind: 'measured', id, name, method: names.method, destructive: false, unit: 'µm', decimals: 2, ...limits, target: limits.lower === null || limits.upper === null ? null : Number(((limits.lower + limits.upper) / 2).toFixed(3)),
    plausible: { least: 0.05, most: 60 }, gaugeKind, decisionRule: 'simple', entry, factor: null, pressTolerancePercent: null, sampling,
  });
  if (layers.length === 1) return [measured('thickness', names.total, { lower, upper }, { how: 'crater', ballDiameterMm }, names.gaugeKind)];
  return [
    // A coating whose layers leave one side open is judged as a whole on what is known: with no sum at all, from nothing up.
    measured('thickness', names.total, lower === null && upper === null ? { lower: 0, upper } : { lower, upper }, { how: 'crater', ballDiameterMm, layers: layers.length }, names.gaugeKind),
    ...layers.map(({ name, lowerUm, upperUm }, at) => measured(`layer-${at + 1}`, name, { lower: lowerUm, upper: upperUm }, { how: 'craterLayer', of: 'thickness', layer: at + 1 }, names.gaugeKind)),
  ];
}
