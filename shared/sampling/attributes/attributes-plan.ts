import { OutsideDomain, requireWhole } from '../../ground/outside-domain.ts';
import { aqlColumn } from './aqls.ts';
import { codeLetter, LARGEST_LOT } from './code-letter.ts';
import type { CodeLetter } from './code-letter.ts';
import type { Severity } from './master-table.ts';
import { nameOfTable, tableLines } from './sampling-tables.ts';
import type { OwnTable, Samples } from './sampling-tables.ts';
import type { AttributesPlan, SinglePlanRequest } from './single-plan.ts';
import type { NumberPair, TableLine } from './staged-rows.ts';
import type { Stage } from './stages.ts';

/** What a plan by attributes is asked for. */
export type AttributesPlanRequest = SinglePlanRequest & {
  /** How many samples it may take; single unless given. */
  readonly samples?: Samples;
  /** The plant's own copies of master tables; one stands in for the table of its severity and samples. */
  readonly tables?: readonly OwnTable[];
};

/**
 * The sampling plan of a lot by AQL: single, double or multiple. An arrow is followed in its AQL column to the first plan, and the sample
 * sizes then belong to the letter reached. Where a table says to use a plan of fewer samples, that plan is used and `instead` says so. (The
 * standard also allows the double or multiple plan further down, where there is one; the smaller sample is taken here.)
 *
 * Samples that together reach the lot are cut: each to what is left, none beyond it, and the one that takes the last piece decides, for nothing
 * remains to be drawn: by its own Re, with Ac = Re − 1 (derived; the standard asks for every piece and leaves the numbers open). A first sample that reaches the lot is then every piece on one look, as the standard asks;
 * where only a later one does, the earlier ones may still decide. A lot of one piece stands in no table: it is looked at and Ac is 0.
 * @param request lot size 1 … 1 000 000 000 pieces, level, AQL (one of AQLS), severity, samples
 * @throws OutsideDomain for a lot size, level or AQL the tables do not know
 * @see MIL-STD-105E 4.9.4, 4.10.1, Tables I to IV with their footnotes. How sure each table is: `tableNotes`
 * @example attributesPlan({ lotSize: 1000, level: 'II', aqlPercent: 1.5, severity: 'normal', samples: 'double' }) // J: 50, 1/4; 50, 4/5
 */
export function attributesPlan(request: AttributesPlanRequest): AttributesPlan {
  const { lotSize, level, aqlPercent, severity } = request;
  requireWhole('lotSize', lotSize, 1, LARGEST_LOT);
  const column = aqlColumn(aqlPercent);
  if (lotSize === 1) {
    return { lotSize, level, aqlPercent, severity, startLetter: 'A', letter: 'A', sampleSize: 1, tableSampleSize: 1, ac: 0, re: 1, arrow: 'none', everyPiece: true, table: nameOfTable('single', severity) };
  }
  const startLetter = codeLetter(lotSize, level);
  const end = planInTables({ severity, column, tables: request.tables ?? [] }, request.samples ?? 'single', startLetter);
  const tableStages = end.pairs.map(({ ac, re }, at) => ({ sampleSize: end.sizes[at] ?? 0, ac, re }));
  const tableSampleSize = piecesOf(tableStages);
  const stages = cutToLot(tableStages, lotSize);
  const last = stages.at(-1);
  if (last === undefined || last.ac === null) throw new OutsideDomain('tables', 'tables whose plans can accept on the last sample', end.samples);
  const { letter, arrow, samples, tableSource, instead } = end;
  const plan: AttributesPlan = {
    lotSize, level, aqlPercent, severity, startLetter, letter, sampleSize: piecesOf(stages), tableSampleSize, ac: last.ac, re: last.re,
    arrow, everyPiece: tableSampleSize >= lotSize, table: nameOfTable(samples, severity),
  };
  if (samples === 'single' && tableSource === undefined && instead === undefined) return plan;
  return {
    ...plan,
    ...(samples === 'single' ? {} : { samples, stages }),
    ...(tableSource === undefined ? {} : { tableSource }),
    ...(instead === undefined ? {} : { instead }),
  };
}

interface Tables { readonly severity: Severity; readonly column: number; readonly tables: readonly OwnTable[] }
interface End {
  readonly samples: Samples;
  readonly letter: CodeLetter;
  readonly sizes: readonly number[];
  readonly pairs: readonly NumberPair[];
  readonly arrow: AttributesPlan['arrow'];
  readonly tableSource?: string;
  readonly instead?: AttributesPlan['instead'];
}

/** Follows arrows in one table, and signs from a table of more samples to one of fewer at the letter reached. */
function planInTables(from: Tables, samples: Samples, startLetter: CodeLetter): End {
  const own = from.tables.find((table) => table.severity === from.severity && table.samples === samples);
  const lines = own?.rows ?? tableLines(samples, from.severity);
  if (lines === null) return { ...planInTables(from, 'double', startLetter), instead: 'noMultipleReduced' };
  const { line, arrow } = followArrows(lines, startLetter, from.column);
  const cell = line?.cells[from.column];
  if (line !== undefined && typeof cell === 'object') {
    return { samples, letter: line.letter, sizes: line.sizes, pairs: cell, arrow, ...(own === undefined ? {} : { tableSource: own.id }) };
  }
  if (line === undefined || (cell !== 'single' && cell !== 'double') || cell === samples || samples === 'single') {
    throw new OutsideDomain('aqlPercent', `reachable from letter ${startLetter} in Table ${nameOfTable(samples, from.severity)}`, from.column);
  }
  const there = planInTables(from, cell, line.letter);
  return { ...there, arrow: arrow === 'none' ? there.arrow : arrow, instead: there.samples === 'single' ? 'useSingle' : 'useDouble' };
}

function followArrows(lines: readonly TableLine[], startLetter: CodeLetter, column: number): { line: TableLine | undefined; arrow: AttributesPlan['arrow'] } {
  let at = lines.findIndex(({ letter }) => letter === startLetter);
  let arrow: AttributesPlan['arrow'] = 'none';
  for (;;) {
    const line = lines[at];
    const cell = line?.cells[column];
    if (cell !== 'down' && cell !== 'up') return { line, arrow };
    if (arrow !== 'none' && arrow !== cell) throw new OutsideDomain('tables', 'tables whose arrows end at a plan', `${arrow}, then ${cell}`);
    arrow = cell;
    at += cell === 'down' ? 1 : -1;
  }
}

function cutToLot(stages: readonly Stage[], lotSize: number): readonly Stage[] {
  const kept: Stage[] = [];
  let left = lotSize;
  for (const stage of stages) {
    const isLast = stage === stages.at(-1);
    if (stage.sampleSize >= left) return [...kept, { sampleSize: left, ac: isLast ? stage.ac : stage.re - 1, re: stage.re }];
    kept.push(stage);
    left -= stage.sampleSize;
  }
  return kept;
}

function piecesOf(stages: readonly Stage[]): number {
  return stages.reduce((sum, { sampleSize }) => sum + sampleSize, 0);
}
