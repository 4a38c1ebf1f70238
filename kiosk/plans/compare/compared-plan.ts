import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { attributesPlan, limitingQualityPlan, stagesOf, tableNotes, zeroAcceptancePlan, INSPECTION_LEVELS, type AttributesPlan, type IsolatedPlan, type Stage, type TableNote } from '../../../shared/sampling/attributes/index.ts';
import { twoPointDouble, twoPointSingle } from '../../../shared/sampling/design/index.ts';
import type { Judging } from '../../../shared/sampling/risk/index.ts';
import { sequentialPlan, type SequentialPlan } from '../../../shared/sampling/sequential/index.ts';
import { pointsVariablesPlan, variablesPlan, VARIABLES_LEVELS, type VariablesJudging, type VariablesLotPlan, type VariablesPlan } from '../../../shared/sampling/variables/index.ts';
import { planCompareWords as words } from '../../../shared/words/plan-compare.en.ts';
import type { LineLetter } from '../../parts/line-letters.ts';
import { SAME_AQL, type Choice, type LetteredChoice } from './choice.ts';
import type { ModelName } from './comparison.ts';
import { numberOf, readNumbers, type Faults, type Numbers } from './read-choice.ts';

/** The exact risks a design has at its points, in the lot it is for. */
interface Reached { readonly producerRisk: number; readonly consumerRisk: number }
/** How a plan judges: by what is counted, or by what is measured. */
export type Judged =
  | { readonly by: 'table'; readonly plan: AttributesPlan; readonly judging: Judging }
  | { readonly by: 'isolated'; readonly plan: IsolatedPlan; readonly judging: Judging }
  | { readonly by: 'points'; readonly stages: readonly Stage[]; readonly judging: Judging; readonly reached: Reached }
  | { readonly by: 'sequential'; readonly plan: SequentialPlan; readonly judging: Judging }
  | { readonly by: 'measured'; readonly method: 's' | 'sigma'; readonly plan: VariablesLotPlan; readonly table: VariablesPlan | null; readonly judging: VariablesJudging };
export type CompareNote = TableNote | 'variablesFromMemory' | 'ownLimit' | 'cutOff';

/** One plan of the comparison, worked out. Qualities and risks are fractions. */
export interface Compared {
  readonly letter: LineLetter;
  readonly choice: Choice;
  readonly lotSize: number;
  readonly judged: Judged;
  readonly notes: readonly CompareNote[];
  /** The quality the producer relies on (AQL or p1), where the plan names one. */
  readonly producerAt: number | null;
  /** The quality the consumer is guarded against (LQ or p2), where the plan names one. */
  readonly consumerAt: number | null;
}
export type Outcome = { readonly plan: Compared } | { readonly faults: Faults; readonly said: string };

/** Works out the plan of a choice, or says what is wrong with it. Rules and numbers are the engine's. */
export function comparedPlan(choice: LetteredChoice, model: ModelName): Outcome {
  const { numbers, faults } = readNumbers(choice);
  if (Object.keys(faults).length > 0) return { faults, said: words.noPlan };
  if (choice.rule === 'attributes' && model !== 'poisson' && (numberOf(choice.texts.aql) ?? 0) > 10) return { faults: { aql: words.perHundredOnly }, said: words.noPlan };
  try {
    const worked = WORKED[choice.rule](choice, numbers);
    return worked === null ? { faults: {}, said: words.noDesign } : { plan: { letter: choice.letter, choice, lotSize: numbers.lotSize, ...worked } };
  } catch (error) {
    if (error instanceof OutsideDomain) return { faults: {}, said: words.noTablePlan };
    throw error;
  }
}

type Worked = Pick<Compared, 'judged' | 'notes' | 'producerAt' | 'consumerAt'> | null;
const points = ({ p1Percent, producerRisk, p2Percent, consumerRisk }: Numbers) => ({ p1: p1Percent / 100, producerRisk, p2: p2Percent / 100, consumerRisk });
const atPoints = ({ p1Percent, p2Percent }: Numbers) => ({ producerAt: p1Percent / 100, consumerAt: p2Percent / 100 });
const known = <T extends string>(all: readonly T[], text: string): T => {
  const found = all.find((each) => each === text);
  if (found === undefined) throw new OutsideDomain('choice', all.join(', '), text);
  return found;
};
const isolated = (plan: IsolatedPlan, { lqPercent }: Numbers): Worked => ({ judged: { by: 'isolated', plan, judging: { stages: stagesOf(plan) } }, notes: [], producerAt: null, consumerAt: lqPercent / 100 });

