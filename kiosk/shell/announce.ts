import { Source, type Watched } from '../link/watched.ts';

const said = new Source('');

/** What the frame's live region says now. */
export const announced: Watched<string> = said;

/** Says one thing through a live region, for those who do not see the screen. The newest replaces the one before. */
export function announce(text: string): void {
  // The same words twice in a row are still news: a space more makes the region speak again.
  said.set(text === said.value ? `${text} ` : text);
}
