/** Slips that no list shows: the entries of a sample under way. The commonest of all, so they are passed over first. */
const UNSEEN: ReadonlySet<string> = new Set([
  'readingTaken', 'weightsTaken', 'findingRecorded', 'findingWithdrawn', 'sampleCompleted', 'readingCorrected', 'noteAdded', 'furnaceLogAttached', 'headsSigned', 'pinChanged',
]);

/** Does a slip of this type leave every list as it is? */
export function isUnseen(type: string): boolean {
  return UNSEEN.has(type);
}
