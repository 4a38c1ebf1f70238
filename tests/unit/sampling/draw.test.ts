import { describe, expect, it } from 'vitest';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { diceFrom } from '../../../shared/sampling/draw/dice.ts';
import { drawSample, drawStratified, drawSystematic } from '../../../shared/sampling/draw/index.ts';

// The chi-square bounds are the 1 - 1e-4 points (scipy 1.17.1 chi2.ppf): fair dice would break each with probability 1e-4. The seeds
// are fixed, so the tests give the same answer every time.
const BOUND = { df9: 33.7199, df14: 42.5793, df19: 50.7955 };

describe('a drawn sample', () => {
  it('takes each of 20 pieces equally often over 4000 draws of 5 (chi-square below its 1 - 1e-4 point)', () => {
    const taken = counted(4000, (seed) => drawSample({ seed, population: 20, size: 5 }).map(String));
    // Without replacement the counts hang together: the sum is stretched by (N - 1)/(N - n) to be chi-square with N - 1 degrees.
    expect(chiSquare(taken, 20, 1000) * (19 / 15)).toBeLessThan(BOUND.df19);
  });

  it('takes each of the 15 pairs from 6 equally often (chi-square below its 1 - 1e-4 point)', () => {
    const taken = counted(6000, (seed) => [drawSample({ seed, population: 6, size: 2 }).join('+')]);
    expect(chiSquare(taken, 15, 400)).toBeLessThan(BOUND.df14);
  });

  it('takes the whole lot when asked to, and nothing when asked for none', () => {
    expect(drawSample({ seed: 'all', population: 7, size: 7 })).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(drawSample({ seed: 'none', population: 7, size: 0 })).toEqual([]);
  });

  it('depends on the seed', () => {
    const draws = new Set(Array.from({ length: 50 }, (_, at) => drawSample({ seed: `seed ${at}`, population: 1000, size: 10 }).join()));
    expect(draws.size).toBe(50);
  });

  it('keeps drawing the pieces that stand in old records', () => {
    // Our own output, held fixed on purpose: a change here would break the repeatability of every recorded draw.
    expect(drawSample({ seed: 'L-0417 final visual 1', population: 1200, size: 8 })).toEqual(OLD_RECORD);
  });

  it('refuses a sample larger than the population', () => {
    expect(() => drawSample({ seed: '', population: 5, size: 6 })).toThrow(OutsideDomain);
    expect(() => drawSample({ seed: '', population: 0, size: 0 })).toThrow(OutsideDomain);
  });
});

describe('a draw over furnace positions', () => {
  const strata = ['top', 'middle', 'bottom'].map((name) => ({ name, population: 40 }));

  it('gives equal positions equal shares', () => {
    expect(drawStratified({ seed: 'C-1', strata, size: 6 }).map(({ name, pieces }) => [name, pieces.length])).toEqual([['top', 2], ['middle', 2], ['bottom', 2]]);
  });

  it('gives each piece the same chance where the shares are not whole (chi-square below its 1 - 1e-4 point)', () => {
    const uneven = [{ name: 'a', population: 3 }, { name: 'b', population: 5 }, { name: 'c', population: 2 }];
    const taken = counted(3000, (seed) =>
      drawStratified({ seed, strata: uneven, size: 4 }).flatMap(({ name, pieces }) => pieces.map((piece) => `${name}${piece}`)));
    expect(chiSquare(taken, 10, 1200)).toBeLessThan(BOUND.df9); // strata only lessen the scatter, so the bound is safe
  });

  it('refuses a name used twice', () => {
    expect(() => drawStratified({ seed: '', strata: [...strata, { name: 'top', population: 1 }], size: 1 })).toThrow(OutsideDomain);
  });
});

describe('every so-manieth piece', () => {
  it('starts at each place equally often and keeps the step', () => {
    const starts = counted(3000, (seed) => drawSystematic({ seed, population: 100, every: 10 }).slice(0, 1).map(String));
    expect(chiSquare(starts, 10, 300)).toBeLessThan(BOUND.df9);
    const pieces = drawSystematic({ seed: 'every', population: 103, every: 10 });
    expect(pieces.every((piece, at) => piece === (pieces[0] ?? 0) + 10 * at && piece <= 103)).toBe(true);
    expect((pieces.at(-1) ?? 0) + 10).toBeGreaterThan(103);
  });
});

describe('the dice', () => {
  it('favour no third of a huge die (chi-square below its 1 - 1e-4 point, 2 degrees: 18.42)', () => {
    // A die of 3/4 of all 32-bit words: without throwing the incomplete stretch away, the first third would come up half the time.
    const dice = diceFrom('a huge die');
    const third = 2 ** 30;
    const taken = counted(3000, () => [String(Math.ceil(dice.roll(3 * third) / third))]);
    expect(chiSquare(taken, 3, 1000)).toBeLessThan(18.42);
  });
});

const OLD_RECORD = [4, 326, 517, 633, 647, 846, 958, 1138];

function counted(draws: number, drawn: (seed: string) => string[]): Map<string, number> {
  const taken = new Map<string, number>();
  for (let draw = 0; draw < draws; draw += 1) for (const what of drawn(`draw ${draw}`)) taken.set(what, (taken.get(what) ?? 0) + 1);
  return taken;
}

function chiSquare(taken: Map<string, number>, kinds: number, each: number): number {
  const seen = [...taken.values()].reduce((sum, times) => sum + (times - each) ** 2 / each, 0);
  return seen + (kinds - taken.size) * each;
}
