import type { Basis, Characteristic, ClassPlan, Demand, Measured, Place } from '../traveller/index.ts';
import { piecesText } from './speak.ts';
import type { Speak } from './speak.ts';
import { variablesMethod, variablesSource } from './variables.en.ts';
import { say } from './words-for.ts';
import type { WordsFor } from './words-for.ts';

const basisWords: WordsFor<Basis, 'by', string, [Demand, Speak]> = {
  attributes: ({ classes }, { n }, speak) => {
    const { format, labels } = speak;
    const [first] = classes;
    if (first === undefined) return `Take ${piecesText(speak, n)}`;
    const { lotSize, letter, severity } = first.plan;
    const head = `Take ${format.count(n)} ${n >= lotSize ? `pieces, the whole lot` : `pieces of ${format.count(lotSize)}`}`;
    const alike = classes.every(({ plan }) => plan.letter === letter && plan.severity === severity && plan.sampleSize === n);
    if (!alike) return `${head}: ${classes.map((each) => ownPlan(each, n, speak)).join(' · ')}`;
    const aqls = classes.length === 1 ? format.number(first.plan.aqlPercent) : classes.map((each) => `${labels.findingClasses[each.class]} ${format.number(each.plan.aqlPercent)}`).join(' · ');
    return `${head}: letter ${letter}, ${labels.severities[severity]}, AQL ${aqls}`;
  },
  variables: ({ plan }, { n, characteristic }, speak) =>
    `Measure ${speak.format.count(n)} pieces of ${speak.format.count(plan.lotSize)}${wanted(characteristic, speak)}: ${variablesMethod(plan, characteristic.kind === 'measured' ? characteristic.unit : null, speak.format)}, ${variablesSource(plan, speak)}`,
  limits: ({ accept }, { n, characteristic, places }, speak) =>
    `Measure ${whatIsTaken(n, places, speak)}: ${accept === 'mean' ? 'the mean' : n === 1 ? 'it' : 'each'} to lie within ${limitsOf(characteristic, speak)}`,
  everyPiece: (_, { n, characteristic }, speak) => `Weigh every one of ${piecesText(speak, n)}: ${limitsOf(characteristic, speak)}`,
  interval: ({ everyPieces, looks }, { n }, speak) =>
    `Look at ${piecesText(speak, n)} each time ${speak.format.count(everyPieces)} are made: ${speak.format.count(looks)} ${looks === 1 ? 'look' : 'looks'}, accept none`,
  grade: (_, { n, characteristic, places }, speak) => `Rate ${whatIsTaken(n, places, speak)}: accepted to ${characteristic.kind === 'graded' ? characteristic.worstAccepted : ''}`,
  once: (_, { characteristic }) => `Confirm: ${characteristic.kind === 'confirmed' ? characteristic.statement : characteristic.name}`,
};

/** A class that looks at fewer pieces than are drawn, or under its own severity. */
function ownPlan({ class: each, plan }: ClassPlan, n: number, { format, labels }: Speak): string {
  const part = plan.sampleSize < n ? `the first ${format.count(plan.sampleSize)}` : `all ${format.count(n)}`;
  return `${labels.findingClasses[each]} ${part}, letter ${plan.letter}, ${labels.severities[plan.severity]}, AQL ${format.number(plan.aqlPercent)}`;
}

function whatIsTaken(n: number, places: readonly Place[], speak: Speak): string {
  const [first] = places;
  const count = speak.format.count(n);
  switch (first?.at) {
    case 'barrel': return `${count} ${n === 1 ? 'sample' : 'samples'} from ${speak.labels.barrels(barrelsIn(places), speak.format.count(barrelsIn(places)))}`;
    case 'position': return `${count} test ${n === 1 ? 'piece' : 'pieces'} of the charge`;
    case 'tray': case undefined: return piecesText(speak, n);
  }
}

function barrelsIn(places: readonly Place[]): number {
  return new Set(places.flatMap((each) => (each.at === 'barrel' ? [each.barrel] : []))).size;
}

function wanted(characteristic: Characteristic, speak: Speak): string {
  return characteristic.kind === 'measured' ? `, ${limitsOf(characteristic, speak)}` : '';
}

function limitsOf(characteristic: Characteristic, speak: Speak): string {
  return characteristic.kind === 'measured' ? measuredLimits(characteristic, speak) : characteristic.name;
}

/** The specification's limits of a measured characteristic: "4.71 … 4.81 mm". */
export function measuredLimits({ lower, upper, decimals, unit, decisionRule }: Measured, { format, labels }: Speak): string {
  const written = (limit: number | null): string | null => (limit === null ? null : format.number(limit, decimals));
  return `${labels.between(written(lower), written(upper))} ${unit}${decisionRule === 'guardedAcceptance' ? ', drawn in by U' : ''}`;
}

/** What is asked for: "Take 80 pieces of 1,000: letter J, normal, AQL critical 0.15 · major 0.65 · minor 2.5". */
export function demandSentence(demand: Demand, speak: Speak): string {
  return say<Basis, 'by', string, [Demand, Speak], Basis['by']>(basisWords, demand.basis.by, demand.basis, demand, speak);
}

const placeWords: WordsFor<Place, 'at', string, [Speak]> = {
  tray: ({ tray, position }, { format }) => `Tray ${format.count(tray)}, position ${format.count(position)}`,
  barrel: ({ barrel, nth }, { format }) => `Barrel ${format.count(barrel)}, sample ${format.count(nth)}`,
  position: ({ position, nth }, { format }) => `${position}, test piece ${format.count(nth)}`,
};

/** Where a piece to be taken is found: "Tray 3, position 12". */
export function placeSentence(place: Place, speak: Speak): string {
  return say<Place, 'at', string, [Speak], Place['at']>(placeWords, place.at, place, speak);
}
