/** How well a number is known: seen in a public source, from memory of one, common practice, or derived here. */
export type Evidence = 'seen' | 'memory' | 'common practice' | 'derived';

/** A substance that hardmetal is made of. */
export interface Component {
  /** As written in a composition, such as `WC` or `Cr3C2`. */
  readonly formula: string;
  readonly role: 'hard' | 'binder' | 'other';
  readonly densityGPerCm3: number;
  /** Mass fraction of carbon bound in the stoichiometric substance, 0 … 1; from the standard atomic masses. */
  readonly carbonFraction: number;
  readonly evidence: Evidence;
  /** Where the density comes from, in words for the screen that shows it. */
  readonly source: string;
}

/** Standard atomic masses, IUPAC, from memory; five figures are far more than any of this needs. */
const MASS = { C: 12.011, N: 14.007, W: 183.84, Ti: 47.867, Ta: 180.948, Nb: 92.906, V: 50.942, Cr: 51.996, Mo: 95.95 } as const;
const share = (carbons: number, metal: number, metals = 1, others = 0): number => (carbons * MASS.C) / (carbons * MASS.C + metals * metal + others);

const TABLE = 'open table of commonly used carbides, PMC8763544 (2022)';

/**
 * What hardmetal is commonly made of, with a density that a plant may replace by its own choice (near 20 °C).
 * TaC is printed as 13.9, 14.3 and 14.5; WC as 15.6, 15.63, 15.67 and 15.7: a plant chooses once.
 * The binder in a sintered piece is cubic and holds tungsten, so it is denser than pure cobalt (8.86, IARC monograph 86): 8.90 is used.
 */
export const COMPONENTS: readonly Component[] = [
  { formula: 'WC', role: 'hard', densityGPerCm3: 15.63, carbonFraction: share(1, MASS.W), evidence: 'seen', source: TABLE },
  { formula: 'Co', role: 'binder', densityGPerCm3: 8.9, carbonFraction: 0, evidence: 'common practice', source: 'pure cobalt 8.86 (IARC monograph 86, section 1.1.3), raised for the tungsten that the binder holds' },
  { formula: 'Ni', role: 'binder', densityGPerCm3: 8.9, carbonFraction: 0, evidence: 'memory', source: 'handbook value' },
  { formula: 'TiC', role: 'hard', densityGPerCm3: 4.93, carbonFraction: share(1, MASS.Ti), evidence: 'seen', source: TABLE },
  { formula: 'TaC', role: 'hard', densityGPerCm3: 14.3, carbonFraction: share(1, MASS.Ta), evidence: 'seen', source: TABLE },
  { formula: 'NbC', role: 'hard', densityGPerCm3: 7.82, carbonFraction: share(1, MASS.Nb), evidence: 'seen', source: TABLE },
  { formula: 'VC', role: 'hard', densityGPerCm3: 5.77, carbonFraction: share(1, MASS.V), evidence: 'seen', source: TABLE },
  { formula: 'Cr3C2', role: 'hard', densityGPerCm3: 6.68, carbonFraction: share(2, MASS.Cr, 3), evidence: 'seen', source: TABLE },
  { formula: 'Mo2C', role: 'hard', densityGPerCm3: 9.15, carbonFraction: share(1, MASS.Mo, 2), evidence: 'seen', source: TABLE },
  { formula: 'TiN', role: 'hard', densityGPerCm3: 5.4, carbonFraction: 0, evidence: 'memory', source: 'handbook value' },
  { formula: 'TiCN', role: 'hard', densityGPerCm3: 5.1, carbonFraction: share(0.5, MASS.Ti, 1, 0.5 * MASS.N), evidence: 'memory', source: 'Ti(C,N) with as much carbon as nitrogen' },
  { formula: 'W', role: 'other', densityGPerCm3: 19.3, carbonFraction: 0, evidence: 'memory', source: 'handbook value' },
  { formula: 'C', role: 'other', densityGPerCm3: 2.26, carbonFraction: 1, evidence: 'memory', source: 'graphite' },
];

/** The component written so, whether with plain or lowered figures (`Cr3C2`, `Cr₃C₂`); null for one that is not in the table. */
export function componentOf(written: string): Component | null {
  const plain = written.replaceAll(/[₀-₉]/g, (figure) => String('₀₁₂₃₄₅₆₇₈₉'.indexOf(figure))).replaceAll(/[()\s,]/g, '');
  return COMPONENTS.find(({ formula }) => formula === plain) ?? null;
}
