import { AQLS } from './aqls.ts';
import type { CodeLetter } from './code-letter.ts';
import { csvLines } from './csv-lines.ts';
import type { CsvLine } from './csv-lines.ts';
import type { Severity } from './master-table.ts';
import { readTableCell } from './read-table-cell.ts';
import type { OwnTable, Samples } from './sampling-tables.ts';
import type { TableCell, TableLine } from './staged-rows.ts';
import type { TableProblem, TableProblemCode } from './table-problem.ts';

/** A table read, or everything that is wrong with it (at most 50 things). */
export type TableReading = { readonly table: OwnTable } | { readonly problems: readonly TableProblem[] };

const LETTERS: readonly CodeLetter[] = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H', 'J', 'K', 'L', 'M', 'N', 'P', 'Q', 'R', 'S'];
const LETTERS_A_LOT_CAN_START_FROM = 16;
const LONGEST_TEXT = 200_000;
const MOST_PROBLEMS = 50;
const LARGEST_SAMPLE = 1_000_000;

/**
 * Reads a plant's own copy of a master table and checks its structure: heads, letters in order, sizes that do not fall, plans whose numbers
 * are cumulative with Re above Ac, arrows that end at a plan of their column. It cannot check that the numbers are the standard's.
 *
 * The first line holds the heads: `code_letter`, then `sample_size` (single), `n1` and `n2` (double) or `n_each_of_3` … `n_each_of_7`
 * (multiple), then the 26 AQLs in order. Comma, semicolon or tab between the cells; a decimal comma is read where the comma is no separator. A
 * plan is one `Ac/Re` a sample, with semicolons between; `#` for Ac = acceptance not possible yet; `down`, `up`, `single`, `double`, `-`.
 * `writeTableCsv` gives a table in this form to start from.
 * @param about how the table is to be known, and the severity it stands for
 * @returns never throws, whatever the text
 */
export function readTableCsv(text: string, about: Pick<OwnTable, 'id' | 'name' | 'severity'>): TableReading {
  const bare = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (bare.trim() === '') return { problems: [problemAt('empty', 1, '')] };
  if (bare.length > LONGEST_TEXT) return { problems: [problemAt('tooLong', 1, String(bare.length), String(LONGEST_TEXT))] };
  const separator = /^\s*"?code_letter"?\s*([,;\t])/i.exec(bare)?.[1] ?? ',';
  const [heads = { line: 1, cells: [] }, ...lines] = csvLines(bare, separator);
  const form = formOf(heads.cells);
  if (form === null) {
    return { problems: [{ ...problemAt('headUnknown', heads.line, heads.cells.slice(0, 3).join(', '), 'code_letter, sample_size'), column: 1, head: heads.cells[0] ?? null }] };
  }
  const wrongHeads = wrongWithHeads(heads, form, separator);
  if (wrongHeads.length > 0) return { problems: wrongHeads };

  const problems: TableProblem[] = [];
  const rows: TableLine[] = [];
  lines.forEach((line, at) => {
    const above = rows.findLast(({ sizes }) => sizes.length > 0)?.sizes ?? [];
    const row = readLine(line, at, above, { heads: heads.cells, form, severity: about.severity }, problems);
    if (row !== null) rows.push(row);
  });
  if (lines.length < LETTERS_A_LOT_CAN_START_FROM) {
    problems.push({ ...problemAt('letterMissing', (lines.at(-1)?.line ?? heads.line) + 1, '', LETTERS[lines.length]), column: 1, head: heads.cells[0] ?? null });
  }
  if (problems.length === 0) problems.push(...lostArrows(rows, lines, heads.cells, form));
  return problems.length > 0 ? { problems: problems.slice(0, MOST_PROBLEMS) } : { table: { ...about, samples: form.samples, rows } };
}

/** What the heads before the AQLs say: kind of table, how many columns hold sizes, how many pairs a plan has. */
interface Form { readonly samples: Samples; readonly sizeHeads: number; readonly pairs: number }
interface Frame { readonly heads: readonly string[]; readonly form: Form; readonly severity: Severity }

function problemAt(code: TableProblemCode, line: number, found: string, expected: string | null = null): TableProblem {
  return { code, line, column: null, head: null, found: found.slice(0, 80), expected };
}

