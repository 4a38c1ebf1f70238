import type { GaugeState, Subject } from '../known.ts';
import type { Pen } from '../pen.ts';
import { refuse } from '../pen.ts';
import { callLooks } from './call-looks.ts';
import { gateOf, takenAt, waited } from './decide-gate.ts';
import { judgedLimits, within } from './judge.ts';
import { gaugeUsed, requireAsShown } from './read-value.ts';
import type { GateSlip } from './slips.ts';
import { tellDrift } from './tell-drift.ts';
import type { CharacteristicWork, GateRecord } from './work.ts';

type Feed = NonNullable<Extract<GateSlip, { type: 'weightsTaken' }>['feed']>;
/** A block of weights as it comes, from a person or a press. */
export interface Block { readonly fromPiece: number; readonly values: readonly number[]; readonly gauge: GaugeState | null; readonly feed?: Feed }

/** Takes a block of weights of every piece, and tells what it shows: drift, and looks that fall due or were missed. */
export function weigh(pen: Pen, subject: Subject, gate: GateRecord, work: CharacteristicWork, { fromPiece, values, gauge, feed }: Block): void {
  const { characteristic } = work.demand;
  if (work.demand.basis.by !== 'everyPiece' || characteristic.kind !== 'measured') return refuse({ code: 'wrongKindOfEntry', characteristic: characteristic.name, wanted: 'singleReadings', unit: '' });
  const expectedFrom = (work.weights?.running.n ?? 0) + 1;
  if (fromPiece !== expectedFrom || values.length === 0 || expectedFrom + values.length - 1 > gate.lotSize) refuse({ code: 'weightsOutOfOrder', expectedFrom, gotFrom: fromPiece, lotSize: gate.lotSize });
  const used = gaugeUsed(characteristic, gauge, takenAt(pen));
  const impossible = values.find((value) => !Number.isFinite(value) || value <= 0);
  if (impossible !== undefined) refuse({ code: 'valueImpossible', characteristic: characteristic.name, value: impossible, why: 'notFinite', detail: '' });
  for (const value of values) {
    if (gauge !== null && (value < gauge.card.least || value > gauge.card.most)) refuse({ code: 'valueImpossible', characteristic: characteristic.name, value, why: 'outsideGauge', detail: `${gauge.card.least} … ${gauge.card.most} ${gauge.card.unit}` });
    requireAsShown(characteristic.name, value, gauge);
  }
  const limits = judgedLimits(characteristic, used?.expandedUncertainty ?? 0);
  pen.write(subject.stream, {
    type: 'weightsTaken', gate: gate.id, characteristic: characteristic.id, fromPiece, values,
    outside: values.filter((value) => !within(value, limits)).length, ...(used === undefined ? {} : { gauge: used }), ...waited(pen), ...(feed === undefined ? {} : { feed }),
  });
  const after = gateOf(pen.subject(subject.stream), gate.id);
  const weighed = after.work.find(({ demand }) => demand.characteristic.id === characteristic.id);
  if (weighed !== undefined) tellDrift(pen, subject, gate, weighed);
  callLooks(pen, subject.stream, gate.id, feed !== undefined);
}
