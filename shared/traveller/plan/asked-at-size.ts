import { OutsideDomain } from '../../ground/outside-domain.ts';
import { attributesPlan, limitingQualityPlan, stagesOf, tableNotes, zeroAcceptancePlan } from '../../sampling/attributes/index.ts';
import type { OwnTable, Severity, TableNote } from '../../sampling/attributes/index.ts';
import { twoPointDouble, twoPointSingle } from '../../sampling/design/index.ts';
import { sequentialPlan } from '../../sampling/sequential/index.ts';
import { pointsVariablesPlan, SMALLEST_VARIABLES_LOT, variablesPlan } from '../../sampling/variables/index.ts';
import { judgedClasses } from './characteristic.ts';
import type { AttributesRule, Characteristic, FindingClass, LimitingQualityRule, SequentialRule, TwoPointRule, VariablesRule, ZeroAcceptanceRule } from './characteristic.ts';

/** What belongs beside a line besides the notes of its table. */
export type AskedNote = TableNote
  /** The sample reaches the lot. */
  | 'everyPiece'
  /** Between Ac and Re this lot is accepted and normal inspection returns. */
  | 'gap'
  /** No plan of the table is reached from here. */
  | 'unreachable'
  /** There is no reduced plan by variables here; normal is used. */
  | 'noReducedVariables'
  /** The tables by variables begin at three pieces: each piece of a smaller lot is measured and lies within the limits. */
  | 'measuredWhole'
  /** Looked at piece by piece, and cut off at this many. */
  | 'cutOff'
  /** After a run of good lots some are passed over. */
  | 'skipLot'
  /** No plan through these two points is small enough. */
  | 'noDesign';

/** One sample of a plan. Ac is null where it cannot accept yet; both where nothing is counted. */
export interface AskedSample { readonly sampleSize: number; readonly ac: number | null; readonly re: number | null }
/** What one rule asks of one lot, for one class (or limit) on one severity. */
export interface AskedLine {
  readonly class: FindingClass | 'lower' | 'upper' | null;
  /** Null where the rule knows no switching. */
  readonly severity: Severity | null;
  /** All samples together; null where the rule does not say, or there is no plan. */
  readonly pieces: number | null;
  readonly samples: readonly AskedSample[];
  readonly startLetter: string | null;
  readonly letter: string | null;
  readonly arrow: 'none' | 'down' | 'up';
  readonly k: number | null;
  readonly mPercent: number | null;
  /** Lines of a sequential plan: accept at `slope · n − h1` or fewer, reject at `slope · n + h2` or more. */
  readonly lines: null | { readonly h1: number; readonly h2: number; readonly slope: number };
  readonly table: string | null;
  readonly notes: readonly AskedNote[];
}

const SEVERITIES: readonly Severity[] = ['normal', 'tightened', 'reduced'];
const nothing = { class: null, severity: null, pieces: null, samples: [], startLetter: null, letter: null, arrow: 'none', k: null, mPercent: null, lines: null, table: null, notes: [] } as const satisfies AskedLine;

/**
 * What a characteristic asks of a lot of a size, on every severity where it follows switching rules. It is the same look-up that opening a
 * gate does; a size or AQL that has no plan is said in the notes and not thrown.
 * @param lotSize pieces 1 … 1 000 000 000; of a batch or charge it counts for nothing
 * @param tables the plant's own copies of master tables, those loaded
 */
export function askedAtSize({ sampling }: Characteristic, lotSize: number, tables: readonly OwnTable[] = []): readonly AskedLine[] {
  switch (sampling.rule) {
    case 'attributes': return judgedClasses(sampling).flatMap((each) => SEVERITIES.map((severity) => or({ class: each, severity }, () => byAttributes(sampling, each, severity, lotSize, tables))));
    case 'limitingQuality': case 'zeroAcceptance': return judgedClasses(sampling).map((each) => or({ class: each, severity: null }, () => isolated(sampling, each, lotSize)));
    case 'sequential': return judgedClasses(sampling).map((each) => or({ class: each, severity: null }, () => sequential(sampling, each, lotSize)));
    case 'fixed': return [fixed(Math.min(sampling.n, lotSize))];
    case 'barrels': return [fixed(sampling.barrels * sampling.each)];
    case 'positions': return [fixed(sampling.positions.length * sampling.each)];
    case 'everyPiece': return [{ ...nothing, pieces: lotSize, notes: ['everyPiece'] }];
    case 'interval': return [{ ...nothing, pieces: Math.max(1, Math.floor(lotSize / sampling.everyPieces)) * sampling.n, samples: [{ sampleSize: sampling.n, ac: 0, re: 1 }] }];
    case 'once': return [];
    case 'variables': return variablesLines(sampling, lotSize);
    case 'twoPoint': return judgedClasses(sampling).map((each) => or({ class: each, severity: null }, () => twoPoint(sampling, each, lotSize)));
  }
}

