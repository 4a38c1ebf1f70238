import type { TableProblem, TableProblemCode } from '../sampling/attributes/table-problem.ts';

/** What the page of master tables says: ours with how sure they are, and the plant's own copies. */
export const planTablesWords = {
  title: 'Master tables',
  lead: 'Plans by AQL are read from these nine tables. Where one was written from memory, compare it with your copy of the standard, or load your own copy; a rule then names it.',
  held: {
    caption: 'Tables held here', columns: { table: 'Table', what: 'What it is', standing: 'How sure', note: 'What was seen', file: 'As a file' },
    samples: { single: 'single sampling', double: 'double sampling', multiple: 'multiple sampling' }, what: (samples: string, severity: string) => `${samples}, ${severity}`, download: 'CSV', downloadOf: (table: string) => `Table ${table} as CSV`,
    standings: { seen: 'seen', inPart: 'seen in part', memory: 'from memory', missing: 'missing' },
    notes: {
      'II-A': 'Rows and AQL 0.65 to 15 seen in reproductions; the rest from memory, by the diagonal rule.', 'II-B': 'Letters A to L, AQL 0.65 to 15 seen in a reproduction; the rest from memory. At AQL 150 and above, Ac 27 and 41 are unconfirmed.',
      'II-C': 'From memory, supported by computation. Letters A and B at high AQLs are unconfirmed. Re leaves a gap as in MIL-STD-105E; ISO 2859-1 Table 2-C has none.', 'III-A': 'From memory; each pair supported by computation against the single plan beside it.', 'III-B': 'From memory; each pair supported by computation against the single plan beside it.',
      'III-C': 'From memory; supported by computation. That letters A, B and C say “single” is unconfirmed.', 'IV-A': 'Plans beside the single Ac 5 to 21 seen in a public regulation; the rest from memory.', 'IV-B': 'The plan beside the single Ac 5 seen in a public regulation; the rest from memory.',
      'IV-C': 'Could not be confirmed and is not here: reduced multiple inspection uses the double plan and says so.',
    } satisfies Record<'II-A' | 'II-B' | 'II-C' | 'III-A' | 'III-B' | 'III-C' | 'IV-A' | 'IV-B' | 'IV-C', string>,
  },
  own: { caption: 'Your own copies', empty: 'No copy has been loaded. Plans use the tables held here.', columns: { id: 'Number', name: 'Name', what: 'Stands for', loaded: 'Loaded', why: 'Why', plans: 'Named by', file: 'As a file' }, loaded: (by: string, at: string) => `${by}, ${at}`, noPlan: 'no plan', by: (plan: string, version: string) => `${plan}, version ${version}` },
  load: {
    title: 'Load your own copy', lead: 'Start from ours: save it as CSV, correct what differs from your copy of the standard, and load it here. Its structure is checked; that its numbers are the standard’s, you answer for.',
    id: 'Number', idHint: '2 to 16 of A–Z, 0–9 and dash. It stands for this table for good; a corrected copy takes a new one.', name: 'Name', nameHint: 'Standard and edition it was copied from.', severity: 'Stands for inspection on', file: 'The file', fileHint: 'CSV with comma, semicolon or tab.', paste: 'Or paste the table here', why: 'Why it is loaded', whyMissing: 'Say why.',
    check: 'Check it', load: 'Load this table', missing: 'This must be filled in.', wrongId: '2 to 16 of A–Z, 0–9 and dash, first a letter or digit.',
    faults: (count: string) => (count === '1' ? 'One thing is wrong with this table.' : `${count} things are wrong with this table.`), kept: 'Nothing was loaded. Your text stays above.', next: 'Correct the text or the file, and check it again.', where: 'Where it is wrong',
    sound: (what: string, rows: string) => `The structure is sound: ${what}, ${rows} code letters.`, soundNext: 'Compare it with your copy once more, then load it.', loaded: (name: string) => `${name} is loaded.`, loadedKept: 'It is kept as a slip, with your name and reason.', loadedNext: 'Name it in the sampling rule of a plan; nothing uses it before.',
    columns: { line: 'Line', column: 'Column', found: 'Stands there', problem: 'What is wrong' }, wholeLine: 'whole line', mayNot: 'Only quality engineers load tables.',
  },
  problems: {
    empty: () => 'There is nothing in it.', tooLong: ({ expected }) => `It is longer than any table: at most ${expected ?? ''} characters.`, headUnknown: () => 'The first columns must be code_letter and sample_size, or n1 and n2, or n_each_of_3 … n_each_of_7.',
    aqlHead: ({ expected }) => `The 26 AQLs must follow in order${expected === null ? '' : `; here ${expected}`}.`, columnCount: ({ expected }) => `The line has another number of columns than the heads${expected === null ? '' : `: ${expected}`}.`,
    letterOrder: ({ expected }) => `Code letters follow one another${expected === null ? '' : `; here ${expected}`}.`, letterMissing: ({ expected }) => `The table ends too early${expected === null ? '' : `: ${expected} is missing`}.`, sizeNotWhole: () => 'A sample size is a whole number.',
    sizeFalls: () => 'A sample is smaller than in the row above.', sizeMissing: () => 'The row holds a plan and says no sample size.', cellUnreadable: () => 'This is no plan (Ac/Re), no arrow (up, down) and no sign.', pairCount: ({ expected }) => `Another number of Ac/Re pairs than samples${expected === null ? '' : `: ${expected}`}.`,
    reNotAboveAc: () => 'Re must lie above Ac.', pairsFall: () => 'Ac and Re are cumulative: neither falls from one sample to the next.', lastCannotAccept: () => 'The last sample must be able to accept.', gapOutsideReduced: () => 'Only reduced plans leave a gap between the last Ac and Re.',
    signNotAllowed: () => 'This table cannot send to another one so.', cellNotReachable: () => 'A lot can start from this row, so the cell must lead somewhere.', arrowLeadsNowhere: () => 'This arrow ends at no plan of its column.',
  } satisfies Record<TableProblemCode, (problem: TableProblem) => string>,
};
export type PlanTablesWords = typeof planTablesWords;
