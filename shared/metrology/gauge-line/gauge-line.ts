/**
 * How one line of a gauge that sends text is read, without a pattern language: which number of the line, after which words, in which unit.
 */
export interface GaugeLine {
  /** Which number of the line is the reading, counted from 1. */
  readonly number: number;
  /** What the line must hold before the reading; nothing where empty. What stands before it is passed over, numbers too. */
  readonly after: string;
  /** The unit the line must name behind the number; empty where the gauge sends none. */
  readonly unit: string;
  /** What one step of the sent number is in the gauge's unit; 1 where it sends its unit. */
  readonly factor: number;
}

/** As a gauge's line is read where nothing is said: the first number, with the gauge's own unit or none. */
export const FIRST_NUMBER: GaugeLine = { number: 1, after: '', unit: '', factor: 1 };

export type LineRead =
  | { readonly value: number; /** The reading as the line wrote it, with a point. */ readonly plain: string }
  | { readonly fault: 'empty' | 'noNumber' | 'otherUnit' | 'unclear'; readonly line: string };

/**
 * Reads one line as a gauge sends it: "+012.701 mm", "01A+00012,701", "N  12.70 g". Control characters are passed over. A number has one
 * decimal sign, comma or point; a group sign makes it unclear, and so does a second sign of either kind.
 * @param ownUnit the gauge's unit: a line that names another one is no reading
 */
export function readGaugeLine(text: string, { number, after, unit, factor }: GaugeLine, ownUnit: string): LineRead {
  const line = text.replaceAll(/\p{Cc}+/gu, ' ').trim();
  if (line === '') return { fault: 'empty', line };
  const from = after === '' ? 0 : line.indexOf(after);
  if (from < 0) return { fault: 'noNumber', line };
  const rest = line.slice(from + after.length);
  const found = [...rest.matchAll(NUMBER)][number - 1];
  if (found === undefined) return { fault: 'noNumber', line };
  const [whole, sign = '', digits = ''] = found;
  if ((digits.match(/[.,]/g)?.length ?? 0) > 1) return { fault: 'unclear', line };
  const behind = /^\s*([^\s\d.,;+\-−]*)/u.exec(rest.slice(found.index + whole.length))?.[1] ?? '';
  if (unit !== '' ? behind !== unit : behind !== '' && isUnit(behind) && !isSameUnit(behind, ownUnit)) return { fault: 'otherUnit', line };
  const plain = `${sign === '−' || sign === '-' ? '-' : ''}${digits.replace(',', '.').replace(/^0+(?=\d)/, '')}`;
  const sent = Number(plain);
  // What a gauge in another unit sends is not finer than it was: the product is taken to the digits sent.
  const value = factor === 1 ? sent : Number((sent * factor).toPrecision(12));
  return Number.isFinite(value) ? { value, plain: factor === 1 ? plain : String(value) } : { fault: 'unclear', line };
}

/** A sign with blanks behind it, or no letter or figure right before; digits with decimal signs. The 1 of "A1" is no number, that of "A+1" is. */
const NUMBER = /(?:([+\-−])\s*|(?<![\p{L}\d.,]))(\d+(?:[.,]\d+)*|[.,]\d+)/gu;
const UNITS = ['mm', 'µm', 'um', 'g', 'mg', 'kg', 'in', 'inch', '%', 'kA/m', 'HV30', 'g/cm3', 'g/cm³'];
function isUnit(text: string): boolean {
  return UNITS.some((unit) => isSameUnit(unit, text));
}
/** Micro is written with two signs that look alike, and with u where a gauge has only ASCII; a cube with a figure. */
function isSameUnit(one: string, other: string): boolean {
  const plain = (unit: string): string => unit.replace(/[\u00b5\u03bc]/, 'u').replace('³', '3');
  return plain(one) === plain(other);
}
