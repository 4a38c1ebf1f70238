import { readFileSync } from 'node:fs';

/** Reads a table from tests/reference/data: one record a row, keyed by the column heads. Quotes as in RFC 4180. */
export function readCsv(name: string): Record<string, string>[] {
  const [heads = [], ...rows] = linesOf(name);
  return rows.map((cells) => Object.fromEntries(heads.map((head, at) => [head, cells[at] ?? ''])));
}

/** The column heads in their printed order, which a record does not keep when heads are whole numbers. */
export function readHeads(name: string): string[] {
  return linesOf(name)[0] ?? [];
}

function linesOf(name: string): string[][] {
  const text = readFileSync(new URL(`./data/${name}`, import.meta.url), 'utf8');
  return text.split(/\r?\n/).filter((line) => line !== '').map(cellsOf);
}

function cellsOf(line: string): string[] {
  return [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, bare]) => quoted?.replaceAll('""', '"') ?? bare ?? '');
}
