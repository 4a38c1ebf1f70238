import type { CharacteristicResult, ClassResult, JudgedLimits, ResultDetail, Verdict } from '../traveller/index.ts';
import { isSequential } from '../traveller/index.ts';
import { lotPlanNumbers, lotPlanSource } from './lot-plan.en.ts';
import { piecesText } from './speak.ts';
import type { Speak } from './speak.ts';
import { attributesCaution, normalityCaution, variablesMethod, variablesSource, variablesStatistic } from './variables.en.ts';
import { say } from './words-for.ts';
import type { WordsFor } from './words-for.ts';

/** What a verdict rests on, one saying for each way of judging. */
const detailWords: WordsFor<ResultDetail, 'by', string, [CharacteristicResult, Speak]> = {
  skipped: ({ clearance, oneIn, lots }, _, { format }) => `not inspected: passed over after ${format.count(clearance)} lots accepted in a row${lots.length === 0 ? '' : ` (${format.list(lots)})`}; one lot in ${format.count(oneIn)} is inspected`,
  attributes: ({ classes }, _, speak) => {
    const [only, ...others] = classes;
    if (only !== undefined && others.length === 0) return classSentence(only, speak);
    return classes.map((each) => `${speak.labels.findingClasses[each.class]} ${classSentence(each, speak)}`).join(' · ');
  },
  variables: (detail, result, speak) => {
    const { plan, summary, limits, outside } = detail;
    const { format } = speak;
    const s = summary.s === null ? '' : `, s ${format.number(summary.s, result.decimals + 2)}`;
    const seen = outside > 0 ? `; ${format.count(outside)} of ${format.count(summary.n)} values outside ${limitsText(limits, result, speak)}` : '';
    const method = plan.method === 'sigma' ? `, ${variablesMethod(plan, result.unit, format)}` : '';
    const cautions = [attributesCaution(detail, result, speak), normalityCaution(detail, speak)].flatMap((caution) => (caution === null ? [] : [`; ${caution}`])).join('');
    return `${variablesStatistic(detail, speak)} (mean ${format.number(summary.mean, result.decimals + 1)}${s}, n ${format.count(summary.n)}${method}, ${variablesSource(plan, speak)})${seen}${cautions}`;
  },
  limits: ({ accept, summary, limits, outside }, result, speak) => {
    const { format } = speak;
    const range = limitsText(limits, result, speak);
    if (accept === 'mean') return `mean ${format.number(summary.mean, result.decimals + 1)}${unitOf(result)} of ${format.count(summary.n)}, to lie within ${range}`;
    return outside === 0 ? `all ${format.count(summary.n)} within ${range}` : `${format.count(outside)} of ${format.count(summary.n)} outside ${range}`;
  },
  everyPiece: ({ summary, limits, outside, ejectAtMostPercent }, result, speak) =>
    `${speak.format.count(outside)} of ${piecesText(speak, summary.n)} outside ${limitsText(limits, result, speak)} and ejected, at most ${speak.format.number(ejectAtMostPercent)} %`,
  interval: ({ looks, looked, found, missed = [] }, _, { format }) => {
    const named = missed.map(({ look, piece }) => `look ${format.count(look)} (piece ${format.count(piece)})`);
    return `${format.count(found)} found in ${format.count(looked)} over ${format.count(looks)} ${looks === 1 ? 'look' : 'looks'}, accept none${named.length === 0 ? '' : `; missed: ${format.list(named)}`}`;
  },
  grade: ({ n, worst, worstAccepted }, _, { format }) => `worst of ${format.count(n)} is ${worst}, accepted to ${worstAccepted}`,
  once: ({ statement, confirmed, despite }) => `${confirmed ? 'confirmed' : 'not confirmed'}: ${statement}${despite === undefined ? '' : ` (in spite of the log: ${despite})`}`,
};

