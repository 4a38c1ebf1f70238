import { OutsideDomain, requireFinite, requireWhole } from '../../ground/outside-domain.ts';
import { binomialAtMost, binomialMoreThan, poissonAtMost, poissonMoreThan } from '../../sampling/chance/index.ts';
import type { ChartLine, LinePoint } from './chart-line.ts';
import type { ChartBase, CountedChart, CountedPoint } from './chart-spec.ts';
import { requireChartBase } from './chart-spec.ts';

/** What a limit at three standard deviations leaves on one side of a normal law, P(Z > 3), to five places: the usual 0.00135. */
export const SIDE_RISK = 0.00135;

/**
 * The line of a chart of counts. threeSigma: p ± 3√(p(1 − p)/n), np ± 3√(np(1 − p)), c ± 3√c, u ± 3√(u/n), below 0 no lower limit. exact: the greatest
 * count that is not passed with more than SIDE_RISK, and the least of which fewer are found with SIDE_RISK at most, by the binomial (p, np) or
 * Poisson law (c, u) at this lot's number of pieces.
 * @param points each with one piece or more looked at
 * @throws OutsideDomain otherwise
 * @remarks zones for run rules are the normal approximation under both kinds of limit; runs on small counts are a rough guide
 * @see ISO 7870-2; NIST/SEMATECH e-Handbook 6.3.3 (from memory); exact limits: by the laws themselves, derived
 */
export function countedLine(spec: CountedChart, points: readonly CountedPoint[], base: ChartBase): ChartLine {
  requireChartBase(spec, base);
  const name = spec.kind === 'p' ? 'share' : spec.kind === 'u' ? 'rate' : 'count';
  return { name, points: points.map((point, at) => linePoint(spec, point, at, base.centre)) };
}

function linePoint(spec: CountedChart, { of, count }: CountedPoint, at: number, centre: number): LinePoint {
  requireWhole(`points[${at}].of`, of, 1, 1e7);
  requireWhole(`points[${at}].count`, count, 0, spec.kind === 'p' || spec.kind === 'np' ? of : 1e7);
  const isShare = spec.kind === 'p' || spec.kind === 'np';
  const expected = of * centre;
  const sigma = Math.sqrt(expected * (isShare ? 1 - centre : 1));
  const scale = spec.kind === 'p' || spec.kind === 'u' ? of : 1;
  const { lower, upper } = spec.limits === 'exact' ? exactLimits(isShare, of, centre) : { lower: expected - 3 * sigma < 0 ? null : expected - 3 * sigma, upper: isShare ? Math.min(of, expected + 3 * sigma) : expected + 3 * sigma };
  return { at, value: count / scale, centre: expected / scale, lower: lower === null ? null : lower / scale, upper: upper / scale, sigma: sigma > 0 ? sigma / scale : null };
}

/**
 * Counts between which a lot in control stays with the risk SIDE_RISK at most on each side. `lower` null where even no finding is no signal.
 * @throws OutsideDomain unless 0 < centre (and < 1 for shares)
 */
export function exactLimits(isShare: boolean, of: number, centre: number): { readonly lower: number | null; readonly upper: number } {
  requireFinite('centre', centre, 0, isShare ? 1 : 1e6);
  if (centre === 0) throw new OutsideDomain('centre', 'above 0', centre);
  const mean = of * centre;
  const more = (k: number): number => (isShare ? binomialMoreThan(k, of, centre) : poissonMoreThan(k, mean));
  const fewer = (k: number): number => (isShare ? binomialAtMost(k - 1, of, centre) : poissonAtMost(k - 1, mean));
  let upper = Math.floor(mean);
  while (more(upper) > SIDE_RISK) upper += 1;
  let lower = Math.floor(mean);
  while (lower > 0 && fewer(lower) > SIDE_RISK) lower -= 1;
  return { lower: lower === 0 ? null : lower, upper };
}
