import type { Measured } from '../traveller/index.ts';

/** How a lot's results are put on its certificate. */
export const certificateEntryWords = {
  specification: (plan: string, version: number) => `Inspection plan ${plan}, version ${version}`,
  classOf: (characteristic: string, findingClass: string) => `${characteristic}, ${findingClass}`,
  attributesPlan: (names: Readonly<Record<'double' | 'multiple', string>>, samples: 'double' | 'multiple' | null, level: string, letter: string, severity: string, aql: string) => `${samples === null ? 'ISO 2859-1 single' : `MIL-STD-105E ${names[samples]}`}, ${level}, ${letter}, ${severity}, AQL ${aql}`,
  onSample: (plan: string, sample: number) => `${plan}, on sample ${sample}`,
  isolatedPlan: (source: string, sample: number | null) => (sample === null ? source : `${source}, on sample ${sample}`),
  skipLotPlan: (clearance: number, oneIn: number) => `skip-lot SkSP-2: after ${clearance} accepted, one in ${oneIn} inspected`,
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
  decisionRules: { simple: 'simple', guardedAcceptance: 'guarded' } satisfies Record<Measured['decisionRule'], string>,
  corrected: (gate: string, characteristic: string, ordinal: number | null) => (ordinal === null ? `${gate}, ${characteristic}` : `${gate}, ${characteristic}, place ${ordinal}`),
  withdrawn: 'withdrawn',
  furtherEntries: (rows: number) => `${rows} further entries of this kind stand on the travellers and not on this paper.`,
};
