import { afterEach, beforeEach, expect, it } from 'vitest';
import { demoFurnaceLog } from '../../../demo-data/furnace-log.ts';
import { PROGRAMMES } from '../../../demo-data/charge-records.ts';
import { FixturePlant } from '../fixture-plant.ts';
import { HttpCaller, refusalIn } from '../http-caller.ts';

let plant: FixturePlant;
beforeEach(async () => {
  plant = await FixturePlant.open();
});
afterEach(() => plant.close());
const LOG = demoFurnaceLog('F-1', { dip: true });
const handIn = async (text: unknown, who: 'lab' | 'packer' = 'lab') => (await plant.as(who)).post('/api/attachments', text);

it('a log is handed in, comes back as it was, and is attached by its digest; the journal’s walk checks it', async () => {
  const { status, body } = await handIn({ text: LOG });
  expect([status, body]).toMatchObject([200, { bytes: Buffer.byteLength(LOG) }]);
  const { digest } = body as { digest: string };
  const lab = await plant.as('lab');
  const back = await lab.get(`/api/attachments/${digest}/file.csv`);
  expect([back.status, back.body, back.headers.get('content-type')]).toEqual([200, LOG, 'text/csv; charset=utf-8']);
  const [programme] = PROGRAMMES;
  if (programme === undefined) throw new Error('no programme');
  await plant.give('engineer', { type: 'defineProgramme', programme: { ...programme, id: 'S1' } });
  await plant.releasedBatch('B-1');
  await plant.openedLot('L-9', 'B-1');
  await plant.workGate('inspector', 'lot:L-9', 'dimensions');
  await plant.give('lab', { type: 'openCharge', charge: 'F-1', kind: 'furnace', specification: 'G1', programme: 'S1', equipment: 'Furnace 1', members: [{ lot: 'L-9', places: ['Top'] }] });
  await plant.give('lab', { type: 'attachFurnaceLog', charge: 'F-1', attachment: digest, fileName: 'F-1.csv' });
  const read = await lab.get('/api/travellers/furnace/F-1');
  expect(read.body).toMatchObject({ state: { logs: [{ attachment: digest, rows: 801, check: { within: false, findings: [{ kind: 'tooCold' }, { kind: 'soakShort' }] } }] } });
  expect((await plant.server.journal.verify()).attachments).toBe(1);
});

it('what is no log is refused with its line and column and not kept; so is what somebody without the right hands in', async () => {
  expect(refusalIn(await handIn({ text: 'time,temperature\n0,20\n1,x' }))).toMatchObject({ code: 'logUnreadable', fault: { line: 3, column: 2, code: 'notANumber' } });
  expect(refusalIn(await handIn({ text: LOG }, 'packer'))).toMatchObject({ code: 'notYourRole' });
  expect(refusalIn(await handIn({ nothing: 1 }))).toMatchObject({ code: 'malformed' });
  expect(await plant.server.journal.verify()).toMatchObject({ attachments: 0 });
});

it('nobody reads or hands in a file before signing on, and a file nobody handed in is not there', async () => {
  const nobody = new HttpCaller(plant.server.url);
  expect([(await nobody.post('/api/attachments', { text: LOG })).status, (await nobody.get(`/api/attachments/${'a'.repeat(64)}/file.csv`)).status]).toEqual([401, 401]);
  expect((await (await plant.as('lab')).get(`/api/attachments/${'a'.repeat(64)}/file.csv`)).status).toBe(404);
});

it('a command that names a file the server has not is refused, and nothing is written', async () => {
  const { body } = await (await plant.as('lab')).give({ type: 'attachFurnaceLog', charge: 'F-1', attachment: 'b'.repeat(64), fileName: 'x.csv' });
  expect(body).toMatchObject({ ok: false, refusal: { code: 'notFound' } });
});
