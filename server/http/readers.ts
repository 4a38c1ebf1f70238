import { z } from 'zod';
import { chartParts, streamParts } from '../../shared/traveller/index.ts';
import { certificateDataSchema } from '../../shared/wire/certificate-data.ts';
import { cautionsSchema } from '../../shared/wire/cautions-view.ts';
import { chartLotsSchema, chartsSchema } from '../../shared/wire/charts-view.ts';
import { ownTablesSchema } from '../../shared/wire/own-tables-view.ts';
import { pressesSchema } from '../../shared/wire/presses-view.ts';
import { planLotsSchema } from '../../shared/wire/plan-lots-view.ts';
import { studiesSchema } from '../../shared/wire/studies-view.ts';
import { benchListSchema, sessionSchema, traceSchema } from '../../shared/wire/views.ts';
import { keyIdOf } from '../documents/signing/index.ts';
import { stamped } from '../door/stamped.ts';
import { chartRows, lotsForChart } from '../readmodels/chart-rows.ts';
import { lotsOfPlan } from '../readmodels/plan-lots.ts';
import { search } from '../readmodels/search.ts';
import { studyRows } from '../readmodels/study-rows.ts';
import { traceOf } from '../readmodels/trace.ts';
import { found, malformed, notFound, refused, type Answer } from './answer.ts';
import { openApi } from './openapi.ts';
import type { Plant } from './plant.ts';
import { processReader } from './process-reader.ts';
import { gaugeReaders } from './gauge-readers.ts';
import { pressRows } from './press-rows.ts';
import { isAnswer, readTraveller } from './read-traveller.ts';
import { wholeOf, type Question, type Reader } from './route.ts';
import * as view from './views.ts';

const chargeKinds = ['furnace', 'coating'];
const traceKinds = ['raw', 'batch', 'lot', 'furnace', 'coating', 'box', 'shipment'];
const standings = ['due', 'open', 'sorting', 'held', 'inCharge', 'toRelease', 'toPack', 'done'];
const oversight = ['keeper', 'engineer'] as const;

