import { insertDimensions, insertLimits, LENGTH_DECIMALS, LIMITED_SIZES } from '../../carbide/index.ts';
import type { InsertDesignation, InsertSizeLimits, LimitChoices, LimitedSize, MeasuredWhen } from '../../carbide/index.ts';
import type { SwitchingRule } from '../../sampling/switching/index.ts';
import type { InspectionLevel } from '../../sampling/attributes/index.ts';
import type { VariablesLevel } from '../../sampling/variables/index.ts';
import type { Characteristic, FindingClass, Measured, NonconformityKind } from './characteristic.ts';
import type { GatePlan, InspectionPlan } from './gate-plan.ts';

/** Names and methods that a proposed plan is written with. They are the plan's own texts: shared/words brings them. */
export interface ProposalTexts {
  readonly gates: Readonly<Record<ProposedGate, { readonly name: string; readonly bench: string }>>;
  readonly sizes: Readonly<Record<LimitedSize | 'r', { readonly name: string; readonly method: string; readonly gaugeKind: string }>>;
  readonly measured: (method: string, when: MeasuredWhen) => string;
  readonly weight: { readonly name: string; readonly method: string; readonly gaugeKind: string };
  readonly looks: Readonly<Record<'press' | 'edge' | 'final' | 'marking', { readonly name: string; readonly method: string; readonly kinds: readonly NonconformityKind[] }>>;
  readonly marking: { readonly name: string; readonly method: string; readonly statement: (marking: string) => string };
}
export const PROPOSED_GATES = ['powder', 'pressing', 'sintered', 'dimensions', 'edge', 'coating', 'final-visual', 'marking'] as const;
export type ProposedGate = (typeof PROPOSED_GATES)[number];

/** What a quality engineer says beside the designation. */
export interface PlanChoices extends LimitChoices {
  readonly id: string;
  readonly name: string;
  /** Of the sizes, by variables. */
  readonly dimensions: { readonly level: VariablesLevel; readonly aqlPercent: number; readonly decisionRule: Measured['decisionRule'] };
  /** Of what is seen, by attributes. */
  readonly looks: { readonly level: InspectionLevel; readonly switching: SwitchingRule; readonly aqlPercent: Readonly<Record<FindingClass, number>> };
  /** ± of the corner radius, mm; null where it is not measured. No class limits it. */
  readonly cornerRadiusPlusMinusMm: number | null;
  readonly coated: boolean;
  readonly marking: string;
  /** Gates of another route, into which only the dimension gate is put; null for the usual route. */
  readonly route: readonly GatePlan[] | null;
}

/** Why a size that the insert has is not in the plan. */
export type LeftOut = 'noLimits' | 'noTarget' | 'nothingToMeasure';
export interface ProposedPlan {
  readonly plan: InspectionPlan;
  readonly leftOut: readonly { readonly size: LimitedSize | 'r'; readonly why: LeftOut }[];
}

/**
 * An inspection plan of a lot from its designation: the usual route with a gate of dimensions whose limits are those of the tolerance class.
 * Measured after coating, that gate stands behind the coating's. A size without limits is left out and named; nothing is guessed. The press
 * tolerance of 0.5 %, the look at every 250th piece and the route itself are common practice, no source: the plant changes them.
 * @throws OutsideDomain for choices that insertLimits does not know
 * @see limits: ISO 1832 by insertLimits; a plan proposed so passes requireSound where its AQLs are preferred values
 */
export function proposePlan(designation: InsertDesignation, choices: PlanChoices, texts: ProposalTexts): ProposedPlan {
  const limits = insertLimits(designation, choices);
  const leftOut: { size: LimitedSize | 'r'; why: LeftOut }[] = [];
  const sizes = LIMITED_SIZES.flatMap((size): Measured[] => {
    const found = sizeOf(limits[size], choices, texts);
    if (found === null || typeof found === 'object') return found === null ? [] : [found];
    leftOut.push({ size, why: found });
    return [];
  });
  const radius = radiusOf(designation, choices, texts);
  if (radius === 'nothingToMeasure') leftOut.push({ size: 'r', why: radius });
  const dimensions: GatePlan = {
    id: 'dimensions', ...texts.gates.dimensions, workedOn: 'lot', roles: ['inspector'], cautions: ['sharpEdges'], characteristics: [...sizes, ...(radius === null || radius === 'nothingToMeasure' ? [] : [radius])],
  };
  const isAfter = choices.measured?.when === 'afterCoating';
  const route = choices.route ?? usualRoute(choices, texts);
  return { plan: { id: choices.id, name: choices.name, appliesTo: 'lot', gates: withDimensions(route, dimensions, isAfter) }, leftOut };
}

/** A size as a characteristic; null where the insert has none, or the reason why it cannot be one. */
function sizeOf({ size, targetMm, tolerance, lowerMm, upperMm }: InsertSizeLimits, choices: PlanChoices, texts: ProposalTexts): Measured | LeftOut | null {
  if (targetMm === null) return tolerance.kind === 'none' ? null : 'noTarget';
  if (lowerMm === null || upperMm === null) return 'noLimits';
  // A control dimension smaller than its deviation says nothing about the corner.
  return lowerMm <= 0 ? 'nothingToMeasure' : measured(size, { targetMm, lowerMm, upperMm }, choices, texts);
}

