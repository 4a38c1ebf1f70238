import type { SwitchingSeverity } from './slips.ts';

/**
 * The severity a lot is inspected under when its stream stands at this one. A lot inspected again is never on reduced (ISO 2859-1 7.4, from
 * memory), and goes on tightened where first inspections are discontinued: only they wait for somebody to resume them.
 */
export function severityFor(severity: SwitchingSeverity, original: boolean): SwitchingSeverity {
  if (original) return severity;
  return severity === 'reduced' ? 'normal' : severity === 'discontinued' ? 'tightened' : severity;
}
