import { AQLS } from './aqls.ts';
import type { CodeLetter } from './code-letter.ts';
import { csvLines } from './csv-lines.ts';
import type { CsvLine } from './csv-lines.ts';
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
  const problems: TableProblem[] = [];
  const say = (code: TableProblemCode, line: number, column: number | null, head: string | null, found: string, expected: string | null = null): void => {
    problems.push({ code, line, column, head, found: found.slice(0, 80), expected });
  };
  const result = (): TableReading => ({ problems: problems.slice(0, MOST_PROBLEMS) });
  const bare = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (bare.trim() === '') say('empty', 1, null, null, '');
  if (bare.length > LONGEST_TEXT) say('tooLong', 1, null, null, String(bare.length), String(LONGEST_TEXT));
  if (problems.length > 0) return result();
  const separator = /^\s*"?code_letter"?\s*([,;\t])/i.exec(bare)?.[1] ?? ',';
  const [heads = { line: 1, cells: [] }, ...lines] = csvLines(bare, separator);
  const form = formOf(heads.cells);
  if (form === null) {
    say('headUnknown', heads.line, 1, heads.cells[0] ?? null, heads.cells.slice(0, 3).join(', '), 'code_letter, sample_size');
    return result();
  }
  const { samples, sizeHeads, pairs } = form;
  const width = 1 + sizeHeads + AQLS.length;
  AQLS.forEach((aql, at) => {
    const column = 1 + sizeHeads + at;
    const head = heads.cells[column] ?? '';
    if (head === '' || Number(separator === ',' ? head : head.replace(',', '.')) !== aql) say('aqlHead', heads.line, column + 1, head, head, String(aql));
  });
  if (heads.cells.length !== width) say('columnCount', heads.line, null, null, String(heads.cells.length), String(width));
  if (problems.length > 0) return result();

  const rows: TableLine[] = [];
  let above: readonly number[] = [];
  lines.forEach(({ line, cells }, at) => {
    const letter = LETTERS[at];
    if (letter === undefined || cells[0]?.toUpperCase() !== letter) { say('letterOrder', line, 1, heads.cells[0] ?? null, cells[0] ?? '', letter ?? null); return; }
    if (cells.length !== width) { say('columnCount', line, null, null, String(cells.length), String(width)); return; }
    const sizes: number[] = [];
    const written = cells.slice(1, 1 + sizeHeads);
    for (const [index, size] of written.entries()) {
      const place = [line, index + 2, heads.cells[index + 1] ?? null, size] as const;
      if (size === '' && written.every((each) => each === '')) continue;
      if (!/^\d{1,7}$/.test(size) || Number(size) < 1 || Number(size) > LARGEST_SAMPLE) say('sizeNotWhole', ...place);
      else if (Number(size) < (above[index] ?? 0)) say('sizeFalls', ...place, `${above[index]} …`);
      sizes.push(Number(size));
    }
    if (sizes.length > 0) above = sizes;
    const sizesOfSamples = samples === 'multiple' && sizes[0] !== undefined ? Array<number>(pairs).fill(sizes[0]) : sizes;
    const place = { severity: about.severity, samples, pairs, startRow: at < LETTERS_A_LOT_CAN_START_FROM, hasSize: sizes.length > 0 };
    const read = cells.slice(1 + sizeHeads).map((cell, index): TableCell => {
      const is = readTableCell(cell, place);
      if (typeof is === 'string' || !('problem' in is)) return is;
      say(is.problem, line, 2 + sizeHeads + index, heads.cells[1 + sizeHeads + index] ?? null, cell);
      return 'unreachable';
    });
    rows.push({ letter, sizes: sizesOfSamples, cells: read });
  });
  if (lines.length < LETTERS_A_LOT_CAN_START_FROM) say('letterMissing', (lines.at(-1)?.line ?? heads.line) + 1, 1, heads.cells[0] ?? null, '', LETTERS[lines.length] ?? null);
  if (problems.length === 0) {
    for (const { row, column } of lostArrows(rows)) {
      const at = 1 + sizeHeads + column;
      say('arrowLeadsNowhere', lines[row]?.line ?? 0, at + 1, heads.cells[at] ?? null, lines[row]?.cells[at] ?? '');
    }
  }
  return problems.length > 0 ? result() : { table: { ...about, samples, rows } };
}

/** What the heads before the AQLs say: kind of table, how many columns hold sizes, how many pairs a plan has. */
function formOf(heads: CsvLine['cells']): { samples: Samples; sizeHeads: number; pairs: number } | null {
  const [first, second, third] = heads.map((head) => head.toLowerCase());
  if (first !== 'code_letter') return null;
  if (second === 'sample_size') return { samples: 'single', sizeHeads: 1, pairs: 1 };
  if (second === 'n1' && third === 'n2') return { samples: 'double', sizeHeads: 2, pairs: 2 };
  const [, pairs] = /^n_each_of_([3-7])$/.exec(second ?? '') ?? [];
  return pairs === undefined ? null : { samples: 'multiple', sizeHeads: 1, pairs: Number(pairs) };
}

/** Arrows that do not end at a plan, or a sign to one, of their column. */
function lostArrows(rows: readonly TableLine[]): readonly { row: number; column: number }[] {
  return rows.flatMap(({ cells }, row) => cells.flatMap((cell, column) => {
    if (cell !== 'down' && cell !== 'up') return [];
    let at = row;
    while (rows[at]?.cells[column] === cell) at += cell === 'down' ? 1 : -1;
    const end = rows[at]?.cells[column];
    return typeof end === 'object' || end === 'single' || end === 'double' ? [] : [{ row, column }];
  }));
}
