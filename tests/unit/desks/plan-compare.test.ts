import { describe, expect, it } from 'vitest';
import { choiceOf, choiceText, FIELDS_OF, lettered, readChoice, RULES, withText } from '../../../kiosk/plans/compare/choice.ts';
import { comparedPlan } from '../../../kiosk/plans/compare/compared-plan.ts';
import { compareLinks } from '../../../kiosk/plans/compare/compare-link.ts';
import { comparePath, readComparison, STANDARD_SETTINGS } from '../../../kiosk/plans/compare/comparison.ts';
import { routeOf } from '../../../kiosk/shell/routes.ts';
import { variablesPlan } from '../../../shared/sampling/variables/index.ts';
import type { Characteristic } from '../../../shared/traveller/index.ts';

const reopened = (path: string) => readComparison(routeOf(path).query);

describe('a comparison in an address', () => {
  it.each(RULES)('keeps every field of a plan by %s', (rule) => {
    const typed = FIELDS_OF[rule].filter((field) => !['level', 'samples', 'severity', 'variablesLevel', 'variablesSeverity', 'method'].includes(field));
    const choice = typed.reduce((each, field, at) => withText(each, field, String(at + 1.5)), choiceOf(rule));
    expect(readChoice(choiceText(choice))).toEqual(choice);
  });
  it('opens as it was shared: plans in their order, settings, and a text that is wrong', () => {
    const comparison = {
      choices: [choiceOf('attributes', { aql: '2.5', samples: 'double', lot: '1200' }), choiceOf('sequential', { p1: 'one' })],
      settings: { ...STANDARD_SETTINGS, curve: 'asn', model: 'hypergeometric', expected: '1.2', reduced: false, destructive: true, seed: '7', from: 'ROUTE-CNMG/1' },
    } as const;
    expect(reopened(comparePath(comparison))).toEqual(comparison);
  });
  it('leaves out what is as usual', () => expect(comparePath({ choices: [choiceOf('attributes')], settings: STANDARD_SETTINGS })).toBe('/plans/compare?plan=attributes_1000_II_1_single_normal'));
  it('begins with a single and a double plan where nothing is named', () => expect(reopened('/plans/compare').choices.map(({ texts }) => texts.samples)).toEqual(['single', 'double']));
  it('passes over what it does not know', () => {
    const { choices, settings } = reopened('/plans/compare?plan=nonsense_1&plan=zeroAcceptance_500&curve=sideways&model=poisson');
    expect(choices).toEqual([choiceOf('zeroAcceptance', { lot: '500' })]);
    expect(settings).toEqual({ ...STANDARD_SETTINGS, model: 'poisson' });
  });
  it('shows four plans and no more', () => expect(reopened(`/plans/compare?${'plan=zeroAcceptance_500&'.repeat(6)}`).choices).toHaveLength(4));
  it('letters them A to D', () => expect(lettered(Array.from({ length: 5 }, () => choiceOf('attributes'))).map(({ letter }) => letter)).toEqual(['A', 'B', 'C', 'D']));
});

describe('a characteristic opens the comparison', () => {
  const counted = (sampling: Extract<Characteristic, { readonly kind: 'counted' }>['sampling']): Characteristic => ({ id: 'look', name: 'Look', method: 'by eye', destructive: false, kind: 'counted', kinds: [], sampling });
  const first = (characteristic: Characteristic) => compareLinks(characteristic, 'P/2').map(({ findingClass, href }) => [findingClass, reopened(href).choices[0]]);

  it('with one plan for each class by AQL, its level and samples', () => {
    expect(first(counted({ rule: 'attributes', switching: 'MIL-STD-105E', level: 'I', aqlPercent: { critical: 0.15, minor: 2.5 }, samples: 'double' }))).toEqual([
      ['critical', choiceOf('attributes', { level: 'I', aql: '0.15', samples: 'double' })], ['minor', choiceOf('attributes', { level: 'I', aql: '2.5', samples: 'double' })],
    ]);
  });
  it('with its switching rule, and the way back to its plan', () => {
    const [link] = compareLinks(counted({ rule: 'attributes', switching: 'MIL-STD-105E', level: 'I', aqlPercent: { major: 1 } }), 'P/2');
    expect(reopened(link?.href ?? '').settings).toEqual({ ...STANDARD_SETTINGS, switching: 'MIL-STD-105E', from: 'P/2' });
  });
  it('with risks as percent', () => {
    expect(first(counted({ rule: 'sequential', points: { major: { p1Percent: 1, producerRisk: 0.07, p2Percent: 8, consumerRisk: 0.1 } } }))).toEqual([['major', choiceOf('sequential', { p1: '1', producerRisk: '7', p2: '8', consumerRisk: '10' })]]);
    expect(first(counted({ rule: 'limitingQuality', lqPercent: { major: 3.15 }, consumerRisk: 0.1 }))).toEqual([['major', choiceOf('limitingQuality', { lq: '3.15', consumerRisk: '10' })]]);
  });
  it('with a plan for each of two limits where each has an AQL of its own, the lower first', () => {
    const wide: Characteristic = { id: 'ic', name: 'Inscribed circle', method: 'micrometer', destructive: false, kind: 'measured', unit: 'mm', decimals: 3, lower: 1, upper: 2, target: null, plausible: { least: 0, most: 3 }, gaugeKind: null, decisionRule: 'simple', entry: { how: 'direct' }, factor: null, pressTolerancePercent: null, sampling: { rule: 'variables', level: 'IV', aqlPercent: 1, separate: { lowerAqlPercent: 4, upperAqlPercent: 1 } } };
    const [link] = compareLinks(wide, 'P/1');
    const { choices } = reopened(link?.href ?? '');
    expect(choices).toEqual([choiceOf('variables', { aql: '4', aqlOther: '1' }), choiceOf('variables', { aql: '1', aqlOther: '4' })]);
    // One sample serves both; each limit is judged by its own k.
    const plans = lettered(choices).flatMap((choice) => {
      const outcome = comparedPlan(choice, 'binomial');
      return 'plan' in outcome && outcome.plan.judged.by === 'measured' ? [outcome.plan] : [];
    });
    const table = variablesPlan({ lotSize: 1000, level: 'IV', severity: 'normal', aqlPercent: 1, separate: { lowerAqlPercent: 4, upperAqlPercent: 1 } });
    expect(plans.map(({ judged, producerAt }) => [judged.by === 'measured' ? judged.judging : null, producerAt])).toEqual([
      [{ sampleSize: table.sampleSize, k: table.separate?.lower.k, mPercent: table.mPercent, form: 'k' }, 0.04], [{ sampleSize: table.sampleSize, k: table.separate?.upper.k, mPercent: table.mPercent, form: 'k' }, 0.01],
    ]);
  });
  it('and a plan by variables through two points measures no more than the lot', () => {
    const [choice] = lettered([choiceOf('variablesPoints', { lot: '12' })]);
    const outcome = choice === undefined ? null : comparedPlan(choice, 'binomial');
    const judged = outcome !== null && 'plan' in outcome ? outcome.plan.judged : null;
    expect(judged).toMatchObject({ by: 'measured', plan: { everyPiece: true, sampleSize: 12 }, judging: { sampleSize: 12 } });
  });
  it('but not where its rule has no risk to draw', () => expect(compareLinks(counted({ rule: 'interval', everyPieces: 100, n: 5 }), 'P/1')).toEqual([]));
});
