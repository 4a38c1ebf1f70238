/** What a recorder wrote about one run of a furnace, column by column; every column is as long as `atMin`. */
export interface FurnaceLog {
  /** Minutes since the first row, in the order of the file: they may stand still or run backwards. */
  readonly atMin: readonly number[];
  readonly temperatureC: readonly number[];
  /** Null where the file has no such column; null within it where a cell is empty. */
  readonly pressureMbar: readonly (number | null)[] | null;
  readonly gas: readonly string[] | null;
  /** The first row's time as written, where times are dates; null where they count from the start. */
  readonly startedAt: string | null;
}

export type LogColumn = 'time' | 'temperature' | 'pressure' | 'gas';
export type LogFaultCode =
  | 'empty' | 'tooLong' | 'tooManyRows' | 'noRows'
  /** A head that is none of ours, one that stands twice, or one that must be there and is not. */
  | 'headUnknown' | 'headTwice' | 'headMissing' | 'unitUnknown'
  | 'columnCount' | 'notATime' | 'otherTime' | 'notANumber' | 'otherDecimals' | 'belowAbsoluteZero' | 'negativePressure';
/** Why a file is no furnace log, and where. `line` and `column` count from 1; column 0 is the line as a whole. */
export interface LogFault { readonly code: LogFaultCode; readonly line: number; readonly column: number; readonly found: string; readonly expected: string }

/** A stretch in which the temperature climbs (`heat`) or falls (`cool`) to `toC`; rates in °C a minute, as sizes, null where not limited. */
export interface RampSegment { readonly kind: 'heat' | 'cool'; readonly name: string; readonly toC: number; readonly leastRateCPerMin: number | null; readonly mostRateCPerMin: number | null }
/** A stage in which the temperature stays between two limits, these included, and, where asked for, the pressure too for a time. */
export interface SoakSegment {
  readonly kind: 'soak'; readonly name: string; readonly lowerC: number; readonly upperC: number; readonly leastMin: number; readonly mostMin: number | null;
  readonly pressure: null | { readonly lowerMbar: number; readonly upperMbar: number; readonly leastMin: number };
}
export type ProgrammeSegment = RampSegment | SoakSegment;
/** The limits a furnace programme's log is held against. */
export interface ProgrammeLimits {
  readonly segments: readonly ProgrammeSegment[];
  /** A rate is taken over this many minutes at least, so that one step of the recorder is no rate. */
  readonly rateOverMin: number;
  /** Longest time without a row that is no gap, minutes. */
  readonly largestGapMin: number;
}

/**
 * What a log shows outside the limits. Value and limit are °C (`tooHot`, `tooCold`, `notReached`, `startsLate`), °C a minute (`tooFast`, `tooSlow`),
 * minutes (`soakShort`, `soakLong`, `pressureShort`, `gap`, `backwards`), mbar (`pressureHigh`, `pressureLow`), or a number of rows (`repeated`, `contradicting`).
 */
export type LogFindingKind =
  | 'tooHot' | 'tooCold' | 'tooFast' | 'tooSlow' | 'soakShort' | 'soakLong' | 'pressureHigh' | 'pressureLow' | 'pressureShort' | 'pressureMissing'
  | 'notReached' | 'startsLate' | 'gap' | 'backwards' | 'repeated' | 'contradicting';
export interface LogFinding {
  readonly kind: LogFindingKind;
  /** Name of the segment; null for what is about the log as a whole. */
  readonly segment: string | null;
  readonly fromMin: number;
  /** When it was over: the first row within the limits again, or the last row there is. */
  readonly toMin: number;
  readonly value: number;
  readonly limit: number | null;
}
/** How one segment of the programme went; times are null where it was never begun. */
export interface SegmentOutcome {
  readonly name: string;
  readonly kind: ProgrammeSegment['kind'];
  readonly fromMin: number | null;
  readonly toMin: number | null;
  /** Of a soak: minutes within its temperature window. */
  readonly minutesWithin: number | null;
  readonly leastC: number | null;
  readonly mostC: number | null;
}
export interface LogCheck {
  readonly within: boolean;
  readonly findings: readonly LogFinding[];
  /** Findings beyond the `MOST_FINDINGS` kept. */
  readonly more: number;
  readonly segments: readonly SegmentOutcome[];
}

/** The curve as a slip keeps it: one place for each of at most `MOST_BUCKETS` equal stretches of time that has rows, with the least and the greatest value met in it. */
export interface ReducedLog {
  /** When the stretch's first row was, minutes. */
  readonly atMin: readonly number[];
  readonly leastC: readonly number[];
  readonly mostC: readonly number[];
  readonly leastMbar: readonly (number | null)[] | null;
  readonly mostMbar: readonly (number | null)[] | null;
}
