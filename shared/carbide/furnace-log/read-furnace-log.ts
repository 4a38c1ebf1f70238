import type { FurnaceLog, LogColumn, LogFault, LogFaultCode } from './furnace-log.ts';
import { readLogTime } from './read-log-time.ts';

/** Bounds of a file: a run of 13 h at one row every half second has 93,600 rows. */
export const LONGEST_LOG = 8_000_000;
export const MOST_LOG_ROWS = 100_000;

/** Heads by the words they begin with; English alone, for a file has no language. */
const HEADS: Readonly<Record<LogColumn, RegExp>> = { time: /^(time|elapsed)\b/i, temperature: /^temp(erature)?\b/i, pressure: /^press(ure)?\b/i, gas: /^gas\b/i };
const COLUMNS = ['time', 'temperature', 'pressure', 'gas'] as const;
/** Exact factors: 1 bar = 100 kPa (definition), 1 h = 60 min. */
const UNITS: Readonly<Record<LogColumn, Readonly<Record<string, number>>>> = {
  time: { min: 1, h: 60, s: 1 / 60 },
  temperature: { '°c': 1, 'degc': 1, c: 1 },
  pressure: { mbar: 1, hpa: 1, bar: 1000, pa: 0.01, kpa: 10, mpa: 10_000 },
  gas: {},
};
const ABSOLUTE_ZERO_C = -273.15;

interface Head { readonly column: LogColumn; readonly at: number; readonly factor: number; readonly unit: string }

class Unreadable extends Error {
  readonly fault: LogFault;
  constructor(code: LogFaultCode, line: number, column: number, found: string, expected = '') {
    super(code);
    this.fault = { code, line, column, found: found.slice(0, 60), expected };
  }
}

/**
 * Reads a furnace log from CSV. The first line names the columns: `time` and `temperature`, and where there are any `pressure` and `gas`; units stand
 * behind a name in brackets or in a second line of their own. Semicolon, tab or comma between the cells; a decimal comma where the comma is no
 * separator, and one decimal mark throughout. Times are dates by ISO 8601 (without a zone they are taken as UTC: only differences count) or
 * minutes, hours or seconds from the start. Other columns are refused, not skipped: a misspelt head would hide a pressure. Units unless
 * written: min, °C, mbar.
 * @returns the log, or the first thing that is wrong with its line and column; never throws, whatever the text
 */
export function readFurnaceLog(text: string): FurnaceLog | { readonly fault: LogFault } {
  try {
    return read(text.startsWith('\uFEFF') ? text.slice(1) : text);
  } catch (error) {
    if (error instanceof Unreadable) return { fault: error.fault };
    throw error;
  }
}

function read(text: string): FurnaceLog {
  if (text.trim() === '') throw new Unreadable('empty', 1, 0, '');
  if (text.length > LONGEST_LOG) throw new Unreadable('tooLong', 1, 0, String(text.length), String(LONGEST_LOG));
  const lines = text.split(/\r\n|\n|\r/);
  const start = lines.findIndex((line) => line.trim() !== '');
  const headLine = lines[start] ?? '';
  const separator = [';', '\t', ','].find((each) => headLine.includes(each)) ?? ',';
  const cellsOf = (line: string): string[] => line.split(separator).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1').trim());
  const unitCells = unitLine(cellsOf(lines[start + 1] ?? ''));
  const heads = readHeads(cellsOf(headLine), unitCells, start + 1);
  const count = cellsOf(headLine).length;
  const rows = new Rows(heads, separator);
  for (let at = start + (unitCells === null ? 1 : 2); at < lines.length; at += 1) {
    const line = lines[at] ?? '';
    if (line.trim() === '') continue;
    const cells = cellsOf(line);
    if (cells.length !== count) throw new Unreadable('columnCount', at + 1, 0, String(cells.length), String(count));
    rows.take(cells, at + 1);
  }
  return rows.whole(start + 1);
}

/** A second line without a single digit or date is a line of units. */
function unitLine(cells: readonly string[]): readonly string[] | null {
  return cells.some((cell) => cell !== '') && cells.every((cell) => !/\d/.test(cell)) ? cells : null;
}

