import { planWritingWords as words } from '../../../shared/words/plan-writing.en.ts';
import { readNumber, showFigure, typedFigure } from '../../desk/show.ts';

export interface Choice { readonly value: string; readonly text: string; readonly hint?: string }
/** What a typed text makes of the thing it belongs to, or why it makes nothing. */
export type Put<T> = { readonly value: T } | { readonly fault: string };

/**
 * One line of a form over a piece of a plan: what it says now and what another text would make of it. Forms, lists of changes and tests
 * all go by these, so nothing can be edited that is not also listed as a change.
 */
export interface EditField<T> {
  /** Unlike all others of its form; stays the same while its text changes. */
  readonly key: string;
  readonly label: string;
  /** `tiles`: all choices in sight; `choice`: opens; `several`: any number of them, one a line; `lines`: a text of lines. */
  readonly kind: 'text' | 'number' | 'whole' | 'tiles' | 'choice' | 'several' | 'lines';
  readonly text: string;
  readonly choices?: readonly Choice[];
  readonly unit?: string;
  readonly hint?: string;
  readonly most?: number;
  readonly put: (text: string) => Put<T>;
}

interface NumberRange { readonly least?: number; readonly above?: number; readonly most?: number; readonly below?: number }
type More = Partial<Pick<EditField<unknown>, 'unit' | 'hint' | 'most'>>;

/** The same field of a larger thing. @param key goes before the field's own */
export function within<Part, Whole>(field: EditField<Part>, key: string, whole: (part: Part) => Whole): EditField<Whole> {
  return { ...field, key: `${key}${field.key}`, put: (text) => {
    const put = field.put(text);
    return 'fault' in put ? put : { value: whole(put.value) };
  } };
}

export function textField<T>(key: string, label: string, text: string, put: (text: string) => T, more: More & { readonly mayBeEmpty?: true } = {}): EditField<T> {
  const { mayBeEmpty, ...rest } = more;
  const most = rest.most ?? 80;
  return { key, label, kind: 'text', text, most, ...rest, put: (typed) => {
    const line = typed.trim();
    if (line === '' && mayBeEmpty !== true) return { fault: words.wrong.missing };
    return /\p{Cc}/u.test(line) ? { fault: words.wrong.line } : { value: put(line) };
  } };
}

export function numberField<T>(key: string, label: string, value: number, put: (value: number) => T, range: NumberRange = {}, more: More = {}): EditField<T> {
  return { key, label, kind: 'number', text: typedFigure(value), ...more, put: (text) => asNumber(text, range, put) };
}
export function wholeField<T>(key: string, label: string, value: number, put: (value: number) => T, { least, most }: { readonly least: number; readonly most: number }, more: More = {}): EditField<T> {
  return { key, label, kind: 'whole', text: typedFigure(value), ...more, put: (text) => {
    const typed = readNumber(text);
    return typed === null || !Number.isInteger(typed) || typed < least || typed > most ? { fault: words.wrong.whole(showFigure(least), showFigure(most)) } : { value: put(typed) };
  } };
}
/** A number that may be left out; an empty line means that it is not there. */
export function maybeNumberField<T>(key: string, label: string, value: number | null, put: (value: number | null) => T, range: NumberRange = {}, more: More = {}): EditField<T> {
  return { key, label, kind: 'number', text: value === null ? '' : typedFigure(value), ...more, put: (text) => (text.trim() === '' ? { value: put(null) } : asNumber<T>(text, range, put)) };
}
/** A fraction, told and typed as percent. */
export function riskField<T>(key: string, label: string, fraction: number, put: (fraction: number) => T): EditField<T> {
  return numberField(key, label, tidy(fraction * 100), (percent) => put(tidy(percent / 100)), { above: 0, below: 100 }, { unit: '%' });
}

export function choiceField<T>(key: string, label: string, kind: 'tiles' | 'choice', chosen: string, choices: readonly Choice[], put: (value: string) => T, more: More = {}): EditField<T> {
  return { key, label, kind, text: chosen, choices, ...more, put: (value) => (choices.some((each) => each.value === value) ? { value: put(value) } : { fault: words.wrong.missing }) };
}
export function yesNoField<T>(key: string, label: string, is: boolean, yes: string, no: string, put: (is: boolean) => T, more: More = {}): EditField<T> {
  return choiceField(key, label, 'tiles', is ? 'yes' : 'no', [{ value: 'no', text: no }, { value: 'yes', text: yes }], (value) => put(value === 'yes'), more);
}
/** Any of the choices; its text is their values, one a line. */
export function severalField<T>(key: string, label: string, chosen: readonly string[], choices: readonly Choice[], put: (values: readonly string[]) => T): EditField<T> {
  return { key, label, kind: 'several', text: chosen.join('\n'), choices, put: (text) => ({ value: put(choices.map(({ value }) => value).filter((value) => text.split('\n').includes(value))) }) };
}
/** A list written one a line. */
export function linesField<T>(key: string, label: string, lines: readonly string[], put: (lines: readonly string[]) => T, { least, most, ...more }: More & { readonly least: number; readonly most: number }): EditField<T> {
  return { key, label, kind: 'lines', text: lines.join('\n'), ...more, put: (text) => {
    const written = text.split('\n').map((line) => line.trim()).filter((line) => line !== '');
    if (written.length < least) return { fault: words.wrong.missing };
    const long = written.find((line) => line.length > most);
    return long === undefined ? { value: put(written) } : { fault: words.wrong.long(long, showFigure(most)) };
  } };
}

/** What stands in a field, as a list of changes writes it. */
export function fieldWritten({ kind, text, choices, unit }: Pick<EditField<unknown>, 'kind' | 'text' | 'choices' | 'unit'>): string {
  if (text.trim() === '') return words.none;
  const named = (value: string): string => choices?.find((each) => each.value === value)?.text ?? value;
  if (kind === 'several') return text.split('\n').map(named).join(', ');
  if (kind === 'lines') return text.split('\n').join(', ');
  if (kind === 'tiles' || kind === 'choice') return named(text);
  return unit === undefined ? text : `${text} ${unit}`;
}

/** Freed of the binary dust behind its twelfth digit. */
export function tidy(value: number): number {
  return Number(value.toPrecision(12));
}

function asNumber<T>(text: string, { least, above, most, below }: NumberRange, put: (value: number) => T): Put<T> {
  const value = readNumber(text);
  if (value === null) return { fault: words.wrong.number };
  if (least !== undefined && value < least) return { fault: words.wrong.least(showFigure(least)) };
  if (above !== undefined && value <= above) return { fault: words.wrong.above(showFigure(above)) };
  if (most !== undefined && value > most) return { fault: words.wrong.most(showFigure(most)) };
  if (below !== undefined && value >= below) return { fault: words.wrong.below(showFigure(below)) };
  return { value: put(value) };
}
