import type { GaugeLine } from '../../metrology/gauge-line/index.ts';
import type { Signature } from '../stamp.ts';

/** A gauge of the plant's register. Fields that may be absent came later; absent, they are as said beside them. */
export interface GaugeCard {
  readonly id: string; readonly name: string; readonly gaugeKind: string; readonly unit: string;
  /** The smallest step it shows, in its unit; a reading is a whole number of such steps. */
  readonly resolution: number;
  /** Expanded uncertainty U, in its unit. */
  readonly expandedUncertainty: number;
  /** Coverage factor k of U; 2 where absent. */
  readonly coverageFactor?: number;
  readonly least: number; readonly most: number;
  /** YYYY-MM-DD; the last day on which it may be used. */
  readonly calibrationDue: string;
  /** Months from one calibration to the next; unsaid where absent. */
  readonly intervalMonths?: number;
  /** The bench it belongs to. */
  readonly bench: string | null;
  /** Other benches where it is used; none where absent. */
  readonly benches?: readonly string[];
  /** Number of the calibration certificate in force; unsaid where absent. */
  readonly certificate?: string;
  /** Largest error a check against a master may find, in its unit; each check says its own where absent. */
  readonly allowedError?: number;
  /** How the line it sends over a serial port is read; the first number where absent. */
  readonly line?: GaugeLine;
}

/** What a calibration found before anything was adjusted, in the gauge's unit: shown less true. */
export interface AsFound { readonly error: number; readonly allowedError: number }
/** A subject put on hold for a recall. */
export interface HeldForRecall { readonly subject: string; readonly hold: string }

/** What a gauge study adds to a gauge's uncertainty. `s`, the standard deviation of the gauge by the study, and the calibration's own U, both in the gauge's unit. */
export interface GaugeSpread { readonly study: string; readonly s: number; readonly calibrationUncertainty: number }

export type GaugeSlip =
  | { readonly type: 'gaugeRegistered'; readonly gauge: GaugeCard }
  | { readonly type: 'gaugeCalibrated'; readonly calibrationDue: string; readonly expandedUncertainty: number; readonly certificate: string; readonly coverageFactor?: number; /** Absent where the certificate says nothing of it. */ readonly asFound?: AsFound }
  | { readonly type: 'gaugeChecked'; readonly master: string; /** True value of the master and what the gauge showed, in its unit. */ readonly nominal: number; readonly found: number; readonly allowedError: number; readonly passed: boolean }
  | { readonly type: 'gaugeLineChanged'; readonly line: GaugeLine }
  /** Found out of tolerance: nothing it has read since its last good check can be relied on. */
  | { readonly type: 'recallOpened'; readonly recall: string; readonly found: 'check' | 'calibration'; /** Moment of the last good check or calibration; null where none is known, so that every reading is in doubt. */ readonly since: string | null; readonly error: number; readonly allowedError: number }
  | { readonly type: 'recallHeld'; readonly recall: string; readonly held: readonly HeldForRecall[]; readonly reason: string; readonly signature: Signature }
  | { readonly type: 'recallClosed'; readonly recall: string; readonly reason: string; readonly signature: Signature }
  /** The spread of a closed study joins the calibration's uncertainty, with the coverage factor of that. The signature is null where a new calibration carries an earlier study on. */
  | ({ readonly type: 'gaugeUncertaintySet'; readonly expandedUncertainty: number; readonly signature: Signature | null } & GaugeSpread)
  | { readonly type: 'gaugeWithdrawn'; readonly reason: string };
