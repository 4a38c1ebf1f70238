import type { SlipBody } from '../traveller/index.ts';
import { cautionSlipWords } from './caution-slips.en.ts';
import { chartSlipWords } from './chart-slips.en.ts';
import { pressSlipWords } from './press-slips.en.ts';
import { samplingSlipWords } from './sampling-slips.en.ts';
import { chargeSlipWords, furnaceRecordSlipWords } from './charge-slips.en.ts';
import { gateSlipWords } from './gate-slips.en.ts';
import { lotSlipWords } from './lot-slips.en.ts';
import { batchSlipWords } from './powder-slips.en.ts';
import { recordSlipWords, switchingSlipWords } from './record-slips.en.ts';
import { studySlipWords } from './study-slips.en.ts';
import type { Said } from './said.ts';
import type { Speak } from './speak.ts';
import type { WordsFor } from './words-for.ts';

/** The words of every slip there is. */
export const slipWords: WordsFor<SlipBody, 'type', Said, [Speak]> = { ...gateSlipWords, ...lotSlipWords, ...batchSlipWords, ...chargeSlipWords, ...furnaceRecordSlipWords, ...switchingSlipWords, ...recordSlipWords, ...samplingSlipWords, ...pressSlipWords, ...studySlipWords, ...cautionSlipWords, ...chartSlipWords };
