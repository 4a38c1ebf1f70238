import { isOurCaution } from '../../../shared/traveller/index.ts';
import type { GatePlan } from '../../../shared/traveller/index.ts';
import { cautions, cautionRule, cautionWord } from '../../../shared/words/cautions.en.ts';
import { formatOfTag } from '../../../shared/words/format.ts';
import { labels } from '../../../shared/words/labels.en.ts';
import { planSheetWords as words } from '../../../shared/words/plan-sheet.en.ts';
import { ink, mm } from '../sheet/ink.ts';
import { Sheet, type TextStyle } from '../sheet/sheet.ts';
import { drawTable } from '../sheet/table.ts';
import { writeMoment } from '../sheet/write-numbers.ts';
import { gateRows, NoteNumbers } from './gate-rows.ts';
import type { PlanSheetData } from './plan-sheet-data.ts';

const plain: TextStyle = { face: 'text', size: 9.4 };
const small: TextStyle = { face: 'text', size: 8.4, ink: 'soft' };
const columnWidths = [20, 20, 12, 17, 40, 37, 30] as const;

/** A version of an inspection plan on A4: every gate with its cautions, every characteristic with its limits, rule and plans at the stated lot size, the signatures. */
export function planSheetPdf(data: PlanSheetData): Promise<Buffer> {
  const { plan, planVersion, standing, language } = data;
  const format = formatOfTag(language, 'UTC');
  const number = format.number(planVersion);
  const sheet = new Sheet({ title: words.title(plan.id, number), language, madeAt: new Date(data.printedAt) });
  const notes = new NoteNumbers();
  drawHead(sheet, data, number);
  plan.gates.forEach((gate, at) => drawGate(sheet, data, gate, at, notes));
  if (notes.texts.length > 0) {
    sheet.heading(words.notes, 12 * mm);
    notes.texts.forEach((text, at) => sheet.passage(words.note(format.number(at + 1), text), { face: 'text', size: 8.6 }));
    sheet.y += 2 * mm;
  }
  drawApprovals(sheet, data);
  return sheet.finish((page, of) => {
    sheet.doc.rect(sheet.left, sheet.bottom + 9, sheet.width, 0.5).fill(ink.rule);
    const foot: TextStyle = { face: 'text', size: 7.8, ink: 'soft' };
    const standingText = standing === 'inForce' ? '' : ` · ${words.standings[standing]}`;
    sheet.line(`${data.plant} · ${words.title(plan.id, number)}${standingText}${data.demo ? ` · ${words.demo}` : ''}`, sheet.left, sheet.bottom + 20, foot);
    sheet.line(words.page(page, of), sheet.left, sheet.bottom + 20, { ...foot, face: 'textStrong', ink: 'ink', isFigure: true }, sheet.width);
  });
}

function drawHead(sheet: Sheet, data: PlanSheetData, number: string): void {
  const { plan, standing, lotSize } = data;
  const { left, width, y } = sheet;
  const format = formatOfTag(data.language, 'UTC');
  sheet.tag('P', () => sheet.line(data.plant, left, y + 10, { face: 'textStrong', size: 10.5 }));
  if (data.demo) sheet.tag('P', () => sheet.line(words.demo, left, y + 10, { face: 'narrowStrong', size: 10, ink: 'alarm', isFigure: true }, width));
  sheet.rule(left, y + 17, width, 1.6, 'ink');
  sheet.tag('H1', () => sheet.line(`${words.heading} ${plan.id}`, left, y + 43, { face: 'textStrong', size: 22 }));
  sheet.tag('P', () => sheet.line(words.version(number), left, y + 43, { face: 'textStrong', size: 13, isFigure: true }, width));
  sheet.y = y + 50;
  sheet.passage(plan.name, { face: 'text', size: 11 });
  sheet.y += 1.5 * mm;
  drawStanding(sheet, standing);
  sheet.passage(`${words.appliesTo(labels.subjectKinds[plan.appliesTo])} ${words.drafted(data.draftedBy, writeMoment(data.draftedAt), data.why)}`, plain);
  if (plan.appliesTo === 'lot') sheet.passage(words.lotSize(labels.pieces(lotSize, format.number(lotSize))), plain);
  sheet.passage(words.printed(writeMoment(data.printedAt)), small);
  sheet.y += 2 * mm;
}

/** A version in force has its word on a wash; any other stands out from afar. */
function drawStanding(sheet: Sheet, standing: PlanSheetData['standing']): void {
  const style: TextStyle = { face: 'narrowStrong', size: 13, ink: standing === 'inForce' ? 'ink' : 'paper' };
  const text = words.standings[standing];
  sheet.bar(sheet.left, sheet.y, standing === 'inForce' ? sheet.textWidth(text, style) + 12 : sheet.width, 20, standing === 'inForce' ? 'wash' : 'alarm');
  sheet.tag('P', () => sheet.line(text, sheet.left + 6, sheet.y + 14.5, style));
  sheet.y += 26;
}

function drawGate(sheet: Sheet, data: PlanSheetData, gate: GatePlan, at: number, notes: NoteNumbers): void {
  const format = formatOfTag(data.language, 'UTC');
  sheet.heading(words.gate(format.number(at + 1), gate.name), 34 * mm);
  if (gate.workedOn !== data.plan.appliesTo) {
    sheet.passage(words.elsewhere(labels.subjectKinds[gate.workedOn]), plain);
    sheet.y += 2 * mm;
    return;
  }
  sheet.passage(words.gateAt(gate.bench, format.either(gate.roles.map((role) => labels.roles[role].toLowerCase()))), plain);
  const reminders = gate.cautions.flatMap((key) => cautionText(key, data));
  if (reminders.length > 0) sheet.passage(`${cautionWord}: ${reminders.join(' ')} ${cautionRule}`, small);
  sheet.y += 1 * mm;
  const heads = Object.values(words.columns);
  drawTable(sheet, columnWidths.map((width, column) => ({ head: heads[column] ?? '', width: width * mm })), gateRows(gate, data, notes));
}

function drawApprovals(sheet: Sheet, { approvals }: PlanSheetData): void {
  sheet.heading(words.approvals, 24 * mm);
  if (approvals.length > 0) {
    const { meaning, who, at } = words.approvalColumns;
    drawTable(sheet, [{ head: meaning, width: 50 * mm }, { head: who, width: 76 * mm }, { head: at, width: 50 * mm }], approvals.map((signature) => [
      { lines: [{ text: words.plannedBy, style: plain }] }, { lines: [{ text: `${signature.name} (${signature.badge})`, style: { ...plain, face: 'textStrong' } }] }, { lines: [{ text: writeMoment(signature.at), style: { face: 'narrow', size: 9 } }] },
    ]));
  }
  if (approvals.length < 2) sheet.passage(approvals.length === 0 ? words.noApproval : words.oneApproval, plain);
}

/** The words of a caution as the plant has them now; none where it is switched off. */
function cautionText(key: string, { cautions: written }: PlanSheetData): readonly string[] {
  const own = written.find(({ caution }) => caution === key);
  if (own?.shown === false) return [];
  return [own?.text ?? (isOurCaution(key) ? cautions[key] : key)];
}
