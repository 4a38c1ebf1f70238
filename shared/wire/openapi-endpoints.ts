/** One address of the interface. `answer` and `asks` name entries of the schema components. */
export interface Endpoint {
  readonly method: 'get' | 'post' | 'delete';
  readonly path: string;
  readonly tag: 'sign-on' | 'commands' | 'travellers' | 'lists' | 'records' | 'documents' | 'plant';
  readonly summary: string;
  readonly query?: readonly Parameter[];
  readonly asks?: string;
  /** A body that is not JSON. */
  readonly asksMedia?: string;
  /** A schema's name; a media type for a document; null for an empty answer. */
  readonly answer: { readonly schema: string } | { readonly media: string } | null;
  /** Open to everybody; every other address asks for a sign-in. */
  readonly open?: true;
  /** Statuses of refusals besides those that every address may answer. */
  readonly refuses: readonly number[];
}
export interface Parameter { readonly name: string; readonly meaning: string; readonly needed?: true; readonly whole?: true; readonly values?: readonly string[] }

const CHARGE_KINDS = ['furnace', 'coating'];
const rows = { schema: 'Rows' } as const;
const documentOf = (path: string, media: string, summary: string, query: readonly Parameter[] = []): Endpoint => ({ method: 'get', path, tag: 'documents', summary, query, answer: { media }, refuses: [400, 404, 409] });

/** What the values of a path's parameters may be; others are free numbers. */
export const PATH_PARAMETERS: Readonly<Record<string, Parameter>> = {
  'travellers/kind': { name: 'kind', meaning: 'kind of subject', values: ['lot', 'batch', 'furnace', 'coating'] },
  'ready/kind': { name: 'kind', meaning: 'kind of charge', values: CHARGE_KINDS },
  'trace/kind': { name: 'kind', meaning: 'where the trace begins', values: ['raw', 'batch', 'lot', 'furnace', 'coating', 'box', 'shipment'] },
  id: { name: 'id', meaning: 'number of the subject, e.g. L26-0417' },
  'studies/id': { name: 'id', meaning: 'number of the study, e.g. S26-0007' },
  'gauges/id': { name: 'id', meaning: 'number of the gauge, e.g. MIC-11' },
  recall: { name: 'recall', meaning: 'number of the recall, e.g. MIC-11-R1' },
  'plans/id': { name: 'id', meaning: 'number of the plan, e.g. ROUTE-A' },
  planVersion: { name: 'planVersion', meaning: 'version of the plan, from 1', whole: true },
  digest: { name: 'digest', meaning: 'SHA-256 of the file, hexadecimal' },
  serial: { name: 'serial', meaning: 'number of the box, e.g. L26-0417-001' },
};

const labelQuery: readonly Parameter[] = [{ name: 'size', meaning: 'width × height in mm, e.g. 100x50' }, { name: 'dpi', meaning: 'dots per inch of the printer', values: ['203', '300'] }];

const lotSizeQuery: readonly Parameter[] = [{ name: 'lotSize', meaning: 'pieces of the lot that samples are stated for, 1000 when left out', whole: true }];

