import { LINE_LETTERS, type LineLetter } from '../../parts/line-letters.ts';

/** The rules a compared plan may be chosen by. */
export const RULES = ['attributes', 'limitingQuality', 'zeroAcceptance', 'twoPointSingle', 'twoPointDouble', 'sequential', 'variables', 'variablesPoints'] as const;
export type RuleName = (typeof RULES)[number];

/** What is typed or chosen for a plan. Percentages stand as percent, as people type them. */
export const FIELDS = ['lot', 'level', 'aql', 'samples', 'severity', 'variablesLevel', 'variablesSeverity', 'aqlOther', 'method', 'lq', 'consumerRisk', 'p1', 'producerRisk', 'p2'] as const;
export type FieldName = (typeof FIELDS)[number];

/** The fields of each rule, in the order in which they are shown and written into the address. */
export const FIELDS_OF: Readonly<Record<RuleName, readonly FieldName[]>> = {
  attributes: ['lot', 'level', 'aql', 'samples', 'severity'],
  limitingQuality: ['lot', 'lq', 'consumerRisk'],
  zeroAcceptance: ['lot', 'lq', 'consumerRisk'],
  twoPointSingle: ['lot', 'p1', 'producerRisk', 'p2', 'consumerRisk'],
  twoPointDouble: ['lot', 'p1', 'producerRisk', 'p2', 'consumerRisk'],
  sequential: ['lot', 'p1', 'producerRisk', 'p2', 'consumerRisk'],
  variables: ['lot', 'variablesLevel', 'aql', 'method', 'variablesSeverity', 'aqlOther'],
  variablesPoints: ['lot', 'p1', 'producerRisk', 'p2', 'consumerRisk', 'method'],
};

/** One plan as chosen: its rule, and a text for every field, sound or not. */
export interface Choice { readonly rule: RuleName; readonly texts: Readonly<Record<FieldName, string>> }
export interface LetteredChoice extends Choice { readonly letter: LineLetter }

/** The other limit has the same AQL, or there is none. */
export const SAME_AQL = 'same';

const STANDARD: Readonly<Record<FieldName, string>> = {
  lot: '1000', level: 'II', aql: '1', samples: 'single', severity: 'normal', variablesLevel: 'IV', variablesSeverity: 'normal', aqlOther: SAME_AQL, method: 's', lq: '5', consumerRisk: '10', p1: '1', producerRisk: '5', p2: '6',
};

/** A plan of this rule with the usual numbers, those given aside. */
export function choiceOf(rule: RuleName, texts: Partial<Readonly<Record<FieldName, string>>> = {}): Choice {
  return { rule, texts: { ...STANDARD, ...texts } };
}

/** The choice with one text changed. */
export function withText({ rule, texts }: Choice, field: FieldName, text: string): Choice {
  return { rule, texts: { ...texts, [field]: text } };
}

/** What an empty comparison begins with: the same AQL by one sample and by two. */
export const FIRST_CHOICES: readonly Choice[] = [choiceOf('attributes'), choiceOf('attributes', { samples: 'double' })];

const SEPARATOR = '_';

/** A choice as it stands in an address: rule and texts, `attributes_1000_II_1_single_normal`. */
export function choiceText({ rule, texts }: Choice): string {
  return [rule, ...FIELDS_OF[rule].map((field) => texts[field].replaceAll(SEPARATOR, ' ').slice(0, 20))].join(SEPARATOR);
}

/** Reads a choice of an address; null where its rule is unknown. Texts that are missing are the usual ones; wrong ones stay, and are said to be wrong where they stand. */
export function readChoice(text: string): Choice | null {
  const [name = '', ...given] = text.split(SEPARATOR);
  const rule = RULES.find((each) => each === name);
  if (rule === undefined) return null;
  return choiceOf(rule, Object.fromEntries(FIELDS_OF[rule].flatMap((field, at) => (given[at] === undefined ? [] : [[field, given[at].slice(0, 20)]]))));
}

/** Choices under the letters of the chart's lines, up to four. */
export function lettered(choices: readonly Choice[]): readonly LetteredChoice[] {
  return choices.flatMap((choice, at) => {
    const letter = LINE_LETTERS[at];
    return letter === undefined ? [] : [{ ...choice, letter }];
  });
}
