import { formatFor } from './format.ts';
import type { Locale } from './locale.ts';

/**
 * The number a person or a gauge typed, or null where the text is none: nothing is guessed, cut off or turned into 0.
 * One comma or one point is the decimal sign, whichever it is, for gauges type points and people commas. Where both stand, or one of them
 * several times, the language's own groups of three are understood ("1.234,5" in German) and everything else is no number.
 * Exponents, inner blanks, units and other letters are no number.
 * @example parseNumber('4,762', 'en') // 4.762
 * @example parseNumber('', 'en') // null
 */
export function parseNumber(text: string, locale: Locale): number | null {
  return parseNumberWith(text, formatFor(locale).decimalSign);
}

/** The same for a known decimal sign. */
export function parseNumberWith(text: string, decimalSign: '.' | ','): number | null {
  const plain = text.trim().replace(/^[−–]/, '-');
  if (/^[+-]?(?:\d+[.,]?\d*|[.,]\d+)$/.test(plain)) return finite(plain.replace(',', '.'));
  const group = decimalSign === ',' ? '.' : ',';
  const [whole = '', ...fraction] = plain.split(decimalSign);
  if (fraction.length > 1 || !(fraction[0] === undefined || /^\d*$/.test(fraction[0]))) return null;
  const grouped = group === '.' ? /^[+-]?\d{1,3}(?:\.\d{3})+$/ : /^[+-]?\d{1,3}(?:,\d{3})+$/;
  return grouped.test(whole) ? finite([whole.replaceAll(group, ''), ...fraction].join('.')) : null;
}

/** A whole number, 0 or more, digits only (blanks around them are let pass); null for everything else. */
export function parseCount(text: string): number | null {
  const plain = text.trim();
  return /^\d{1,15}$/.test(plain) ? Number(plain) : null;
}

function finite(plain: string): number | null {
  const value = Number(plain);
  return Number.isFinite(value) ? value : null;
}
