// The raw building blocks in one pipeline: socket.io → zod → SQLite durable commit, grouped by turn of the event loop → broadcast → acknowledgement.
// No rule, no fold, no hash, no read model: what the tool is measured against.
import Database from 'better-sqlite3';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { Server } from 'socket.io';
import { z } from 'zod';

const folder = process.argv[2];
const database = new Database(join(folder, 'raw.db'));
database.pragma('journal_mode = WAL');
database.pragma('synchronous = FULL');
database.exec('CREATE TABLE slip (position INTEGER PRIMARY KEY, stream TEXT NOT NULL, body TEXT NOT NULL)');
const insert = database.prepare('INSERT INTO slip (stream, body) VALUES (?, ?)');

const reading = z.strictObject({
  clientId: z.string().min(8).max(64), bench: z.string().max(60),
  command: z.strictObject({ type: z.literal('takeReading'), subject: z.string().max(64), gate: z.string().max(64), characteristic: z.string().max(64), ordinal: z.int().min(1), value: z.number() }),
});

const http = createServer();
const io = new Server(http, { transports: ['websocket'] });
let waiting = [];

function commit() {
  const group = waiting;
  waiting = [];
  database.exec('BEGIN IMMEDIATE');
  for (const { message } of group) insert.run(message.command.subject, JSON.stringify(message));
  database.exec('COMMIT');
  for (const { message, acknowledge } of group) {
    io.to(message.command.subject).emit('slips', [{ stream: message.command.subject, clientId: message.clientId, body: message.command }]);
    acknowledge({ ok: true });
  }
}

io.on('connection', (socket) => {
  socket.on('watch', (streams, acknowledge) => { socket.join(streams); acknowledge({}); });
  socket.on('command', (unknown, acknowledge) => {
    const message = reading.parse(unknown);
    if (waiting.length === 0) setImmediate(commit);
    waiting.push({ message, acknowledge });
  });
});
http.listen(0, '127.0.0.1', () => process.send?.({ url: `http://127.0.0.1:${http.address().port}` }));
process.on('SIGTERM', () => { io.close(); database.close(); process.exit(0); });
