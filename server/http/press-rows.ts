import { driftLimits, ppPpkOf, predictCrossing } from '../../shared/metrology/drift/index.ts';
import type { CharacteristicWork, GateRecord, Lot, PressCard } from '../../shared/traveller/index.ts';
import { judgedLimits, nextLook, standingHolds, streamName } from '../../shared/traveller/index.ts';
import type { PressRow, Presses } from '../../shared/wire/presses-view.ts';
import type { Plant } from './plant.ts';

const shownWeights = 50;
const ofNothing = {
  gateName: null, gateStatus: null, onHold: false, unit: '', decimals: 3, target: null, lower: null, upper: null, pieces: 0, lotSize: 0, mean: null, s: null, least: null, most: null, pp: null, ppk: null,
  outside: 0, missing: 0, last: [], drift: { state: 'unwatched', side: null, since: null, ewma: null, predicted: null }, look: null, missedLooks: 0,
} satisfies Partial<PressRow>;

/** Every press with what it presses and how that goes. */
export async function pressRows(plant: Plant, now: Date): Promise<Presses> {
  const rows: PressRow[] = [];
  for (const card of plant.records.presses()) rows.push(await pressRow(plant, card, now));
  return { rows, now: now.toISOString() };
}

async function pressRow({ door, feeds }: Plant, { id, name, bench, balance }: PressCard, now: Date): Promise<PressRow> {
  const { state: press } = await door.states.get(streamName('press', id));
  const running = press?.kind === 'press' ? press.running : null;
  const { state: gauge } = await door.states.get(streamName('gauge', balance));
  const { state: lot } = running === null ? { state: null } : await door.states.get(streamName('lot', running.lot));
  const { waiting, lastAt, lastValues, no } = feeds.standing(id);
  const balanceStanding = gauge?.kind !== 'gauge' ? 'unknown' : gauge.withdrawn !== null ? 'withdrawn' : gauge.outOfTolerance !== null ? 'outOfTolerance' : gauge.card.calibrationDue < now.toISOString().slice(0, 10) ? 'overdue' : 'counts';
  const base = { id, name, bench, balance, balanceStanding, lot: running?.lot ?? null, since: running?.since ?? null, waiting, lastAt, no } as const;
  if (running === null || lot?.kind !== 'lot') return { ...base, ...ofNothing };
  const gate = lot.gates.find((each) => each.id === running.gate);
  const work = gate?.work.find(({ demand }) => demand.characteristic.id === running.characteristic);
  return { ...base, ...(gate === undefined || work === undefined ? ofNothing : ofWork(lot, gate, work, waiting === 0 ? [] : lastValues.slice(-waiting))), lastAt: lastAt ?? lot.feeds?.find((feed) => feed.press === id)?.at ?? null };
}

function ofWork(lot: Lot, gate: GateRecord, work: CharacteristicWork, unwritten: readonly number[]): Omit<PressRow, 'id' | 'name' | 'bench' | 'balance' | 'balanceStanding' | 'lot' | 'since' | 'waiting' | 'lastAt' | 'no'> {
  const { characteristic } = work.demand;
  const { weights } = work;
  const measured = characteristic.kind === 'measured' ? characteristic : null;
  const limits = measured === null ? null : judgedLimits(measured, weights?.uncertainty ?? 0);
  const n = weights?.running.n ?? 0;
  const s = weights === null || n < 2 ? null : Math.sqrt(weights.running.squares / (n - 1));
  const looks = gate.work.map((each) => nextLook(each, gate.lotSize)).find((next) => next !== null) ?? null;
  return {
    gateName: gate.name, gateStatus: gate.status, onHold: standingHolds(lot).length > 0, unit: measured?.unit ?? '', decimals: measured?.decimals ?? 3, target: measured?.target ?? null,
    lower: limits?.acceptLower ?? null, upper: limits?.acceptUpper ?? null, pieces: n, lotSize: gate.lotSize, mean: n === 0 ? null : weights?.running.mean ?? null, s,
    least: weights?.running.min ?? null, most: weights?.running.max ?? null,
    ...ppPpkOf({ mean: weights?.running.mean ?? 0, s }, { lower: limits?.acceptLower ?? null, upper: limits?.acceptUpper ?? null }),
    outside: weights?.outside ?? 0, missing: weights?.missing ?? 0, last: [...(weights?.lastBlock ?? []), ...unwritten].slice(-shownWeights), drift: driftOf(work, limits),
    look: looks === null ? null : { look: looks.look, dueAt: looks.dueAt, dueTime: looks.dueTime, dueSince: looks.dueSince },
    missedLooks: gate.work.reduce((sum, { calls }) => sum + (calls?.missed.length ?? 0), 0),
  };
}

function driftOf({ demand: { basis }, weights }: CharacteristicWork, limits: ReturnType<typeof judgedLimits> | null): PressRow['drift'] {
  const rule = basis.by === 'everyPiece' ? basis.drift : undefined;
  if (rule === undefined) return ofNothing.drift;
  const state = weights?.drift ?? null;
  if (state === null || driftLimits(rule, state) === null) return { ...ofNothing.drift, state: 'learning' };
  const alarm = state.alarm?.ended === null ? state.alarm : null;
  if (alarm === null) return { ...ofNothing.drift, state: 'steady', ewma: state.ewma };
  const limit = alarm.side === 'above' ? limits?.acceptUpper ?? null : limits?.acceptLower ?? null;
  return { state: 'drifting', side: alarm.side, since: alarm.at, ewma: state.ewma, predicted: limit === null ? null : predictCrossing(rule, state, limit) };
}
