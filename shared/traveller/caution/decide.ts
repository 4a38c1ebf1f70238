import type { Pen } from '../pen.ts';
import { refuse, requireFitId, requireReason } from '../pen.ts';
import type { InspectionPlan } from '../plan/gate-plan.ts';
import { isOurCaution } from '../plan/gate-plan.ts';
import { streamName } from '../stream.ts';
import type { CautionCommand, CautionShown } from './slips.ts';

/**
 * Takes the plant's words for a caution, or switches it off. It only reminds: that the site's rules come first is said by the tool under
 * every one and cannot be written away. A gate shows what stood when it was opened.
 */
export function decideCaution(pen: Pen, { type, caution, text, shown, reason }: CautionCommand): void {
  pen.requireRole(type);
  requireReason(type, reason);
  const own = !isOurCaution(caution);
  if (own) requireFitId('caution', caution);
  if (text === null ? own : text.trim() === '') refuse({ code: 'identifierUnfit', field: 'text', value: '', rule: 'notEmpty', detail: '' });
  const stream = streamName('caution', caution);
  const now = pen.state(stream);
  const before = now?.kind === 'caution' ? now : { text: null, shown: true, version: 0 };
  if (before.text === text && before.shown === shown && (before.version > 0 || !own)) refuse({ code: 'nothingChanged', what: caution });
  pen.write(stream, { type: 'cautionWritten', caution, text, shown, reason });
}

/** The cautions a gate shows from now on, in the plan's order, without those that are switched off. */
export function cautionsShown(pen: Pen, keys: readonly string[]): CautionShown[] {
  return keys.flatMap((caution) => {
    const state = pen.state(streamName('caution', caution));
    if (state?.kind !== 'caution') return [{ caution, cautionVersion: 0, text: null }];
    return state.shown ? [{ caution, cautionVersion: state.version, text: state.text }] : [];
  });
}

/** Refuses a plan that names a caution which is neither the tool's nor written by the plant. */
export function requireCautions(pen: Pen, plan: InspectionPlan): void {
  for (const { cautions } of plan.gates) for (const caution of cautions) {
    if (!isOurCaution(caution)) pen.find(streamName('caution', caution), 'caution', 'caution');
  }
}
