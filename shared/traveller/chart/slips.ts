import type { ChartBase, ChartRule, LineName, SignalSide } from '../../metrology/charts/index.ts';
import type { Signature } from '../stamp.ts';
import type { ChartCard, ChartedThing, PointValue } from './chart.ts';

/** A rule of a chart has spoken. It stands on the chart's thread and on that of the lot that completed the pattern. */
export interface ChartSignalled {
  readonly type: 'chartSignalled'; readonly chart: string; readonly about: ChartedThing; readonly key: string; readonly rule: ChartRule; readonly line: LineName; readonly side: SignalSide;
  readonly subject: string;
  /** Streams of the lots the rule looked at, the oldest first. */
  readonly lots: readonly string[];
}

/** What happens to the charts of one characteristic. */
export type ChartSlip =
  /** `about` stands on the first slip of the stream and is the same on later ones. */
  | { readonly type: 'chartDefined'; readonly key: string; readonly card: ChartCard; readonly about: ChartedThing }
  | { readonly type: 'chartPointAdded'; readonly subject: string; readonly judgedAt: string; readonly value: PointValue }
  | { readonly type: 'chartPointRevised'; readonly subject: string; readonly value: PointValue; readonly why: string }
  | { readonly type: 'chartLimitsFrozen'; readonly key: string; readonly base: ChartBase; /** Empty where the limits were given. */ readonly lots: readonly string[]; readonly reason: string; readonly signature: Signature }
  | { readonly type: 'chartLimitsUnfrozen'; readonly key: string; readonly reason: string; readonly signature: Signature }
  | { readonly type: 'chartRestarted'; readonly key: string; readonly reason: string }
  | { readonly type: 'chartWithdrawn'; readonly key: string; readonly reason: string }
  | ChartSignalled;
