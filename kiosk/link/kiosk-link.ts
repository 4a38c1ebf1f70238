import { Link } from './link.ts';
import { LiveTransport } from './live-transport.ts';
import { openOutboxStore } from './outbox-store.ts';
import type { LinkRefusal, RefusalText } from './outcome.ts';

/** The kiosk's link. It is there once `openLink` has been called, which the shell does before any desk is loaded. */
export let link: Link;

/** Opens the kiosk's link, once, before anything else. @param words says what a refusal of the link itself means */
export async function openLink(words: (refusal: LinkRefusal) => RefusalText): Promise<Link> {
  const store = await openOutboxStore();
  link = await Link.open({ transport: new LiveTransport(), store, words, now: () => Date.now(), later: (ms, then) => void setTimeout(then, ms) });
  return link;
}
