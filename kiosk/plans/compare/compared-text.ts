import { stagesOf, type Stage } from '../../../shared/sampling/attributes/index.ts';
import { planCompareWords as words } from '../../../shared/words/plan-compare.en.ts';
import { deskWords, labels } from '../../desk/words.ts';
import { showFigure, showNumber } from '../../desk/show.ts';
import { SAME_AQL } from './choice.ts';
import type { Compared, CompareNote } from './compared-plan.ts';
import { numberOf } from './read-choice.ts';

/** A number to so many significant digits, without needless noughts. */
export const toDigits = (value: number, digits: number): string => showFigure(Number(value.toPrecision(digits)));
/** A fraction as percent, to so many significant digits; near 100 % counted from 100, so that 99.997 is not 100. */
export function percentText(fraction: number, digits = 3): string {
  const percent = 100 * fraction;
  if (percent > 90 && percent < 100) {
    const short = Number((100 - percent).toPrecision(Math.max(digits - 1, 1)));
    return showFigure(Number((100 - short).toPrecision(12)));
  }
  return toDigits(percent, digits);
}

/** The samples of a plan that counts; null where it has no fixed ones. */
export function stagesIn({ judged }: Compared): readonly Stage[] | null {
  switch (judged.by) {
    case 'table':
    case 'isolated': return stagesOf(judged.plan);
    case 'points': return judged.stages;
    case 'sequential':
    case 'measured': return null;
  }
}

/** The most pieces a plan may ask for. */
export function mostPieces(compared: Compared): number {
  const { judged } = compared;
  if (judged.by === 'sequential' || judged.by === 'measured') return judged.plan.sampleSize;
  return (stagesIn(compared) ?? []).reduce((sum, { sampleSize }) => sum + sampleSize, 0);
}

/** "n 50 + 50". */
export function briefSamples(compared: Compared): string {
  const stages = stagesIn(compared);
  if (stages === null) return compared.judged.by === 'sequential' ? words.brief.upTo(showFigure(mostPieces(compared))) : words.brief.sample(showFigure(mostPieces(compared)));
  return words.brief.sample(sizesText(stages.map(({ sampleSize }) => sampleSize)));
}

/** "50 + 50", "7 × 20". */
export function sizesText(sizes: readonly number[]): string {
  const shown = sizes.map(showFigure);
  const alike = shown.length > 2 && new Set(shown).size === 1;
  return alike ? words.brief.times(showFigure(shown.length), shown[0] ?? '') : shown.join(words.brief.plus);
}

/** "Ac 2 · Re 3" of each sample, or k, or the lines. */
export function briefNumbers(compared: Compared): readonly string[] {
  const { judged } = compared;
  if (judged.by === 'measured') return [words.brief.k(showNumber(judged.judging.k, 3))];
  if (judged.by === 'sequential') return [words.brief.lines(showNumber(judged.plan.h1, 3), showNumber(judged.plan.h2, 3), showNumber(judged.plan.slope, 4))];
  const stages = stagesIn(compared) ?? [];
  const list = (numbers: readonly (number | null)[]): string => numbers.map((number) => (number === null ? words.brief.notYet : showFigure(number))).join(words.brief.then);
  return [words.brief.numbers(list(stages.map(({ ac }) => ac)), list(stages.map(({ re }) => re)))];
}

/** Which letter, and which arrow moved it from where. */
export function briefWay({ judged }: Compared): string {
  const table = judged.by === 'table' ? judged.plan : judged.by === 'measured' ? judged.table : null;
  if (table === null) return (judged.by === 'isolated' || judged.by === 'measured') && judged.plan.everyPiece ? words.brief.allOfIt : words.brief.worked;
  const { startLetter, letter, arrow, everyPiece } = table;
  const way = arrow === 'down' ? words.brief.down(startLetter, letter) : arrow === 'up' ? words.brief.up(startLetter, letter) : words.brief.direct(letter);
  return everyPiece ? `${way}; ${words.brief.everyPiece}` : way;
}

/** A plan by what it was chosen for: "AQL 1, double, normal". */
export function nameOf({ choice: { rule, texts } }: Pick<Compared, 'choice'>): string {
  const figure = (text: string): string => {
    const value = numberOf(text);
    return value === null ? text : showFigure(value);
  };
  const [aql, lq, p1, p2] = [figure(texts.aql), figure(texts.lq), figure(texts.p1), figure(texts.p2)];
  const method = texts.method === 'sigma' ? 'σ' : 's';
  switch (rule) {
    case 'attributes': return words.names.attributes(sampleWord(texts.samples), severityWord(texts.severity), aql);
    case 'limitingQuality': return words.names.limitingQuality(lq);
    case 'zeroAcceptance': return words.names.zeroAcceptance(lq);
    case 'twoPointSingle': return words.names.twoPoint(words.samples.single, p1, p2);
    case 'twoPointDouble': return words.names.twoPoint(words.samples.double, p1, p2);
    case 'sequential': return words.names.sequential(p1, p2);
    case 'variables': return `${words.names.variables(method, aql, severityWord(texts.variablesSeverity))}${texts.aqlOther === SAME_AQL ? '' : words.names.otherLimit(figure(texts.aqlOther))}`;
    case 'variablesPoints': return words.names.variablesPoints(method, p1, p2);
  }
}

const sampleWord = (text: string): string => Object.entries(words.samples).find(([name]) => name === text)?.[1] ?? deskWords.none;
const severityWord = (text: string): string => Object.entries(labels.severities).find(([name]) => name === text)?.[1] ?? deskWords.none;

export const noteText = (note: CompareNote): string => words.notes[note];
