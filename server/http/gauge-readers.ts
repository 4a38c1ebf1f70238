import type { Characteristic, Measured, Recall, Subject } from '../../shared/traveller/index.ts';
import { judgedWithError } from '../../shared/traveller/index.ts';
import { gaugeUsesSchema, recallViewSchema, recalledReadingsSchema } from '../../shared/wire/gauge-views.ts';
import type { RecalledReading } from '../../shared/wire/gauge-views.ts';
import { recallCsvWords } from '../../shared/words/recall-csv.en.ts';
import { typed } from '../readmodels/typed-slip.ts';
import { countOfUses, readingsOfGauge, recallRows, spanOf, usesOfGauge } from '../readmodels/gauge-uses.ts';
import type { GaugeReading } from '../readmodels/gauge-uses.ts';
import { gaugeRow } from '../readmodels/gauge-rows.ts';
import { found, malformed, notFound, type Answer } from './answer.ts';
import type { Plant } from './plant.ts';
import { wholeOf, type PaperReader, type Question, type Reader } from './route.ts';
import { csvLine } from './csv-line.ts';

const mostUses = 500;
const mostPage = 500;

/** What is asked about one gauge: what it measured, and what its recall puts in doubt. */
export const gaugeReaders: readonly Reader[] = [
  { path: '/api/gauges/:id/uses', summary: 'What a gauge has measured, the last used first', answer: gaugeUsesSchema, read: ({ plant, params: { id = '' } }) => {
    const db = plant.journal.reader;
    return gaugeRow(db, id) === null ? notFound('gauge', id) : found({ rows: usesOfGauge(db, id, mostUses), ...countOfUses(db, id) });
  } },
  { path: '/api/gauges/:id/recalls/:recall', summary: 'Everything a recall puts in doubt, and what became of it', answer: recallViewSchema, read: (question) => withRecall(question, (gauge, recall) => {
    const db = question.plant.journal.reader;
    return found({ gauge: gauge.card, recall, rows: recallRows(db, gauge.card.id, recall), readings: countOfUses(db, gauge.card.id, spanOf(recall)).readings, names: question.plant.records.names() });
  }) },
  { path: '/api/gauges/:id/recalls/:recall/readings', summary: 'Readings a recall puts in doubt, in the order taken', query: { after: 'readings to pass over, default 0', limit: `1 … ${mostPage}, default 100` }, answer: recalledReadingsSchema, read: (question) => withRecall(question, async (gauge, recall) => {
    const after = wholeOf(question.query, 'after', 0, 0, 999_999_999);
    const limit = wholeOf(question.query, 'limit', 100, 1, mostPage);
    if (after === null) return malformed('after', 'must be a whole number, 0 or more');
    if (limit === null) return malformed('limit', `must be a whole number, 1 … ${mostPage}`);
    return found({ rows: await readingsPage(question.plant, gauge.card.id, recall, after, limit), total: countOfUses(question.plant.journal.reader, gauge.card.id, spanOf(recall)).readings });
  }) },
];

/** The same readings for a spreadsheet, all of them. */
export const gaugePapers: readonly PaperReader[] = [
  { path: '/api/gauges/:id/recalls/:recall/readings.csv', type: 'text/csv; charset=utf-8', summary: 'Readings a recall puts in doubt, for a spreadsheet', paint: async (question) => withRecall(question, async (gauge, recall) => {
    const lines = [csvLine(recallCsvWords.heads)];
    for (let after = 0, rows = await readingsPage(question.plant, gauge.card.id, recall, after, mostPage); rows.length > 0; rows = await readingsPage(question.plant, gauge.card.id, recall, after, mostPage)) {
      lines.push(...rows.map((row) => csvLine([row.at, row.stream, row.gate, row.characteristic, String(row.ordinal), String(row.pieces), row.value === null ? '' : String(row.value), row.unit, row.acceptedAsRead === null ? '' : String(row.acceptedAsRead), row.acceptedWithError === null ? '' : String(row.acceptedWithError), row.again ?? ''])));
      after += rows.length;
    }
    return { status: 200, bytes: Buffer.from(`\uFEFF${lines.join('')}`, 'utf8'), type: 'text/csv; charset=utf-8', name: `${recall.id}.csv` };
  }) },
];

function withRecall<T>({ plant, params: { id = '', recall = '' } }: Question, answer: (gauge: NonNullable<ReturnType<typeof gaugeRow>>, recall: Recall) => T): T | Answer {
  const gauge = gaugeRow(plant.journal.reader, id);
  if (gauge === null) return notFound('gauge', id);
  const asked = gauge.recalls.find((each) => each.id === recall);
  return asked === undefined ? notFound('recall', recall) : answer(gauge, asked);
}

async function readingsPage(plant: Plant, gauge: string, recall: Recall, after: number, limit: number): Promise<RecalledReading[]> {
  const states = new Map<string, Subject | null>();
  const rows: RecalledReading[] = [];
  for (const reading of readingsOfGauge(plant.journal.reader, gauge, spanOf(recall), after, limit)) {
    const { stream } = reading;
    if (!states.has(stream)) {
      const { state } = await plant.door.states.fresh(stream);
      states.set(stream, state !== null && 'gates' in state ? state : null);
    }
    const gate = states.get(stream)?.gates.find(({ id }) => id === reading.gate);
    const asked: Characteristic | undefined = gate?.work.find(({ demand }) => demand.characteristic.id === reading.characteristic)?.demand.characteristic ?? gate?.plan?.characteristics.find(({ id }) => id === reading.characteristic);
    const measured = asked?.kind === 'measured' ? asked : null;
    const { at, version, ordinal, pieces, value, again } = reading;
    rows.push({
      stream, version, at, gate: gate?.name ?? reading.gate, characteristic: asked?.name ?? reading.characteristic, unit: measured?.unit ?? '', decimals: measured?.decimals ?? 6, ordinal, pieces, value, again,
      ...(measured === null ? { acceptedAsRead: null, acceptedWithError: null } : await judged(plant, reading, measured, recall.error)),
    });
  }
  return rows;
}

async function judged(plant: Plant, reading: GaugeReading, measured: Measured, error: number): Promise<Pick<RecalledReading, 'acceptedAsRead' | 'acceptedWithError'>> {
  const values = reading.value === null ? await blockOf(plant, reading) : [reading.value];
  const each = values.map((value) => judgedWithError(measured, reading.uncertainty, value, error));
  if (each.length === 0 || each.includes(null)) return { acceptedAsRead: null, acceptedWithError: null };
  return { acceptedAsRead: each.filter((judged) => judged?.asRead).length, acceptedWithError: each.filter((judged) => judged?.withError).length };
}

/** The weights of a block, from its slip. */
async function blockOf({ journal }: Plant, { stream, version }: GaugeReading): Promise<readonly number[]> {
  const [slip] = await journal.read(stream, version - 1, 1);
  const body = slip === undefined ? null : typed(slip).body;
  return body?.type === 'weightsTaken' ? body.values : [];
}
