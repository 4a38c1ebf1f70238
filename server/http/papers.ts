import { boxLabelPng, boxLabelSvg } from '../documents/label/index.ts';
import { OutsideDomain } from '../../shared/ground/outside-domain.ts';
import { boxLabelWords } from '../../shared/words/box-label.en.ts';
import { labelPreviewWords } from '../../shared/words/label-preview.en.ts';
import { nearSentence } from '../../shared/words/charge-slips.en.ts';
import { words } from '../../shared/words/index.ts';
import { nextGate, standingHolds } from '../../shared/traveller/index.ts';
import type { Subject } from '../../shared/traveller/index.ts';
import { piecesOf } from '../readmodels/standing.ts';
import { malformed, refused, type Answer, type Paper } from './answer.ts';
import { labelChoice, labelOf } from './label-of.ts';
import { NotPaintable, type Painter } from './paint.ts';
import type { PaintTask } from './paint-task.ts';
import { gaugePapers } from './gauge-readers.ts';
import { planPapers } from './plan-papers.ts';
import { isAnswer, readTraveller } from './read-traveller.ts';
import { printedCharge } from './printed-charge.ts';
import type { PaperReader, Question } from './route.ts';
import { studyPapers } from './study-papers.ts';
import { travellerCsv } from './traveller-export.ts';

const pdf = 'application/pdf';
const wholeThread = Number.MAX_SAFE_INTEGER;
const labelQuery = { size: '`100x50`, `70x35` or `100x70` mm; default `100x50`', dpi: '`203` or `300`; default `203`' };
const kinds = { lot: 'insertLot', batch: 'powderBatch', furnace: 'furnaceCharge', coating: 'coatingCharge' } as const;

