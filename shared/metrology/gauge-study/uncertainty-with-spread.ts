import { requireFinite } from '../../ground/outside-domain.ts';

/**
 * Expanded uncertainty of a single reading: the calibration's and the gauge's own spread, combined as independent parts,
 * U = k·√((U calibration/k)² + s²).
 * @param calibrationUncertainty expanded uncertainty of the calibration, 0 or more
 * @param s standard deviation of the gauge (repeatability and reproducibility), 0 or more, same unit
 * @param coverageFactor k of both, 0.1 … 10
 * @throws OutsideDomain naming the argument, its range and the value
 * @see JCGM 100:2008, 5.1.2 (combination) and 6.2.1 (expansion), from memory
 */
export function uncertaintyWithSpread(calibrationUncertainty: number, s: number, coverageFactor: number): number {
  requireFinite('calibrationUncertainty', calibrationUncertainty, 0);
  requireFinite('s', s, 0);
  requireFinite('coverageFactor', coverageFactor, 0.1, 10);
  return coverageFactor * Math.hypot(calibrationUncertainty / coverageFactor, s);
}
