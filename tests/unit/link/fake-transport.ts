import type { Reply } from '../../../shared/wire/reply.ts';
import type { StampedSlip } from '../../../shared/wire/stamped-slip.ts';
import { Unreachable, type Answer, type Topic, type Transport } from '../../../kiosk/link/transport.ts';
import { Source } from '../../../kiosk/link/watched.ts';

/** What arrived at the fake server. */
export interface Arrived { readonly clientId: string; readonly command: { readonly type: string }; readonly bench: string; readonly pin?: string; readonly waitedMs?: number }

/** A wire whose far end is in the test's hands. Nothing on it takes time: answers come when the test lets them. */
export class FakeTransport implements Transport {
  readonly live = new Source(false);
  readonly arrived: Arrived[] = [];
  readonly watched: unknown[] = [];
  versions: Readonly<Record<string, number>> = {};
  answers: Readonly<Record<string, Answer>> = {};
  /** Answers a command; `lost` writes it and answers nothing. */
  reply: (entry: Arrived) => Reply | 'lost' | Promise<Reply | 'lost'> = (entry) => accepted(entry);
  reachable = true;
  hearSlips: (slips: readonly StampedSlip[]) => void = () => undefined;
  hearChanged: (topics: readonly Topic[]) => void = () => undefined;

  open(): void {
    if (this.reachable) this.live.set(true);
  }
  close(): void {
    this.live.set(false);
  }
  /** The network goes, or comes back. */
  set network(there: boolean) {
    this.reachable = there;
    this.live.set(there);
  }

  async request(method: 'GET' | 'POST' | 'DELETE', path: string, body?: unknown): Promise<Answer> {
    if (!this.reachable) throw new Unreachable(false);
    if (method === 'POST' && path === '/api/session') return { status: 200, body: { token: 't', name: 'Nell Harrow', roles: ['inspector'], bench: 'Gauge room', badge: 'I-301', ...(typeof body === 'object' ? body : {}) } };
    if (path === '/api/commands') return { status: 200, body: await this.#take(body as Arrived) };
    return this.answers[path] ?? { status: 404, body: { ok: false, refusal: { code: 'unknownAddress', path }, words: { happened: 'Nothing stands there.', kept: '', next: '' } } };
  }

  async say(event: 'command' | 'ask' | 'watch' | 'unwatch', payload: unknown): Promise<unknown> {
    if (!this.live.value) throw new Unreachable(false);
    if (event === 'command') return this.#take(payload as Arrived);
    if (event === 'ask') return this.answers[String(payload)] ?? { status: 404, body: null };
    if (event === 'watch') this.watched.push(payload);
    return { versions: this.versions };
  }
  onSlips(hear: (slips: readonly StampedSlip[]) => void): void {
    this.hearSlips = hear;
  }
  onChanged(hear: (topics: readonly Topic[]) => void): void {
    this.hearChanged = hear;
  }

  async #take(entry: Arrived): Promise<Reply> {
    this.arrived.push(entry);
    const reply = await this.reply(entry);
    if (reply === 'lost') throw new Unreachable(true);
    return reply;
  }
}

/** The server's yes. */
export function accepted(_: Arrived): Reply {
  return { ok: true, slips: [], repeated: false };
}
/** A no of the trade. */
export const refused: Reply = { ok: false, refusal: { code: 'subjectIsHeld', subject: 'L26-0001', hold: 'L26-0001-H1', reason: 'cracks' }, words: { happened: 'The lot is on hold.', kept: '', next: '' } };
/** A no that passes by itself. */
export const storageFault: Reply = { ok: false, refusal: { code: 'storageFault' }, words: { happened: '', kept: '', next: '' } };
