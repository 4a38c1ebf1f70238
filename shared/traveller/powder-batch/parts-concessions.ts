import type { Batch } from './batch.ts';
import { ancestorsOf, blendsOf } from './lineage.ts';
import { isPassed } from '../gate/work.ts';
import type { Concession, Lot } from '../lot/lot.ts';
import type { Pen } from '../pen.ts';
import type { Signature } from '../stamp.ts';

/** Concessions on which a gate of the subject stands now; an earlier one that a new test has overtaken is left out. */
export function concessionsInForce({ gates, concessions }: Pick<Batch, 'gates' | 'concessions'>): readonly Concession[] {
  return concessions.filter(({ gate: at }) => gates.some(({ id, status }) => id === at && status === 'conceded'));
}

export function takeConcessionAlong(pen: Pen, stream: string, { gate, from, statement, signature }: { readonly gate: string; readonly from: string; readonly statement: string; readonly signature: Signature }): void {
  pen.write(stream, { type: 'gateReopened', gate, from, disposition: 'concession', statement, hold: null, signature });
}

/** A concession on a part of a blend is one on the blend: it goes to this lot, where its powder gates have passed. What the lot has already is not written again. */
export function takePartsConcessions(pen: Pen, { id: lot, stream, batch, gates: before }: Lot): void {
  const powderGates = before.filter((gate) => gate.workedOn === 'batch' && isPassed(gate));
  for (const part of ancestorsOf(pen, pen.batch(batch))) for (const { statement, signature } of concessionsInForce(part)) {
    for (const { id: gate } of powderGates) {
      const { gates, concessions } = pen.lot(lot);
      const has = concessions.some((each) => each.gate === gate && each.from === part.stream && each.statement === statement && each.signature.at === signature.at);
      if (!has || gates.find(({ id }) => id === gate)?.status !== 'conceded') takeConcessionAlong(pen, stream, { gate, from: part.stream, statement, signature });
    }
  }
}

/** The lots of every blend that some of this powder went into, and that have not left the route. */
export function lotsOfBlends(pen: Pen, batch: Batch): readonly Lot[] {
  return blendsOf(pen, batch).flatMap(({ lots }) => lots.map((id) => pen.lot(id))).filter(({ ended }) => ended === null);
}
