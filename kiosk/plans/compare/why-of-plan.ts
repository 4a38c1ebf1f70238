import { aqlColumn, tableLines, type AttributesPlan, type IsolatedPlan, type TableCell } from '../../../shared/sampling/attributes/index.ts';
import { planWhyWords as words } from '../../../shared/words/plan-why.en.ts';
import { showFigure, showNumber } from '../../desk/show.ts';
import { labels as tradeLabels } from '../../desk/words.ts';
import type { Compared, Judged } from './compared-plan.ts';
import { percentText, sizesText } from './compared-text.ts';
import { valueAt } from './values.ts';
import type { Excerpt, Why } from './why.ts';

const { labels, table: tableWords, excerpt: cells } = words;
const line = (label: string, text: string): Why['lines'][number] => ({ label, text });
const formula = (label: string, text: string): Why['lines'][number] => ({ label, text, formula: true });

/** Why a plan has these samples and numbers. */
export function whyOfPlan(compared: Compared): Why {
  const { judged } = compared;
  switch (judged.by) {
    case 'table': return whyOfTable(judged.plan);
    case 'isolated': return whyOfIsolated(judged.plan);
    case 'points': return whyOfPoints(compared, judged);
    case 'sequential': {
      const { h1, h2, slope, truncateAt, truncateAc } = judged.plan;
      const put = words.sequential.inputs(showNumber(h1, 4), showNumber(h2, 4), showNumber(slope, 5), showFigure(truncateAt), showFigure(truncateAc));
      return { lines: [line(labels.rule, words.sequential.rule), formula(labels.formula, words.sequential.formula), formula(labels.inputs, put), ...reached(compared)], excerpt: null, sources: [{ text: words.sequential.law, tag: 'memory' }, { text: words.sequential.cut, tag: 'memory' }] };
    }
    case 'measured': return whyOfMeasured(compared, judged);
  }
}

function whyOfTable(plan: AttributesPlan): Why {
  const { lotSize, level, startLetter, letter, table, arrow, stages, re, ac, everyPiece, tableSampleSize, instead, tableSource } = plan;
  if (lotSize === 1) return { lines: [line(labels.rule, tableWords.onePiece)], excerpt: null, sources: [{ text: tableWords.letters, tag: 'seen' }] };
  const aql = showFigure(plan.aqlPercent);
  const way = arrow === 'none' ? tableWords.none(letter) : tableWords[arrow](startLetter, letter);
  return {
    lines: [
      line(labels.clause, tableWords.clause), ...(stages === undefined ? [] : [line(labels.clause, tableWords.several)]), ...(re > ac + 1 ? [line(labels.clause, tableWords.gap)] : []),
      line(labels.row, tableWords.row(showFigure(lotSize), level, startLetter)), line(labels.table, tableSource === undefined ? tableWords.master(table) : tableWords.own(tableSource)), line(labels.column, tableWords.column(aql)),
      line(labels.arrow, way), ...(instead === undefined ? [] : [line(labels.rule, tableWords.instead[instead])]), ...(everyPiece ? [line(labels.rule, tableWords.whole(showFigure(tableSampleSize), showFigure(lotSize)))] : []),
    ],
    excerpt: tableSource === undefined ? excerptOf(plan) : null,
    sources: [
      { text: tableWords.letters, tag: 'seen' },
      tableSource === undefined ? { text: `${tableWords.master(table)}: ${tableWords.masterHow[table]}`, tag: wasSeen(plan) ? 'seen' : 'memory' } : { text: tableWords.own(tableSource), tag: 'practice' },
    ],
  };
}

/** The cells that were read in a text: AQL 0.65 to 15, on tightened inspection to letter L (docs/methods/attributes.md). */
function wasSeen({ table, aqlPercent, letter }: AttributesPlan): boolean {
  return aqlPercent >= 0.65 && aqlPercent <= 15 && (table === 'II-A' || (table === 'II-B' && letter <= 'L'));
}

/** The rows of the column between the letter of the lot and the plan, with one more on either side. */
function excerptOf({ severity, samples, aqlPercent, table, startLetter, letter }: AttributesPlan): Excerpt | null {
  const rows = tableLines(samples ?? 'single', severity);
  if (rows === null) return null;
  const at = (wanted: string): number => rows.findIndex((row) => row.letter === wanted);
  const [from, to] = [Math.min(at(startLetter), at(letter)), Math.max(at(startLetter), at(letter))];
  if (from < 0) return null;
  const column = aqlColumn(aqlPercent);
  const shown = rows.slice(Math.max(from - 1, 0), to + 2).map((row) => {
    const between = at(row.letter) >= from && at(row.letter) <= to;
    const way = row.letter === letter ? cells.ends : row.letter === startLetter ? cells.begins : between ? cells.passed : '';
    return { letter: row.letter, size: sizesText(row.sizes), cell: cellText(row.cells[column] ?? 'unreachable'), way, marked: row.letter === letter };
  });
  return { caption: cells.caption(table, showFigure(aqlPercent)), rows: shown };
}

