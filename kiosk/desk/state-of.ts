import type { GateStatus } from '../../shared/traveller/index.ts';
import type { BenchRow } from '../../shared/wire/views.ts';
import type { StateName } from '../parts/state-name.ts';

/** The drawn mark of each standing of a lot in a list. */
export const markOfStanding: Readonly<Record<BenchRow['standing'], StateName>> = {
  due: 'waiting', open: 'open', sorting: 'open', held: 'hold', inCharge: 'waiting', toRelease: 'accepted', toPack: 'released', done: 'accepted',
};
/** The drawn mark of each status of a gate. */
export const markOfGate: Readonly<Record<GateStatus, StateName>> = { waiting: 'waiting', open: 'open', sorting: 'open', accepted: 'accepted', conceded: 'concession', rejected: 'rejected' };
