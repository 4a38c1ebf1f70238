import { DRIFT_LAMBDAS, USUAL_LAMBDA } from '../../../shared/metrology/drift/index.ts';
import { AQLS, INSPECTION_LEVELS } from '../../../shared/sampling/attributes/index.ts';
import { VARIABLES_AQLS, VARIABLES_LEVELS } from '../../../shared/sampling/variables/index.ts';
import { FINDING_CLASSES, type AcceptBy, type AttributesRule, type FindingClass, type RiskPoints, type VariablesRule } from '../../../shared/traveller/index.ts';
import type { DriftWatch, EveryPieceRule } from '../../../shared/traveller/plan/characteristic.ts';
import { planWritingWords } from '../../../shared/words/plan-writing.en.ts';
import { showFigure } from '../../desk/show.ts';
import { labels } from '../../desk/words.ts';
import { choiceField, linesField, maybeNumberField, numberField, riskField, wholeField, within, yesNoField, type Choice, type EditField } from './edit-field.ts';
import { FIRST_POINTS, type AnyRule } from './rule-choices.ts';

const words = planWritingWords.rule;
const SEVERITIES = ['normal', 'tightened', 'reduced'] as const;
/** A table that the plant has loaded: its stream's id and what it stands for. */
export interface LoadedTable { readonly id: string; readonly name: string; readonly severity: 'normal' | 'tightened' | 'reduced'; readonly samples: 'single' | 'double' | 'multiple' }

type ByClass<V> = Partial<Readonly<Record<FindingClass, V>>>;

/** Everything that can be said about a sampling rule, line by line. @param unit of a measured characteristic; @param tables the plant's own, to choose from */
export function ruleFields(rule: AnyRule, unit: string, tables: readonly LoadedTable[]): readonly EditField<AnyRule>[] {
  switch (rule.rule) {
    case 'attributes': return attributesFields(rule, tables);
    case 'limitingQuality': case 'zeroAcceptance': return [
      ...FINDING_CLASSES.map((each) => maybeNumberField(`lq.${each}`, words.lqClass(labels.findingClasses[each]), rule.lqPercent[each] ?? null, (lq) => ({ ...rule, lqPercent: withClass(rule.lqPercent, each, lq) }), { above: 0, below: 100 }, { unit: '%', hint: words.emptyClass })),
      riskField('consumerRisk', words.consumerRisk, rule.consumerRisk, (consumerRisk) => ({ ...rule, consumerRisk })),
    ];
    case 'twoPoint': return [
      choiceField('samples', words.samples, 'tiles', rule.samples, [{ value: 'single', text: words.samplesOf.single }, { value: 'double', text: words.samplesOf.double }], (samples) => ({ ...rule, samples: samples === 'double' ? 'double' : 'single' })),
      ...classPointsFields(rule.points, (points) => ({ ...rule, points })),
    ];
    case 'sequential': return classPointsFields(rule.points, (points) => ({ ...rule, points }));
    case 'variables': return variablesFields(rule, unit);
    case 'fixed': return [wholeField('n', words.n, rule.n, (n) => ({ ...rule, n }), { least: 1, most: 5000 }), acceptField(rule.accept, (accept) => ({ ...rule, accept }))];
    case 'barrels': return [
      wholeField('barrels', words.barrels, rule.barrels, (barrels) => ({ ...rule, barrels }), { least: 1, most: 5000 }),
      wholeField('each', words.each, rule.each, (each) => ({ ...rule, each }), { least: 1, most: 60 }), acceptField(rule.accept, (accept) => ({ ...rule, accept })),
    ];
    case 'positions': return [
      linesField('positions', words.positions, rule.positions, (positions) => ({ ...rule, positions }), { least: 1, most: 40, hint: words.onePerLine }),
      wholeField('each', words.each, rule.each, (each) => ({ ...rule, each }), { least: 1, most: 60 }), acceptField(rule.accept, (accept) => ({ ...rule, accept })),
    ];
    case 'everyPiece': return [
      numberField('ejectAtMostPercent', words.ejectAtMost, rule.ejectAtMostPercent, (ejectAtMostPercent) => ({ ...rule, ejectAtMostPercent }), { least: 0, most: 100 }, { unit: '%' }),
      choiceField('driftLambda', words.driftLambda, 'tiles', String(rule.drift?.lambda ?? USUAL_LAMBDA), DRIFT_LAMBDAS.map((lambda) => ({ value: String(lambda), text: showFigure(lambda) })), (chosen) => driftOf(rule, 'lambda', DRIFT_LAMBDAS.find((each) => String(each) === chosen) ?? USUAL_LAMBDA, USUAL_LAMBDA)),
      yesNoField('driftHolds', words.driftHolds, rule.drift?.holds ?? false, words.driftHoldsOf.yes, words.driftHoldsOf.no, (holds) => driftOf(rule, 'holds', holds, false)),
    ];
    case 'interval': return [
      wholeField('everyPieces', words.everyPieces, rule.everyPieces, (everyPieces) => ({ ...rule, everyPieces }), { least: 1, most: 1_000_000 }, { unit: words.pieces }),
      wholeField('n', words.looked, rule.n, (n) => ({ ...rule, n }), { least: 1, most: 5000 }, { unit: words.pieces }),
      maybeNumberField('everyMinutes', words.everyMinutes, rule.everyMinutes ?? null, (minutes) => {
        const { everyMinutes: _, ...plain } = rule;
        return minutes === null ? plain : { ...plain, everyMinutes: minutes };
      }, { least: 1, most: 1440 }, { unit: 'min' }),
      maybeNumberField('graceMinutes', words.graceMinutes, rule.graceMinutes ?? null, (minutes) => {
        const { graceMinutes: _, ...plain } = rule;
        return minutes === null ? plain : { ...plain, graceMinutes: minutes };
      }, { least: 1, most: 1440 }, { unit: 'min', hint: words.graceHint }),
    ];
    case 'once': return [];
  }
}

