import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readBoxCode } from '../../../shared/traveller/box-code/index.ts';
import type { CertificateData } from '../../../shared/wire/certificate-data.ts';
import { readCode } from '../documents/read-code.ts';
import { FixturePlant } from '../fixture-plant.ts';
import { HttpCaller, refusalIn } from '../http-caller.ts';

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.open();
  await plant.releasedBatch('B1');
  await plant.passedLot('L-1', 'B1', 'F-1');
  await plant.give('releaser', { type: 'releaseLot', lot: 'L-1' }, { signed: true });
}, 60_000);
afterAll(() => plant.close());

async function bytes(path: string): Promise<{ status: number; type: string; bytes: Buffer }> {
  const { token } = await plant.as('packer');
  const answered = await fetch(`${plant.server.url}${path}`, { headers: { authorization: `Bearer ${token}` } });
  return { status: answered.status, type: answered.headers.get('content-type') ?? '', bytes: Buffer.from(await answered.arrayBuffer()) };
}
async function verdictOn(document: Buffer): Promise<unknown> {
  return (await new HttpCaller(plant.server.url).send('POST', '/api/certificates/verify', new Uint8Array(document), { 'content-type': 'application/pdf' })).body;
}

describe('a certificate', () => {
  it('states the gates, what was measured and who signed, the same bytes each time', async () => {
    const first = await bytes('/api/lots/L-1/certificate.pdf');
    expect({ status: first.status, type: first.type }).toEqual({ status: 200, type: 'application/pdf' });
    expect((await bytes('/api/lots/L-1/certificate.pdf')).bytes.equals(first.bytes)).toBe(true);
    const data = (await (await plant.as('packer')).get('/api/lots/L-1/certificate.json')).body as CertificateData;
    expect(data).toMatchObject({
      demo: true, certificate: { number: 'C-L-1-1', documentType: '3.1' }, lot: { number: 'L-1', quantity: 200, powderBatches: ['B1'], furnaceCharges: ['F-1'], coatingCharges: [] },
      product: { designation: 'CNMA 12 04 08', grade: 'Invented grade', coating: null }, concessions: [], corrections: [], signatures: [{ badge: 'R-1', role: 'Releaser', meaning: 'Released by' }],
    });
    expect(data.gates.map(({ gate, workedOn, n, verdict }) => `${gate}, ${workedOn.number}: ${n} ${verdict}`)).toEqual([
      'Powder lab, B1: 1 accepted', 'Powder lab, B1: 1 accepted', 'Powder lab, B1: 1 accepted', 'Sintered check, F-1: 2 accepted', 'Dimensions, L-1: 40 accepted', 'Final visual, L-1: 50 accepted',
    ]);
    expect(data.measured.map(({ n, min, max }) => [n, min, max])).toEqual([[1, 18, 18], [1, 14.5, 14.5], [1, 2, 2], [2, 1601, 1602], [40, 12.501, 12.54]]);
  });

  it('is genuine, until anything in it is changed', async () => {
    const { bytes: pdf } = await bytes('/api/lots/L-1/certificate.pdf');
    expect(await verdictOn(pdf)).toMatchObject({ verdict: 'genuine', why: null, certificate: { number: 'C-L-1-1', lot: 'L-1', quantity: 200 } });
    const { body } = await (await plant.as('packer')).get('/api/lots/L-1/certificate.json');
    const data = body as CertificateData;
    expect(await verdictOn(Buffer.from(JSON.stringify(data)))).toMatchObject({ verdict: 'genuine' });
    expect(await verdictOn(Buffer.from(JSON.stringify({ ...data, lot: { ...data.lot, quantity: 2000 } })))).toMatchObject({ verdict: 'altered', why: 'digestDiffers', certificate: null });
    for (const foreign of ['%PDF-1.7 nothing in it', 'not even a PDF', '{}']) expect(await verdictOn(Buffer.from(foreign))).toMatchObject({ verdict: 'notOurs' });
  });

  it('has a drawing on its last page where that is asked for, and is as genuine as without', async () => {
    const [plain, drawn] = [await bytes('/api/lots/L-1/certificate.pdf'), await bytes('/api/lots/L-1/certificate.pdf?drawing=1')];
    expect(drawn.bytes.equals(plain.bytes)).toBe(false);
    expect((await bytes('/api/lots/L-1/certificate.pdf?drawing=0')).bytes.equals(plain.bytes)).toBe(true);
    expect(await verdictOn(drawn.bytes)).toEqual(await verdictOn(plain.bytes));
    expect(refusalIn(await (await plant.as('packer')).get('/api/lots/L-1/certificate.pdf?drawing=please'))).toMatchObject({ code: 'malformed', problems: [{ where: 'drawing' }] });
  });

  it('larger than a certificate can be is not looked at, and nothing at all is told so', async () => {
    const caller = new HttpCaller(plant.server.url);
    const tooLarge = await caller.send('POST', '/api/certificates/verify', new Uint8Array(6 * 1024 * 1024), { 'content-type': 'application/pdf' });
    expect({ status: tooLarge.status, refusal: refusalIn(tooLarge) }).toEqual({ status: 413, refusal: { code: 'tooLarge', mostBytes: 5 * 1024 * 1024 } });
    expect(refusalIn(await caller.send('POST', '/api/certificates/verify', '', { 'content-type': 'application/pdf' }))).toMatchObject({ code: 'malformed' });
  });

  it('issued stays as it was issued, and counts no longer once its release is withdrawn', async () => {
    await plant.passedLot('L-2', 'B1', 'F-2');
    await plant.give('releaser', { type: 'releaseLot', lot: 'L-2' }, { signed: true });
    const { bytes: pdf } = await bytes('/api/lots/L-2/certificate.pdf');
    await plant.give('keeper', { type: 'changePerson', badge: 'R-1', name: 'Renamed Since', roles: ['releaser'], active: true, reason: 'married' });
    expect((await bytes('/api/lots/L-2/certificate.pdf')).bytes.equals(pdf)).toBe(true);
    await plant.give('releaser', { type: 'withdrawRelease', lot: 'L-2', reason: 'doubt' }, { signed: true });
    expect(await verdictOn(pdf)).toMatchObject({ verdict: 'withdrawn' });
    expect(refusalIn(await (await plant.as('packer')).get('/api/lots/L-2/certificate.pdf'))).toEqual({ code: 'notReleased', lot: 'L-2', why: 'withdrawn' });
    await plant.give('releaser', { type: 'releaseLot', lot: 'L-2' }, { signed: true });
    const { body } = await (await plant.as('packer')).get('/api/lots/L-2/certificate.json');
    expect(body).toMatchObject({ certificate: { number: 'C-L-2-2' }, signatures: [{ name: 'Renamed Since' }] });
    expect(await verdictOn(pdf)).toMatchObject({ verdict: 'withdrawn' });
  });

  it('shows a rejection, the concession that let it pass, and a correction', async () => {
    await plant.openedLot('L-3', 'B1');
    await plant.workGate('inspector', 'lot:L-3', 'dimensions');
    await plant.give('inspector', { type: 'correctReading', subject: 'lot:L-3', gate: 'dimensions', characteristic: 'length', ordinal: 2, value: 12.6, reason: 'read again' });
    await plant.give('lab', { type: 'openCharge', charge: 'F-3', kind: 'furnace', specification: 'G1', programme: 'S1', equipment: 'Furnace 1', members: [{ lot: 'L-3', places: ['Top'] }] });
    await plant.workGate('lab', 'furnace:F-3', 'sintered');
    await plant.workGate('inspector', 'lot:L-3', 'visual', 5);
    await plant.give('engineer', { type: 'dispose', subject: 'lot:L-3', hold: 'L-3-H1', disposition: { kind: 'concession', statement: 'Small chips, agreed' }, reason: 'looks only' }, { signed: true });
    await plant.give('releaser', { type: 'releaseLot', lot: 'L-3' }, { signed: true });
    const data = (await (await plant.as('packer')).get('/api/lots/L-3/certificate.json')).body as CertificateData;
    expect(data.gates.at(-1)).toMatchObject({ gate: 'Final visual', verdict: 'acceptedOnConcession', result: { judgedBy: 'found', found: 5 } });
    expect(data.gates.filter(({ gate }) => gate === 'Dimensions')).toHaveLength(1);
    expect(data.concessions).toMatchObject([{ text: 'Small chips, agreed', quantity: 200, by: { badge: 'Q-1' } }]);
    expect(data.corrections).toMatchObject([{ what: 'Dimensions, The length, place 2', was: '12.502', is: '12.6', reason: 'read again' }]);
  });

  it('of a part split off shows what its lot had passed', async () => {
    await plant.openedLot('L-4', 'B1');
    await plant.workGate('inspector', 'lot:L-4', 'dimensions');
    await plant.give('inspector', { type: 'splitLot', lot: 'L-4', into: 'L-4A', pieces: 80, reason: 'two orders' });
    await plant.give('lab', { type: 'openCharge', charge: 'F-4', kind: 'furnace', specification: 'G1', programme: 'S1', equipment: 'Furnace 1', members: [{ lot: 'L-4A', places: ['Top'] }] });
    await plant.workGate('lab', 'furnace:F-4', 'sintered');
    await plant.workGate('second', 'lot:L-4A', 'visual');
    await plant.give('releaser', { type: 'releaseLot', lot: 'L-4A' }, { signed: true });
    const data = (await (await plant.as('packer')).get('/api/lots/L-4A/certificate.json')).body as CertificateData;
    expect(data.gates.filter(({ gate }) => gate === 'Dimensions')).toMatchObject([{ workedOn: { kind: 'insertLot', number: 'L-4' }, n: 40 }]);
    expect(data.measured.map(({ n }) => n)).toContain(40);
  });
});

