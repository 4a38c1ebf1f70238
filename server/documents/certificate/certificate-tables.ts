import type { CertificateData, CertificateGate, CertificateMeasured } from '../../../shared/wire/certificate-data.ts';
import type { CertificateWords } from '../../../shared/words/certificate.en.ts';
import { neverReached } from '../../../shared/ground/never-reached.ts';
import { mm } from '../sheet/ink.ts';
import type { Sheet, TextStyle } from '../sheet/sheet.ts';
import { drawSpan, drawTable, type Cell, type CellText } from '../sheet/table.ts';
import { writeMoment, writeNumber } from '../sheet/write-numbers.ts';

const strong: TextStyle = { face: 'textStrong', size: 8 };
const figure: TextStyle = { face: 'narrowStrong', size: 8.6 };
const limitFigure: TextStyle = { face: 'narrow', size: 8.6 };
const plain: TextStyle = { face: 'text', size: 8 };
const small: TextStyle = { face: 'narrow', size: 7.2, ink: 'soft' };

const cell = (...lines: readonly (CellText | null)[]): Cell => ({ lines: lines.filter((line) => line !== null) });
const of = (text: string, style: TextStyle): CellText => ({ text, style });

/** The table of gates: plan, found, limit, verdict; a rejection stays in sight beside the re-inspection that followed. */
export function drawGates(sheet: Sheet, { gates, language }: CertificateData, words: CertificateWords): void {
  sheet.heading(words.gates, 40 * mm);
  const columns = [
    { head: words.gate, width: 33 * mm }, { head: words.characteristic, width: 36 * mm }, { head: words.plan, width: 30 * mm },
    { head: words.n, width: 8 * mm, isFigure: true }, { head: words.found, width: 19 * mm, isFigure: true },
    { head: words.limit, width: 22 * mm, isFigure: true }, { head: words.verdict, width: 28 * mm },
  ];
  drawTable(sheet, columns, gates.map((gate) => {
    const { stated, statedOf, limit, limitOf } = judged(gate, language, words);
    const isRejected = gate.verdict === 'rejected';
    return [
      cell(of(gate.gate, strong), of(`${words.workedOn[gate.workedOn.kind]} ${gate.workedOn.number}`, small)),
      cell(of(gate.characteristic, plain), of(gate.method, small)),
      cell(of(gate.plan, { face: 'narrow', size: 7.6 })),
      cell(of(String(gate.n), plain)),
      cell(of(stated, figure), statedOf === null ? null : of(statedOf, small)),
      cell(of(limit, limitFigure), limitOf === null ? null : of(limitOf, small)),
      cell(
        { text: words.verdicts[gate.verdict], style: { face: 'textStrong', size: 8, ink: gate.verdict === 'acceptedOnConcession' ? 'alarm' : 'ink' }, isBarred: isRejected },
        gate.isReinspection ? of(words.reinspected, { face: 'narrowStrong', size: 7.2 }) : null,
        of(`${gate.by.name} (${gate.by.badge})`, small), of(writeMoment(gate.at), small),
      ),
    ];
  }));
}

interface Judged {
  readonly stated: string;
  /** What the figure is, where it is not plain. */
  readonly statedOf: string | null;
  readonly limit: string;
  readonly limitOf: string | null;
}

function judged({ result }: CertificateGate, language: string, words: CertificateWords): Judged {
  switch (result.judgedBy) {
    case 'found': return { stated: String(result.found), statedOf: words.foundOf, limit: words.acceptReject(result.acceptance, result.rejection), limitOf: null };
    case 'statistic': {
      const { symbol, value, relation, limit, decimals } = result;
      return { stated: writeNumber(value, decimals, language), statedOf: symbol, limit: `${relation} ${writeNumber(limit, decimals, language)}`, limitOf: null };
    }
    case 'limits': {
      const { symbol, value, lower, upper, unit, decimals } = result;
      return { stated: writeNumber(value, decimals, language), statedOf: symbol, limit: writeLimits(lower, upper, decimals, language, words), limitOf: unit };
    }
    case 'grade': return { stated: result.grade, statedOf: null, limit: result.limit, limitOf: null };
    case 'confirmed': return { stated: words.confirmed, statedOf: null, limit: words.none, limitOf: null };
    default: return neverReached(result);
  }
}

function writeLimits(lower: number | null, upper: number | null, decimals: number, language: string, words: CertificateWords): string {
  if (lower !== null && upper !== null) return words.between(writeNumber(lower, decimals, language), writeNumber(upper, decimals, language));
  if (lower !== null) return `≥ ${writeNumber(lower, decimals, language)}`;
  return upper === null ? words.none : `≤ ${writeNumber(upper, decimals, language)}`;
}

/** The table of measured characteristics, each with a small picture of where its readings lie. */
export function drawMeasured(sheet: Sheet, { measured, language }: CertificateData, words: CertificateWords): void {
  if (measured.length === 0) return;
  sheet.heading(words.measured, 32 * mm);
  const columns = [
    { head: words.name, width: 36 * mm }, { head: words.n, width: 8 * mm, isFigure: true }, { head: words.mean, width: 15 * mm, isFigure: true },
    { head: words.deviation, width: 13 * mm, isFigure: true }, { head: words.least, width: 14 * mm, isFigure: true },
    { head: words.greatest, width: 14 * mm, isFigure: true }, { head: words.lower, width: 14 * mm, isFigure: true },
    { head: words.upper, width: 14 * mm, isFigure: true }, { head: words.span, width: 21 * mm }, { head: words.decision, width: 27 * mm },
  ];
  drawTable(sheet, columns, measured.map((row) => measuredCells(sheet, row, language, words)));
}

function measuredCells(sheet: Sheet, row: CertificateMeasured, language: string, words: CertificateWords): readonly Cell[] {
  const reading = (value: number | null): Cell => cell(of(value === null ? words.none : writeNumber(value, row.decimals, language), plain));
  const finer = (value: number | null, style: TextStyle): Cell => cell(of(value === null ? words.none : writeNumber(value, row.decimals + 1, language), style));
  const uncertainty = row.uncertainty === null ? null : `${writeNumber(row.uncertainty, row.decimals + 1, language)}${row.unit === null ? '' : ` ${row.unit}`}`;
  return [
    cell(of(row.name, strong), row.unit === null ? null : of(row.unit, small)),
    cell(of(String(row.n), plain)),
    finer(row.mean, strong), finer(row.s, plain), reading(row.min), reading(row.max), reading(row.lower), reading(row.upper),
    { draw: (x, y, width) => drawSpan(sheet, row, x + 2 * mm, y, width - 2 * mm), height: 12 },
    cell(of(row.decisionRule, small), uncertainty === null ? null : of(words.uncertainty(uncertainty), small)),
  ];
}
