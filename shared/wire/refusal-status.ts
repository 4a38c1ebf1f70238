import type { DoorRefusalCode } from './reply.ts';
import type { RefusalCode } from '../traveller/index.ts';

/** The HTTP status of every refusal: 409 unless the door or the kind of "no" has one of its own. A code without a status does not compile. */
export const REFUSAL_STATUS: Readonly<Record<RefusalCode | DoorRefusalCode, number>> = {
  // of the trade
  notFound: 404, alreadyThere: 409, notYourRole: 403, signatureMissing: 409, gateOutOfOrder: 409, gateWorkedElsewhere: 409, gateNotOpen: 409,
  gateIsOpen: 409, subjectIsHeld: 409, upstreamIsHeld: 409, subjectHasEnded: 409, inspectionDiscontinued: 409, wrongKindOfEntry: 409,
  ordinalOutside: 409, readingAlreadyTaken: 409, unlikelyValue: 409, valueImpossible: 409, gaugeNeeded: 409, gaugeCannotCount: 409, allowedErrorMissing: 400, recallIsClosed: 409,
  studyUnsound: 409, studyNotOpen: 409, notInStudy: 403, studyOutOfOrder: 409, readingOfAnother: 403, studyNotWhole: 409, studyNotForUncertainty: 409,
  ratingUnknown: 409, findingUnknown: 409, tooManyFound: 409, findingNeedsPiece: 409, sampleNotWhole: 409, sampleAlreadyComplete: 409,
  weightsOutOfOrder: 409, lookOutOfOrder: 409, lookNotDue: 409, nothingToWeigh: 409, pressStands: 409, feedGap: 409, nothingChanged: 409, reasonMissing: 409, dispositionNotForThis: 409,
  notEnoughPieces: 409, sortNotAskedFor: 409, sortNotWhole: 409, batchNotReleased: 409, notEnoughPowder: 409, blendImpossible: 409, factorMissing: 409, gradeDiffers: 409,
  lotNotReadyForCharge: 409, lotIsInCharge: 409, placingUnsound: 409, mapUnsound: 409, programmeUnsound: 409, logUnreadable: 409, logSaysOtherwise: 409, someMembersUnfit: 409, positionUnknown: 409, notAllGatesPassed: 409, workerReleasesAlone: 409, coSignerCannot: 409,
  alreadyReleased: 409, notReleased: 409, boxTooFull: 409, boxIsGone: 409, boxesToVoid: 409, labelNotPrinted: 409, labelNotReadBack: 409, labelDiffers: 409,
  planNotInForce: 409, planIsInForce: 409, approvedByYou: 409, cardUnsound: 409, planUnsound: 409, designationUnreadable: 409, tableUnsound: 409, routeDiffers: 409, notDiscontinued: 409, chartUnfit: 409, chartLimitsFrozen: 409, chartBaseUnfit: 409, identifierUnfit: 409, lastKeeper: 409, personInactive: 409,
  // of the door
  notSignedIn: 401, signInFailed: 401, signInLocked: 429, wrongPin: 401, malformed: 400, tooLarge: 413, notJson: 400, unknownAddress: 404,
  methodNotAllowed: 405, staleVersion: 409, clientIdReused: 409, tooBusy: 429, storageFault: 503, programFault: 503, setUpFirst: 409,
};

/** The HTTP status that a refusal is answered with. */
export function refusalStatus(code: RefusalCode | DoorRefusalCode): number {
  return REFUSAL_STATUS[code];
}
