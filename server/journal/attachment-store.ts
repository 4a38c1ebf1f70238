/** A file beside the journal. `digest` is SHA-256 of its bytes in hexadecimal: its only name. */
export interface Attachment { readonly digest: string; readonly bytes: Buffer }

/** Largest file kept, bytes. */
export const MOST_ATTACHMENT_BYTES = 8 * 1024 * 1024;

/**
 * Keeps files that slips name by their digest, in a field `attachment` of the slip's body. A file is never changed and never taken away; the
 * same file again is kept once. It lies in the journal's own database, so a copy of that has it, and the walk through the journal checks it.
 */
export interface AttachmentStore {
  /** Keeps a file; resolves with its digest when durable. @throws OutsideDomain when it is empty or larger than may be */
  put(bytes: Buffer): Promise<string>;
  /** The file of that digest, or null. @throws JournalFault when what is kept is not what was handed in */
  get(digest: string): Promise<Attachment | null>;
}
