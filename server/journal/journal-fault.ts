/**
 * What went wrong beneath the journal:
 * - `fault`: this group of entries was not kept; the journal goes on.
 * - `closed`: the journal takes no more entries until it is opened again.
 * - `folderInUse`: another server has it open.
 * - `unknownLayout`: the file is not a journal, or one of a newer release.
 */
export type JournalFaultKind = 'fault' | 'closed' | 'folderInUse' | 'unknownLayout';

/** The disk or the database failed. Never a person's mistake and never a refusal; the entry stays with its sender. */
export class JournalFault extends Error {
  readonly kind: JournalFaultKind;
  constructor(kind: JournalFaultKind, message: string, cause?: unknown) {
    super(message, cause === undefined ? {} : { cause });
    this.name = 'JournalFault';
    this.kind = kind;
  }
}
