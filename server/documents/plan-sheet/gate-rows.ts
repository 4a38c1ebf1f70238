import type { Characteristic, GatePlan } from '../../../shared/traveller/index.ts';
import { askedAtSize, type AskedLine } from '../../../shared/traveller/plan/asked-at-size.ts';
import { formatOfTag, type Format } from '../../../shared/words/format.ts';
import { planRuleWords } from '../../../shared/words/plan-rules.en.ts';
import { planSheetWords as words } from '../../../shared/words/plan-sheet.en.ts';
import { writeAsked } from '../../../shared/words/write-asked.ts';
import { writeLimits, writeRule } from '../../../shared/words/write-rule.ts';
import type { TextStyle } from '../sheet/sheet.ts';
import type { Cell, CellText, Row } from '../sheet/table.ts';
import type { PlanSheetData } from './plan-sheet-data.ts';

const text: TextStyle = { face: 'text', size: 8.8 };
const figure: TextStyle = { face: 'narrow', size: 9 };
const strong: TextStyle = { face: 'textStrong', size: 9.4 };
const soft: TextStyle = { face: 'text', size: 8.6, ink: 'soft' };

/** The notes of a document, each under one number however often it is said. */
export class NoteNumbers {
  readonly texts: string[] = [];

  /** The number of a note, from 1. */
  of(note: AskedLine['notes'][number]): number {
    const said = planRuleWords.notes[note];
    const at = this.texts.indexOf(said);
    return at >= 0 ? at + 1 : this.texts.push(said);
  }
}

/** Rows of a gate: each characteristic with its limits and rule as a group, and under it what the rule asks of the lot. */
export function gateRows(gate: GatePlan, { plan, lotSize, tables, language }: PlanSheetData, notes: NoteNumbers): readonly Row[] {
  const format = formatOfTag(language, 'UTC');
  return gate.characteristics.flatMap((characteristic): readonly Row[] => {
    const lines = plan.appliesTo === 'lot' || (characteristic.sampling.rule !== 'once') ? askedAtSize(characteristic, lotSize, tables) : [];
    return [groupOf(characteristic, format), ...lines.map((line) => rowOf(line, format, notes))];
  });
}

function groupOf(characteristic: Characteristic, format: Format): Row {
  const { name, method, destructive } = characteristic;
  const lines: readonly CellText[] = [
    { text: name, style: strong }, { text: `${method}${destructive ? `; ${words.used}` : ''}`, style: soft },
    { text: writeLimits(characteristic, format).join('; '), style: text }, { text: `${writeRule(characteristic, format)}.`, style: text },
  ];
  return { group: [{ lines, columns: 7, isHead: true }], again: [{ lines: [{ text: `${name}, ${words.again}`, style: strong }], columns: 7 }] };
}

function rowOf(line: AskedLine, format: Format, notes: NoteNumbers): readonly Cell[] {
  const { class: findingClass, severity, letter, n, samples, rest, origin } = writeAsked(line, format);
  const written = (lines: readonly string[], style: TextStyle): Cell => ({ lines: lines.length === 0 ? [{ text: '', style }] : lines.map((each) => ({ text: each.replaceAll('\u00a0', ' '), style })) });
  const numbers = line.notes.map((note) => format.number(notes.of(note))).join(', ');
  const remarks = [...origin, ...(numbers === '' ? [] : [`[${numbers}]`])];
  return [written([findingClass], text), written([severity], text), written([letter], figure), written([n], figure), written(samples, figure), written(rest.length === 0 && samples.length === 0 && n !== '' ? [words.each] : rest, figure), written([remarks.join('; ')], soft)];
}
