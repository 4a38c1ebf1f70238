import { randomUUID } from 'node:crypto';
import { connect } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Command } from '../../../shared/traveller/index.ts';
import { FixturePlant, people, type Somebody } from '../fixture-plant.ts';
import { HttpCaller, refusalIn, type Answered } from '../http-caller.ts';

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.open();
  await plant.releasedBatch('B1');
  await plant.openedLot('L-1', 'B1');
}, 60_000);
afterAll(() => plant.close());

const note: Command = { type: 'addNote', subject: 'lot:L-1', text: 'a note' };
const envelope = (more: Record<string, unknown> = {}): Record<string, unknown> => ({ clientId: randomUUID(), bench: 'Bench 1', command: note, ...more });
const json = { 'content-type': 'application/json' };

/** The statuses that the description of the interface names for a question at this address. */
async function statusesOf(caller: HttpCaller, path: string): Promise<readonly string[]> {
  const { paths } = (await caller.get('/api/openapi.json')).body as { readonly paths: Readonly<Record<string, { readonly get?: { readonly responses: object } }>> };
  const asked = path.split('?')[0] ?? '';
  const found = Object.entries(paths).find(([pattern]) => new RegExp(`^${pattern.replaceAll('.', '\\.').replaceAll(/\{\w+\}/g, '[^/]+')}$`).test(asked));
  return Object.keys(found?.[1].get?.responses ?? {});
}

/** Sends it as the inspector, expects this refusal, and that nothing was written. */
async function expectRefused(send: (caller: HttpCaller) => Promise<Answered>, status: number, code: string): Promise<void> {
  const caller = await plant.as('inspector');
  const before = await plant.server.journal.headsDigest();
  const answered = await send(caller);
  expect({ status: answered.status, code: refusalIn(answered).code }).toEqual({ status, code });
  expect(await plant.server.journal.headsDigest()).toEqual(before);
}

describe('a message that is no command', () => {
  it.each<[string, unknown]>([
    ['an unknown field', envelope({ extra: 1 })],
    ['an unknown field within the command', envelope({ command: { ...note, extra: 1 } })],
    ['a command nobody knows', envelope({ command: { type: 'eraseEverything' } })],
    ['no command', envelope({ command: undefined })],
    ['a number where text belongs', envelope({ command: { ...note, text: 5 } })],
    ['text where a number belongs', envelope({ command: { type: 'takeReading', subject: 'lot:L-1', gate: 'dimensions', characteristic: 'length', ordinal: 'one', value: 1 } })],
    ['a client id too short', envelope({ clientId: 'abc' })],
    ['no client id', envelope({ clientId: undefined })],
    ['a bench of half a character', envelope({ bench: '\ud800' })],
    ['a control character in a bench', envelope({ bench: 'a\u0000b' })],
    ['a negative version', envelope({ seen: -1 })],
    ['a PIN of letters', envelope({ pin: 'abcd' })],
    ['a list', [envelope()]], ['null', null], ['a text', 'addNote'], ['a number', 7], ['an object without anything', {}],
    ['__proto__ as a field', JSON.parse('{"__proto__":{"admin":true},"clientId":"12345678","bench":"B","command":{"type":"addNote","subject":"lot:L-1","text":"x"}}')],
  ])('is malformed: %s', async (_, body) => {
    await expectRefused((caller) => caller.post('/api/commands', body), 400, 'malformed');
  });

  it('is malformed when it is empty', async () => {
    await expectRefused((caller) => caller.send('POST', '/api/commands', '', json), 400, 'malformed');
  });

  it('names the place that is wrong', async () => {
    const caller = await plant.as('inspector');
    const refusal = refusalIn(await caller.post('/api/commands', envelope({ command: { ...note, extra: 1 } })));
    expect(refusal).toEqual({ code: 'malformed', problems: [{ where: 'command.extra', what: 'is not known here' }] });
  });

  it.each<[string, string, Record<string, string>]>([
    ['broken JSON', '{"clientId":', json], ['a form', 'a=b', { 'content-type': 'application/x-www-form-urlencoded' }], ['plain text', '{}', { 'content-type': 'text/plain' }],
    ['a character set nobody knows', '{}', { 'content-type': 'application/json; charset=ebcdic' }], ['an encoding that it is not in', 'xx', { ...json, 'content-encoding': 'gzip' }], ['an encoding nobody knows', 'xx', { ...json, 'content-encoding': 'zebra' }],
  ])('is no JSON: %s', async (_, body, headers) => {
    await expectRefused((caller) => caller.send('POST', '/api/commands', body, headers), 400, 'notJson');
  });

  it.each([300_000, 3_000_000])('is too large: %d bytes', async (bytes) => {
    await expectRefused((caller) => caller.post('/api/commands', envelope({ command: { ...note, text: 'x'.repeat(bytes) } })), 413, 'tooLarge');
  });

  it('on a line that is cut in the middle disturbs nobody', async () => {
    const { port, hostname } = new URL(plant.server.url);
    await new Promise<void>((resolve) => {
      const socket = connect(Number(port), hostname, () => {
        socket.write('POST /api/commands HTTP/1.1\r\nHost: x\r\nContent-Type: application/json\r\nContent-Length: 500\r\n\r\n{"clientId"');
        socket.destroy();
        resolve();
      });
    });
    await (await plant.as('inspector')).mustGive(note);
  });
});

