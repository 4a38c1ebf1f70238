import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import type { Watched } from './watched.ts';

/** What the server says has changed, so that lists are read again. */
export type Topic = 'bench' | 'release' | 'packing' | 'switching' | 'people' | 'catalogue' | 'presses' | 'studies' | 'charts';
export interface Answer { readonly status: number; readonly body: unknown }

/** Thrown by a transport when no answer came. */
export class Unreachable extends Error {
  /** True when the request was under way, so that it may have arrived. */
  readonly sent: boolean;
  constructor(sent: boolean) {
    super(sent ? 'no answer came' : 'the server is out of reach');
    this.name = 'Unreachable';
    this.sent = sent;
  }
}

/** The wire under the link. The kiosk uses the live channel with plain requests beside it; tests use one of their own. */
export interface Transport {
  /** True while the live channel stands. */
  readonly live: Watched<boolean>;
  /** Opens the live channel for whoever is signed in now; an open one is renewed. */
  open(): void;
  close(): void;
  /** One plain request. @throws Unreachable */
  request(method: 'GET' | 'POST' | 'DELETE', path: string, body?: unknown): Promise<Answer>;
  /** One message on the live channel, and its answer. @throws Unreachable also while the channel is down */
  say(event: 'command' | 'ask' | 'watch' | 'unwatch', payload: unknown): Promise<unknown>;
  onSlips(hear: (slips: readonly StampedSlip[]) => void): void;
  onChanged(hear: (topics: readonly Topic[]) => void): void;
}
