import type { EquipmentCard, MapLevel, ProgrammeCard } from '../shared/traveller/index.ts';

/** Furnace, coating plant and programme of the invented plant. Layouts, limits and minutes are invented; a run of about 13 h, a soak a little above 1400 °C and a stage of 60 bar argon: common practice, no source. */
const TRAYS: MapLevel['layout'] = { by: 'grid', rows: 2, columns: 3 };
const TURNTABLE: MapLevel['layout'] = { by: 'ring', positions: 8 };

export const EQUIPMENT: readonly EquipmentCard[] = [
  {
    id: 'FURNACE-1', kind: 'furnace', name: 'Furnace 1', levels: ['Top', 'Middle', 'Bottom'].map((name) => ({ name, layout: TRAYS })),
    testPositions: [{ name: 'Top', level: 1, position: 2 }, { name: 'Middle', level: 2, position: 5 }, { name: 'Bottom', level: 3, position: 2 }],
  },
  {
    id: 'COATER-2', kind: 'coating', name: 'Coater 2', levels: Array.from({ length: 8 }, (_, at) => ({ name: `Level ${at + 1}`, layout: TURNTABLE })),
    testPositions: [{ name: 'Level 1', level: 1, position: 1 }, { name: 'Level 4', level: 4, position: 5 }, { name: 'Level 8', level: 8, position: 1 }],
  },
];

export const PROGRAMMES: readonly ProgrammeCard[] = [{
  id: 'SINTER-07', name: 'Dewax, sinter 1410 °C, 60 bar', rateOverMin: 10, largestGapMin: 5,
  segments: [
    { kind: 'heat', name: 'Dewax heating', toC: 440, leastRateCPerMin: null, mostRateCPerMin: 1.5 },
    { kind: 'soak', name: 'Dewax', lowerC: 440, upperC: 460, leastMin: 30, mostMin: null, pressure: null },
    { kind: 'heat', name: 'Heating', toC: 1402, leastRateCPerMin: null, mostRateCPerMin: 8 },
    { kind: 'soak', name: 'Sintering', lowerC: 1402, upperC: 1418, leastMin: 57, mostMin: 66, pressure: { lowerMbar: 57_000, upperMbar: 63_000, leastMin: 30 } },
    { kind: 'cool', name: 'Cooling', toC: 200, leastRateCPerMin: null, mostRateCPerMin: 15 },
  ],
}];
