import type { CharacteristicResult, ResultDetail } from '../traveller/index.ts';
import type { Speak as Whole } from './speak.ts';

type Detail = Extract<ResultDetail, { by: 'variables' }>;
type VariablesLotPlan = Detail['plan'];
type Speak = Pick<Whole, 'format' | 'labels'>;
type Format = Speak['format'];

/** How a plan by variables was found: "letter D, normal, AQL 1", or the two points it goes through. */
export function variablesSource(plan: VariablesLotPlan, { format, labels }: Speak): string {
  if (plan.origin === 'points') return `smallest plan for p1 ${format.number(plan.p1Percent)} %, p2 ${format.number(plan.p2Percent)} %`;
  return `letter ${plan.letter}, ${labels.severities[plan.severity]}, AQL ${variablesAql(plan, format)}`;
}

/** The AQL, or both where each limit has its own. */
export function variablesAql(plan: VariablesLotPlan, format: Format): string {
  if (plan.separate === undefined) return format.number(plan.aqlPercent);
  return `${format.number(plan.separate.lower.aqlPercent)} below · ${format.number(plan.separate.upper.aqlPercent)} above`;
}

/** "s-method", or "σ-method, σ 0.02 mm". */
export function variablesMethod(plan: VariablesLotPlan, unit: string | null, format: Format): string {
  return plan.method === 'sigma' ? `σ-method, σ ${format.number(plan.sigma ?? 0)}${unit === null ? '' : ` ${unit}`}` : 's-method';
}

/** What the numbers were and what was asked of them, each limit by itself where it has its own AQL. */
export function variablesStatistic({ judged }: Detail, { format }: Speak): string {
  const part = (name: string, { statistic, limit }: { readonly statistic: number; readonly limit: number }): string => (judged.form === 'k'
    ? `${name === '' ? '' : `${name} `}Q ${format.number(statistic, 4)}, accept from k ${format.number(limit)}`
    : `estimated ${format.number(statistic, 4)} % ${name === '' ? 'outside' : name}, accept to ${format.number(limit)} %`);
  if (judged.separate === undefined) return part('', judged);
  const { lower, upper, together } = judged.separate;
  return [part('below', lower), part('above', upper), ...(together === undefined ? [] : [part('together', together)])].join('; ');
}

/** Whether the readings look normal, where that is to be said; null where they do, and on slips that did not ask. */
export function normalityCaution({ normality }: Detail, { format }: Speak): string | null {
  switch (normality?.says) {
    case 'doubtful': return `caution: the readings hardly look normal (Shapiro–Wilk W ${format.number(normality.statistic, 3)}, p ${smallP(normality.pValue, format)})`;
    case 'fewReadings': return `${format.count(normality.n)} readings are too few to tell whether they are normal`;
    case 'noScatter': return 'all readings are equal, so nothing tells whether they are normal';
    case 'notTested': return 'not tested for being normal';
    case 'fits': case undefined: return null;
  }
}

/** A p-value as it is written: never as 0. */
export function smallP(pValue: number, format: Format): string {
  return pValue < 0.001 ? `below ${format.number(0.001)}` : format.number(pValue, 3);
}

/** Where the same readings, only counted, say something else than the verdict; null where they do not. */
export function attributesCaution({ attributes }: Detail, { accepted }: CharacteristicResult, { format }: Speak): string | null {
  if (attributes?.disagrees !== true) return null;
  const { outside, plan, outcome } = attributes;
  if (accepted) return `by attributes ${format.count(outside)} outside ${plan === undefined ? 'would not do' : `is more than Ac ${format.count(plan.ac)}`}: the two views disagree`;
  return outcome === 'accepted' && plan !== undefined && outside > 0
    ? `by attributes ${format.count(outside)} outside would be accepted to Ac ${format.count(plan.ac)}: the two views disagree`
    : 'no reading is outside, so by attributes nothing is found: the two views disagree';
}

/** The test for being normal in one sentence, whatever it showed; empty on slips that did not ask. */
export function normalityView(detail: Detail, speak: Speak): string {
  const { normality } = detail;
  if (normality?.says === 'fits') return `The readings look normal: Shapiro–Wilk W ${speak.format.number(normality.statistic, 3)}, p ${smallP(normality.pValue, speak.format)}`;
  const caution = normalityCaution(detail, speak);
  return caution === null ? '' : `${caution.charAt(0).toUpperCase()}${caution.slice(1)}`;
}

/** The same readings as attributes, in one sentence; empty on slips that did not ask. */
export function attributesView({ attributes, summary }: Detail, { format }: Speak): string {
  if (attributes === undefined) return '';
  const { outside, plan, outcome, disagrees } = attributes;
  const seen = `By attributes: ${format.count(outside)} of ${format.count(summary.n)} outside`;
  const held = plan === undefined ? '' : `, against n ${format.count(plan.sampleSize)}, Ac ${format.count(plan.ac)} of the same lot and AQL (letter ${plan.letter}): ${{ accepted: 'accepted', rejected: 'rejected', open: 'not decided by so few' }[outcome]}`;
  return `${seen}${held}. ${disagrees ? 'The two views disagree.' : 'The two views do not disagree.'}`;
}
