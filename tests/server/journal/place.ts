import type { Journal } from '../../../server/journal/journal.ts';

/** A place one journal can be opened in, closed, meddled with and opened again. */
export interface Place {
  open(): Promise<Journal>;
  /** Replaces the text of a body behind the closed journal's back. */
  replaceBody(stream: string, version: number, bodyText: string): Promise<void>;
  /** As replaceBody, and makes the slip's own hash fit. */
  replaceBodyAndHash(stream: string, version: number, bodyText: string): Promise<void>;
  removeSlip(stream: string, version: number): Promise<void>;
  clear(): Promise<void>;
}
