import type { GaugeCard, GaugeSpread, HeldForRecall } from './slips.ts';

/** A recall: the gauge was found out of tolerance, and what it read since its last good check is in doubt. */
export interface Recall {
  readonly id: string;
  readonly found: 'check' | 'calibration';
  readonly openedAt: string;
  readonly openedBy: string;
  /** Null where no good check is known: every reading is in doubt. */
  readonly since: string | null;
  readonly error: number;
  readonly allowedError: number;
  /** When a calibration found the gauge good again; absent while none has. */
  readonly liftedAt?: string;
  readonly held: readonly HeldForRecall[];
  readonly closed: null | { readonly at: string; readonly by: string; readonly reason: string };
}

/** A gauge: the fold of its thread. */
export interface GaugeState {
  readonly kind: 'gauge'; readonly stream: string; readonly version: number;
  readonly card: GaugeCard;
  /** Why it is out of use; null while in use. */
  readonly withdrawn: string | null;
  /** The recall that stopped it; null while nothing is known against it. A calibration that ends well lifts it. */
  readonly outOfTolerance: string | null;
  /** Each last day of use with the moment from which it held, the oldest first. */
  readonly dueDays: readonly { readonly from: string; readonly due: string }[];
  /** The last check or calibration that found it good. */
  readonly lastGood: null | { readonly at: string; readonly by: 'check' | 'calibration' };
  readonly recalls: readonly Recall[];
  /** Spread of readings that a study found, once it stands in the uncertainty; absent while none does. */
  readonly spread?: GaugeSpread;
}

/**
 * True when an error lies within what is allowed, both limits included. The difference of two decimals is taken to 12 digits, so that 10.002 −
 * 10 is 0.002.
 */
export function isWithinAllowed(error: number, allowedError: number): boolean {
  return Number(Math.abs(error).toPrecision(12)) <= allowedError;
}

/** Error of a check, shown less true, to 12 digits. */
export function errorFound(found: number, nominal: number): number {
  const scale = Math.max(Math.abs(found), Math.abs(nominal));
  if (scale === 0) return 0;
  const decimals = Math.max(0, Math.min(15, 11 - Math.floor(Math.log10(scale))));
  return Number((found - nominal).toFixed(decimals));
}

/** The last day of use that was in force at a moment; the first known one for a moment before it. */
export function dueAt({ card, dueDays }: Pick<GaugeState, 'card' | 'dueDays'>, at: string): string {
  return (dueDays.findLast(({ from }) => from <= at) ?? dueDays[0])?.due ?? card.calibrationDue;
}

/** The recall that puts a reading of this moment in doubt: taken after the last good check before it, and before a calibration found the gauge good again. Null where none does. */
export function doubtedBy({ recalls }: Pick<GaugeState, 'recalls'>, at: string): Recall | null {
  return recalls.find(({ since, liftedAt }) => (since === null || at >= since) && (liftedAt === undefined || at < liftedAt)) ?? null;
}