describe('a command that may not be', () => {
  it.each<[string, Somebody, Command, number, string]>([
    ['an unknown lot', 'inspector', { type: 'openGate', subject: 'lot:NOWHERE', gate: 'dimensions' }, 404, 'notFound'],
    ['an unknown gate', 'inspector', { type: 'openGate', subject: 'lot:L-1', gate: 'nowhere' }, 404, 'notFound'],
    ['a stream that is no subject', 'inspector', { type: 'addNote', subject: 'person:K-1', text: 'x' }, 404, 'notFound'],
    ['a stream of no kind', 'inspector', { type: 'addNote', subject: 'nothing:at-all', text: 'x' }, 404, 'notFound'],
    ['a stream with half a character', 'inspector', { type: 'addNote', subject: 'lot:\ud800', text: 'x' }, 404, 'notFound'],
    ['the wrong role', 'packer', { type: 'openGate', subject: 'lot:L-1', gate: 'dimensions' }, 403, 'notYourRole'],
    ['a gate out of order', 'inspector', { type: 'openGate', subject: 'lot:L-1', gate: 'visual' }, 409, 'gateOutOfOrder'],
    ['a gate worked elsewhere', 'inspector', { type: 'openGate', subject: 'lot:L-1', gate: 'sintered' }, 409, 'gateWorkedElsewhere'],
    ['a gate not opened', 'inspector', { type: 'takeReading', subject: 'lot:L-1', gate: 'dimensions', characteristic: 'length', ordinal: 1, value: 12.5 }, 409, 'gateNotOpen'],
    ['a lot there is already', 'inspector', { type: 'openLot', lot: 'L-1', product: 'PR1', batch: 'B1', quantity: 10, trayCapacity: 10 }, 409, 'alreadyThere'],
    ['a second plant', 'keeper', { type: 'openPlant', plant: { name: 'Other', address: 'x', country: 'XX', demo: false }, keeper: { badge: 'K-9', name: 'Nobody', pin: '1234' } }, 409, 'alreadyThere'],
  ])('%s', async (_, who, command, status, code) => {
    const caller = await plant.as(who);
    const before = await plant.server.journal.headsDigest();
    const answered = await caller.give(command);
    expect({ status: answered.status, code: refusalIn(answered).code }).toEqual({ status, code });
    expect(await plant.server.journal.headsDigest()).toEqual(before);
  });

  it('on a version that has moved', async () => {
    await expectRefused((caller) => caller.give(note, { seen: 0 }), 409, 'staleVersion');
    await expectRefused((caller) => caller.give(note, { seen: 999 }), 409, 'staleVersion');
  });

  it('by nobody, or with a token that is none', async () => {
    const stranger = new HttpCaller(plant.server.url);
    expect((await stranger.give(note)).status).toBe(401);
    stranger.token = 'x'.repeat(43);
    expect(refusalIn(await stranger.give(note)).code).toBe('notSignedIn');
  });
});

