/** What the comparison of plans says. Figures come in written. */
export const planCompareWords = {
  title: 'Compare plans', lead: 'Nothing here changes a plan in force. The address holds the whole comparison and can be passed on.',
  back: (plan: string) => `Back to ${plan}`, tab: 'Compare', open: 'Compare', openNamed: (what: string) => `Compare plans for ${what}`,
  plan: (letter: string) => `Plan ${letter}`, add: 'Add a plan', remove: (letter: string) => `Take plan ${letter} out`, print: 'Print',
  rule: 'Chosen by',
  rules: {
    attributes: 'AQL, by attributes', limitingQuality: 'Limiting quality', zeroAcceptance: 'Zero acceptance', twoPointSingle: 'Two points, single', twoPointDouble: 'Two points, double',
    sequential: 'Two points, sequential', variables: 'AQL, by variables', variablesPoints: 'Two points, variables',
  },
  fields: {
    lot: 'Lot size', level: 'Level', aql: 'AQL', samples: 'Samples', severity: 'Inspection', variablesLevel: 'Level', variablesSeverity: 'Inspection', aqlOther: 'AQL, other limit', method: 'Method', lq: 'LQ, %', consumerRisk: 'Consumer’s β, %',
    p1: 'p₁, %', producerRisk: 'Producer’s α, %', p2: 'p₂, %',
  },
  samples: { single: 'single', double: 'double', multiple: 'multiple' }, methods: { s: 's-method', sigma: 'σ-method' },
  sameAql: 'the same, or none',
  aqlUnit: (aql: string, perHundred: boolean) => (perHundred ? `${aql} per 100` : `${aql} %`),
  wrong: {
    lot: 'A whole number from 1 to 1,000,000,000.', percent: 'Above 0, below 100.', risk: 'Above 0, below 100.', points: 'p₂ must be above p₁.', risks: 'Both risks together stay below 100 %.',
    positive: 'A number of 0 or more.', whole: 'A whole number of 1 or more.', lots: 'A whole number from 1 to 2,000.', seed: 'A whole number of 0 or more.', spread: '0, or less than √(p(1 − p)); 0 for nonconformities.', resume: 'A whole number from 0 to 2,000.',
  },
  noPlan: 'No plan for these numbers.', noTablePlan: 'The tables hold no plan for these numbers.', noDesign: 'No plan of this kind meets both points.',
  perHundredOnly: 'AQLs above 10 count nonconformities per 100: choose “nonconformities” for the chart.', lotTooSmall: 'By variables a lot has 3 pieces or more.',
  names: {
    attributes: (samples: string, severity: string, aql: string) => `AQL ${aql}, ${samples}, ${severity}`, limitingQuality: (lq: string) => `LQ ${lq}\u00a0%`, zeroAcceptance: (lq: string) => `Ac 0 at LQ ${lq}\u00a0%`,
    twoPoint: (samples: string, p1: string, p2: string) => `${p1}\u00a0% / ${p2}\u00a0%, ${samples}`, sequential: (p1: string, p2: string) => `${p1}\u00a0% / ${p2}\u00a0%, sequential`, variables: (method: string, aql: string, severity: string) => `variables ${method}, AQL ${aql}\u00a0%, ${severity}`,
    otherLimit: (aql: string) => `, other limit AQL ${aql}\u00a0%`, variablesPoints: (method: string, p1: string, p2: string) => `variables ${method}, ${p1}\u00a0% / ${p2}\u00a0%`,
  },
  brief: {
    sample: (n: string) => `n ${n}`, numbers: (ac: string, re: string) => `Ac ${ac} · Re ${re}`, k: (k: string) => `k ${k}`, m: (percent: string) => `M ${percent} %`, upTo: (n: string) => `n to ${n}`,
    lines: (h1: string, h2: string, slope: string) => `h₁ ${h1} · h₂ ${h2} · slope ${slope}`, plus: ' + ', times: (count: string, n: string) => `${count} × ${n}`, then: ', ', notYet: '#',
    direct: (letter: string) => `Letter ${letter}, no arrow`, down: (from: string, to: string) => `Letter ${from} ↓ ${to}: arrow down`, up: (from: string, to: string) => `Letter ${from} ↑ ${to}: arrow up`, worked: 'Worked out, no table', everyPiece: 'every piece of the lot', allOfIt: 'Every piece of the lot',
  },
  notes: {
    reducedFromTableIIC: 'Reduced numbers from MIL-STD-105E Table II-C, written from memory; the later standard’s table could not be confirmed.', doubleFromMemory: 'Double tables III written from memory and checked by computation only: unconfirmed.',
    multipleFromMemory: 'Multiple tables IV written from memory, part of their plans seen: unconfirmed.', cellUnconfirmed: 'This cell is among the least certain of its table.', noMultipleReduced: 'No table of reduced multiple plans is held; the double one is used.',
    useSingle: 'The table says: use the single plan.', useDouble: 'The table says: use the double plan.', ownTable: 'From the plant’s own copy of the table.', variablesFromMemory: 'MIL-STD-414 tables: part of k seen, the rest and all M from memory.',
    ownLimit: 'Each limit has its own AQL. Shown: everything outside lies beyond the limit with this plan’s AQL.', cutOff: 'Cut off so that it ends; the cut-off rule is from memory.',
  },
  curve: 'Curve', curves: { acceptance: 'Acceptance', aoq: 'AOQ', asn: 'ASN', ati: 'ATI' },
  curveAxis: { acceptance: 'Probability of acceptance', aoq: 'Average outgoing quality, %', asn: 'Average sample number', ati: 'Average total inspection, pieces' },
  curveCaption: { acceptance: 'Operating characteristic', aoq: 'Average outgoing quality, rejected lots sorted', asn: 'Average sample number', ati: 'Average total inspection, rejected lots sorted' },
  model: 'Counted', models: { binomial: 'Pieces of a process (binomial)', hypergeometric: 'Pieces of one lot (hypergeometric)', poisson: 'Nonconformities per 100 (Poisson)' },
  axis: { binomial: 'p, percent nonconforming', hypergeometric: 'p, percent nonconforming in the lot', poisson: 'nonconformities per 100 pieces' },
  upTo: 'Axis to, %', upToHint: 'Empty: as far as needed',
  chart: { cursor: 'Quality read out: arrow keys move along the axis', back: 'One step better', on: 'One step worse', at: (percent: string) => `p ${percent} %`, none: '–', producer: 'producer’s point: AQL or p₁', consumer: 'consumer’s point: LQ or p₂; else 10 % accepted' },
  percent: (value: string) => `${value}\u00a0%`, below: (value: string) => `< ${value}`, above: (value: string) => `> ${value}`, tableOf: (curve: string) => `${curve}, as a table`, pColumn: 'p, %', planColumn: (letter: string, name: string) => `${letter} · ${name}`,
  working: (done: string, all: string) => `Working out: ${done} of ${all}`, workingLabel: 'Working out the curves', failed: { happened: 'The curves could not be worked out.', next: 'Change a number, or take the last plan out.' }, empty: { happened: 'No plan can be drawn yet.', next: 'Put right what is marked at the plans above.' },
  figures: {
    heading: 'Risks and effort', caption: 'Each figure opens its reason', figure: 'Figure', expected: 'Quality expected, %', lots: 'Lots a year', minutes: 'Minutes a piece', destructive: 'Looking uses the piece up', yes: 'yes', no: 'no',
    rows: {
      sample: 'n of each sample', numbers: 'Ac / Re, or k', letter: 'Letter', producer: 'Producer’s risk', consumer: 'Quality accepted with 10\u00a0%', atLq: 'Accepted at LQ or p₂', aoql: 'AOQL', asnAtAql: 'ASN at AQL or p₁', acceptedExpected: 'Accepted at the quality expected',
      asnExpected: 'ASN at the quality expected', piecesYear: 'Pieces a year', hoursYear: 'Hours a year', usedYear: 'Pieces used up a year', sortedYear: 'Pieces a year with rejected lots sorted',
    },
    riskAt: (risk: string, p: string) => `${risk}\u00a0% at ${p}\u00a0%`, at: (value: string, p: string) => `${value}\u00a0% at ${p}\u00a0%`, none: '–', hours: (hours: string) => `${hours}\u00a0h`,
  },
  scheme: {
    heading: 'The whole scheme', lead: (p: string) => `Long run at a steady ${p} %: normal, tightened, reduced and discontinued together.`, onlyTables: 'Switching belongs to plans by AQL and attributes. None of the plans above is one.',
    switching: 'Switching rule', reduced: 'Reduced inspection', resume: 'Lots until resumed', resumeHint: 'Pass uninspected after discontinuation', never: 'never', approximated: 'Marked ≈: the road to reduced inspection by limit numbers is approximated.', about: (value: string) => `≈ ${value}`, allowed: 'allowed, production steady', notAllowed: 'not used', caption: 'Behaviour of the scheme', rows: { accepted: 'Accepted', normal: 'Normal', tightened: 'Tightened', reduced: 'Reduced', discontinued: 'Discontinued', asn: 'ASN', aoq: 'AOQ', until: 'Lots to discontinuation' },
  },
  year: {
    heading: 'A simulated year', of: 'Plan', spread: 'Spread of p, %', spreadHint: '0: the same quality in every lot', seed: 'Seed', go: 'Simulate', again: 'Another seed', lots: 'Lots a year',
    caption: (letter: string, lots: string, p: string, seed: string) => `Plan ${letter}: ${lots} lots at ${p} %, seed ${seed}; one bar a lot`, notAccepted: 'not accepted', severities: { reduced: 'reduced', normal: 'normal', tightened: 'tightened', discontinued: 'discontinued: not inspected' },
    sum: { accepted: 'Accepted', notAccepted: 'Not accepted', pieces: 'Pieces looked at', normal: 'On normal', tightened: 'On tightened', reduced: 'On reduced', discontinued: 'Not inspected' }, ofLots: (count: string, share: string) => `${count} (${share} %)`,
    events: 'Lots not accepted and moves', noEvents: 'Every lot was accepted and inspection never moved.', columns: { lot: 'Lot', severity: 'Inspection', n: 'n', found: 'Found', what: 'What happened' }, rejected: 'not accepted', moved: (severity: string) => `from here on ${severity}`, done: (accepted: string, lots: string) => `${accepted} of ${lots} lots accepted.`,
  },
};
export type PlanCompareWords = typeof planCompareWords;