function formOf(heads: readonly string[]): Form | null {
  const [first, second, third] = heads.map((head) => head.toLowerCase());
  if (first !== 'code_letter') return null;
  if (second === 'sample_size') return { samples: 'single', sizeHeads: 1, pairs: 1 };
  if (second === 'n1' && third === 'n2') return { samples: 'double', sizeHeads: 2, pairs: 2 };
  const [, pairs] = /^n_each_of_([3-7])$/.exec(second ?? '') ?? [];
  return pairs === undefined ? null : { samples: 'multiple', sizeHeads: 1, pairs: Number(pairs) };
}

function widthOf({ sizeHeads }: Form): number {
  return 1 + sizeHeads + AQLS.length;
}

function wrongWithHeads({ line, cells }: CsvLine, form: Form, separator: string): readonly TableProblem[] {
  const wrong = AQLS.flatMap((aql, at): TableProblem[] => {
    const column = 1 + form.sizeHeads + at;
    const head = cells[column] ?? '';
    const right = head !== '' && Number(separator === ',' ? head : head.replace(',', '.')) === aql;
    return right ? [] : [{ ...problemAt('aqlHead', line, head, String(aql)), column: column + 1, head }];
  });
  return cells.length === widthOf(form) ? wrong : [...wrong, problemAt('columnCount', line, String(cells.length), String(widthOf(form)))];
}

/** One row; what is wrong with it is added to `problems`. Null where it cannot be read at all. */
function readLine({ line, cells }: CsvLine, at: number, above: readonly number[], { heads, form, severity }: Frame, problems: TableProblem[]): TableLine | null {
  const say = (code: TableProblemCode, column: number, found: string, expected: string | null = null): void => {
    problems.push({ ...problemAt(code, line, found, expected), column: column + 1, head: heads[column] ?? null });
  };
  const letter = LETTERS[at];
  if (letter === undefined || cells[0]?.toUpperCase() !== letter) { say('letterOrder', 0, cells[0] ?? '', letter ?? null); return null; }
  if (cells.length !== widthOf(form)) { problems.push(problemAt('columnCount', line, String(cells.length), String(widthOf(form)))); return null; }
  const written = cells.slice(1, 1 + form.sizeHeads);
  const sizes = written.every((each) => each === '') ? [] : written.map((size, index) => {
    if (!/^\d{1,7}$/.test(size) || Number(size) < 1 || Number(size) > LARGEST_SAMPLE) say('sizeNotWhole', 1 + index, size);
    else if (Number(size) < (above[index] ?? 0)) say('sizeFalls', 1 + index, size, `${above[index]} …`);
    return Number(size);
  });
  const place = { severity, samples: form.samples, pairs: form.pairs, startRow: at < LETTERS_A_LOT_CAN_START_FROM, hasSize: sizes.length > 0 };
  const read = cells.slice(1 + form.sizeHeads).map((cell, index): TableCell => {
    const is = readTableCell(cell, place);
    if (typeof is === 'string' || !('problem' in is)) return is;
    say(is.problem, 1 + form.sizeHeads + index, cell);
    return 'unreachable';
  });
  const each = form.samples === 'multiple' && sizes[0] !== undefined ? Array<number>(form.pairs).fill(sizes[0]) : sizes;
  return { letter, sizes: each, cells: read };
}

/** Arrows that do not end at a plan, or a sign to one, of their column. */
function lostArrows(rows: readonly TableLine[], lines: readonly CsvLine[], heads: readonly string[], { sizeHeads }: Form): readonly TableProblem[] {
  return rows.flatMap(({ cells }, row) => cells.flatMap((cell, column): TableProblem[] => {
    if (cell !== 'down' && cell !== 'up') return [];
    let at = row;
    while (rows[at]?.cells[column] === cell) at += cell === 'down' ? 1 : -1;
    const end = rows[at]?.cells[column];
    if (typeof end === 'object' || end === 'single' || end === 'double') return [];
    const place = 1 + sizeHeads + column;
    return [{ ...problemAt('arrowLeadsNowhere', lines[row]?.line ?? 0, cell), column: place + 1, head: heads[place] ?? null }];
  }));
}
