/** Numbers and days as the page's language writes them. */
const locale = (): string => document.documentElement.lang || 'en';

/** A number with exactly this many decimals. */
export function showNumber(value: number, decimals: number): string {
  return new Intl.NumberFormat(locale(), { minimumFractionDigits: decimals, maximumFractionDigits: decimals }).format(value);
}
/** A number as it stands, up to six decimals: an AQL, a constant. */
export function showFigure(value: number): string {
  return new Intl.NumberFormat(locale(), { maximumFractionDigits: 6 }).format(value);
}
/** Day and minute of a moment, in the kiosk's own time. @param iso ISO 8601 */
export function showMoment(iso: string): string {
  return new Intl.DateTimeFormat(locale(), { dateStyle: 'medium', timeStyle: 'short' }).format(new Date(iso));
}
/** A day of the calendar. @param day YYYY-MM-DD */
export function showDay(day: string): string {
  return new Intl.DateTimeFormat(locale(), { dateStyle: 'medium', timeZone: 'UTC' }).format(new Date(`${day}T00:00:00Z`));
}
/** Reads a number as people here type it, with comma or point; null where it is none. */
export function readNumber(text: string): number | null {
  const plain = text.trim().replace(',', '.').replace('−', '-');
  return /^-?\d+(\.\d+)?$/.test(plain) ? Number(plain) : null;
}
