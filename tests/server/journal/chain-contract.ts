import { describe, expect, it } from 'vitest';
import type { Journal } from '../../../server/journal/journal.ts';
import { noSlipBefore, slipHash } from '../../../server/journal/slip-hash.ts';
import { entryOf, reading, readingFor } from './entries.ts';
import type { Place } from './place.ts';

/** The journal under test as it stands at the moment, and a way to meddle with it while it is closed. */
interface Here { readonly place: Place; readonly journal: Journal; readonly meddle: (act: () => Promise<void>) => Promise<void> }

/** What every journal must do about its hash chain; part of the journal's contract. */
export function chainContract(here: () => Here): void {
  describe('the chain', () => {
    const fill = async () => {
      for (let version = 0; version < 5; version += 1) {
        await here().journal.append(readingFor('lot L-1', version));
        await here().journal.append(readingFor('lot L-2', version));
      }
    };

    it('runs from slip to slip, and anyone can work the hashes out again', async () => {
      await fill();
      let before = noSlipBefore;
      for (const slip of await here().journal.read('lot L-1')) {
        expect(slip.prevHash).toBe(before);
        expect(slip.hash).toBe(slipHash({ ...slip, bodyText: JSON.stringify(slip.body) }));
        before = slip.hash;
      }
      expect(await here().journal.verify()).toEqual({ slips: 10, streams: 2, firstBroken: null, attachments: 0, brokenAttachment: null });
    });

    it('holds over more slips than one page, while others are being added', async () => {
      const bodies = Array.from({ length: 2_500 }, (_, n) => reading(n));
      await here().journal.append(entryOf('c-1', [{ stream: 'lot L-1', expectedVersion: 0, bodies }]));
      const verifying = here().journal.verify();
      await here().journal.append(readingFor('lot L-2', 0));
      expect(await verifying).toEqual({ slips: 2_501, streams: 2, firstBroken: null, attachments: 0, brokenAttachment: null });
    });

    it.each([1, 3, 5])('names slip %i when its text was changed', async (version) => {
      await fill();
      await here().meddle(() => here().place.replaceBody('lot L-2', version, JSON.stringify(reading(version, 4.7))));
      const position = (await here().journal.read('lot L-2', version - 1, 1))[0]?.position;
      expect((await here().journal.verify()).firstBroken).toMatchObject({ stream: 'lot L-2', version, position });
    });

    it('names the slip after one that was changed together with its hash', async () => {
      await fill();
      await here().meddle(() => here().place.replaceBodyAndHash('lot L-2', 3, JSON.stringify(reading(3, 4.7))));
      expect((await here().journal.verify()).firstBroken).toMatchObject({ stream: 'lot L-2', version: 4 });
    });

    it('names the last slip when it was changed together with its hash', async () => {
      await fill();
      await here().meddle(() => here().place.replaceBodyAndHash('lot L-2', 5, JSON.stringify(reading(3, 4.7))));
      expect((await here().journal.verify()).firstBroken).toMatchObject({ stream: 'lot L-2', version: 5 });
    });

    it.each([1, 3, 5])('names slip %i when it was taken out', async (version) => {
      await fill();
      await here().meddle(() => here().place.removeSlip('lot L-2', version));
      expect((await here().journal.verify()).firstBroken).toMatchObject({ stream: 'lot L-2', version });
    });

    it('gives another digest of the heads after any slip', async () => {
      await fill();
      const before = await here().journal.headsDigest();
      expect(await here().journal.headsDigest()).toEqual(before);
      await here().journal.append(readingFor('lot L-1', 5));
      expect((await here().journal.headsDigest()).digest).not.toBe(before.digest);
    });
  });
}
