import fc from 'fast-check';
import { expect, it } from 'vitest';
import { drawOrder } from '../../../shared/sampling/draw/index.ts';
import { blindOrder, nextPlace } from '../../../shared/traveller/index.ts';

const design = fc.record({ seed: fc.string(), parts: fc.integer({ min: 1, max: 12 }), people: fc.integer({ min: 1, max: 4 }), trials: fc.integer({ min: 1, max: 6 }) }).map(({ seed, parts, people, trials }) => ({
  seed, trials, parts: Array.from({ length: parts }, (_, at) => ({ label: String(at), reference: null })), people: Array.from({ length: people }, (_, at) => ({ badge: `P-${at}`, name: '' })),
}));

it('every trial of every person is all the parts once, for any seed, and no part comes twice running', () => {
  fc.assert(fc.property(design, (study) => {
    for (const { badge } of study.people) {
      const order = blindOrder(study, badge);
      for (let trial = 1; trial <= study.trials; trial += 1) expect(order.filter((place) => place.trial === trial).map(({ part }) => part).sort((a, b) => a - b)).toEqual(study.parts.map((_, at) => at + 1));
      expect(order.map(({ trial }) => trial)).toEqual([...order.map(({ trial }) => trial)].sort((a, b) => a - b));
      if (study.parts.length > 1) order.forEach(({ part }, at) => expect(part).not.toBe(order[at - 1]?.part));
      expect(blindOrder(study, badge)).toEqual(order);
    }
    expect(blindOrder(study, 'nobody')).toEqual([]);
  }), { numRuns: 300, seed: 7 });
});

it('goes on from wherever it stands to the end', () => {
  fc.assert(fc.property(design, fc.nat(), (study, cut) => {
    const order = blindOrder(study, 'P-0');
    const done = order.slice(0, cut % (order.length + 1)).map(({ part, trial }, at) => ({ reading: at + 1, badge: 'P-0', part, trial, value: 0, at: '', bench: '', corrected: false }));
    expect(nextPlace({ ...study, readings: done }, 'P-0')).toEqual(order[done.length] ?? null);
  }), { numRuns: 300, seed: 8 });
});

it('draws every order of four things about equally often', () => {
  const seen = new Map<string, number>();
  for (let round = 0; round < 24_000; round += 1) {
    const order = drawOrder({ seed: `order ${round}`, population: 4 }).join('');
    seen.set(order, (seen.get(order) ?? 0) + 1);
  }
  expect(seen.size).toBe(24);
  // Chi-square on 23 degrees of freedom: 0.9999 of fair draws stay below 57.07 (scipy 1.17.1.stats.chi2.ppf).
  expect([...seen.values()].reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0)).toBeLessThan(57.07);
});
