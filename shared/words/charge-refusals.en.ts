import type { LogFaultCode, MapFault, PlacingFault, ProgrammeFault } from '../traveller/index.ts';
import type { RefusalWords } from './told-refusal.ts';

const NOTHING = 'Nothing was written.';

const placingFaults: Readonly<Record<PlacingFault, (lot: string, cell: string, other: string) => string>> = {
  otherKind: (_, equipment) => `${equipment} is equipment of another kind`,
  noCells: (lot) => `lot ${lot} lies on no cell of the map`,
  outsideMap: (lot, cell) => `the map has no cell ${cell}, where lot ${lot} was put`,
  taken: (lot, cell, other) => (lot === other ? `lot ${lot} was put on ${cell} twice` : `${cell} holds lot ${other} already, and lot ${lot} was put there too`),
  placesGiven: (lot) => `lot ${lot} has places in words beside its cells`,
  noMap: (lot) => `lot ${lot} was put on cells, but no equipment with a map was named`,
};
const mapFaults: Readonly<Record<MapFault, (name: string) => string>> = {
  noCells: () => 'it has no cell', tooManyCells: (cells) => `it has ${cells} cells, more than can be drawn`,
  nameTwice: (name) => `the name ${name} stands twice`, testPositionOutside: (name) => `the test position ${name} lies outside it`,
};
const programmeFaults: Readonly<Record<ProgrammeFault, string>> = {
  noSegments: 'it has no segment, or more than forty', beginsWithSoak: 'a programme begins with a ramp', soakAfterSoak: 'between two soaks lies a ramp',
  limitsCrossed: 'a lower limit lies below its upper one', rampMissesSoak: 'the ramp before this soak ends outside its window',
  rampInsideSoak: 'this ramp must lead out of the soak before it', rampGoesNowhere: 'this ramp must go beyond the ramp before it',
};
/** What is wrong at the place a log cannot be read further, as a clause. */
export const logFaults: Readonly<Record<LogFaultCode, (found: string, expected: string) => string>> = {
  empty: () => 'there is nothing in it', tooLong: (found, most) => `it has ${found} characters, at most ${most} are read`, tooManyRows: (_, most) => `it has more than ${most} rows`,
  noRows: () => 'it has fewer than two rows', headUnknown: (found, known) => `the head “${found}” is none of ${known}`, headTwice: (found) => `the head “${found}” names a column a second time`,
  headMissing: (_, column) => `no column is headed ${column}`, unitUnknown: (found, known) => `the unit “${found}” is none of ${known}`,
  columnCount: (found, wanted) => `it has ${found} cells, the head line ${wanted}`, notATime: (found) => `“${found}” is no time`, otherTime: (found) => `“${found}” is another kind of time than in the first row`,
  notANumber: (found) => `“${found}” is no number`, otherDecimals: (found, mark) => `“${found}” has another decimal mark than “${mark}” before it`,
  belowAbsoluteZero: (found) => `${found} °C lies below absolute zero`, negativePressure: (found) => `${found} is a negative pressure`,
};

/** Refusals about charges: placing, furnace logs, and which members are done again. */
export const chargeRefusalWords = {
  placingUnsound: ({ charge, why, lot, cell, other }) => ({ happened: `Charge ${charge} was not opened: ${placingFaults[why](lot, cell, other)}.`, kept: NOTHING, next: 'Put each lot on free cells of the map, then open the charge again.' }),
  mapUnsound: ({ equipment, why, name }) => ({ happened: `The map of ${equipment} cannot be used: ${mapFaults[why](name)}.`, kept: 'The record stays as it was.', next: 'Put this right and enter the record again.' }),
  programmeUnsound: ({ programme, why, segment }) => ({ happened: `A log cannot be held against programme ${programme}: ${segment === '' ? '' : `at ${segment}, `}${programmeFaults[why]}.`, kept: 'The record stays as it was.', next: 'Put this segment right and enter the record again.' }),
  logUnreadable: ({ fault: { code, line, column, found, expected } }, { format }) => ({
    happened: `This file is no furnace log: line ${format.count(line)}${column === 0 ? '' : `, column ${format.count(column)}`}: ${logFaults[code](found, expected)}.`, kept: 'The file was not kept.', next: 'Export the log again as CSV, or put this place right, and choose the file anew.',
  }),
  logSaysOtherwise: ({ characteristic, findings }, { format }) => ({
    happened: findings === null ? `${characteristic} is to be confirmed on a log, and none is attached.` : `${characteristic} was not confirmed: the log attached shows ${findings === 1 ? 'one thing' : `${format.count(findings)} things`} outside its programme’s limits.`, kept: 'This entry was not written; all earlier ones are kept.',
    next: 'Answer no, attach the right log, or state why it may be confirmed all the same.',
  }),
  someMembersUnfit: ({ charge, why, lot }) => ({
    happened: why === 'notInCharge' ? `Lot ${lot} does not stand in charge ${charge}.` : why === 'none' ? `No lot of charge ${charge} was chosen.` : `Every lot of charge ${charge} was chosen.`, kept: NOTHING,
    next: why === 'all' ? 'Decide it for the whole charge instead.' : 'Choose among the lots that stand in the charge.',
  }),
} satisfies Partial<RefusalWords>;
