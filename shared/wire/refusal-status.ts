import type { Refusal } from '../traveller/index.ts';
import type { DoorRefusal } from './reply.ts';

/** The refusals that have an HTTP status of their own; every other one answers 409. */
const STATUS: Readonly<Partial<Record<(Refusal | DoorRefusal)['code'], number>>> = {
  malformed: 400, notJson: 400, notSignedIn: 401, signInFailed: 401, wrongPin: 401, notYourRole: 403, notFound: 404, unknownAddress: 404, methodNotAllowed: 405,
  tooLarge: 413, signInLocked: 429, tooBusy: 429, storageFault: 503,
};

/** The HTTP status that a refusal is answered with. */
export function refusalStatus(code: (Refusal | DoorRefusal)['code']): number {
  return STATUS[code] ?? 409;
}
