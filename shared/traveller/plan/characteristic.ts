import type { InspectionLevel } from '../../sampling/attributes/index.ts';
import type { SwitchingRule } from '../../sampling/switching/index.ts';
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

export interface AttributesRule {
  readonly rule: 'attributes';
  readonly switching: SwitchingRule;
  readonly level: InspectionLevel;
  /** One AQL (percent nonconforming) a class that this characteristic counts. */
  readonly aqlPercent: Partial<Readonly<Record<FindingClass, number>>>;
}
export interface VariablesRule { readonly rule: 'variables'; readonly level: VariablesLevel; readonly aqlPercent: number }
export interface FixedRule { readonly rule: 'fixed'; readonly n: number; readonly accept: AcceptBy }
/** `barrels` drawn at random, `each` results from every one. */
export interface BarrelsRule { readonly rule: 'barrels'; readonly barrels: number; readonly each: number; readonly accept: AcceptBy }
/** Test pieces at named places of a charge, `each` results from every one. */
export interface PositionsRule { readonly rule: 'positions'; readonly positions: readonly string[]; readonly each: number; readonly accept: AcceptBy }
/** Every piece is measured and those outside the limits are ejected; more than `ejectAtMostPercent` of them rejects the lot. */
export interface EveryPieceRule { readonly rule: 'everyPiece'; readonly ejectAtMostPercent: number }
/** A look at `n` pieces falls due each time `everyPieces` more have been made; none found is accepted. */
export interface IntervalRule { readonly rule: 'interval'; readonly everyPieces: number; readonly n: number }
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
  | { readonly how: 'crater'; readonly ballDiameterMm: number }
  | { readonly how: 'shrinkage'; readonly dieMm: number };

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
  readonly decisionRule: 'simple' | 'guardedAcceptance';
  readonly entry: ValueEntry;
  /** A powder factor that this characteristic's mean gives to pressing. */
  readonly factor: 'linearShrinkagePercent' | 'sinteredDensityGPerCm3' | 'binderPercent' | null;
  /** Limits worked out from the powder when the lot is opened: target weight ± this percentage. */
  readonly pressTolerancePercent: number | null;
  readonly sampling: VariablesRule | FixedRule | BarrelsRule | PositionsRule | EveryPieceRule;
}
export interface Counted extends Common {
  readonly kind: 'counted';
  readonly kinds: readonly NonconformityKind[];
  readonly sampling: AttributesRule | IntervalRule;
}
export interface Graded extends Common {
  readonly kind: 'graded';
  /** From best to worst. */
  readonly scale: readonly string[];
  readonly worstAccepted: string;
  readonly sampling: FixedRule | BarrelsRule | PositionsRule;
}
export interface Confirmed extends Common {
  readonly kind: 'confirmed';
  readonly statement: string;
  readonly sampling: OnceRule;
}
export type Characteristic = Measured | Counted | Graded | Confirmed;
