import { MOST_FED } from '../../shared/wire/feed-schema.ts';

/** A dropped file as read: one press, numbers without a gap; or what is wrong with it, in words for whoever opens the reason. */
export type ReadDrop = { readonly press: string; readonly fromSeq: number; readonly values: readonly number[] } | { readonly wrong: string };

const head = 'press,seq,weight';
const mostRows = 20 * MOST_FED;

/**
 * Reads a file of weights: the line `press,seq,weight`, then one line a piece. A comma or a semicolon parts the fields; behind semicolons a decimal comma is
 * read too. A file is taken whole or not at all.
 */
export function readDrop(text: string): ReadDrop {
  const lines = text.replace(/^\ufeff/, '').split(/\r?\n/);
  if (lines.at(-1) !== '') return { wrong: 'The last line is not ended: the file may not be whole.' };
  while (lines.at(-1)?.trim() === '') lines.pop();
  const [first = '', ...rows] = lines;
  if (first.replaceAll(';', ',').trim().toLowerCase() !== head) return { wrong: `The first line must be ${head}.` };
  if (rows.length === 0) return { wrong: 'There is no weight in it.' };
  if (rows.length > mostRows) return { wrong: `There are more than ${mostRows} weights in it; send them in several files.` };
  const values: number[] = [];
  let [press, fromSeq] = ['', 0];
  for (const [at, row] of rows.entries()) {
    const [name = '', seqText = '', weightText = '', ...more] = row.split(row.includes(';') ? ';' : ',').map((field) => field.trim());
    const seq = /^\d{1,9}$/.test(seqText) ? Number(seqText) : Number.NaN;
    const weight = /^\d+([.,]\d+)?$/.test(weightText) ? Number(weightText.replace(',', '.')) : Number.NaN;
    const line = at + 2;
    if (name === '' || more.length > 0 || !(seq >= 1) || !(weight > 0)) return { wrong: `Line ${line} is no press, number and weight: ${row.slice(0, 80)}` };
    if (at === 0) [press, fromSeq] = [name, seq];
    if (name !== press) return { wrong: `Line ${line} is of press ${name}; the file began with ${press}.` };
    if (seq !== fromSeq + at) return { wrong: `Line ${line} has number ${seq}; ${fromSeq + at} comes next.` };
    values.push(weight);
  }
  return { press, fromSeq, values };
}
