import type { CautionKey, CharacteristicResult, Demand, Disposition, Hold, Measured, Place, Refusal, Signature, SlipBody, Verdict } from '../traveller/index.ts';
import type { DoorRefusal } from '../wire/reply.ts';
import type { BoxLabelWords } from './box-label.en.ts';
import type { CertificateWords } from './certificate.en.ts';
import type { Format } from './format.ts';
import type { HoldTagWords } from './hold-tag.en.ts';
import type { Labels } from './labels.ts';
import type { Locale } from './locale.ts';
import type { Said } from './said.ts';
import type { Reader, Speak } from './speak.ts';
import type { DoorRefusalWords, RefusalWords, ToldRefusal } from './told-refusal.ts';
import type { TravellerSheetWords } from './traveller-sheet.en.ts';
import type { WordsFor } from './words-for.ts';

/** Anything that carries a slip's body, such as a stamped slip. */
export interface HasBody { readonly body: SlipBody }

/** What a language brings: its files, each on one theme. A further language fills in the same shape. */
export interface LanguageParts {
  readonly labels: Labels;
  readonly slips: WordsFor<SlipBody, 'type', Said, [Speak]>;
  readonly refusals: RefusalWords;
  readonly doorRefusals: DoorRefusalWords;
  readonly demand: (demand: Demand, speak: Speak) => string;
  readonly limits: (characteristic: Measured, speak: Speak) => string;
  readonly place: (place: Place, speak: Speak) => string;
  readonly result: (result: CharacteristicResult, speak: Speak) => string;
  readonly verdict: (verdict: Verdict, speak: Speak) => string;
  readonly verdictLines: (verdict: Verdict, speak: Speak) => readonly string[];
  readonly cause: (cause: Hold['cause'], speak: Speak) => string;
  readonly disposition: (disposition: Disposition) => string;
  readonly signature: (signature: Signature, speak: Speak) => string;
  readonly cautions: Readonly<Record<CautionKey, string>>;
  readonly cautionRule: string;
  readonly cautionLead: string;
  readonly cautionWord: string;
  readonly documents: DocumentWords;
}

/** What stands on paper besides its data. */
export interface DocumentWords {
  readonly certificate: CertificateWords;
  readonly boxLabel: BoxLabelWords;
  readonly holdTag: HoldTagWords;
  readonly travellerSheet: TravellerSheetWords;
}

/** Everything said in one language. `reader` brings names and the subject that is read; without them badges and ids are shown. */
export interface Catalogue {
  readonly locale: Locale;
  readonly format: Format;
  readonly labels: Labels;
  readonly documents: DocumentWords;
  /** What a slip tells, in one line. */
  slipSentence(slip: HasBody, reader?: Reader): string;
  /** Its detail, a line each; may be empty. */
  slipLines(slip: HasBody, reader?: Reader): readonly string[];
  /** What happened, what was kept, what to do next. */
  refusal(refusal: Refusal | DoorRefusal): ToldRefusal;
  /** "Take 80 pieces of 1,000: letter J, normal, AQL critical 0.15 · major 0.65 · minor 2.5". */
  demandSentence(demand: Demand): string;
  /** "4.71 … 4.81 mm". */
  limitsSentence(characteristic: Measured): string;
  /** "Tray 3, position 12". */
  placeSentence(place: Place): string;
  /** "2 found in 80, accept to 5 (letter J, normal, AQL 2.5)". */
  resultSentence(result: CharacteristicResult, reader?: Reader): string;
  /** "Accepted: 2 found in 80, …". */
  verdictSentence(verdict: Verdict, reader?: Reader): string;
  /** One line a characteristic, where there are several. */
  verdictLines(verdict: Verdict, reader?: Reader): readonly string[];
  /** Why a subject stands still. */
  causeSentence(cause: Hold['cause'], reader?: Reader): string;
  dispositionSentence(disposition: Disposition): string;
  signatureSentence(signature: Signature): string;
  /** One calm line, with the rule that the site's own rules come first. */
  /** A caution in the plant's words where it has its own, else in the tool's. */
  caution(shown: { readonly caution: string; readonly text: string | null }): { readonly word: string; readonly text: string; readonly rule: string };
  readonly cautionLead: string;
  /** The number a person typed, or null; see parse-number.ts. */
  parseNumber(text: string): number | null;
}
