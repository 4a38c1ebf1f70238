const records = (count: number, written: string): string => (count === 1 ? 'one record' : `${written} records`);

/** What the plans desk says about records files. */
export const recordsFileWords = {
  title: 'Records as a file',
  lead: 'Plans in force, grades, coatings, products, gauges in use, furnaces and coating plants with their maps, and furnace programmes, as one JSON file: a template for another plant, or a copy to change and load again.',
  save: 'Save these records as a file', load: 'Load records from a file', back: 'The catalogue',
  fileName: (day: string) => `records-${day}.json`,
  choose: 'Records file', chooseHint: 'A JSON file as this desk saves it. Nothing is written before you press the key above the table.',
  mayNot: 'Only quality engineers load records.',
  faults: {
    notJson: () => 'The file is not JSON.',
    otherForm: () => 'This is no records file: its form is not “gatehand-records-1”.',
    missingList: (list: string) => `The file has no list “${list}”. An empty one is written [].`,
    unknownList: (list: string) => `The file holds “${list}”, which no records file has.`,
    nameless: (list: string, place: string) => `Record ${place} of the list “${list}” has no id or no name.`,
  },
  faultKept: 'Nothing was written.', faultNext: 'Correct the file, or choose another.',
  caption: (file: string) => `What ${file} would do here`, empty: 'The file holds no record.',
  columns: { kind: 'Record', id: 'Number', name: 'Name', standing: 'What it would do, or did' },
  standings: { new: 'New', newVersion: 'New version', same: 'Same as here, left out', barred: 'Not allowed', loaded: 'Loaded', refused: 'Refused' },
  barred: {
    twice: () => 'It stands in the file before already.',
    gaugeIsHere: () => 'A gauge of this number is registered. Enter its calibration at Gauges, or give this one another number.',
    lacks: (what: string, id: string) => `It names the ${what} ${id}, which is neither here nor in the file.`,
  },
  loadThem: (count: number, written: string) => `Load ${records(count, written)}`, nothingToLoad: 'There is nothing in this file to load.',
  progress: 'Loading', progressText: (done: string, of: string) => `${done} of ${of}`, stop: 'Stop after this one',
  loaded: (count: number, written: string) => `Loaded: ${records(count, written)}.`,
  refusedCount: (count: number, written: string) => `Refused: ${records(count, written)}; the table says why. Correct the file and load it again: what is here already is left out.`,
  signNext: 'Drafted plans come into force when two engineers have approved them.', toPlans: 'To the plans',
  stopped: 'Loading has stopped. What is not loaded yet still stands in the table; press the key again to go on.',
  why: (file: string) => `Loaded from the file ${file}`,
};
export type RecordsFileWords = typeof recordsFileWords;
