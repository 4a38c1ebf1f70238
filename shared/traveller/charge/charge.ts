import type { LogCheck, ReducedLog } from '../../carbide/furnace-log/index.ts';
import type { Cell, ChargeMap } from '../equipment/charge-map.ts';
import type { Concession, RouteStep, SubjectCommon } from '../lot/lot.ts';
import type { ProgrammeCard } from '../programme/slips.ts';

export interface ChargeMember {
  readonly lot: string; readonly pieces: number; /** Levels or places where its trays stand; on a map the names of its cells. */ readonly places: readonly string[];
  /** Where it lies on the charge's map; absent where the charge has none. */ readonly cells?: readonly Cell[];
  /** Set for a lot that comes to this gate again: its verdict here is a re-inspection. */ readonly again?: 'reSinter' | 'recoat';
  /** Set when some members were taken out to be done again while the charge went on with the others. */ readonly left?: true;
}
/** The map a charge was opened on, as it was then. */
export interface OpenedOn extends ChargeMap { readonly equipment: string }
/** A log as it was attached: the file's digest, what it was held against and what came of it. The file itself stands beside the journal. */
export interface AttachedLog {
  readonly slip: number; readonly at: string; readonly by: string; /** SHA-256 of the file, hexadecimal. */ readonly attachment: string; readonly bytes: number; readonly fileName: string;
  readonly rows: number; readonly startedAt: string | null; readonly lengthMin: number; readonly programme: ProgrammeCard; readonly programmeVersion: number; readonly check: LogCheck; readonly curve: ReducedLog;
}
/** A furnace or coating charge: the fold of its traveller. Its verdict stands for that gate of every member. */
export interface Charge extends SubjectCommon {
  readonly kind: 'furnace' | 'coating';
  readonly specification: { readonly id: string; readonly name: string };
  readonly plan: string;
  readonly planVersion: number;
  readonly programme: string;
  readonly equipment: string;
  /** Null for a charge whose places are words only. */
  readonly map: OpenedOn | null;
  readonly members: readonly ChargeMember[];
  readonly concessions: readonly Concession[];
  /** Logs attached, the one in force last. */
  readonly logs: readonly AttachedLog[];
}
export type { RouteStep };
