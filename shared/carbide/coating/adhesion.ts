/** Classes of adhesion at a Rockwell indentation, best first. @see ISO 26443:2023, as seen in secondary text */
export const ADHESION_CLASSES = ['0', '1', '2', '3'] as const;
export type AdhesionClass = (typeof ADHESION_CLASSES)[number];

/** How a coating is indented: hardmetal and ceramics on scale A, hard steel (54 HRC and above) on C, softer steel on D. */
export type AdhesionSubstrate = 'hardmetal' | 'hardSteel' | 'softSteel';

/** Rockwell scale and total force, N, for the substrate. @see ISO 26443:2023, loads as seen in secondary text; scale A for hardmetal confirmed by a university's page */
export function adhesionLoad(substrate: AdhesionSubstrate): { readonly scale: 'A' | 'C' | 'D'; readonly forceN: number } {
  switch (substrate) {
    case 'hardmetal': return { scale: 'A', forceN: 588.6 };
    case 'hardSteel': return { scale: 'C', forceN: 1471.5 };
    case 'softSteel': return { scale: 'D', forceN: 981 };
  }
}
