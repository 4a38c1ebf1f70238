import type { AttributesRule, Characteristic, RiskPoints, SequentialRule, TwoPointRule } from '../../../shared/traveller/plan/characteristic.ts';
import type { SubjectKind } from '../../../shared/traveller/index.ts';

export type RuleOf<C extends Characteristic> = C['sampling'];
export type AnyRule = Characteristic['sampling'];
export type RuleName = AnyRule['rule'];
/** Where a rule stands: what is inspected, and on whose traveller. */
export interface RulePlace { readonly kind: Characteristic['kind']; readonly subject: SubjectKind }

const BY_KIND: Readonly<Record<Characteristic['kind'], readonly RuleName[]>> = {
  measured: ['variables', 'fixed', 'everyPiece', 'barrels', 'positions'],
  counted: ['attributes', 'limitingQuality', 'zeroAcceptance', 'twoPoint', 'sequential', 'interval'],
  graded: ['fixed', 'barrels', 'positions'],
  confirmed: ['once'],
};
const BY_SUBJECT: Readonly<Record<SubjectKind, readonly RuleName[]>> = {
  lot: ['variables', 'fixed', 'everyPiece', 'attributes', 'limitingQuality', 'zeroAcceptance', 'twoPoint', 'sequential', 'interval', 'once'],
  batch: ['fixed', 'barrels', 'once'],
  furnace: ['fixed', 'positions', 'once'],
  coating: ['fixed', 'positions', 'once'],
};

/** The sampling rules that can be worked there. */
export function rulesFor({ kind, subject }: RulePlace): readonly RuleName[] {
  return BY_KIND[kind].filter((rule) => BY_SUBJECT[subject].includes(rule));
}
/** The kinds of characteristic that somebody can inspect on such a subject. */
export function kindsFor(subject: SubjectKind): readonly Characteristic['kind'][] {
  return (['measured', 'counted', 'graded', 'confirmed'] as const).filter((kind) => rulesFor({ kind, subject }).length > 0);
}

/** Where two points begin until somebody says otherwise: common practice, no source. */
export const FIRST_POINTS: RiskPoints = { p1Percent: 1, producerRisk: 0.05, p2Percent: 6, consumerRisk: 0.1 };
const attributes: AttributesRule = { rule: 'attributes', switching: 'ISO 2859-1', level: 'II', aqlPercent: { major: 1 } };
const twoPoint: TwoPointRule = { rule: 'twoPoint', samples: 'single', points: { major: FIRST_POINTS } };
const sequential: SequentialRule = { rule: 'sequential', points: { major: FIRST_POINTS } };
/** A rule of each kind to begin with: a soundly worked one, to be changed. Figures: common practice, no source. */
export const FIRST_RULES = {
  attributes, twoPoint, sequential,
  limitingQuality: { rule: 'limitingQuality', lqPercent: { major: 5 }, consumerRisk: 0.1 },
  zeroAcceptance: { rule: 'zeroAcceptance', lqPercent: { major: 5 }, consumerRisk: 0.1 },
  interval: { rule: 'interval', everyPieces: 250, n: 5 },
  variables: { rule: 'variables', level: 'II', aqlPercent: 1 },
  fixed: { rule: 'fixed', n: 5, accept: 'each' },
  barrels: { rule: 'barrels', barrels: 3, each: 1, accept: 'each' },
  positions: { rule: 'positions', positions: ['Top', 'Middle', 'Bottom'], each: 1, accept: 'each' },
  everyPiece: { rule: 'everyPiece', ejectAtMostPercent: 2 },
  once: { rule: 'once' },
} as const satisfies Readonly<Record<RuleName, AnyRule>>;

/** The characteristic under another rule; null where that rule is none for its kind. Classes that were counted go on being counted. */
export function withRule(characteristic: Characteristic, rule: RuleName): Characteristic | null {
  switch (characteristic.kind) {
    case 'measured': return rule === 'variables' || rule === 'fixed' || rule === 'barrels' || rule === 'positions' || rule === 'everyPiece' ? { ...characteristic, sampling: FIRST_RULES[rule] } : null;
    case 'graded': return rule === 'fixed' || rule === 'barrels' || rule === 'positions' ? { ...characteristic, sampling: FIRST_RULES[rule] } : null;
    case 'confirmed': return rule === 'once' ? characteristic : null;
    case 'counted': {
      const classes = [...new Set(characteristic.kinds.map((kind) => kind.class))];
      const each = <V>(value: V) => Object.fromEntries((classes.length === 0 ? (['major'] as const) : classes).map((name) => [name, value]));
      switch (rule) {
        case 'attributes': return { ...characteristic, sampling: { ...attributes, aqlPercent: each(1) } };
        case 'limitingQuality': return { ...characteristic, sampling: { ...FIRST_RULES.limitingQuality, lqPercent: each(5) } };
        case 'zeroAcceptance': return { ...characteristic, sampling: { ...FIRST_RULES.zeroAcceptance, lqPercent: each(5) } };
        case 'twoPoint': return { ...characteristic, sampling: { ...twoPoint, points: each(FIRST_POINTS) } };
        case 'sequential': return { ...characteristic, sampling: { ...sequential, points: each(FIRST_POINTS) } };
        case 'interval': return { ...characteristic, sampling: FIRST_RULES.interval };
        default: return null;
      }
    }
  }
}