describe('a label', () => {
  it('is shown as a preview before it is printed, and as itself only afterwards', async () => {
    await plant.give('packer', { type: 'packBox', lot: 'L-1', pieces: 100 });
    const preview = await bytes('/api/lots/L-1/boxes/L-1-001/preview.svg');
    expect({ status: preview.status, type: preview.type }).toMatchObject({ status: 200, type: expect.stringContaining('image/svg+xml') });
    for (const kind of ['pdf', 'png', 'svg']) expect(refusalIn(await (await plant.as('packer')).get(`/api/lots/L-1/boxes/L-1-001/label.${kind}`))).toEqual({ code: 'labelNotPrinted', box: 'L-1-001' });
    await plant.give('packer', { type: 'printLabel', lot: 'L-1', box: 'L-1-001' });
    const { bytes: png, type } = await bytes('/api/lots/L-1/boxes/L-1-001/label.png?size=70x35&dpi=300');
    expect(type).toBe('image/png');
    expect(readBoxCode(await readCode(png, 'DataMatrix'))).toMatchObject({ ok: true, fields: { lot: 'L-1', serial: 'L-1-001', quantity: 100, item: 'CNMA120408-P1', country: 'XX' } });
    expect((await bytes('/api/lots/L-1/boxes/L-1-001/label.pdf')).bytes.subarray(0, 5).toString()).toBe('%PDF-');
    const once = (await bytes('/api/lots/L-1/boxes/L-1-001/label.svg')).bytes;
    await plant.give('packer', { type: 'printLabel', lot: 'L-1', box: 'L-1-001', reason: 'smeared' });
    expect((await bytes('/api/lots/L-1/boxes/L-1-001/label.svg')).bytes.equals(once)).toBe(false);
    expect((await bytes('/api/lots/L-1/boxes/NONE/label.svg')).status).toBe(404);
  });
});

