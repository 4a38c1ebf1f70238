import type { CautionSlip } from '../traveller/index.ts';
import type { Said } from './said.ts';
import type { Speak } from './speak.ts';
import type { WordsFor } from './words-for.ts';

/** What is told of a caution that the plant worded anew. */
export const cautionSlipWords: WordsFor<CautionSlip, 'type', Said, [Speak]> = {
  cautionWritten: ({ caution, text, shown, reason }) => ({
    sentence: `Caution ${caution} ${shown ? (text === null ? 'shown in the tool’s own words' : 'worded by the plant') : 'switched off'}: ${reason}`,
    lines: text === null ? [] : [text],
  }),
};
