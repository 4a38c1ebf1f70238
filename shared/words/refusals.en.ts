import { chartRefusalWords } from './chart-refusals.en.ts';
import { chargeRefusalWords } from './charge-refusals.en.ts';
import { gateRefusalWords } from './gate-refusals.en.ts';
import { lotRefusalWords } from './lot-refusals.en.ts';
import { recordRefusalWords } from './record-refusals.en.ts';
import { studyRefusalWords } from './study-refusals.en.ts';
import type { DoorRefusalWords, RefusalWords } from './told-refusal.ts';

/** The words of every refusal of the trade. */
export const refusalWords: RefusalWords = { ...gateRefusalWords, ...lotRefusalWords, ...chargeRefusalWords, ...recordRefusalWords, ...studyRefusalWords, ...chartRefusalWords };

const NOTHING = 'Nothing was written.';
const tries = (left: number): string => (left === 0 ? 'No try is left for now.' : left === 1 ? 'One try is left.' : `${left} tries are left.`);

/** The words of every refusal of the door. */
export const doorRefusalWords: DoorRefusalWords = {
  notSignedIn: () => ({ happened: 'Nobody is signed on at this bench.', kept: 'Nothing was written; what waits here stays here.', next: 'Scan your badge and enter your PIN.' }),
  signInFailed: ({ attemptsLeft }) => ({ happened: 'Badge and PIN do not belong together.', kept: 'Nobody was signed on.', next: `${tries(attemptsLeft)} If the PIN is forgotten, the keeper sets a new one.` }),
  signInLocked: ({ untilIso }, { format }) => ({ happened: 'Too many wrong PINs for this badge.', kept: 'Nobody was signed on.', next: `Try again after ${format.time(untilIso)}, or ask the keeper to set a new PIN.` }),
  wrongPin: ({ attemptsLeft }) => ({ happened: 'This PIN does not fit the badge.', kept: 'Nothing was signed and nothing was written.', next: `Enter the PIN again. ${tries(attemptsLeft)}` }),
  malformed: ({ problems }) => {
    const [first, ...others] = problems;
    return {
      happened: first === undefined ? 'The message could not be read.' : `The message could not be read: ${first.where} ${first.what}${others.length === 0 ? '' : `, and ${others.length} more`}.`,
      kept: NOTHING, next: 'Check the entry. If a program sent it, correct the program; the description of the interface names every field.',
    };
  },
  tooLarge: ({ mostBytes }, { format }) => ({ happened: `The message is larger than ${format.count(mostBytes)} bytes.`, kept: NOTHING, next: 'Send it in smaller parts.' }),
  notJson: () => ({ happened: 'The message is not JSON.', kept: NOTHING, next: 'Send JSON, in UTF-8, and say so in Content-Type.' }),
  unknownAddress: ({ path }) => ({ happened: `Nothing stands at ${path}.`, kept: NOTHING, next: 'Check the address; the description of the interface lists them all.' }),
  methodNotAllowed: ({ method, allowed }) => ({ happened: `${method} is not understood at this address.`, kept: NOTHING, next: `Allowed here: ${allowed}.` }),
  staleVersion: ({ stream, seen, actual }, { format }) => ({
    happened: `${stream.slice(stream.indexOf(':') + 1)} has changed since it was shown here (slip ${format.count(seen)} then, ${format.count(actual)} now).`, kept: NOTHING,
    next: 'Look at what is new, then decide again.',
  }),
  clientIdReused: ({ clientId }) => ({ happened: `The number ${clientId} was used before, for another command.`, kept: 'The earlier command stands; this one was not written.', next: 'Send this command with a number of its own.' }),
  tooBusy: () => ({ happened: 'More is coming in than can be taken at the moment.', kept: 'This entry was not written; at the kiosk it waits in the outbox.', next: 'Wait a few seconds. The kiosk sends it again by itself.' }),
  programFault: () => ({ happened: 'The program stumbled over this. It is a fault of the program, not of the entry.', kept: 'This entry was not written; everything before it stands.', next: 'Note what you entered and tell the keeper: the server’s log says where it stumbled. Other work can go on.' }),
  storageFault: () => ({ happened: 'The plant’s store does not take entries at the moment.', kept: 'This entry was not written; at the kiosk it waits in the outbox.', next: 'Go on working. If this stays for minutes, tell the keeper.' }),
  setUpFirst: () => ({ happened: 'This plant has not been opened yet.', kept: NOTHING, next: 'Open the plant first: its name, its address and its first keeper.' }),
};
