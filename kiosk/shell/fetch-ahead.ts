import type { Role } from '../../shared/traveller/index.ts';
import { loadDesk } from './desk-modules.ts';

/** People whose work goes on without a network, and so needs its code here before the network goes. */
const AT_BENCHES: readonly Role[] = ['inspector', 'lab', 'engineer'];

/** Fetches what must be at hand when the network goes: the outbox, the menu, and at a bench the traveller. Failing, it is fetched when wanted. */
export function fetchAhead(roles: readonly Role[]): void {
  const wanted: (() => Promise<unknown>)[] = [() => import('./gh-outbox-sheet.ts'), () => import('./gh-kiosk-menu.ts')];
  if (AT_BENCHES.some((role) => roles.includes(role))) wanted.push(() => loadDesk('bench'), () => loadDesk('traveller'));
  // After the first paint: none of it is needed to begin.
  setTimeout(() => void Promise.allSettled(wanted.map((load) => load())), 300);
}
