import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { digestOfHeads } from '../../../server/journal/heads-digest.ts';
import { StaleVersion, type Journal, type Receipt } from '../../../server/journal/journal.ts';
import { JournalFault } from '../../../server/journal/journal-fault.ts';
import { chainContract } from './chain-contract.ts';
import { entryOf, reading, readingFor } from './entries.ts';
import type { Place } from './place.ts';

export type { Place } from './place.ts';

/** What every journal must do, whatever it is stored in. */
export function journalContract(name: string, newPlace: () => Promise<Place>): void {
  describe(`${name}, as any journal`, () => {
    let place: Place;
    let journal: Journal;

    beforeEach(async () => {
      place = await newPlace();
      journal = await place.open();
    });
    afterEach(async () => {
      await journal.close();
      await place.clear();
    });

    async function meddle(act: () => Promise<void>): Promise<void> {
      await journal.close();
      await act();
      journal = await place.open();
    }

    async function outcomes(appends: readonly Promise<Receipt>[]): Promise<(Receipt | Error)[]> {
      const settled = await Promise.allSettled(appends);
      return settled.map((one) => (one.status === 'fulfilled' ? one.value : one.reason));
    }

    describe('adding and reading', () => {
      it('reads back what was added, stamped and numbered', async () => {
        const receipt = await journal.append(entryOf('c-1', [{ stream: 'lot L-1', expectedVersion: 0, bodies: [reading(1, 4.75), reading(2, 4.77)] }]));
        expect(receipt).toMatchObject({ clientId: 'c-1', repeated: false });
        expect(await journal.read('lot L-1')).toEqual(receipt.slips);
        expect(receipt.slips).toMatchObject([
          {
            stream: 'lot L-1', version: 1, type: 'readingTaken', schema: 1, at: '2025-03-03T06:30:00.000Z', by: 'B-07', bench: 'final visual 2',
            clientId: 'c-1', body: reading(1, 4.75),
          },
          { stream: 'lot L-1', version: 2, body: reading(2, 4.77) },
        ]);
      });

      it('reads a part of a stream: after a version, and no more than asked for', async () => {
        await journal.append(entryOf('c-1', [{ stream: 'lot L-1', expectedVersion: 0, bodies: [1, 2, 3, 4, 5].map((piece) => reading(piece)) }]));
        expect((await journal.read('lot L-1', 2)).map(({ version }) => version)).toEqual([3, 4, 5]);
        expect((await journal.read('lot L-1', 1, 2)).map(({ version }) => version)).toEqual([2, 3]);
        expect(await journal.read('lot L-1', 5)).toEqual([]);
      });

      it('knows nothing of a stream never written', async () => {
        expect(await journal.read('lot L-9')).toEqual([]);
        expect(await journal.versionOf('lot L-9')).toBe(0);
        expect(await journal.receiptFor('c-9')).toBeNull();
        expect(await journal.heads()).toEqual([]);
      });

      it('follows all streams in the order of arrival, by pages', async () => {
        await journal.append(readingFor('lot L-1', 0));
        await journal.append(readingFor('lot L-2', 0));
        await journal.append(readingFor('lot L-1', 1));
        const first = await journal.follow(0, 2);
        const rest = await journal.follow(first.at(-1)?.position ?? 0, 2);
        expect([...first, ...rest].map(({ stream, version }) => `${stream}/${version}`)).toEqual(['lot L-1/1', 'lot L-2/1', 'lot L-1/2']);
        expect(await journal.follow(rest.at(-1)?.position ?? 0, 2)).toEqual([]);
      });

      it('says where each stream ends, by stream', async () => {
        await journal.append(readingFor('lot L-2', 0));
        await journal.append(readingFor('lot L-1', 0));
        const last = (await journal.append(readingFor('lot L-1', 1))).slips[0];
        const heads = await journal.heads();
        expect(heads.map(({ stream, version }) => [stream, version])).toEqual([['lot L-1', 2], ['lot L-2', 1]]);
        expect(heads[0]?.hash).toBe(last?.hash);
        expect(await journal.versionOf('lot L-1')).toBe(2);
        expect(await journal.headsDigest()).toEqual({ digest: digestOfHeads(heads), streams: 2, position: last?.position });
      });

      it('keeps a body as it was when it arrived, whatever its sender does with it afterwards', async () => {
        const body = { type: 'readingTaken', piece: 1 };
        const adding = journal.append(entryOf('c-1', [{ stream: 'lot L-1', expectedVersion: 0, bodies: [body] }]));
        body.piece = 2;
        expect((await adding).slips[0]?.body).toEqual({ type: 'readingTaken', piece: 1 });
      });

      it('gives the same slip to the writer and to every reader, for any JSON', async () => {
        await fc.assert(fc.asyncProperty(fc.uuid(), fc.dictionary(fc.string({ unit: 'binary' }), fc.jsonValue()), async (id, fields) => {
          const receipt = await journal.append(entryOf(id, [{ stream: id, expectedVersion: 0, bodies: [{ ...fields, type: 'any' }] }]));
          expect(await journal.read(id)).toEqual(receipt.slips);
        }), { seed: 20, numRuns: 60 });
        expect((await journal.verify()).firstBroken).toBeNull();
      });

      it.each([
        ['a time not in UTC', { ...readingFor('lot L-1', 0), at: '2025-03-03T06:30:00+01:00' }],
        ['no client id', { ...readingFor('lot L-1', 0), clientId: '' }],
        ['half a character in the badge', { ...readingFor('lot L-1', 0), by: 'B\ud800' }],
        ['a stream without a name', readingFor('', 0)],
        ['a version below 0', readingFor('lot L-1', -1)],
        ['a body without a type', entryOf('c-1', [{ stream: 'lot L-1', expectedVersion: 0, bodies: [{ type: '' }] }])],
      ])('refuses %s as a mistake of its caller', async (_what, entry) => {
        await expect(journal.append(entry)).rejects.toBeInstanceOf(OutsideDomain);
        expect(await journal.heads()).toEqual([]);
      });
    });

    describe('several streams at once', () => {
      const verdict = (clientId: string, stateVersion: number) => entryOf(clientId, [
        { stream: 'lot L-1', expectedVersion: 0, bodies: [{ type: 'verdictGiven' }, { type: 'lotHeld' }] },
        { stream: 'switching P-1', expectedVersion: stateVersion, bodies: [{ type: 'lotRejected' }] },
      ]);

      it('writes them all', async () => {
        const { slips } = await journal.append(verdict('c-1', 0));
        expect(slips.map(({ stream, version }) => `${stream}/${version}`)).toEqual(['lot L-1/1', 'lot L-1/2', 'switching P-1/1']);
      });

      it('writes none when one has moved', async () => {
        await expect(journal.append(verdict('c-1', 3))).rejects.toMatchObject({ name: 'StaleVersion', stream: 'switching P-1', expected: 3, actual: 0 });
        expect(await journal.follow(0, 10)).toEqual([]);
        expect(await journal.receiptFor('c-1')).toBeNull();
        expect(await journal.heads()).toEqual([]);
      });

      it('writes none when a stream that was only read has moved', async () => {
        await journal.append(readingFor('plan P-1', 0));
        const entry = { ...readingFor('lot L-1', 0), checks: [{ stream: 'plan P-1', expectedVersion: 0 }] };
        await expect(journal.append(entry)).rejects.toMatchObject({ stream: 'plan P-1', expected: 0, actual: 1 });
        expect(await journal.versionOf('lot L-1')).toBe(0);
        await journal.append({ ...entry, checks: [{ stream: 'plan P-1', expectedVersion: 1 }] });
        expect(await journal.versionOf('lot L-1')).toBe(1);
      });
    });

    describe('two writers on one version', () => {
      it('lets exactly one of many win, in one turn', async () => {
        const results = await outcomes(Array.from({ length: 20 }, (_, bench) => journal.append(readingFor('lot L-1', 0, `bench ${bench}`))));
        expect(results.filter((one) => !(one instanceof Error))).toHaveLength(1);
        expect(results.filter((one) => one instanceof StaleVersion && one.expected === 0 && one.actual === 1)).toHaveLength(19);
        expect(await journal.read('lot L-1')).toHaveLength(1);
      });

      it('refuses the second, one after the other, and takes it once it expects what is there', async () => {
        await journal.append(readingFor('lot L-1', 0, 'first'));
        await expect(journal.append(readingFor('lot L-1', 0, 'second'))).rejects.toBeInstanceOf(StaleVersion);
        expect((await journal.append(readingFor('lot L-1', 1, 'second'))).slips[0]?.version).toBe(2);
      });
    });

    describe('a client id entered before', () => {
      it('gives the first receipt and answer again and writes nothing', async () => {
        const entry = { ...readingFor('lot L-1', 0, 'c-1'), answer: { accepted: true, found: 0 } };
        const first = await journal.append(entry);
        await journal.append(readingFor('lot L-1', 1));
        const again = { ...first, repeated: true };
        expect(await journal.append(entry)).toEqual(again);
        expect(await journal.append({ ...readingFor('lot L-5', 7, 'c-1'), answer: 'another' })).toEqual(again);
        expect(await journal.receiptFor('c-1')).toEqual(again);
        expect(await journal.follow(0, 10)).toHaveLength(2);
      });

      it('is written once when sent many times in one turn', async () => {
        const receipts = await Promise.all(Array.from({ length: 5 }, () => journal.append(readingFor('lot L-1', 0, 'c-1'))));
        expect(receipts.map(({ repeated }) => repeated)).toEqual([false, true, true, true, true]);
        expect(new Set(receipts.map(({ slips }) => slips[0]?.hash)).size).toBe(1);
        expect(await journal.read('lot L-1')).toHaveLength(1);
      });

      it('may be used again after a refusal, for nothing was kept', async () => {
        await expect(journal.append(readingFor('lot L-1', 4, 'c-1'))).rejects.toBeInstanceOf(StaleVersion);
        expect((await journal.append(readingFor('lot L-1', 0, 'c-1'))).repeated).toBe(false);
      });

      it('is remembered for an entry that changed nothing', async () => {
        expect(await journal.append(entryOf('c-1', [], { answer: 'nothing to do' }))).toEqual({ clientId: 'c-1', slips: [], answer: 'nothing to do', repeated: false });
        expect(await journal.append(entryOf('c-1', [], { answer: 'now there is' }))).toEqual({ clientId: 'c-1', slips: [], answer: 'nothing to do', repeated: true });
      });
    });

    describe('many entries in one turn', () => {
      it('keeps them all, in the order they came', async () => {
        const receipts = await Promise.all(Array.from({ length: 1_200 }, (_, n) => journal.append(readingFor(`lot L-${n % 7}`, Math.floor(n / 7)))));
        const positions = receipts.map(({ slips }) => slips[0]?.position ?? 0);
        expect(positions).toEqual([...new Set(positions)].toSorted((a, b) => a - b));
        expect(await journal.follow(0, 2_000)).toEqual(receipts.flatMap(({ slips }) => slips));
      });

      it('writes the good ones around a stale one', async () => {
        const results = await outcomes([
          journal.append(readingFor('lot L-1', 0)),
          journal.append(entryOf('stale', ['lot L-2', 'lot L-1'].map((stream) => ({ stream, expectedVersion: 0, bodies: [reading(1)] })))),
          journal.append(readingFor('lot L-1', 1)),
          journal.append(readingFor('lot L-2', 0)),
        ]);
        expect(results.map((one) => one instanceof Error)).toEqual([false, true, false, false]);
        expect((await journal.follow(0, 10)).map(({ stream, version }) => `${stream}/${version}`)).toEqual(['lot L-1/1', 'lot L-1/2', 'lot L-2/1']);
        expect((await journal.verify()).firstBroken).toBeNull();
      });

      it('gives each of a group its own outcome: written, stale, repeated from before, repeated in the group itself', async () => {
        const before = await journal.append(entryOf('c-before', [{ stream: 'lot L-3', expectedVersion: 0, bodies: [reading(1)] }], { answer: 'first' }));
        const results = await outcomes([
          journal.append(readingFor('lot L-1', 0)),
          journal.append(readingFor('lot L-2', 7, 'c-stale')),
          journal.append(entryOf('c-before', [{ stream: 'lot L-1', expectedVersion: 1, bodies: [reading(2)] }])),
          journal.append(readingFor('lot L-1', 1)),
          journal.append(readingFor('lot L-1', 1)),
          journal.append(readingFor('lot L-1', 2)),
        ]);
        const [first, stale, again, second, twice, third] = results;
        expect(stale).toMatchObject({ name: 'StaleVersion', stream: 'lot L-2', expected: 7, actual: 0 });
        expect(again).toEqual({ ...before, repeated: true });
        expect(second).toMatchObject({ repeated: false });
        expect(twice).toEqual({ ...second, repeated: true });
        for (const written of [first, third]) expect(written).toMatchObject({ repeated: false });
        expect(await journal.versionOf('lot L-1')).toBe(3);
        expect(await journal.receiptFor('c-stale')).toBeNull();
        expect(await journal.verify()).toEqual({ slips: 4, streams: 2, firstBroken: null, attachments: 0, brokenAttachment: null });
        expect((await journal.append(readingFor('lot L-1', 3))).slips[0]?.version).toBe(4);
      });
    });

    chainContract(() => ({ place, journal, meddle }));

    describe('a restart in the middle', () => {
      it('reads the same, and goes on where it stood', async () => {
        await Promise.all([0, 1, 2].map((version) => journal.append(readingFor('lot L-1', version))));
        const [slips, heads, receipt] = [await journal.follow(0, 10), await journal.heads(), await journal.receiptFor('lot L-1/2')];
        await meddle(async () => undefined);
        expect(await journal.follow(0, 10)).toEqual(slips);
        expect(await journal.heads()).toEqual(heads);
        expect(await journal.append(readingFor('lot L-1', 1))).toEqual(receipt);
        const next = (await journal.append(readingFor('lot L-1', 3))).slips[0];
        expect(next).toMatchObject({ version: 4, prevHash: heads[0]?.hash });
        expect(next?.position).toBeGreaterThan(slips.at(-1)?.position ?? 0);
      });

      it('keeps what was entered before it was closed, and takes nothing afterwards', async () => {
        const adding = journal.append(readingFor('lot L-1', 0));
        const closed = journal;
        await meddle(async () => undefined);
        expect((await adding).slips).toEqual(await journal.read('lot L-1'));
        for (const asked of [() => closed.append(readingFor('lot L-1', 1)), () => closed.read('lot L-1'), () => closed.verify(), () => closed.receiptFor('c-1')]) {
          await expect(asked()).rejects.toBeInstanceOf(JournalFault);
        }
        await closed.close();
      });
    });
  });
}
