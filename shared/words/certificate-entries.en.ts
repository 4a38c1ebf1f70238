import type { Measured } from '../traveller/index.ts';

/** How a lot's results are put on its certificate. */
export const certificateEntryWords = {
  specification: (plan: string, version: number) => `Inspection plan ${plan}, version ${version}`,
  classOf: (characteristic: string, findingClass: string) => `${characteristic}, ${findingClass}`,
  attributesPlan: (level: string, letter: string, severity: string, aql: string) => `ISO 2859-1 single, level ${level}, letter ${letter}, ${severity}, AQL ${aql}`,
  variablesPlan: (level: string, letter: string, severity: string, aql: string) => `s-method (MIL-STD-414 B), level ${level}, letter ${letter}, ${severity}, AQL ${aql}`,
  everyPiecePlan: (percent: string) => `Every piece, at most ${percent} % ejected`,
  intervalPlan: (looks: number) => `Looks at intervals, ${looks} in all, none found`,
  eachPlan: (n: number) => `Fixed sample of ${n}, each within the limits`,
  meanPlan: (n: number) => `Fixed sample of ${n}, mean within the limits`,
  gradePlan: (n: number) => `Fixed sample of ${n}, the worst counts`,
  oncePlan: 'Confirmed once',
  outside: 'outside',
  mean: 'mean',
  ejected: 'ejected, %',
  inLooks: 'in looks',
  quotient: 'Q',
  estimated: '% outside',
  measuredOn: (characteristic: string, subject: string) => `${characteristic} (${subject})`,
  decisionRules: { simple: 'Simple acceptance', guardedAcceptance: 'Guarded acceptance, limits drawn in by U' } satisfies Record<Measured['decisionRule'], string>,
  corrected: (gate: string, characteristic: string, ordinal: number | null) => (ordinal === null ? `${gate}, ${characteristic}` : `${gate}, ${characteristic}, place ${ordinal}`),
  withdrawn: 'withdrawn',
  order: (order: string) => `Order ${order}.`,
  reducedNote: 'Ac and Re of reduced inspection are those of MIL-STD-105E Table II-C; the table of ISO 2859-1 for reduced inspection has not been compared with its own text.',
  furtherEntries: (rows: number) => `${rows} further entries of this kind stand on the travellers and not on this paper.`,
};
