import type { Study } from '../../../shared/traveller/index.ts';

/** A closed gauge study as it goes to paper. Plain data. */
export interface StudySheetData {
  readonly plant: string;
  readonly demo: boolean;
  readonly language: string;
  readonly study: Study;
  /** ISO 8601 with zone. */
  readonly printedAt: string;
}
