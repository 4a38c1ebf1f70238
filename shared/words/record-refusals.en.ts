import type { CardFault, IdentifierRule, PlanFault } from '../traveller/index.ts';
import { problemPlace, problemText } from './designation.en.ts';
import type { Format } from './format.ts';
import { labelOf } from './words-for.ts';
import type { RefusalWords } from './told-refusal.ts';

const NOTHING = 'Nothing was written.';

/** Why a plan cannot be worked, as a clause. */
export const planFaults: Readonly<Record<PlanFault, string>> = {
  noGate: 'a route has at least one gate', verdictFromElsewhere: 'only a lot takes verdicts from another subject',
  characteristicsElsewhere: 'a gate worked on another subject has its characteristics in that subject’s plan', noCharacteristic: 'a gate has at least one characteristic',
  nobodyMayWork: 'somebody must be allowed to work the gate', twice: 'this key stands twice', otherSubject: 'the plan is for another kind of subject',
  pressLimitsNotForLot: 'limits that follow from the powder are for lots', everyPieceWorkedOut: 'every piece is weighed or measured as it is',
  noLimit: 'a measured characteristic has at least one limit', limitsCrossed: 'the lower limit lies below the upper', plausibleEmpty: 'the plausible range is empty',
  guardFactor: 'a guard band is more than 0 and at most 3 times U, and simple acceptance has none', guardedWorkedOut: 'a value that is worked out is judged by simple acceptance', codeTwice: 'each nonconformity has a code of its own',
  worstNotOnScale: 'the worst accepted rating stands on the scale', attributesNotForLot: 'attributes plans are for lots of pieces', noAql: 'at least one class has an AQL, a limiting quality or two risk points',
  attributesAql: 'AQL in percent nonconforming is one of the preferred values 0.010 to 10', classWithoutAql: 'every nonconformity belongs to a class that the rule judges',
  nonconformitiesAql: 'AQL in nonconformities per 100 is one of the preferred values 0.010 to 1000', skipLotNumbers: 'lots are passed over after 1 to 1,000 accepted in a row, and one in 2 to 1,000 is inspected', skipLotCritical: 'lots are not passed over where a critical class is judged',
  ownTable: 'the table named is for another severity or another number of samples', limitingQuality: 'limiting quality lies above 0 and below 100 percent, the consumer’s risk is a fraction from 0.001 to 0.5',
  riskPoints: 'p1 lies below p2, and the risks are fractions from 0.0001 to 0.5, together below 1',
  noDesign: 'no plan small enough passes through both points; they lie too close together', variablesSides: 'an AQL for each limit needs both limits and no risk points, and the rule’s AQL is the smaller of the two',
  variablesForm: 'two limits with one AQL are judged by M',
  variablesNotForLot: 'variables plans are for lots of pieces', variablesAql: 'AQL of a variables plan is one of the preferred values 0.065 to 15', fixedTooFew: 'n is at least 1',
  barrelsElsewhere: 'barrels are drawn from a powder batch, at least one', positionsElsewhere: 'positions belong to a charge, at least one',
  weighingNotForLot: 'every-piece weighing is for lots', intervalNotForLot: 'looks at intervals are for lots',
  logNotForFurnace: 'a furnace log backs a furnace charge’s confirmation only',
  craterLayers: 'a crater goes through 2 to 12 layers', layerOfCrater: 'a layer belongs to a crater of the same gate with so many layers, sampled alike and judged in the same unit',
  saturationEntry: 'a saturation is judged in % with the grade’s share of cobalt above 0 and at most 1, and its warnings rise',
  tooFewDecimals: 'its decimals are too few for this press weight and tolerance', noThicknessLimits: 'the product states no limits of its sintered thickness to carry to the green piece',
};
/** What is wrong with a grade or a coating, as a clause. */
export function cardFaultText(fault: CardFault, format: Format): string {
  switch (fault.why) {
    case 'empty': return 'a composition has at least one component';
    case 'twice': return `${fault.component} stands in the composition twice`;
    case 'noShare': return `the share of ${fault.component} lies above 0`;
    case 'densityUnknown': return `the density of ${fault.component} is not known here and must be given with it`;
    case 'densityImpossible': return `a density of ${fault.component} lies between ${format.number(0.1)} and ${format.number(30)} g/cm³`;
    case 'sum': return `the shares add up to ${format.number(fault.sumPercent)} %, not to 100 within ${format.number(0.1)}`;
    case 'limits': return `limits of ${fault.of} lie above 0, the lower below the upper, and there is at least one`;
    case 'porosity': return `there is no level ${fault.of}`;
    case 'saturationWindow': return 'the four steps of the saturation window rise, from above 0 to at most 110 %';
    case 'saturationWithoutCobalt': return 'a grade without cobalt has no relative saturation';
    case 'layerTwice': return `two layers are named ${fault.of}`;
  }
}
const identifierRules: Readonly<Record<IdentifierRule, (detail: string) => string>> = {
  number: () => '2 to 16 of A–Z, 0–9 and -, first a letter or digit', notEmpty: () => 'something written',
  serial: (most) => `at most ${most} characters; pack the rest as a split lot with a shorter number`,
  labelCode: (part) => `what fits the code on the label; ${part} does not`, printable: (detail) => `characters that can be printed (${detail})`,
};

