import type { Characteristic, CharacteristicWork, Measured, ReadingInputs, ValueEntry } from '../shared/traveller/index.ts';

/** Air of a usual room and water of 21 °C, g/cm³: what an invented weighing stands in. */
const [AIR, WATER] = [0.0012, 0.997995];

/**
 * What would have been read at a piece with this value; null where the value itself is read.
 * @param layersUm thickness of each layer from the surface, for a crater through several; even parts of the value unless given
 */
export function inputsGiving(entry: ValueEntry, value: number, { innerMm = 0.6, layersUm = null }: { readonly innerMm?: number; readonly layersUm?: readonly number[] | null } = {}): ReadingInputs | null {
  const rounded = (figure: number, decimals = 3): number => Number(figure.toFixed(decimals));
  switch (entry.how) {
    case 'direct': case 'craterLayer': return null;
    case 'crater': {
      const outward = (inner: number, thicknessUm: number): number => Math.sqrt(inner ** 2 + (4 * entry.ballDiameterMm * thicknessUm) / 1000);
      if (entry.layers === undefined) return { innerMm, outerMm: rounded(outward(innerMm, value)) };
      const layers = layersUm ?? Array.from({ length: entry.layers }, () => value / (entry.layers ?? 1));
      return { diametersMm: layers.reduceRight<readonly number[]>((diameters, thicknessUm) => [outward(diameters[0] ?? innerMm, thicknessUm), ...diameters], [innerMm]).map((each) => rounded(each)) };
    }
    case 'shrinkage': return { ...(entry.greenRead === true ? { greenMm: entry.dieMm } : {}), sinteredMm: rounded(entry.dieMm * (1 - value / 100)) };
    case 'archimedes': {
      const massInAirG = 9.87;
      return { massInAirG, massInWaterG: rounded(massInAirG - (massInAirG * (WATER - AIR)) / (value - AIR), 4), waterTemperatureC: 21 };
    }
    case 'saturation': {
      const ofCobalt = { 'µT·m³/kg': 201.6, 'G·cm³/g': 2016, 'A·m²/kg': 160.43, '% Co': 100 }[entry.unit];
      return { saturation: rounded((value / 100) * entry.cobaltFraction * ofCobalt), unit: entry.unit };
    }
  }
}

/** The layers that a characteristic's crater gives values to, outermost first. */
export function layersOf(works: readonly CharacteristicWork[], lead: Characteristic): readonly Measured[] {
  const place = ({ entry }: Measured): number => (entry.how === 'craterLayer' ? entry.layer : 0);
  return works.flatMap(({ demand: { characteristic } }) => (characteristic.kind === 'measured' && characteristic.entry.how === 'craterLayer' && characteristic.entry.of === lead.id ? [characteristic] : []))
    .sort((one, other) => place(one) - place(other));
}

/** Thickness of every layer as planned; null where the coating is judged as a whole. */
export function plannedLayersUm(works: readonly CharacteristicWork[], lead: Characteristic): readonly number[] | null {
  const layers = layersOf(works, lead);
  return layers.length === 0 ? null : layers.map(({ target, lower, upper }) => target ?? ((lower ?? 0) + (upper ?? 0)) / 2);
}
