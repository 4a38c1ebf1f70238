import type { Pen } from '../pen.ts';
import { gateOf } from './decide-gate.ts';
import { isDueByMinutes, isLookDue, missedBecause, nextLook } from './next-look.ts';
import type { CharacteristicWork } from './work.ts';

/** True when this characteristic's looks are told when they fall due, and missed when nobody comes: with minutes in the plan always, else where a press feeds the weights. */
export function looksAreCalled({ demand: { basis } }: CharacteristicWork, isFed: boolean): boolean {
  return basis.by === 'interval' && (isFed || basis.everyMinutes !== undefined || basis.graceMinutes !== undefined);
}

/** Writes down each look of an open gate that has fallen due by now, and each that was missed. */
export function callLooks(pen: Pen, stream: string, gateId: string, isFed: boolean): void {
  const { at } = pen.stamp;
  for (const { demand: { characteristic } } of gateOf(pen.subject(stream), gateId).work) {
    for (;;) {
      const gate = gateOf(pen.subject(stream), gateId);
      const work = gate.work.find((each) => each.demand.characteristic.id === characteristic.id);
      const next = work === undefined || !looksAreCalled(work, isFed) ? null : nextLook(work, gate.lotSize);
      if (work === undefined || next === null || next.made === null) break;
      const here = { gate: gateId, characteristic: characteristic.id, look: next.look };
      if (next.dueSince === null) {
        if (isLookDue(next)) pen.write(stream, { type: 'lookFellDue', ...here, by: 'pieces', piece: next.dueAt });
        else if (isDueByMinutes(work, next, at)) pen.write(stream, { type: 'lookFellDue', ...here, by: 'minutes', piece: next.made });
        else break;
      } else {
        const why = missedBecause(work, gate.lotSize, at);
        if (why === null) break;
        pen.write(stream, { type: 'lookMissed', ...here, piece: next.dueAt, why });
      }
    }
  }
}
