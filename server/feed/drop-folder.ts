import { mkdir, readdir, readFile, rename, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { MOST_FED } from '../../shared/wire/feed-schema.ts';
import type { PressFeeds } from './press-feeds.ts';
import { readDrop } from './read-drop.ts';

/** Refusals that pass by themselves: the file waits for the next round. */
const PASSING: ReadonlySet<string> = new Set(['storageFault', 'tooBusy']);
const mostBytes = 16 * 1024 * 1024;
/** So many rounds, a minute, a file that ends in half a line is left for its writer to end it. */
const roundsForHalfALine = 30;

/**
 * The folder where a balance's program drops files of weights. A file is read once it has not changed from one round to the next; it then goes to
 * `done`, or to `refused` beside a text with the reason.
 */
export class DropFolder {
  readonly #folder: string;
  readonly #feeds: PressFeeds;
  readonly #everyMs: number;
  /** Size and time of change of each file, and for how many rounds they have been the same. */
  readonly #seen = new Map<string, { readonly stamp: string; readonly rounds: number }>();
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
    const faults: unknown[] = [];
    // A file that cannot be read, or is gone again, does not keep the others waiting.
    for (const name of names) await this.#lookAt(name).catch((fault: unknown) => faults.push(fault));
    if (faults.length > 0) throw faults[0];
  }

  async #lookAt(name: string): Promise<void> {
    const stamp = await this.#stampOf(name);
    const { stamp: before, rounds } = this.#seen.get(name) ?? { stamp: '', rounds: 0 };
    this.#seen.set(name, { stamp, rounds: stamp === before ? rounds + 1 : 0 });
    if (stamp === before) await this.#take(name, stamp, rounds + 1);
  }

  async #stampOf(name: string): Promise<string> {
    const { size, mtimeMs } = await stat(join(this.#folder, name));
    return `${size} ${mtimeMs}`;
  }

  async #take(name: string, stamp: string, rounds: number): Promise<void> {
    const { size } = await stat(join(this.#folder, name));
    const text = size > mostBytes ? '' : await readFile(join(this.#folder, name), 'utf8');
    // Half a line: its writer may only be slow.
    if (text !== '' && !text.endsWith('\n') && rounds < roundsForHalfALine) return;
    const read = size > mostBytes ? { wrong: `The file is larger than ${mostBytes} bytes.` } : readDrop(text);
    if ('wrong' in read) return this.#refuse(name, read.wrong);
    const { press, fromSeq, values } = read;
    for (let at = 0; at < values.length; at += MOST_FED) {
      const reply = await this.#feeds.take(press, { fromSeq: fromSeq + at, values: values.slice(at, at + MOST_FED), now: true });
      if (reply.ok) continue;
      if (PASSING.has(reply.refusal.code)) return;
      const { happened, kept, next } = reply.words;
      return this.#refuse(name, `${happened}\n${kept}\n${next}\nStored of press ${press}: up to number ${reply.stored ?? 0}.`);
    }
    // Lines written behind what was read are read the next time; what is in it twice is passed over.
    if ((await this.#stampOf(name)) === stamp) await this.#move(name, 'done');
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
