import fc from 'fast-check';
import { expect, it } from 'vitest';
import { drawSample, drawStratified } from '../../../shared/sampling/draw/index.ts';

const aDraw = fc.integer({ min: 1, max: 5000 }).chain((population) =>
  fc.record({ seed: fc.string({ unit: 'grapheme' }), population: fc.constant(population), size: fc.integer({ min: 0, max: Math.min(population, 300) }) }));

it('a draw names that many different pieces in range, ascending, and the same ones again', () => {
  fc.assert(fc.property(aDraw, (draw) => {
    const pieces = drawSample(draw);
    expect(pieces).toHaveLength(draw.size);
    expect(pieces.every((piece, at) => Number.isInteger(piece) && piece >= 1 && piece <= draw.population && piece > (pieces[at - 1] ?? 0))).toBe(true);
    expect(drawSample({ ...draw })).toEqual(pieces);
  }));
});

it('a draw over strata names that many pieces in all, and from each stratum its share rounded down or up', () => {
  const aStratifiedDraw = fc.array(fc.integer({ min: 1, max: 400 }), { minLength: 1, maxLength: 8 }).chain((populations) => {
    const total = populations.reduce((sum, population) => sum + population, 0);
    const strata = populations.map((population, at) => ({ name: `position ${at + 1}`, population }));
    return fc.record({ seed: fc.string(), strata: fc.constant(strata), size: fc.integer({ min: 0, max: total }), total: fc.constant(total) });
  });
  fc.assert(fc.property(aStratifiedDraw, ({ total, ...draw }) => {
    const drawn = drawStratified(draw);
    expect(drawn.flatMap(({ pieces }) => pieces)).toHaveLength(draw.size);
    draw.strata.forEach(({ population }, at) => {
      const pieces = drawn[at]?.pieces ?? [];
      expect(Math.abs(pieces.length - (draw.size * population) / total)).toBeLessThan(1);
      expect(new Set(pieces).size).toBe(pieces.length);
      expect(pieces.every((piece) => piece >= 1 && piece <= population)).toBe(true);
    });
  }));
});
