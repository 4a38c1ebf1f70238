import type { CardFault } from './catalogue/grade-limits.ts';
import type { Role } from './rights.ts';
import type { BaseFault } from './chart/drawn-chart.ts';
import type { DispositionKind } from './gate/hold.ts';
import type { DesignationProblem } from '../carbide/index.ts';
import type { LogFault, ProgrammeFault } from '../carbide/furnace-log/index.ts';
import type { MapFault } from './equipment/map-fault.ts';
import type { TableProblem } from '../sampling/attributes/index.ts';
import type { PlanFault } from './plan/plan-fault.ts';
import type { StudyFault } from './study/require-sound-study.ts';

/** What a characteristic takes in place of what was entered. */
export type WantedEntry = 'weights' | 'singleReadings' | 'looks' | 'readings' | 'findings' | 'valueItself' | 'yesOrNo' | 'number' | 'whatWasRead' | 'craterDiameters' | 'sinteredLength' | 'greenAndSintered'
  | 'layerDiameters' | 'craterOfAnother' | 'weighings' | 'saturation';
/** What is wrong with how lots were placed on a map. */
export type PlacingFault = 'otherKind' | 'noCells' | 'outsideMap' | 'taken' | 'placesGiven' | 'noMap';
/** What a text that is printed, scanned or sent must keep to. */
export type IdentifierRule = 'number' | 'notEmpty' | 'serial' | 'labelCode' | 'printable';

/** Why batches cannot be blended as asked. */
export type BlendFault = 'fewerThanTwo' | 'namedTwice' | 'massUnfit';

