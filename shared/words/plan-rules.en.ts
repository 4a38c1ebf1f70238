import type { AskedNote } from '../traveller/plan/asked-at-size.ts';

/** Sampling rules and limits of a plan as sentences, on the screen and on paper. Figures come in written. */
export const planRuleWords = {
  rules: {
    attributes: (samples: 'single' | 'double' | 'multiple', level: string, aql: string, rule: string) => `${{ single: 'Single', double: 'Double', multiple: 'Multiple' }[samples]} sampling by attributes, level ${level}, AQL ${aql}; switching by ${rule}`,
    nonconformities: 'nonconformities per 100 pieces are counted',
    skipLot: (clearance: string, oneIn: string) => `after ${clearance} accepted in a row, one lot in ${oneIn} is inspected`,
    ownTable: (severity: string, id: string) => `${severity} by our own table ${id}`,
    classAql: (findingClass: string, aql: string, perHundred: boolean) => `${findingClass} ${aql}${perHundred ? '' : ' %'}`,
    limitingQuality: (lq: string, risk: string) => `For lots on their own: limiting quality ${lq}, accepted with at most ${risk} %`,
    zeroAcceptance: (lq: string, risk: string) => `Ac 0 throughout: limiting quality ${lq}, accepted with at most ${risk} %`,
    twoPoint: (double: boolean, points: string) => `Smallest ${double ? 'double' : 'single'} plan through two points; ${points}`,
    sequential: (points: string) => `Piece by piece (sequential); ${points}`,
    classPoints: (findingClass: string, points: string) => `${findingClass}: ${points}`,
    points: (p1: string, producer: string, p2: string, consumer: string) => `${p1} % refused with at most ${producer} %, ${p2} % accepted with at most ${consumer} %`,
    variables: (level: string, aql: string) => `By variables, level ${level}, AQL ${aql}`,
    variablesPoints: (points: string) => `By variables, smallest plan through two points: ${points}`,
    separate: (lower: string, upper: string) => `${lower} % below, ${upper} % above, each limit on its own`, percent: (value: string) => `${value} %`,
    sMethod: 's-method', sigmaMethod: (sigma: string, unit: string) => `σ-method, σ = ${sigma} ${unit}`, formK: 'form k', formM: 'form M',
    fixed: (n: string, mean: boolean) => `${n} pieces, ${mean ? 'their mean' : 'each'} within the limits`,
    barrels: (barrels: string, each: string, mean: boolean) => `${barrels} barrels drawn, ${each} from each, ${mean ? 'the mean' : 'every result'} within the limits`,
    positions: (positions: string, each: string, mean: boolean) => `At ${positions}, ${each} from each, ${mean ? 'the mean' : 'every result'} within the limits`,
    everyPiece: (percent: string, holds: boolean) => `Every piece; those outside are ejected, at most ${percent} %${holds ? '; a drift holds the lot' : ''}`,
    interval: (n: string, every: string, minutes: string | null, grace: string | null) => `${n} pieces each time ${every} more are made${minutes === null ? '' : ` or after ${minutes} min`}; none found${grace === null ? '' : `; missed after ${grace} min`}`,
    once: 'Confirmed once',
  },
  /** What a rule asks of a lot of some size, line by line. */
  asked: {
    columns: { class: 'Class', severity: 'Inspection', letter: 'Letter', n: 'Pieces', samples: 'Samples, with Ac and Re', rest: 'Judged by', note: 'Note' },
    sample: (n: string, ac: string, re: string) => `n\u00a0${n}\u00a0\u00a0Ac\u00a0${ac}\u00a0\u00a0Re\u00a0${re}`, noAcceptance: '#', k: (k: string) => `k\u00a0${k}`, m: (m: string) => `M\u00a0${m}\u00a0%`,
    lines: (slope: string, h1: string, h2: string) => `accept to ${slope}\u00a0n − ${h1}, reject from ${slope}\u00a0n + ${h2}`, ofLimit: { lower: 'lower limit', upper: 'upper limit' }, arrow: (from: string, to: string) => `arrow from ${from} to ${to}`,
    limitsOnly: 'within the limits', table: (name: string) => (name.includes(' ') ? name : `Table ${name}`), all: 'all',
  },
  notes: {
    everyPiece: 'every piece', notYet: '#: acceptance is not possible yet at this sample', gap: 'between Ac and Re: accept this lot, back to normal', unreachable: 'no plan at this size', noReducedVariables: 'no reduced plan is held for variables; normal is used',
    measuredWhole: 'below three pieces each is measured and lies within the limits', cutOff: 'looked at piece by piece; cut off at this many', skipLot: 'after a run of good lots some are passed over', noDesign: 'no plan that can be worked meets both points for this lot',
    reducedFromTableIIC: 'reduced plans by MIL-STD-105E Table II-C; ISO 2859-1 Table 2-C could not be confirmed', doubleFromMemory: 'double tables written from memory, checked by computation only',
    multipleFromMemory: 'multiple tables written from memory, seen in part', cellUnconfirmed: 'this cell is one of the least certain: check it against your copy of the standard', noMultipleReduced: 'no table of reduced multiple plans is held; the double one is used',
    useSingle: 'the table says to use the single plan', useDouble: 'the table says to use the double plan', ownTable: 'from our own copy of the table',
  } satisfies Record<AskedNote, string>,
  limits: {
    target: (value: string) => `target ${value}`, press: (percent: string) => `from the powder: target weight ± ${percent} %`, pressHeight: (percent: string) => `from the powder: green height ± ${percent} %`,
    carried: { pressWeight: 'from the powder: target weight, with the room that the sintered limits of the thickness leave', greenHeight: 'from the powder: green height, with the sintered limits of the thickness' },
    grade: (worst: string, scale: string) => `${worst} or better of ${scale}`, kindsOf: (findingClass: string, names: string) => `${findingClass}: ${names}`,
    guardFactor: (factor: string) => `guard band ${factor} U`,
    crater: (ball: string) => `from two crater diameters, ball ${ball} mm`, craterLayers: (ball: string, layers: string, diameters: string) => `from one crater with ${diameters} diameters through ${layers} layers, ball ${ball} mm`, craterLayer: (of: string, layer: string) => `layer ${layer} from the surface, from the crater at ${of}`,
    archimedes: 'from the mass in air, the mass in water and the water’s temperature', saturation: (unit: string, cobalt: string) => `read in ${unit}, as percent of what ${cobalt} % cobalt would give pure`, saturationWarns: (low: string | null, high: string | null) => `warned of ${[...(low === null ? [] : [`below ${low} % (towards η phase)`]), ...(high === null ? [] : [`above ${high} % (towards free carbon)`])].join(' and ')}`,
    reference: { adhesion: 'compared with drawn pictures of adhesion', porosityA: 'compared with drawn pictures of A pores', porosityB: 'compared with drawn pictures of B pores', porosityC: 'compared with drawn pictures of free carbon' },
    shrinkage: (die: string) => `from the piece and its die, ${die} mm`, shrinkageRead: (green: string) => `from the green and the sintered size of the piece, pressed to about ${green} mm`,
  },
};
export type PlanRuleWords = typeof planRuleWords;