describe('an address', () => {
  it.each<[string, string, number, string]>([
    ['GET', '/api/nowhere', 404, 'unknownAddress'], ['GET', '/api', 404, 'unknownAddress'], ['GET', '/api/travellers/lot', 404, 'unknownAddress'],
    ['POST', '/api/bench', 404, 'unknownAddress'], ['GET', '/api/commands', 405, 'methodNotAllowed'], ['PUT', '/api/commands', 405, 'methodNotAllowed'], ['PATCH', '/api/session', 405, 'methodNotAllowed'],
    ['GET', '/api/travellers/lot/%E0%A4%A', 400, 'malformed'], ['GET', '/api/travellers/boat/L-1', 400, 'malformed'], ['GET', '/api/travellers/lot/L-404', 404, 'notFound'],
    ['GET', '/api/travellers/lot/L-1?tail=many', 400, 'malformed'], ['GET', '/api/travellers/lot/L-1?tail=0', 400, 'malformed'], ['GET', '/api/travellers/lot/L-1/slips?before=x', 400, 'malformed'],
    ['GET', '/api/states?stream=', 400, 'malformed'], ['GET', '/api/states?stream=moon:1', 400, 'malformed'], ['GET', '/api/slips?stream=moon:1', 400, 'malformed'], ['GET', '/api/slips?stream=plan:ROUTE&limit=0', 400, 'malformed'], ['GET', '/api/lots?standing=lost', 400, 'malformed'], ['GET', '/api/ready/oven', 400, 'malformed'],
    ['GET', '/api/charges?kind=oven', 400, 'malformed'], ['GET', '/api/trace/moon/1', 400, 'malformed'], ['GET', '/api/trace/lot/L-404', 404, 'notFound'],
    ['GET', '/api/lots/L-404/certificate.pdf', 404, 'notFound'], ['GET', '/api/lots/L-1/certificate.pdf', 409, 'notReleased'], ['GET', '/api/lots/L-1/boxes/L-1-001/label.png', 409, 'notReleased'],
    ['GET', '/api/lots/L-1/boxes/L-1-001/label.png?size=1x1', 400, 'malformed'], ['GET', '/api/travellers/lot/L-1/hold-tag.pdf', 404, 'notFound'], ['GET', '/api/journal/verify', 403, 'notYourRole'],
    ['GET', `/api/search?q=${'x'.repeat(3000)}`, 400, 'malformed'],
  ])('%s %s answers %d %s', async (method, path, status, code) => {
    await expectRefused((caller) => caller.send(method, path), status, code);
    const described = statusesOf(await plant.as('inspector'), path);
    if (method === 'GET' && code !== 'unknownAddress' && code !== 'methodNotAllowed') expect(await described, 'the description names this status').toContain(String(status));
  });

  it.each(['/api/bench?bench=Lab', '/api/people', '/api/travellers/lot/L-1', '/api/session', '/api/lots/L-1/certificate.pdf'])('%s is closed to whoever is not signed on', async (path) => {
    const answered = await new HttpCaller(plant.server.url).get(path);
    expect({ status: answered.status, code: refusalIn(answered).code }).toEqual({ status: 401, code: 'notSignedIn' });
  });

  it('outside /api that no page stands at is answered in JSON too', async () => {
    expect(refusalIn(await new HttpCaller(plant.server.url).get('/favicon.png'))).toEqual({ code: 'unknownAddress', path: '/favicon.png' });
  });
});

describe('a sign-on', () => {
  it.each<[string, unknown]>([['without a PIN', { badge: 'I-1', bench: 'B' }], ['with a field too many', { badge: 'I-1', pin: '3333', bench: 'B', admin: true }], ['of a list', []], ['with a PIN that is a number', { badge: 'I-1', pin: 3333, bench: 'B' }]])('is malformed %s', async (_, body) => {
    expect((await new HttpCaller(plant.server.url).post('/api/session', body)).status).toBe(400);
  });

  it('too large is told so', async () => {
    const answered = await new HttpCaller(plant.server.url).post('/api/session', { badge: 'I-1', pin: '3333', bench: 'x'.repeat(10_000) });
    expect(answered.status).toBe(413);
    expect(refusalIn(answered)).toEqual({ code: 'tooLarge', mostBytes: 4096 });
  });
});

it('before the plant is opened everything else waits, and the first command opens it', async () => {
  const empty = await FixturePlant.empty();
  const caller = new HttpCaller(empty.server.url);
  expect((await caller.get('/api/plant')).body).toEqual({ opened: false, plant: null, demoPeople: null, benches: [] });
  expect(refusalIn(await caller.give(note))).toEqual({ code: 'setUpFirst' });
  const { badge, name, pin } = people.keeper;
  await caller.mustGive({ type: 'openPlant', plant: { name: 'New', address: 'x', country: 'XX', demo: false }, keeper: { badge, name, pin } });
  expect((await caller.get('/api/plant')).body).toMatchObject({ opened: true, plant: { name: 'New' }, demoPeople: null });
  expect((await caller.signIn(people.keeper, 'Office')).status).toBe(200);
  await empty.close();
});
