import { mkdir, readdir, readFile, rename, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { MOST_FED } from '../../shared/wire/feed-schema.ts';
import type { PressFeeds } from './press-feeds.ts';
import { readDrop } from './read-drop.ts';

/** Refusals that pass by themselves: the file waits for the next round. */
const PASSING: ReadonlySet<string> = new Set(['storageFault', 'tooBusy']);
const mostBytes = 16 * 1024 * 1024;

/**
 * The folder where a balance's program drops files of weights. A file is read once it has not changed from one round to the next; it then goes to
 * `done`, or to `refused` beside a text with the reason.
 */
export class DropFolder {
  readonly #folder: string;
  readonly #feeds: PressFeeds;
  readonly #everyMs: number;
  readonly #seen = new Map<string, string>();
  #timer: NodeJS.Timeout | null = null;
  #round: Promise<void> = Promise.resolve();

  constructor(folder: string, feeds: PressFeeds, everyMs = 2_000) {
    this.#folder = folder;
    this.#feeds = feeds;
    this.#everyMs = everyMs;
  }

  async start(onFault: (fault: unknown) => void): Promise<void> {
    for (const place of [this.#folder, join(this.#folder, 'done'), join(this.#folder, 'refused')]) await mkdir(place, { recursive: true });
    this.#timer = setInterval(() => {
      this.#round = this.#round.then(() => this.look()).catch(onFault);
    }, this.#everyMs);
    this.#timer.unref();
  }

  /** Finishes the file under way. */
  async stop(): Promise<void> {
    if (this.#timer !== null) clearInterval(this.#timer);
    await this.#round;
  }

  /** One round through the folder, files in the order of their names. */
  async look(): Promise<void> {
    const names = (await readdir(this.#folder, { withFileTypes: true })).filter((entry) => entry.isFile() && entry.name.toLowerCase().endsWith('.csv')).map(({ name }) => name).sort();
    for (const gone of [...this.#seen.keys()].filter((name) => !names.includes(name))) this.#seen.delete(gone);
    for (const name of names) {
      const { size, mtimeMs } = await stat(join(this.#folder, name));
      const now = `${size} ${mtimeMs}`;
      if (this.#seen.get(name) === now) await this.#take(name, size);
      else this.#seen.set(name, now);
    }
  }

  async #take(name: string, size: number): Promise<void> {
    const read = size > mostBytes ? { wrong: `The file is larger than ${mostBytes} bytes.` } : readDrop(await readFile(join(this.#folder, name), 'utf8'));
    if ('wrong' in read) return this.#refuse(name, read.wrong);
    const { press, fromSeq, values } = read;
    for (let at = 0; at < values.length; at += MOST_FED) {
      const reply = await this.#feeds.take(press, { fromSeq: fromSeq + at, values: values.slice(at, at + MOST_FED), now: true });
      if (reply.ok) continue;
      if (PASSING.has(reply.refusal.code)) return;
      const { happened, kept, next } = reply.words;
      return this.#refuse(name, `${happened}\n${kept}\n${next}\nStored of press ${press}: up to number ${reply.stored ?? 0}.`);
    }
    await this.#move(name, 'done');
  }

  async #refuse(name: string, reason: string): Promise<void> {
    const to = await this.#move(name, 'refused');
    await writeFile(`${to}.reason.txt`, `${reason}\n`);
  }

  /** A file of the same name that went before is not overwritten. */
  async #move(name: string, place: 'done' | 'refused'): Promise<string> {
    const there = new Set(await readdir(join(this.#folder, place)));
    let free = name;
    for (let nth = 2; there.has(free); nth += 1) free = `${name.replace(/\.csv$/i, '')}-${nth}.csv`;
    const to = join(this.#folder, place, free);
    await rename(join(this.#folder, name), to);
    this.#seen.delete(name);
    return to;
  }
}