function attributesFields(rule: AttributesRule, tables: readonly LoadedTable[]): readonly EditField<AttributesRule>[] {
  const { samples = 'single', counts = 'nonconforming', skipLot, ownTables = {} } = rule;
  const perHundred = counts === 'nonconformities';
  const aqls: readonly Choice[] = [{ value: '', text: words.notCounted }, ...AQLS.filter((aql) => perHundred || aql <= 10).map((aql) => ({ value: String(aql), text: `${showFigure(aql)}${perHundred ? '' : ' %'}` }))];
  const loaded = (severity: LoadedTable['severity']) => tables.filter((table) => table.severity === severity && table.samples === samples);
  return [
    choiceField('samples', words.samples, 'tiles', samples, (['single', 'double', 'multiple'] as const).map((value) => ({ value, text: words.samplesOf[value] })), (chosen) => changedSamples(rule, chosen === 'double' || chosen === 'multiple' ? chosen : 'single')),
    choiceField('level', words.level, 'choice', rule.level, INSPECTION_LEVELS.map((level) => ({ value: level, text: words.levels[level] })), (level) => ({ ...rule, level: INSPECTION_LEVELS.find((each) => each === level) ?? rule.level })),
    ...FINDING_CLASSES.map((each) => choiceField(`aql.${each}`, words.aqlClass(labels.findingClasses[each]), 'choice', rule.aqlPercent[each] === undefined ? '' : String(rule.aqlPercent[each]), aqls, (aql) => ({ ...rule, aqlPercent: withClass(rule.aqlPercent, each, aql === '' ? null : Number(aql)) }))),
    choiceField('counts', words.counts, 'tiles', counts, [{ value: 'nonconforming', text: words.countsOf.nonconforming }, { value: 'nonconformities', text: words.countsOf.nonconformities }], (chosen) => {
      const { counts: _, ...plain } = rule;
      return chosen === 'nonconformities' ? { ...plain, counts: 'nonconformities' } : plain;
    }),
    choiceField('switching', words.switching, 'tiles', rule.switching, [{ value: 'ISO 2859-1', text: 'ISO 2859-1' }, { value: 'MIL-STD-105E', text: 'MIL-STD-105E' }], (switching) => ({ ...rule, switching: switching === 'MIL-STD-105E' ? 'MIL-STD-105E' : 'ISO 2859-1' })),
    yesNoField('skipLot', words.skipLot, skipLot !== undefined, words.skipLotYes, words.skipLotNo, (skips) => {
      const { skipLot: _, ...plain } = rule;
      return skips ? { ...plain, skipLot: skipLot ?? { clearance: 10, oneIn: 4 } } : plain;
    }),
    ...(skipLot === undefined ? [] : [
      wholeField<AttributesRule>('skipLot.clearance', words.clearance, skipLot.clearance, (clearance) => ({ ...rule, skipLot: { ...skipLot, clearance } }), { least: 1, most: 1000 }, { unit: words.lots }),
      wholeField<AttributesRule>('skipLot.oneIn', words.oneIn, skipLot.oneIn, (oneIn) => ({ ...rule, skipLot: { ...skipLot, oneIn } }), { least: 2, most: 100 }, { unit: words.lots }),
    ]),
    ...SEVERITIES.flatMap((severity) => (loaded(severity).length === 0 && ownTables[severity] === undefined ? [] : [choiceField<AttributesRule>(`ownTables.${severity}`, words.ownTable(labels.severities[severity]), 'choice', ownTables[severity] ?? '', tableChoices(loaded(severity), ownTables[severity]), (id) => withOwnTable(rule, severity, id))])),
  ];
}

