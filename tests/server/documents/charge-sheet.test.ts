import { expect, it } from 'vitest';
import { Floor } from '../../../demo-data/floor.ts';
import { chanceFrom } from '../../../demo-data/chance.ts';
import { attachLog, failedCharge } from '../../../demo-data/charge-story.ts';
import { openThePlant } from '../../../demo-data/open-the-plant.ts';
import { PEOPLE } from '../../../demo-data/people.ts';
import { workGate } from '../../../demo-data/work-gate.ts';
import { travellerSheetPdf } from '../../../server/documents/traveller-sheet/index.ts';
import { printedCharge } from '../../../server/http/printed-charge.ts';

/** The demo story's charge that failed at Top, with a second log that shows a dip. */
function failed() {
  const floor = new Floor('2026-11-01T06:00:00Z');
  openThePlant(floor, '2026-11-20');
  const chance = chanceFrom('sheet');
  const by = (badge: string) => PEOPLE.find((each) => each.badge === badge) ?? PEOPLE[0] as (typeof PEOPLE)[number];
  floor.give(by('L-201'), 'Lab', { type: 'openBatch', batch: 'P26-901', grade: 'DEMO-F8', barrels: 12, kgPerBarrel: 100, rawLots: [] });
  workGate(floor, chance, by('L-201'), 'batch:P26-901', 'powder-lab');
  floor.give(by('L-201'), 'Lab', { type: 'releaseBatch', batch: 'P26-901' });
  for (const lot of ['A1', 'A2', 'A3']) {
    floor.give(by('I-301'), 'Press 2', { type: 'openLot', lot, product: 'CNMG-D1', batch: 'P26-901', quantity: 300, trayCapacity: 60 });
    workGate(floor, chance, by('I-301'), `lot:${lot}`, 'pressing');
  }
  failedCharge({ floor, chance }, by('L-202'), 'F26-901', ['A1', 'A2', 'A3']);
  attachLog(floor, by('L-202'), 'F26-901', true);
  return floor.charge('furnace:F26-901');
}

it('a charge’s sheet shows the map with its lots, what failed and what lay near, and the log with what lies outside', async () => {
  const charge = printedCharge(failed());
  expect(charge.map?.lots).toHaveLength(3);
  expect(charge.map?.levels.flatMap(({ cells }) => cells.filter((cell) => cell.failed))).toHaveLength(1);
  expect(charge.map?.levels.flatMap(({ cells }) => cells.filter((cell) => cell.near)).length).toBeGreaterThan(0);
  expect(charge.failed).toEqual([expect.stringMatching(/^The test piece at Top failed \(Hardness\)\. Near it: A1 \(in the same cell\)/)]);
  expect(charge.log?.lines).toEqual(expect.arrayContaining([expect.stringMatching(/^1 {2}Sintering, minute 615 to 622: down to 1,39\d/), expect.stringMatching(/^File SHA-256 [0-9a-f]{64}$/)]));
  expect(charge.log?.drawing.marks.map(({ number, kind, field }) => [number, kind, field])).toEqual([[1, 'tooCold', 'temperature'], [2, 'soakShort', 'temperature']]);
  const about = { plant: 'Invented plant', number: 'F26-901', subject: 'Demo fine 8', printedAt: '2026-11-20T06:00:00.000Z', demo: true, language: 'en' };
  const [with_, without] = [await travellerSheetPdf([], about, charge), await travellerSheetPdf([], about)];
  expect(with_.length).toBeGreaterThan(without.length + 3000);
  expect((await travellerSheetPdf([], about, charge)).equals(with_)).toBe(true);
});
