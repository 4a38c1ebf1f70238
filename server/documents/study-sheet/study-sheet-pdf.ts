import { studyResult } from '../../../shared/traveller/index.ts';
import { formatOfTag } from '../../../shared/words/format.ts';
import { signatureSentence } from '../../../shared/words/gate-slips.en.ts';
import { labels } from '../../../shared/words/labels.en.ts';
import { studyKindWords } from '../../../shared/words/study-slips.en.ts';
import { studyWords as words } from '../../../shared/words/study-sheet.en.ts';
import { studyTables, studyTold } from '../../../shared/words/study-tables.en.ts';
import { ink, mm } from '../sheet/ink.ts';
import { Sheet, type TextStyle } from '../sheet/sheet.ts';
import { drawTable } from '../sheet/table.ts';
import { writeMoment } from '../sheet/write-numbers.ts';
import { drawReadings } from './draw-readings.ts';
import type { StudySheetData } from './study-sheet-data.ts';

const plain: TextStyle = { face: 'text', size: 9.4 };
const cell: TextStyle = { face: 'text', size: 8.6 };

/** A closed study on A4: what was measured by whom, the result in sentences, its tables, and every reading as a point. */
export async function studySheetPdf(data: StudySheetData): Promise<Buffer> {
  const { study, language, plant, demo } = data;
  const format = formatOfTag(language, 'UTC');
  const sheet = new Sheet({ title: words.title(study.id), language, madeAt: new Date(data.printedAt) });
  drawHead(sheet, data);
  const choices = study.closed === null ? null : { poolAbove: study.closed.poolAbove, confidence: study.closed.confidence };
  const result = choices === null ? null : studyResult(study, choices);
  if (study.closed !== null && choices !== null && result !== null) {
    for (const sentence of studyTold(result, study, choices, format)) sheet.passage(sentence, plain);
    sheet.y += 2 * mm;
    for (const { title, columns, rows } of studyTables(result, study, choices, format)) {
      sheet.heading(title, 24 * mm);
      // Limits are two figures: their column is twice as wide.
      const shares = columns.map((_, at) => (at === 0 || rows.some((row) => row[at]?.includes('…')) ? 2 : 1));
      const share = sheet.width / shares.reduce((sum, each) => sum + each, 0);
      drawTable(sheet, columns.map((head, at) => ({ head, width: share * (shares[at] ?? 1), isFigure: at > 0 })), rows.map((row) => row.map((text, at) => ({ lines: [{ text, style: cell }], ...(at === 0 ? { isHead: true } : {}) }))), { isClose: true });
      sheet.y += 3 * mm;
    }
    drawReadings(sheet, study);
    sheet.y += 3 * mm;
    sheet.passage(signatureSentence(study.closed.signature, { format: { ...format, dateTime: writeMoment }, labels }), { face: 'textStrong', size: 9.4 });
  }
  return sheet.finish((page, of) => {
    sheet.doc.rect(sheet.left, sheet.bottom + 9, sheet.width, 0.5).fill(ink.rule);
    const foot: TextStyle = { face: 'text', size: 7.8, ink: 'soft' };
    sheet.line(`${plant} · ${words.title(study.id)}${demo ? ` · ${words.demo}` : ''}`, sheet.left, sheet.bottom + 20, foot);
    sheet.line(words.page(page, of), sheet.left, sheet.bottom + 20, { ...foot, face: 'textStrong', ink: 'ink', isFigure: true }, sheet.width);
  });
}

function drawHead(sheet: Sheet, { study, plant, demo, language }: StudySheetData): void {
  const format = formatOfTag(language, 'UTC');
  const { left, width, y } = sheet;
  sheet.tag('P', () => sheet.line(plant, left, y + 10, { face: 'textStrong', size: 10.5 }));
  if (demo) sheet.tag('P', () => sheet.line(words.demo, left, y + 10, { face: 'narrowStrong', size: 10, ink: 'alarm', isFigure: true }, width));
  sheet.rule(left, y + 17, width, 1.6, 'ink');
  sheet.tag('H1', () => sheet.line(`${studyKindWords[study.studyKind]} ${study.id}`, left, y + 43, { face: 'textStrong', size: 20 }));
  sheet.y = y + 52;
  const { unit, name } = study.gaugeThen;
  sheet.passage(words.about(study.characteristic, `${study.gauge} (${name})`, format.count(study.parts.length), format.list(study.people.map((person) => person.name)), format.count(study.trials)), plain);
  sheet.passage([words.opened(writeMoment(study.openedAt)), ...(study.tolerance === null ? [] : [words.tolerance(`${format.number(study.tolerance)} ${unit}`)])].join(' · '), { face: 'text', size: 8.4, ink: 'soft' });
  sheet.y += 2 * mm;
}
