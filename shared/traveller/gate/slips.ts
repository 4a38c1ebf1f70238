import type { SaturationUnit } from '../../carbide/index.ts';
import type { CautionShown } from '../caution/slips.ts';
import type { ChartSignalled } from '../chart/slips.ts';
import type { Crossing, DriftSide } from '../../metrology/drift/index.ts';
import type { FindingClass } from '../plan/characteristic.ts';
import type { RestsOnLog } from '../charge/require-log.ts';
import type { GatePlan } from '../plan/gate-plan.ts';
import type { Signature } from '../stamp.ts';
import type { Demand } from './demand.ts';
import type { LotProduct } from '../lot/lot.ts';
import type { Disposition, HoldCause } from './hold.ts';
import type { Verdict } from './verdict.ts';

/** What was read to work a value out. */
export interface CraterInputs { readonly outerMm: number; readonly innerMm: number }
/** Diameters of one crater through several layers, from the surface to the substrate. */
export interface LayerInputs { readonly diametersMm: readonly number[] }
export interface ShrinkageInputs { readonly sinteredMm: number; /** The piece's own green size, where it is read. */ readonly greenMm?: number }
export interface ArchimedesInputs { readonly massInAirG: number; readonly massInWaterG: number; readonly waterTemperatureC: number }
/** A saturation as the bench shows it, with the unit it was read in. */
export interface SaturationInputs { readonly saturation: number; readonly unit: SaturationUnit }
export type ReadingInputs = CraterInputs | LayerInputs | ShrinkageInputs | ArchimedesInputs | SaturationInputs;

/** The gauge as it was when the reading was taken. */
export interface GaugeUsed { readonly id: string; /** Coverage factor k of U; 2 where absent. */ readonly coverageFactor?: number; /** Expanded uncertainty U, in the gauge's unit; that is the reading's own where the value is typed as read. */ readonly expandedUncertainty: number; readonly calibrationDue: string }

/** What happens while a gate is worked, on whichever subject. */
export type GateSlip =
  | { readonly type: 'gateOpened'; readonly gate: GatePlan; readonly attempt: number; /** False for a re-inspection, which does not count for switching. */ readonly original: boolean; readonly lotSize: number; readonly seed: string; readonly demands: readonly Demand[]; /** What whoever works here is reminded of. Absent on older slips. */ readonly cautions?: readonly CautionShown[] }
  | { readonly type: 'readingTaken'; readonly gate: string; readonly characteristic: string; readonly ordinal: number; readonly value: number | string | boolean; readonly inputs?: ReadingInputs; readonly gauge?: GaugeUsed; /** When it was read, where the entry waited at the bench for the network. */ readonly takenAt?: string; /** The person was asked whether so unlikely a value is right, and said yes. */ readonly sure?: true; /** The log a confirmation rests on. */ readonly log?: RestsOnLog; /** Why it is confirmed although the log says otherwise or is missing. */ readonly despite?: string }
  | { readonly type: 'weightsTaken'; readonly gate: string; readonly characteristic: string; readonly fromPiece: number; readonly values: readonly number[]; /** Of these, outside the limits and so ejected. */ readonly outside: number; readonly gauge?: GaugeUsed; readonly takenAt?: string; /** Where a press's balance sent them: numbers of its own count, and how many before these it gave up for lost. */ readonly feed?: { readonly press: string; readonly fromSeq: number; readonly missing: number; /** Which count of the press's; absent: the first. */ readonly count?: number } }
  | { readonly type: 'driftAnnounced'; readonly gate: string; readonly characteristic: string; /** Which alarm of this stream, from 1. */ readonly alarm: number; readonly side: DriftSide; /** Piece at which the average left its limits. */ readonly piece: number; /** The average now. */ readonly mean: number; readonly target: number; /** The limit it runs towards; null where there is none. */ readonly limit: number | null; /** Null while no piece can be foretold. */ readonly predicted: Crossing | null }
  | { readonly type: 'driftEnded'; readonly gate: string; readonly characteristic: string; readonly alarm: number; readonly piece: number }
  | { readonly type: 'lookFellDue'; readonly gate: string; readonly characteristic: string; readonly look: number; readonly by: 'pieces' | 'minutes'; /** Pieces made when it fell due. */ readonly piece: number }
  | { readonly type: 'lookMissed'; readonly gate: string; readonly characteristic: string; readonly look: number; readonly piece: number; /** The next fell due, or the plan's grace was over. */ readonly why: 'nextDue' | 'grace' }
  | { readonly type: 'findingRecorded'; readonly gate: string; readonly characteristic: string; readonly code: string; readonly class: FindingClass; readonly pieces: number; /** Place in the sample, asked for where the classes have different n. */ readonly ordinals?: readonly number[] }
  | { readonly type: 'findingWithdrawn'; readonly gate: string; readonly characteristic: string; /** Version of the slip withdrawn. */ readonly finding: number; readonly reason: string }
  | { readonly type: 'lookTaken'; readonly gate: string; readonly characteristic: string; readonly look: number; readonly looked: number; readonly found: number; readonly code: string | null }
  | { readonly type: 'sampleCompleted'; readonly gate: string; readonly characteristic: string; /** All samples together. */ readonly looked: number; /** It did not decide: more pieces are asked for. */ readonly goesOn?: true }
  | { readonly type: 'readingCorrected'; readonly gate: string; readonly characteristic: string; readonly ordinal: number; readonly from: number | string | boolean; readonly to: number | string | boolean; readonly inputs?: ReadingInputs; /** Measured again with this gauge. */ readonly gauge?: GaugeUsed; readonly reason: string }
  | { readonly type: 'verdictGiven'; readonly gate: string; readonly verdict: Verdict }
  | { readonly type: 'verdictRevised'; readonly gate: string; readonly verdict: Verdict; readonly why: string };

/** What can happen to any subject beside its gates. */
export type CommonSlip =
  | { readonly type: 'held'; readonly hold: string; readonly cause: HoldCause; readonly reason: string }
  | { readonly type: 'disposed'; readonly hold: string; readonly gate: string | null; readonly disposition: Disposition; readonly reason: string; readonly signature: Signature; /** What the lot is from now on, after a regrade. */ readonly regraded?: { readonly product: LotProduct; readonly plan: string; readonly planVersion: number } }
  | { readonly type: 'noteAdded'; readonly text: string }
  /** A control chart has spoken with a verdict on this subject. */
  | ChartSignalled;
