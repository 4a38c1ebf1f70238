import type { Stage } from '../sampling/attributes/index.ts';
import type { Measured } from '../traveller/index.ts';

/** How a lot's results are put on its certificate. */
export const certificateEntryWords = {
  specification: (plan: string, version: number) => `Inspection plan ${plan}, version ${version}`,
  classOf: (characteristic: string, findingClass: string) => `${characteristic}, ${findingClass}`,
  attributesPlan: (names: Readonly<Record<'double' | 'multiple', string>>, samples: 'double' | 'multiple' | null, table: string, level: string, letter: string, severity: string, aql: string) => `${samples === null ? 'ISO 2859-1 single' : `MIL-STD-105E ${names[samples]}, Table ${table}`}, ${level}, ${letter}, ${severity}, AQL ${aql}`,
  /** Sizes with their Ac/Re; alike sizes are written once. */
  stages: (stages: readonly Stage[]) => {
    const pairs = stages.map(({ ac, re }) => `${ac ?? '#'}/${re}`);
    const size = stages[0]?.sampleSize ?? 0;
    return stages.every(({ sampleSize }) => sampleSize === size) ? `${stages.length} × ${size}: ${pairs.join(' ')}` : stages.map(({ sampleSize }, at) => `${sampleSize}: ${pairs[at] ?? ''}`).join(', ');
  },
  onSample: (sample: number) => `on sample ${sample}`,
  ownTable: (table: string) => `own table ${table}`,
  riskAtLq: (percent: string) => `exactly ${percent} %`,
  lines: (slope: string, h1: string, h2: string, most: number) => `accept to ${slope} n − ${h1}, reject from ${slope} n + ${h2}, at most ${most}`,
  skipLotPlan: (clearance: number, oneIn: number, lots: readonly string[]) => `skip-lot SkSP-2: after ${clearance} accepted${lots.length === 0 ? '' : ` (${lots.length > 6 ? `${lots[0] ?? ''} … ${lots.at(-1) ?? ''}` : lots.join(', ')})`}, one in ${oneIn} inspected`,
  variablesPlan: (sigma: string | null, level: string, letter: string, severity: string, aql: string) => `${sigma === null ? 'MIL-STD-414 B s-method' : `σ-method (σ ${sigma}) derived from MIL-STD-414 B`}, ${level}, ${letter}, ${severity}, AQL ${aql}`,
  variablesPoints: (sigma: string | null, p1: string, producerRisk: string, p2: string, consumerRisk: string) => `by variables, ${sigma === null ? 's-method' : `σ-method (σ ${sigma})`}, p1 ${p1} % (risk ${producerRisk}), p2 ${p2} % (risk ${consumerRisk})`,
  sideOf: (characteristic: string, side: string) => `${characteristic}, ${side === 'lower' ? 'below' : side === 'upper' ? 'above' : 'below and above'}`,
  variablesNote: (gate: string, characteristic: string, said: string) => `${gate}, ${characteristic}: ${said}.`,
  everyPiecePlan: (percent: string) => `every piece, at most ${percent} % ejected`,
  intervalPlan: (looks: number) => (looks === 1 ? '1 look, none found' : `${looks} looks at intervals, none found`),
  eachPlan: (n: number) => (n === 1 ? '1 within the limits' : `each of ${n} within the limits`),
  meanPlan: (n: number) => `mean of ${n} within the limits`,
  gradePlan: (n: number) => (n === 1 ? 'grade of 1' : `the worst of ${n} counts`),
  oncePlan: 'confirmed once',
  mean: 'mean',
  ejected: 'ejected',
  quotient: 'Q',
  estimated: 'p',
  decisionRules: { simple: 'simple', guardedAcceptance: 'guarded', guardedRejection: 'rejection' } satisfies Record<Measured['decisionRule'], string>,
  corrected: (gate: string, characteristic: string, ordinal: number | null) => (ordinal === null ? `${gate}, ${characteristic}` : `${gate}, ${characteristic}, place ${ordinal}`),
  withdrawn: 'withdrawn',
  again: (how: string, charge: string, before: number) => `The lot was ${how} in charge ${charge}; the verdict of that charge stands as a re-inspection, after ${before === 1 ? 'one attempt' : `${before} attempts`} before.`,
  failedIn: (charge: string, positions: string, near: string) => `In charge ${charge} the test piece failed at ${positions}. ${near}`,
  despite: (charge: string, name: string, reason: string) => `Charge ${charge}, ${name}: confirmed in spite of the log, or without one: ${reason}.`,
  blendOf: (batch: string, parts: readonly string[]) => `Powder batch ${batch} is a blend of ${parts.join(', ')}.`,
  furtherEntries: (rows: number) => `${rows} further entries of this kind stand on the travellers and not on this paper.`,
};
