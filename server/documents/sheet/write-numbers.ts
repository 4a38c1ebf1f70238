const formats = new Map<string, Intl.NumberFormat>();

/** A number with so many decimals, its decimal sign the language's; never grouped, so that it reads the same everywhere. */
export function writeNumber(value: number, decimals: number, language: string): string {
  const name = `${language} ${decimals}`;
  const format = formats.get(name) ?? new Intl.NumberFormat(language, { minimumFractionDigits: decimals, maximumFractionDigits: decimals, useGrouping: false });
  formats.set(name, format);
  return format.format(value);
}

/** `2026-11-12T14:05:09+01:00` as `2026-11-12 14:05 +01:00`: the clock of the place, its zone beside it. */
export function writeMoment(iso: string): string {
  const zone = /(Z|[+-]\d{2}:\d{2})$/.exec(iso)?.[0] ?? '';
  return `${iso.slice(0, 10)} ${iso.slice(11, 16)} ${zone === 'Z' ? 'UTC' : zone}`;
}
