import { expect, it } from 'vitest';
import { csvOf } from '../../../kiosk/desk/save-csv.ts';
import { gaugeStanding } from '../../../kiosk/gauges/gauge-standing.ts';
import { whatStops } from '../../../kiosk/release/what-stops.ts';
import { makeHistory } from '../../../demo-data/history.ts';
import { evolve, type AnyState, type Lot } from '../../../shared/traveller/index.ts';

it.each([
  { rows: [['a', 'b']], csv: 'a,b\r\n', source: 'RFC 4180 2.1' },
  { rows: [['a,b', 'say "no"', 'two\nlines']], csv: '"a,b","say ""no""","two\nlines"\r\n', source: 'RFC 4180 2.6, 2.7' },
  { rows: [['=1+1', '-5', '-x']], csv: "'=1+1,-5,'-x\r\n", source: 'common practice, no source: a spreadsheet runs a field that begins so' },
])('writes $csv ($source)', ({ rows, csv }) => {
  expect(csvOf(rows)).toBe(csv);
});

it.each([
  { due: '2026-11-24', withdrawn: null, standing: 'overdue' }, { due: '2026-11-25', withdrawn: null, standing: 'dueSoon' },
  { due: '2026-12-25', withdrawn: null, standing: 'dueSoon' }, { due: '2026-12-26', withdrawn: null, standing: 'fit' }, { due: '2027-01-01', withdrawn: 'dropped', standing: 'withdrawn' }, { due: '2027-01-01', withdrawn: null, standing: 'outOfTolerance' },
])('a gauge due $due stands as $standing on 2026-11-25, for its last day still counts', ({ due, withdrawn, standing }) => {
  expect(gaugeStanding({ calibrationDue: due, withdrawn, outOfTolerance: standing === 'outOfTolerance' ? 'MIC-11-R1' : null }, '2026-11-25')).toBe(standing);
});

it('says of every lot of the demo plant what the rules would refuse at its release, and of no other', () => {
  const states = new Map<string, AnyState>();
  for (const { at, by, bench, changes } of makeHistory({ seed: 'desks', endIso: '2026-11-25T12:00:00.000Z' })) {
    for (const { stream, bodies } of changes) for (const body of bodies) {
      const before = states.get(stream) ?? null;
      states.set(stream, evolve(before, { stream, version: (before?.version ?? 0) + 1, at, by, bench, body }));
    }
  }
  const lots = [...states.values()].filter((state): state is Lot => state.kind === 'lot');
  const stopped = lots.filter((lot) => whatStops({ lot, batch: null, charges: [], names: {} }).length > 0);
  const unfit = lots.filter((lot) => lot.ended !== null || lot.holds.some(({ lifted }) => lifted === null) || lot.gates.some(({ status }) => status !== 'accepted' && status !== 'conceded'));
  expect(stopped.map(({ id }) => id)).toEqual(unfit.map(({ id }) => id));
  expect(unfit.length).toBeGreaterThan(3);
});
