import { cellName, middleOf, positionsOf, sameCell, verdictOf } from '../../../shared/traveller/index.ts';
import type { Cell, Charge, ChargeMap, FailedPosition, MapLevel } from '../../../shared/traveller/index.ts';
import { kioskChargeWords } from '../../../shared/words/kiosk-charge.en.ts';
import { ringCells, type MapLevelDrawing } from '../../parts/gh-charge-map.ts';

/** A lot on the map: the letter it is drawn with, and its cells. */
export interface DrawnLot { readonly lot: string; readonly mark: string; readonly cells: readonly Cell[]; readonly chosen?: boolean; readonly near?: boolean }

/** Letters for the first 26 lots, then AA, AB …: short enough for a cell. */
export function lotMark(at: number): string {
  const letter = String.fromCharCode(65 + (at % 26));
  return at < 26 ? letter : `${String.fromCharCode(64 + Math.floor(at / 26))}${letter}`;
}

/** The levels as the map part draws them. @param failed names of test positions that failed */
export function drawnLevels(map: ChargeMap, lots: readonly DrawnLot[], failed: readonly string[] = []): readonly MapLevelDrawing[] {
  return map.levels.map((level, at) => ({ name: level.name, ...sizeOf(level), cells: Array.from({ length: positionsOf(level) }, (_, index) => {
    const cell: Cell = { level: at + 1, position: index + 1 };
    const here = lots.find(({ cells }) => cells.some((each) => sameCell(each, cell)));
    const test = map.testPositions.find((position) => sameCell(position, cell)) ?? null;
    const isFailed = test !== null && failed.includes(test.name);
    return {
      position: cell.position, ...middleOf(level, cell.position), mark: here?.mark ?? '', chosen: here?.chosen ?? false, test: test !== null, failed: isFailed, near: here?.near ?? false,
      label: kioskChargeWords.map.cell(cellName(map, cell), here?.lot ?? null, test?.name ?? null, isFailed),
    };
  }) }));
}

function sizeOf({ layout }: MapLevel): { readonly columns: number; readonly rows: number; readonly ring: boolean } {
  if (layout.by === 'grid') return { columns: layout.columns, rows: layout.rows, ring: false };
  const side = ringCells(layout.positions);
  return { columns: side, rows: side, ring: true };
}

/** The positions that failed in the newest verdict of any gate of the charge. */
export function failedOf({ gates }: Charge): readonly FailedPosition[] {
  return gates.flatMap((gate) => verdictOf(gate)?.verdict.failedPositions ?? []);
}
