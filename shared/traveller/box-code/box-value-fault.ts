import { boxFieldOf, type BoxIdentifier, type BoxValueFault } from './box-code-fields.ts';

/**
 * What is wrong with a value as it stands in the code (a day as `YYYYMMDD`), or null.
 * @see docs/label.md: upper-case letters, digits and dash only (common practice, no source); forms of the identifiers, ANSI MH10.8.2
 */
export function boxValueFault(identifier: BoxIdentifier, value: string): BoxValueFault | null {
  const { most } = boxFieldOf[identifier];
  if (value === '') return { code: 'emptyValue', identifier };
  if (identifier === 'Q') {
    return value.length <= most && /^[1-9][0-9]*$/.test(value) ? null : { code: 'quantityNotWhole', value };
  }
  if (identifier === '9D' || identifier === '16D') return isDay(value) ? null : { code: 'noSuchDay', identifier, value };
  if (identifier === '4L') return /^[A-Z]{2}$/.test(value) ? null : { code: 'countryNotTwoLetters', value };
  const stranger = /[^A-Z0-9-]/u.exec(value)?.[0];
  if (stranger !== undefined) return { code: 'characterNotAllowed', identifier, character: stranger };
  return value.length <= most ? null : { code: 'valueTooLong', identifier, most, length: value.length };
}

/** Is `YYYYMMDD` a day of the Gregorian calendar, year 1000 … 9999? */
function isDay(value: string): boolean {
  const [, year, month, day] = (/^([1-9]\d{3})(\d{2})(\d{2})$/.exec(value) ?? []).map(Number);
  if (year === undefined || month === undefined || day === undefined || month < 1 || month > 12 || day < 1) return false;
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = [31, isLeap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1];
  return days !== undefined && day <= days;
}