function radiusOf(designation: InsertDesignation, choices: PlanChoices, texts: ProposalTexts): Measured | 'nothingToMeasure' | null {
  const { cornerRadiusPlusMinusMm: plusMinus } = choices;
  if (plusMinus === null) return null;
  const nominal = insertDimensions(designation, choices.chosenCircleMm).cornerRadius?.nominalMm ?? 0;
  if (nominal - plusMinus <= 0) return 'nothingToMeasure';
  return measured('r', { targetMm: nominal, lowerMm: thousandths(nominal - plusMinus), upperMm: thousandths(nominal + plusMinus) }, choices, texts);
}

interface Limits { readonly targetMm: number; readonly lowerMm: number; readonly upperMm: number }
const IDS: Readonly<Record<LimitedSize | 'r', string>> = { d: 'circle', m: 'corner', s: 'thickness', r: 'radius' };

function measured(size: LimitedSize | 'r', { targetMm, lowerMm, upperMm }: Limits, { dimensions: { level, aqlPercent, decisionRule }, measured: when = { when: 'beforeCoating' }, coated }: PlanChoices, texts: ProposalTexts): Measured {
  const { name, method, gaugeKind } = texts.sizes[size];
  const room = 2 * (upperMm - lowerMm);
  return {
    kind: 'measured', id: IDS[size], name, method: coated ? texts.measured(method, when) : method, destructive: false, unit: 'mm', decimals: LENGTH_DECIMALS, lower: lowerMm, upper: upperMm, target: targetMm,
    // Half and one and a half of the size: a slipped decimal lies far outside, a bad piece within.
    plausible: { least: thousandths(Math.max(0, Math.min(targetMm / 2, lowerMm - room))), most: thousandths(Math.max(1.5 * targetMm, upperMm + room)) },
    gaugeKind, decisionRule, entry: { how: 'direct' }, factor: null, pressTolerancePercent: null, sampling: { rule: 'variables', level, aqlPercent },
  };
}

/** The gate of dimensions in place of the one of its key, or behind the furnace's (the coating's, where it is measured after it). */
function withDimensions(route: readonly GatePlan[], dimensions: GatePlan, isAfterCoating: boolean): readonly GatePlan[] {
  const others = route.filter(({ id }) => id !== dimensions.id);
  const before = route.findIndex(({ id }) => id === dimensions.id);
  const coating = others.findIndex(({ workedOn }) => workedOn === 'coating');
  const furnace = others.findLastIndex(({ workedOn }) => workedOn === 'furnace');
  const at = isAfterCoating && coating >= 0 ? coating + 1 : before >= 0 && before <= others.length ? before : furnace + 1;
  const replaced = route[before];
  const gate = replaced === undefined ? dimensions : { ...dimensions, name: replaced.name, bench: replaced.bench, roles: replaced.roles, cautions: replaced.cautions };
  return [...others.slice(0, at), ...(gate.characteristics.length === 0 ? [] : [gate]), ...others.slice(at)];
}

function usualRoute(choices: PlanChoices, texts: ProposalTexts): readonly GatePlan[] {
  const elsewhere = (id: ProposedGate, workedOn: GatePlan['workedOn']): GatePlan => ({ id, ...texts.gates[id], workedOn, roles: ['lab'], cautions: [], characteristics: [] });
  const here = (id: ProposedGate, cautions: GatePlan['cautions'], characteristics: readonly Characteristic[]): GatePlan => ({ id, ...texts.gates[id], workedOn: 'lot', roles: ['inspector'], cautions, characteristics });
  return [
    elsewhere('powder', 'batch'),
    here('pressing', ['dust', 'press'], [
      {
        kind: 'measured', id: 'weight', ...texts.weight, destructive: false, unit: 'g', decimals: 3, lower: null, upper: null, target: null, plausible: { least: 0.1, most: 200 }, decisionRule: 'simple',
        entry: { how: 'direct' }, factor: null, pressTolerancePercent: 0.5, sampling: { rule: 'everyPiece', ejectAtMostPercent: 2 },
      },
      { kind: 'counted', id: 'looks', ...texts.looks.press, destructive: false, sampling: { rule: 'interval', everyPieces: 250, n: 5 } },
    ]),
    elsewhere('sintered', 'furnace'),
    here('edge', ['sharpEdges', 'eyes'], [counted('edge-look', texts.looks.edge, choices)]),
    ...(choices.coated ? [elsewhere('coating', 'coating')] : []),
    here('final-visual', ['sharpEdges', 'eyes'], [counted('looks', texts.looks.final, choices)]),
    here('marking', ['laser'], [
      { kind: 'confirmed', id: 'text', name: texts.marking.name, method: texts.marking.method, destructive: false, statement: texts.marking.statement(choices.marking), sampling: { rule: 'once' } },
      counted('legible', texts.looks.marking, choices),
    ]),
  ];
}

function counted(id: string, look: ProposalTexts['looks']['final'], { looks: { level, switching, aqlPercent } }: PlanChoices): Characteristic {
  const judged = Object.fromEntries(look.kinds.map((kind) => [kind.class, aqlPercent[kind.class]]));
  return { kind: 'counted', id, ...look, destructive: false, sampling: { rule: 'attributes', switching, level, aqlPercent: judged } };
}

function thousandths(mm: number): number {
  return Math.round(mm * 1000) / 1000;
}
