import { spawn, type ChildProcess } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { build } from 'esbuild';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openSqliteJournal } from '../../server/journal/sqlite/open-sqlite-journal.ts';
import { journalFile } from '../../server/start-server.ts';
import { feedAnswerSchema, type FeedBatch } from '../../shared/wire/feed-schema.ts';
import { PressPlant } from '../server/feed/press-plant.ts';
import { dice } from './dice.ts';

const lives = 8;
/** What piece number `seq` weighs: another for each of its neighbours, so that a weight in the wrong place is seen. */
const weightOf = (seq: number): number => (9_980 + (seq * 17) % 41) / 1_000;
const weights = (from: number, to: number): number[] => Array.from({ length: to - from + 1 }, (_, at) => weightOf(from + at));
const block = z.object({ fromPiece: z.number(), values: z.array(z.number()), feed: z.object({ fromSeq: z.number() }) });

/** A balance's program: it keeps every weight until it was told that it is stored, and makes more. */
class Sender {
  /** Last number the server has ever confirmed as stored. */
  stored = 0;
  made = 0;
  readonly #token: string;
  constructor(token: string) { this.#token = token; }

  /** Sends what is not confirmed, and so many more; false when the server was gone before it answered. */
  async send(url: string, more: number, now: boolean): Promise<boolean> {
    this.made += more;
    const batch: FeedBatch = { fromSeq: this.stored + 1, values: weights(this.stored + 1, this.made), now };
    let answered: unknown;
    try {
      const response = await fetch(`${url}/api/presses/PR-1/weights`, { method: 'POST', headers: { 'content-type': 'application/json', authorization: `Bearer ${this.#token}` }, body: JSON.stringify(batch) });
      answered = await response.json();
    } catch {
      return false;
    }
    const { stored } = feedAnswerSchema.parse(answered);
    expect(stored ?? 0, 'what was stored stays stored').toBeGreaterThanOrEqual(this.stored);
    this.stored = stored ?? 0;
    return true;
  }
}

describe('a server killed in the midst of a feed', () => {
  let press: PressPlant;
  let child: string;
  let running: ChildProcess | null = null;
  beforeEach(async () => {
    press = await PressPlant.open();
    await press.plant.server.close();
    // Beside the packages, which stay outside the bundle.
    const out = join('tests', 'results', `feeding-${process.pid}`);
    mkdirSync(out, { recursive: true });
    child = join(out, 'feeding-child.mjs');
    await build({ entryPoints: ['tests/faults/feeding-child.ts'], outfile: child, bundle: true, platform: 'node', format: 'esm', target: 'node20', packages: 'external', logLevel: 'error' });
  });
  afterEach(() => {
    running?.kill('SIGKILL');
    rmSync(press.plant.folder, { recursive: true, force: true });
    rmSync(join(child, '..'), { recursive: true, force: true });
  });

  async function start(): Promise<string> {
    running = spawn(process.execPath, [child, press.plant.folder], { stdio: ['ignore', 'pipe', 'inherit'] });
    if (running.stdout === null) throw new Error('the child has no output');
    for await (const line of createInterface({ input: running.stdout })) return line;
    throw new Error('the server did not start');
  }
  async function kill(): Promise<void> {
    if (running === null) return;
    const gone = once(running, 'exit');
    running.kill('SIGKILL');
    await gone;
    running = null;
  }

  /** Every weight on the lot's thread, by the number its balance gave it, in the order they stand there. */
  async function onThread(): Promise<{ readonly seq: number; readonly piece: number; readonly value: number }[]> {
    const journal = await openSqliteJournal({ file: journalFile(press.plant.folder), projections: [] });
    expect((await journal.verify()).firstBroken).toBeNull();
    const slips = await journal.read('lot:A1');
    await journal.close();
    return slips.filter(({ type }) => type === 'weightsTaken').flatMap(({ body }) => {
      const { fromPiece, values, feed: { fromSeq } } = block.parse(body);
      return values.map((value, at) => ({ seq: fromSeq + at, piece: fromPiece + at, value }));
    });
  }

  it('has every weight it confirmed as stored on the thread, once, and a sender that sends the rest again loses and doubles none', async () => {
    const roll = dice(2417);
    const sender = new Sender(press.token);
    let cutOff = 0;
    for (let life = 1; life <= lives; life += 1) {
      const url = await start();
      for (let sent = roll(12); sent > 0; sent -= 1) expect(await sender.send(url, roll(60), roll(3) === 1), `life ${life}`).toBe(true);
      // The last batch is under way when the server dies.
      const last = sender.send(url, roll(90), true);
      await new Promise((resolve) => setTimeout(resolve, (life - 1) * 2));
      await kill();
      if (!(await last)) cutOff += 1;
      const there = await onThread();
      expect(there.map(({ seq }) => seq), `life ${life}: each once, in order, none left out`).toEqual(there.map((_, at) => at + 1));
      expect(there.length, `life ${life}: all that was confirmed`).toBeGreaterThanOrEqual(sender.stored);
    }
    const url = await start();
    expect(await sender.send(url, 1, true)).toBe(true);
    await kill();
    expect(sender.stored).toBe(sender.made);
    expect(await onThread()).toEqual(weights(1, sender.made).map((value, at) => ({ seq: at + 1, piece: at + 1, value })));
    expect(cutOff, 'the server died before it answered, some time').toBeGreaterThan(0);
  });
});
