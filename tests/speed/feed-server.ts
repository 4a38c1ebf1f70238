import { existsSync, readFileSync, statSync } from 'node:fs';
import { PressTokens } from '../../server/feed/press-tokens.ts';
import { hashPin } from '../../server/people/pin-hash.ts';
import { journalFile, startServer } from '../../server/start-server.ts';
import { chanceFrom } from '../../demo-data/chance.ts';
import { Floor } from '../../demo-data/floor.ts';
import { openThePlant } from '../../demo-data/open-the-plant.ts';
import { PEOPLE } from '../../demo-data/people.ts';
import { GRADES, PRODUCTS } from '../../demo-data/plant-records.ts';
import { workGate } from '../../demo-data/work-gate.ts';

/** The real server with so many presses, each set on a lot of its own of so many pieces. Told its folder, presses and pieces; answers `memory` with what its process holds. */
const [folder = '', presses = '50', pieces = '57600'] = process.argv.slice(2);
const by = (role: string) => PEOPLE.find(({ roles }) => roles.some((each) => each === role)) ?? PEOPLE[0];
const [inspector, lab, engineer] = [by('inspector'), by('lab'), by('engineer')];
const [product] = PRODUCTS;
const [grade] = GRADES;
if (inspector === undefined || lab === undefined || engineer === undefined || product === undefined || grade === undefined) throw new Error('the demo plant lacks people or products');
const ids = Array.from({ length: Number(presses) }, (_, at) => ({ press: `S-${100 + at}`, lot: `S${1000 + at}` }));

function entries(): Floor['entries'] {
  if (inspector === undefined || lab === undefined || engineer === undefined || product === undefined || grade === undefined) return [];
  const floor = new Floor(new Date(Date.now() - 86_400_000).toISOString());
  openThePlant(floor, new Date().toISOString().slice(0, 10));
  floor.give(lab, 'Lab', { type: 'openBatch', batch: 'S1', grade: grade.id, barrels: 12, kgPerBarrel: 100_000, rawLots: [] });
  workGate(floor, chanceFrom('soak'), lab, 'batch:S1', 'powder-lab');
  floor.give(lab, 'Lab', { type: 'releaseBatch', batch: 'S1' });
  for (const { press, lot } of ids) {
    floor.give(inspector, 'Press 2', { type: 'openLot', lot, product: product.id, batch: 'S1', quantity: Number(pieces), trayCapacity: 100 });
    floor.give(inspector, 'Press 2', { type: 'openGate', subject: `lot:${lot}`, gate: 'pressing' });
    floor.give(engineer, 'Press 2', { type: 'registerPress', press: { id: press, name: `Press ${press}`, bench: 'Press 2', balance: 'BAL-21' } });
    floor.give(engineer, 'Press 2', { type: 'setPress', press, lot });
  }
  return floor.entries;
}

const server = await startServer({ folder, port: 0, host: '127.0.0.1', quiet: true });
await server.journal.pins.put(inspector.badge, await hashPin(inspector.pin));
for (const entry of entries()) await server.journal.append(entry);
const tokens = new PressTokens(server.journal.keys);
const feeds = [];
for (const { press } of ids) feeds.push({ press, token: await tokens.renew(press) });
const { state } = await server.door.states.get(`lot:${ids[0]?.lot ?? ''}`);
const measured = state?.kind === 'lot' ? state.gates.find(({ id }) => id === 'pressing')?.work[0]?.demand.characteristic : undefined;
const response = await fetch(`${server.url}/api/session`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ badge: inspector.badge, pin: inspector.pin, bench: 'Press 2' }) });
const { token } = await response.json() as { token: string };
process.send?.({ url: server.url, token, feeds, target: measured?.kind === 'measured' ? measured.target : null, lots: ids.map(({ lot }) => lot) });

/** What the process holds apart from mapped files, where the system says so: those pages belong to the journal's file. */
function heldBytes(): number {
  const anon = existsSync('/proc/self/status') ? /RssAnon:\s+(\d+) kB/.exec(readFileSync('/proc/self/status', 'utf8'))?.[1] : undefined;
  return anon === undefined ? process.memoryUsage().rss : Number(anon) * 1024;
}
process.on('message', () => process.send?.({ held: heldBytes(), journal: statSync(journalFile(folder)).size, cpu: process.cpuUsage() }));
process.on('SIGTERM', () => { void server.close().then(() => process.exit(0)); });
