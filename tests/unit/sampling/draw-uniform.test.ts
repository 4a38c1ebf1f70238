import { describe, expect, it } from 'vitest';
import { drawSample, drawStratified, drawSystematic } from '../../../shared/sampling/draw/index.ts';

/*
 * Uniformity over many seeds: single pieces and pairs, for each way of drawing, against the 99.9 % point of chi-square. The points are scipy
 * 1.17.1 chi2.ppf(0.999, df). The seeds are fixed, so each test gives the same answer every time; fair draws fail one in a thousand.
 *
 * Without replacement the counts of one draw hang together. Of n pieces from N, each piece's count scatters by n/N(1 − n/N) a draw and
 * sums to n, so Σ(seen − due)²/due stretched by (N − 1)/(N − n) is chi-square with N − 1 degrees (derived: all pairs of
 * pieces hang together alike).
 */
const POINT: Readonly<Record<number, number>> = { 3: 16.2662, 6: 22.4577, 9: 27.8772, 11: 31.2641, 24: 51.1786, 27: 55.4760, 29: 58.3012, 49: 85.3506, 119: 172.4177 };

describe('a random sample', () => {
  it('takes each of 50 pieces equally often, 8 a draw', () => {
    const taken = counted(10_000, 'random 50', (seed) => drawSample({ seed, population: 50, size: 8 }).map(String));
    expect(chiSquare(taken, 50) * (49 / 42)).toBeLessThan(pointOf(49));
  });

  it('takes each of 120 pieces equally often where half the lot is drawn', () => {
    const taken = counted(4000, 'half of 120', (seed) => drawSample({ seed, population: 120, size: 60 }).map(String));
    expect(chiSquare(taken, 120) * (119 / 60)).toBeLessThan(pointOf(119));
  });

  it('takes each of the 28 pairs from 8 equally often', () => {
    const taken = counted(14_000, 'pairs of 8', (seed) => [drawSample({ seed, population: 8, size: 2 }).join('+')]);
    expect(chiSquare(taken, 28)).toBeLessThan(pointOf(27));
  });

  it('takes each of the 120 triples from 10 equally often', () => {
    const taken = counted(24_000, 'triples of 10', (seed) => [drawSample({ seed, population: 10, size: 3 }).join('+')]);
    expect(chiSquare(taken, 120)).toBeLessThan(pointOf(119));
  });

  it('draws alike from seeds that differ only in a running number: neighbouring draws share no more pieces than chance has it', () => {
    // Pieces shared by two draws of 3 from 10 are hypergeometric: 35, 63, 21, 1 in 120. Pairs of draws stand apart, so the cells are independent.
    const taken = counted(12_000, 'neighbour', (seed) => {
      const next = new Set(drawSample({ seed: `${seed}'`, population: 10, size: 3 }));
      return [String(drawSample({ seed, population: 10, size: 3 }).filter((piece) => next.has(piece)).length)];
    });
    const due = [35, 63, 21, 1].map((part) => (part / 120) * 12_000);
    const off = due.reduce((sum, each, shared) => sum + ((taken.get(String(shared)) ?? 0) - each) ** 2 / each, 0);
    expect(off).toBeLessThan(pointOf(3));
  });
});

describe('a draw over furnace positions', () => {
  const strata = [{ name: 'top', population: 4 }, { name: 'middle', population: 6 }, { name: 'bottom', population: 2 }];

  it('takes each of 12 pieces equally often where the shares are whole', () => {
    const taken = counted(6000, 'whole shares', (seed) => drawStratified({ seed, strata, size: 6 }).flatMap(({ name, pieces }) => pieces.map((piece) => `${name}${piece}`)));
    // Each stratum of N pieces gives n: its part of the sum is (N − n)/(N − 1) of chi-square with N − 1 degrees, half drawn everywhere.
    const parts = strata.map(({ name, population }) => {
      const own = new Map([...taken].filter(([piece]) => piece.startsWith(name)));
      return chiSquare(own, population) * ((population - 1) / (population - population / 2));
    });
    expect(parts.reduce((sum, part) => sum + part, 0)).toBeLessThan(pointOf(9)); // 3 + 5 + 1 degrees
  });

  it('takes each of 12 pieces with the same chance where the shares are not whole', () => {
    const taken = counted(12_000, 'uneven shares', (seed) => drawStratified({ seed, strata, size: 5 }).flatMap(({ name, pieces }) => pieces.map((piece) => `${name}${piece}`)));
    expect(chiSquare(taken, 12)).toBeLessThan(pointOf(11)); // strata only lessen the scatter, so the bound is safe
  });

  it('takes each pair of one piece from the top and one from the middle equally often', () => {
    const even = [{ name: 'top', population: 5 }, { name: 'middle', population: 5 }];
    const pairs = counted(15_000, 'one of each', (seed) => [drawStratified({ seed, strata: even, size: 2 }).map(({ pieces }) => pieces.join()).join('+')]);
    expect(chiSquare(pairs, 25)).toBeLessThan(pointOf(24));
  });
});

describe('every so-manieth piece', () => {
  it('takes each of 30 pieces equally often, three a draw', () => {
    const taken = counted(9000, 'every tenth', (seed) => drawSystematic({ seed, population: 30, every: 10 }).map(String));
    // A start decides all three pieces, so the sum is three times that of the starts, chi-square with 9 degrees.
    expect(chiSquare(taken, 30) / 3).toBeLessThan(pointOf(9));
  });

  it('starts at each of 7 places equally often where the lot is no multiple of the step', () => {
    const starts = counted(7000, 'every seventh', (seed) => drawSystematic({ seed, population: 100, every: 7 }).slice(0, 1).map(String));
    expect(chiSquare(starts, 7)).toBeLessThan(pointOf(6));
  });

  it('draws only pairs a whole number of steps apart, each of the 30 neighbouring ones equally often', () => {
    const pairs = counted(15_000, 'pairs in step', (seed) => {
      const pieces = drawSystematic({ seed, population: 60, every: 30 });
      return [pieces.join('+')];
    });
    expect([...pairs.keys()].every((pair) => /^(\d+)\+(\d+)$/.test(pair) && Number(pair.split('+')[1]) - Number(pair.split('+')[0]) === 30)).toBe(true);
    expect(chiSquare(pairs, 30)).toBeLessThan(pointOf(29));
  });
});

it('the test itself sees a draw that leans: the last piece taken twice as often fails', () => {
  const leaning = counted(10_000, 'leaning', (seed) => {
    const [piece = 0] = drawSample({ seed, population: 11, size: 1 });
    return [String(Math.min(piece, 10))];
  });
  expect(chiSquare(leaning, 10)).toBeGreaterThan(pointOf(9));
});

function pointOf(degrees: number): number {
  const point = POINT[degrees];
  if (point === undefined) throw new Error(`no point for ${degrees} degrees`);
  return point;
}

function counted(draws: number, name: string, drawn: (seed: string) => string[]): Map<string, number> {
  const taken = new Map<string, number>();
  for (let draw = 1; draw <= draws; draw += 1) for (const what of drawn(`${name} ${draw}`)) taken.set(what, (taken.get(what) ?? 0) + 1);
  return taken;
}

/** Σ(seen − due)²/due over so many kinds, each equally likely; kinds never seen count too. */
function chiSquare(taken: Map<string, number>, kinds: number): number {
  const all = [...taken.values()].reduce((sum, times) => sum + times, 0);
  const due = all / kinds;
  return [...taken.values()].reduce((sum, times) => sum + (times - due) ** 2 / due, 0) + (kinds - taken.size) * due;
}
