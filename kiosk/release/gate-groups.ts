import type { GateRecord, Lot, VerdictRecord } from '../../shared/traveller/index.ts';
import { streamParts } from '../../shared/traveller/index.ts';
import { releaseDeskWords as words } from '../../shared/words/release-desk.en.ts';
import { showMoment } from '../desk/show.ts';
import { markOfGate } from '../desk/state-of.ts';
import { labels } from '../desk/words.ts';
import type { StateName } from '../parts/state-name.ts';
import { verdictCells, type VerdictCells } from './verdict-cells.ts';

/** One judgement as a line: what was judged, and the numbers of it. */
export interface GateLine extends VerdictCells { readonly name: string; readonly method: string; readonly mark: StateName; readonly word: string }
/** One verdict of a gate with all it rests on; without lines where the gate has none yet. */
export interface GateGroup {
  readonly key: string;
  readonly name: string;
  /** Where it was worked, re-inspection, attempt, correction: said in plain sight. */
  readonly notes: readonly string[];
  readonly mark: StateName;
  readonly word: string;
  readonly who: string;
  readonly at: string;
  readonly lines: readonly GateLine[];
}

/** The gates of a lot in their order: earlier verdicts before the one in force, and last what a gate still waits for. */
export function gateGroups(lot: Lot, names: Readonly<Record<string, string>>): readonly GateGroup[] {
  return lot.gates.flatMap((gate) => {
    const given = gate.verdicts.map((record, at) => groupOf(gate, record, at === gate.verdicts.length - 1, names));
    const waits = gate.verdicts.length === 0 || gate.status === 'waiting' || gate.status === 'open' || gate.status === 'sorting';
    return waits ? [...given, { key: `${gate.id}/now`, name: gate.name, notes: [], mark: markOfGate[gate.status], word: words.gateStatus[gate.status], who: '', at: '', lines: [] }] : given;
  });
}

function groupOf(gate: GateRecord, { verdict, from, at, by, revises, slip }: VerdictRecord, last: boolean, names: Readonly<Record<string, string>>): GateGroup {
  const source = from === null ? null : streamParts(from);
  const conceded = last && gate.status === 'conceded';
  const stamp = (accepted: boolean): Pick<GateGroup, 'mark' | 'word'> =>
    accepted ? { mark: 'accepted', word: words.verdicts.accepted } : conceded ? { mark: 'concession', word: words.verdicts.conceded } : { mark: 'rejected', word: words.verdicts.rejected };
  return {
    key: `${gate.id}/${slip}`, name: gate.name, ...stamp(verdict.accepted && !conceded), at: showMoment(at),
    notes: [
      ...(source === null ? [] : [words.workedOn(labels.streamKinds[source.kind], source.id)]), ...(verdict.original ? [] : [words.reinspection]),
      ...(verdict.attempt > 1 ? [words.attempt(verdict.attempt)] : []), ...(revises === null ? [] : [words.correctedVerdict]), ...(last ? [] : [words.earlier]),
    ],
    who: (verdict.workers.length === 0 ? [by] : verdict.workers).map((badge) => `${names[badge] ?? badge} (${badge})`).join(', '),
    lines: verdict.results.flatMap((result) => verdictCells(result).map((cells): GateLine => ({ ...cells, ...stamp(cells.accepted), name: result.name, method: result.method }))),
  };
}