function byAttributes(rule: AttributesRule, each: FindingClass, severity: Severity, lotSize: number, tables: readonly OwnTable[]): AskedLine {
  const { level, samples = 'single', ownTables = {}, skipLot } = rule;
  const own = tables.filter((table) => table.id === ownTables[severity]);
  const plan = attributesPlan({ lotSize, level, aqlPercent: rule.aqlPercent[each] ?? Number.NaN, severity, samples, tables: own });
  const stages = stagesOf(plan);
  const gap = plan.samples === undefined && plan.re > plan.ac + 1;
  return {
    ...nothing, class: each, severity, pieces: plan.sampleSize, samples: stages, startLetter: plan.startLetter, letter: plan.letter, arrow: plan.arrow, table: plan.tableSource ?? plan.table,
    notes: [...(plan.everyPiece ? (['everyPiece'] as const) : []), ...(gap ? (['gap'] as const) : []), ...tableNotes(plan), ...(skipLot === undefined || severity !== 'normal' ? [] : (['skipLot'] as const))],
  };
}

function isolated(rule: LimitingQualityRule | ZeroAcceptanceRule, each: FindingClass, lotSize: number): AskedLine {
  const asked = { lotSize, lqPercent: rule.lqPercent[each] ?? Number.NaN, consumerRisk: rule.consumerRisk };
  const plan = rule.rule === 'limitingQuality' ? limitingQualityPlan(asked) : zeroAcceptancePlan(asked);
  return { ...nothing, class: each, pieces: plan.sampleSize, samples: stagesOf(plan), notes: plan.everyPiece ? ['everyPiece'] : [] };
}

function twoPoint(rule: TwoPointRule, each: FindingClass, lotSize: number): AskedLine {
  const points = rule.points[each];
  if (points === undefined) return nothing;
  const asked = { p1: points.p1Percent / 100, producerRisk: points.producerRisk, p2: points.p2Percent / 100, consumerRisk: points.consumerRisk, model: { kind: 'hypergeometric', lotSize } } as const;
  const found = rule.samples === 'double' ? twoPointDouble(asked) : twoPointSingle(asked);
  if ('none' in found) return { ...nothing, class: each, notes: ['noDesign'] };
  const samples = 'stages' in found ? found.stages : [{ sampleSize: found.n, ac: found.ac, re: found.re }];
  return { ...nothing, class: each, pieces: samples.reduce((sum, { sampleSize }) => sum + sampleSize, 0), samples };
}

function sequential(rule: SequentialRule, each: FindingClass, lotSize: number): AskedLine {
  const points = rule.points[each];
  if (points === undefined) return nothing;
  const { sampleSize, truncateAc, h1, h2, slope } = sequentialPlan({ lotSize, ...points });
  return { ...nothing, class: each, pieces: sampleSize, samples: [{ sampleSize, ac: truncateAc, re: truncateAc + 1 }], lines: { h1, h2, slope }, notes: ['cutOff'] };
}

function variablesLines(rule: VariablesRule, lotSize: number): readonly AskedLine[] {
  if (lotSize < SMALLEST_VARIABLES_LOT) return [{ ...nothing, pieces: lotSize, notes: ['measuredWhole'] }];
  const { level, aqlPercent, sigma, form, separate, points } = rule;
  const choices = { ...(sigma === undefined ? {} : { method: 'sigma' as const, sigma }), ...(form === undefined ? {} : { form }) };
  if (points !== undefined) {
    return [or({ class: null, severity: null }, () => {
      const plan = pointsVariablesPlan({ lotSize, points, ...choices });
      return plan === null ? { ...nothing, notes: ['noDesign'] } : { ...nothing, pieces: plan.sampleSize, k: plan.k, mPercent: plan.mPercent, notes: plan.everyPiece ? ['everyPiece'] : [] };
    })];
  }
  return SEVERITIES.flatMap((severity): readonly AskedLine[] => {
    const line = or({ class: null, severity }, () => {
      const plan = variablesPlan({ lotSize, level, aqlPercent, severity: severity === 'tightened' ? 'tightened' : 'normal', ...choices, ...(separate === undefined ? {} : { separate }) });
      const notes: readonly AskedNote[] = [...(plan.everyPiece ? (['everyPiece'] as const) : []), ...(severity === 'reduced' ? (['noReducedVariables'] as const) : [])];
      return { ...nothing, severity, pieces: plan.sampleSize, startLetter: plan.startLetter, letter: plan.letter, arrow: plan.arrow, k: plan.k, mPercent: plan.mPercent, table: plan.tables, notes, sides: plan.separate };
    });
    const { sides, ...both } = { sides: undefined, ...line };
    return sides === undefined ? [both] : (['lower', 'upper'] as const).map((side) => ({ ...both, class: side, k: sides[side].k, mPercent: sides[side].mPercent }));
  });
}

function fixed(n: number): AskedLine {
  return { ...nothing, pieces: n, samples: [{ sampleSize: n, ac: null, re: null }] };
}

function or<Line extends AskedLine>(place: Pick<AskedLine, 'class' | 'severity'>, line: () => Line): Line | AskedLine {
  try {
    return line();
  } catch (error) {
    if (error instanceof OutsideDomain) return { ...nothing, ...place, notes: ['unreachable'] };
    throw error;
  }
}
