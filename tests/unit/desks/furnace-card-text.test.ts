import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { EQUIPMENT, PROGRAMMES } from '../../../demo-data/charge-records.ts';
import { EMPTY_TEXTS, equipmentOf, equipmentTexts, programmeOf, programmeTexts, readLevels, readSegments, readTestPositions } from '../../../kiosk/plans/furnace-card-text.ts';

// The desk reads and writes figures in the page's language.
beforeAll(() => void vi.stubGlobal('document', { documentElement: { lang: 'en' } }));
afterAll(() => void vi.unstubAllGlobals());

describe('maps and programmes as an engineer types them', () => {
  it('come back as they were, record for record', () => {
    for (const card of EQUIPMENT) expect(equipmentOf(equipmentTexts(card))).toEqual(card);
    for (const card of PROGRAMMES) expect(programmeOf(programmeTexts(card))).toEqual(card);
  });

  it('levels in rows and columns or as a ring', () => {
    expect(readLevels('Top: 2 x 3\n\n Level 1 : ring of 8 ')).toEqual({ items: [{ name: 'Top', layout: { by: 'grid', rows: 2, columns: 3 } }, { name: 'Level 1', layout: { by: 'ring', positions: 8 } }] });
  });

  it('test positions by the name of their cell', () => {
    expect(readTestPositions('Door: Level 1/7', [{ name: 'Level 1', layout: { by: 'ring', positions: 8 } }])).toEqual({ items: [{ name: 'Door', level: 1, position: 7 }] });
  });

  it.each([
    ['a level without a size', () => readLevels('Top'), 'Top'], ['no rows', () => readLevels('Top: 0 x 3'), 'Top: 0 x 3'],
    ['a cell the map has not', () => readTestPositions('Door: Top 9', [{ name: 'Top', layout: { by: 'grid', rows: 2, columns: 3 } }]), 'Door: Top 9'],
    ['a soak without its minutes', () => readSegments('soak; Dewax; 440 to 460'), 'soak; Dewax; 440 to 460'], ['a ramp with a pressure', () => readSegments('heat; Up; 440; pressure 1 to 2 for 3'), 'heat; Up; 440; pressure 1 to 2 for 3'],
    ['a word nobody knows', () => readSegments('heat; Up; 440; fastest 3'), 'heat; Up; 440; fastest 3'], ['a limit twice', () => readSegments('heat; Up; 440; most 3; most 4'), 'heat; Up; 440; most 3; most 4'],
  ])('%s is named by its line', (_, read, wrong) => expect(read()).toEqual({ wrong }));

  it('say which fields are empty', () => {
    expect(equipmentOf(EMPTY_TEXTS)).toEqual({ wrong: { id: '', name: '', kind: '', levels: '' } });
    expect(programmeOf({ ...EMPTY_TEXTS, id: 'P-1', name: 'P', segments: 'heat; Up; 440', rateOverMin: '0' })).toEqual({ wrong: { rateOverMin: '0', largestGapMin: '' } });
  });
});
