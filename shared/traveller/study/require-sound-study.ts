import { refuse } from '../pen.ts';
import type { OpenStudy } from './commands.ts';
import type { StudyGauge } from './slips.ts';

/** Why a study cannot be worked as it was planned. */
export type StudyFault = 'tooFewParts' | 'oneReferencePart' | 'tooFewPeople' | 'tooFewTrials' | 'tooManyReadings' | 'labelTwice' | 'personTwice' | 'referenceMissing' | 'referenceNotAsked' | 'tooFewReferences' | 'plausibleOutsideGauge';

/** The most readings of one study: everything is shown on one page and worked out while one waits. */
export const MOST_STUDY_READINGS = 5000;

/** Refuses a study that could not give what it is for. */
export function requireSoundStudy({ studyKind, parts, people, trials, plausible, study }: OpenStudy, gauge: StudyGauge): void {
  const unsound = (why: StudyFault): never => refuse({ code: 'studyUnsound', study, why });
  if (studyKind === 'crossed' && parts.length < 2) unsound('tooFewParts');
  if (studyKind === 'bias' && parts.length !== 1) unsound('oneReferencePart');
  if (studyKind === 'linearity' && parts.length < 3) unsound('tooFewReferences');
  if (people.length < (studyKind === 'crossed' ? 2 : 1)) unsound('tooFewPeople');
  if (trials < 2) unsound('tooFewTrials');
  if (parts.length * people.length * trials > MOST_STUDY_READINGS) unsound('tooManyReadings');
  if (new Set(parts.map(({ label }) => label)).size < parts.length) unsound('labelTwice');
  if (new Set(people).size < people.length) unsound('personTwice');
  const references = parts.flatMap(({ reference }) => (reference === null ? [] : [reference]));
  if (studyKind === 'crossed' && references.length > 0) unsound('referenceNotAsked');
  if (studyKind !== 'crossed' && references.length < parts.length) unsound('referenceMissing');
  if (studyKind === 'linearity' && new Set(references).size < 3) unsound('tooFewReferences');
  if (!(plausible.least < plausible.most && plausible.least >= gauge.least && plausible.most <= gauge.most)) unsound('plausibleOutsideGauge');
}