/** Everything that is answered in JSON, over HTTP and over the live channel by these same lines. */
export const readers: readonly Reader[] = [
  { path: '/api/plant', isOpen: true, summary: 'The plant, before anyone signs on', answer: view.plantView, read: ({ plant }) => found(plantAtDoor(plant)) },
  { path: '/api/health', isOpen: true, summary: 'Answers while the server is in order', answer: view.healthView, read: ({ plant }) => found({ ok: true, opened: plant.records.plant() !== null }) },
  { path: '/api/openapi.json', isOpen: true, summary: 'This description', answer: z.looseObject({ openapi: z.string() }), read: () => found(openApi()) },
  { path: '/api/certificates/key', isOpen: true, summary: 'The public key that certificates and checkpoints are checked with', answer: view.keyView, read: ({ plant }) => found(publicKeyOf(plant)) },
  { path: '/api/session', summary: 'Who is signed on with this token', answer: sessionSchema, read: ({ session }) => found(session) },
  { path: '/api/bench', summary: 'What waits at a bench, what is held there, what falls due', query: { bench: 'name of the bench' }, answer: benchListSchema, read: ({ plant, query }) => found(plant.lists.bench(query.get('bench') ?? '', today())) },
  { path: '/api/travellers/:kind/:id', summary: 'A subject and the end of its thread', query: { tail: 'slips wanted, 1 … 100000, default 200' }, answer: view.travellerView, read: readPage },
  { path: '/api/travellers/:kind/:id/slips', summary: 'Earlier slips of a thread', query: { before: 'version of the first slip already there', limit: '1 … 1000, default 200' }, answer: view.slipsView, read: readEarlier },
  { path: '/api/travellers/:kind/:id/traveller.json', summary: 'A subject and its whole thread', answer: view.travellerView, read: ({ plant, params }) => page(plant, params['kind'] ?? '', params['id'] ?? '', Number.MAX_SAFE_INTEGER) },
  { path: '/api/states', summary: 'The state of any stream', query: { stream: 'such as `plan:ROUTE-A`' }, answer: view.stateView, read: readState },
  { path: '/api/slips', summary: 'Slips of any stream, its last ones unless earlier ones are asked for', query: { stream: 'such as `plan:ROUTE-A`', before: 'version of the first slip already there; left out, the end of the thread', limit: '1 … 1000, default 200' }, answer: view.slipsView, read: readThread },
  { path: '/api/catalogue', summary: 'Products, grades, coatings, plans, gauges, equipment and furnace programmes', answer: view.catalogueView, read: ({ plant }) => found(plant.records.catalogue()) },
  { path: '/api/plans/:id/lots', summary: 'Lots of a plan that are not done with, each with the version it is inspected by', answer: planLotsSchema, read: ({ plant, params: { id = '' } }) => found({ rows: lotsOfPlan(plant.journal.reader, id) }) },
  { path: '/api/presses', summary: 'Presses, what each presses now and how its weights go', answer: pressesSchema, read: async ({ plant }) => found(await pressRows(plant, new Date())) },
  { path: '/api/tables', summary: 'The plant’s own copies of master tables', answer: ownTablesSchema, read: ({ plant }) => found({ tables: plant.records.ownTables() }) },
  { path: '/api/cautions', summary: 'Cautions as the plant words them', answer: cautionsSchema, read: ({ plant }) => found({ cautions: plant.records.cautions() }) },
  { path: '/api/studies', summary: 'Gauge studies, the newest first', answer: studiesSchema, read: ({ plant }) => found({ rows: studyRows(plant.journal.reader) }) },
  { path: '/api/people', summary: 'The people of the plant', answer: view.peopleView, read: ({ plant }) => found({ people: plant.records.people() }) },
  { path: '/api/switching', summary: 'Every switching state', answer: view.switchingView, read: ({ plant }) => found({ rows: plant.records.switching(), skips: plant.records.skipping() }) },
  { path: '/api/charts', summary: 'Every control chart and how it stands', answer: chartsSchema, read: ({ plant }) => found({ rows: chartRows(plant.journal.reader) }) },
  { path: '/api/charts/lots', summary: 'Subjects judged at the gate that a chart is about', query: { chart: 'stream of the chart, such as `chart:lot/P-100/dimensions/thickness`' }, answer: chartLotsSchema, read: readChartLots },
  { path: '/api/release', summary: 'Lots at or near release', answer: view.rowsView, read: ({ plant }) => found({ rows: plant.lists.release() }) },
  { path: '/api/packing', summary: 'Released lots with pieces to pack or boxes to ship', answer: view.rowsView, read: ({ plant }) => found({ rows: plant.lists.packing() }) },
  { path: '/api/lots', summary: 'Lots, the newest first', query: { standing: standings.join(', ') }, answer: view.rowsView, read: ({ plant, query }) => oneOf(query, 'standing', standings, (standing) => ({ rows: plant.lists.ofKind('lot', standing) })) },
  { path: '/api/batches', summary: 'Powder batches, the newest first', answer: view.rowsView, read: ({ plant }) => found({ rows: plant.lists.ofKind('batch', null) }) },
  { path: '/api/charges', summary: 'Charges, the newest first', query: { kind: chargeKinds.join(', ') }, answer: view.rowsView, read: ({ plant, query }) => oneOf(query, 'kind', chargeKinds, (kind) => ({ rows: plant.lists.charges(kind) })) },
  { path: '/api/ready/:kind', summary: 'Lots that wait for such a charge', answer: view.rowsView, read: ({ plant, params: { kind = '' } }) => (chargeKinds.includes(kind) ? found({ rows: plant.lists.readyFor(kind) }) : malformed('kind', `must be one of: ${chargeKinds.join(', ')}`)) },
  { path: '/api/trace/:kind/:id', summary: 'Where something comes from and where it went', answer: traceSchema, read: readTrace },
  { path: '/api/search', summary: 'Finds subjects, boxes, raw lots and shipments', query: { q: 'number, name, or the code of a label' }, answer: view.searchView, read: ({ plant, query }) => found({ hits: search(plant.journal.reader, (query.get('q') ?? '').slice(0, 500)) }) },
  { path: '/api/lots/:id/certificate.json', summary: 'The data of a released lot’s certificate, sealed', answer: certificateDataSchema, read: async ({ plant, params: { id = '' } }) => {
    const data = await plant.certificates.of(id);
    return 'status' in data ? data : found(data);
  } },
  { path: '/api/journal/verify', summary: 'Walks the whole journal and names the first broken slip', roles: oversight, answer: view.verificationView, read: async ({ plant }) => found(await plant.journal.verify()) },
  ...gaugeReaders, processReader,
];

/** What does something and is no command of the traveller; POST only, and never over the live channel's questions. */
export const acts: readonly Reader[] = [
  { path: '/api/journal/checkpoint', summary: 'Signs the heads of all streams now', roles: oversight, answer: view.checkpointView, read: async ({ plant, session }) => found({ slip: await plant.checkpoints.sign(session?.badge ?? 'server'), ...publicKeyOf(plant) }) },
];

