import type { Refusal, StudyFault } from '../traveller/index.ts';
import type { RefusalWords } from './told-refusal.ts';

const NOTHING = 'Nothing was written.';
const ENTRY = 'This entry was not written; all earlier ones are kept.';

/** Why a study cannot be worked, as a clause. */
export const studyFaults: Readonly<Record<StudyFault, string>> = {
  tooFewParts: 'a crossed study has at least two parts', oneReferencePart: 'a bias study has exactly one part', tooFewPeople: 'at least two people take part in a crossed study, one in any other',
  tooFewTrials: 'every part is measured at least twice by each person', tooManyReadings: 'a study has at most 5,000 readings', labelTwice: 'each part has a label of its own', personTwice: 'each person takes part once',
  referenceMissing: 'every part of this study has a known value', referenceNotAsked: 'the parts of a crossed study have no known values', tooFewReferences: 'a linearity study has at least three parts of different known values',
  plausibleOutsideGauge: 'the expected readings lie within the range of the gauge, the least below the most',
};
const notForUncertainty: Readonly<Record<Extract<Refusal, { code: 'studyNotForUncertainty' }>['why'], string>> = {
  otherGauge: 'it was made with another gauge', notClosed: 'it is not closed', notCrossed: 'only a crossed study gives the spread between people and trials',
};

export const studyRefusalWords = {
  studyUnsound: ({ study, why }) => ({ happened: `Study ${study} cannot be worked like this: ${studyFaults[why]}.`, kept: NOTHING, next: 'Put this right and open the study again.' }),
  studyNotOpen: ({ study, standing }) => ({ happened: `Study ${study} is ${standing === 'closed' ? 'closed' : 'given up'}.`, kept: 'Its readings stay as they are.', next: 'Open a new study if more is to be measured.' }),
  notInStudy: ({ study, badge }) => ({ happened: `${badge} is not among the people of study ${study}.`, kept: ENTRY, next: 'Let somebody who belongs to the study sign on with their own badge.' }),
  studyOutOfOrder: ({ part, next }) => ({
    happened: next === null ? 'You have measured every part as often as asked.' : `Part ${part} is not the one to be measured now.`, kept: ENTRY,
    next: next === null ? 'Hand over to the next person of the study.' : `Take part ${next}. The order is drawn, so that nobody remembers.`,
  }),
  readingOfAnother: ({ reading, badge }, { format }) => ({ happened: `Reading ${format.count(reading)} was taken by ${badge}.`, kept: 'It stays as it is.', next: 'Only they can correct it. An engineer can withdraw it, so that it is measured again.' }),
  studyNotWhole: ({ study, taken, wanted }, { format }) => ({
    happened: `Study ${study} has ${format.count(taken)} of ${format.count(wanted)} readings. A missing one cannot be made up for.`, kept: 'The study stays open with all its readings.', next: 'Measure what is missing, then close it.',
  }),
  studyNotForUncertainty: ({ study, why }) => ({ happened: `Study ${study} cannot stand in this gauge’s uncertainty: ${notForUncertainty[why]}.`, kept: 'The uncertainty stays as it is.', next: 'Choose a closed crossed study of this gauge.' }),
} satisfies Partial<RefusalWords>;
