import { hashPin } from '../../server/people/pin-hash.ts';
import { startServer, type RunningServer } from '../../server/start-server.ts';
import { Floor } from '../../demo-data/floor.ts';
import { openThePlant } from '../../demo-data/open-the-plant.ts';
import { PEOPLE, type DemoPerson } from '../../demo-data/people.ts';
import { GRADES, PRODUCTS } from '../../demo-data/plant-records.ts';
import { chanceFrom } from '../../demo-data/chance.ts';
import { workGate } from '../../demo-data/work-gate.ts';
import type { GradeCard, InspectionPlan, ProductCard } from '../../shared/traveller/index.ts';

/**
 * The real server with as many lots as kiosks, each at an open gate that asks for `readings` readings, for measuring. Told its folder,
 * lots and readings on the command line; says its address, its tokens and the lots on the message channel.
 */
const [folder = '', lots = '1', readings = '100', longThread = '0'] = process.argv.slice(2);
const inspector = PEOPLE.find(({ roles }) => roles.includes('inspector'));
const lab = PEOPLE.find(({ roles }) => roles.includes('lab'));
const [first, second] = PEOPLE.filter(({ roles }) => roles.includes('engineer'));
const [product] = PRODUCTS;
const [grade] = GRADES;
if (inspector === undefined || lab === undefined || first === undefined || second === undefined || product === undefined || grade === undefined) throw new Error('the demo plant lacks people or products');

const PER_CHARACTERISTIC = 100;
const plan: InspectionPlan = {
  id: product.plan, name: 'Route for measuring speed', appliesTo: 'lot',
  gates: [{
    id: 'speed', name: 'Speed', workedOn: 'lot', bench: 'Bench', roles: ['inspector'], cautions: [],
    characteristics: Array.from({ length: Math.max(1, Math.ceil(Number(readings) / PER_CHARACTERISTIC)) }, (_, at) => ({
      kind: 'measured', id: `c${at}`, name: `Size ${at}`, method: 'gauge', destructive: false, unit: 'mm', decimals: 3, lower: 4.6, upper: 4.9, target: 4.75, plausible: { least: 1, most: 20 },
      gaugeKind: null, decisionRule: 'simple', entry: { how: 'direct' }, factor: null, pressTolerancePercent: null, sampling: { rule: 'fixed', n: PER_CHARACTERISTIC, accept: 'each' },
    })),
  }],
};

const subjects = Array.from({ length: Number(lots) }, (_, at) => `lot:B${String(at).padStart(4, '0')}`);

/** The plant with every lot at its open gate. Made and let go before anything is measured: a real server holds no such thing in memory. */
function entriesToStartFrom(people: { inspector: DemoPerson; lab: DemoPerson; first: DemoPerson; second: DemoPerson }, product: ProductCard, grade: GradeCard): Floor['entries'] {
  const { inspector, lab, first, second } = people;
  const floor = new Floor(new Date(Date.now() - 86_400_000).toISOString());
  openThePlant(floor, new Date().toISOString().slice(0, 10));
  floor.give(first, 'Quality desk', { type: 'draftPlan', plan, why: 'measuring speed' });
  for (const engineer of [first, second]) floor.give(engineer, 'Quality desk', { type: 'approvePlan', plan: plan.id, planVersion: 2 });
  floor.give(lab, 'Lab', { type: 'openBatch', batch: 'P1', grade: grade.id, barrels: 12, kgPerBarrel: 10_000, rawLots: [] });
  workGate(floor, chanceFrom('speed'), lab, 'batch:P1', 'powder-lab');
  floor.give(lab, 'Lab', { type: 'releaseBatch', batch: 'P1' });
  for (const subject of subjects) {
    floor.give(inspector, 'Bench', { type: 'openLot', lot: subject.slice(4), product: product.id, batch: 'P1', quantity: 5000, trayCapacity: 100 });
    floor.give(inspector, 'Bench', { type: 'openGate', subject, gate: 'speed' });
  }
  for (let at = 0; at < Number(longThread); at += 1) {
    floor.give(inspector, 'Bench', { type: 'takeReading', subject: subjects[0] ?? '', gate: 'speed', characteristic: `c${Math.floor(at / PER_CHARACTERISTIC)}`, ordinal: 1 + (at % PER_CHARACTERISTIC), value: (4700 + (at % 17)) / 1000 });
  }
  return floor.entries;
}

async function fill(journal: RunningServer['journal'], entries: Floor['entries']): Promise<void> {
  for (let at = 0; at < entries.length; at += 400) await Promise.all(entries.slice(at, at + 400).map((entry) => journal.append(entry)));
}

const server = await startServer({ folder, port: 0, host: '127.0.0.1', quiet: true });
await server.journal.pins.put(inspector.badge, await hashPin(inspector.pin));
await fill(server.journal, entriesToStartFrom({ inspector, lab, first, second }, product, grade));
const response = await fetch(`${server.url}/api/session`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ badge: inspector.badge, pin: inspector.pin, bench: 'Bench' }) });
const { token } = await response.json() as { token: string };
process.send?.({ url: server.url, tokens: [token], subjects, works: plan.gates[0]?.characteristics.map(({ id }) => ({ gate: 'speed', characteristic: id, n: PER_CHARACTERISTIC, value: 4.75 })), badge: inspector.badge, pin: inspector.pin, newest: await server.journal.versionOf(subjects[0] ?? '') });
process.on('message', () => process.send?.({ cpu: process.cpuUsage() }));
process.on('SIGTERM', () => { void server.close().then(() => process.exit(0)); });
