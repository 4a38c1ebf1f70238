import type { WantedEntry } from '../traveller/index.ts';
import { piecesText } from './speak.ts';
import { labelOf } from './words-for.ts';
import type { RefusalWords } from './told-refusal.ts';

const NOTHING = 'Nothing was written.';
const ENTRY = 'This entry was not written; all earlier ones are kept.';

const impossible: Readonly<Record<'notFinite' | 'finerThanResolution' | 'finerThanGauge' | 'outsideGauge' | 'craterNotConcentric' | 'largerThanDie' | 'gainsInWater' | 'waterTemperature' | 'notASaturation', (detail: string) => { readonly because: string; readonly next: string }>> = {
  notFinite: () => ({ because: 'it is not a number that can be measured', next: 'Read the gauge again and enter the value.' }),
  finerThanResolution: (decimals) => ({ because: `it has more than ${decimals} decimal places`, next: `Enter the value as read, with at most ${decimals} decimal places. It is not rounded for you.` }),
  finerThanGauge: (step) => ({ because: `the gauge shows steps of ${step}`, next: 'Enter the value as the gauge shows it, or take a finer gauge. It is not rounded for you.' }),
  outsideGauge: (range) => ({ because: `the gauge measures only ${range}`, next: 'Check the decimal sign, or take a gauge that reaches so far.' }),
  craterNotConcentric: (order) => ({ because: `the diameters must lie as inner < outer < ball: ${order}`, next: 'Measure both diameters of the crater again.' }),
  gainsInWater: (masses) => ({ because: `the mass in water lies below the mass in air: ${masses}`, next: 'Weigh again. A piece that gains mass under water has open pores, and then this method does not hold.' }),
  waterTemperature: (range) => ({ because: `the water has ${range} °C`, next: 'Read the thermometer in the water again.' }),
  notASaturation: (most) => ({ because: `a saturation lies above 0 and below that of pure cobalt, ${most}`, next: 'Check the unit of the bench and the decimal sign.' }),
  largerThanDie: (die) => ({ because: `a sintered length is smaller than the die, ${die} mm`, next: 'Check which length was entered, and enter the sintered one.' }),
};
const unfitGauge: Readonly<Record<'overdue' | 'withdrawn' | 'outOfTolerance' | 'wrongKind' | 'wrongUnit' | 'tooCoarse', (detail: string) => string>> = {
  overdue: (due) => `its calibration ended on ${due}`,
  withdrawn: (reason) => `it was withdrawn from use: ${reason}`,
  outOfTolerance: (recall) => `it was found out of tolerance (recall ${recall})`,
  wrongKind: (kind) => `this characteristic asks for: ${kind}`,
  wrongUnit: (units) => `its unit is another one: ${units}`,
  tooCoarse: (detail) => `its uncertainty leaves no room between the limits: ${detail}`,
};

const wantedEntry: Readonly<Record<WantedEntry, (unit: string) => string>> = {
  weights: () => 'a block of weights', singleReadings: () => 'single readings', looks: () => 'looks', readings: () => 'readings', findings: () => 'findings',
  valueItself: () => 'the value itself', yesOrNo: () => 'yes or no', number: (unit) => `a number in ${unit}`, whatWasRead: () => 'what was read, not the value',
  craterDiameters: (unit) => `two crater diameters in ${unit}`, sinteredLength: (unit) => `the sintered length in ${unit}`, greenAndSintered: (unit) => `the green and the sintered size in ${unit}`,
  layerDiameters: (unit) => `the crater diameters in ${unit} from the surface to the substrate, one more than there are layers`, craterOfAnother: (lead) => `the crater at ${lead}; this layer follows from it`,
  weighings: () => 'the mass in air and in water in g, and the temperature of the water in °C', saturation: (unit) => `the saturation as read, in ${unit}`,
};

