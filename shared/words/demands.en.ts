import type { Basis, Characteristic, ClassPlan, Demand, Measured, Place } from '../traveller/index.ts';
import { isSequential, sampleTotals } from '../traveller/index.ts';
import { lotPlanNumbers, lotPlanSource } from './lot-plan.en.ts';
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
    const { lotSize } = first.plan;
    const several = classes.some(({ plan }) => isSequential(plan) || sampleTotals(plan).length > 1);
    const head = several ? `Take up to ${format.count(n)} pieces of ${format.count(lotSize)}` : `Take ${format.count(n)} ${n >= lotSize ? `pieces, the whole lot` : `pieces of ${format.count(lotSize)}`}`;
    if (several) return `${head}: ${classes.map((each) => `${labels.findingClasses[each.class]} ${lotPlanNumbers(each.plan, speak)} (${lotPlanSource(each.plan, speak)})`).join(' · ')}`;
    const plans = classes.flatMap(({ plan }) => ('kind' in plan ? [] : [plan]));
    const [table] = plans;
    const alike = table !== undefined && plans.length === classes.length && plans.every((plan) => plan.letter === table.letter && plan.severity === table.severity && plan.sampleSize === n && plan.tableSource === table.tableSource);
    if (!alike) return `${head}: ${classes.map((each) => ownPlan(each, n, speak)).join(' · ')}`;
    if (classes.length === 1) return `${head}: ${lotPlanSource(table, speak)}`;
    const aqls = classes.flatMap((each) => ('kind' in each.plan ? [] : [`${labels.findingClasses[each.class]} ${format.number(each.plan.aqlPercent)}`])).join(' · ');
    return `${head}: letter ${table.letter}, ${labels.severities[table.severity]}, AQL ${aqls}${table.tableSource === undefined ? '' : `, own table ${table.tableSource}`}`;
  },
  skipped: ({ clearance, oneIn, lots }, _, { format }) => `Nothing: this lot is passed over after ${format.count(clearance)} accepted in a row${lots.length === 0 ? '' : ` (${format.list(lots)})`}; one lot in ${format.count(oneIn)} is inspected`,
  variables: ({ plan }, { n, characteristic }, speak) =>
    `Measure ${speak.format.count(n)} pieces of ${speak.format.count(plan.lotSize)}${wanted(characteristic, speak)}: ${variablesMethod(plan, characteristic.kind === 'measured' ? characteristic.unit : null, speak.format)}, ${variablesSource(plan, speak)}`,
  limits: ({ accept }, { n, characteristic, places }, speak) =>
    `Measure ${whatIsTaken(n, places, speak)}: ${accept === 'mean' ? 'the mean' : n === 1 ? 'it' : 'each'} to lie within ${limitsOf(characteristic, speak)}`,
  everyPiece: (_, { n, characteristic }, speak) => `Weigh every one of ${piecesText(speak, n)}: ${limitsOf(characteristic, speak)}`,
  interval: ({ everyPieces, looks, everyMinutes }, { n }, speak) => (everyMinutes === undefined
    ? `Look at ${piecesText(speak, n)} each time ${speak.format.count(everyPieces)} are made: ${speak.format.count(looks)} ${looks === 1 ? 'look' : 'looks'}, accept none`
    : `Look at ${piecesText(speak, n)} each time ${speak.format.count(everyPieces)} are made or ${speak.format.count(everyMinutes)} minutes have passed, and with the last: accept none`),
  grade: (_, { n, characteristic, places }, speak) => `Rate ${whatIsTaken(n, places, speak)}: accepted to ${characteristic.kind === 'graded' ? characteristic.worstAccepted : ''}`,
  once: (_, { characteristic }) => `Confirm: ${characteristic.kind === 'confirmed' ? characteristic.statement : characteristic.name}`,
};

/** A class that looks at fewer pieces than are drawn, or under its own severity. */
function ownPlan({ class: each, plan }: ClassPlan, n: number, speak: Speak): string {
  const part = plan.sampleSize < n ? `the first ${speak.format.count(plan.sampleSize)}` : `all ${speak.format.count(n)}`;
  return `${speak.labels.findingClasses[each]} ${part}, ${lotPlanSource(plan, speak)}`;
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
export function measuredLimits({ lower, upper, decimals, unit, decisionRule, guardFactor }: Measured, { format, labels }: Speak): string {
  const written = (limit: number | null): string | null => (limit === null ? null : format.number(limit, decimals));
  return `${labels.between(written(lower), written(upper))} ${unit}${decisionRule === 'simple' ? '' : `, ${decisionRule === 'guardedAcceptance' ? 'drawn in' : 'moved out'} by ${guardFactor === undefined ? '' : `${format.number(guardFactor)} `}U`}`;
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
