/** What the plans desk says about furnaces and coating plants with their maps, and about furnace programmes. */
export const furnaceRecordWords = {
  equipment: 'Furnaces and coating plants', programmes: 'Furnace programmes', emptyEquipment: 'No furnace or coating plant is on record: charges name their places in words.', emptyProgrammes: 'No furnace programme is on record: no log can be checked.',
  heads: { equipment: { id: 'Equipment', name: 'Name', kind: 'Kind', levels: 'Levels from the top', testPositions: 'Test positions' }, programme: { id: 'Programme', name: 'Name', segments: 'Segments and limits' } },
  kinds: { furnace: 'Furnace', coating: 'Coating plant' },
  defineNew: { equipment: 'Put a furnace or coating plant on record', programme: 'Put a furnace programme on record' },
  title: { equipment: 'A furnace or coating plant', programme: 'A furnace programme' }, change: (id: string) => `Change ${id}`,
  note: 'Charges keep the map they were opened on, and logs the limits they were held against.',
  fields: { id: 'Number', name: 'Name', kind: 'Kind', levels: 'Levels from the top down', testPositions: 'Test positions', rateOverMin: 'A rate is taken over', largestGapMin: 'Longest time without a row', segments: 'Segments in their order' },
  hints: {
    id: '2 to 16 of A–Z, 0–9 and dash; it stays for good. Charges name a programme by it.', levels: 'One a line: Top: 2 x 3 (rows by columns), or Level 1: ring 8. Positions are counted row by row from the top left, on a ring clockwise from the top, seen from above with the door at the bottom.',
    testPositions: 'One a line, the name that plans ask for and its cell: Door: Top 3, or Edge: Level 1/5 where the name of the level ends in a figure',
    segments: 'One a line: heat; Heating; 1402; most 8 (°C, °C/min) · soak; Sintering; 1402 to 1418; least 57; most 66; pressure 57000 to 63000 for 30 (°C, min, mbar) · cool; Cooling; 200; most 15',
  },
  unit: 'min', wrongLine: (line: string) => `This line cannot be read: ${line}`, missing: 'This must be filled in.', number: 'A number above 0.', save: 'Save it', saved: (id: string) => `${id} is saved.`, preview: 'As it will be drawn',
};
