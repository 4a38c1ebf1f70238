import type { Slip } from '../../shared/traveller/index.ts';
import type { ReadCertificate } from './read-certificate.ts';
import { countedOf, measuredOf } from './numbers-of-journal.ts';

/** What the certificate must say beside the tables' numbers. */
export interface Named { readonly what: string; readonly value: string }

/** Compares every number of the certificate's tables, and the names, with what the threads of the journal say. Returns the differences, each as a sentence. */
export function compareCertificate(read: ReadCertificate, threads: readonly (readonly Slip[])[], named: readonly Named[]): readonly string[] {
  return [...namesMissing(read, named), ...threads.flatMap((slips) => measuredDiffering(read, slips)), ...countedDiffering(read, threads)];
}

function namesMissing({ text }: ReadCertificate, named: readonly Named[]): string[] {
  return named.filter(({ value }) => !text.includes(value)).map(({ what, value }) => `${what}: "${value}" does not stand on the certificate`);
}

/** A printed figure is right when it is the true one rounded to the decimals printed, and these are as many as a reading has. */
function sameFigure(printed: string | undefined, value: number | null, leastDecimals: number): boolean {
  if (value === null) return printed === '–';
  const text = (printed ?? '').replace('−', '-');
  const figure = Number(text);
  const decimals = text.split('.')[1]?.length ?? 0;
  return text !== '' && Number.isFinite(figure) && decimals >= leastDecimals && Math.abs(figure - value) <= 0.5 * 10 ** -decimals * (1 + 1e-6);
}

function measuredDiffering({ rows }: ReadCertificate, slips: readonly Slip[]): string[] {
  return measuredOf(slips).flatMap(({ name, decimals, n, mean, s, min, max, lower, upper }) => {
    const candidates = rows.filter(([head, count]) => head?.normalize('NFKC').startsWith(name.normalize('NFKC')) === true && count === String(n));
    const wanted = [n, mean, s, min, max, lower, upper];
    const fits = candidates.some((cells) => wanted.every((value, at) => sameFigure(cells[at + 1], value, at === 0 ? 0 : decimals)));
    return fits ? [] : [`${name}: the journal gives ${wanted.join(', ')}; the certificate has ${candidates.map((cells) => cells.slice(1, 8).join(', ')).join(' / ') || 'no such row'}`];
  });
}

function countedDiffering({ rows }: ReadCertificate, threads: readonly (readonly Slip[])[]): string[] {
  const wanted = threads.flatMap(countedOf).map(({ n, found, ac, re }) => `n ${n}, found ${found}, Ac ${ac}, Re ${re}`).sort();
  const printed = rows.flatMap((cells) => {
    const found = /^(\d+) found$/.exec(cells[4] ?? '')?.[1];
    const limits = /^Ac (\d+), Re (\d+)$/.exec(cells[5] ?? '');
    return found === undefined || limits === null ? [] : [`n ${cells[3]}, found ${found}, Ac ${limits[1]}, Re ${limits[2]}`];
  }).sort();
  return JSON.stringify(wanted) === JSON.stringify(printed) ? [] : [`samples by attributes: the journal gives ${wanted.join(' | ')}; the certificate has ${printed.join(' | ')}`];
}
