import { io, type Socket } from 'socket.io-client';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import { Unreachable, type Answer, type Topic, type Transport } from './transport.ts';
import { Source } from './watched.ts';

/** Longest wait for an answer before the server counts as out of reach, ms. */
const longestWaitMs = 5000;

/** The wire of the real kiosk: socket.io and fetch on the address the page came from; the sign-on cookie goes with both. */
export class LiveTransport implements Transport {
  readonly live = new Source(false);
  readonly #socket: Socket;

  constructor() {
    this.#socket = io({ autoConnect: false, withCredentials: true, reconnectionDelay: 400, reconnectionDelayMax: 3000, timeout: longestWaitMs });
    this.#socket.on('connect', () => this.live.set(true));
    this.#socket.on('disconnect', () => this.live.set(false));
    // The browser often knows of a pulled cable long before a missed heartbeat shows it.
    addEventListener('offline', () => this.#drop());
    addEventListener('online', () => {
      if (this.#socket.active) this.#socket.connect();
    });
  }

  open(): void {
    this.#socket.disconnect();
    this.#socket.connect();
  }

  close(): void {
    this.#socket.disconnect();
  }

  async request(method: 'GET' | 'POST' | 'DELETE', path: string, body?: unknown): Promise<Answer> {
    const asked: RequestInit = { method, credentials: 'same-origin', signal: AbortSignal.timeout(longestWaitMs), headers: { accept: 'application/json' } };
    try {
      const response = await fetch(path, body === undefined ? asked : { ...asked, headers: { ...asked.headers, 'content-type': 'application/json' }, body: JSON.stringify(body) });
      const text = await response.text();
      return { status: response.status, body: text === '' ? null : JSON.parse(text) };
    } catch {
      // Cut off, timed out, or answered by something that is not the server: in each case nothing is known to have arrived.
      throw new Unreachable(method !== 'GET');
    }
  }

  async say(event: 'command' | 'ask' | 'watch' | 'unwatch', payload: unknown): Promise<unknown> {
    if (!this.#socket.connected) throw new Unreachable(false);
    try {
      return await this.#socket.timeout(longestWaitMs).emitWithAck(event, payload);
    } catch {
      this.#drop();
      throw new Unreachable(true);
    }
  }

  onSlips(hear: (slips: readonly StampedSlip[]) => void): void {
    this.#socket.on('slips', hear);
  }

  onChanged(hear: (topics: readonly Topic[]) => void): void {
    this.#socket.on('changed', ({ topics }: { readonly topics: readonly Topic[] }) => hear(topics));
  }

  /** Gives up a channel that does not answer; it comes back by itself. */
  #drop(): void {
    if (this.#socket.connected) this.#socket.io.engine.close();
  }
}
