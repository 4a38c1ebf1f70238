import type { DriftState } from '../../metrology/drift/index.ts';
import type { Running } from '../../metrology/summary/index.ts';
import type { CautionShown } from '../caution/slips.ts';
import type { RestsOnLog } from '../charge/require-log.ts';
import type { FindingClass } from '../plan/characteristic.ts';
import type { GatePlan } from '../plan/gate-plan.ts';
import type { SubjectKind } from '../stream.ts';
import type { Demand } from './demand.ts';
import type { GaugeUsed, ReadingInputs } from './slips.ts';
import type { CharacteristicResult, Verdict } from './verdict.ts';

export interface Reading { readonly ordinal: number; readonly value: number | string | boolean; readonly inputs: ReadingInputs | null; readonly gauge: GaugeUsed | null; readonly by: string; readonly at: string; /** Version of the slip. */ readonly slip: number; /** First entry, where it was corrected. */ readonly first: number | string | boolean | null; readonly log?: RestsOnLog; readonly despite?: string }
export interface Finding { readonly slip: number; readonly code: string; readonly class: FindingClass; readonly pieces: number; readonly ordinals: readonly number[]; readonly by: string; readonly withdrawn: boolean }
export interface Look { readonly look: number; readonly looked: number; readonly found: number; readonly code: string | null; readonly by: string; readonly at: string }
export interface Weights {
  readonly running: Running;
  readonly outside: number;
  readonly uncertainty: number;
  /** The last pieces, 60 at most. */
  readonly lastBlock: readonly number[];
  /** Null where drift is not watched for. */
  readonly drift?: DriftState | null;
  /** What of the drift was told so far. */
  readonly told?: DriftTold;
  /** Pieces whose weights a press's feed gave up for lost. */
  readonly missing?: number;
}
/** The alarm told last, whether a piece was foretold with it, and whether its end was told. */
export interface DriftTold { readonly alarm: number; readonly foretold: boolean; readonly ended: boolean }
/** How the looks of an interval fall due. */
export interface LookCalls {
  /** Pieces made so far, where the gate weighs every one; null where it does not. */
  readonly made: number | null;
  /** Piece and time at which the last look fell due by minutes or feed; 0 and the opening, or the first piece, before the first. */
  readonly lastPiece: number;
  readonly lastAt: string;
  /** What fell due, was told, and is not taken yet. */
  readonly due: null | { readonly look: number; readonly piece: number; readonly at: string };
  readonly missed: readonly { readonly look: number; readonly piece: number }[];
}

/** One sample given as done: pieces looked at in all until then, and the slip that says so. */
export interface SampleDone { readonly looked: number; readonly slip: number }

/** How far one characteristic of an open gate has come. Plain data: it travels as a snapshot. */
export interface CharacteristicWork {
  readonly demand: Demand;
  readonly readings: readonly Reading[];
  readonly findings: readonly Finding[];
  readonly looks: readonly Look[];
  readonly weights: Weights | null;
  /** Of an interval only. */
  readonly calls?: LookCalls;
  /** Samples given as done, in turn. */
  readonly samples: readonly SampleDone[];
  /** Pieces looked at in all, once nothing more is asked for. */
  readonly looked: number | null;
  /** Badges of all who entered anything here, in the order they came. */
  readonly workers: readonly string[];
}

/** `conceded` and `accepted` let the lot pass; `sorting` waits for the result of a sort; `waiting` has not begun (again). */
export type GateStatus = 'waiting' | 'open' | 'sorting' | 'accepted' | 'conceded' | 'rejected';

/** One gate of a subject's route and all that has come of it. */
export interface GateRecord {
  readonly id: string;
  readonly name: string;
  readonly workedOn: SubjectKind;
  readonly bench: string;
  readonly status: GateStatus;
  /** Attempts begun; 0 before the first. */
  readonly attempt: number;
  /** The next or present attempt is an original inspection. */
  readonly original: boolean;
  readonly plan: GatePlan | null;
  /** Cautions as they stood when it was opened; absent where it was opened before they were kept. */
  readonly cautions?: readonly CautionShown[];
  readonly lotSize: number;
  readonly seed: string | null;
  readonly work: readonly CharacteristicWork[];
  readonly verdicts: readonly VerdictRecord[];
  readonly sorted: readonly SortRecord[];
}
export interface VerdictRecord { readonly verdict: Verdict; readonly at: string; readonly by: string; readonly slip: number; /** Stream it was given on, where that is another subject. */ readonly from: string | null; /** Set when it replaces the one before it after a correction. */ readonly revises: string | null }
export interface SortRecord { readonly looked: number; readonly removed: number; readonly at: string; readonly by: string }
/** The verdict in force at a gate; null before the first. */
export function verdictOf(gate: GateRecord): VerdictRecord | null {
  return gate.verdicts.at(-1) ?? null;
}
/** True when the gate lets its subject pass. */
export function isPassed(gate: GateRecord): boolean {
  return gate.status === 'accepted' || gate.status === 'conceded';
}
export type { CharacteristicResult };
