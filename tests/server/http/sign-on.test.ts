import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AddressLimit } from '../../../server/people/address-limit.ts';
import { PinDesk } from '../../../server/people/pin-desk.ts';
import { FixturePlant, people } from '../fixture-plant.ts';
import { HttpCaller, refusalIn } from '../http-caller.ts';

let plant: FixturePlant;
let now = Date.now();
beforeAll(async () => {
  plant = await FixturePlant.open({ sessions: { idleMs: 60_000, longestMs: 600_000, now: () => now } });
}, 60_000);
afterAll(() => plant.close());

const signIn = async (badge: string, pin: string): Promise<HttpCaller> => {
  const caller = new HttpCaller(plant.server.url);
  await caller.signIn({ badge, pin }, 'Lab');
  return caller;
};

describe('a session', () => {
  it('tells who is signed on where, and comes as a cookie no script can read', async () => {
    const caller = new HttpCaller(plant.server.url);
    const { body, headers } = await caller.signIn(people.lab, 'Lab');
    expect(body).toEqual({ token: caller.token, badge: 'L-1', name: 'Lou Invented', roles: ['lab'], bench: 'Lab' });
    expect(headers.get('set-cookie')).toMatch(/^gatehand=[\w-]{43}; Path=\/; HttpOnly; SameSite=Strict; Max-Age=\d+$/);
    expect((await caller.get('/api/session')).body).toEqual(body);
    const byCookie = new HttpCaller(plant.server.url);
    expect((await byCookie.send('GET', '/api/session', undefined, { cookie: `other=1; gatehand=${caller.token}` })).body).toEqual(body);
  });

  it('ends when signed off', async () => {
    const caller = await signIn('L-1', '2222');
    expect((await caller.send('DELETE', '/api/session')).status).toBe(204);
    expect((await caller.get('/api/session')).status).toBe(401);
  });

  it('ends after the idle time, and not while it is used', async () => {
    const caller = await signIn('L-1', '2222');
    for (let half = 0; half < 4; half += 1) {
      now += 40_000;
      expect((await caller.get('/api/session')).status).toBe(200);
    }
    now += 61_000;
    expect((await caller.get('/api/session')).status).toBe(401);
    now -= 4 * 40_000 + 61_000;
  });

  it('outlives a restart of the server', async () => {
    const other = await FixturePlant.open();
    const caller = await other.as('lab');
    await other.restart();
    expect((await caller.get('/api/session')).body).toMatchObject({ badge: 'L-1' });
    await other.close();
  });

  it('ends when its person is no longer active, and roles count as they are now', async () => {
    await plant.give('keeper', { type: 'enrolPerson', badge: 'T-1', name: 'Temp Invented', roles: ['inspector'], pin: '1212' });
    const caller = await signIn('T-1', '1212');
    await plant.give('keeper', { type: 'changePerson', badge: 'T-1', name: 'Temp Invented', roles: ['packer'], active: true, reason: 'moved' });
    expect((await caller.get('/api/session')).body).toMatchObject({ roles: ['packer'] });
    await plant.give('keeper', { type: 'changePerson', badge: 'T-1', name: 'Temp Invented', roles: ['packer'], active: false, reason: 'left' });
    expect((await caller.get('/api/session')).status).toBe(401);
    expect((await signIn('T-1', '1212')).token).toBe('');
  });
});

describe('wrong PINs', () => {
  it('lock a badge after five, known or not, and answer alike for both', async () => {
    await plant.give('keeper', { type: 'enrolPerson', badge: 'T-2', name: 'Tried Invented', roles: ['inspector'], pin: '3434' });
    for (const badge of ['T-2', 'NOBODY']) {
      const answers: unknown[] = [];
      for (let attempt = 1; attempt <= 6; attempt += 1) {
        const refusal = refusalIn(await new HttpCaller(plant.server.url).signIn({ badge, pin: '0000' }, 'B'));
        answers.push(refusal.code === 'signInFailed' ? refusal.attemptsLeft : refusal.code);
      }
      expect(answers).toEqual([4, 3, 2, 1, 'signInLocked', 'signInLocked']);
    }
    expect(refusalIn(await new HttpCaller(plant.server.url).signIn({ badge: 'T-2', pin: '3434' }, 'B')).code).toBe('signInLocked');
  });

  it('tried side by side are no more than tried one after another', async () => {
    await plant.give('keeper', { type: 'enrolPerson', badge: 'T-3', name: 'Tried too', roles: ['inspector'], pin: '3434' });
    const answers = await Promise.all(Array.from({ length: 12 }, () => new HttpCaller(plant.server.url).signIn({ badge: 'T-3', pin: '0000' }, 'B')));
    expect(answers.filter(({ status }) => status === 401)).toHaveLength(4);
    expect(answers.filter(({ status }) => status === 429)).toHaveLength(8);
  });

  it('open the badge again when the lock has run out, and each further one doubles it', async () => {
    await plant.give('keeper', { type: 'enrolPerson', badge: 'T-4', name: 'Tried late', roles: ['inspector'], pin: '3434' });
    let clock = Date.now();
    const desk = new PinDesk(plant.server.journal.pins, () => clock);
    for (let attempt = 1; attempt <= 5; attempt += 1) await desk.check('T-4', '0000');
    expect(await desk.check('T-4', '3434')).toEqual({ ok: false, lockedUntil: new Date(clock + 60_000).toISOString() });
    clock += 60_001;
    expect(await desk.check('T-4', '0000')).toEqual({ ok: false, lockedUntil: new Date(clock + 120_000).toISOString() });
    clock += 120_001;
    expect(await desk.check('T-4', '3434')).toEqual({ ok: true });
    expect(await desk.check('T-4', '0000')).toEqual({ ok: false, attemptsLeft: 4 });
  });

  it('from one address make it wait, however many badges it tries', () => {
    let clock = 0;
    const limit = new AddressLimit(() => clock);
    for (let attempt = 0; attempt < 60; attempt += 1) {
      expect(limit.lockedUntil('10.0.0.9')).toBeNull();
      limit.countFailure('10.0.0.9');
    }
    expect(limit.lockedUntil('10.0.0.9')).toBe(new Date(300_000).toISOString());
    expect(limit.lockedUntil('10.0.0.8')).toBeNull();
    clock = 300_001;
    expect(limit.lockedUntil('10.0.0.9')).toBeNull();
  });
});
