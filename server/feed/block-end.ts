import type { Lot, PressState } from '../../shared/traveller/index.ts';
import { nextLook } from '../../shared/traveller/index.ts';

/** Pieces of one block: a minute of a press at two a second. */
export const blockPieces = 120;

/** How many pieces the next block may have: it ends with the lot, and where a look falls due, so that the look is told on time. */
export function blockEnd(press: PressState, lot: Lot): { readonly room: number; readonly wanted: number } {
  const gate = lot.gates.find(({ id }) => id === press.running?.gate);
  const weighed = gate?.work.find(({ demand }) => demand.characteristic.id === press.running?.characteristic);
  if (gate === undefined || weighed === undefined) return { room: 0, wanted: 0 };
  const made = weighed.weights?.running.n ?? 0;
  const room = Math.max(0, gate.lotSize - made);
  const untilLook = gate.work.flatMap((work) => {
    const next = nextLook(work, gate.lotSize);
    return next === null || next.dueAt <= made ? [] : [next.dueAt - made];
  });
  return { room, wanted: Math.min(blockPieces, room, ...untilLook) };
}
