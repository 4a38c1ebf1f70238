import { isOurCaution } from '../traveller/index.ts';
import type { Refusal, SlipBody } from '../traveller/index.ts';
import type { DoorRefusal } from '../wire/reply.ts';
import type { Catalogue, LanguageParts } from './catalogue.ts';
import { formatFor } from './format.ts';
import type { Locale } from './locale.ts';
import { parseNumber } from './parse-number.ts';
import type { Said } from './said.ts';
import type { Reader, Speak } from './speak.ts';
import type { ToldRefusal } from './told-refusal.ts';
import { say } from './words-for.ts';

type AnyRefusal = Refusal | DoorRefusal;

/** Puts the parts of one language together. */
export function makeCatalogue(locale: Locale, parts: LanguageParts, timeZone: string | undefined): Catalogue {
  const { labels } = parts;
  const format = formatFor(locale, timeZone);
  const speaker = (reader: Reader = {}): Speak => ({ ...reader, format, labels });
  const said = (body: SlipBody, reader?: Reader): Said => say<SlipBody, 'type', Said, [Speak], SlipBody['type']>(parts.slips, body.type, body, speaker(reader));
  const refusals = { ...parts.refusals, ...parts.doorRefusals };
  return {
    locale, format, labels, documents: parts.documents, cautionLead: parts.cautionLead,
    slipSentence: ({ body }, reader) => said(body, reader).sentence,
    slipLines: ({ body }, reader) => said(body, reader).lines,
    refusal: (refusal) => say<AnyRefusal, 'code', ToldRefusal, [Speak], AnyRefusal['code']>(refusals, refusal.code, refusal, speaker()),
    demandSentence: (demand) => parts.demand(demand, speaker()),
    limitsSentence: (characteristic) => parts.limits(characteristic, speaker()),
    placeSentence: (place) => parts.place(place, speaker()),
    resultSentence: (result, reader) => parts.result(result, speaker(reader)),
    verdictSentence: (verdict, reader) => parts.verdict(verdict, speaker(reader)),
    verdictLines: (verdict, reader) => parts.verdictLines(verdict, speaker(reader)),
    causeSentence: (cause, reader) => parts.cause(cause, speaker(reader)),
    dispositionSentence: parts.disposition,
    signatureSentence: (signature) => parts.signature(signature, speaker()),
    caution: ({ caution, text }) => ({ word: parts.cautionWord, text: text ?? (isOurCaution(caution) ? parts.cautions[caution] : caution), rule: parts.cautionRule }),
    parseNumber: (text) => parseNumber(text, locale),
  };
}