/** Refusals while a gate is worked. */
export const gateRefusalWords = {
  gateOutOfOrder: ({ gate, before, next }) => ({
    happened: `${gate} cannot be opened yet.`, kept: NOTHING,
    next: next === null ? 'Every gate has passed; there is none to open.' : `Finish ${before} first.`,
  }),
  gateWorkedElsewhere: ({ gate, workedOn }, { labels }) => ({
    happened: `${gate} is not worked on this traveller but on that of the ${labelOf(labels.subjectKinds, workedOn)}.`, kept: NOTHING,
    next: `Open the ${labelOf(labels.subjectKinds, workedOn)}; its verdict comes over here by itself.`,
  }),
  gateNotOpen: ({ gate, status }, { labels }) => ({
    happened: `${gate} is not open. It stands at: ${labelOf(labels.gateStatuses, status)}.`, kept: NOTHING,
    next: 'Look at the newest slip of the traveller; it says what is due.',
  }),
  gateIsOpen: ({ gate }) => ({ happened: `${gate} is in work.`, kept: 'All that was entered there is kept.', next: `Go on with ${gate} until it has its verdict.` }),
  subjectIsHeld: ({ subject, hold, reason }) => ({
    happened: `${subject} is on hold (${hold}): ${reason}.`, kept: NOTHING, next: 'Leave it where it stands. A quality engineer decides about the hold.',
  }),
  upstreamIsHeld: ({ upstream, reason }) => ({
    happened: `${upstream}, which this was made from or with, is on hold: ${reason}.`, kept: NOTHING, next: `It can go on when a quality engineer has decided about ${upstream}.`,
  }),
  subjectHasEnded: ({ subject, how }, { labels }) => ({
    happened: `${subject} has left the route: ${labelOf(labels.ends, how)}.`, kept: 'Its traveller is kept whole.', next: 'Check the number on the tray; nothing more is entered for this one.',
  }),
  inspectionDiscontinued: ({ switching, lots }, { format }) => ({
    happened: `Inspection is discontinued for ${switching.slice(switching.indexOf(':') + 1)}${lots.length === 0 ? '' : `, after ${format.list(lots)}`}.`, kept: NOTHING,
    next: 'The cause must be put right first. Then a quality engineer lets inspection go on, on tightened.',
  }),
  wrongKindOfEntry: ({ characteristic, wanted, unit }) => ({ happened: `${characteristic} takes another kind of entry.`, kept: ENTRY, next: `Enter ${wantedEntry[wanted](unit)}.` }),
  ordinalOutside: ({ characteristic, n, ordinal }, { format }) => ({
    happened: `${characteristic} has no place ${format.count(ordinal)} in its sample.`, kept: ENTRY, next: `Take a place from 1 to ${format.count(n)}.`,
  }),
  readingAlreadyTaken: ({ characteristic, ordinal, value, taken, n }, { format }) => ({
    happened: `${characteristic}, ${format.count(ordinal)} was read before: ${value}.`,
    kept: `Read so far: ${format.count(taken)} of ${format.count(n)}, as entered. Nothing was added.`,
    next: 'Take the next one, or press Correct on the earlier slip.',
  }),
  unlikelyValue: ({ characteristic, value, least, most, likely }, { format }) => ({
    happened: `${characteristic}: ${format.number(value)} is unlikely. Usual is ${format.number(least)} … ${format.number(most)}.`, kept: ENTRY,
    next: likely === null ? 'Read it again. If it is right, enter it once more and say that you are sure.' : `Did you mean ${format.number(likely)}? If ${format.number(value)} is right, enter it once more and say that you are sure.`,
  }),
  valueImpossible: ({ characteristic, value, why, detail }, { format }) => ({
    happened: `${characteristic}: ${format.number(value)} cannot be taken, for ${impossible[why](detail).because}.`, kept: ENTRY, next: impossible[why](detail).next,
  }),
  gaugeNeeded: ({ characteristic, gaugeKind }) => ({ happened: `${characteristic} counts only with its gauge.`, kept: ENTRY, next: `Scan or choose the gauge (${gaugeKind}) and enter the reading again.` }),
  gaugeCannotCount: ({ gauge, why, detail }, { format }) => ({
    happened: `Gauge ${gauge} cannot count here: ${unfitGauge[why](why === 'overdue' ? format.date(detail) : detail)}.`, kept: ENTRY, next: 'Put this gauge aside and read again with one that fits.',
  }),
  allowedErrorMissing: ({ gauge }) => ({ happened: `How far ${gauge} may be off in a check is not said.`, kept: NOTHING, next: 'Say with the check how far it may be off, or have it put on the card of the gauge.' }),
  recallIsClosed: ({ recall }) => ({ happened: `Recall ${recall} is closed.`, kept: NOTHING, next: 'Holds that are still needed are put on each lot’s own traveller.' }),
  ratingUnknown: ({ characteristic, value, scale }, { format }) => ({
    happened: `${characteristic} has no rating ${value}.`, kept: ENTRY, next: `Choose ${format.either(scale)}.`,
  }),
  findingUnknown: ({ finding, known }, { format }) => ({
    happened: finding === '' ? 'It was not said what was found.' : `${finding} is not among the findings of this characteristic.`, kept: ENTRY, next: `Choose ${format.either(known)}.`,
  }),
  tooManyFound: ({ found, n }, { format }) => ({
    happened: `${format.count(found)} found does not fit ${format.count(n)} looked at.`, kept: ENTRY, next: `Count again: at least 1 and, with those recorded before, at most ${format.count(n)}.`,
  }),
  findingNeedsPiece: ({ class: each, n, draw }, { format, labels }) => ({
    happened: n === draw ? `For ${labelOf(labels.findingClasses, each)} the pieces are judged one by one in the order drawn, so the piece must be named.` : `For ${labelOf(labels.findingClasses, each)} only the first ${format.count(n)} of ${format.count(draw)} pieces count, so the piece must be named.`, kept: ENTRY,
    next: 'Say which place of the sample each of these pieces had.',
  }),
  sampleNotWhole: ({ looked, n }, { format }) => ({
    happened: `${format.count(looked)} looked at, ${format.count(n)} asked for.`, kept: ENTRY, next: `Look at all ${format.count(n)}, then complete the sample.`,
  }),
  sampleAlreadyComplete: ({ characteristic }) => ({
    happened: `${characteristic} is complete already.`, kept: 'The complete sample is kept as it was entered.', next: 'Nothing more is asked for here. A wrong finding can be withdrawn, with a reason.',
  }),
  weightsOutOfOrder: ({ expectedFrom, gotFrom, lotSize }, speak) => ({
    happened: expectedFrom > lotSize ? `All ${piecesText(speak, lotSize)} have been weighed.` : `This block begins at piece ${speak.format.count(gotFrom)}; piece ${speak.format.count(expectedFrom)} of ${speak.format.count(lotSize)} comes next.`,
    kept: `${piecesText(speak, expectedFrom - 1)} weighed before are kept. This block was not written.`,
    next: expectedFrom > lotSize ? 'Nothing more is to be weighed.' : `Send the block that begins at piece ${speak.format.count(expectedFrom)} and ends at ${speak.format.count(lotSize)} or before.`,
  }),
  nothingToWeigh: ({ gate }) => ({ happened: `${gate} does not ask for the weight of every piece.`, kept: 'The press stays as it was set.', next: 'Set the press when the lot stands at the gate where its pieces are weighed.' }),
  pressStands: ({ press }) => ({ happened: `${press} is set on no lot.`, kept: 'These weights were not written; the sender keeps them.', next: 'Set the press on its lot at the presses’ desk. Then the sender sends again.' }),
  feedGap: ({ press, expected, got }, { format }) => ({
    happened: `${press} sent number ${format.count(got)}; number ${format.count(expected)} comes next.`, kept: `Weights up to number ${format.count(expected - 1)} are kept. These were not written.`,
    next: `Send from number ${format.count(expected)}. If those weights are lost for good, say so with these: they are then missing and stay so.`,
  }),
  lookOutOfOrder: ({ expected, got, looks }, { format }) => ({
    happened: expected > looks ? `All ${format.count(looks)} looks have been taken.` : `Look ${format.count(got)} cannot be taken now.`, kept: ENTRY,
    next: expected > looks ? 'Nothing more is to be looked at here.' : `Take look ${format.count(expected)} of ${format.count(looks)}.`,
  }),
  lookNotDue: ({ look, dueAt, made }, { format }) => ({
    happened: `Look ${format.count(look)} is not due yet: ${format.count(made)} made, due at ${format.count(dueAt)}.`, kept: ENTRY, next: `Go on pressing, and look when ${format.count(dueAt)} are made.`,
  }),
} satisfies Partial<RefusalWords>;
