import { expect, it } from 'vitest';
import { decisionNotes } from '../../../server/http/decision-notes.ts';
import { littlePlant, openLot, releasedBatch } from '../../property/traveller/little-plant.ts';
import { length, routeWith } from '../../property/traveller/on-the-way.ts';
import type { Measured } from '../../../shared/traveller/index.ts';

function notesOf(change: Partial<Measured>, values: readonly number[], gauge: string | null): readonly string[] {
  const plant = littlePlant(routeWith(length({ gaugeKind: gauge === null ? null : 'micrometer', ...change })));
  releasedBatch(plant);
  openLot(plant, 'A1', 500);
  plant.must({ type: 'openGate', subject: 'lot:A1', gate: 'own' });
  values.forEach((value, at) => plant.must({ type: 'takeReading', subject: 'lot:A1', gate: 'own', characteristic: 'length', ordinal: at + 1, value, ...(gauge === null ? {} : { gauge }) }));
  return decisionNotes(plant.lot('A1'));
}

// U of MIC-11 is 0.003 mm; 10 … 11 mm, three readings.
it('names the rule, the guard band, the limits used, U with its k, and the risk', () => {
  const [note, ...more] = notesOf({ decisionRule: 'guardedAcceptance', guardFactor: 0.825 }, [10.4, 10.5, 10.6], 'MIC-11');
  expect(more).toEqual([]);
  expect(note).toContain('guarded acceptance (limits drawn in by U), guard band 0.825 U; judged within 10.0025 … 10.9975 mm, U = 0.003 mm (k = 2). ');
  expect(note).toMatch(/For pieces like these, each measured once, .* of all are wrongly accepted and .* wrongly rejected \(JCGM 106\)\.$/);
});

it('moves the limits out for guarded rejection, and not at all for simple acceptance', () => {
  expect(notesOf({ decisionRule: 'guardedRejection' }, [10.4, 10.5, 10.6], 'MIC-11')[0]).toContain('guarded rejection (limits moved out by U); judged within 9.9970 … 11.0030 mm');
  expect(notesOf({}, [10.4, 10.5, 10.6], 'MIC-11')[0]).toContain('simple acceptance; judged within 10.000 … 11.000 mm');
});

it('says that no risk can be told where the gauge explains all the scatter, and nothing where no uncertainty is stated', () => {
  expect(notesOf({}, [10.5, 10.5, 10.501], 'MIC-11')[0]).toContain('The risk of a wrong decision cannot be told from these readings.');
  expect(notesOf({}, [10.4, 10.5, 10.6], null)).toEqual([]);
});
