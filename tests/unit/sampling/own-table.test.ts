import { describe, expect, it } from 'vitest';
import { attributesPlan, readTableCsv, tableLines, tableNotes, tighterWouldAccept, writeTableCsv } from '../../../shared/sampling/attributes/index.ts';
import type { OwnTable, Samples, Severity, TableProblem } from '../../../shared/sampling/attributes/index.ts';

const about = { id: 'T-7', name: 'Our copy', severity: 'normal' } as const;
const textOf = (samples: Samples, severity: Severity = 'normal'): string => writeTableCsv({ samples, rows: tableLines(samples, severity) ?? [] });
/** The text with one cell changed; line and column count from 1, as people count. */
const withCell = (text: string, line: number, column: number, cell: string): string =>
  text.split('\n').map((each, at) => (at === line - 1 ? each.split(',').map((old, index) => (index === column - 1 ? cell : old)).join(',') : each)).join('\n');
const problemsIn = (text: string, severity: Severity = 'normal'): readonly TableProblem[] => {
  const read = readTableCsv(text, { ...about, severity });
  return 'problems' in read ? read.problems : [];
};
const tableFrom = (text: string, severity: Severity = 'normal'): OwnTable => {
  const read = readTableCsv(text, { ...about, severity });
  if (!('table' in read)) throw new Error(JSON.stringify(read.problems));
  return read.table;
};

describe('a copy of a table with something wrong names what and where', () => {
  const single = textOf('single');
  const double = textOf('double');
  const multiple = textOf('multiple');
  it.each<{ wrong: string; text: string; problem: Partial<TableProblem> }>([
    { wrong: 'nothing in it', text: ' \n ', problem: { code: 'empty', line: 1 } },
    { wrong: 'far too much text', text: 'x'.repeat(200_001), problem: { code: 'tooLong' } },
    { wrong: 'other heads', text: 'letter,n\nA,2\n', problem: { code: 'headUnknown', line: 1, column: 1 } },
    { wrong: 'an AQL between the columns', text: withCell(single, 1, 12, '0.7'), problem: { code: 'aqlHead', line: 1, column: 12, head: '0.7', found: '0.7', expected: '0.65' } },
    { wrong: 'a letter out of order', text: withCell(single, 4, 1, 'D'), problem: { code: 'letterOrder', line: 4, column: 1, found: 'D', expected: 'C' } },
    { wrong: 'a row too short', text: single.replace(/^(E,.*),up$/m, '$1'), problem: { code: 'columnCount', line: 6, column: null, found: '27', expected: '28' } },
    { wrong: 'rows missing', text: single.split('\n').slice(0, 10).join('\n'), problem: { code: 'letterMissing', line: 11, expected: 'K' } },
    { wrong: 'half a piece', text: withCell(single, 5, 2, '8.5'), problem: { code: 'sizeNotWhole', line: 5, column: 2, head: 'sample_size', found: '8.5' } },
    { wrong: 'a sample of none', text: withCell(single, 2, 2, '0'), problem: { code: 'sizeNotWhole', line: 2 } },
    { wrong: 'a smaller sample further down', text: withCell(single, 6, 2, '7'), problem: { code: 'sizeFalls', line: 6, column: 2, expected: '8 …' } },
    { wrong: 'one of two sizes', text: withCell(double, 4, 3, ''), problem: { code: 'sizeNotWhole', line: 4, column: 3, head: 'n2' } },
    { wrong: 'a plan without a size', text: withCell(single, 2, 2, ''), problem: { code: 'sizeMissing', line: 2, column: 17, head: '6.5' } },
    { wrong: 'a date that a spreadsheet made of 1/2', text: withCell(single, 10, 12, '1. Feb'), problem: { code: 'cellUnreadable', line: 10, column: 12, head: '0.65', found: '1. Feb' } },
    { wrong: 'a single pair in a double table', text: withCell(double, 10, 13, '1/2'), problem: { code: 'pairCount', line: 10, column: 13 } },
    { wrong: 'Re not above Ac', text: withCell(single, 10, 12, '2/2'), problem: { code: 'reNotAboveAc', line: 10 } },
    { wrong: 'numbers that fall', text: withCell(double, 10, 13, '3/5;2/3'), problem: { code: 'pairsFall', line: 10 } },
    { wrong: 'an Re that falls', text: withCell(double, 10, 13, '0/5;2/3'), problem: { code: 'pairsFall', line: 10 } },
    { wrong: 'a last sample that cannot accept', text: withCell(double, 10, 13, '0/2;#/3'), problem: { code: 'lastCannotAccept', line: 10 } },
    { wrong: 'a gap on normal', text: withCell(single, 10, 12, '1/3'), problem: { code: 'gapOutsideReduced', line: 10 } },
    { wrong: 'a sign that has no meaning here', text: withCell(double, 10, 13, 'double'), problem: { code: 'signNotAllowed', line: 10 } },
    { wrong: 'nothing where a lot can start', text: withCell(multiple, 10, 12, '-'), problem: { code: 'cellNotReachable', line: 10 } },
    { wrong: 'an arrow off the table', text: withCell(single, 17, 28, 'down'), problem: { code: 'arrowLeadsNowhere', line: 17, column: 28, head: '1000' } },
    { wrong: 'an arrow that turns round', text: withCell(single, 2, 12, 'up'), problem: { code: 'arrowLeadsNowhere', line: 2, column: 12 } },
  ])('$wrong: $problem.code', ({ text, problem }) => {
    expect(problemsIn(text)[0]).toMatchObject(problem);
    expect(problemsIn(text).length).toBeLessThanOrEqual(50);
  });
});

