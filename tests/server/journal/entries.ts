import type { Entry, SlipBody } from '../../../server/journal/journal.ts';

/** A body with a few fields of its own, for tests that read them back. */
export interface Reading extends SlipBody {
  readonly type: 'readingTaken';
  readonly piece: number;
  readonly value: number;
}

export function reading(piece: number, value = 4.76): Reading {
  return { type: 'readingTaken', piece, value };
}

type Change = Entry['changes'][number];

/** An entry as one bench would send it. */
export function entryOf(clientId: string, changes: readonly Change[], more: Pick<Entry, 'answer' | 'checks'> = {}): Entry {
  return { clientId, at: '2025-03-03T06:30:00.000Z', by: 'B-07', bench: 'final visual 2', changes, ...more };
}

/** An entry of one reading for one stream. */
export function readingFor(stream: string, expectedVersion: number, clientId = `${stream}/${expectedVersion + 1}`): Entry {
  return entryOf(clientId, [{ stream, expectedVersion, bodies: [reading(expectedVersion + 1)] }]);
}
