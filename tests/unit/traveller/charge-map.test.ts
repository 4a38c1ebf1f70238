import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellName, cellsOf, isOnMap, sameCell } from '../../../shared/traveller/equipment/charge-map.ts';
import type { ChargeMap } from '../../../shared/traveller/equipment/charge-map.ts';
import { mapFault } from '../../../shared/traveller/equipment/map-fault.ts';
import { lotsNear, nearness } from '../../../shared/traveller/equipment/near.ts';

/** Invented: three levels of 2 × 3 trays, numbered 1 2 3 / 4 5 6. */
const FURNACE: ChargeMap = {
  levels: ['Top', 'Middle', 'Bottom'].map((name) => ({ name, layout: { by: 'grid', rows: 2, columns: 3 } })),
  testPositions: [{ name: 'Top', level: 1, position: 2 }, { name: 'Bottom', level: 3, position: 4 }],
};
/** Invented: two rings of eight. */
const COATER: ChargeMap = { levels: ['Level 1', 'Level 2'].map((name) => ({ name, layout: { by: 'ring', positions: 8 } })), testPositions: [] };
const near = (map: ChargeMap, level: number, position: number, how: string): string[] => cellsOf(map).filter((cell) => nearness(map, { level, position }, cell) === how).map((cell) => cellName(map, cell));

describe('near a position (our own definition)', () => {
  it('in rows and columns: the cell, those touching by side or corner, and the ones straight above and below', () => {
    expect(near(FURNACE, 2, 1, 'same')).toEqual(['Middle 1']);
    expect(near(FURNACE, 2, 1, 'beside')).toEqual(['Middle 2', 'Middle 4', 'Middle 5']);
    expect(near(FURNACE, 2, 5, 'beside')).toEqual(['Middle 1', 'Middle 2', 'Middle 3', 'Middle 4', 'Middle 6']);
    expect([near(FURNACE, 2, 1, 'above'), near(FURNACE, 2, 1, 'below')]).toEqual([['Top 1'], ['Bottom 1']]);
    expect([near(FURNACE, 1, 3, 'above'), near(FURNACE, 3, 3, 'below')]).toEqual([[], []]);
  });

  it('on a ring: the next ones either way, round the end too', () => {
    expect(near(COATER, 1, 1, 'beside')).toEqual(['Level 1/2', 'Level 1/8']);
    expect(near(COATER, 1, 5, 'below')).toEqual(['Level 2/5']);
  });

  it('where levels are laid out differently: what lies closest seen from above', () => {
    const mixed: ChargeMap = { levels: [{ name: 'A', layout: { by: 'grid', rows: 1, columns: 2 } }, { name: 'B', layout: { by: 'grid', rows: 1, columns: 4 } }], testPositions: [] };
    expect(near(mixed, 1, 1, 'below')).toEqual(['B 1', 'B 2']);
    expect(near(mixed, 2, 3, 'above')).toEqual(['A 2']);
  });

  it('names lots once, by their nearest cell, the nearest first', () => {
    const members = [
      { lot: 'far', cells: [{ level: 3, position: 6 }] }, { lot: 'below', cells: [{ level: 2, position: 2 }] }, { lot: 'both', cells: [{ level: 1, position: 1 }, { level: 1, position: 2 }] },
      { lot: 'beside', cells: [{ level: 1, position: 3 }] }, { lot: 'unplaced' },
    ];
    expect(lotsNear(FURNACE, { level: 1, position: 2 }, members)).toEqual([{ lot: 'both', how: 'same' }, { lot: 'beside', how: 'beside' }, { lot: 'below', how: 'below' }]);
  });
});

describe('a map', () => {
  it.each([
    ['sound', FURNACE, null],
    ['without a level', { levels: [], testPositions: [] }, 'noCells'],
    ['with a name twice', { ...FURNACE, levels: [...FURNACE.levels, ...FURNACE.levels.slice(0, 1)] }, 'nameTwice'],
    ['with a test position twice', { ...FURNACE, testPositions: [...FURNACE.testPositions, { name: 'Top', level: 2, position: 1 }] }, 'nameTwice'],
    ['with a test position outside', { ...FURNACE, testPositions: [{ name: 'Wall', level: 1, position: 7 }] }, 'testPositionOutside'],
    ['too large', { levels: [{ name: 'A', layout: { by: 'ring', positions: 2001 } }], testPositions: [] } satisfies ChargeMap, 'tooManyCells'],
  ])('%s', (_, map, wanted) => expect(mapFault(map)?.fault ?? null).toBe(wanted));
});

it('on any map of equal levels being near goes both ways, and no cell is near in two ways', () => {
  fc.configureGlobal({ seed: 20261131 });
  const layout = fc.oneof(fc.record({ by: fc.constant('grid' as const), rows: fc.integer({ min: 1, max: 5 }), columns: fc.integer({ min: 1, max: 5 }) }), fc.record({ by: fc.constant('ring' as const), positions: fc.integer({ min: 1, max: 12 }) }));
  fc.assert(fc.property(layout, fc.integer({ min: 1, max: 4 }), (each, levels) => {
    const map: ChargeMap = { levels: Array.from({ length: levels }, (_, at) => ({ name: `L${at}`, layout: each })), testPositions: [] };
    const opposite = { same: 'same', beside: 'beside', above: 'below', below: 'above' } as const;
    for (const from of cellsOf(map)) {
      expect(isOnMap(map, from)).toBe(true);
      for (const cell of cellsOf(map)) {
        const how = nearness(map, from, cell);
        expect(how === 'same').toBe(sameCell(from, cell));
        expect(nearness(map, cell, from)).toBe(how === null ? null : opposite[how]);
      }
    }
  }), { numRuns: 60 });
});
