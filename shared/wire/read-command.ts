import type { z } from 'zod';
import { envelopeSchema } from './command-schema.ts';
import type { Envelope } from './command-schema.ts';

/** One place that is wrong: a path such as `command.values[3]`, and what is asked for there. */
export interface Problem { readonly where: string; readonly what: string }
export type ReadCommand = { readonly ok: true; readonly envelope: Envelope } | { readonly ok: false; readonly problems: readonly Problem[] };

/** No more places than this are named at a time. */
const MOST_PROBLEMS = 20;

/** Unknown in, a command out, or the places where it is none. Past this function nobody checks a shape again. Never throws. */
export function readCommand(input: unknown): ReadCommand {
  const read = readWith(envelopeSchema, input);
  return read.ok ? { ok: true, envelope: read.value } : read;
}

/** Reads anything else that comes in, such as a sign-in, with the same answer where it is wrong. Never throws. */
export function readWith<T>(schema: z.ZodType<T>, input: unknown): { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: readonly Problem[] } {
  const parsed = schema.safeParse(input);
  if (parsed.success) return { ok: true, value: parsed.data };
  return { ok: false, problems: parsed.error.issues.flatMap(problemsOf).slice(0, MOST_PROBLEMS) };
}

type Issue = z.core.$ZodIssue;

function problemsOf(issue: Issue): Problem[] {
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => ({ where: pathOf([...issue.path, key]), what: 'is not known here' }));
  return [{ where: pathOf(issue.path), what: whatIsWrong(issue) }];
}

/** A path as people write it; the whole message where it is empty. */
function pathOf(path: readonly PropertyKey[]): string {
  const written = path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${String(step)}`)).join('').replace(/^\./, '');
  return written === '' ? 'message' : written;
}

function whatIsWrong(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type': return `must be ${KIND_IN_WORDS[issue.expected] ?? issue.expected}`;
    case 'too_small': return PARTS[issue.origin] === undefined ? `must be ${issue.inclusive === false ? 'above' : 'at least'} ${issue.minimum}` : `must have at least ${issue.minimum} ${PARTS[issue.origin]}`;
    case 'too_big': return PARTS[issue.origin] === undefined ? `must be ${issue.inclusive === false ? 'below' : 'at most'} ${issue.maximum}` : `must have at most ${issue.maximum} ${PARTS[issue.origin]}`;
    case 'invalid_value': return `must be one of: ${issue.values.map(String).join(', ')}`;
    case 'invalid_union': return issue.discriminator === undefined ? issue.message : 'names no form that is known here';
    case 'invalid_format': return issue.format === 'date' ? 'must be a day of the calendar, YYYY-MM-DD' : 'is not written as asked for here';
    default: return issue.message;
  }
}
/** What something is counted in where its size is wrong; numbers have no parts. */
const PARTS: Readonly<Record<string, string>> = { string: 'characters', array: 'entries' };
const KIND_IN_WORDS: Readonly<Record<string, string>> = {
  string: 'text', number: 'a finite number', int: 'a whole number', boolean: 'true or false', object: 'an object', array: 'a list', null: 'null',
};