/** Everything that is answered with a document. */
export function paperReaders(painter: Painter): readonly PaperReader[] {
  const paint = async (task: PaintTask, name: string): Promise<Answer | Paper> => {
    try {
      return { status: 200, bytes: await painter.paint(task), type: pdf, name };
    } catch (fault) {
      if (fault instanceof NotPaintable) return cannotBeDrawn(fault);
      throw fault;
    }
  };
  return [
    { path: '/api/lots/:id/certificate.pdf', type: pdf, query: { drawing: '`1`: with a last page that draws the product from its designation' }, summary: 'The sealed certificate of a released lot', paint: async ({ plant, params: { id = '' }, query }) => {
      const drawing = query.get('drawing') ?? '0';
      if (drawing !== '0' && drawing !== '1') return malformed('drawing', 'must be one of: 0, 1');
      const data = await plant.certificates.of(id);
      return 'status' in data ? data : paint({ what: 'certificate', data, drawing: drawing === '1' }, `${data.certificate.number}.pdf`);
    } },
    { path: '/api/lots/:id/boxes/:serial/label.pdf', type: pdf, query: labelQuery, summary: 'The printed label of a box', paint: (question) => label(question, false, (data, choice, serial) => paint({ what: 'label', data, choice }, `${serial}.pdf`)) },
    { path: '/api/lots/:id/boxes/:serial/label.png', type: 'image/png', query: labelQuery, summary: 'The printed label of a box, dot for dot', paint: (question) => label(question, false, (data, choice, serial) => ({ status: 200, bytes: boxLabelPng(data, choice), type: 'image/png', name: `${serial}.png` })) },
    { path: '/api/lots/:id/boxes/:serial/label.svg', type: 'image/svg+xml', query: labelQuery, summary: 'The printed label of a box, for the screen', paint: (question) => label(question, false, (data, choice, serial) => svg(boxLabelSvg(data, choice), serial)) },
    { path: '/api/lots/:id/boxes/:serial/preview.svg', type: 'image/svg+xml', query: labelQuery, summary: 'What the label will look like, stamped as a preview', paint: (question) => label(question, true, (data, choice, serial) => {
      const stamp = data.demo ? `${labelPreviewWords.stamp} · ${boxLabelWords.demo}` : labelPreviewWords.stamp;
      return svg(boxLabelSvg({ ...data, demo: true }, { ...choice, words: { ...boxLabelWords, demo: stamp } }), serial);
    }) },
    { path: '/api/travellers/:kind/:id/traveller.pdf', type: pdf, summary: 'The whole thread of a subject on paper', paint: async ({ plant, params: { kind = '', id = '' } }) => {
      const read = await readTraveller(plant, kind, id, wholeThread);
      if (isAnswer(read)) return read;
      const names = plant.records.names();
      const speak = words('en', 'UTC');
      const slips = read.slips.map((slip) => ({ at: slip.at, by: names[slip.by] ?? slip.by, bench: slip.bench, sentence: speak.slipSentence(slip, { names, subject: read.state }) }));
      const about = { plant: plant.records.plant()?.name ?? '', number: id, subject: inOneLine(read.state), printedAt: new Date().toISOString(), demo: read.state.demo, language: 'en' };
      const charge = read.state.kind === 'furnace' || read.state.kind === 'coating' ? printedCharge(read.state) : null;
      return paint({ what: 'traveller', slips, about, charge }, `traveller-${id}.pdf`);
    } },
    { path: '/api/travellers/:kind/:id/traveller.csv', type: 'text/csv; charset=utf-8', summary: 'The whole thread of a subject for a spreadsheet', paint: async ({ plant, params: { kind = '', id = '' } }) => {
      const read = await readTraveller(plant, kind, id, wholeThread);
      if (isAnswer(read)) return read;
      return { status: 200, bytes: Buffer.from(`\uFEFF${travellerCsv(read.state, read.slips, plant.records.names())}`, 'utf8'), type: 'text/csv; charset=utf-8', name: `traveller-${id}.csv` };
    } },
    { path: '/api/travellers/:kind/:id/hold-tag.pdf', type: pdf, summary: 'The tag of a hold that stands', paint: async ({ plant, params: { kind = '', id = '' } }) => {
      const read = await readTraveller(plant, kind, id, 1);
      if (isAnswer(read)) return read;
      const hold = standingHolds(read.state).at(-1);
      if (hold === undefined) return refused({ code: 'notFound', what: 'hold', id });
      const { cause } = hold;
      const gate = cause.by === 'person' || cause.by === 'recall' ? nextGate(read.state) : read.state.gates.find((each) => each.id === cause.gate) ?? null;
      return paint({ what: 'holdTag', data: {
        kind: kinds[read.state.kind], number: id, product: inOneLine(read.state), quantity: read.state.kind === 'batch' ? null : piecesOf(read.state), gate: gate?.name ?? null, reason: cause.by === 'charge' && cause.near !== undefined ? `${hold.reason}. ${nearSentence(cause.near, words('en', 'UTC'))}` : hold.reason,
        by: { badge: hold.by, name: plant.records.names()[hold.by] ?? hold.by }, at: hold.at, demo: read.state.demo, language: 'en',
      } }, `hold-${id}.pdf`);
    } },
    { path: '/api/attachments/:digest/file.csv', type: 'text/csv; charset=utf-8', summary: 'A file that a slip names, as it was handed in', paint: async ({ plant, params: { digest = '' } }) => {
      const kept = await plant.journal.attachments.get(digest);
      return kept === null ? refused({ code: 'notFound', what: 'attachment', id: digest.slice(0, 64) }) : { status: 200, bytes: kept.bytes, type: 'text/csv; charset=utf-8', name: `${digest.slice(0, 12)}.csv` };
    } },
    ...planPapers(paint),
    ...studyPapers(paint),
    ...gaugePapers,
  ];
}

type Draw = (data: Exclude<Awaited<ReturnType<typeof labelOf>>, Answer>, choice: Exclude<ReturnType<typeof labelChoice>, Answer>, serial: string) => Promise<Answer | Paper> | Paper;

async function label({ plant, params: { id = '', serial = '' }, query }: Question, isPreview: boolean, draw: Draw): Promise<Answer | Paper> {
  const choice = labelChoice(query);
  if ('status' in choice) return choice;
  const data = await labelOf(plant, id, serial, isPreview);
  if ('status' in data) return data;
  try {
    return await draw(data, choice, serial);
  } catch (fault) {
    if (fault instanceof OutsideDomain) return cannotBeDrawn(fault);
    throw fault;
  }
}

function svg(text: string, serial: string): Paper {
  return { status: 200, bytes: Buffer.from(text, 'utf8'), type: 'image/svg+xml', name: `${serial}.svg` };
}

/** Something in the data cannot stand on paper, such as a letter the typeface lacks. */
function cannotBeDrawn(fault: Error): Answer {
  return refused({ code: 'identifierUnfit', field: 'text', value: '', rule: 'printable', detail: fault.message });
}

function inOneLine(subject: Subject): string {
  switch (subject.kind) {
    case 'lot': return `${subject.product.designation} · ${subject.product.name}`;
    case 'batch': return subject.grade.name;
    case 'furnace': case 'coating': return `${subject.specification.name} · ${subject.equipment}`;
  }
}
