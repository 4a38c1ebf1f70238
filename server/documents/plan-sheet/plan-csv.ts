import { FINDING_CLASSES, type Characteristic, type FindingClass, type GatePlan } from '../../../shared/traveller/index.ts';
import { askedAtSize, type AskedLine } from '../../../shared/traveller/plan/asked-at-size.ts';
import { formatOfTag } from '../../../shared/words/format.ts';
import { writeRule } from '../../../shared/words/write-rule.ts';
import type { PlanSheetData } from './plan-sheet-data.ts';

const PLANS = ['normal', 'tightened', 'reduced'] as const;
const OF_PLAN = ['letter', 'n', 'samples', 'ac', 're', 'k', 'm_percent', 'table', 'notes'] as const;
const BEFORE = [
  'plan', 'plan_name', 'version', 'standing', 'lot_size', 'gate_number', 'gate', 'gate_name', 'worked_on', 'bench', 'roles', 'characteristic', 'characteristic_name', 'kind', 'method', 'destructive',
  'unit', 'lower', 'target', 'upper', 'rule', 'rule_text', 'class', 'level', 'aql_percent', 'lq_percent', 'p1_percent', 'producer_risk', 'p2_percent', 'consumer_risk', 'sigma', 'switching',
] as const;
type Before = (typeof BEFORE)[number];

/** The columns of a plan as CSV, in their order; docs/plan-export.md says what stands in each. */
export const PLAN_CSV_COLUMNS: readonly string[] = [...BEFORE, ...PLANS.flatMap((plan) => OF_PLAN.map((column) => `${plan}_${column}`))];

/**
 * A version of a plan for a spreadsheet: one row a characteristic and class, its plans at the stated lot size beside each other. Numbers have
 * a point and no groups; lists are separated by semicolons. A text that a spreadsheet would take for a formula gets an apostrophe before it.
 * @see RFC 4180
 */
export function planCsv(data: PlanSheetData): string {
  const rows = data.plan.gates.flatMap((gate, at) => (gate.characteristics.length === 0 ? [gateAlone(data, gate, at)] : gate.characteristics.flatMap((characteristic) => rowsOf(data, gate, at, characteristic))));
  return [PLAN_CSV_COLUMNS, ...rows].map((row) => `${row.map(field).join(',')}\r\n`).join('');
}

type Row = readonly (string | number)[];

function gateAlone(data: PlanSheetData, gate: GatePlan, at: number): Row {
  return row({ ...placeOf(data, gate, at) }, []);
}

function rowsOf(data: PlanSheetData, gate: GatePlan, at: number, characteristic: Characteristic): readonly Row[] {
  const lines = askedAtSize(characteristic, data.lotSize, data.tables);
  const classes: readonly AskedLine['class'][] = lines.length === 0 ? [null] : [...new Set(lines.map((line) => line.class))];
  const { id, name, kind, method, destructive, sampling } = characteristic;
  const measured = characteristic.kind === 'measured' ? { unit: characteristic.unit, lower: characteristic.lower ?? '', target: characteristic.target ?? '', upper: characteristic.upper ?? '' } : {};
  return classes.map((each) => row({
    ...placeOf(data, gate, at), characteristic: id, characteristic_name: name, kind, method, destructive: destructive ? 'yes' : 'no', ...measured,
    rule: sampling.rule, rule_text: writeRule(characteristic, formatOfTag(data.language, 'UTC')), class: each ?? '', ...ruleNumbers(sampling, each),
  }, lines.filter((line) => line.class === each)));
}

function placeOf({ plan, planVersion, standing, lotSize }: PlanSheetData, gate: GatePlan, at: number): Partial<Record<Before, string | number>> {
  return {
    plan: plan.id, plan_name: plan.name, version: planVersion, standing, lot_size: lotSize, gate_number: at + 1, gate: gate.id, gate_name: gate.name, worked_on: gate.workedOn, bench: gate.bench, roles: gate.roles.join(';'),
  };
}

/** What a rule is indexed by, for one class. Percent as percent, risks as fractions. */
function ruleNumbers(rule: Characteristic['sampling'], each: AskedLine['class']): Partial<Record<Before, string | number>> {
  const findingClass: FindingClass | null = FINDING_CLASSES.find((name) => name === each) ?? null;
  const points = rule.rule === 'variables' ? rule.points : (rule.rule === 'twoPoint' || rule.rule === 'sequential') && findingClass !== null ? rule.points[findingClass] : undefined;
  const atPoints = points === undefined ? {} : { p1_percent: points.p1Percent, producer_risk: points.producerRisk, p2_percent: points.p2Percent, consumer_risk: points.consumerRisk };
  switch (rule.rule) {
    case 'attributes': return { level: rule.level, aql_percent: findingClass === null ? '' : rule.aqlPercent[findingClass] ?? '', switching: rule.switching };
    case 'limitingQuality': case 'zeroAcceptance': return { lq_percent: findingClass === null ? '' : rule.lqPercent[findingClass] ?? '', consumer_risk: rule.consumerRisk };
    case 'variables': {
      const aql = rule.separate === undefined ? rule.aqlPercent : each === 'lower' ? rule.separate.lowerAqlPercent : rule.separate.upperAqlPercent;
      return { ...(points === undefined ? { level: rule.level, aql_percent: aql } : atPoints), sigma: rule.sigma ?? '' };
    }
    default: return atPoints;
  }
}

/** A rule without switching has one plan; it stands in the columns of normal inspection. */
function row(before: Partial<Record<Before, string | number>>, lines: readonly AskedLine[]): Row {
  const plans = PLANS.flatMap((severity): Row => {
    const line = lines.find((each) => each.severity === severity || (each.severity === null && severity === 'normal'));
    if (line === undefined) return OF_PLAN.map(() => '');
    const last = line.samples.at(-1);
    return [line.letter ?? '', line.pieces ?? '', line.samples.map(({ sampleSize, ac, re }) => (re === null ? String(sampleSize) : `${sampleSize}:${ac ?? '#'}/${re}`)).join(';'), last?.ac ?? '', last?.re ?? '', line.k ?? '', line.mPercent ?? '', line.table ?? '', line.notes.join(';')];
  });
  return [...BEFORE.map((column) => before[column] ?? ''), ...plans];
}

function field(value: string | number): string {
  if (typeof value === 'number') return String(value);
  const safe = /^[=+\-@\t\r]/.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
