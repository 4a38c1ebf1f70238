import type { Subject } from '../../shared/traveller/index.ts';
import type { StampedSlip } from '../../shared/wire/stamped-slip.ts';
import { words } from '../../shared/words/index.ts';

/** A thread as rows of text for a spreadsheet, RFC 4180. A field that a spreadsheet would take for a formula gets an apostrophe before it. */
export function travellerCsv(subject: Subject, slips: readonly StampedSlip[], names: Readonly<Record<string, string>>): string {
  const speak = words('en', 'UTC');
  const head = ['version', 'at', 'badge', 'name', 'bench', 'type', 'sentence', 'body', 'hash'];
  const rows = slips.map((slip) => [
    String(slip.version), slip.at, slip.by, names[slip.by] ?? '', slip.bench, slip.body.type, speak.slipSentence(slip, { names, subject }), JSON.stringify(slip.body), slip.hash,
  ]);
  return [head, ...rows].map((row) => `${row.map(field).join(',')}\r\n`).join('');
}

function field(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