/** A table stands for a number of samples, so another number drops those named. */
function changedSamples(rule: AttributesRule, samples: 'single' | 'double' | 'multiple'): AttributesRule {
  const { samples: _, ownTables: __, ...plain } = rule;
  return samples === 'single' ? plain : { ...plain, samples };
}
function tableChoices(loaded: readonly LoadedTable[], named: string | undefined): readonly Choice[] {
  const listed = loaded.map(({ id, name }) => ({ value: id, text: `${name} (${id})` }));
  return [{ value: '', text: words.heldTable }, ...listed, ...(named === undefined || loaded.some(({ id }) => id === named) ? [] : [{ value: named, text: named }])];
}
function withOwnTable(rule: AttributesRule, severity: LoadedTable['severity'], id: string): AttributesRule {
  const { ownTables, ...plain } = rule;
  const named = Object.fromEntries(SEVERITIES.flatMap((each) => {
    const table = each === severity ? id : ownTables?.[each] ?? '';
    return table === '' ? [] : [[each, table]];
  }));
  return Object.keys(named).length === 0 ? plain : { ...plain, ownTables: named };
}

function variablesFields(rule: VariablesRule, unit: string): readonly EditField<VariablesRule>[] {
  const { points, sigma, form, separate } = rule;
  const aqls: readonly Choice[] = VARIABLES_AQLS.slice(1).map((aql) => ({ value: String(aql), text: `${showFigure(aql)} %` }));
  const aql = (key: string, label: string, value: number, put: (aqlPercent: number) => VariablesRule) => choiceField(key, label, 'choice', String(value), aqls, (chosen) => put(Number(chosen)));
  return [
    choiceField('basis', words.basis, 'tiles', points === undefined ? 'table' : 'points', [{ value: 'table', text: words.basisOf.table }, { value: 'points', text: words.basisOf.points }], (basis) => {
      const { points: _, separate: __, ...plain } = rule;
      return basis === 'points' ? { ...plain, points: FIRST_POINTS, aqlPercent: FIRST_POINTS.p1Percent } : { ...plain, aqlPercent: VARIABLES_AQLS.slice(1).includes(rule.aqlPercent) ? rule.aqlPercent : 1 };
    }),
    ...(points === undefined ? [
      choiceField<VariablesRule>('level', words.level, 'choice', rule.level, VARIABLES_LEVELS.map((level) => ({ value: level, text: words.variablesLevel(level) })), (level) => ({ ...rule, level: VARIABLES_LEVELS.find((each) => each === level) ?? rule.level })),
      yesNoField<VariablesRule>('separate', words.separate, separate !== undefined, words.separateYes, words.separateNo, (apart) => {
        const { separate: _, ...plain } = rule;
        return apart ? { ...plain, separate: { lowerAqlPercent: rule.aqlPercent, upperAqlPercent: rule.aqlPercent } } : plain;
      }),
      ...(separate === undefined ? [aql('aqlPercent', words.aql, rule.aqlPercent, (aqlPercent) => ({ ...rule, aqlPercent }))] : [
        aql('separate.lower', words.aqlLower, separate.lowerAqlPercent, (lowerAqlPercent) => ({ ...rule, aqlPercent: Math.min(lowerAqlPercent, separate.upperAqlPercent), separate: { ...separate, lowerAqlPercent } })),
        aql('separate.upper', words.aqlUpper, separate.upperAqlPercent, (upperAqlPercent) => ({ ...rule, aqlPercent: Math.min(separate.lowerAqlPercent, upperAqlPercent), separate: { ...separate, upperAqlPercent } })),
      ]),
    ] : pointsFields(points).map((field) => within<RiskPoints, VariablesRule>(field, 'points.', (changed) => ({ ...rule, points: changed, aqlPercent: changed.p1Percent })))),
    maybeNumberField('sigma', words.sigma, sigma ?? null, (known) => {
      const { sigma: _, ...plain } = rule;
      return known === null ? plain : { ...plain, sigma: known };
    }, { above: 0 }, { unit, hint: words.sigmaHint }),
    choiceField('form', words.form, 'tiles', form ?? '', [{ value: '', text: words.formOf.unsaid }, { value: 'k', text: words.formOf.k }, { value: 'M', text: words.formOf.M }], (chosen) => {
      const { form: _, ...plain } = rule;
      return chosen === 'k' || chosen === 'M' ? { ...plain, form: chosen } : plain;
    }),
  ];
}

