import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crossedAnova, distinctCategories, gaugeComponents } from '../../../shared/metrology/gauge-study/index.ts';
import type { ComponentName, CrossedReadings } from '../../../shared/metrology/gauge-study/index.ts';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { normalAt } from '../../../shared/sampling/chance/index.ts';
import { diceFrom } from '../../../shared/sampling/draw/dice.ts';

const CHOICES = { poolAbove: 0.25, confidence: 0.95 };
/** Readings in whole steps of a gauge, so that shifting and scaling by powers of two is exact. */
const wholeStudy = fc.record({ parts: fc.integer({ min: 2, max: 6 }), people: fc.integer({ min: 1, max: 4 }), trials: fc.integer({ min: 2, max: 4 }) })
  .chain(({ parts, people, trials }) => fc.array(fc.array(fc.array(fc.integer({ min: -500, max: 500 }), { minLength: trials, maxLength: trials }), { minLength: people, maxLength: people }), { minLength: parts, maxLength: parts }));
const changed = (study: CrossedReadings, change: (value: number) => number): CrossedReadings => study.map((byPerson) => byPerson.map((byTrial) => byTrial.map(change)));
const near = (value: number, wanted: number, scale: number): void => expect(Math.abs(value - wanted)).toBeLessThanOrEqual(1e-9 * scale);

describe('any crossed study', () => {
  it('has sums of squares that make the total about the mean, and components that make the total spread', () => {
    fc.assert(fc.property(wholeStudy, (study) => {
      const anova = crossedAnova(study);
      const every = study.flat(2);
      const mean = every.reduce((sum, value) => sum + value, 0) / every.length;
      const total = every.reduce((sum, value) => sum + (value - mean) ** 2, 0);
      near(anova.rows.reduce((sum, { squares }) => sum + squares, 0), total, total + 1);
      expect(anova.rows.reduce((sum, { df }) => sum + df, 0)).toBe(every.length - 1);
      const { components } = gaugeComponents(anova, CHOICES);
      const variance = (name: ComponentName): number => components.find((each) => each.name === name)?.variance ?? 0;
      near(variance('repeatability') + variance('person') + variance('interaction') + variance('part'), variance('total'), total + 1);
      for (const each of components) {
        expect(each.variance).toBeGreaterThanOrEqual(0);
        expect(each.interval.low).toBeLessThanOrEqual(each.interval.high);
        expect(each.negative ?? -1).toBeLessThan(0);
      }
    }), { numRuns: 500, seed: 100 });
  });

  it('does not change when every reading is shifted, and grows with the square of the scale', () => {
    fc.assert(fc.property(wholeStudy, fc.integer({ min: -10_000, max: 10_000 }), fc.integer({ min: -8, max: 8 }), (study, shift, power) => {
      const [before, after] = [crossedAnova(study), crossedAnova(changed(study, (value) => (value + shift) * 2 ** power))];
      for (const [at, { squares, test }] of before.rows.entries()) {
        const other = after.rows[at];
        near((other?.squares ?? NaN) / 4 ** power, squares, before.total.squares + 1);
        if (test !== null && other?.test !== null && squares > 1e-6 && test.f < 1e6) near((other?.test.f ?? NaN) / test.f, 1, 1e3);
      }
    }), { numRuns: 500, seed: 101 });
  });

  it('does not change when parts or people come in another order', () => {
    fc.assert(fc.property(wholeStudy, (study) => {
      const [before, after] = [crossedAnova(study), crossedAnova(study.toReversed().map((byPerson) => byPerson.toReversed()))];
      for (const [at, { squares }] of before.rows.entries()) near(after.rows[at]?.squares ?? NaN, squares, before.total.squares + 1);
    }), { numRuns: 200, seed: 102 });
  });

  it('refuses a study with a reading missing, saying where', () => {
    fc.assert(fc.property(wholeStudy, fc.nat(), fc.nat(), (study, part, person) => {
      const people = study[0]?.length ?? 1;
      const [missing, by] = [part % study.length, person % people];
      const holed = study.map((byPerson, at) => byPerson.map((byTrial, each) => (at === missing && each === by ? byTrial.slice(1) : byTrial)));
      expect(() => crossedAnova(holed)).toThrow(OutsideDomain);
    }), { numRuns: 200, seed: 103 });
  });
});

describe('simulated studies of known spread', () => {
  const truth = { part: 2, person: 0.8, interaction: 0.5, repeatability: 1 };
  const size = { parts: 10, people: 4, trials: 3 };
  const rounds = 1500;
  const dice = diceFrom('simulated studies');
  const normal = (): number => normalAt((dice.roll(4_294_967_295) - 0.5) / 4_294_967_295);
  function simulated(): CrossedReadings {
    const people = Array.from({ length: size.people }, () => truth.person * normal());
    return Array.from({ length: size.parts }, () => {
      const part = truth.part * normal();
      return people.map((person) => {
        const cell = part + person + truth.interaction * normal();
        return Array.from({ length: size.trials }, () => cell + truth.repeatability * normal());
      });
    });
  }
  const found = Array.from({ length: rounds }, () => gaugeComponents(crossedAnova(simulated()), { poolAbove: 1, confidence: 0.9 }));
  const variances: Record<ComponentName, number> = {
    repeatability: 1, person: 0.64, interaction: 0.25, reproducibility: 0.89, gauge: 1.89, part: 4, total: 5.89,
  };
  // The share that holds the truth wobbles by 3·√(0.9·0.1/1500) = 0.023; the method may be up to a few hundredths on the safe side.
  it.each(Object.entries(variances))('intervals at 90 %% for %s hold %s in 0.875 to 0.96 of 1500 studies', (name, variance) => {
    const held = found.filter(({ components }) => components.some((each) => each.name === name && each.interval.low <= variance && variance <= each.interval.high)).length;
    expect(held / rounds).toBeGreaterThanOrEqual(0.875);
    expect(held / rounds).toBeLessThanOrEqual(0.96);
  });
  it.each(Object.entries(variances))('the mean estimate of %s is near %s', (name, variance) => {
    const estimates = found.map(({ components }) => components.find((each) => each.name === name)?.variance ?? NaN);
    const mean = estimates.reduce((sum, value) => sum + value, 0) / rounds;
    const spread = Math.sqrt(estimates.reduce((sum, value) => sum + (value - mean) ** 2, 0) / rounds);
    // Setting negative estimates to 0 lifts the mean a little: rarely needed at these sizes.
    expect(Math.abs(mean - variance)).toBeLessThanOrEqual(4 * (spread / Math.sqrt(rounds)) + 0.02 * variance);
  });
});

describe('distinct categories', () => {
  it('are none to tell where the gauge shows no spread', () => {
    expect(distinctCategories(1, 0)).toBeNull();
    expect(crossedAnova([[[1, 1]], [[2, 2]]]).rows[0]?.test).toBeNull();
  });
});
