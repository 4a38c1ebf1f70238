import type { Subject } from '../known.ts';
import type { CharacteristicResult, Verdict } from '../gate/verdict.ts';
import type { GateRecord } from '../gate/work.ts';
import { streamName } from '../stream.ts';
import type { PointValue } from './chart.ts';
import { MOST_VALUES_KEPT } from './chart.ts';

/** Whose characteristic it is: the product of a lot, the grade of a batch or furnace charge, the coating of a coating charge. */
export function chartOwner(subject: Subject): { readonly id: string; readonly name: string } {
  switch (subject.kind) {
    case 'lot': return { id: subject.product.id, name: subject.product.designation };
    case 'batch': return subject.grade;
    case 'furnace': case 'coating': return subject.specification;
  }
}

/** Stream of the charts of one characteristic, e.g. `chart:lot/P-1/grinding/ic`. */
export function chartStream(subjectKind: Subject['kind'], owner: string, gate: string, characteristic: string): string {
  return streamName('chart', [subjectKind, owner, gate, characteristic].join('/'));
}

/** What a verdict on one characteristic puts on its charts; null for what is not measured or counted, and for a lot that was passed over. */
export function pointOf(gate: GateRecord, verdict: Verdict, { characteristic, detail }: CharacteristicResult): PointValue | null {
  switch (detail.by) {
    case 'variables': case 'limits': case 'everyPiece': {
      const { n, mean, s, min, max } = detail.summary;
      return { by: 'measured', n, mean, s, min, max, outside: detail.outside, lower: detail.limits.lower, upper: detail.limits.upper, values: readingsOf(gate, verdict, characteristic) };
    }
    case 'attributes': {
      const classes = detail.classes.map(({ class: each, plan, found, decided }) => ({ class: each, of: decided?.at ?? plan.sampleSize, count: found }));
      const of = Math.max(0, ...classes.map((each) => each.of));
      return of === 0 ? null : { by: 'counted', of, count: classes.reduce((sum, { count }) => sum + count, 0), classes };
    }
    case 'interval': return detail.looked === 0 ? null : { by: 'counted', of: detail.looked, count: detail.found, classes: [] };
    case 'skipped': case 'grade': case 'once': return null;
  }
}

/** The readings of that very attempt; a later attempt has taken their place. */
function readingsOf(gate: GateRecord, { attempt }: Verdict, characteristic: string): readonly number[] | null {
  const readings = gate.attempt === attempt ? gate.work.find(({ demand }) => demand.characteristic.id === characteristic)?.readings ?? [] : [];
  if (readings.length === 0 || readings.length > MOST_VALUES_KEPT) return null;
  return [...readings].sort((one, other) => one.ordinal - other.ordinal).flatMap(({ value }) => (typeof value === 'number' ? [value] : []));
}
