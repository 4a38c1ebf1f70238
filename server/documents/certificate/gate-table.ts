import type { CertificateData, CertificateGate } from '../../../shared/wire/certificate-data.ts';
import type { CertificateWords } from '../../../shared/words/certificate.en.ts';
import { neverReached } from '../../../shared/ground/never-reached.ts';
import { mm } from '../sheet/ink.ts';
import type { Sheet, TextStyle } from '../sheet/sheet.ts';
import { drawTable, type Cell, type CellText, type GroupRow } from '../sheet/table.ts';
import { writeMoment, writeNumber } from '../sheet/write-numbers.ts';

const name: TextStyle = { face: 'textStrong', size: 8.2 };
const strong: TextStyle = { face: 'narrowStrong', size: 8.2 };
const plain: TextStyle = { face: 'narrow', size: 8.2 };
const soft: TextStyle = { face: 'narrow', size: 7.6, ink: 'soft' };

const cell = (text: string, style: TextStyle): Cell => ({ lines: [{ text, style }] });
const of = (text: string, style: TextStyle): CellText => ({ text, style });

/** What the reader needs to read a table, under it. */
export function drawLegend(sheet: Sheet, text: string): void {
  sheet.passage(text, { face: 'narrow', size: 7.5, ink: 'soft' }, { leading: 1.25 });
  sheet.y += 2.2 * mm;
}

/**
 * The table of gates. A row for each verdict, with the subject, by whom and when; under it a line for each characteristic with plan, found and limit.
 * A rejection stays in sight above the re-inspection that followed.
 */
export function drawGates(sheet: Sheet, { gates, language }: CertificateData, words: CertificateWords): void {
  sheet.heading(words.gates, 40 * mm);
  const columns = [
    { head: words.characteristic, width: 38.2 * mm }, { head: words.method, width: 28 * mm }, { head: words.plan, width: 50 * mm },
    { head: words.n, width: 8 * mm, isFigure: true }, { head: words.found, width: 17.2 * mm, isFigure: true },
    { head: words.limit, width: 25.6 * mm, isFigure: true }, { head: words.verdict, width: 15.8 * mm, isFigure: true },
  ];
  const rows = verdictsOf(gates).flatMap((verdict) => [groupRow(verdict, words), ...verdict.map((gate) => gateCells(gate, language, words))]);
  drawTable(sheet, columns, rows, { isClose: true });
  drawLegend(sheet, words.gatesLegend);
}

/** The rows one after the other that one verdict gave: one gate, one subject, one person, one moment. */
function verdictsOf(gates: readonly CertificateGate[]): readonly (readonly [CertificateGate, ...CertificateGate[]])[] {
  const key = ({ gate, workedOn, by, at, isReinspection }: CertificateGate): string => JSON.stringify([gate, workedOn.kind, workedOn.number, by.badge, at, isReinspection]);
  const verdicts: [CertificateGate, ...CertificateGate[]][] = [];
  for (const gate of gates) {
    const last = verdicts.at(-1);
    if (last !== undefined && key(last[0]) === key(gate)) last.push(gate);
    else verdicts.push([gate]);
  }
  return verdicts;
}

function groupRow(verdict: readonly [CertificateGate, ...CertificateGate[]], words: CertificateWords): GroupRow {
  const [{ gate, workedOn, by, at, isReinspection }] = verdict;
  const has = (each: CertificateGate['verdict']): boolean => verdict.some((row) => row.verdict === each);
  const whole = has('rejected') ? 'rejected' : has('acceptedOnConcession') ? 'acceptedOnConcession' : 'accepted';
  const what = [of(gate, name), of(`${words.workedOn[workedOn.kind]} ${workedOn.number}`, soft), ...(isReinspection ? [of(words.reinspected, strong)] : [])];
  return {
    group: [
      { beside: what, columns: 2, isHead: true },
      { beside: [of(`${by.name} (${by.badge})`, soft), of(writeMoment(at), soft)], columns: 3 },
      { beside: [verdictText(words.verdicts[whole], whole, strong)], columns: 2, isRight: true },
    ],
    again: [{ beside: [...what, of(words.continued, soft)], columns: columnsInAll }],
  };
}
const columnsInAll = 7;

function verdictText(text: string, verdict: CertificateGate['verdict'], style: TextStyle): CellText {
  if (verdict === 'accepted') return { text, style };
  return { text, style: { ...strong, size: style.size, ink: 'alarm' }, isBarred: verdict === 'rejected' };
}

function gateCells(gate: CertificateGate, language: string, words: CertificateWords): readonly Cell[] {
  const [found, limit] = judged(gate, language, words);
  return [
    cell(gate.characteristic, plain), cell(gate.method, soft), cell(gate.plan, soft), cell(String(gate.n), plain), cell(found, strong), cell(limit, plain),
    { lines: [verdictText(words.rowVerdicts[gate.verdict], gate.verdict, soft)] },
  ];
}

/** What was found, and the limit it is held against. */
function judged({ result, n }: CertificateGate, language: string, words: CertificateWords): readonly [string, string] {
  switch (result.judgedBy) {
    case 'found': return [words.foundOf(result.found), words.acceptReject(result.acceptance, result.rejection)];
    case 'skipped': return [words.notInspected, words.none];
    case 'statistic': {
      const { symbol, value, relation, limit, decimals } = result;
      return [`${symbol} ${writeNumber(value, decimals, language)}`, `${relation} ${writeNumber(limit, decimals, language)}`];
    }
    case 'limits': {
      const { symbol, value, decimals } = result;
      return [`${symbol} ${writeNumber(value, decimals, language)}`, writeLimits(result, language, words)];
    }
    case 'each': return [result.outside === 0 ? words.allWithin(n) : words.someOutside(result.outside, n), writeLimits(result, language, words)];
    case 'none': return [result.found === 0 ? words.noneFound : words.foundIn(result.found, n), words.noneAllowed];
    case 'grade': return [result.grade, words.worstAccepted(result.limit)];
    case 'confirmed': return [words.confirmed, words.none];
    default: return neverReached(result);
  }
}

interface Limits { readonly lower: number | null; readonly upper: number | null; readonly unit: string | null; readonly decimals: number }

function writeLimits({ lower, upper, unit, decimals }: Limits, language: string, words: CertificateWords): string {
  const write = (value: number): string => writeNumber(value, decimals, language);
  const named = unit === null ? '' : ` ${unit}`;
  if (lower !== null && upper !== null) return `${words.between(write(lower), write(upper))}${named}`;
  if (lower !== null) return `≥ ${write(lower)}${named}`;
  return upper === null ? words.none : `≤ ${write(upper)}${named}`;
}
