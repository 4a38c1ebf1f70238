import type { Disposition } from './hold.ts';
import type { ReadingInputs } from './slips.ts';

/** `subject` is the stream the work is done on, e.g. `lot:L26-0417` or `furnace:F26-031`. */
interface On { readonly subject: string }
interface AtGate extends On { readonly gate: string }
interface AtCharacteristic extends AtGate { readonly characteristic: string }

export interface OpenGate extends AtGate { readonly type: 'openGate' }
/** `value` a number for a measured characteristic, a rating for a graded one, true or false for a confirmed one. Null where `inputs` give it. */
export interface TakeReading extends AtCharacteristic { readonly type: 'takeReading'; readonly ordinal: number; readonly value: number | string | boolean | null; readonly inputs?: ReadingInputs; readonly gauge?: string; /** An unlikely value was questioned, and the person says it is right. */ readonly sure?: boolean; /** Why a confirmation is given although the log behind it says otherwise or is missing. */ readonly despite?: string }
/** A block of weights of every piece, in the order made. */
export interface TakeWeights extends AtCharacteristic { readonly type: 'takeWeights'; readonly fromPiece: number; readonly values: readonly number[]; readonly gauge?: string }
export interface RecordFinding extends AtCharacteristic { readonly type: 'recordFinding'; readonly code: string; readonly pieces: number; readonly ordinals?: readonly number[] }
export interface WithdrawFinding extends AtCharacteristic { readonly type: 'withdrawFinding'; readonly finding: number; readonly reason: string }
export interface TakeLook extends AtCharacteristic { readonly type: 'takeLook'; readonly look: number; readonly found: number; readonly code?: string }
/** Says that the whole sample was looked at; what was not recorded as found is good. */
export interface CompleteSample extends AtCharacteristic { readonly type: 'completeSample'; readonly looked: number }
export interface CorrectReading extends AtCharacteristic { readonly type: 'correctReading'; readonly ordinal: number; readonly value: number | string | boolean | null; readonly inputs?: ReadingInputs; /** Measured again with this one; absent, the value is what was read then. */ readonly gauge?: string; readonly reason: string; readonly sure?: boolean }
export interface HoldSubject extends On { readonly type: 'hold'; readonly reason: string }
/** Signed. */
export interface DisposeHold extends On { readonly type: 'dispose'; readonly hold: string; readonly disposition: Disposition; readonly reason: string }
export interface AddNote extends On { readonly type: 'addNote'; readonly text: string }

export type GateCommand = OpenGate | TakeReading | TakeWeights | RecordFinding | WithdrawFinding | TakeLook | CompleteSample | CorrectReading;
export type CommonCommand = HoldSubject | DisposeHold | AddNote;