function cellText(cell: TableCell): string {
  if (typeof cell === 'string') return cell === 'unreachable' ? cells.none : cells[cell];
  return cell.map(({ ac, re }) => cells.pair(ac === null ? cells.notYet : showFigure(ac), showFigure(re))).join('; ');
}

function whyOfIsolated({ kind, lotSize, sampleSize, ac, lqPercent, consumerRisk, riskAtLq }: IsolatedPlan): Why {
  const nonconforming = Math.max(1, Math.ceil(Number(((lotSize * (lqPercent ?? 0)) / 100).toPrecision(14))));
  const put = words.isolated.inputs(showFigure(sampleSize), showFigure(lotSize), showFigure(nonconforming), showFigure(ac), percentText(riskAtLq, 5), percentText(consumerRisk));
  return {
    lines: [line(labels.rule, words.isolated.rule), line(labels.rule, kind === 'zeroAcceptance' ? words.isolated.zero : words.isolated.ac), formula(labels.formula, words.isolated.formula), formula(labels.inputs, put)],
    excerpt: null,
    sources: [...(kind === 'limitingQuality' ? [{ text: words.isolated.idea, tag: 'memory' as const }] : []), { text: words.isolated.law, tag: 'memory' }, { text: words.isolated.plan, tag: 'computed' }],
  };
}

function whyOfPoints({ producerAt, consumerAt }: Compared, { stages, reached: { producerRisk, consumerRisk } }: Extract<Judged, { readonly by: 'points' }>): Why {
  return {
    lines: [line(labels.rule, words.points.rule), ...(stages.length > 1 ? [line(labels.rule, words.points.double)] : []), formula(labels.formula, words.points.formula), formula(labels.inputs, words.points.inputs(percentText(producerAt ?? 0, 4), percentText(1 - producerRisk, 5), percentText(consumerAt ?? 0, 4), percentText(consumerRisk, 5)))],
    excerpt: null, sources: [{ text: words.points.law, tag: 'seen' }, { text: words.points.plan, tag: 'computed' }],
  };
}

function whyOfMeasured(compared: Compared, { method, table }: Extract<Judged, { readonly by: 'measured' }>): Why {
  const law = formula(labels.formula, method === 's' ? words.measured.formulaS : words.measured.formulaSigma);
  if (table === null) return { lines: [line(labels.rule, words.measured.points), law, ...reached(compared)], excerpt: null, sources: [{ text: words.measured.laws[method], tag: 'memory' }, { text: words.points.plan, tag: 'computed' }] };
  const { lotSize, level, startLetter, letter, severity, arrow, separate } = table;
  const aqlPercent = separate?.lower.aqlPercent ?? table.aqlPercent;
  return {
    lines: [
      line(labels.clause, words.measured.clause), ...(method === 'sigma' ? [line(labels.rule, words.measured.sigma)] : []), line(labels.row, words.measured.row(showFigure(lotSize), level, startLetter)),
      line(labels.table, words.measured.tables(tradeLabels.severities[severity])), line(labels.column, words.measured.column(showFigure(aqlPercent))), ...(separate === undefined ? [] : [line(labels.rule, words.measured.other(showFigure(separate.upper.aqlPercent)))]), line(labels.arrow, arrow === 'none' ? tableWords.none(letter) : tableWords.down(startLetter, letter)), law, ...reached(compared),
    ],
    excerpt: null,
    sources: [{ text: words.measured.letters, tag: 'memory' }, { text: words.measured.k, tag: 'memory' }, { text: words.measured.m, tag: 'memory' }, { text: words.measured.laws[method], tag: 'memory' }, { text: words.risk.exact, tag: 'computed' }],
  };
}

/** What the plan reaches at the points it was chosen for; a process, so binomial. */
function reached(compared: Compared): Why['lines'] {
  const accepted = (p: number | null): readonly [string, string] | null => (p === null ? null : [percentText(p, 4), percentText(valueAt(compared, 'acceptance', 'binomial', p), 5)]);
  const [first, second] = [accepted(compared.producerAt), accepted(compared.consumerAt)];
  if (first === null) return [];
  return [formula(labels.inputs, second === null ? words.risk.atAccepted(...first) : words.points.inputs(...first, ...second))];
}
