import { logDrawing } from '../../shared/carbide/furnace-log/index.ts';
import { middleOf, positionsOf, sameCell, verdictOf } from '../../shared/traveller/index.ts';
import type { Charge, MapLevel, OpenedOn } from '../../shared/traveller/index.ts';
import { placesByLevel } from '../../shared/words/charge-places.ts';
import { failedPositionSentence, logLines, logVerdict } from '../../shared/words/charge-slips.en.ts';
import { chargeSheetWords as said } from '../../shared/words/charge-sheet.en.ts';
import { words } from '../../shared/words/index.ts';
import type { PrintedCharge, PrintedLevel } from '../documents/traveller-sheet/draw-charge.ts';

const { labels, format } = words('en');
const speak = { labels, format };

/** What a charge's sheet shows before its slips: the map with its members, positions that failed, the furnace log in force. */
export function printedCharge(charge: Charge): PrintedCharge {
  const { map } = charge;
  const failed = charge.gates.flatMap((gate) => verdictOf(gate)?.verdict.failedPositions ?? []);
  const log = charge.logs.at(-1);
  const near = new Set(failed.flatMap((position) => position.near.map(({ lot }) => lot)));
  return {
    map: map === null ? null : {
      title: said.map(charge.equipment), alternative: said.map(charge.equipment), legend: said.legend,
      levels: map.levels.map((level, at) => levelOf(charge, map, level, at, failed.map(({ position }) => position), near)),
      lots: charge.members.map(({ lot, places, cells = [], again, left }, at) => said.lot(markOf(at), lot, placesByLevel(map, cells, places, format), again === undefined ? null : labels.reprocessed[again], left === true)),
    },
    failed: failed.map((position) => failedPositionSentence(position, speak)),
    log: log === undefined ? null : {
      title: said.log(log.fileName), alternative: said.logAlternative(logVerdict(log.check, speak)), drawing: logDrawing(log.curve, log.check, log.programme), axes: said.axes,
      lines: [said.checked(log.programme.id, log.programmeVersion, logVerdict(log.check, speak)), ...logLines(log.check, speak).map((line, at) => (at < log.check.findings.length ? `${at + 1}  ${line}` : line)), said.digest(log.attachment)],
    },
  };
}

function markOf(at: number): string {
  return at < 26 ? String.fromCharCode(65 + at) : `${String.fromCharCode(64 + Math.floor(at / 26))}${String.fromCharCode(65 + (at % 26))}`;
}

function levelOf(charge: Charge, map: OpenedOn | null, level: MapLevel, index: number, failed: readonly string[], near: ReadonlySet<string>): PrintedLevel {
  const { layout } = level;
  const side = layout.by === 'grid' ? 0 : Math.max(3, Math.ceil(layout.positions / (0.8 * Math.PI) + 0.35));
  return {
    name: level.name, columns: layout.by === 'grid' ? layout.columns : side, rows: layout.by === 'grid' ? layout.rows : side, ring: layout.by === 'ring',
    cells: Array.from({ length: positionsOf(level) }, (_, at) => {
      const cell = { level: index + 1, position: at + 1 };
      const here = charge.members.findIndex(({ cells = [] }) => cells.some((each) => sameCell(each, cell)));
      const test = map?.testPositions.find((position) => sameCell(position, cell));
      return { ...middleOf(level, cell.position), mark: here < 0 ? '' : markOf(here), test: test !== undefined, failed: test !== undefined && failed.includes(test.name), near: here >= 0 && near.has(charge.members[here]?.lot ?? '') };
    }),
  };
}

