import type { Signature } from '../stamp.ts';
import type { StudyDesign, StudyGauge, StudyPerson } from './slips.ts';
import type { StudyFound } from './study-result.ts';

/** One reading that stands. */
export interface StudyReading { readonly reading: number; readonly badge: string; readonly part: number; readonly trial: number; readonly value: number; readonly at: string; readonly bench: string; readonly corrected: boolean }
/** A gauge study: the fold of its thread. */
export interface Study extends StudyDesign {
  readonly kind: 'study';
  readonly stream: string;
  readonly version: number;
  readonly id: string;
  readonly people: readonly StudyPerson[];
  readonly gaugeThen: StudyGauge;
  readonly seed: string;
  readonly openedBy: string;
  readonly openedAt: string;
  /** In the order taken; withdrawn ones are gone. */
  readonly readings: readonly StudyReading[];
  /** How many were ever taken: the number of the last. */
  readonly taken: number;
  readonly standing: 'open' | 'closed' | 'abandoned';
  readonly closed: { readonly poolAbove: number; readonly confidence: number; readonly found: StudyFound; readonly signature: Signature } | null;
  readonly abandoned: { readonly reason: string; readonly by: string; readonly at: string } | null;
}
/** Readings that the whole study asks for. */
export const readingsWanted = ({ parts, people, trials }: Pick<Study, 'parts' | 'people' | 'trials'>): number => parts.length * people.length * trials;
