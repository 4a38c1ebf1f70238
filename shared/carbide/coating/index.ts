export { ADHESION_CLASSES, adhesionLoad } from './adhesion.ts';
export type { AdhesionClass, AdhesionSubstrate } from './adhesion.ts';
export { craterUncertaintyUm } from './crater-uncertainty.ts';
