/** Whom a slip names where no person gave it: the server's own clock, or a press by its balance. No badge can look like either. */
export const SERVER = 'server';

/** Who gives what a press's balance has sent. */
export function pressGiver(press: string): string {
  return `press:${press}`;
}

/** True for a name on a slip that is no person's badge. */
export function isMachine(by: string): boolean {
  return by === SERVER || by.startsWith('press:');
}
