import type { CharacteristicWork, LookCalls } from './work.ts';

/** The look of an interval that comes next. */
export interface NextLook {
  readonly look: number;
  /** Pieces made at which it falls, or fell, due. */
  readonly dueAt: number;
  /** ISO 8601: when it falls due at the latest, as soon as another piece is made; null where minutes do not matter. */
  readonly dueTime: string | null;
  /** Pieces made; null where the gate does not weigh every one. */
  readonly made: number | null;
  /** Time at which it was told to be due; null while it was not. */
  readonly dueSince: string | null;
}

const minuteMs = 60_000;
const noCalls: LookCalls = { made: null, lastPiece: 0, lastAt: '', due: null, missed: [] };

/** When the next look falls due; null when none is left. By pieces alone on a fixed grid; with minutes each counts from the one before, and the last falls due with the last piece. */
export function nextLook(work: CharacteristicWork, lotSize: number): NextLook | null {
  const { basis } = work.demand;
  if (basis.by !== 'interval') return null;
  const { made, lastPiece, lastAt, due, missed } = work.calls ?? noCalls;
  const done = work.looks.length + missed.length;
  if (due !== null) return { look: due.look, dueAt: due.piece, dueTime: null, made, dueSince: due.at };
  const byMinutes = basis.everyMinutes !== undefined && made !== null;
  if (byMinutes ? done > 0 && lastPiece >= lotSize : done >= basis.looks) return null;
  const dueAt = Math.min(byMinutes ? lastPiece + basis.everyPieces : (done + 1) * basis.everyPieces, lotSize);
  const dueTime = basis.everyMinutes === undefined ? null : new Date(Date.parse(lastAt) + basis.everyMinutes * minuteMs).toISOString();
  return { look: done + 1, dueAt, dueTime, made, dueSince: null };
}

/** True when the look is to be taken now: told to be due, or enough pieces made, or pieces not counted here. */
export function isLookDue({ dueSince, made, dueAt }: NextLook): boolean {
  return dueSince !== null || made === null || made >= dueAt;
}

/** True when minutes alone have made it due: their time has come, and a piece was made since the look before. */
export function isDueByMinutes(work: CharacteristicWork, { dueSince, dueTime, made }: NextLook, at: string): boolean {
  return dueSince === null && dueTime !== null && at >= dueTime && (made === null || made > (work.calls?.lastPiece ?? 0));
}

/** Why a look that was told to be due is missed by now; null while it is not. */
export function missedBecause(work: CharacteristicWork, lotSize: number, at: string): 'nextDue' | 'grace' | null {
  const { basis, calls } = { basis: work.demand.basis, calls: work.calls ?? noCalls };
  const { due, made } = calls;
  if (basis.by !== 'interval' || due === null) return null;
  const after = (minutes: number): boolean => Date.parse(at) >= Date.parse(due.at) + minutes * minuteMs;
  if (basis.graceMinutes !== undefined) return after(basis.graceMinutes) ? 'grace' : null;
  if (made === null || due.piece >= lotSize) return null;
  const nextPiece = basis.everyMinutes === undefined ? (due.look + 1) * basis.everyPieces : due.piece + basis.everyPieces;
  if (basis.everyMinutes === undefined ? due.look < basis.looks && made >= nextPiece : made >= Math.min(nextPiece, lotSize)) return 'nextDue';
  return basis.everyMinutes !== undefined && made > due.piece && after(basis.everyMinutes) ? 'nextDue' : null;
}
