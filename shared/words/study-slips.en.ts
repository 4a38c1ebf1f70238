import type { StudyFound, StudyKind, StudySlip } from '../traveller/index.ts';
import type { Format } from './format.ts';
import { signatureSentence } from './gate-slips.en.ts';
import type { Said } from './said.ts';
import type { Speak } from './speak.ts';
import type { WordsFor } from './words-for.ts';

/** What a study is called by its kind. */
export const studyKindWords: Readonly<Record<StudyKind, string>> = { crossed: 'Crossed gauge study', bias: 'Bias study', linearity: 'Linearity study' };
/** A figure as it is read out: three digits are as many as a study's spread is worth. */
const rounded = (value: number, format: Format): string => format.number(Number(value.toPrecision(3)));
const percent = (value: number, format: Format): string => `${format.number(value, 1)} %`;

/** What a closed study found, in one sentence. */
export function studyFoundSentence(found: StudyFound, format: Format): string {
  switch (found.by) {
    case 'crossed': {
      const share = found.percentOfStudy === null ? 'no spread at all was seen' : `the gauge makes ${percent(found.percentOfStudy, format)} of the spread`;
      const ofTolerance = found.percentOfTolerance === null ? '' : ` and ${percent(found.percentOfTolerance, format)} of the tolerance`;
      const categories = found.categories === null ? '; the gauge itself showed no spread' : `; it tells ${format.count(found.categories)} ${found.categories === 1 ? 'group' : 'groups'} of parts apart`;
      return `${share}${ofTolerance}${categories}`;
    }
    case 'bias': return `the gauge reads ${rounded(found.bias, format)} off the reference${found.p === null ? '' : ` (p ${rounded(found.p, format)})`}`;
    case 'linearity': return `the bias changes by ${rounded(found.slope, format)} for each unit${found.slopeP === null ? '' : ` (p ${rounded(found.slopeP, format)})`}, mean bias ${rounded(found.meanBias, format)}`;
  }
}

/** Slips of gauge studies. A reading's value is told only once the study is closed: until then the next person could read it here. */
export const studySlipWords: WordsFor<StudySlip, 'type', Said, [Speak]> = {
  studyOpened: ({ study, studyKind, gauge, characteristic, parts, people, trials, tolerance, gaugeThen, seed }, { format }) => ({
    sentence: `${studyKindWords[studyKind]} ${study} opened: ${characteristic} with gauge ${gauge}, ${format.count(parts.length)} ${parts.length === 1 ? 'part' : 'parts'} × ${format.count(people.length)} ${people.length === 1 ? 'person' : 'people'} × ${format.count(trials)} trials`,
    lines: [
      `Parts ${format.list(parts.map(({ label, reference }) => (reference === null ? label : `${label} (${format.number(reference)} ${gaugeThen.unit})`)))}`,
      `Measured by ${format.list(people.map(({ name }) => name))}, in an order drawn from the seed ${seed}`,
      ...(tolerance === null ? [] : [`Tolerance ${format.number(tolerance)} ${gaugeThen.unit}`]),
    ],
  }),
  studyReadingTaken: ({ reading, trial }, { format }) => ({ sentence: `Reading ${format.count(reading)} taken, trial ${format.count(trial)}`, lines: [] }),
  studyReadingCorrected: ({ reading, reason }, { format }) => ({ sentence: `Reading ${format.count(reading)} corrected: ${reason}`, lines: [] }),
  studyReadingWithdrawn: ({ reading, reason }, { format }) => ({ sentence: `Reading ${format.count(reading)} withdrawn, to be measured again: ${reason}`, lines: [] }),
  studyClosed: ({ found, poolAbove, confidence, signature }, speak) => ({
    sentence: `Study closed: ${studyFoundSentence(found, speak.format)}`,
    lines: [
      ...(found.by === 'crossed' ? [`Interaction pooled above p ${speak.format.number(poolAbove)}; intervals at ${speak.format.number(100 * confidence)} %`] : [`Intervals at ${speak.format.number(100 * confidence)} %`]),
      signatureSentence(signature, speak),
    ],
  }),
  studyAbandoned: ({ reason }) => ({ sentence: `Study given up: ${reason}`, lines: [] }),
};
