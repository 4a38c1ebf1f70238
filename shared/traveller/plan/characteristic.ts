import type { SaturationUnit } from '../../carbide/index.ts';
import type { PowderFactor } from './powder-factor.ts';
import type { DriftLambda } from '../../metrology/drift/index.ts';
import type { InspectionLevel } from '../../sampling/attributes/index.ts';
import type { SwitchingRule } from '../../sampling/switching/index.ts';
import type { DecisionRule } from '../../metrology/decision-rules/index.ts';
import type { VariablesLevel } from '../../sampling/variables/index.ts';

export const FINDING_CLASSES = ['critical', 'major', 'minor'] as const;
export type FindingClass = (typeof FINDING_CLASSES)[number];

/** One kind of nonconformity that an inspector may find, and the class it counts in. */
export interface NonconformityKind {
  readonly code: string;
  readonly name: string;
  readonly class: FindingClass;
}

/** How many, and how the result is judged. `each`: every value within the limits; `mean`: the mean of all within them. */
export type AcceptBy = 'each' | 'mean';

/** Lots passed over after a run of good ones (Dodge and Perry's SkSP-2): after `clearance` accepted in a row only one lot in `oneIn` is inspected. */
export interface SkipLot { readonly clearance: number; readonly oneIn: number }

/** Lot by lot, indexed by AQL (MIL-STD-105E, ISO 2859-1). */
export interface AttributesRule {
  readonly rule: 'attributes';
  readonly switching: SwitchingRule;
  readonly level: InspectionLevel;
  /** One AQL a class that this characteristic counts: percent nonconforming, or nonconformities per 100. */
  readonly aqlPercent: Partial<Readonly<Record<FindingClass, number>>>;
  /** How many samples a lot may take; single unless given. */
  readonly samples?: 'single' | 'double' | 'multiple';
  /** Nonconforming pieces unless given; of nonconformities a piece may have several, and AQLs above 10 are for them alone. */
  readonly counts?: 'nonconforming' | 'nonconformities';
  readonly skipLot?: SkipLot;
  /** The plant's own copies of master tables, by the severity they stand for: ids of `table` streams. */
  readonly ownTables?: Partial<Readonly<Record<'normal' | 'tightened' | 'reduced', string>>>;
}
/** Isolated lots: the largest percent nonconforming that is to be accepted no more often than `consumerRisk`, one a class (ISO 2859-2). */
export interface LimitingQualityRule { readonly rule: 'limitingQuality'; readonly lqPercent: Partial<Readonly<Record<FindingClass, number>>>; readonly consumerRisk: number }
/** The same with Ac 0, whatever the class. */
export interface ZeroAcceptanceRule { readonly rule: 'zeroAcceptance'; readonly lqPercent: Partial<Readonly<Record<FindingClass, number>>>; readonly consumerRisk: number }
/** Two points of an operating characteristic: p1 accepted with 1 − producer's risk or more, p2 with the consumer's risk or less. Percent; risks as fractions. */
export interface RiskPoints { readonly p1Percent: number; readonly producerRisk: number; readonly p2Percent: number; readonly consumerRisk: number }
/** The smallest plan through two points, one a class. */
export interface TwoPointRule { readonly rule: 'twoPoint'; readonly samples: 'single' | 'double'; readonly points: Partial<Readonly<Record<FindingClass, RiskPoints>>> }
/** Piece by piece between two lines until one is crossed or the plan is cut off (Wald; ISO 28591). */
export interface SequentialRule { readonly rule: 'sequential'; readonly points: Partial<Readonly<Record<FindingClass, RiskPoints>>> }

/** By variables: MIL-STD-414 tables by AQL, or the smallest plan through two points. */
export interface VariablesRule {
  readonly rule: 'variables';
  readonly level: VariablesLevel;
  readonly aqlPercent: number;
  /** Known standard deviation, in the characteristic's unit; the s-method where absent. */
  readonly sigma?: number;
  /** How it is judged: by the distance k, or by the estimated percent nonconforming M; for two limits together always M. The k form for one limit unless given. */
  readonly form?: 'k' | 'M';
  /** Each limit with an AQL of its own; `aqlPercent` is then the smaller of the two. */
  readonly separate?: { readonly lowerAqlPercent: number; readonly upperAqlPercent: number };
  /** The plan is worked out from these and not looked up; `aqlPercent` is then their p1. No switching. */
  readonly points?: RiskPoints;
}
export interface FixedRule { readonly rule: 'fixed'; readonly n: number; readonly accept: AcceptBy }
/** `barrels` drawn at random, `each` results from every one. */
export interface BarrelsRule { readonly rule: 'barrels'; readonly barrels: number; readonly each: number; readonly accept: AcceptBy }
/** Test pieces at named places of a charge, `each` results from every one. */
export interface PositionsRule { readonly rule: 'positions'; readonly positions: readonly string[]; readonly each: number; readonly accept: AcceptBy }
/** Every piece is measured and those outside the limits are ejected; more than `ejectAtMostPercent` of them rejects the lot. */
export interface EveryPieceRule { readonly rule: 'everyPiece'; readonly ejectAtMostPercent: number; /** How the stream is watched for drift; as usual where left out. */ readonly drift?: DriftWatch }
/** λ of the average (0.05 unless given), σ of single pieces where it is known, and whether drift holds the lot (it does not unless given). */
export interface DriftWatch { readonly lambda?: DriftLambda; readonly sigma?: number; readonly holds?: boolean }
/**
 * A look at `n` pieces falls due each time `everyPieces` more have been made, or `everyMinutes` after the one before where more were made, whichever
 * comes first; none found is accepted. One not taken `graceMinutes` after it fell due is missed; so is one of a fed stream when the next falls due.
 */
