import { OutsideDomain, requireFinite } from '../ground/outside-domain.ts';

/** One constituent: its share of the mass, 0 … 1, and its own density. */
export type Constituent = { readonly massFraction: number; readonly densityGPerCm3: number };

/** Density of air in a usual room, about 20 °C. */
const AIR_G_PER_CM3 = 0.0012;

/**
 * Density of the mix without a pore: 1/ρ = Σ wᵢ/ρᵢ. What the carbides dissolve in each other and in the binder is left out of account.
 * @param parts shares of the mass that add up to 1 (to 1e-6); densities above 0, g/cm³
 * @throws OutsideDomain otherwise
 * @see rule of mixtures, common practice; densities to use are the plant's choice: WC 15.63 or 15.70 moves WC-6Co by 0.06
 * @example theoreticalDensityGPerCm3([{ massFraction: 0.9, densityGPerCm3: 15.63 }, { massFraction: 0.1, densityGPerCm3: 8.9 }]) // 14.5312
 */
export function theoreticalDensityGPerCm3(parts: readonly Constituent[]): number {
  return 1 / volumePerGram(parts);
}

/**
 * Share of the volume that one constituent fills, 0 … 1.
 * @param at which of the parts, counted from 0
 * @throws OutsideDomain as theoreticalDensityGPerCm3, or for a part that is not there
 */
export function volumeFraction(parts: readonly Constituent[], at: number): number {
  const part = parts[at];
  if (part === undefined) throw new OutsideDomain('at', `the place of a part, 0 … ${parts.length - 1}`, at);
  return part.massFraction / part.densityGPerCm3 / volumePerGram(parts);
}

/**
 * Density of air-free water at 101 325 Pa.
 * @param temperatureC 0 … 40 °C
 * @throws OutsideDomain outside that range
 * @see Tanaka et al., Metrologia 38 (2001) 301 (constants from memory; agrees with Jones & Harris 1992 to 0.004 kg/m³)
 */
export function waterDensityGPerCm3(temperatureC: number): number {
  requireFinite('temperatureC', temperatureC, 0, 40);
  const coldness = (temperatureC - 3.983035) ** 2 * (temperatureC + 301.797);
  return 0.99997495 * (1 - coldness / (522528.9 * (temperatureC + 69.34881)));
}

/** Masses of one weighing in air and under water. */
export type WaterWeighing = {
  readonly massInAirG: number;
  /** Apparent mass under water, with the holder tared; less than in air. More than in air cannot be: water has gone into open pores. */
  readonly massInWaterG: number;
  readonly waterTemperatureC: number;
  /** Density of the air, g/cm³; 0.0012 when left out. 0 leaves the buoyancy of the air out of account. */
  readonly airDensityGPerCm3?: number | undefined;
};

/**
 * Density by weighing in air and in water: ρ = m_air (ρ_w − ρ_a)/(m_air − m_water) + ρ_a.
 * @throws OutsideDomain unless 0 ≤ mass in water < mass in air, water 0 … 40 °C, air 0 … 0.01 g/cm³
 * @see ISO 3369 and ASTM B311 (formula from memory). Without the air's buoyancy a WC-Co value reads 0.017 g/cm³ high (derived)
 */
export function archimedesDensity(weighing: WaterWeighing): number {
  const { massInAirG, massInWaterG, waterTemperatureC, airDensityGPerCm3 = AIR_G_PER_CM3 } = weighing;
  requireFinite('massInAirG', massInAirG, Number.MIN_VALUE);
  requireFinite('massInWaterG', massInWaterG, 0, massInAirG);
  if (massInWaterG === massInAirG) throw new OutsideDomain('massInWaterG', 'less than the mass in air', massInWaterG);
  requireFinite('airDensityGPerCm3', airDensityGPerCm3, 0, 0.01);
  const water = waterDensityGPerCm3(waterTemperatureC);
  return (massInAirG * (water - airDensityGPerCm3)) / (massInAirG - massInWaterG) + airDensityGPerCm3;
}

function volumePerGram(parts: readonly Constituent[]): number {
  parts.forEach(({ massFraction, densityGPerCm3 }, at) => {
    requireFinite(`parts[${at}].massFraction`, massFraction, 0, 1);
    requireFinite(`parts[${at}].densityGPerCm3`, densityGPerCm3, 0.01, 100);
  });
  const whole = parts.reduce((sum, { massFraction }) => sum + massFraction, 0);
  if (Math.abs(whole - 1) > 1e-6) throw new OutsideDomain('sum of the mass fractions', '1', whole);
  return parts.reduce((sum, { massFraction, densityGPerCm3 }) => sum + massFraction / densityGPerCm3, 0);
}
