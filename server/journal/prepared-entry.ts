import { OutsideDomain, requireWhole } from '../../shared/ground/outside-domain.ts';
import type { Entry, Expectation, SlipBody } from './journal.ts';

/** A body as text, as it will be stored and hashed, and as everyone will read it back. */
export interface PreparedBody {
  readonly text: string;
  readonly body: SlipBody;
  readonly schema: number;
}

/** An entry checked and turned to text, so that nobody can change it between its arrival and the disk. */
export interface PreparedEntry {
  readonly clientId: string;
  readonly at: string;
  readonly by: string;
  readonly bench: string;
  readonly changes: readonly (Expectation & { readonly bodies: readonly PreparedBody[] })[];
  readonly checks: readonly Expectation[];
  readonly answerText: string | null;
}

const utcTime = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,9})?Z$/;
// A lone surrogate would come back from the database as another character, and the hash would no longer hold.
const unstorable = /[\p{Cc}\p{Cs}]/u;

function requireName(argument: string, value: string): string {
  if (value === '' || unstorable.test(value)) throw new OutsideDomain(argument, 'text without control characters, not empty', JSON.stringify(value));
  return value;
}

function prepareBody(given: SlipBody, schemaOf: (type: string) => number): PreparedBody {
  const text = JSON.stringify(given);
  const body: SlipBody = JSON.parse(text);
  if (typeof body !== 'object' || body === null || typeof body.type !== 'string') throw new OutsideDomain('body', 'a JSON object with a type', text);
  requireName('body.type', body.type);
  const schema = schemaOf(body.type);
  requireWhole('schema', schema, 1, 1_000_000);
  return { text, body, schema };
}

function prepareExpectation({ stream, expectedVersion }: Expectation): Expectation {
  requireWhole('expectedVersion', expectedVersion, 0, Number.MAX_SAFE_INTEGER);
  return { stream: requireName('stream', stream), expectedVersion };
}

/**
 * Checks an entry's form and takes it over as text.
 * @param schemaOf present schema number of a slip type
 * @throws OutsideDomain naming what is malformed
 */
export function prepareEntry(entry: Entry, schemaOf: (type: string) => number): PreparedEntry {
  if (!utcTime.test(entry.at)) throw new OutsideDomain('at', 'an ISO 8601 time in UTC', entry.at);
  return {
    clientId: requireName('clientId', entry.clientId),
    at: entry.at,
    by: requireName('by', entry.by),
    bench: requireName('bench', entry.bench),
    changes: entry.changes.map((change) => ({ ...prepareExpectation(change), bodies: change.bodies.map((body) => prepareBody(body, schemaOf)) })),
    checks: (entry.checks ?? []).map(prepareExpectation),
    answerText: entry.answer === undefined ? null : JSON.stringify(entry.answer) ?? null,
  };
}