export const ENDPOINTS: readonly Endpoint[] = [
  { method: 'get', path: '/api/plant', tag: 'plant', summary: 'The plant, before anybody signs on', answer: { schema: 'Plant' }, open: true, refuses: [] },
  { method: 'post', path: '/api/session', tag: 'sign-on', summary: 'Sign on with badge and PIN at a bench', asks: 'SignIn', answer: { schema: 'Session' }, open: true, refuses: [400, 401, 409, 413] },
  { method: 'get', path: '/api/session', tag: 'sign-on', summary: 'Who is signed on', answer: { schema: 'Session' }, refuses: [] },
  { method: 'delete', path: '/api/session', tag: 'sign-on', summary: 'Sign off', answer: null, refuses: [] },
  {
    method: 'post', path: '/api/commands', tag: 'commands', asks: 'Envelope', answer: { schema: 'Written' }, refuses: [400, 401, 403, 404, 409, 413],
    summary: 'Give a command. All its slips are written, or none is. Sent again with the same clientId it is answered again and written once. `openPlant` needs no sign-in while no plant is open.',
  },
  { method: 'post', path: '/api/attachments', tag: 'documents', summary: 'Hand a furnace log in as `text`, CSV of at most 8 MiB; the answer’s digest names it in `attachFurnaceLog`', asks: 'HandIn', answer: { schema: 'HandedIn' }, refuses: [400, 403, 409, 413] },
  documentOf('/api/attachments/{digest}/file.csv', 'text/csv', 'A file that a slip names, as it was handed in'),
  { method: 'get', path: '/api/bench', tag: 'lists', summary: 'What waits and what is held at a bench', query: [{ name: 'bench', meaning: 'name of the bench', needed: true }], answer: { schema: 'BenchList' }, refuses: [] },
  { method: 'get', path: '/api/travellers/{kind}/{id}', tag: 'travellers', summary: 'A subject: its state and its last slips', query: [{ name: 'tail', meaning: 'how many slips, 200 when left out', whole: true }], answer: { schema: 'Traveller' }, refuses: [400, 404] },
  {
    method: 'get', path: '/api/travellers/{kind}/{id}/slips', tag: 'travellers', summary: 'Earlier slips of a subject', answer: { schema: 'Slips' }, refuses: [400, 404],
    query: [{ name: 'before', meaning: 'only slips of a lower version', whole: true }, { name: 'limit', meaning: 'how many at most', whole: true }],
  },
  { method: 'get', path: '/api/states', tag: 'records', summary: 'The state of any stream, e.g. plan:ROUTE-A; of people without secrets', query: [{ name: 'stream', meaning: 'name of the stream', needed: true }], answer: { schema: 'StateAnswer' }, refuses: [400] },
  {
    method: 'get', path: '/api/slips', tag: 'records', summary: 'Slips of any stream, its last ones unless earlier ones are asked for', answer: { schema: 'Slips' }, refuses: [400],
    query: [{ name: 'stream', meaning: 'name of the stream', needed: true }, { name: 'before', meaning: 'only slips of a lower version', whole: true }, { name: 'limit', meaning: 'how many at most', whole: true }],
  },
  { method: 'get', path: '/api/catalogue', tag: 'records', summary: 'Products, grades, coatings, plans, gauges, equipment and furnace programmes', answer: { schema: 'Catalogue' }, refuses: [] },
  { method: 'get', path: '/api/plans/{id}/lots', tag: 'lists', summary: 'Lots of a plan that are not done with, each with the version it is inspected by', answer: { schema: 'PlanLots' }, refuses: [] },
  { method: 'get', path: '/api/tables', tag: 'records', summary: 'The plant’s own copies of master tables', answer: { schema: 'OwnTables' }, refuses: [] },
  { method: 'get', path: '/api/cautions', tag: 'records', summary: 'Cautions as the plant words them', answer: { schema: 'Cautions' }, refuses: [] },
  { method: 'get', path: '/api/studies', tag: 'records', summary: 'Gauge studies, the newest first', answer: { schema: 'Studies' }, refuses: [] },
  { method: 'get', path: '/api/process', tag: 'records', summary: 'Mean and s of a measured characteristic over its last lots', query: [{ name: 'kind', meaning: 'kind of subject', values: ['lot', 'batch', 'furnace', 'coating'], needed: true }, { name: 'owner', meaning: 'product, grade or specification', needed: true }, { name: 'gate', meaning: 'id of the gate', needed: true }, { name: 'characteristic', meaning: 'id of the characteristic', needed: true }, { name: 'without', meaning: 'a stream to leave out' }], answer: { schema: 'Process' }, refuses: [400] },
  { method: 'get', path: '/api/gauges/{id}/uses', tag: 'records', summary: 'What a gauge has measured', answer: { schema: 'GaugeUses' }, refuses: [404] },
  { method: 'get', path: '/api/gauges/{id}/recalls/{recall}', tag: 'records', summary: 'Everything a recall puts in doubt, and what became of it', answer: { schema: 'Recall' }, refuses: [404] },
  { method: 'get', path: '/api/gauges/{id}/recalls/{recall}/readings', tag: 'records', summary: 'Readings a recall puts in doubt', query: [{ name: 'after', meaning: 'readings to pass over, 0 when left out', whole: true }, { name: 'limit', meaning: 'readings wanted, 100 when left out', whole: true }], answer: { schema: 'RecalledReadings' }, refuses: [400, 404] },
  documentOf('/api/gauges/{id}/recalls/{recall}/readings.csv', 'text/csv', 'Readings a recall puts in doubt, as a table'),
  { method: 'get', path: '/api/charts', tag: 'records', summary: 'Every control chart and how it stands', answer: { schema: 'Charts' }, refuses: [] },
  { method: 'get', path: '/api/charts/lots', tag: 'records', summary: 'Subjects judged at the gate that a chart is about, the oldest first', query: [{ name: 'chart', meaning: 'stream of the chart, e.g. chart:lot/P-100/dimensions/thickness', needed: true }], answer: { schema: 'ChartLots' }, refuses: [400] },
  { method: 'get', path: '/api/people', tag: 'records', summary: 'People and their roles', answer: { schema: 'People' }, refuses: [] },
  { method: 'get', path: '/api/switching', tag: 'records', summary: 'Switching states', answer: { schema: 'SwitchingRows' }, refuses: [] },
  { method: 'get', path: '/api/release', tag: 'lists', summary: 'Lots ready, or nearly ready, to be released', answer: rows, refuses: [] },
  { method: 'get', path: '/api/packing', tag: 'lists', summary: 'Released lots with pieces to pack or boxes to ship', answer: rows, refuses: [] },
  { method: 'get', path: '/api/lots', tag: 'lists', summary: 'Lots, of one standing or of all', query: [{ name: 'standing', meaning: 'only lots of this standing', values: ['due', 'open', 'sorting', 'held', 'inCharge', 'toRelease', 'toPack', 'done'] }], answer: rows, refuses: [400] },
  { method: 'get', path: '/api/ready/{kind}', tag: 'lists', summary: 'Lots that wait for such a charge', answer: rows, refuses: [400] },
  { method: 'get', path: '/api/charges', tag: 'lists', summary: 'Charges', query: [{ name: 'kind', meaning: 'kind of charge', values: CHARGE_KINDS }], answer: rows, refuses: [400] },
  { method: 'get', path: '/api/batches', tag: 'lists', summary: 'Powder batches', answer: rows, refuses: [] },
  { method: 'get', path: '/api/trace/{kind}/{id}', tag: 'travellers', summary: 'What a thing was made from and what became of it', answer: { schema: 'Trace' }, refuses: [400, 404] },
  { method: 'get', path: '/api/search', tag: 'travellers', summary: 'Find by number, serial or the whole code of a box', query: [{ name: 'q', meaning: 'what was typed or scanned', needed: true }], answer: { schema: 'Hits' }, refuses: [400] },
  { method: 'get', path: '/api/journal/verify', tag: 'plant', summary: 'Check the chain of the journal', answer: { schema: 'Verification' }, refuses: [403] },
  { method: 'get', path: '/api/health', tag: 'plant', summary: 'Is the server well', answer: { schema: 'Health' }, open: true, refuses: [] },
  { method: 'get', path: '/api/openapi.json', tag: 'plant', summary: 'This description', answer: { media: 'application/json' }, open: true, refuses: [] },
  documentOf('/api/lots/{id}/certificate.pdf', 'application/pdf', 'The certificate of a released lot', [{ name: 'drawing', meaning: '1: with a last page that draws the product from its designation', values: ['0', '1'] }]),
  { method: 'get', path: '/api/lots/{id}/certificate.json', tag: 'documents', summary: 'The certificate’s data, sealed', answer: { schema: 'Certificate' }, refuses: [404, 409] },
  documentOf('/api/lots/{id}/boxes/{serial}/label.pdf', 'application/pdf', 'The label of a box, as printed', labelQuery),
  documentOf('/api/lots/{id}/boxes/{serial}/label.png', 'image/png', 'The label of a box, in the printer’s dots', labelQuery),
  documentOf('/api/lots/{id}/boxes/{serial}/label.svg', 'image/svg+xml', 'The label of a box, as a drawing', labelQuery),
  documentOf('/api/lots/{id}/boxes/{serial}/preview.svg', 'image/svg+xml', 'The label before it is printed, stamped as a preview', labelQuery),
  documentOf('/api/plans/{id}/versions/{planVersion}/plan.pdf', 'application/pdf', 'A version of an inspection plan on paper', lotSizeQuery),
  documentOf('/api/plans/{id}/versions/{planVersion}/plan.csv', 'text/csv', 'A version of an inspection plan for a spreadsheet, one row a characteristic and class', lotSizeQuery),
  documentOf('/api/studies/{id}/readings.csv', 'text/csv', 'The readings of a gauge study for a spreadsheet, in the order taken'),
  documentOf('/api/studies/{id}/study.pdf', 'application/pdf', 'A closed gauge study on paper'),
  documentOf('/api/travellers/{kind}/{id}/traveller.pdf', 'application/pdf', 'The whole thread on paper'),
  documentOf('/api/travellers/{kind}/{id}/traveller.json', 'application/json', 'The whole thread as data'),
  documentOf('/api/travellers/{kind}/{id}/traveller.csv', 'text/csv', 'The whole thread as a table'),
  documentOf('/api/travellers/{kind}/{id}/hold-tag.pdf', 'application/pdf', 'The tag of a held subject'),
  { method: 'post', path: '/api/certificates/verify', tag: 'documents', summary: 'Is this certificate ours, unaltered and in force. At most 5 MiB.', asksMedia: 'application/pdf', answer: { schema: 'CertificateVerdict' }, open: true, refuses: [400, 413] },
];
