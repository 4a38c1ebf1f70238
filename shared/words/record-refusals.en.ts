import { labelOf } from './words-for.ts';
import type { RefusalWords } from './told-refusal.ts';

const NOTHING = 'Nothing was written.';

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
  planUnsound: ({ where, why }) => ({ happened: `The plan cannot be worked as it is. At ${where}: ${why}.`, kept: 'No version was drafted.', next: 'Put this place right and draft again.' }),
  notDiscontinued: ({ switching, severity }, { labels }) => ({
    happened: `${switching.slice(switching.indexOf(':') + 1)} is not discontinued; it stands on ${labelOf(labels.severities, severity)}.`, kept: NOTHING, next: 'Inspection goes on; nothing needs to be resumed.',
  }),
  identifierUnfit: ({ field, value, rule }) => ({ happened: `${value === '' ? 'An empty entry' : value} cannot stand as ${field}.`, kept: NOTHING, next: `Asked for: ${rule}.` }),
  lastKeeper: ({ badge }) => ({ happened: `${badge} is a keeper and cannot take that right from themselves.`, kept: NOTHING, next: 'Let another keeper make this change, so that the plant always has one.' }),
  personInactive: ({ badge }) => ({ happened: `${badge} is no longer active.`, kept: NOTHING, next: 'The keeper can make the person active again.' }),
} satisfies Partial<RefusalWords>;
