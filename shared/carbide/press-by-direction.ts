import { OutsideDomain, requireFinite } from '../ground/outside-domain.ts';
import { directionalNumbers } from './directional-shrinkage.ts';
import type { Shrinkages } from './directional-shrinkage.ts';

/** Least and most a size may be, millimetres. */
export type SizeLimits = { readonly lowerMm: number; readonly upperMm: number };

/** The sintered piece that is wanted, what the powder loses on the way, and how it shrinks. */
export type DirectionalRequest = {
  readonly sinteredVolumeMm3: number;
  readonly sinteredDensityGPerCm3: number;
  /** Organic binder's share of the pressed mass, 0 … 0.2; all of it leaves. */
  readonly binderFraction: number;
  /** Further loss of the mass left (carbon, oxygen), 0 … 0.05; 0 when left out. */
  readonly furtherLossFraction?: number | undefined;
  readonly shrinkages: Shrinkages;
  /** Sintered size along the pressing direction. */
  readonly heightMm: number;
  readonly heightLimits?: SizeLimits | undefined;
  /** Sintered size across, such as the inscribed circle; left out, no die size is worked out. */
  readonly acrossMm?: number | undefined;
};

/** What to press, by direction. */
export type DirectionalTargets = {
  readonly pressWeightG: number;
  readonly greenVolumeMm3: number;
  readonly greenDensityGPerCm3: number;
  readonly greenHeightMm: number;
  readonly greenHeightLimits: SizeLimits | null;
  readonly dieFactor: number;
  readonly heightFactor: number;
  /** Size of the die that the powder asks for; null where no size across was given. */
  readonly dieMm: number | null;
};

/**
 * Press targets from the sintered piece: m = V ρ / ((1 − b)(1 − q)); V green = V / ((1 − S₁)(1 − S₂)(1 − S₃)); green height = height / (1 − S along),
 * each limit of it likewise; die = size across / (1 − S in the plane). Limits of the green height carry those of the sintered height and nothing else:
 * what the factors themselves are uncertain by is `pressUncertainty`.
 * @throws OutsideDomain for values outside the ranges beside each field, a size not above 0, or limits that do not enclose the height
 * @see mass balance and directional shrinkage, derived
 */
export function pressTargetsByDirection(request: DirectionalRequest): DirectionalTargets {
  const { sinteredVolumeMm3, sinteredDensityGPerCm3, binderFraction, furtherLossFraction = 0, shrinkages, heightMm, heightLimits, acrossMm } = request;
  requireFinite('sinteredVolumeMm3', sinteredVolumeMm3, Number.MIN_VALUE);
  requireFinite('sinteredDensityGPerCm3', sinteredDensityGPerCm3, Number.MIN_VALUE, 100);
  requireFinite('binderFraction', binderFraction, 0, 0.2);
  requireFinite('furtherLossFraction', furtherLossFraction, 0, 0.05);
  requireFinite('heightMm', heightMm, Number.MIN_VALUE);
  if (acrossMm !== undefined) requireFinite('acrossMm', acrossMm, Number.MIN_VALUE);
  const { dieFactor, heightFactor, volumeRatio } = directionalNumbers(shrinkages);
  const pressWeightG = ((sinteredVolumeMm3 / 1000) * sinteredDensityGPerCm3) / ((1 - binderFraction) * (1 - furtherLossFraction));
  const greenVolumeMm3 = sinteredVolumeMm3 / volumeRatio;
  return {
    pressWeightG, greenVolumeMm3, greenDensityGPerCm3: (1000 * pressWeightG) / greenVolumeMm3,
    greenHeightMm: heightMm * heightFactor, greenHeightLimits: heightLimits === undefined ? null : greenLimits(heightMm, heightLimits, heightFactor),
    dieFactor, heightFactor, dieMm: acrossMm === undefined ? null : acrossMm * dieFactor,
  };
}

function greenLimits(heightMm: number, { lowerMm, upperMm }: SizeLimits, factor: number): SizeLimits {
  requireFinite('heightLimits.lowerMm', lowerMm, Number.MIN_VALUE, heightMm);
  requireFinite('heightLimits.upperMm', upperMm, heightMm);
  if (lowerMm >= upperMm) throw new OutsideDomain('heightLimits', 'lower below upper', `${lowerMm} … ${upperMm}`);
  return { lowerMm: lowerMm * factor, upperMm: upperMm * factor };
}

/**
 * Press weights that the limits of the sintered height leave room for: at one green density and one die the weight goes with the height, m/m₀ = h/h₀.
 * @param pressWeightG target, above 0
 * @throws OutsideDomain unless the limits enclose the height
 * @see derived; holds where the press is set by height to a constant density. At constant pressed height dL/L = ⅓ dm/m instead, see `lengthChangeFromMassChange`
 */
export function weightRoom(pressWeightG: number, heightMm: number, limits: SizeLimits): { readonly lowerG: number; readonly upperG: number } {
  requireFinite('pressWeightG', pressWeightG, Number.MIN_VALUE);
  requireFinite('heightMm', heightMm, Number.MIN_VALUE);
  const { lowerMm, upperMm } = greenLimits(heightMm, limits, 1);
  return { lowerG: (pressWeightG * lowerMm) / heightMm, upperG: (pressWeightG * upperMm) / heightMm };
}

/** Standard uncertainties of the factors, in the units they are given in: fractions, and g/cm³. Left out, 0. */
export type FactorUncertainties = { readonly sinteredDensityGPerCm3?: number | undefined; readonly binderFraction?: number | undefined; readonly furtherLossFraction?: number | undefined; readonly along?: number | undefined; readonly inPlane?: number | undefined };

/**
 * Standard uncertainty of the targets from those of the factors, taken as independent:
 * u(m)/m = √((u(ρ)/ρ)² + (u(b)/(1 − b))² + (u(q)/(1 − q))²), u(h)/h = u(S along)/(1 − S along), u(K)/K = u(S)/(1 − S).
 * @returns fractions of press weight, green height and die factor
 * @throws OutsideDomain for an uncertainty below 0
 * @see JCGM 100:2008, 5.1.2, the law of propagation (from memory); the derivatives follow from the formulas of `pressTargetsByDirection`
 */
export function pressUncertainty(factors: Pick<DirectionalRequest, 'sinteredDensityGPerCm3' | 'binderFraction' | 'furtherLossFraction' | 'shrinkages'>, u: FactorUncertainties): { readonly weight: number; readonly height: number; readonly dieFactor: number } {
  for (const [name, value] of Object.entries(u)) requireFinite(name, value ?? 0, 0);
  const { inPlane } = directionalNumbers(factors.shrinkages);
  const weight = Math.hypot((u.sinteredDensityGPerCm3 ?? 0) / factors.sinteredDensityGPerCm3, (u.binderFraction ?? 0) / (1 - factors.binderFraction), (u.furtherLossFraction ?? 0) / (1 - (factors.furtherLossFraction ?? 0)));
  return { weight, height: (u.along ?? 0) / (1 - factors.shrinkages.along), dieFactor: (u.inPlane ?? 0) / (1 - inPlane) };
}
