import type { Role } from '../rights.ts';
import type { SubjectKind } from '../stream.ts';
import type { Characteristic } from './characteristic.ts';

/** Cautions by key; their words stand in shared/words and always defer to the site's rules. */
export const CAUTIONS = ['dust', 'lifting', 'ethanol', 'press', 'furnace', 'inertGas', 'labChemicals', 'grinding', 'sharpEdges', 'coatingGases', 'indent', 'laser', 'eyes'] as const;
export type CautionKey = (typeof CAUTIONS)[number];
/** True for a caution that the tool has words for; any other is the plant's own. */
export function isOurCaution(key: string): key is CautionKey {
  return CAUTIONS.some((each) => each === key);
}

/** One check station of a route. */
export interface GatePlan {
  readonly id: string;
  readonly name: string;
  /** Whose traveller the work is done on: the lot's own, or the batch or charge whose verdict stands for the lot. */
  readonly workedOn: SubjectKind;
  /** The bench's kind, as signed on at the kiosk. */
  readonly bench: string;
  readonly roles: readonly Role[];
  /** Keys of cautions: the tool's, or the plant's own. */
  readonly cautions: readonly string[];
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
