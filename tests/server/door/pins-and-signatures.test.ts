import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { FixturePlant, people } from '../fixture-plant.ts';
import { HttpCaller, refusalIn } from '../http-caller.ts';

let plant: FixturePlant;
beforeAll(async () => {
  plant = await FixturePlant.open();
  await plant.releasedBatch('B1');
  await plant.passedLot('L-1', 'B1', 'F-1');
}, 60_000);
afterAll(() => plant.close());

const release = { type: 'releaseLot', lot: 'L-1' } as const;

describe('a signature', () => {
  it('is asked for where there is none', async () => {
    const answered = await (await plant.as('releaser')).give(release);
    expect(answered.status).toBe(409);
    expect(refusalIn(answered)).toEqual({ code: 'signatureMissing', command: 'releaseLot' });
  });

  it('with a wrong PIN is none: 401, the attempts left are told, and nothing is written', async () => {
    const answered = await (await plant.as('releaser')).give(release, { pin: '0000' });
    expect(answered.status).toBe(401);
    expect(refusalIn(answered)).toEqual({ code: 'wrongPin', attemptsLeft: 4 });
  });

  it('of the one who worked the last gate does not release alone, and a second one with a wrong PIN does not help', async () => {
    const caller = await plant.as('second');
    expect(refusalIn(await caller.give(release, { pin: people.second.pin }))).toMatchObject({ code: 'workerReleasesAlone' });
    expect(refusalIn(await caller.give(release, { pin: people.second.pin, coSigner: { badge: 'R-1', pin: '9999' } }))).toMatchObject({ code: 'wrongPin' });
    expect(refusalIn(await caller.give(release, { pin: people.second.pin, coSigner: { badge: 'Q-1', pin: people.engineer.pin } }))).toMatchObject({ code: 'coSignerCannot', why: 'notReleaser' });
  });

  it('of two stands on the slip with both names', async () => {
    const answer = await (await plant.as('second')).mustGive(release, { pin: people.second.pin, coSigner: { badge: 'R-1', pin: people.releaser.pin } });
    expect(answer.slips[0]?.body).toMatchObject({ type: 'lotReleased', certificate: 'C-L-1-1', signatures: [{ badge: 'I-2', meaning: 'releasedBy' }, { badge: 'R-1', meaning: 'releasedTogetherWith' }] });
  });

  it('tried too often locks the badge, for signing on too', async () => {
    await plant.give('keeper', { type: 'enrolPerson', badge: 'Q-9', name: 'Quirin Invented', roles: ['engineer'], pin: '9090' });
    const caller = new HttpCaller(plant.server.url);
    await caller.signIn({ badge: 'Q-9', pin: '9090' }, 'B');
    const left: number[] = [];
    for (let attempt = 1; attempt <= 4; attempt += 1) {
      const refusal = refusalIn(await caller.give({ type: 'approvePlan', plan: 'ROUTE', planVersion: 1 }, { pin: '0000' }));
      if (refusal.code === 'wrongPin') left.push(refusal.attemptsLeft);
    }
    expect(left).toEqual([4, 3, 2, 1]);
    expect(refusalIn(await caller.give({ type: 'approvePlan', plan: 'ROUTE', planVersion: 1 }, { pin: '0000' }))).toMatchObject({ code: 'signInLocked' });
    const right = await new HttpCaller(plant.server.url).signIn({ badge: 'Q-9', pin: '9090' }, 'B');
    expect(right.status).toBe(429);
    expect(refusalIn(right)).toMatchObject({ code: 'signInLocked', untilIso: expect.stringMatching(/Z$/) });
  });
});

describe('a PIN', () => {
  it('set at enrolment signs on, and a changed one in its place', async () => {
    await plant.give('keeper', { type: 'enrolPerson', badge: 'N-1', name: 'Nia Invented', roles: ['inspector'], pin: '7070' });
    const caller = new HttpCaller(plant.server.url);
    expect((await caller.signIn({ badge: 'N-1', pin: '7070' }, 'B')).status).toBe(200);
    expect(refusalIn(await caller.give({ type: 'changePin', badge: 'N-1', pin: '8080' }))).toMatchObject({ code: 'signatureMissing' });
    expect(refusalIn(await caller.give({ type: 'changePin', badge: 'N-1', pin: '8080' }, { pin: '1111' }))).toMatchObject({ code: 'wrongPin' });
    await caller.mustGive({ type: 'changePin', badge: 'N-1', pin: '8080' }, { pin: '7070' });
    expect((await new HttpCaller(plant.server.url).signIn({ badge: 'N-1', pin: '7070' }, 'B')).status).toBe(401);
    expect((await new HttpCaller(plant.server.url).signIn({ badge: 'N-1', pin: '8080' }, 'B')).status).toBe(200);
  });

  it('is not touched by an enrolment or a change that is refused', async () => {
    expect(refusalIn(await (await plant.as('keeper')).give({ type: 'enrolPerson', badge: 'N-1', name: 'Other', roles: ['inspector'], pin: '1234' }))).toMatchObject({ code: 'alreadyThere' });
    expect(refusalIn(await (await plant.as('lab')).give({ type: 'changePin', badge: 'N-1', pin: '1234' }))).toMatchObject({ code: 'notYourRole' });
    expect((await new HttpCaller(plant.server.url).signIn({ badge: 'N-1', pin: '8080' }, 'B')).status).toBe(200);
  });

  it('stands nowhere in the data folder, neither on a slip nor beside it', async () => {
    await plant.give('keeper', { type: 'enrolPerson', badge: 'N-2', name: 'Nan Invented', roles: ['inspector'], pin: '491827364501' });
    const slips = await plant.server.journal.follow(0, 100_000);
    expect(JSON.stringify(slips)).not.toContain('491827364501');
    for (const file of ['gatehand.db', 'gatehand.db-wal']) expect(readFileSync(join(plant.folder, file)).includes('491827364501')).toBe(false);
  });
});
