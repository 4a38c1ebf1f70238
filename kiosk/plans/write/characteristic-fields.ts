import { FINDING_CLASSES, POWDER_FACTORS, takesPressLimits, type Characteristic, type Confirmed, type Counted, type Measured, type NonconformityKind, type SubjectKind } from '../../../shared/traveller/index.ts';
import { planWritingWords } from '../../../shared/words/plan-writing.en.ts';
import { labels } from '../../desk/words.ts';
import { choiceField, linesField, maybeNumberField, numberField, textField, wholeField, within, yesNoField, type EditField } from './edit-field.ts';
import { entryFields, referenceField } from './entry-fields.ts';
import { ruleFields, type LoadedTable } from './rule-fields.ts';
import { rulesFor, withRule } from './rule-choices.ts';

const words = planWritingWords.characteristic;
const DECISION_RULES = ['simple', 'guardedAcceptance', 'guardedRejection'] as const;

/** The three forms of a characteristic: what it is, what it is judged against, how it is sampled. */
export interface CharacteristicForms {
  readonly what: readonly EditField<Characteristic>[];
  readonly limits: readonly EditField<Characteristic>[];
  readonly rule: readonly EditField<Characteristic>[];
}

export function characteristicForms(characteristic: Characteristic, subject: SubjectKind, tables: readonly LoadedTable[]): CharacteristicForms {
  const unit = characteristic.kind === 'measured' ? characteristic.unit : '';
  const names = rulesFor({ kind: characteristic.kind, subject });
  const rules = names.includes(characteristic.sampling.rule) ? names : [...names, characteristic.sampling.rule];
  return {
    what: [
      textField('name', words.name, characteristic.name, (name) => ({ ...characteristic, name })),
      textField('method', words.method, characteristic.method, (method) => ({ ...characteristic, method }), { most: 100, hint: words.methodHint }),
      yesNoField('destructive', words.pieces, characteristic.destructive, words.usedUp, words.kept, (destructive) => ({ ...characteristic, destructive })),
    ],
    limits: limitFields(characteristic, subject),
    rule: [
      choiceField('rule', words.rule, 'tiles', characteristic.sampling.rule, rules.map((rule) => ({ value: rule, text: words.rules[rule] })), (chosen) => {
        const rule = rules.find((each) => each === chosen);
        return rule === undefined || rule === characteristic.sampling.rule ? characteristic : withRule(characteristic, rule) ?? characteristic;
      }),
      ...ruleFields(characteristic.sampling, unit, tables).map((field) => within<Characteristic['sampling'], Characteristic>(field, `${characteristic.sampling.rule}.`, (rule) => withSampling(characteristic, rule))),
    ],
  };
}

/** All fields of a characteristic one after the other. */
export function characteristicFields(characteristic: Characteristic, subject: SubjectKind, tables: readonly LoadedTable[]): readonly EditField<Characteristic>[] {
  const { what, limits, rule } = characteristicForms(characteristic, subject, tables);
  return [...what, ...limits, ...rule];
}

function limitFields(characteristic: Characteristic, subject: SubjectKind): readonly EditField<Characteristic>[] {
  switch (characteristic.kind) {
    case 'measured': return measuredFields(characteristic, subject);
    case 'counted': return characteristic.kinds.flatMap((kind, at) => kindFields(kind).map((field) => within<NonconformityKind, Characteristic>(field, `kinds.${at}.`, (changed) => ({ ...characteristic, kinds: characteristic.kinds.with(at, changed) }))));
    case 'graded': return [
      linesField('scale', words.scale, characteristic.scale, (scale) => ({ ...characteristic, scale }), { least: 1, most: 24, hint: words.scaleHint }),
      choiceField('worstAccepted', words.worstAccepted, 'choice', characteristic.worstAccepted, [...new Set([...characteristic.scale, characteristic.worstAccepted])].map((rating) => ({ value: rating, text: rating })), (worstAccepted) => ({ ...characteristic, worstAccepted })),
      referenceField(characteristic),
    ];
    case 'confirmed': return [
      textField('statement', words.statement, characteristic.statement, (statement) => ({ ...characteristic, statement }), { most: 200, hint: words.statementHint }),
      ...(subject === 'furnace' ? [yesNoField<Characteristic>('backedBy', words.backedBy, characteristic.backedBy === 'furnaceLog', words.byLog, words.byWord, (byLog) => backed(characteristic, byLog))] : []),
    ];
  }
}

/** A statement that the furnace log bears out, or that rests on the person's word alone. */
function backed({ backedBy: _, ...word }: Confirmed, byLog: boolean): Confirmed {
  return byLog ? { ...word, backedBy: 'furnaceLog' } : word;
}

