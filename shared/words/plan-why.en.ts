/** How sure a source is. */
export type SourceTag = 'seen' | 'memory' | 'computed' | 'derived' | 'practice' | 'plant';

/** Why a number of a compared plan is what it is: clause, table, formula, source. Figures come in written. */
export const planWhyWords = {
  ask: (name: string, letter: string, shown: string) => `${name}, plan ${letter}: ${shown}. Why this number?`,
  heading: (name: string, letter: string) => `Why this number? ${name}, plan ${letter}`, close: 'Close',
  labels: { clause: 'Clause', table: 'Table', row: 'Row', column: 'Column', arrow: 'Arrow', formula: 'Formula', inputs: 'Put in', rule: 'Rule', source: 'Source' },
  tags: { seen: 'seen', memory: 'from memory', computed: 'computed here', derived: 'derived here', practice: 'common practice, no source', plant: 'the plant’s own' } satisfies Record<SourceTag, string>,
  excerpt: { caption: (table: string, aql: string) => `Table ${table}, column AQL ${aql}`, letter: 'Letter', size: 'Sample', cell: 'Ac / Re', way: 'Way', begins: 'begins here', ends: 'this plan', passed: 'arrow passed', down: '↓', up: '↑', single: 'use single', double: 'use double', none: '–', pair: (ac: string, re: string) => `${ac}/${re}`, notYet: '#' },
  table: {
    clause: 'MIL-STD-105E 4.9.3 and 4.9.4: the letter comes from lot size and level, the plan from the master table; an arrow is followed to the first plan, and the sample size is that of its row.',
    several: '4.10.1.2 and 4.10.1.3: Ac and Re of each sample are held against all found so far. “#” means acceptance is not possible at that sample.', gap: '4.10.1.4: found between Ac and Re, the lot is accepted and normal inspection follows.',
    row: (lot: string, level: string, letter: string) => `Lot of ${lot}, level ${level}: Table I gives letter ${letter}.`, column: (aql: string) => `AQL ${aql}`,
    none: (letter: string) => `None: the cell of ${letter} holds a plan.`, down: (from: string, to: string) => `From ${from} the arrow points down; the first plan stands at ${to}.`, up: (from: string, to: string) => `From ${from} the arrow points up; the first plan stands at ${to}.`,
    whole: (table: string, lot: string) => `The table asks for ${table} pieces; the lot has ${lot}, so every piece is looked at.`, onePiece: 'A lot of one piece stands in no table: the piece is looked at, Ac 0.',
    instead: { useSingle: 'The cell says to use the single plan.', useDouble: 'The cell says to use the double plan.', noMultipleReduced: 'No table of reduced multiple plans is held; the double one stands in.' },
    letters: 'MIL-STD-105E Table I (= ISO 2859-1:1999 Table 1)', master: (table: string) => `MIL-STD-105E Table ${table}`, own: (id: string) => `The plant’s own copy, ${id}`,
    masterHow: { 'II-A': 'AQL 0.65 to 15 read; other columns from memory and by the diagonal rule', 'II-B': 'rows A to L at AQL 0.65 to 15 read; the rest from memory and by the diagonal rule', 'II-C': 'throughout', 'III-A': 'throughout; compared with the single plans by computation', 'III-B': 'throughout; compared with the single plans by computation', 'III-C': 'throughout; compared with the single plans by computation', 'IV-A': 'the plans equal to single Ac 5, 7, 10, 14, 21 read in part', 'IV-B': 'the plans equal to single Ac 5, 7, 10, 14, 21 read in part', 'IV-C': 'missing' },
  },
  isolated: {
    rule: 'Smallest sample of this very lot that accepts at LQ no more often than β; drawn without replacement.', zero: 'Ac is 0 by choice: a single nonconforming piece rejects the lot.', ac: 'Ac is the smallest that accepts a lot at a tenth of LQ with 90 % or more. This rule is ours, not the standard’s.',
    formula: 'Pa = Σ C(D, d) · C(N − D, n − d) / C(N, n),  d = 0 … Ac,  with D = N · LQ rounded up', inputs: (n: string, lot: string, d: string, ac: string, risk: string, beta: string) => `N ${lot}, D ${d}, n ${n}, Ac ${ac}: Pa = ${risk} % ≤ β ${beta} %`,
    idea: 'Idea of ISO 2859-2 procedure A', law: 'Hypergeometric law: Johnson, Kemp & Kotz, Univariate Discrete Distributions, ch. 6', plan: 'n by bisection on the exact law',
  },
  points: {
    rule: 'Smallest plan whose curve passes both points: p₁ accepted with 1 − α or more, p₂ with β or less.', double: 'Both samples have the same size.', formula: 'Pa(p₁) ≥ 1 − α  and  Pa(p₂) ≤ β,  found counts hypergeometric in this lot (p₁ · N rounded down, p₂ · N rounded up)',
    inputs: (p1: string, at1: string, p2: string, at2: string) => `Pa(${p1} %) = ${at1} %;  Pa(${p2} %) = ${at2} %`, law: 'Two-point design: NIST/SEMATECH e-Handbook 6.2.3.2 and 6.2.4', plan: 'by exact search, smallest n first',
  },
  sequential: {
    rule: 'Piece by piece: accept on or below slope · n − h₁, reject on or above slope · n + h₂. Cut off so that it ends.', formula: 'G = ln(p₂(1 − p₁) / (p₁(1 − p₂)))\nh₁ = ln((1 − α)/β)/G\nh₂ = ln((1 − β)/α)/G\nslope = ln((1 − p₁)/(1 − p₂))/G',
    inputs: (h1: string, h2: string, slope: string, n: string, ac: string) => `h₁ ${h1}, h₂ ${h2}, slope ${slope}; cut off at ${n} pieces with Ac ${ac}`, law: 'Wald, Sequential Analysis (1947), ch. 5; NIST/SEMATECH e-Handbook 6.2.6', cut: 'Cut-off: ISO 28591 idea',
  },
  measured: {
    clause: 'MIL-STD-414 B: accept when (limit − mean) / s is k or more, or the estimated percent outside is M or less.', row: (lot: string, level: string, letter: string) => `Lot of ${lot}, level ${level}: Table A-2 gives letter ${letter}.`, tables: (severity: string) => `Tables A-2, B-1 and B-3, ${severity} inspection`, column: (aql: string) => `AQL ${aql} %`,
    other: (aql: string) => `The other limit has AQL ${aql} %: both are read in the row of the larger letter, so that one sample serves both.`,
    sigma: 'σ-method: with σ known fewer pieces tell the same; n and k as the engine’s table or rule for σ gives them.', points: 'Smallest n with a k for which both points hold.', formulaS: 'Pa(p) = P(T ≥ k√n),  T non-central t, n − 1 degrees of freedom, non-centrality √n · z(1 − p)', formulaSigma: 'Pa(p) = Φ(√n (z(1 − p) − k))',
    inputs: (n: string, k: string, p: string, accepted: string) => `n ${n}, k ${k}: Pa(${p} %) = ${accepted} %`, k: 'MIL-STD-414 Table B-1: 108 of 195 k read, the rest', m: 'MIL-STD-414 Table B-3, all M', laws: { s: 'Non-central t: Owen (1968)', sigma: 'Lieberman & Resnikoff, JASA 50 (1955) 457' }, letters: 'MIL-STD-414 Table A-2, four cells confirmed by examples, the rest',
  },
  risk: {
    laws: { binomial: 'Found counts follow the binomial law: P(d) = C(n, d) pᵈ (1 − p)ⁿ⁻ᵈ', hypergeometric: 'Found counts follow the hypergeometric law for D = round(p · N) in the lot', poisson: 'Found counts follow the Poisson law with mean n · p', measured: 'The characteristic is normal; one limit; exact by the non-central t (σ known: normal)' },
    lawSource: 'Johnson, Kemp & Kotz, Univariate Discrete Distributions', producer: 'α = 1 − Pa(p),  p the AQL or p₁', consumer: 'The p at which Pa(p) = 10 %', atLq: 'β = Pa(p),  p the LQ or p₂', single: 'Pa = Σ P(d),  d = 0 … Ac', several: 'Pa = sum over all ways through the samples that end in acceptance', sequential: 'Pa = sum over all paths between the two lines that end on acceptance',
    aoql: 'AOQL = largest AOQ(p)\nAOQ = p · Σ Pᵢ · (N − mᵢ) / N,  Pᵢ the chance to accept when mᵢ pieces were looked at', aoqSorted: 'Rejected lots are sorted piece by piece; nonconforming pieces found are replaced by good ones.', aoqOneLot: 'In one lot of N with D nonconforming, Pᵢ are those of D − 1 in N − 1: a piece that is left was in no sample.', lotOf: (lot: string, rest: string) => `N ${lot};  ${rest}`, asn: 'ASN = Σ pieces of each sample × probability of coming to it; samples once begun are finished', asnSequential: 'ASN = mean number of pieces until a line is crossed or the cut-off', asnFixed: 'Every lot takes n pieces.', ati: 'ATI = pieces looked at where the lot is accepted, N where it is not, weighed by their probabilities',
    year: 'Pieces a year = lots a year × ASN(p)', hours: 'Hours = pieces a year × minutes a piece / 60', used: 'Looking uses the piece up, so pieces used up = lots a year × ASN(p)', sorted: 'Lots a year × ATI(p): every piece of a rejected lot is sorted',
    at: (p: string, value: string) => `at p ${p} %: ${value}`, atAccepted: (p: string, accepted: string) => `Pa(${p} %) = ${accepted} %`, product: (factors: string, value: string) => `${factors} = ${value}`, exact: 'exact, relative error 1e-10 or better', aoqSource: 'NIST/SEMATECH e-Handbook 6.2.3.2; MIL-STD-105E 11.3 and 11.4', asnSource: 'NIST/SEMATECH e-Handbook 6.2.4', times: ' × ', minutes: (count: string) => `${count} min`, lots: (count: string) => `${count} lots`, pieces: (count: string) => `${count} pieces`,
  },
  scheme: {
    rule: 'Normal to tightened: 2 of 5 or fewer lots in a row not accepted. Back to normal: 5 accepted in a row. Discontinued: 5 not accepted on tightened. Reduced: by the switching score or the limit numbers, where allowed.', formula: 'Each lot moves a Markov chain over the states of the switching rules; the shares are its long-run distribution, acceptance and ASN are weighed by them',
    inputs: (p: string, rule: string) => `p ${p} %, rule ${rule}`, clause: { 'ISO 2859-1': 'ISO 2859-1:1999, 9.3 and 9.4', 'MIL-STD-105E': 'MIL-STD-105E 4.7 and 4.8, Table VIII' }, chain: 'shares worked out from the very switching rules the floor follows',
    simulated: 'Each lot’s found count is drawn by chance from the seed; the very switching rules of the floor decide how the next is inspected. The same seed gives the same year.', seed: (seed: string, p: string) => `seed ${seed}, p ${p} %`,
  },
};
export type PlanWhyWords = typeof planWhyWords;
