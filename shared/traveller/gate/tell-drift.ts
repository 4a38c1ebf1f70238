import { predictCrossing } from '../../metrology/drift/index.ts';
import type { Subject } from '../known.ts';
import type { Pen } from '../pen.ts';
import { nextHold } from './give-verdict.ts';
import { judgedLimits } from './judge.ts';
import type { CharacteristicWork, DriftTold } from './work.ts';

const nothingTold: DriftTold = { alarm: 0, foretold: false, ended: true };

/** Tells what a block of weights has shown: a new drift, the piece it leads to as soon as that can be foretold, and its end. A plan may have it hold the subject, once an alarm. */
export function tellDrift(pen: Pen, subject: Subject, gate: { readonly id: string; readonly name: string }, work: CharacteristicWork): void {
  const { basis, characteristic } = work.demand;
  const weights = work.weights;
  if (basis.by !== 'everyPiece' || basis.drift === undefined || characteristic.kind !== 'measured' || weights === null) return;
  const { drift: state = null, told = nothingTold } = weights;
  const alarm = state?.alarm ?? null;
  if (state === null || alarm === null) return;
  const at = { gate: gate.id, characteristic: characteristic.id, alarm: state.alarms };
  const isNew = told.alarm < state.alarms;
  const limits = judgedLimits(characteristic, weights.uncertainty);
  const limit = alarm.side === 'above' ? limits.acceptUpper : limits.acceptLower;
  const predicted = limit === null ? null : predictCrossing(basis.drift, state, limit);
  if (isNew || (!told.foretold && predicted !== null)) pen.write(subject.stream, { type: 'driftAnnounced', ...at, side: alarm.side, piece: alarm.at, mean: state.ewma, target: basis.drift.target, limit, predicted });
  if (alarm.ended !== null && (isNew || !told.ended)) pen.write(subject.stream, { type: 'driftEnded', ...at, piece: alarm.ended });
  if (isNew && basis.drift.holds) pen.write(subject.stream, { type: 'held', hold: nextHold(pen.subject(subject.stream)), cause: { by: 'drift', gate: gate.id, characteristic: characteristic.id }, reason: characteristic.name });
}
