import { Source, type Watched } from '../link/watched.ts';
import { routeOf, type Route } from './routes.ts';

const here = new Source<Route>(routeOf(location.pathname + location.search));

/** Where the page is now. */
export const route: Watched<Route> = here;

/** Goes to an address of the kiosk. `replace` leaves no step behind to go back to. */
export function goTo(path: string, how: 'push' | 'replace' = 'push'): void {
  if (how === 'push') history.pushState(null, '', path);
  else history.replaceState(null, '', path);
  arrive();
}

/** Follows links and the back key without loading the page anew. Call once. */
export function listenForNavigation(): void {
  addEventListener('popstate', arrive);
  addEventListener('click', followLink);
}

function arrive(): void {
  here.set(routeOf(location.pathname + location.search));
}

function followLink(event: MouseEvent): void {
  if (event.defaultPrevented || event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
  const anchor = event.composedPath().find((part): part is HTMLAnchorElement => part instanceof HTMLAnchorElement);
  if (anchor === undefined || anchor.target !== '' || anchor.hasAttribute('download') || anchor.origin !== location.origin) return;
  if (anchor.pathname.startsWith('/api/') || anchor.getAttribute('href')?.startsWith('#') === true) return;
  event.preventDefault();
  goTo(anchor.pathname + anchor.search);
}
