import { OutsideDomain } from '../../ground/outside-domain.ts';
import { componentOf } from './components.ts';

/** One component of a grade as a plant writes it down. */
export interface GradePart {
  readonly component: string;
  readonly massPercent: number;
  /** The plant's own density of this component, g/cm³; that of the table unless given. */
  readonly densityGPerCm3?: number;
}

/** The percentages may miss 100 by this much, since each is rounded. */
export const SUM_TOLERANCE_PERCENT = 0.1;

/** Why a list of parts is no composition. */
export type CompositionFault =
  | { readonly why: 'empty' }
  | { readonly why: 'twice' | 'noShare' | 'densityUnknown' | 'densityImpossible'; readonly component: string }
  | { readonly why: 'sum'; readonly sumPercent: number };

/**
 * The first thing wrong with a composition, or null: every component once, its share above 0 and its density known (from the table, or given
 * with it, 0.1 … 30 g/cm³), and all shares together 100 % within ±0.1.
 */
export function compositionFault(parts: readonly GradePart[]): CompositionFault | null {
  if (parts.length === 0) return { why: 'empty' };
  const seen = new Set<string>();
  for (const { component, massPercent, densityGPerCm3 } of parts) {
    const known = componentOf(component);
    const key = known?.formula ?? component;
    if (seen.has(key)) return { why: 'twice', component };
    seen.add(key);
    if (!(massPercent > 0)) return { why: 'noShare', component };
    if (densityGPerCm3 === undefined) {
      if (known === null) return { why: 'densityUnknown', component };
    } else if (!(densityGPerCm3 >= 0.1 && densityGPerCm3 <= 30)) return { why: 'densityImpossible', component };
  }
  const sumPercent = Number(parts.reduce((sum, { massPercent }) => sum + massPercent, 0).toFixed(6));
  return Math.abs(sumPercent - 100) > SUM_TOLERANCE_PERCENT ? { why: 'sum', sumPercent } : null;
}

/** A part that can be reckoned with: its share of the whole as a fraction, and what is known of its substance. */
export interface ResolvedPart {
  readonly component: string;
  readonly massFraction: number;
  readonly densityGPerCm3: number;
  /** True where the plant gave the density itself. */
  readonly ownDensity: boolean;
  readonly role: 'hard' | 'binder' | 'other';
  readonly carbonFraction: number;
}

/**
 * The parts as fractions of a whole: shares divided by their sum, so that rounding does not stay in the result.
 * A component outside the table counts as neither hard nor binder, and as holding no bound carbon.
 * @throws OutsideDomain for a list in which `compositionFault` finds something
 */
export function resolveComposition(parts: readonly GradePart[]): readonly ResolvedPart[] {
  const fault = compositionFault(parts);
  if (fault !== null) throw new OutsideDomain('parts', 'a whole composition of known components', fault.why);
  const sum = parts.reduce((total, { massPercent }) => total + massPercent, 0);
  return parts.map(({ component, massPercent, densityGPerCm3 }) => {
    const known = componentOf(component);
    return {
      component, massFraction: massPercent / sum, densityGPerCm3: densityGPerCm3 ?? known?.densityGPerCm3 ?? Number.NaN, ownDensity: densityGPerCm3 !== undefined,
      role: known?.role ?? 'other', carbonFraction: known?.carbonFraction ?? 0,
    };
  });
}
