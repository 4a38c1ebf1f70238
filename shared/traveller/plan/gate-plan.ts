import type { Role } from '../rights.ts';
import type { SubjectKind } from '../stream.ts';
import type { Characteristic } from './characteristic.ts';

/** Cautions by key; their words stand in shared/words and always defer to the site's rules. */
export const CAUTIONS = ['dust', 'lifting', 'ethanol', 'press', 'furnace', 'inertGas', 'labChemicals', 'grinding', 'sharpEdges', 'coatingGases', 'indent', 'laser', 'eyes'] as const;
export type CautionKey = (typeof CAUTIONS)[number];

/** One check station of a route. */
export interface GatePlan {
  readonly id: string;
  readonly name: string;
  /** Whose traveller the work is done on: the lot's own, or the batch or charge whose verdict stands for the lot. */
  readonly workedOn: SubjectKind;
  /** The bench's kind, as signed on at the kiosk. */
  readonly bench: string;
  readonly roles: readonly Role[];
  readonly cautions: readonly CautionKey[];
  /** Empty where the gate is worked on another subject. */
  readonly characteristics: readonly Characteristic[];
}

/** An inspection plan: the ordered gates for one kind of subject. Versions count from 1. */
export interface InspectionPlan {
  readonly id: string;
  readonly name: string;
  readonly appliesTo: SubjectKind;
  readonly gates: readonly GatePlan[];
}
