import { OutsideDomain } from '../../ground/outside-domain.ts';
import { stagesOf, tableNotes } from '../../sampling/attributes/index.ts';
import type { OwnTable, Severity, TableNote } from '../../sampling/attributes/index.ts';
import { SMALLEST_VARIABLES_LOT } from '../../sampling/variables/index.ts';
import { judgedClasses } from './characteristic.ts';
import type { Characteristic, CountedRule, FindingClass, VariablesRule } from './characteristic.ts';
import { lotPlanFor } from './lot-plan-for.ts';
import { variablesPlanFor } from './variables-plan-for.ts';

/** What belongs beside a line besides the notes of its table. */
export type AskedNote = TableNote
  /** The sample reaches the lot. */
  | 'everyPiece'
  /** An early sample of several cannot accept. */
  | 'notYet'
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
    case 'attributes': case 'limitingQuality': case 'zeroAcceptance': case 'twoPoint': case 'sequential':
      return judgedClasses(sampling).flatMap((each) => (sampling.rule === 'attributes' ? SEVERITIES : [null]).map((severity) => {
        const line = or(() => counted(sampling, each, severity, lotSize, tables));
        return line === 'unreachable' ? { ...nothing, class: each, severity, notes: ['unreachable'] } : line;
      }));
    case 'variables': return measured(sampling, lotSize);
    case 'fixed': return [fixed(Math.min(sampling.n, lotSize))];
    case 'barrels': return [fixed(sampling.barrels * sampling.each)];
    case 'positions': return [fixed(sampling.positions.length * sampling.each)];
    case 'everyPiece': return [{ ...nothing, pieces: lotSize, notes: ['everyPiece'] }];
    case 'interval': return [{ ...nothing, pieces: Math.max(1, Math.floor(lotSize / sampling.everyPieces)) * sampling.n, samples: [{ sampleSize: sampling.n, ac: 0, re: 1 }] }];
    case 'once': return [];
  }
}

function counted(rule: CountedRule, each: FindingClass, severity: Severity | null, lotSize: number, tables: readonly OwnTable[]): AskedLine {
  const ownTables = rule.rule === 'attributes' ? rule.ownTables ?? {} : {};
  const plan = lotPlanFor(rule, each, { lotSize, severity: severity ?? 'normal', tables: tables.filter(({ id }) => severity !== null && id === ownTables[severity]) });
  const line = { ...nothing, class: each, severity };
  if (plan === null) return { ...line, notes: ['noDesign'] };
  if ('slope' in plan) {
    const { sampleSize, truncateAc, h1, h2, slope } = plan;
    return { ...line, pieces: sampleSize, samples: [{ sampleSize, ac: truncateAc, re: truncateAc + 1 }], lines: { h1, h2, slope }, notes: ['cutOff'] };
  }
  const stages = stagesOf(plan);
  const first: readonly AskedNote[] = [...(plan.everyPiece ? (['everyPiece'] as const) : []), ...(stages.some((stage) => stage.ac === null) ? (['notYet'] as const) : [])];
  const asked: AskedLine = { ...line, pieces: plan.sampleSize, samples: stages, notes: first };
  if ('kind' in plan) return asked;
  const { startLetter, letter, arrow, samples, ac, re, tableSource, table } = plan;
  const more: readonly AskedNote[] = [...(samples === undefined && re > ac + 1 ? (['gap'] as const) : []), ...tableNotes(plan), ...(rule.rule === 'attributes' && rule.skipLot !== undefined && severity === 'normal' ? (['skipLot'] as const) : [])];
  return { ...asked, startLetter, letter, arrow, table: tableSource ?? table, notes: [...asked.notes, ...more] };
}

function measured(rule: VariablesRule, lotSize: number): readonly AskedLine[] {
  if (lotSize < SMALLEST_VARIABLES_LOT) return [{ ...nothing, pieces: lotSize, notes: ['measuredWhole'] }];
  return (rule.points === undefined ? SEVERITIES : [null]).flatMap((severity): readonly AskedLine[] => {
    const line = { ...nothing, severity };
    const found = or(() => variablesPlanFor(rule, lotSize, severity ?? 'normal'));
    if (found === 'unreachable') return [{ ...line, notes: ['unreachable'] }];
    if (found === null) return [{ ...line, notes: ['noDesign'] }];
    const whole: readonly AskedNote[] = [...(found.everyPiece ? (['everyPiece'] as const) : []), ...(severity === 'reduced' ? (['noReducedVariables'] as const) : [])];
    const table = found.origin === 'points' ? {} : { startLetter: found.startLetter, letter: found.letter, arrow: found.arrow, table: found.tables };
    const both: AskedLine = { ...line, ...table, pieces: found.sampleSize, k: found.k, mPercent: found.mPercent, notes: whole };
    const { separate } = found;
    return separate === undefined ? [both] : (['lower', 'upper'] as const).map((side) => ({ ...both, class: side, k: separate[side].k, mPercent: separate[side].mPercent }));
  });
}

function fixed(n: number): AskedLine {
  return { ...nothing, pieces: n, samples: [{ sampleSize: n, ac: null, re: null }] };
}

/** A size or AQL that the tables do not know is said, not thrown. */
function or<T>(look: () => T): T | 'unreachable' {
  try {
    return look();
  } catch (error) {
    if (error instanceof OutsideDomain) return 'unreachable';
    throw error;
  }
}
