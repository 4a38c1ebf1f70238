import { FORMAT_TAGS } from './locale.ts';
import type { Locale } from './locale.ts';

/** How one language writes numbers, days and lists. */
export interface Format {
  readonly tag: string;
  readonly decimalSign: '.' | ',';
  /** With `decimals` exactly so many places; without, as many digits as the number has. */
  number(value: number, decimals?: number): string;
  /** A whole number with its groups set apart. */
  count(value: number): string;
  /** Days and times of an ISO 8601 text; a text that is none comes back as it is. */
  date(iso: string): string;
  time(iso: string): string;
  dateTime(iso: string): string;
  /** "a, b and c". */
  list(items: readonly string[]): string;
  /** "a, b or c". */
  either(items: readonly string[]): string;
  /** Which plural form the number takes. */
  plural(value: number): Intl.LDMLPluralRule;
}

const made = new Map<string, Format>();

/**
 * The formats of a language.
 * @param timeZone such as `Europe/Prague`; left out, times are told in the zone of the device
 */
export function formatFor(locale: Locale, timeZone?: string): Format {
  return formatOfTag(FORMAT_TAGS[locale], timeZone);
}

/** The formats of any language tag, e.g. `de-DE`, for documents in a second language. */
export function formatOfTag(tag: string, timeZone?: string): Format {
  const key = `${tag} ${timeZone ?? ''}`;
  const before = made.get(key);
  if (before !== undefined) return before;
  const format = makeFormat(tag, timeZone);
  made.set(key, format);
  return format;
}

function makeFormat(tag: string, timeZone: string | undefined): Format {
  const zone = timeZone === undefined ? {} : { timeZone };
  const free = new Intl.NumberFormat(tag, { maximumSignificantDigits: 15 });
  const whole = new Intl.NumberFormat(tag, { maximumFractionDigits: 0 });
  const fixed = new Map<number, Intl.NumberFormat>();
  const withDecimals = (decimals: number): Intl.NumberFormat => {
    const there = fixed.get(decimals) ?? new Intl.NumberFormat(tag, { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
    fixed.set(decimals, there);
    return there;
  };
  const day = new Intl.DateTimeFormat(tag, { dateStyle: 'medium', ...zone });
  // A day alone has no zone: it is read and told in UTC, so that it never becomes the day before.
  const bareDay = new Intl.DateTimeFormat(tag, { dateStyle: 'medium', timeZone: 'UTC' });
  const clock = new Intl.DateTimeFormat(tag, { hour: '2-digit', minute: '2-digit', ...zone });
  const both = new Intl.DateTimeFormat(tag, { dateStyle: 'medium', timeStyle: 'short', ...zone });
  const list = new Intl.ListFormat(tag, { style: 'long', type: 'conjunction' });
  const choice = new Intl.ListFormat(tag, { style: 'long', type: 'disjunction' });
  const plurals = new Intl.PluralRules(tag);
  return {
    tag,
    decimalSign: decimalSignOf(tag),
    number: (value, decimals) => (decimals === undefined ? free : withDecimals(decimals)).format(value),
    count: (value) => whole.format(value),
    date: (iso) => told(/^\d{4}-\d{2}-\d{2}$/.test(iso) ? bareDay : day, iso),
    time: (iso) => told(clock, iso),
    dateTime: (iso) => told(both, iso),
    list: (items) => list.format(items),
    either: (items) => choice.format(items),
    plural: (value) => plurals.select(value),
  };
}

function told(format: Intl.DateTimeFormat, iso: string): string {
  const at = new Date(iso);
  return Number.isNaN(at.getTime()) ? iso : format.format(at);
}

function decimalSignOf(tag: string): '.' | ',' {
  return new Intl.NumberFormat(tag).formatToParts(1.5).some(({ type, value }) => type === 'decimal' && value === ',') ? ',' : '.';
}
