/** One line of a table for a spreadsheet, RFC 4180. A field that a spreadsheet would take for a formula gets an apostrophe before it; a negative number does not. */
export function csvLine(fields: readonly string[]): string {
  return `${fields.map(field).join(',')}\r\n`;
}

function field(text: string): string {
  const safe = /^[=+@\t\r]/.test(text) || (text.startsWith('-') && !/^-\d/.test(text)) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
