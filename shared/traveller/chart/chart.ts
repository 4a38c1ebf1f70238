import type { ChartBase, ChartRule, ChartSpec, LineName, SignalSide } from '../../metrology/charts/index.ts';
import type { FindingClass } from '../plan/characteristic.ts';
import type { Signature } from '../stamp.ts';
import type { SubjectKind } from '../stream.ts';

/** What is charted: a characteristic of a gate, as the plan in force had it when the first chart was defined. */
export interface ChartedThing {
  readonly subjectKind: SubjectKind;
  /** Product of lots, grade of batches and furnace charges, coating of coating charges. */
  readonly owner: string;
  readonly ownerName: string;
  readonly gate: string;
  readonly gateName: string;
  readonly characteristic: string;
  readonly characteristicName: string;
  /** null for counts. */
  readonly unit: string | null;
  readonly decimals: number;
}

/** A lot's measured values, summed up; limits are the specification's as they were for this lot. */
export interface MeasuredValue {
  readonly by: 'measured'; readonly n: number; readonly mean: number; readonly s: number | null; readonly min: number; readonly max: number; readonly outside: number;
  readonly lower: number | null; readonly upper: number | null;
  /** The readings themselves where there are MOST_VALUES_KEPT at most; null for weights of every piece and for a re-inspected lot's first readings. */
  readonly values: readonly number[] | null;
}
export interface CountedValue { readonly by: 'counted'; readonly of: number; readonly count: number; readonly classes: readonly { readonly class: FindingClass; readonly of: number; readonly count: number }[] }
export type PointValue = MeasuredValue | CountedValue;
/** More readings of a lot than these are kept as their summary alone. */
export const MOST_VALUES_KEPT = 200;

/** One lot, batch or charge on the charts; `subject` is its stream, `judgedAt` when its first verdict fell. */
export interface ChartPoint { readonly subject: string; readonly judgedAt: string; readonly value: PointValue; /** A correction changed it. */ readonly revised: boolean }

/** One chart of the characteristic as an engineer wants it. */
export interface ChartCard { readonly spec: ChartSpec; readonly rules: readonly ChartRule[]; readonly mayHold: boolean; /** Charts of counts: the class counted, null for all together. */ readonly class: FindingClass | null }

/** Limits that stand until an engineer signs for others. `lots` are the streams they rest on; none where they were given. */
export interface FrozenLimits { readonly base: ChartBase; readonly lots: readonly string[]; readonly reason: string; readonly signature: Signature; readonly at: string }

/** A signal as it was posted. Lots are named by their streams, so that it reads the same whatever becomes of the chart. */
export interface PostedSignal { readonly key: string; readonly rule: ChartRule; readonly line: LineName; readonly side: SignalSide; readonly subject: string; readonly lots: readonly string[]; readonly at: string }

export interface ChartRecord {
  readonly key: string;
  readonly card: ChartCard;
  /** null while limits are provisional: then they move with every lot and nothing is signalled. */
  readonly frozen: FrozenLimits | null;
  /** Places where sums and runs begin anew, counted in points. */
  readonly starts: readonly number[];
  readonly signals: readonly PostedSignal[];
}

/** All charts of one characteristic: the fold of its stream. Points stand once and serve every chart. */
export interface ChartState {
  readonly kind: 'chart'; readonly stream: string; readonly version: number;
  readonly about: ChartedThing;
  readonly points: readonly ChartPoint[];
  readonly charts: readonly ChartRecord[];
}

/** What tells two charts of a characteristic apart: one a kind, and for counts one a kind and class. */
export function chartKey({ spec, class: each }: Pick<ChartCard, 'spec' | 'class'>): string {
  return each === null ? spec.kind : `${spec.kind}-${each}`;
}