function measuredFields(measured: Measured, subject: SubjectKind): readonly EditField<Characteristic>[] {
  const { unit } = measured;
  const limit = (name: 'lower' | 'target' | 'upper') => maybeNumberField<Characteristic>(name, words[name], measured[name], (value) => ({ ...measured, [name]: value }), {}, { unit });
  return [
    textField('unit', words.unit, unit, (changed) => ({ ...measured, unit: changed }), { most: 12 }),
    wholeField('decimals', words.decimals, measured.decimals, (decimals) => ({ ...measured, decimals }), { least: 0, most: 6 }),
    limit('lower'), limit('target'), limit('upper'),
    ...(subject === 'lot' || takesPressLimits(measured) ? [limitsFromField(measured), maybeNumberField<Characteristic>('pressTolerancePercent', words.pressTolerance, measured.pressTolerancePercent, (pressTolerancePercent) => ({ ...measured, pressTolerancePercent }), { above: 0, below: 100 }, { unit: '± %', hint: words.pressToleranceHint })] : []),
    numberField('plausible.least', words.plausibleLeast, measured.plausible.least, (least) => ({ ...measured, plausible: { ...measured.plausible, least } }), {}, { unit, hint: words.plausibleHint }),
    numberField('plausible.most', words.plausibleMost, measured.plausible.most, (most) => ({ ...measured, plausible: { ...measured.plausible, most } }), {}, { unit }),
    textField('gaugeKind', words.gaugeKind, measured.gaugeKind ?? '', (gaugeKind) => ({ ...measured, gaugeKind: gaugeKind === '' ? null : gaugeKind }), { most: 60, mayBeEmpty: true, hint: words.gaugeKindHint }),
    choiceField('decisionRule', words.decisionRule, 'tiles', measured.decisionRule, DECISION_RULES.map((value) => ({ value, text: words.decisionRules[value] })), (value) => withDecisionRule(measured, DECISION_RULES.find((each) => each === value) ?? measured.decisionRule)),
    ...(measured.decisionRule === 'simple' ? [] : [maybeNumberField<Characteristic>('guardFactor', words.guardFactor, measured.guardFactor ?? null, (factor) => withGuardFactor(measured, factor), { above: 0, most: 3 }, { unit: '× U', hint: words.guardFactorHint })]),
    ...entryFields(measured),
    ...(subject === 'batch' || measured.factor !== null ? [choiceField<Characteristic>('factor', words.factor, 'choice', measured.factor ?? '', [{ value: '', text: words.noFactor }, ...POWDER_FACTORS.map((value) => ({ value, text: labels.factors[value] }))], (value) => ({ ...measured, factor: POWDER_FACTORS.find((each) => each === value) ?? null }))] : []),
  ];
}

/** A factor left out is left out, and not there as undefined. */
function withGuardFactor({ guardFactor: _, ...measured }: Measured, factor: number | null): Measured {
  return factor === null ? measured : { ...measured, guardFactor: factor };
}
function withDecisionRule(measured: Measured, decisionRule: Measured['decisionRule']): Measured {
  return decisionRule === 'simple' ? { ...withGuardFactor(measured, null), decisionRule } : { ...measured, decisionRule };
}

/** The target the limits lie about; none, where the plan states the limits itself or a percentage of the weight is enough said. */
function limitsFromField(measured: Measured): EditField<Characteristic> {
  const { limitsFrom, ...rest } = measured;
  return choiceField('limitsFrom', words.limitsFrom, 'choice', limitsFrom ?? '', (['', 'pressWeight', 'greenHeight'] as const).map((value) => ({ value, text: words.limitsFromNames[value] })), (chosen) => (chosen === 'pressWeight' || chosen === 'greenHeight' ? { ...rest, limitsFrom: chosen } : rest));
}

function kindFields(kind: NonconformityKind): readonly EditField<NonconformityKind>[] {
  return [
    textField('code', words.kindCode, kind.code, (code) => ({ ...kind, code: code.toUpperCase() }), { most: 8 }),
    textField('name', words.kindName, kind.name, (name) => ({ ...kind, name }), { most: 60 }),
    choiceField('class', words.kindClass, 'choice', kind.class, FINDING_CLASSES.map((value) => ({ value, text: labels.findingClasses[value] })), (value) => ({ ...kind, class: FINDING_CLASSES.find((each) => each === value) ?? kind.class })),
  ];
}

/** One more kind of nonconformity, to be named. */
export function withNewKind(counted: Counted): Counted {
  const taken = new Set(counted.kinds.map(({ code }) => code));
  const code = Array.from({ length: counted.kinds.length + 1 }, (_, at) => `N${at + 1}`).find((each) => !taken.has(each)) ?? 'N';
  return { ...counted, kinds: [...counted.kinds, { code, name: words.newKind, class: counted.kinds.at(-1)?.class ?? 'major' }] };
}
export function withoutKind(counted: Counted, at: number): Counted {
  return { ...counted, kinds: counted.kinds.toSpliced(at, 1) };
}

/** The field only makes rules of the same name, so the kind of characteristic goes on allowing it. */
function withSampling(characteristic: Characteristic, rule: Characteristic['sampling']): Characteristic {
  switch (characteristic.kind) {
    case 'measured': return rule.rule === 'variables' || rule.rule === 'fixed' || rule.rule === 'barrels' || rule.rule === 'positions' || rule.rule === 'everyPiece' ? { ...characteristic, sampling: rule } : characteristic;
    case 'counted': return rule.rule === 'attributes' || rule.rule === 'limitingQuality' || rule.rule === 'zeroAcceptance' || rule.rule === 'twoPoint' || rule.rule === 'sequential' || rule.rule === 'interval' ? { ...characteristic, sampling: rule } : characteristic;
    case 'graded': return rule.rule === 'fixed' || rule.rule === 'barrels' || rule.rule === 'positions' ? { ...characteristic, sampling: rule } : characteristic;
    case 'confirmed': return characteristic;
  }
}
