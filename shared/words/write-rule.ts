import { FINDING_CLASSES, takesPressLimits, type Characteristic, type FindingClass } from '../traveller/index.ts';
import type { AttributesRule, RiskPoints, ValueEntry, VariablesRule } from '../traveller/plan/characteristic.ts';
import type { Format } from './format.ts';
import { labels } from './labels.en.ts';
import { planRuleWords as words } from './plan-rules.en.ts';

/** The sampling rule of a characteristic as a sentence, its figures in the way of the language. */
export function writeRule(characteristic: Characteristic, format: Format): string {
  const { sampling } = characteristic;
  const { rules } = words;
  const n = (value: number): string => format.number(value);
  const mean = 'accept' in sampling && sampling.accept === 'mean';
  switch (sampling.rule) {
    case 'attributes': return writeAttributes(sampling, format);
    case 'limitingQuality': return rules.limitingQuality(writeClasses(sampling.lqPercent, format, false), percentOf(sampling.consumerRisk, format));
    case 'zeroAcceptance': return rules.zeroAcceptance(writeClasses(sampling.lqPercent, format, false), percentOf(sampling.consumerRisk, format));
    case 'twoPoint': return rules.twoPoint(sampling.samples === 'double', writeClassPoints(sampling.points, format));
    case 'sequential': return rules.sequential(writeClassPoints(sampling.points, format));
    case 'variables': return writeVariables(sampling, characteristic.kind === 'measured' ? characteristic.unit : '', format);
    case 'fixed': return rules.fixed(n(sampling.n), mean);
    case 'barrels': return rules.barrels(n(sampling.barrels), n(sampling.each), mean);
    case 'positions': return rules.positions(format.list(sampling.positions), n(sampling.each), mean);
    case 'everyPiece': return rules.everyPiece(n(sampling.ejectAtMostPercent), sampling.drift?.holds === true);
    case 'interval': return rules.interval(n(sampling.n), n(sampling.everyPieces), sampling.everyMinutes === undefined ? null : n(sampling.everyMinutes), sampling.graceMinutes === undefined ? null : n(sampling.graceMinutes));
    case 'once': return rules.once;
  }
}

/** What a characteristic is judged against, line by line. */
export function writeLimits(characteristic: Characteristic, format: Format): readonly string[] {
  switch (characteristic.kind) {
    case 'measured': {
      const { lower, upper, target, decimals, unit, decisionRule, guardFactor, pressTolerancePercent, limitsFrom = 'pressWeight', entry } = characteristic;
      const written = (limit: number | null) => (limit === null ? null : format.number(limit, decimals));
      if (takesPressLimits(characteristic)) {
        const within = pressTolerancePercent === null ? null : format.number(pressTolerancePercent);
        return [within === null ? words.limits.carried[limitsFrom] : limitsFrom === 'greenHeight' ? words.limits.pressHeight(within) : words.limits.press(within)];
      }
      return [`${labels.between(written(lower), written(upper))} ${unit}`, ...(target === null ? [] : [words.limits.target(format.number(target, decimals))]), labels.decisionRules[decisionRule], ...(guardFactor === undefined ? [] : [words.limits.guardFactor(format.number(guardFactor))]), ...writeEntry(entry, format)];
    }
    case 'counted': return FINDING_CLASSES.flatMap((each) => {
      const names = characteristic.kinds.filter((kind) => kind.class === each).map(({ name }) => name);
      return names.length === 0 ? [] : [words.limits.kindsOf(labels.findingClasses[each], format.list(names))];
    });
    case 'graded': return [words.limits.grade(characteristic.worstAccepted, characteristic.scale.join(', ')), ...(characteristic.reference === undefined ? [] : [words.limits.reference[characteristic.reference]])];
    case 'confirmed': return [characteristic.statement];
  }
}

/** How a value comes to be, where it is not typed as read. */
function writeEntry(entry: ValueEntry, format: Format): readonly string[] {
  switch (entry.how) {
    case 'direct': return [];
    case 'crater': return [entry.layers === undefined ? words.limits.crater(format.number(entry.ballDiameterMm)) : words.limits.craterLayers(format.number(entry.ballDiameterMm), format.number(entry.layers), format.number(entry.layers + 1))];
    case 'craterLayer': return [words.limits.craterLayer(entry.of, format.number(entry.layer))];
    case 'shrinkage': return [entry.greenRead === true ? words.limits.shrinkageRead(format.number(entry.dieMm)) : words.limits.shrinkage(format.number(entry.dieMm))];
    case 'archimedes': return [words.limits.archimedes];
    case 'saturation': {
      const { unit, cobaltFraction, warnLowPercent, warnHighPercent } = entry;
      const warns = warnLowPercent === undefined && warnHighPercent === undefined ? [] : [words.limits.saturationWarns(warnLowPercent === undefined ? null : format.number(warnLowPercent), warnHighPercent === undefined ? null : format.number(warnHighPercent))];
      return [words.limits.saturation(unit, percentOf(cobaltFraction, format)), ...warns];
    }
  }
}

/** Two points of an operating characteristic in words. */
export function writePoints({ p1Percent, producerRisk, p2Percent, consumerRisk }: RiskPoints, format: Format): string {
  return words.rules.points(format.number(p1Percent), percentOf(producerRisk, format), format.number(p2Percent), percentOf(consumerRisk, format));
}

function writeAttributes({ samples = 'single', counts, level, aqlPercent, switching, skipLot, ownTables = {} }: AttributesRule, format: Format): string {
  const { rules } = words;
  const perHundred = counts === 'nonconformities';
  return [
    rules.attributes(samples, level, writeClasses(aqlPercent, format, perHundred), switching), ...(perHundred ? [rules.nonconformities] : []),
    ...(skipLot === undefined ? [] : [rules.skipLot(format.number(skipLot.clearance), format.number(skipLot.oneIn))]),
    ...(['normal', 'tightened', 'reduced'] as const).flatMap((severity) => (ownTables[severity] === undefined ? [] : [rules.ownTable(labels.severities[severity], ownTables[severity] ?? '')])),
  ].join('; ');
}

function writeVariables({ level, aqlPercent, sigma, form, separate, points }: VariablesRule, unit: string, format: Format): string {
  const { rules } = words;
  const aql = separate === undefined ? rules.percent(format.number(aqlPercent)) : rules.separate(format.number(separate.lowerAqlPercent), format.number(separate.upperAqlPercent));
  return [
    points === undefined ? rules.variables(level, aql) : rules.variablesPoints(writePoints(points, format)),
    sigma === undefined ? rules.sMethod : rules.sigmaMethod(format.number(sigma), unit), ...(form === undefined ? [] : [form === 'k' ? rules.formK : rules.formM]),
  ].join(', ');
}

function writeClasses(values: Partial<Readonly<Record<FindingClass, number>>>, format: Format, perHundred: boolean): string {
  return FINDING_CLASSES.flatMap((each) => (values[each] === undefined ? [] : [words.rules.classAql(labels.findingClasses[each], format.number(values[each] ?? 0), perHundred)])).join(' · ');
}
function writeClassPoints(points: Partial<Readonly<Record<FindingClass, RiskPoints>>>, format: Format): string {
  return FINDING_CLASSES.flatMap((each) => (points[each] === undefined ? [] : [words.rules.classPoints(labels.findingClasses[each], writePoints(points[each], format))])).join('; ');
}
/** A fraction as percent, freed of the binary dust behind its twelfth digit. */
function percentOf(fraction: number, format: Format): string {
  return format.number(Number((fraction * 100).toPrecision(12)));
}