const WORKED: Readonly<Record<Choice['rule'], (choice: Choice, numbers: Numbers) => Worked>> = {
  attributes: ({ texts }, { lotSize }) => {
    const aqlPercent = numberOf(texts.aql) ?? Number.NaN;
    const plan = attributesPlan({ lotSize, aqlPercent, level: known(INSPECTION_LEVELS, texts.level), severity: known(['normal', 'tightened', 'reduced'], texts.severity), samples: known(['single', 'double', 'multiple'], texts.samples) });
    return { judged: { by: 'table', plan, judging: { stages: stagesOf(plan) } }, notes: tableNotes(plan), producerAt: aqlPercent / 100, consumerAt: null };
  },
  limitingQuality: (_, numbers) => isolated(limitingQualityPlan(numbers), numbers),
  zeroAcceptance: (_, numbers) => isolated(zeroAcceptancePlan(numbers), numbers),
  twoPointSingle: (_, numbers) => {
    const found = twoPointSingle({ ...points(numbers), model: { kind: 'hypergeometric', lotSize: numbers.lotSize } });
    return 'none' in found ? null : byPoints([{ sampleSize: found.n, ac: found.ac, re: found.re }], found, numbers);
  },
  twoPointDouble: (_, numbers) => {
    const found = twoPointDouble({ ...points(numbers), model: { kind: 'hypergeometric', lotSize: numbers.lotSize } });
    return 'none' in found ? null : byPoints(found.stages, found, numbers);
  },
  sequential: (_, numbers) => {
    const plan = sequentialPlan(numbers);
    return { judged: { by: 'sequential', plan, judging: plan }, notes: ['cutOff'], ...atPoints(numbers) };
  },
  variables: ({ texts }, { lotSize }) => {
    const [aqlPercent, other] = [numberOf(texts.aql) ?? Number.NaN, texts.aqlOther === SAME_AQL ? null : numberOf(texts.aqlOther) ?? Number.NaN];
    const apart = other === null ? {} : { separate: { lowerAqlPercent: aqlPercent, upperAqlPercent: other } };
    const table = variablesPlan({ lotSize, level: known(VARIABLES_LEVELS, texts.variablesLevel), aqlPercent: Math.min(aqlPercent, other ?? aqlPercent), severity: known(['normal', 'tightened'], texts.variablesSeverity), ...sigmaOf(texts.method), ...apart });
    return { judged: measured(table, table, table.separate?.lower.k ?? table.k), notes: ['variablesFromMemory', ...(other === null ? [] : ['ownLimit' as const])], producerAt: aqlPercent / 100, consumerAt: null };
  },
  variablesPoints: ({ texts }, numbers) => {
    const { lotSize, p1Percent, producerRisk, p2Percent, consumerRisk } = numbers;
    const plan = pointsVariablesPlan({ lotSize, points: { p1Percent, producerRisk, p2Percent, consumerRisk }, ...sigmaOf(texts.method) });
    return plan === null ? null : { judged: measured(plan, null, plan.k), notes: [], ...atPoints(numbers) };
  },
};

function byPoints(stages: readonly Stage[], { producerRisk, consumerRisk }: Reached, numbers: Numbers): Worked {
  return { judged: { by: 'points', stages, judging: { stages }, reached: { producerRisk, consumerRisk } }, notes: [], ...atPoints(numbers) };
}

/** The risk of a plan by variables depends on distances in standard deviations alone, so that any σ stands for all. */
const sigmaOf = (method: string): { readonly method?: 'sigma'; readonly sigma?: number } => (known(['s', 'sigma'], method) === 'sigma' ? { method: 'sigma', sigma: 1 } : {});

/** Everything outside lies beyond one limit, whose k is given. */
function measured(plan: VariablesLotPlan, table: VariablesPlan | null, k: number): Judged {
  const { sampleSize, mPercent, method, sigma } = plan;
  const known = method === undefined || sigma === undefined ? {} : { method, sigma };
  return { by: 'measured', method: method ?? 's', plan, table, judging: { sampleSize, k, mPercent, form: 'k', ...known } };
}
