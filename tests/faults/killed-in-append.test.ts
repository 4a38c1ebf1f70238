import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { build } from 'esbuild';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { StoredSlip } from '../../server/journal/journal.ts';
import { newSqlitePlace, type SqlitePlace } from '../server/journal/sqlite-place.ts';
import { dice } from './dice.ts';
import { slipCount } from './slip-count.ts';

const lives = 10;

async function bundleChild(folder: string): Promise<string> {
  const database = createRequire(import.meta.url).resolve('better-sqlite3');
  const outfile = join(folder, 'appending-child.mjs');
  await build({
    entryPoints: [new URL('appending-child.ts', import.meta.url).pathname], outfile, bundle: true, platform: 'node', format: 'esm',
    alias: { 'better-sqlite3': database }, external: [database], logLevel: 'error',
  });
  return outfile;
}

/** Lets a child append until `acknowledgements` were read, then kills it; all the lines it got out. */
async function appendUntilKilled(command: string, args: readonly string[], acknowledgements: number): Promise<string[]> {
  const child = spawn(command, args, { stdio: ['ignore', 'pipe', 'inherit'] });
  const lines: string[] = [];
  for await (const line of createInterface({ input: child.stdout })) {
    lines.push(line);
    if (lines.length === acknowledgements) child.kill('SIGKILL');
  }
  return lines;
}

describe('a server killed in the midst of appends', () => {
  let place: SqlitePlace;
  let child: string;
  beforeEach(async () => {
    place = await newSqlitePlace();
    child = await bundleChild(place.folder);
  });
  afterEach(() => place.clear());

  /** Opens what a child left and holds it against what the child said. */
  async function expectWhole(acknowledged: ReadonlySet<string>): Promise<number> {
    const journal = await place.open({ projections: [slipCount] });
    const { firstBroken, slips } = await journal.verify();
    expect(firstBroken).toBeNull();
    const byClient = groupByClient(await journal.follow(0, slips));
    for (const clientId of acknowledged) expect(byClient.has(clientId), `${clientId} was acknowledged`).toBe(true);
    for (const [clientId, group] of byClient) {
      expect(group[0]?.body, `${clientId} stands once and whole`).toEqual({ type: 'readingTaken', slips: group.length });
    }
    const counted = journal.reader.prepare<[], { stream: string; version: number }>('SELECT stream, n AS version FROM slip_count ORDER BY stream').all();
    expect(counted, 'the read model agrees').toEqual((await journal.heads()).map(({ stream, version }) => ({ stream, version })));
    await journal.close();
    return slips;
  }

  it('keeps every acknowledged slip, once, and the chain whole', async () => {
    const roll = dice(417);
    const acknowledged = new Set<string>();
    for (let life = 1; life <= lives; life += 1) {
      const lines = await appendUntilKilled(process.execPath, [child, place.file], roll(600));
      for (const line of lines) {
        expect(line, `life ${life}`).toMatch(/^ack /);
        acknowledged.add(line.slice('ack '.length));
      }
      await expectWhole(acknowledged);
    }
    expect(acknowledged.size, 'each life must have added some').toBeGreaterThan(lives * 20);
  });

  it('keeps every acknowledged slip when the file may grow no further', async () => {
    // A limit on the size of files (POSIX ulimit -f, blocks of 512 bytes) makes a true write fail in the log.
    const limited = `trap '' XFSZ; ulimit -f 4096; exec "$0" "$@"`;
    const lines = await appendUntilKilled('sh', ['-c', limited, process.execPath, child, place.file], Infinity);
    expect(lines.at(-1)).toMatch(/^fault (fault|closed)$/);
    const acknowledged = new Set(lines.slice(0, -1).map((line) => line.slice('ack '.length)));
    expect(acknowledged.size).toBeGreaterThan(100);
    await expectWhole(acknowledged);
  });
});

function groupByClient(slips: readonly StoredSlip[]): Map<string, StoredSlip[]> {
  const groups = new Map<string, StoredSlip[]>();
  for (const slip of slips) groups.set(slip.clientId, [...(groups.get(slip.clientId) ?? []), slip]);
  return groups;
}
