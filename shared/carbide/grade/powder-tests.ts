import { OutsideDomain, requireFinite } from '../../ground/outside-domain.ts';

/** Apparent density, g/cm³: mass of the powder that fills a cup of 25 cm³ by itself. @param massG above 0, up to 500 @throws OutsideDomain otherwise @see ISO 3923-1 (seen; the cup from memory) */
export function apparentDensityGPerCm3(massG: number): number {
  requireFinite('massG', massG, Number.MIN_VALUE, 500);
  return massG / 25;
}

/**
 * Flow time corrected for the wear of the funnel: t = t_measured · 40.0/t_reference.
 * @param measuredS seconds for 50 g, above 0; referenceS time of the reference grit in this funnel, 37 … 60 s: below 37 the funnel is out of use
 * @throws OutsideDomain otherwise
 * @see ISO 13517 (rule seen). A Hall funnel has another reference value stamped on it: ISO 4490
 */
export function correctedFlowTimeS(measuredS: number, referenceS: number): number {
  requireFinite('measuredS', measuredS, Number.MIN_VALUE);
  if (!(referenceS >= 37 && referenceS <= 60)) throw new OutsideDomain('referenceS', '37 … 60 s', referenceS);
  return (measuredS * 40) / referenceS;
}
