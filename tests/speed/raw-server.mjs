// The raw building blocks in one pipeline: socket.io → zod → SQLite durable commit, grouped by turn of the event loop → broadcast → acknowledgement.
// What any careful plain program would do, and no more: it checks the form, keeps each client id once, stamps who, when and where, and tells the
// kiosks that watch. No rule of the trade, no fold, no hash chain, no read model: what the tool is measured against.
import Database from 'better-sqlite3';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { Server } from 'socket.io';
import { z } from 'zod';

const folder = process.argv[2];
const database = new Database(join(folder, 'raw.db'));
for (const setting of ['journal_mode = WAL', 'synchronous = FULL', 'wal_autocheckpoint = 8000', 'cache_size = -131072', 'mmap_size = 4294967296', 'temp_store = MEMORY']) database.pragma(setting);
database.exec(`CREATE TABLE slip (position INTEGER PRIMARY KEY, client_id TEXT NOT NULL UNIQUE, stream TEXT NOT NULL, version INTEGER NOT NULL,
  at TEXT NOT NULL, by TEXT NOT NULL, bench TEXT NOT NULL, body TEXT NOT NULL)`);
const begin = database.prepare('BEGIN IMMEDIATE');
const commit = database.prepare('COMMIT');
const insert = database.prepare('INSERT INTO slip (client_id, stream, version, at, by, bench, body) VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (client_id) DO NOTHING');

const text = z.string().min(1).max(64);
const envelope = z.strictObject({
  clientId: z.string().regex(/^[A-Za-z0-9-]{8,64}$/), bench: text,
  command: z.strictObject({ type: z.literal('takeReading'), subject: text, gate: text, characteristic: text, ordinal: z.int().min(1), value: z.number() }),
});

const http = createServer();
const io = new Server(http, { serveClient: false });
const versions = new Map();
let waiting = [];

function write() {
  const group = waiting;
  waiting = [];
  begin.run();
  const slips = group.map(({ message: { clientId, bench, command: { type, subject: stream, ...reading } }, by }) => {
    const version = (versions.get(stream) ?? 0) + 1;
    const at = new Date().toISOString();
    const body = { type: 'readingTaken', ...reading };
    const { changes, lastInsertRowid } = insert.run(clientId, stream, version, at, by, bench, JSON.stringify(body));
    if (changes === 0) return null;
    versions.set(stream, version);
    return { position: Number(lastInsertRowid), stream, version, at, by, bench, clientId, body };
  });
  commit.run();
  group.forEach(({ acknowledge }, place) => {
    const slip = slips[place];
    acknowledge(slip === null ? { ok: true, slips: [], repeated: true } : { ok: true, slips: [slip], repeated: false });
    if (slip !== null) io.to(slip.stream).emit('slips', [slip]);
  });
}

io.on('connection', (socket) => {
  const by = '1002';
  socket.on('watch', (streams, acknowledge) => { socket.join(streams); acknowledge({}); });
  socket.on('command', (unknown, acknowledge) => {
    const { success, data: message } = envelope.safeParse(unknown);
    if (!success) return acknowledge({ ok: false });
    if (waiting.length === 0) setImmediate(write);
    waiting.push({ message, by, acknowledge });
  });
});
http.listen(0, '127.0.0.1', () => process.send?.({ url: `http://127.0.0.1:${http.address().port}` }));
process.on('message', () => process.send?.({ cpu: process.cpuUsage() }));
process.on('SIGTERM', () => { io.close(); database.close(); process.exit(0); });
