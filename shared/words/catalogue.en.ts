import { boxLabelWords } from './box-label.en.ts';
import type { LanguageParts } from './catalogue.ts';
import { cautionLead, cautionRule, cautions, cautionWord } from './cautions.en.ts';
import { certificateWords } from './certificate.en.ts';
import { demandSentence, measuredLimits, placeSentence } from './demands.en.ts';
import { causeSentence, dispositionSentence, signatureSentence } from './gate-slips.en.ts';
import { holdTagWords } from './hold-tag.en.ts';
import { labels } from './labels.en.ts';
import { doorRefusalWords, refusalWords } from './refusals.en.ts';
import { resultSentence, verdictLines, verdictSentence } from './results.en.ts';
import { slipWords } from './slips.en.ts';
import { travellerSheetWords } from './traveller-sheet.en.ts';

/** English. */
export const english: LanguageParts = {
  labels, slips: slipWords, refusals: refusalWords, doorRefusals: doorRefusalWords,
  demand: demandSentence, limits: measuredLimits, place: placeSentence, result: resultSentence, verdict: verdictSentence, verdictLines,
  cause: causeSentence, disposition: dispositionSentence, signature: signatureSentence,
  cautions, cautionRule, cautionLead, cautionWord,
  documents: { certificate: certificateWords, boxLabel: boxLabelWords, holdTag: holdTagWords, travellerSheet: travellerSheetWords },
};
