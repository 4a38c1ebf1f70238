import type { Server } from 'socket.io';
import { feedBatchSchema } from '../../shared/wire/feed-schema.ts';
import { readWith } from '../../shared/wire/read-command.ts';
import { told } from '../door/told.ts';
import type { Plant } from '../http/plant.ts';

/** The channel of balances, `/feed`: a connection is one press's, by its own token, and says `weights` with a batch. The answers are those of HTTP. */
export function openFeedChannel(io: Server, { pressTokens, feeds, log }: Pick<Plant, 'pressTokens' | 'feeds' | 'log'>): void {
  const channel = io.of('/feed');
  channel.use((socket, next) => {
    const { press, token }: { press?: unknown; token?: unknown } = socket.handshake.auth;
    if (typeof press !== 'string' || typeof token !== 'string') return next(new Error('notSignedIn'));
    pressTokens.fits(press, token).then((fits) => next(fits ? undefined : new Error('notSignedIn')), next);
  });
  channel.on('connection', (socket) => {
    const [press, token] = [String(socket.handshake.auth['press']), String(socket.handshake.auth['token'])];
    socket.on('weights', (batch: unknown, ack: unknown) => {
      const answer = (said: unknown): void => {
        if (typeof ack === 'function') (ack as (said: unknown) => void)(said);
      };
      const read = readWith(feedBatchSchema, batch);
      if (!read.ok) return answer(told({ code: 'malformed', problems: read.problems }));
      // Asked each time: a token that was renewed or ended ends the connections made with it.
      pressTokens.fits(press, token).then(async (fits) => {
        if (fits) return answer(await feeds.take(press, read.value));
        answer(told({ code: 'notSignedIn' }));
        socket.disconnect();
      }).catch((fault: unknown) => {
        log.error({ err: fault }, 'a batch of weights could not be taken');
        answer(told({ code: 'programFault' }));
      });
    });
  });
}
