/**
 * A table as CSV: one line a row, fields in quotation marks where they need them.
 * @see RFC 4180
 */
export function csvOf(rows: readonly (readonly string[])[]): string {
  return rows.map((row) => row.map(fieldOf).join(',')).join('\r\n') + '\r\n';
}

// A field that a spreadsheet would take for a formula is kept a text.
function fieldOf(text: string): string {
  const safe = /^[=+@\t\r]/.test(text) || /^-(?!\d)/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Hands a table to the person as a file. */
export function saveCsv(name: string, rows: readonly (readonly string[])[]): void {
  // The mark at the beginning tells spreadsheets that it is UTF-8.
  saveFile(`${name}.csv`, new Blob(['\ufeff', csvOf(rows)], { type: 'text/csv;charset=utf-8' }));
}

/** Hands bytes to the person as a file. */
export function saveFile(name: string, bytes: Blob): void {
  const address = URL.createObjectURL(bytes);
  const anchor = document.createElement('a');
  anchor.href = address;
  anchor.download = name;
  anchor.click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
