import type { PressSlip } from '../traveller/index.ts';
import type { Said } from './said.ts';
import type { Speak } from './speak.ts';
import type { WordsFor } from './words-for.ts';

/** What presses tell. */
export const pressSlipWords: WordsFor<PressSlip, 'type', Said, [Speak]> = {
  pressRegistered: ({ press }) => ({ sentence: `Press ${press.id} registered: ${press.name}`, lines: [`Bench ${press.bench}, balance ${press.balance}`] }),
  pressChanged: ({ press, reason, count }) => ({ sentence: `Press ${press.id} changed: ${reason}`, lines: [`${press.name}, bench ${press.bench}, balance ${press.balance}`, ...(count === undefined ? [] : ['Its balance begins its count of pieces anew'])] }),
  pressSet: ({ lot, afterSeq }, { format }) => ({
    sentence: lot === null ? 'Stands: its weights belong to no lot' : `Presses lot ${lot} from now on`, lines: afterSeq === null ? [] : [`Weights taken before: up to number ${format.count(afterSeq)} of its balance`],
  }),
};
