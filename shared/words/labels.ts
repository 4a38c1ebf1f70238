import type { CommandType, DispositionKind, FindingClass, GateStatus, Hold, Measured, Nearness, Refusal, Role, Signature, StreamKind, SubjectCommon, SubjectKind, SwitchingSeverity, SwitchingSlip } from '../traveller/index.ts';
import type { TableNote, TableProblemCode } from '../sampling/attributes/index.ts';
import type { BenchRow, TraceNode } from '../wire/views.ts';

/** Why a switching state moved. */
export type MoveReason = NonNullable<Extract<SwitchingSlip, { readonly type: 'lotCounted' }>['moved']>['why'];
type Named<Key extends string> = Readonly<Record<Key, string>>;
type Counted = (count: number, written: string) => string;

/** The short names of things. A role, a status, a disposition … without a name does not compile. */
export interface Labels {
  readonly roles: Named<Role>;
  readonly gateStatuses: Named<GateStatus>;
  readonly severities: Named<SwitchingSeverity>;
  readonly standings: Named<BenchRow['standing']>;
  readonly findingClasses: Named<FindingClass>;
  readonly samples: Named<'double' | 'multiple'>;
  readonly isolated: Named<'limitingQuality' | 'zeroAcceptance' | 'twoPoint' | 'sequential'>;
  readonly tableNotes: Named<TableNote>;
  readonly tableProblems: Named<TableProblemCode>;
  readonly verdicts: Named<'accepted' | 'acceptedInGap' | 'rejected' | 'undecided'>;
  readonly dispositions: Readonly<Record<DispositionKind, { readonly name: string; readonly hint: string }>>;
  /** How a lot lay to a test position. */
  readonly nearness: Named<Nearness>;
  /** What was done with a lot before it came to a gate again. */
  readonly reprocessed: Named<'reSinter' | 'recoat'>;
  readonly moveReasons: Named<MoveReason>;
  readonly holdCauses: Named<Hold['cause']['by']>;
  readonly subjectKinds: Named<SubjectKind>;
  readonly streamKinds: Named<StreamKind>;
  readonly traceKinds: Named<TraceNode['kind']>;
  readonly things: Named<Extract<Refusal, { readonly code: 'notFound' | 'alreadyThere' }>['what']>;
  /** What a command does, to be read after "may" or "to". */
  readonly commands: Named<CommandType>;
  readonly signatureMeanings: Named<Signature['meaning']>;
  readonly decisionRules: Named<Measured['decisionRule']>;
  readonly ends: Named<NonNullable<SubjectCommon['ended']>['how']>;
  readonly factors: Named<NonNullable<Measured['factor']>>;
  readonly yes: string;
  readonly no: string;
  readonly every: string;
  /** A counted noun: the number itself, and as it is to be written. */
  readonly pieces: Counted;
  readonly results: Counted;
  readonly readings: Counted;
  readonly barrels: Counted;
  readonly boxes: Counted;
  readonly lots: Counted;
  readonly uncertainty: (value: string, coverageFactor?: number) => string;
  /** Limits as a range; null where there is none on that side. */
  readonly between: (lower: string | null, upper: string | null) => string;
}