describe('a traveller on paper', () => {
  it('comes as PDF and as a table, which no spreadsheet takes for formulas', async () => {
    await plant.give('inspector', { type: 'addNote', subject: 'lot:L-1', text: '=1+1 "quoted", and so on' });
    expect((await bytes('/api/travellers/lot/L-1/traveller.pdf')).bytes.subarray(0, 5).toString()).toBe('%PDF-');
    const { bytes: csv } = await bytes('/api/travellers/lot/L-1/traveller.csv');
    const lines = csv.toString('utf8').trimEnd().split('\r\n');
    expect(lines[0]).toBe('\uFEFFversion,at,badge,name,bench,type,sentence,body,hash');
    expect(lines).toHaveLength(1 + await plant.server.journal.versionOf('lot:L-1'));
    expect(lines.some((line) => /(^|,)"?[=+@]/.test(line))).toBe(false);
  });

  it('has a hold tag while a hold stands', async () => {
    await plant.openedLot('L-5', 'B1');
    await plant.give('inspector', { type: 'hold', subject: 'lot:L-5', reason: 'mixed trays' });
    expect((await bytes('/api/travellers/lot/L-5/hold-tag.pdf')).bytes.subarray(0, 5).toString()).toBe('%PDF-');
  });

  it('with a letter the typeface lacks is refused with the reason', async () => {
    await plant.give('inspector', { type: 'addNote', subject: 'lot:L-5', text: '漢字' });
    const answered = await (await plant.as('packer')).get('/api/travellers/lot/L-5/traveller.pdf');
    expect(answered.status).toBe(409);
    expect(refusalIn(answered)).toMatchObject({ code: 'identifierUnfit' });
  });
});
