import { randomUUID } from 'node:crypto';
import { expect } from 'vitest';
import type { Command, Refusal } from '../../shared/traveller/index.ts';
import type { DoorRefusal, Reply } from '../../shared/wire/reply.ts';

export interface Answered { readonly status: number; readonly body: unknown; readonly headers: Headers }
type No = Extract<Reply, { readonly ok: false }>;

/** A program outside the plant: real HTTP on the loopback, and nothing else. */
export class HttpCaller {
  url: string;
  token = '';

  constructor(url: string) {
    this.url = url;
  }

  async signIn({ badge, pin }: { readonly badge: string; readonly pin: string }, bench: string): Promise<Answered> {
    const answered = await this.post('/api/session', { badge, pin, bench });
    const { body } = answered;
    if (typeof body === 'object' && body !== null && 'token' in body && typeof body.token === 'string') this.token = body.token;
    return answered;
  }

  /** Gives a command under a fresh client id, unless `more` brings one. */
  give(command: Command, more: Record<string, unknown> = {}): Promise<Answered> {
    return this.post('/api/commands', { clientId: randomUUID(), command, bench: 'Bench 1', ...more });
  }

  async mustGive(command: Command, more: Record<string, unknown> = {}): Promise<Extract<Reply, { readonly ok: true }>> {
    const { body, status } = await this.give(command, more);
    expect({ command, status, body }).toMatchObject({ status: 200, body: { ok: true } });
    return body as Extract<Reply, { readonly ok: true }>;
  }

  post(path: string, body: unknown): Promise<Answered> {
    return this.send('POST', path, JSON.stringify(body), { 'content-type': 'application/json' });
  }

  get(path: string): Promise<Answered> {
    return this.send('GET', path);
  }

  async send(method: string, path: string, body?: BodyInit, headers: Record<string, string> = {}): Promise<Answered> {
    const asked = await fetch(`${this.url}${path}`, { method, headers: { ...headers, ...(this.token === '' ? {} : { authorization: `Bearer ${this.token}` }) }, ...(body === undefined ? {} : { body }) });
    const text = await asked.text();
    return { status: asked.status, headers: asked.headers, body: asked.headers.get('content-type')?.includes('json') === true ? JSON.parse(text) : text };
  }
}

/** The refusal in an answer; fails where there is none, or where its words are missing. */
export function refusalIn({ body }: Pick<Answered, 'body'>): Refusal | DoorRefusal {
  expect(body).toMatchObject({ ok: false, words: { happened: expect.stringMatching(/./), kept: expect.stringMatching(/./), next: expect.stringMatching(/./) } });
  return (body as No).refusal;
}
