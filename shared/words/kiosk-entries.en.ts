import type { Command } from '../traveller/index.ts';

type Entry = Extract<Command, { type: 'takeReading' | 'takeWeights' | 'recordFinding' | 'withdrawFinding' | 'takeLook' | 'completeSample' | 'correctReading' | 'recordSort' | 'hold' | 'addNote' | 'takeStudyReading' | 'correctStudyReading' | 'withdrawStudyReading' }>;
type EntryWords = { readonly [Type in Entry['type']]: (entry: Extract<Entry, { type: Type }>, written: (value: number) => string) => string };

const value = (of: number | string | boolean | null, written: (value: number) => string): string => (typeof of === 'number' ? written(of) : typeof of === 'boolean' ? (of ? 'yes' : 'no') : of ?? 'worked out from what was read');

/** What an entry says while it waits in the outbox, where only the entry itself is known. */
export const kioskEntryWords: EntryWords = {
  takeReading: (entry, written) => `Reading ${entry.ordinal} of ${entry.characteristic}: ${value(entry.value, written)}`,
  takeWeights: ({ fromPiece, values }) => `Weights of pieces ${fromPiece} to ${fromPiece + values.length - 1}`,
  recordFinding: ({ code, pieces }) => `Found: ${code}, ${pieces === 1 ? '1 piece' : `${pieces} pieces`}`,
  withdrawFinding: ({ finding, reason }) => `Finding on slip ${finding} withdrawn: ${reason}`,
  takeLook: ({ look, found }) => `Look ${look}: ${found === 0 ? 'none found' : `${found} found`}`,
  completeSample: ({ looked }) => `Sample done: ${looked} looked at`,
  correctReading: (entry, written) => `Reading ${entry.ordinal} of ${entry.characteristic} corrected to ${value(entry.value, written)}: ${entry.reason}`,
  recordSort: ({ looked, removed }) => `Sorted: ${looked} looked at, ${removed.reduce((sum, { pieces }) => sum + pieces, 0)} taken out`,
  hold: ({ reason }) => `Put on hold: ${reason}`,
  addNote: ({ text }) => `Note: ${text}`,
  takeStudyReading: ({ study, value: read }, written) => `Study ${study}: ${written(read)}`,
  correctStudyReading: ({ study, reading, value: read, reason }, written) => `Study ${study}, reading ${reading} corrected to ${written(read)}: ${reason}`,
  withdrawStudyReading: ({ study, reading, reason }) => `Study ${study}, reading ${reading} withdrawn: ${reason}`,
};
export type KioskEntryWords = EntryWords;
