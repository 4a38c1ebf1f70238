/** A figure as it is typed: text in the locale's notation, and what each key does to it. Nothing is rounded, dropped or judged. */
export interface FigureRules {
  /** The decimal sign shown, `,` or `.`. */
  readonly decimalSign: string;
  /** No decimal sign may be typed. */
  readonly whole: boolean;
  /** A minus sign may be typed. */
  readonly signed: boolean;
  /** Most characters shown, sign and decimal sign included. */
  readonly maxLength: number;
}

/** The decimal sign a locale writes, `,` or `.`. */
export function decimalSignOf(locale: string): string {
  const part = new Intl.NumberFormat(locale).formatToParts(1.5).find(({ type }) => type === 'decimal');
  return part === undefined ? '.' : part.value;
}

/** Whether a typed character belongs to a figure: a digit, either decimal sign (gauges type their own), or minus. */
export function isFigureCharacter(character: string): boolean {
  return /^[0-9.,-]$/.test(character);
}

/**
 * The figure after one more character. A character that cannot stand there (a second decimal sign, a letter, one too many) changes nothing.
 * @param text the figure so far
 * @param character a digit, `.` or `,` (both mean the decimal sign) or `-` (only in front)
 */
export function figureWith(text: string, character: string, rules: FigureRules): string {
  if (text.length >= rules.maxLength) return text;
  if (/^[0-9]$/.test(character)) return text + character;
  if (character === '-') return rules.signed && text === '' ? '-' : text;
  if (character !== '.' && character !== ',') return text;
  return rules.whole || text.includes(rules.decimalSign) ? text : text + rules.decimalSign;
}

/** The figure with its sign turned round. */
export function figureTurned(text: string): string {
  return text.startsWith('-') ? text.slice(1) : `-${text}`;
}

/**
 * The figure in plain notation, with a point and a leading digit, for a rule to judge.
 * @returns for example `"-0.5"` for `"-,5"`; `null` when no digit was typed
 */
export function plainFigure(text: string): string | null {
  const match = /^(-?)([0-9]*)(?:[.,]([0-9]*))?$/.exec(text);
  if (match === null) return null;
  const [, sign = '', whole = '', decimals = ''] = match;
  if (whole === '' && decimals === '') return null;
  return `${sign}${whole === '' ? '0' : whole}${decimals === '' ? '' : `.${decimals}`}`;
}