/** A "no" that a person can act on. Its words stand in shared/words, its page in docs/refusals.md. */
export type Refusal =
  | { readonly code: 'notFound'; readonly what: 'lot' | 'chart' | 'batch' | 'charge' | 'gate' | 'characteristic' | 'hold' | 'box' | 'product' | 'grade' | 'layer' | 'plan' | 'planVersion' | 'gauge' | 'press' | 'person' | 'switching' | 'finding' | 'reading' | 'recall' | 'study' | 'plant' | 'table' | 'caution' | 'equipment' | 'programme' | 'attachment'; readonly id: string }
  | { readonly code: 'alreadyThere'; readonly what: 'lot' | 'chart' | 'batch' | 'charge' | 'gauge' | 'study' | 'press' | 'person' | 'plant' | 'table'; readonly id: string }
  | { readonly code: 'notYourRole'; readonly command: string; readonly needed: readonly Role[] }
  | { readonly code: 'signatureMissing'; readonly command: string }
  | { readonly code: 'gateOutOfOrder'; readonly gate: string; readonly before: string; readonly next: string | null }
  | { readonly code: 'gateWorkedElsewhere'; readonly gate: string; readonly workedOn: string }
  | { readonly code: 'gateNotOpen'; readonly gate: string; readonly status: string }
  | { readonly code: 'gateIsOpen'; readonly gate: string }
  | { readonly code: 'subjectIsHeld'; readonly subject: string; readonly hold: string; readonly reason: string }
  | { readonly code: 'upstreamIsHeld'; readonly upstream: string; readonly reason: string }
  | { readonly code: 'subjectHasEnded'; readonly subject: string; readonly how: string }
  | { readonly code: 'inspectionDiscontinued'; readonly switching: string; readonly lots: readonly string[] }
  | { readonly code: 'wrongKindOfEntry'; readonly characteristic: string; readonly wanted: WantedEntry; readonly unit: string }
  | { readonly code: 'ordinalOutside'; readonly characteristic: string; readonly n: number; readonly ordinal: number }
  | { readonly code: 'readingAlreadyTaken'; readonly characteristic: string; readonly ordinal: number; readonly value: string; readonly taken: number; readonly n: number }
  | { readonly code: 'unlikelyValue'; readonly characteristic: string; readonly value: number; readonly least: number; readonly most: number; readonly likely: number | null }
  | { readonly code: 'valueImpossible'; readonly characteristic: string; readonly value: number; readonly why: 'notFinite' | 'finerThanResolution' | 'finerThanGauge' | 'outsideGauge' | 'craterNotConcentric' | 'largerThanDie' | 'gainsInWater' | 'waterTemperature' | 'notASaturation'; readonly detail: string }
  | { readonly code: 'gaugeNeeded'; readonly characteristic: string; readonly gaugeKind: string }
  | { readonly code: 'gaugeCannotCount'; readonly gauge: string; readonly why: 'overdue' | 'withdrawn' | 'outOfTolerance' | 'wrongKind' | 'wrongUnit' | 'tooCoarse'; readonly detail: string }
  | { readonly code: 'allowedErrorMissing'; readonly gauge: string }
  | { readonly code: 'recallIsClosed'; readonly recall: string }
  | { readonly code: 'studyUnsound'; readonly study: string; readonly why: StudyFault }
  | { readonly code: 'studyNotOpen'; readonly study: string; readonly standing: 'closed' | 'abandoned' }
  | { readonly code: 'notInStudy'; readonly study: string; readonly badge: string }
  | { readonly code: 'studyOutOfOrder'; readonly study: string; readonly part: string; /** Label of the part that comes next; null where this person has measured all. */ readonly next: string | null }
  | { readonly code: 'readingOfAnother'; readonly study: string; readonly reading: number; readonly badge: string }
  | { readonly code: 'studyNotWhole'; readonly study: string; readonly taken: number; readonly wanted: number }
  | { readonly code: 'studyNotForUncertainty'; readonly study: string; readonly why: 'otherGauge' | 'notClosed' | 'notCrossed' }
  | { readonly code: 'ratingUnknown'; readonly characteristic: string; readonly value: string; readonly scale: readonly string[] }
  | { readonly code: 'findingUnknown'; readonly finding: string; readonly known: readonly string[] }
  | { readonly code: 'tooManyFound'; readonly found: number; readonly n: number }
  | { readonly code: 'findingNeedsPiece'; readonly class: string; readonly n: number; readonly draw: number }
  | { readonly code: 'sampleNotWhole'; readonly looked: number; readonly n: number }
  | { readonly code: 'sampleAlreadyComplete'; readonly characteristic: string }
  | { readonly code: 'weightsOutOfOrder'; readonly expectedFrom: number; readonly gotFrom: number; readonly lotSize: number }
  | { readonly code: 'nothingToWeigh'; readonly gate: string }
  | { readonly code: 'pressStands'; readonly press: string }
  | { readonly code: 'feedGap'; readonly press: string; /** Number of the balance's count that comes next. */ readonly expected: number; readonly got: number }
  | { readonly code: 'lookOutOfOrder'; readonly expected: number; readonly got: number; readonly looks: number }
  | { readonly code: 'lookNotDue'; readonly look: number; readonly dueAt: number; readonly made: number }
  | { readonly code: 'nothingChanged'; readonly what: string }
  | { readonly code: 'reasonMissing'; readonly command: string }
  | { readonly code: 'dispositionNotForThis'; readonly disposition: DispositionKind; readonly possible: readonly DispositionKind[] }
  | { readonly code: 'notEnoughPieces'; readonly wanted: number; readonly remaining: number }
  | { readonly code: 'sortNotAskedFor'; readonly gate: string; readonly status: string }
  | { readonly code: 'sortNotWhole'; readonly looked: number; readonly remaining: number }
  | { readonly code: 'batchNotReleased'; readonly batch: string }
  | { readonly code: 'notEnoughPowder'; readonly batch: string; readonly wantedKg: number; readonly remainingKg: number }
  | { readonly code: 'blendImpossible'; readonly batch: string; readonly why: BlendFault }
  | { readonly code: 'factorMissing'; readonly batch: string; readonly factor: string }
  | { readonly code: 'gradeDiffers'; readonly lot: string; readonly has: string; readonly wanted: string }
  | { readonly code: 'lotNotReadyForCharge'; readonly lot: string; readonly gate: string; readonly next: string | null }
  | { readonly code: 'lotIsInCharge'; readonly lot: string; readonly charge: string }
  | { readonly code: 'placingUnsound'; readonly charge: string; readonly why: PlacingFault; /** Empty where no lot is meant. */ readonly lot: string; readonly cell: string; /** The lot that lies there already. */ readonly other: string }
  | { readonly code: 'mapUnsound'; readonly equipment: string; readonly why: MapFault; readonly name: string }
  | { readonly code: 'programmeUnsound'; readonly programme: string; readonly why: ProgrammeFault; readonly segment: string }
  | { readonly code: 'logUnreadable'; readonly fault: LogFault }
  | { readonly code: 'logSaysOtherwise'; readonly characteristic: string; /** What the log shows outside the limits; null where none is attached. */ readonly findings: number | null }
  | { readonly code: 'someMembersUnfit'; readonly charge: string; readonly why: 'notInCharge' | 'none' | 'all'; readonly lot: string }
  | { readonly code: 'positionUnknown'; readonly position: string }
  | { readonly code: 'notAllGatesPassed'; readonly missing: readonly string[] }
  | { readonly code: 'workerReleasesAlone'; readonly gate: string; readonly badge: string }
  | { readonly code: 'coSignerCannot'; readonly badge: string; readonly why: 'samePerson' | 'notReleaser' | 'workedLastGate' }
  | { readonly code: 'alreadyReleased'; readonly certificate: string }
  | { readonly code: 'notReleased'; readonly lot: string; readonly why: 'never' | 'withdrawn' | 'held' }
  | { readonly code: 'boxTooFull'; readonly pieces: number; readonly most: number }
  | { readonly code: 'boxIsGone'; readonly box: string; readonly why: 'voided' | 'shipped' }
  | { readonly code: 'boxesToVoid'; readonly lot: string; readonly boxes: number }
  | { readonly code: 'labelNotPrinted'; readonly box: string }
  | { readonly code: 'labelNotReadBack'; readonly box: string }
  | { readonly code: 'labelDiffers'; readonly box: string; readonly field: string; readonly read: string; readonly wanted: string }
  | { readonly code: 'planNotInForce'; readonly plan: string }
  | { readonly code: 'approvedByYou'; readonly plan: string; readonly planVersion: number }
  | { readonly code: 'planIsInForce'; readonly plan: string; readonly planVersion: number }
  | { readonly code: 'cardUnsound'; readonly card: string; readonly fault: CardFault }
  | { readonly code: 'planUnsound'; readonly where: string; readonly why: PlanFault }
  | { readonly code: 'designationUnreadable'; readonly designation: string; readonly problems: readonly DesignationProblem[] }
  | { readonly code: 'tableUnsound'; readonly table: string; readonly problems: readonly TableProblem[] }
  | { readonly code: 'routeDiffers'; readonly plan: string; readonly planVersion: number; readonly gate: string }
  /** A chart that cannot be had of this characteristic: its kind, the rules asked for, or its constants. */
  | { readonly code: 'chartUnfit'; readonly characteristic: string; readonly why: 'kind' | 'rules' | 'constants' }
  | { readonly code: 'chartLimitsFrozen'; readonly chart: string }
  | { readonly code: 'chartBaseUnfit'; readonly why: BaseFault; readonly have: number; readonly least: number }
  | { readonly code: 'notDiscontinued'; readonly switching: string; readonly severity: string }
  | { readonly code: 'identifierUnfit'; readonly field: string; readonly value: string; readonly rule: IdentifierRule; readonly detail: string }
  | { readonly code: 'lastKeeper'; readonly badge: string }
  | { readonly code: 'personInactive'; readonly badge: string };
export type RefusalCode = Refusal['code'];
/** Raised inside the core to leave a decision with a refusal; caught by `decide` and nowhere else. */
export class Refused extends Error {
  readonly refusal: Refusal;
  constructor(refusal: Refusal) { super(refusal.code); this.refusal = refusal; }
}