function classPointsFields<R>(points: ByClass<RiskPoints>, whole: (points: ByClass<RiskPoints>) => R): readonly EditField<R>[] {
  return FINDING_CLASSES.flatMap((each) => {
    const own = points[each];
    const name = labels.findingClasses[each];
    return [
      yesNoField<R>(`points.${each}`, words.classJudged(name), own !== undefined, words.judged, words.notCounted, (judged) => whole(withClass(points, each, judged ? own ?? FIRST_POINTS : null))),
      ...(own === undefined ? [] : pointsFields(own).map((field) => within<RiskPoints, R>({ ...field, label: `${name}: ${field.label}` }, `points.${each}.`, (changed) => whole(withClass(points, each, changed))))),
    ];
  });
}

function pointsFields(points: RiskPoints): readonly EditField<RiskPoints>[] {
  return [
    numberField('p1Percent', words.p1, points.p1Percent, (p1Percent) => ({ ...points, p1Percent }), { above: 0, below: 100 }, { unit: '%' }),
    riskField('producerRisk', words.producerRisk, points.producerRisk, (producerRisk) => ({ ...points, producerRisk })),
    numberField('p2Percent', words.p2, points.p2Percent, (p2Percent) => ({ ...points, p2Percent }), { above: 0, below: 100 }, { unit: '%' }),
    riskField('consumerRisk', words.consumerRisk, points.consumerRisk, (consumerRisk) => ({ ...points, consumerRisk })),
  ];
}

function acceptField<R>(accept: AcceptBy, put: (accept: AcceptBy) => R): EditField<R> {
  return choiceField('accept', words.accept, 'tiles', accept, [{ value: 'each', text: words.acceptOf.each }, { value: 'mean', text: words.acceptOf.mean }], (value) => put(value === 'mean' ? 'mean' : 'each'));
}

/** A class that has no value is not there at all. */
function withClass<V>(values: ByClass<V>, each: FindingClass, value: V | null): ByClass<V> {
  const { [each]: _, ...others } = values;
  const changed: ByClass<V> = value === null ? Object.fromEntries(Object.entries(others)) : { ...others, [each]: value };
  return changed;
}

/** A rule that says nothing of drift goes on saying nothing while what is usual is chosen. */
function driftOf<K extends keyof DriftWatch>(rule: EveryPieceRule, key: K, value: DriftWatch[K], usual: DriftWatch[K]): EveryPieceRule {
  return (rule.drift?.[key] ?? usual) === value ? rule : { ...rule, drift: { ...rule.drift, [key]: value } };
}
