import type { Slip } from '../../shared/traveller/index.ts';
import type { ReadCertificate } from './read-certificate.ts';
import { countedOf, measuredOf, type MeasuredNumbers } from './numbers-of-journal.ts';

/** What the certificate must say beside the tables' numbers. */
export interface Named { readonly what: string; readonly value: string }

/**
 * Compares the names, the counts with their plans, the measured numbers and the limits of the certificate's tables with what the threads of the
 * journal say. Returns the differences, each as a sentence.
 */
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

/** The rows that stand under a subject's own rows: a row of few cells names the gate or the subject of those after it. */
function rowsUnder({ rows }: ReadCertificate, subject: string): (readonly string[])[] {
  let named = '';
  return rows.filter((cells) => {
    if (cells.length <= 3) named = cells[0] ?? '';
    return cells.length > 3 && named.split(' ').includes(subject);
  });
}

function isNamed(head: string | undefined, name: string): boolean {
  return head?.normalize('NFKC').startsWith(name.normalize('NFKC')) === true;
}

function measuredDiffering(read: ReadCertificate, slips: readonly Slip[]): string[] {
  const rows = rowsUnder(read, slips[0]?.stream.split(':')[1] ?? '');
  return measuredOf(slips).flatMap((numbers) => {
    const { name, decimals, n, mean, s, min, max, lower, upper } = numbers;
    const candidates = rows.filter(([head, count]) => isNamed(head, name) && count === String(n));
    const wanted = [n, mean, s, min, max, lower, upper];
    const fits = candidates.some((cells) => wanted.every((value, at) => sameFigure(cells[at + 1], value, at === 0 ? 0 : decimals)));
    const differing = fits ? [] : [`${name}: the journal gives ${wanted.join(', ')}; the certificate has ${candidates.map((cells) => cells.slice(1, 8).join(', ')).join(' / ') || 'no such row'}`];
    const judged = rows.filter((cells) => isNamed(cells[0], name) && cells[3] === String(n));
    if (judged.length === 0) return [...differing, `${name}: no gate has a line of n ${n}`];
    return [...differing, ...judged.filter((cells) => !isWithin(cells, numbers)).map((cells) => `${name}: the gate's line says ${cells.slice(3, 6).join(', ')}; the journal gives ${min} to ${max}, limits ${lower} to ${upper}`)];
  });
}

/** Where a gate's line says that all lie within: they do, and its limits are the journal's; drawn in where a guard band is asked for. */
function isWithin(cells: readonly string[], { n, min, max, lower, upper, isGuarded }: MeasuredNumbers): boolean {
  if (!/ within$/.test(cells[4] ?? '')) return true;
  const limits = /^(?:≥ (?<least>[\d.−]+)|≤ (?<most>[\d.−]+)|(?<lower>[\d.−]+) … (?<upper>[\d.−]+))(?: |$)/.exec(cells[5] ?? '')?.groups;
  const figure = (text: string | undefined): number | null => (text === undefined ? null : Number(text.replace('−', '-')));
  const [least, most] = [figure(limits?.['lower'] ?? limits?.['least']), figure(limits?.['upper'] ?? limits?.['most'])];
  const isLower = lower === null ? least === null : least !== null && (isGuarded ? least >= lower : least === lower) && min >= least;
  const isUpper = upper === null ? most === null : most !== null && (isGuarded ? most <= upper : most === upper) && max <= most;
  return cells[4] === `all ${n} within` && isLower && isUpper;
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
