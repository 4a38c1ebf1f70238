import { decimalsOfStep } from '../../../shared/traveller/index.ts';
import type { Study } from '../../../shared/traveller/index.ts';

const COLUMNS = ['study', 'reading', 'part', 'reference', 'person', 'badge', 'trial', 'value', 'unit', 'corrected', 'at', 'bench'] as const;

/** The readings of a study that stand, one a line in the order taken, RFC 4180. Figures have the gauge's own decimals. */
export function studyCsv({ id, parts, people, gaugeThen, readings }: Study): string {
  const decimals = decimalsOfStep(gaugeThen.resolution);
  const rows = readings.map(({ reading, badge, part, trial, value, corrected, at, bench }) => {
    const { label = '', reference = null } = parts[part - 1] ?? {};
    return [id, reading, label, reference ?? '', people.find((person) => person.badge === badge)?.name ?? badge, badge, trial, value.toFixed(decimals), gaugeThen.unit, corrected ? 'yes' : 'no', at, bench];
  });
  return [[...COLUMNS], ...rows].map((row) => row.map(field).join(',')).join('\r\n');
}

function field(value: string | number): string {
  const text = String(value);
  // A label that begins like a formula stays text in a spreadsheet; a figure may begin with its sign.
  const safe = /^[=+\-@\t\r]/.test(text) && !/^-?\d+(\.\d+)?$/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