function classSentence({ plan, found, beyond, outcome, decided }: ClassResult, speak: Speak): string {
  const { format } = speak;
  if (isSequential(plan) || (plan.stages?.length ?? 1) > 1) return severalSentence({ plan, found, beyond, outcome, ...(decided === undefined ? {} : { decided }) }, speak);
  const gap = outcome === 'acceptedInGap' ? `, below ${format.count(plan.re)}: accepted, and normal inspection returns` : '';
  const more = beyond > 0 ? `; ${format.count(beyond)} more beyond the first ${format.count(plan.sampleSize)}, kept but not counted` : '';
  return `${format.count(found)} found in ${format.count(plan.sampleSize)}, accept to ${format.count(plan.ac)}${gap} (${lotPlanSource(plan, speak)})${outcome === 'undecided' ? undecidedText : ''}${more}`;
}

const undecidedText = '; undecided when the lot was rejected';

/** A plan of several samples, or piece by piece: where it decided and by what. */
function severalSentence({ plan, found, beyond, outcome, decided }: Omit<ClassResult, 'class'>, speak: Speak): string {
  const { format } = speak;
  const at = decided?.at ?? plan.sampleSize;
  const where = isSequential(plan) ? `decided at piece ${format.count(at)}` : `decided on sample ${format.count(decided?.sample ?? 1)}`;
  const more = beyond > 0 ? `; ${format.count(beyond)} more found elsewhere, kept but not counted` : '';
  return `${format.count(found)} found in ${format.count(at)}${outcome === 'undecided' ? undecidedText : `, ${where}`} (${lotPlanNumbers(plan, speak)}; ${lotPlanSource(plan, speak)})${more}`;
}

function unitOf({ unit }: CharacteristicResult): string {
  return unit === null ? '' : ` ${unit}`;
}

/** The limits as judged; where a guard band has drawn them in, with one more decimal. */
function limitsText(limits: JudgedLimits, result: CharacteristicResult, { format, labels }: Speak): string {
  const drawnIn = limits.acceptLower !== limits.lower || limits.acceptUpper !== limits.upper;
  const written = (limit: number | null): string | null => (limit === null ? null : format.number(limit, result.decimals + (drawnIn ? 1 : 0)));
  return `${labels.between(written(limits.acceptLower), written(limits.acceptUpper))}${unitOf(result)}${drawnIn ? ' (drawn in by U)' : ''}`;
}

/** What one characteristic's result rests on: "2 found in 80, accept to 5 (letter J, normal, AQL 2.5)". */
export function resultSentence(result: CharacteristicResult, speak: Speak): string {
  return say<ResultDetail, 'by', string, [CharacteristicResult, Speak], ResultDetail['by']>(detailWords, result.detail.by, result.detail, result, speak);
}

/** The verdict and what it rests on, in one line. */
export function verdictSentence({ accepted, results }: Verdict, speak: Speak): string {
  const { labels, format } = speak;
  const word = accepted ? labels.verdicts.accepted : labels.verdicts.rejected;
  const [only, ...others] = results;
  if (only === undefined) return word;
  if (others.length === 0) return `${word}: ${resultSentence(only, speak)}`;
  const failed = results.filter((result) => !result.accepted);
  const [first, ...further] = failed;
  if (first === undefined) return `${word}: all ${format.count(results.length)} characteristics`;
  return further.length === 0 ? `${word}: ${first.name}: ${resultSentence(first, speak)}` : `${word} at ${format.count(failed.length)} of ${format.count(results.length)} characteristics: ${format.list(failed.map(({ name }) => name))}`;
}

/** One line a characteristic. Empty where the sentence has said it all. */
export function verdictLines({ results }: Verdict, speak: Speak): readonly string[] {
  if (results.length < 2) return [];
  return results.map((result) => `${result.name}: ${result.accepted ? '' : `${speak.labels.verdicts.rejected}: `}${resultSentence(result, speak)}`);
}
