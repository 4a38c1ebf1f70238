import type { Subject } from '../known.ts';
import { refuse } from '../pen.ts';
import type { Characteristic } from '../plan/characteristic.ts';

/** The log a confirmation rests on: which file, and what the check of it found. */
export interface RestsOnLog { readonly attachment: string; readonly within: boolean; readonly findings: number }

/**
 * The log behind a confirmation that the plan backs with one; undefined for any other characteristic, and where no log is attached. A `yes` that
 * the log does not bear out, or that has no log, is refused unless a reason is stated.
 */
export function logBehind(subject: Subject, characteristic: Characteristic, value: number | string | boolean, reason: string): RestsOnLog | undefined {
  if (characteristic.kind !== 'confirmed' || characteristic.backedBy !== 'furnaceLog' || subject.kind !== 'furnace') return undefined;
  const last = subject.logs.at(-1);
  const findings = last === undefined ? null : last.check.findings.length + last.check.more;
  if (value === true && last?.check.within !== true && reason.trim() === '') refuse({ code: 'logSaysOtherwise', characteristic: characteristic.name, findings });
  return last === undefined ? undefined : { attachment: last.attachment, within: last.check.within, findings: findings ?? 0 };
}
