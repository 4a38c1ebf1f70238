import { beforeEach, describe, expect, it } from 'vitest';
import { tableLines, writeTableCsv } from '../../../shared/sampling/attributes/index.ts';
import type { Command } from '../../../shared/traveller/index.ts';
import { CREW, littlePlant, releasedBatch } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { byAql, counting, done, found, opened, plansOf, standingAt, workAt } from '../../property/traveller/counting.ts';
import { verdictAt } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant();
  releasedBatch(plant);
});
/** Our own normal single table with one cell changed: letter J at AQL 1.0 accepts 3 (the table here has Ac 2). */
const rows = (tableLines('single', 'normal') ?? []).map((line) => (line.letter === 'J' ? { ...line, cells: line.cells.map((cell, column) => (column === 10 ? [{ ac: 3, re: 4 }] : cell)) } : line));
const CSV = writeTableCsv({ samples: 'single', rows });
const load = (change: Partial<Extract<Command, { type: 'loadTable' }>> = {}): Command => ({ type: 'loadTable', table: 'OWN-2A', name: 'Normal, our copy', severity: 'normal', csv: CSV, reason: 'copied from our own book', ...change });

describe('a plant’s own copy of a table', () => {
  it('is kept as it was read, and loaded by an engineer alone', () => {
    expect(plant.refusalOf(load(), CREW[1])).toBe('notYourRole');
    expect(plant.must(load(), CREW[2])).toEqual([{ type: 'tableLoaded', table: { id: 'OWN-2A', name: 'Normal, our copy', severity: 'normal', samples: 'single', rows }, reason: 'copied from our own book' }]);
    expect(plant.state('table:OWN-2A')).toMatchObject({ kind: 'table', loadedBy: 'Q-401', table: { severity: 'normal' } });
  });

  it('is refused where its structure does not hold, with line and column of what is wrong', () => {
    // The first 3/4 stands in the row of letter A, the second line of the file, at AQL 40: the 20th AQL after two columns.
    const asked = plant.ask(load({ csv: CSV.replace('3/4', '4/3') }));
    expect(asked).toMatchObject({ refusal: { code: 'tableUnsound', table: 'OWN-2A', problems: [{ code: 'reNotAboveAc', line: 2, column: 22 }] } });
    expect(plant.ask(load({ csv: 'not a table' }))).toMatchObject({ refusal: { code: 'tableUnsound', problems: [{ code: 'headUnknown', line: 1 }] } });
    expect(plant.state('table:OWN-2A')).toBeNull();
  });

  it('stands for good under its number, for plans that name it were approved by two', () => {
    plant.must(load());
    expect(plant.ask(load({ name: 'another' }))).toEqual({ refusal: { code: 'alreadyThere', what: 'table', id: 'OWN-2A' } });
  });

  it('counts where a plan names it, for the severity it stands for, and the demand says so', () => {
    plant.must(load());
    counting(plant, byAql({ major: 1 }, { ownTables: { normal: 'OWN-2A' } }));
    opened(plant, 'A1');
    expect(plansOf(workAt(plant, 'A1'))[0]?.plan).toMatchObject({ letter: 'J', ac: 3, re: 4, tableSource: 'OWN-2A' });
    expect(standingAt(plant, 'A1').classes[0]).toMatchObject({ acceptAt: 3 });
    found(plant, 'A1', 'major', 1, 2, 3);
    done(plant, 'A1');
    expect(verdictAt(plant, 'A1', 'own').accepted).toBe(true);
    counting(plant, byAql({ major: 1 }));
    opened(plant, 'A2');
    expect(plansOf(workAt(plant, 'A2'))[0]?.plan).toMatchObject({ ac: 2, re: 3 });
    expect(plansOf(workAt(plant, 'A2'))[0]?.plan).not.toHaveProperty('tableSource');
  });

  it('is where the switching score looks for the next smaller AQL too', () => {
    // Letter J at AQL 0.65 has Ac 1 in the table here and 0 in this copy: a lot with one found at AQL 1.0 scores 3 there and none here.
    const stricter = rows.map((line) => (line.letter === 'J' ? { ...line, cells: line.cells.map((cell, column) => (column === 9 ? [{ ac: 0, re: 1 }] : cell)) } : line));
    plant.must(load({ csv: writeTableCsv({ samples: 'single', rows: stricter }) }));
    const scoreOf = (lot: string, ownTables: { readonly normal?: string }): number | null => {
      counting(plant, byAql({ major: 1 }, { ownTables }));
      opened(plant, lot);
      found(plant, lot, 'major', 1);
      done(plant, lot);
      const state = plant.state('switching:CNMG-D1/own/count/major');
      return state?.kind === 'switching' ? state.state.score : null;
    };
    expect([scoreOf('A1', {}), scoreOf('A2', { normal: 'OWN-2A' })]).toEqual([3, 0]);
  });

  it('cannot be named before it is loaded, nor for what it does not stand for', () => {
    expect(() => counting(plant, byAql({ major: 1 }, { ownTables: { normal: 'OWN-2A' } }))).toThrow('notFound');
    plant.must(load());
    expect(() => counting(plant, byAql({ major: 1 }, { ownTables: { tightened: 'OWN-2A' } }))).toThrow('ownTable');
    expect(() => counting(plant, byAql({ major: 1 }, { samples: 'double', ownTables: { normal: 'OWN-2A' } }))).toThrow('ownTable');
  });

  it('of double plans may stand in for the reduced multiple ones, of which there is no table here', () => {
    const double = writeTableCsv({ samples: 'double', rows: tableLines('double', 'reduced') ?? [] });
    plant.must(load({ table: 'OWN-3C', severity: 'reduced', csv: double }));
    expect(counting(plant, byAql({ major: 1 }, { samples: 'multiple', ownTables: { reduced: 'OWN-3C' } }))).toBeGreaterThan(0);
  });
});