function readHeads(cells: readonly string[], unitCells: readonly string[] | null, line: number): readonly Head[] {
  const heads = cells.map((cell, at): Head => {
    const column = COLUMNS.find((each) => HEADS[each].test(cell)) ?? null;
    if (column === null) throw new Unreadable('headUnknown', line, at + 1, cell, COLUMNS.join(', '));
    const inHead = /[[(]\s*(.*?)\s*[\])]\s*$/.exec(cell)?.[1];
    const unit = (inHead ?? unitCells?.[at] ?? '').replace(/^[[(]|[\])]$/g, '').trim();
    const factor = unit === '' || column === 'gas' ? 1 : UNITS[column][unit.toLowerCase()];
    // ISO dates have no unit; some recorders write one all the same.
    if (factor === undefined && !(column === 'time' && /^(iso|utc|date|iso 8601)$/i.test(unit))) throw new Unreadable('unitUnknown', inHead === undefined ? line + 1 : line, at + 1, unit, Object.keys(UNITS[column]).join(', '));
    return { column, at, factor: factor ?? 1, unit };
  });
  for (const { column, at } of heads) if (heads.some((other) => other.column === column && other.at < at)) throw new Unreadable('headTwice', line, at + 1, cells[at] ?? '', column);
  for (const column of ['time', 'temperature'] as const) if (!heads.some((head) => head.column === column)) throw new Unreadable('headMissing', line, 0, cells.join(separatorShown), column);
  return heads;
}
const separatorShown = ' | ';

/** Gathers the rows, one decimal mark and one kind of time throughout. */
class Rows {
  readonly #heads: readonly Head[];
  readonly #commaSeparates: boolean;
  #decimal: '.' | ',' | null = null;
  #iso: boolean | null = null;
  #first = 0;
  #startedAt: string | null = null;
  readonly #atMin: number[] = [];
  readonly #temperatureC: number[] = [];
  readonly #pressureMbar: (number | null)[] = [];
  readonly #gas: string[] = [];

  constructor(heads: readonly Head[], separator: string) {
    this.#heads = heads;
    this.#commaSeparates = separator === ',';
  }

  take(cells: readonly string[], line: number): void {
    if (this.#atMin.length >= MOST_LOG_ROWS) throw new Unreadable('tooManyRows', line, 0, String(MOST_LOG_ROWS + 1), String(MOST_LOG_ROWS));
    for (const head of this.#heads) {
      const cell = cells[head.at] ?? '';
      switch (head.column) {
        case 'time': this.#takeTime(cell, head, line); break;
        case 'temperature': {
          const value = this.#number(cell, head.at, line);
          if (value < ABSOLUTE_ZERO_C) throw new Unreadable('belowAbsoluteZero', line, head.at + 1, cell);
          this.#temperatureC.push(value);
          break;
        }
        case 'pressure': {
          const value = cell === '' ? null : clean(this.#number(cell, head.at, line) * head.factor);
          if (value !== null && value < 0) throw new Unreadable('negativePressure', line, head.at + 1, cell);
          this.#pressureMbar.push(value);
          break;
        }
        case 'gas': this.#gas.push(cell); break;
      }
    }
  }

  whole(line: number): FurnaceLog {
    if (this.#atMin.length < 2) throw new Unreadable('noRows', line, 0, String(this.#atMin.length), '2');
    const has = (column: LogColumn): boolean => this.#heads.some((head) => head.column === column);
    return { atMin: this.#atMin, temperatureC: this.#temperatureC, pressureMbar: has('pressure') ? this.#pressureMbar : null, gas: has('gas') ? this.#gas : null, startedAt: this.#startedAt };
  }

  #takeTime(cell: string, { at, factor }: Head, line: number): void {
    const dated = readLogTime(cell);
    const iso = dated !== null;
    this.#iso ??= iso;
    if (iso !== this.#iso) throw new Unreadable('otherTime', line, at + 1, cell);
    const minutes = dated ?? this.#number(cell, at, line, 'notATime') * factor;
    if (this.#atMin.length === 0) {
      this.#first = minutes;
      this.#startedAt = iso ? cell : null;
    }
    this.#atMin.push(clean(minutes - this.#first));
  }

  #number(cell: string, at: number, line: number, code: 'notANumber' | 'notATime' = 'notANumber'): number {
    const [, mark = ''] = /^[+-]?\d+(?:([.,])\d+)?(?:[eE][+-]?\d{1,3})?$/.exec(cell) ?? [cell, 'none'];
    if (mark === 'none' || (mark === ',' && this.#commaSeparates)) throw new Unreadable(code, line, at + 1, cell);
    if (mark === '.' || mark === ',') {
      this.#decimal ??= mark;
      if (mark !== this.#decimal) throw new Unreadable('otherDecimals', line, at + 1, cell, this.#decimal);
    }
    const value = Number(cell.replace(',', '.'));
    if (!Number.isFinite(value)) throw new Unreadable(code, line, at + 1, cell);
    return value;
  }
}

/** Frees a converted value of binary dust: a billionth of a minute or of a millibar is no reading. */
function clean(value: number): number {
  return Number(value.toPrecision(12));
}
