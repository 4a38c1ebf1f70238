import type { Signature } from '../stamp.ts';
import type { StudyFound } from './study-result.ts';

/** `crossed`: every person measures every part. `bias`: one part of known value. `linearity`: several of known values over the gauge's range. */
export type StudyKind = 'crossed' | 'bias' | 'linearity';
/** A part of the study by the name on its tray; `reference` its known value, where the study asks for one. */
export interface StudyPart { readonly label: string; readonly reference: number | null }
export interface StudyPerson { readonly badge: string; readonly name: string }
/** What is to be measured and how often. */
export interface StudyDesign {
  readonly studyKind: StudyKind;
  readonly gauge: string;
  /** What is measured, in the plant's words. */
  readonly characteristic: string;
  /** Upper minus lower limit of the drawing, in the gauge's unit; null for none. */
  readonly tolerance: number | null;
  /** A reading outside is questioned before it is taken. */
  readonly plausible: { readonly least: number; readonly most: number };
  readonly parts: readonly StudyPart[];
  readonly trials: number;
}
/** What the gauge was when the study began; readings are checked against it. */
export interface StudyGauge { readonly name: string; readonly unit: string; readonly resolution: number; readonly least: number; readonly most: number }

export type StudySlip =
  | ({ readonly type: 'studyOpened'; readonly study: string; readonly people: readonly StudyPerson[]; readonly gaugeThen: StudyGauge; readonly seed: string } & StudyDesign)
  | { readonly type: 'studyReadingTaken'; /** Counts from 1 over the whole study. */ readonly reading: number; /** Part and trial count from 1. */ readonly part: number; readonly trial: number; readonly value: number; readonly sure?: true }
  | { readonly type: 'studyReadingCorrected'; readonly reading: number; readonly from: number; readonly to: number; readonly reason: string }
  | { readonly type: 'studyReadingWithdrawn'; readonly reading: number; readonly value: number; readonly reason: string }
  | { readonly type: 'studyClosed'; readonly poolAbove: number; readonly confidence: number; readonly found: StudyFound; readonly signature: Signature }
  | { readonly type: 'studyAbandoned'; readonly reason: string };
