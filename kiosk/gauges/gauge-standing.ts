import type { GaugeCard } from '../../shared/traveller/index.ts';
import type { StateName } from '../parts/state-name.ts';

/** A gauge as the catalogue lists it; `withdrawn` holds the reason. */
export type GaugeRow = GaugeCard & { readonly withdrawn: string | null; readonly outOfTolerance: string | null; readonly lastGoodAt: string | null; readonly openRecalls: number };
export type GaugeStanding = 'fit' | 'dueSoon' | 'overdue' | 'withdrawn' | 'outOfTolerance';

/** A calibration is announced so many days before it falls due (common practice, no source). */
const announcedDays = 30;

/**
 * How a gauge stands on a day. The last day before calibration still counts.
 * @param today YYYY-MM-DD
 */
export function gaugeStanding({ withdrawn, outOfTolerance, calibrationDue }: Pick<GaugeRow, 'withdrawn' | 'outOfTolerance' | 'calibrationDue'>, today: string): GaugeStanding {
  if (withdrawn !== null) return 'withdrawn';
  if (outOfTolerance !== null) return 'outOfTolerance';
  if (calibrationDue < today) return 'overdue';
  const soon = new Date(Date.parse(`${today}T00:00:00Z`) + announcedDays * 86_400_000).toISOString().slice(0, 10);
  return calibrationDue <= soon ? 'dueSoon' : 'fit';
}

export const markOfGauge: Readonly<Record<GaugeStanding, StateName>> = { fit: 'accepted', dueSoon: 'due', overdue: 'overdue', withdrawn: 'locked', outOfTolerance: 'recalled' };
/** The day it is, as the journal counts days. */
export function today(): string {
  return new Date().toISOString().slice(0, 10);
}
/** Where it is used, its own bench first. */
export function benchesOf({ bench, benches = [] }: GaugeCard): string {
  const all = [...(bench === null ? [] : [bench]), ...benches];
  return all.length === 0 ? '–' : all.join(', ');
}
