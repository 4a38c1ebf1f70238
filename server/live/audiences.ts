import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';

/** Connections that are to hear of the same slips. */
export interface Audience {
  readonly sockets: string[];
  readonly slips: StampedSlip[];
}

/**
 * Who is to be told what. Each connection stands in one audience at most and hears in it all that is new of the streams it watches, in
 * order of arrival; connections that watch the same of it stand together. Under load this saves a kiosk that watches several lots most of
 * its messages. A stream that nobody watches is passed over.
 * @param watchersOf ids of the connections that watch a stream
 */
export function audiences(news: readonly StampedSlip[], watchersOf: (stream: string) => ReadonlySet<string> | undefined): Iterable<Audience> {
  const [only] = news;
  if (only !== undefined && news.length === 1) {
    const sockets = [...watchersOf(only.stream) ?? []];
    return sockets.length === 0 ? [] : [{ sockets, slips: [only] }];
  }
  const heardBy = new Map<string, { places: string; readonly slips: StampedSlip[] }>();
  news.forEach((slip, place) => {
    for (const socket of watchersOf(slip.stream) ?? []) {
      const heard = heardBy.get(socket);
      if (heard === undefined) heardBy.set(socket, { places: `${place}`, slips: [slip] });
      else {
        heard.places += `,${place}`;
        heard.slips.push(slip);
      }
    }
  });
  const together = new Map<string, Audience>();
  for (const [socket, { places, slips }] of heardBy) {
    const others = together.get(places);
    if (others === undefined) together.set(places, { sockets: [socket], slips });
    else others.sockets.push(socket);
  }
  return together.values();
}
