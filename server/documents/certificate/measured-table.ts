import type { CertificateData, CertificateMeasured } from '../../../shared/wire/certificate-data.ts';
import type { CertificateWords } from '../../../shared/words/certificate.en.ts';
import { mm } from '../sheet/ink.ts';
import type { Sheet, TextStyle } from '../sheet/sheet.ts';
import { drawTable, type Cell, type GroupRow, type Row } from '../sheet/table.ts';
import { writeNumber } from '../sheet/write-numbers.ts';
import { drawLegend } from './gate-table.ts';
import { drawReadings } from './draw-readings.ts';

const strong: TextStyle = { face: 'narrowStrong', size: 8.2 };
const plain: TextStyle = { face: 'narrow', size: 8.2 };
const soft: TextStyle = { face: 'narrow', size: 7.6, ink: 'soft' };

const cell = (text: string, style: TextStyle): Cell => ({ lines: [{ text, style }] });

/** The table of measured characteristics by the subject they were measured on, each with a small picture of where its readings lie. */
export function drawMeasured(sheet: Sheet, { measured, language }: CertificateData, words: CertificateWords): void {
  if (measured.length === 0) return;
  sheet.heading(words.measured, 32 * mm);
  const columns = [
    { head: words.characteristic, width: 43.5 * mm }, { head: words.n, width: 9 * mm, isFigure: true }, { head: words.mean, width: 16 * mm, isFigure: true },
    { head: words.deviation, width: 14 * mm, isFigure: true }, { head: words.least, width: 14 * mm, isFigure: true },
    { head: words.greatest, width: 14 * mm, isFigure: true }, { head: words.lower, width: 15 * mm, isFigure: true },
    { head: words.upper, width: 15 * mm, isFigure: true }, { head: words.span, width: 16 * mm }, { head: words.uncertainty, width: 13 * mm, isFigure: true },
    { head: words.decision, width: 14.5 * mm, isFigure: true },
  ];
  const rows = measured.flatMap((row, at): Row[] => {
    const before = measured[at - 1]?.workedOn;
    const isSame = before?.kind === row.workedOn.kind && before.number === row.workedOn.number;
    const cells = measuredCells(sheet, row, language, words);
    return isSame ? [cells] : [groupRow(row, words, columns.length), cells];
  });
  drawTable(sheet, columns, rows, { isClose: true });
  drawLegend(sheet, words.measuredLegend);
}

function groupRow({ workedOn: { kind, number } }: CertificateMeasured, words: CertificateWords, columns: number): GroupRow {
  const named = { insertLot: words.lot, powderBatch: words.powderBatch, furnaceCharge: words.furnaceCharge, coatingCharge: words.coatingCharge };
  const what = { text: `${named[kind]} ${number}`, style: { face: 'textStrong', size: 8.2 } } as const;
  return { group: [{ beside: [what], columns, isHead: true }], again: [{ beside: [what, { text: words.continued, style: soft }], columns }] };
}

function measuredCells(sheet: Sheet, row: CertificateMeasured, language: string, words: CertificateWords): readonly Cell[] {
  const write = (value: number | null, decimals: number): string => (value === null ? words.none : writeNumber(value, decimals, language));
  const { decimals } = row;
  return [
    { beside: [{ text: row.name, style: plain }, ...(row.unit === null ? [] : [{ text: row.unit, style: soft }])] },
    cell(String(row.n), plain), cell(write(row.mean, decimals + 1), strong), cell(write(row.s, decimals + 1), plain),
    cell(write(row.min, decimals), plain), cell(write(row.max, decimals), plain), cell(write(row.lower, decimals), plain), cell(write(row.upper, decimals), plain),
    { draw: (x, y, width) => drawReadings(sheet, row, x + 1 * mm, y - 1.2, width - 1 * mm), height: 9 },
    cell(write(row.uncertainty, decimals + 1), soft), cell(row.decisionRule, soft),
  ];
}