/** The invented plant's PINs are public on purpose. People who were enrolled later are not among them. */
function plantAtDoor({ records, demoPeople: invented }: Plant): z.infer<typeof view.plantView> {
  const plant = records.plant();
  const active = plant?.demo === true ? new Map(records.people().filter(({ active: is }) => is).map(({ badge, name }) => [badge, name])) : null;
  const demoPeople = active === null ? null : invented.filter(({ badge, name }) => active.get(badge) === name).map(({ badge, pin, name, roles }) => ({ badge, pin, name, roles: [...roles] }));
  return { opened: plant !== null, plant, demoPeople, benches: plant === null ? [] : records.benches() };
}

function publicKeyOf({ certificates: { publicKey } }: Plant): z.infer<typeof view.keyView> {
  return { keyId: keyIdOf(publicKey), publicKey: publicKey.export({ type: 'spki', format: 'pem' }).toString() };
}

async function page(plant: Plant, kind: string, id: string, tail: number): Promise<Answer> {
  const read = await readTraveller(plant, kind, id, tail);
  return isAnswer(read) ? read : found({ ...read, names: plant.records.names() });
}

function readPage({ plant, params: { kind = '', id = '' }, query }: Question): Promise<Answer> | Answer {
  const tail = wholeOf(query, 'tail', 200, 1, 100_000);
  return tail === null ? malformed('tail', 'must be a whole number, 1 … 100000') : page(plant, kind, id, tail);
}

async function readEarlier({ plant, params: { kind = '', id = '' }, query }: Question): Promise<Answer> {
  const read = await readTraveller(plant, kind, id, 1);
  return isAnswer(read) ? read : slipsBefore(plant, read.state.stream, query, 1);
}

/** What the live channel carries to whoever watches a stream, whatever its kind, for those who ask. */
async function readThread({ plant, query }: Question): Promise<Answer> {
  const stream = streamAsked(query);
  return stream === null ? badStream() : slipsBefore(plant, stream, query, (await plant.journal.versionOf(stream)) + 1);
}

/** A run of slips that ends before a version; before `unsaid` where the question names none. */
async function slipsBefore(plant: Plant, stream: string, query: URLSearchParams, unsaid: number): Promise<Answer> {
  const before = wholeOf(query, 'before', unsaid, 1, 999_999_999);
  const limit = wholeOf(query, 'limit', 200, 1, 1_000);
  if (before === null) return malformed('before', 'must be a whole number, 1 or more');
  if (limit === null) return malformed('limit', 'must be a whole number, 1 … 1000');
  const after = Math.max(0, before - 1 - limit);
  const slips = before <= 1 ? [] : await plant.journal.read(stream, after, before - 1 - after);
  return found({ slips: slips.map(stamped) });
}

async function readState({ plant, query }: Question): Promise<Answer> {
  const stream = streamAsked(query);
  return stream === null ? badStream() : found({ state: (await plant.door.states.fresh(stream)).state });
}

/** The stream a question names; null where it names none that could be. */
function streamAsked(query: URLSearchParams): string | null {
  const stream = query.get('stream') ?? '';
  return streamParts(stream) === null || stream.length > 300 ? null : stream;
}

function badStream(): Answer {
  return malformed('stream', 'must be the name of a stream, such as lot:L26-0417');
}

function readChartLots({ plant, query }: Question): Answer {
  const stream = query.get('chart') ?? '';
  return chartParts(stream) === null ? malformed('chart', 'must be the stream of a chart, such as chart:lot/P-100/dimensions/thickness') : found({ lots: lotsForChart(plant.journal.reader, stream) });
}

function readTrace({ plant, params: { kind = '', id = '' } }: Question): Answer {
  if (!traceKinds.includes(kind)) return malformed('kind', `must be one of: ${traceKinds.join(', ')}`);
  const trace = traceOf(plant.journal.reader, kind, id);
  if (trace !== null) return found(trace);
  switch (kind) {
    case 'lot': case 'batch': case 'box': return notFound(kind, id);
    case 'furnace': case 'coating': return notFound('charge', id);
    default: return refused({ code: 'unknownAddress', path: `/api/trace/${kind}/${id}` });
  }
}

/** Answers with what belongs to one of the values allowed, or to all of them where none is named. */
function oneOf(query: URLSearchParams, name: string, allowed: readonly string[], read: (value: string | null) => unknown): Answer {
  const value = query.get(name);
  return value === null || allowed.includes(value) ? found(read(value)) : malformed(name, `must be one of: ${allowed.join(', ')}`);
}

function today(): string {
  return new Date().toISOString().slice(0, 10);
}
