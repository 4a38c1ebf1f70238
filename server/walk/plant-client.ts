import { randomUUID } from 'node:crypto';
import type { Command } from '../../shared/traveller/index.ts';
import type { Reply } from '../../shared/wire/reply.ts';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';

/** Somebody of the plant, as an outside program knows them. */
export interface Caller { readonly badge: string; readonly pin: string }

/** The plant said no, or something that is no answer came back. */
export class DoorSaidNo extends Error {
  constructor(what: string, status: number, body: unknown) { super(`${what}: ${status} ${JSON.stringify(body)}`); this.name = 'DoorSaidNo'; }
}

/** An outside program's view of the plant: the public HTTP door and nothing else. */
export class PlantClient {
  readonly #url: string;
  readonly #tokens = new Map<string, string>();
  readonly #told: (slips: readonly StampedSlip[]) => void;

  constructor(url: string, told: (slips: readonly StampedSlip[]) => void) {
    this.#url = url;
    this.#told = told;
  }

  /** Gives one command as this person; signed commands carry the PIN. @throws DoorSaidNo on any refusal */
  async give(caller: Caller, bench: string, command: Command, signed = false): Promise<readonly StampedSlip[]> {
    const reply = await this.ask(caller, bench, command, signed);
    if (!reply.ok) throw new DoorSaidNo(`${caller.badge} ${command.type}`, 409, reply);
    this.#told(reply.slips);
    return reply.slips;
  }

  /** Gives one command and hands back the answer as it is, refusals too. */
  async ask(caller: Caller, bench: string, command: Command, signed = false): Promise<Reply> {
    const clientId = `${Date.now().toString(36)}-${randomUUID()}`;
    const response = await fetch(`${this.#url}/api/commands`, {
      method: 'POST', headers: { 'content-type': 'application/json', authorization: `Bearer ${await this.#token(caller, bench)}` },
      body: JSON.stringify({ clientId, command, bench, ...(signed ? { pin: caller.pin } : {}) }),
    });
    return await response.json() as Reply;
  }

  /** Opens the empty plant; the only command that needs nobody signed in. */
  async openPlant(command: Extract<Command, { type: 'openPlant' }>): Promise<void> {
    const response = await fetch(`${this.#url}/api/commands`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ clientId: randomUUID(), command, bench: 'Office' }) });
    if (!response.ok) throw new DoorSaidNo('openPlant', response.status, await response.json());
  }

  async json<T>(caller: Caller, path: string): Promise<T> {
    const response = await this.#get(caller, path);
    return await response.json() as T;
  }
  async bytes(caller: Caller, path: string): Promise<Uint8Array> {
    return new Uint8Array(await (await this.#get(caller, path)).arrayBuffer());
  }

  async #get(caller: Caller, path: string): Promise<Response> {
    const response = await fetch(`${this.#url}${path}`, { headers: { authorization: `Bearer ${await this.#token(caller, 'Walk')}` } });
    if (!response.ok) throw new DoorSaidNo(path, response.status, await response.text());
    return response;
  }

  async #token(caller: Caller, bench: string): Promise<string> {
    const known = this.#tokens.get(caller.badge);
    if (known !== undefined) return known;
    const response = await fetch(`${this.#url}/api/session`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ badge: caller.badge, pin: caller.pin, bench }) });
    if (!response.ok) throw new DoorSaidNo(`sign-on of ${caller.badge}`, response.status, await response.text());
    const { token } = await response.json() as { token: string };
    this.#tokens.set(caller.badge, token);
    return token;
  }
}