/** Refusals about finding things, about rights and signatures, and about the plant's records. */
export const recordRefusalWords = {
  notFound: ({ what, id }, { labels }) => ({ happened: id === '' ? `No ${labels.things[what]} was named.` : `There is no ${labels.things[what]} ${id}.`, kept: NOTHING, next: 'Scan it again, or check the number.' }),
  alreadyThere: ({ what, id }, { labels }) => ({ happened: `${what === 'plant' ? 'This' : 'The'} ${labels.things[what]} ${id} is there already.`, kept: 'What is there stays as it is.', next: what === 'plant' ? 'Sign on instead.' : 'Open it, or take a number that is free.' }),
  notYourRole: ({ command, needed }, { format, labels }) => ({
    happened: `Your roles do not allow you to ${labelOf(labels.commands, command)}.`, kept: NOTHING,
    next: needed.length === 0 ? 'Ask the keeper which role may do this.' : `Ask someone who is: ${format.either(needed.map((role) => labels.roles[role]))}.`,
  }),
  signatureMissing: ({ command }, { labels }) => ({ happened: `A signature is needed to ${labelOf(labels.commands, command)}.`, kept: NOTHING, next: 'Read once more what you sign, then enter your PIN.' }),
  nothingChanged: ({ what }) => ({ happened: `${what}: the new entry is the same as the old one.`, kept: 'The entry stays as it is.', next: 'Enter what differs, or leave it.' }),
  reasonMissing: ({ command }, { labels }) => ({
    happened: command === 'concession' ? 'A concession says what is accepted and how far.' : `A reason in writing is needed to ${labelOf(labels.commands, command)}.`,
    kept: NOTHING, next: command === 'concession' ? 'Write the sentence that will stand on the certificate.' : 'Write in a few words why.',
  }),
  planNotInForce: ({ plan }) => ({ happened: `No version of plan ${plan} is in force.`, kept: NOTHING, next: 'Two quality engineers approve a version first.' }),
  planIsInForce: ({ plan, planVersion }, { format }) => ({
    happened: `${plan} version ${format.count(planVersion)} is in force already.`, kept: 'The version stays in force as it was approved.', next: 'Nothing more is to be approved. A change begins with a new draft.',
  }),
  approvedByYou: ({ plan, planVersion }, { format }) => ({
    happened: `You have approved ${plan} version ${format.count(planVersion)} already.`, kept: 'Your approval stands.', next: 'The second approval must come from another quality engineer.',
  }),
  cardUnsound: ({ card, fault }, { format }) => ({ happened: `${card} cannot be taken as it is: ${cardFaultText(fault, format)}.`, kept: NOTHING, next: 'Put this right and save again.' }),
  planUnsound: ({ where, why }) => ({ happened: `The plan cannot be worked as it is. At ${where}: ${planFaults[why]}.`, kept: 'No version was drafted.', next: 'Put this place right and draft again.' }),
  designationUnreadable: ({ designation, problems }, { format }) => ({
    happened: `“${designation}” is no designation that can be read. ${problems.slice(0, 3).map((problem) => `${problemPlace(problem)}: ${problemText(problem, format)}`).join(' ')}`, kept: NOTHING,
    next: 'Put these places right, or say on the card that the product is made to a drawing.',
  }),
  tableUnsound: ({ table, problems }, { format, labels }) => ({
    happened: `Table ${table} was not taken in: ${format.count(problems.length)} ${problems.length === 1 ? 'thing is' : 'things are'} wrong with it. ${problems.slice(0, 3).map(({ line, column, code, found, expected }) => `Line ${format.count(line)}${column === null ? '' : `, column ${format.count(column)}`}: ${labels.tableProblems[code]}${found === '' ? '' : ` (found “${found}”${expected === null ? '' : `, expected ${expected}`})`}`).join('; ')}.`,
    kept: 'No table was taken in.', next: 'Put these places right in the file and load it again.',
  }),
  routeDiffers: ({ plan, planVersion, gate }, { format }) => ({
    happened: `Version ${format.count(planVersion)} of plan ${plan} does not begin with the gates this lot has been through: ${gate} stands elsewhere.`, kept: 'The lot stays on the version it has.',
    next: 'Leave it there, or draft a version whose first gates are the same.',
  }),
  notDiscontinued: ({ switching, severity }, { labels }) => ({
    happened: `${switching.slice(switching.indexOf(':') + 1)} is not discontinued; it stands on ${labelOf(labels.severities, severity)}.`, kept: NOTHING, next: 'Inspection goes on; nothing needs to be resumed.',
  }),
  identifierUnfit: ({ field, value, rule, detail }) => ({ happened: `${value === '' ? 'An empty entry' : value} cannot stand as ${field}.`, kept: NOTHING, next: `Asked for: ${identifierRules[rule](detail)}.` }),
  lastKeeper: ({ badge }) => ({ happened: `${badge} is a keeper and cannot take that right from themselves.`, kept: NOTHING, next: 'Let another keeper make this change, so that the plant always has one.' }),
  personInactive: ({ badge }) => ({ happened: `${badge} is no longer active.`, kept: NOTHING, next: 'The keeper can make the person active again.' }),
} satisfies Partial<RefusalWords>;
