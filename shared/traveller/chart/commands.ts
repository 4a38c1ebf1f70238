import type { ChartBase } from '../../metrology/charts/index.ts';
import type { ChartCard } from './chart.ts';

interface OnChart { /** Stream of the characteristic's charts. */ readonly chart: string }
interface OfChart extends OnChart { readonly key: string; readonly reason: string }

/** A new chart, or other rules for one that is there. `lots` are subjects whose first verdicts are put on a characteristic that is not charted yet. */
export interface DefineChart extends OnChart { readonly type: 'defineChart'; readonly card: ChartCard; readonly lots: readonly string[] }
/** Signed. Limits from the points of `lots`, or as given where `lots` is empty. */
export interface FreezeChartLimits extends OfChart { readonly type: 'freezeChartLimits'; readonly lots: readonly string[]; readonly given: ChartBase | null }
/** Signed. Limits move with every lot again and nothing is signalled until others are frozen. */
export interface UnfreezeChartLimits extends OfChart { readonly type: 'unfreezeChartLimits' }
/** A cause was found and removed: sums and runs begin anew with the next lot. */
export interface RestartChart extends OfChart { readonly type: 'restartChart' }
export interface WithdrawChart extends OfChart { readonly type: 'withdrawChart' }
export type ChartCommand = DefineChart | FreezeChartLimits | UnfreezeChartLimits | RestartChart | WithdrawChart;
