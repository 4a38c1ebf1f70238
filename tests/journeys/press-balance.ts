import { expect } from './plant.ts';
import type { Kiosk, Plant } from './plant.ts';

/** A press's balance: a program with a token of its own that sends weights over HTTP and counts them. */
export class PressBalance {
  readonly #url: string;
  readonly #token: string;
  #seq = 0;
  private constructor(url: string, token: string) { this.#url = url; this.#token = token; }

  /** Gets its token from an engineer signed on at this kiosk. */
  static async from(plant: Plant, engineer: Kiosk, press: string): Promise<PressBalance> {
    const reply = await engineer.page.request.post(`/api/presses/${press}/token`, { data: {} });
    expect(reply.status()).toBe(200);
    return new PressBalance(`${plant.server.url}/api/presses/${press}/weights`, ((await reply.json()) as { token: string }).token);
  }

  /** Sends pieces as they are made; every one must be stored. */
  async send(values: readonly number[]): Promise<void> {
    for (let at = 0; at < values.length; at += 60) {
      const some = values.slice(at, at + 60);
      const response = await fetch(this.#url, { method: 'POST', headers: { 'content-type': 'application/json', authorization: `Bearer ${this.#token}` }, body: JSON.stringify({ fromSeq: this.#seq + 1, values: some, now: true }) });
      expect(await response.json()).toMatchObject({ ok: true, stored: this.#seq + some.length });
      this.#seq += some.length;
    }
  }
}
