import { rangeMoments } from '../charts/index.ts';
import { crossedSize } from './crossed-readings.ts';
import type { CrossedReadings } from './crossed-readings.ts';

/** What the method of average and range gives, in the unit of the readings. It cannot see an interaction. */
export type AverageAndRange = {
  /** Mean of the ranges of each person on each part, range of the persons' means (0 for one person), range of the parts' means. */
  readonly meanRange: number; readonly personRange: number; readonly partRange: number;
  readonly repeatabilityS: number;
  /** Never below 0; `hidden` where the people differ by less than their repeatability alone would make them. */
  readonly reproducibilityS: number; readonly hidden: boolean;
  readonly gaugeS: number; readonly partS: number; readonly totalS: number;
};

/** Above so many ranges d2 stands for d2*, as the handbook has it (from memory). */
const MANY_RANGES = 15;

/**
 * d2* of g ranges of n values each: √(E of the squared mean range) in units of σ, = √(d2² + d3²/g). It tends to d2 as g grows.
 * @param n values in each range, 2 … 1000
 * @param g number of ranges, 1 or more
 * @throws OutsideDomain for n outside that range
 * @see Patnaik, Biometrika 37 (1950) 78; Duncan, Quality Control and Industrial Statistics, table D3 (from memory; √2 for one pair, exact)
 */
export function d2Star(n: number, g: number): number {
  const { d2, d3 } = rangeMoments(n);
  return Math.sqrt(d2 * d2 + (d3 * d3) / g);
}

/**
 * Repeatability, reproducibility and part-to-part spread by averages and ranges: the older method, by hand and calculator.
 * @throws OutsideDomain where crossedSize does
 * @see measurement systems handbook of the automotive trade, 4th ed., ch. III (from memory)
 */
export function averageAndRange(readings: CrossedReadings): AverageAndRange {
  const { parts, people, trials } = crossedSize(readings);
  const ranges = readings.flatMap((byPerson) => byPerson.map(rangeOf));
  const meanRange = meanOf(ranges);
  const personMeans = Array.from({ length: people }, (_, person) => meanOf(readings.flatMap((byPerson) => byPerson[person] ?? [])));
  const [personRange, partRange] = [rangeOf(personMeans), rangeOf(readings.map((byPerson) => meanOf(byPerson.flat())))];
  const repeatabilityS = meanRange / (ranges.length > MANY_RANGES ? rangeMoments(trials).d2 : d2Star(trials, ranges.length));
  const square = people === 1 ? 0 : (personRange / d2Star(people, 1)) ** 2 - repeatabilityS ** 2 / (parts * trials);
  const reproducibilityS = Math.sqrt(Math.max(0, square));
  const gaugeS = Math.hypot(repeatabilityS, reproducibilityS);
  const partS = partRange / d2Star(parts, 1);
  return { meanRange, personRange, partRange, repeatabilityS, reproducibilityS, hidden: square < 0, gaugeS, partS, totalS: Math.hypot(gaugeS, partS) };
}

function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
function rangeOf(values: readonly number[]): number {
  return Math.max(...values) - Math.min(...values);
}
