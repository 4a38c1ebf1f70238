import { beforeAll, describe, expect, it, vi } from 'vitest';
import { choiceOf, lettered, RULES, type Choice } from '../../../kiosk/plans/compare/choice.ts';
import { comparedPlan, type Compared } from '../../../kiosk/plans/compare/compared-plan.ts';
import { MODELS, STANDARD_SETTINGS, type ModelName } from '../../../kiosk/plans/compare/comparison.ts';
import { workCurves } from '../../../kiosk/plans/compare/curves.ts';
import { workFigures } from '../../../kiosk/plans/compare/figures.ts';
import { workYear } from '../../../kiosk/plans/compare/schemes.ts';
import { Turns } from '../../../kiosk/plans/compare/turns.ts';
import { WHY_KINDS } from '../../../kiosk/plans/compare/why-asked.ts';
import { whyOf } from '../../../kiosk/plans/compare/why.ts';

beforeAll(() => {
  vi.stubGlobal('document', { documentElement: { lang: 'en' } });
});
const turns = () => new Turns(new AbortController().signal);
const outcomeOf = (choice: Choice, model: ModelName = 'binomial') => {
  const [first] = lettered([choice]);
  if (first === undefined) throw new Error('one choice has one letter');
  return comparedPlan(first, model);
};
const planOf = (choice: Choice, model?: ModelName): Compared => {
  const outcome = outcomeOf(choice, model);
  if ('faults' in outcome) throw new Error(outcome.said);
  return outcome.plan;
};
const whyOfSize = (choice: Choice) => whyOf('sample', planOf(choice), { settings: STANDARD_SETTINGS, figures: null });

describe('every rule', () => {
  it.each(RULES.flatMap((rule) => MODELS.map((model) => ({ rule, model }))))('gives a plan by $rule with figures and a reason for each, counted by $model', async ({ rule, model }) => {
    const plan = planOf(choiceOf(rule), model);
    const [figures = null] = await workFigures([plan], model, 0.005)(turns(), () => {});
    for (const kind of WHY_KINDS) {
      const { lines, sources } = whyOf(kind, plan, { settings: { ...STANDARD_SETTINGS, model }, figures });
      expect(sources.length, kind).toBeGreaterThan(0);
      for (const { text } of lines) expect(text).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
});

describe('the reason of a number', () => {
  it('follows an arrow to the plan, row by row', () => {
    // MIL-STD-105E Table II-A (seen): F at AQL 1 points up to E, n 13, Ac 0.
    const { excerpt, lines } = whyOfSize(choiceOf('attributes', { lot: '100', aql: '1' }));
    expect(lines.find(({ label }) => label === 'Arrow')?.text).toBe('From F the arrow points up; the first plan stands at E.');
    expect(excerpt?.rows.map(({ letter, size, cell, way }) => [letter, size, cell, way])).toEqual([['D', '8', '↓', ''], ['E', '13', '0/1', 'this plan'], ['F', '20', '↑', 'begins here'], ['G', '32', '↓', '']]);
  });
  it.each([
    { aql: '1', severity: 'normal', samples: 'single', tag: 'seen' }, { aql: '0.1', severity: 'normal', samples: 'single', tag: 'memory' }, { aql: '1', severity: 'reduced', samples: 'single', tag: 'memory' },
    { aql: '1', severity: 'tightened', samples: 'single', tag: 'seen' }, { aql: '1', severity: 'normal', samples: 'double', tag: 'memory' },
  ])('says of AQL $aql, $samples, $severity that its table is $tag', ({ aql, severity, samples, tag }) => expect(whyOfSize(choiceOf('attributes', { aql, severity, samples })).sources.at(-1)?.tag).toBe(tag));
  it('puts the pieces of each sample in', async () => {
    const plan = planOf(choiceOf('attributes', { samples: 'double' }));
    const [figures = null] = await workFigures([plan], 'binomial', 0.005)(turns(), () => {});
    expect(whyOf('asnAtAql', plan, { settings: STANDARD_SETTINGS, figures }).lines.at(-1)?.text).toMatch(/^50 × 100 % \+ 50 × [\d.]+ % = [\d.]+$/);
  });
});

describe('a choice that gives no plan', () => {
  it('is marked where it is wrong', () => {
    expect(outcomeOf(choiceOf('attributes', { lot: '0' }))).toMatchObject({ faults: { lot: 'A whole number from 1 to 1,000,000,000.' } });
    expect(outcomeOf(choiceOf('sequential', { p1: '6', p2: '6' }))).toMatchObject({ faults: { p2: 'p₂ must be above p₁.' } });
    expect(outcomeOf(choiceOf('twoPointSingle', { producerRisk: '60', consumerRisk: '50' }))).toMatchObject({ faults: { consumerRisk: 'Both risks together stay below 100 %.' } });
    expect(outcomeOf(choiceOf('variables', { lot: '2' }))).toMatchObject({ faults: { lot: 'By variables a lot has 3 pieces or more.' } });
  });
  it('counts nonconformities above AQL 10 only by their own law', () => {
    expect(outcomeOf(choiceOf('attributes', { aql: '25' }))).toMatchObject({ faults: { aql: expect.stringContaining('nonconformities') } });
    expect(planOf(choiceOf('attributes', { aql: '25' }), 'poisson').producerAt).toBe(0.25);
  });
});

it('a curve begins at its best, and marks both points', async () => {
  const { points, lines, top } = await workCurves([planOf(choiceOf('twoPointSingle'))], 'acceptance', 'binomial', null)(turns(), () => {});
  expect([points[0], points.length, top]).toEqual([0, 201, 1]);
  expect(lines[0]?.values[0]).toBe(1);
  expect(lines[0]?.marks.map(({ kind, x }) => [kind, x])).toEqual([['producer', 0.01], ['consumer', 0.06]]);
});

it('the same seed gives the same year, another seed another', async () => {
  const plan = planOf(choiceOf('attributes'));
  const year = (seed: string) => workYear([plan], { ...STANDARD_SETTINGS, expected: '1.5', seed }, 'A')(turns(), () => {});
  expect(await year('4')).toEqual(await year('4'));
  expect(await year('5')).not.toEqual(await year('4'));
  expect((await year('4'))?.lots).toHaveLength(250);
});

it('work that is no longer wanted ends at its next breath', async () => {
  const abort = new AbortController();
  abort.abort();
  await expect(workFigures([planOf(choiceOf('attributes'))], 'binomial', 0.01)(new Turns(abort.signal), () => {})).rejects.toThrow();
});
