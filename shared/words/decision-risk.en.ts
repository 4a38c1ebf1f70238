import type { DecisionRisk } from '../traveller/index.ts';
import type { Format } from './format.ts';

/** What is said about the risk of a wrong decision. */
export const decisionRiskWords = {
  key: 'How sure?', of: (name: string) => `How sure is ${name}?`, heading: 'How sure is each decision?', how: 'How?', hide: 'Hide how',
  consumer: 'Wrongly accepted', producer: 'Wrongly rejected', consumerOf: 'Of those accepted', producerOf: 'Of those rejected', capability: 'Tolerance to 2 U', judged: 'Judged within',
  ofPieces: 'of all pieces measured', none: '–',
  unknown: {
    workedOut: 'This value is worked out from what is read; the gauge’s uncertainty is that of a length, not of the value.', noLimit: 'There is no limit yet to decide by.', noUncertainty: 'No uncertainty is stated for the gauge.',
    noSpread: 'There are too few readings to know the process by.', gaugeExplainsAll: 'The readings scatter no more than the gauge does by itself: what the pieces do cannot be told from it.',
  } satisfies Record<Extract<DecisionRisk, { known: false }>['why'], string>,
  process: { recent: (lots: number, n: string, ids: string) => `Process: the last ${lots === 1 ? 'lot' : `${lots} lots`} of this product, ${n} readings (${ids}).`, here: (n: string) => `Process: the ${n} readings of this lot so far.`, given: 'Process: as entered.' },
  inputs: {
    mean: 'Mean of the readings', s: 's of the readings', u: 'Standard uncertainty u = U / k', deviation: 's of the pieces, √(s² − u²)', tolerance: 'Tolerance', rule: 'Rule',
  },
  formula: [
    'RC = ∫ outside the tolerance g(y) · P(accepted | y) dy, RP = ∫ within it g(y) · P(rejected | y) dy',
    'g is the normal density of the pieces; P counts a normal reading of y with u within the limits as judged.',
  ],
  source: 'JCGM 106:2012, clause 9.5 (from memory); checked against 97 integrals reckoned apart to 30 digits. It speaks of single pieces measured once, not of the sampling plan.',
  printed: (consumer: string, producer: string) => `For pieces like these, each measured once, ${consumer} of all are wrongly accepted and ${producer} wrongly rejected (JCGM 106).`,
  printedUnknown: 'The risk of a wrong decision cannot be told from these readings.',
  note: (gate: string, name: string, rule: string, factor: string | null, limits: string, uncertainty: string, risk: string) => `${gate}, ${name}: ${rule}${factor === null ? '' : `, guard band ${factor} U`}; judged within ${limits}, ${uncertainty}. ${risk}`,
  whatIf: { title: 'What if?', U: 'Gauge U', k: 'k', mean: 'Process mean', s: 's of the readings' },
};

/** A risk as percent with two digits that count; what is smaller than one in a million is said so. */
export function riskText(risk: number | null, format: Format): string {
  if (risk === null) return decisionRiskWords.none;
  if (risk < 1e-6) return '< 0.0001 %';
  const percent = 100 * risk;
  return `${format.number(percent, Math.min(4, Math.max(0, 1 - Math.floor(Math.log10(percent)))))} %`;
}