describe('a copy of a table is read', () => {
  it('with semicolons and decimal commas, quotes, small letters and a byte order mark, as a spreadsheet may save it', () => {
    const lines = textOf('double').trimEnd().split('\n').map((line, at) => line.split(',').map((cell) => (at === 0 && /\d/.test(cell) ? cell.replace('.', ',') : cell.includes(';') ? `"${cell}"` : cell.toLowerCase())).join(';'));
    expect(tableFrom(`\uFEFF${lines.join('\r\n')}\r\n\r\n`).rows).toEqual(tableLines('double', 'normal'));
  });

  it('with five samples, as ISO 2859-1:1999 has its multiple plans', () => {
    const five = textOf('multiple').replace('n_each_of_7', 'n_each_of_5').replace(/(?:[#\d]+\/\d+;){6}\d+\/\d+/g, '#/4;1/5;2/6;4/7;6/7');
    const table = tableFrom(five);
    expect(table.rows.find(({ letter }) => letter === 'J')?.sizes).toEqual([20, 20, 20, 20, 20]);
    const plan = attributesPlan({ lotSize: 1000, level: 'II', aqlPercent: 2.5, severity: 'normal', samples: 'multiple', tables: [table] });
    expect(plan).toMatchObject({ samples: 'multiple', sampleSize: 100, ac: 6, re: 7, tableSource: 'T-7', table: 'IV-A' });
    expect(tableNotes(plan)).toEqual(['ownTable']);
  });
});

it('a plant\'s own reduced multiple table ends the lack of one', () => {
  const own = { ...tableFrom(textOf('multiple', 'tightened')), severity: 'reduced' as const };
  const request = { lotSize: 1000, level: 'II', aqlPercent: 1, severity: 'reduced', samples: 'multiple' } as const;
  expect(attributesPlan(request)).toMatchObject({ samples: 'double', instead: 'noMultipleReduced', table: 'III-C' });
  const plan = attributesPlan({ ...request, tables: [own] });
  expect(plan).toMatchObject({ samples: 'multiple', table: 'IV-C', tableSource: 'T-7' });
  expect(plan).not.toHaveProperty('instead');
});

it('the tighter plan for the switching score is read from the copy in force', () => {
  const own = tableFrom(withCell(textOf('single'), 10, 13, '1/2')); // J at AQL 1.0: Ac 1 where the standard has 2
  const plan = attributesPlan({ lotSize: 1000, level: 'II', aqlPercent: 1.5, severity: 'normal', tables: [own] });
  expect([tighterWouldAccept(plan, 2), tighterWouldAccept(plan, 2, [own]), tighterWouldAccept(plan, 1, [own])]).toEqual([true, false, true]);
});

it('a table that was never checked cannot lead a look-up in circles', () => {
  const own = { ...tableFrom(textOf('single')), rows: (tableLines('single', 'normal') ?? []).map((row, at) => ({ ...row, cells: row.cells.map(() => (at === 0 ? 'down' as const : 'up' as const)) })) };
  expect(() => attributesPlan({ lotSize: 1000, level: 'II', aqlPercent: 1, severity: 'normal', tables: [own] })).toThrow(/arrows end at a plan/);
});
