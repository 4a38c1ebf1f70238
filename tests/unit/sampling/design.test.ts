import { describe, expect, it } from 'vitest';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { limitingQualitySize, twoPointDouble, twoPointSequential, twoPointSingle, twoPointVariables, zeroAcceptanceSize } from '../../../shared/sampling/design/index.ts';

const points = { p1: 0.01, producerRisk: 0.05, p2: 0.05, consumerRisk: 0.1 };
const process = { kind: 'binomial' } as const;
const lot = (lotSize: number) => ({ kind: 'hypergeometric', lotSize }) as const;

describe('a design for one lot', () => {
  it('needs fewer pieces than one for a process, and comes to the same in a very large lot', () => {
    const small = twoPointSingle({ ...points, model: lot(400) });
    expect('none' in small ? 0 : small.n).toBeLessThan(132);
    expect(twoPointSingle({ ...points, model: lot(1_000_000_000) })).toMatchObject({ n: 132, ac: 3 });
    expect(twoPointSingle({ ...points, model: process })).toMatchObject({ n: 132, ac: 3, re: 4 });
  });

  it('looks at every piece where nothing less will do', () => {
    expect(twoPointSingle({ p1: 0.02, producerRisk: 0.001, p2: 0.03, consumerRisk: 0.001, model: lot(100) })).toMatchObject({ n: 100, ac: 2, producerRisk: 0, consumerRisk: 0 });
  });

  it('takes p1 as whole pieces rounded down and p2 rounded up, so that the lots between are nobody’s', () => {
    // 1.5 and 4.5 of 150: one piece is good, five are bad.
    expect(twoPointSingle({ ...points, p2: 0.03, model: lot(150) })).toEqual(twoPointSingle({ ...points, p1: 1 / 150, p2: 5 / 150, model: lot(150) }));
  });

  it('is not misled by binary digits: 0.8 % of 35 000 is 280 pieces', () => {
    expect(twoPointSingle({ ...points, p1: 0.001, p2: 0.008, model: lot(35_000) })).toEqual(twoPointSingle({ ...points, p1: 0.001, p2: 280 / 35_000, model: lot(35_000) }));
  });
});

describe('several nonconformities on a piece', () => {
  it('allow several Ac at one n; the smallest is given', () => {
    expect(twoPointSingle({ p1: 1, producerRisk: 0.05, p2: 20, consumerRisk: 0.1, model: { kind: 'poisson' } })).toMatchObject({ n: 1, ac: 3 });
  });
});

describe('where nothing fits', () => {
  it('a process that would need more than a million pieces has no single plan', () => {
    expect(twoPointSingle({ ...points, p2: 0.0101, model: process })).toEqual({ none: 'tooLarge' });
  });
  it('two qualities too close have no double and no variables plan within the pieces looked through', () => {
    expect(twoPointDouble({ ...points, p2: 0.0105, model: process })).toEqual({ none: 'tooLarge' });
    expect(twoPointVariables({ ...points, p2: 0.0102, method: 's' })).toEqual({ none: 'tooLarge' });
  });
  it('a lot of three has no double plan', () => {
    expect(twoPointDouble({ p1: 0.3, producerRisk: 0.05, p2: 0.5, consumerRisk: 0.05, model: lot(3) })).toEqual({ none: 'lotTooSmall' });
  });
});

describe('a double plan', () => {
  it('takes the second sample as asked for, rejects at the same number in both, and says what it looks at on average', () => {
    const plan = twoPointDouble({ ...points, ratio: 2, model: process });
    if ('none' in plan) throw new Error(plan.none);
    const [first, second] = plan.stages;
    expect([second.sampleSize, first.re, second.re]).toEqual([2 * first.sampleSize, (second.ac ?? 0) + 1, (second.ac ?? 0) + 1]);
    expect(plan.averageAtP1).toBeLessThan(132);
  });
  it('may hope for none in good lots and still take a second sample', () => {
    expect(twoPointDouble({ ...points, p2: 0.06, model: lot(60) })).toMatchObject({ producerRisk: 0, stages: [{ sampleSize: 26, ac: 0 }, { sampleSize: 26, ac: 1 }] });
  });
});

describe('a sequential plan', () => {
  it('ends with the lot, and its risks are those of what is then left of it', () => {
    const design = twoPointSequential({ ...points, lotSize: 60 });
    expect(design.plan.truncateAt).toBe(60);
    expect(design.averageAtP1).toBeLessThanOrEqual(60);
  });
  it('can be reckoned for the lot itself, drawn from without replacement', () => {
    const [ofLot, ofProcess] = [twoPointSequential({ ...points, lotSize: 500, model: lot(500) }), twoPointSequential({ ...points, lotSize: 500 })];
    expect(ofLot.plan).toEqual(ofProcess.plan);
    expect(ofLot.consumerRisk).toBeLessThan(ofProcess.consumerRisk);
  });
});

describe('a zero-acceptance size', () => {
  it('is 205 for 1 % of 1000 at a risk of 0.1: C(990, 205)/C(1000, 205) is 0.0997, with 204 it is 0.1002 (by hand, in logarithms)', () => {
    const accepted = (n: number) => Array.from({ length: 10 }, (_, at) => (1000 - n - at) / (1000 - at)).reduce((product, part) => product * part, 1);
    expect([accepted(205) <= 0.1, accepted(204) <= 0.1]).toEqual([true, false]);
    expect(zeroAcceptanceSize({ lotSize: 1000, lq: 0.01, consumerRisk: 0.1 })).toMatchObject({ n: 205, ac: 0, re: 1, everyPiece: false });
  });
  it('is less than the size with a larger Ac', () => {
    const sizes = [0, 1, 2].map((ac) => limitingQualitySize({ lotSize: 1000, lq: 0.05, consumerRisk: 0.1, ac }).n);
    expect(sizes).toEqual([...sizes].sort((one, other) => one - other));
    expect(new Set(sizes).size).toBe(3);
  });
});

it.each([
  [{ p1: 0.05, p2: 0.05 }], [{ p1: 0 }], [{ p2: 1 }], [{ p1: Number.NaN }], [{ producerRisk: 0 }], [{ consumerRisk: 0.95 }], [{ model: lot(0) }], [{ model: lot(2.5) }],
])('refuses %o as outside the domain', (wrong) => {
  expect(() => twoPointSingle({ ...points, model: process, ...wrong })).toThrow(OutsideDomain);
  expect(() => twoPointDouble({ ...points, model: process, ...wrong })).toThrow(OutsideDomain);
});

it('refuses a ratio outside 0.1 … 10', () => {
  for (const ratio of [0, 0.05, 11, Number.NaN]) expect(() => twoPointDouble({ ...points, model: process, ratio })).toThrow(OutsideDomain);
});