export interface IntervalRule { readonly rule: 'interval'; readonly everyPieces: number; readonly n: number; readonly everyMinutes?: number; readonly graceMinutes?: number }
export interface OnceRule { readonly rule: 'once' }

interface Common {
  readonly id: string;
  readonly name: string;
  /** Method or instrument, with the standard's number where there is one. */
  readonly method: string;
  /** True when the pieces tested are used up and leave the count. */
  readonly destructive: boolean;
}

/** How a value comes to be: typed as it is, or worked out from what is read. Sources: shared/carbide. */
export type ValueEntry =
  | { readonly how: 'direct' }
  /** Two diameters of one crater give the whole coating; with `layers`, one diameter more than layers, from the surface to the substrate. */
  | { readonly how: 'crater'; readonly ballDiameterMm: number; readonly layers?: number }
  /** Thickness of one layer, counted from the surface: given by the crater of the characteristic `of` in the same gate, and never entered itself. */
  | { readonly how: 'craterLayer'; readonly of: string; readonly layer: number }
  /** From the sintered size and the green one: the die's, or with `greenRead` the piece's own as read, such as a height that the press makes; `dieMm` is then what it is pressed to. */
  | { readonly how: 'shrinkage'; readonly dieMm: number; readonly greenRead?: true }
  /** Density from the mass in air, the mass in water and the water's temperature. */
  | { readonly how: 'archimedes' }
  /** Magnetic saturation read in `unit` and judged as percent of what the grade's cobalt would give pure; warned of outside the inner band. */
  | { readonly how: 'saturation'; readonly unit: SaturationUnit; readonly cobaltFraction: number; readonly warnLowPercent?: number; readonly warnHighPercent?: number };

/** Pictures a rating is compared with. */
export const RATING_REFERENCES = ['adhesion', 'porosityA', 'porosityB', 'porosityC'] as const;
export type RatingReference = (typeof RATING_REFERENCES)[number];

export interface Measured extends Common {
  readonly kind: 'measured';
  readonly unit: string;
  /** Decimal places a value may have: the resolution asked for. */
  readonly decimals: number;
  readonly lower: number | null;
  readonly upper: number | null;
  readonly target: number | null;
  /** Values outside are questioned before they are taken. */
  readonly plausible: { readonly least: number; readonly most: number };
  /** Kind of gauge a counting reading needs; null where none is asked for. */
  readonly gaugeKind: string | null;
  readonly decisionRule: DecisionRule;
  /** Guard band as a multiple of the gauge's U, above 0 to 3; 1 where absent. Counts for nothing under the simple rule. */
  readonly guardFactor?: number;
  readonly entry: ValueEntry;
  /** A powder factor that this characteristic's mean gives to pressing. */
  readonly factor: PowderFactor | null;
  /** Limits worked out from the powder when the gate is opened: target ± this percentage. */
  readonly pressTolerancePercent: number | null;
  /** The target those limits lie about: the weight unless given. With no percentage they are carried from the sintered limits of the thickness. */
  readonly limitsFrom?: 'pressWeight' | 'greenHeight';
  readonly sampling: VariablesRule | FixedRule | BarrelsRule | PositionsRule | EveryPieceRule;
}
/** True where the limits follow from the powder and not from the plan. */
export function takesPressLimits({ pressTolerancePercent, limitsFrom }: Pick<Measured, 'pressTolerancePercent' | 'limitsFrom'>): boolean {
  return pressTolerancePercent !== null || limitsFrom !== undefined;
}
/** The rules that count what an inspector finds in a drawn sample. */
export type CountedRule = AttributesRule | LimitingQualityRule | ZeroAcceptanceRule | TwoPointRule | SequentialRule;
/** The classes a counting rule judges, gravest first. */
export function judgedClasses(rule: CountedRule): readonly FindingClass[] {
  const by: Partial<Readonly<Record<FindingClass, unknown>>> = rule.rule === 'attributes' ? rule.aqlPercent : 'points' in rule ? rule.points : rule.lqPercent;
  return FINDING_CLASSES.filter((each) => by[each] !== undefined);
}

export interface Counted extends Common {
  readonly kind: 'counted';
  readonly kinds: readonly NonconformityKind[];
  readonly sampling: CountedRule | IntervalRule;
}
export interface Graded extends Common {
  readonly kind: 'graded';
  /** From best to worst. */
  readonly scale: readonly string[];
  readonly worstAccepted: string;
  /** Drawn references shown beside the ratings; none unless given. */
  readonly reference?: RatingReference;
  readonly sampling: FixedRule | BarrelsRule | PositionsRule;
}
export interface Confirmed extends Common {
  readonly kind: 'confirmed';
  readonly statement: string;
  /** What must bear a `yes` out; absent: the person's word alone. */
  readonly backedBy?: 'furnaceLog';
  readonly sampling: OnceRule;
}
export type Characteristic = Measured | Counted | Graded | Confirmed;
