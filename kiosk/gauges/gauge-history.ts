import type { GaugeSlip, Slip } from '../../shared/traveller/index.ts';
import { errorFound, isWithinAllowed } from '../../shared/traveller/index.ts';

/** One line of a gauge's history: a calibration, a check, or what else befell it. */
export interface GaugeEvent {
  readonly version: number;
  readonly at: string;
  readonly by: string;
  readonly what: 'registered' | 'calibration' | 'check' | 'recall' | 'other';
  /** Certificate, master, or a reason. */
  readonly against: string;
  readonly found: number | null;
  readonly error: number | null;
  readonly allowed: number | null;
  /** Null where nothing was judged. */
  readonly good: boolean | null;
}

/** The history of a gauge out of its thread, the newest first. */
export function gaugeHistory(slips: readonly Slip<GaugeSlip>[]): readonly GaugeEvent[] {
  return slips.map(eventOf).reverse();
}

function eventOf({ version, at, by, body }: Slip<GaugeSlip>): GaugeEvent {
  const base = { version, at, by, against: '', found: null, error: null, allowed: null, good: null };
  switch (body.type) {
    case 'gaugeRegistered': return { ...base, what: 'registered', against: body.gauge.certificate ?? '' };
    case 'gaugeCalibrated': {
      const { asFound, certificate } = body;
      return { ...base, what: 'calibration', against: certificate, error: asFound?.error ?? null, allowed: asFound?.allowedError ?? null, good: asFound === undefined || isWithinAllowed(asFound.error, asFound.allowedError) };
    }
    case 'gaugeChecked': return { ...base, what: 'check', against: body.master, found: body.found, error: errorFound(body.found, body.nominal), allowed: body.allowedError, good: body.passed };
    case 'recallOpened': return { ...base, what: 'recall', against: body.recall, error: body.error, allowed: body.allowedError, good: false };
    case 'recallHeld': case 'recallClosed': return { ...base, what: 'recall', against: `${body.recall}: ${body.reason}` };
    case 'gaugeWithdrawn': return { ...base, what: 'other', against: body.reason, good: false };
    default: return { ...base, what: 'other' };
  }
}
