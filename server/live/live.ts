import type { Server as HttpServer, IncomingMessage } from 'node:http';
import { Server, type Socket } from 'socket.io';
import { z } from 'zod';
import type { Session } from '../../shared/wire/views.ts';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import { faultRefusal } from '../door/fault-refusal.ts';
import { told } from '../door/told.ts';
import { topicsOf, type Topic } from '../door/topics.ts';
import { refused } from '../http/answer.ts';
import { askForJson } from '../http/ask.ts';
import type { Plant } from '../http/plant.ts';
import { tokenOf } from '../http/token-of.ts';
import { openFeedChannel } from './feed-channel.ts';
import { audiences } from './audiences.ts';

/** Larger than any command can be (the schemas bound every text and list), so that what is too long is answered in words; beyond it the line is cut. */
const mostMessageBytes = 1024 * 1024;
/** Shortest time between two words that lists have changed. */
const changedEveryMs = 300;
/** Streams one kiosk may ask for at a time, and watch in all. */
const mostStreams = 200;
const mostWatched = 2_000;

const streamsSchema = z.array(z.string().max(300)).max(mostStreams);
type Ack = (answer: unknown) => void;
/** What a connection keeps: the key of the session it came with. */
interface Held { readonly key: string }
type Connection = Socket<Record<string, (...args: unknown[]) => void>, Record<string, (...args: unknown[]) => void>, Record<string, never>, Held>;

/** The live channel: commands come in and slips go out, by the same door and the same readers as over HTTP. */
export class Live {
  readonly #plant: Plant;
  readonly #io: Server<Record<string, (...args: unknown[]) => void>, Record<string, (...args: unknown[]) => void>, Record<string, never>, Held>;
  #news: StampedSlip[] = [];
  readonly #topics = new Set<Topic>();
  #changedTimer: NodeJS.Timeout | null = null;

  constructor(http: HttpServer, plant: Plant) {
    this.#plant = plant;
    this.#io = new Server(http, { serveClient: false, maxHttpBufferSize: mostMessageBytes, allowRequest: (request, decide) => decide(null, isOwnPage(request, plant.trustProxy)) });
    this.#io.use((socket, next) => {
      plant.signOn.find(tokenAt(socket)).then((holder) => {
        if (holder === null) return next(new Error('notSignedIn'));
        socket.data = { key: holder.signedOn.key } satisfies Held;
        void socket.join(`session:${holder.signedOn.key}`);
        next();
      }, next);
    });
    this.#io.on('connection', (socket) => this.#welcome(socket));
    openFeedChannel(this.#io, plant);
    plant.door.onWritten((slips) => this.#hear(slips));
    plant.sessions.onEnd((key) => this.#io.in(`session:${key}`).disconnectSockets());
  }

  async close(): Promise<void> {
    if (this.#changedTimer !== null) clearTimeout(this.#changedTimer);
    await this.#io.close();
  }

  #welcome(socket: Connection): void {
    const { door, log } = this.#plant;
    const fault = (error: unknown): void => log.error({ err: error }, 'a live question could not be answered');
    socket.on('command', (envelope: unknown, ack: unknown) => {
      door.give(envelope, this.#plant.sessions.use(socket.data.key)).then((reply) => answer(ack, reply)).catch(fault);
    });
    socket.on('ask', (path: unknown, ack: unknown) => {
      this.#ask(socket, path).then((said) => answer(ack, said)).catch((error: unknown) => {
        fault(error);
        answer(ack, refused(faultRefusal(error)));
      });
    });
    socket.on('watch', (streams: unknown, ack: unknown) => void this.#watch(socket, streams, ack).catch(fault));
    socket.on('unwatch', (streams: unknown, ack: unknown) => {
      const read = streamsSchema.safeParse(streams);
      if (read.success) for (const stream of read.data) void socket.leave(roomOf(stream));
      answer(ack, read.success ? { ok: true } : badStreams());
    });
  }

  async #session(socket: Connection): Promise<Session | null> {
    return (await this.#plant.signOn.find(tokenAt(socket)))?.session ?? null;
  }

  async #ask(socket: Connection, path: unknown): Promise<unknown> {
    if (typeof path !== 'string') return refused({ code: 'malformed', problems: [{ where: 'path', what: 'must be text' }] });
    return askForJson(this.#plant, path, await this.#session(socket));
  }

  /** Joins the rooms first and asks for the versions then, so that nothing falls in between. */
  async #watch(socket: Connection, streams: unknown, ack: unknown): Promise<void> {
    const read = streamsSchema.safeParse(streams);
    if (!read.success || socket.rooms.size + read.data.length > mostWatched) return answer(ack, badStreams());
    if ((await this.#session(socket)) === null) return answer(ack, told({ code: 'notSignedIn' }));
    for (const stream of read.data) void socket.join(roomOf(stream));
    const versions: Record<string, number> = {};
    for (const stream of read.data) versions[stream] = await this.#plant.journal.versionOf(stream);
    answer(ack, { versions });
  }

  /** All that became durable in one commit goes out together, once its own senders have been answered to. */
  #hear(slips: readonly StampedSlip[]): void {
    if (this.#news.length === 0) queueMicrotask(() => this.#spread());
    this.#news.push(...slips);
  }

  /** Kiosks that watch the same of what is new hear one message of it all, and it is turned to text once for them together. */
  #spread(): void {
    const news = this.#news;
    this.#news = [];
    for (const slip of news) for (const topic of topicsOf(slip)) this.#topics.add(topic);
    for (const { sockets, slips } of audiences(news, (stream) => this.#io.sockets.adapter.rooms.get(roomOf(stream)))) this.#io.to(sockets).emit('slips', slips);
    if (this.#topics.size > 0) this.#changedTimer ??= setTimeout(() => this.#tellChanged(), changedEveryMs);
  }

  #tellChanged(): void {
    this.#changedTimer = null;
    this.#io.emit('changed', { topics: [...this.#topics] });
    this.#topics.clear();
  }
}

function answer(ack: unknown, said: unknown): void {
  if (typeof ack === 'function') (ack as Ack)(said);
}

function badStreams(): unknown {
  return told({ code: 'malformed', problems: [{ where: 'streams', what: `must be a list of at most ${mostStreams} names of streams` }] });
}

function roomOf(stream: string): string {
  return `stream:${stream}`;
}

function tokenAt({ handshake }: Socket): string | null {
  const token: unknown = handshake.auth['token'];
  return typeof token === 'string' ? token : tokenOf({ headers: handshake.headers });
}

/** A page of another site may not speak here in the name of who is signed on. Programs send no origin. */
function isOwnPage({ headers }: IncomingMessage, trustProxy: boolean): boolean {
  if (headers.origin === undefined) return true;
  const forwarded = trustProxy ? headers['x-forwarded-host'] : undefined;
  const host = typeof forwarded === 'string' ? forwarded : headers.host;
  return URL.canParse(headers.origin) && new URL(headers.origin).host === host;
}
