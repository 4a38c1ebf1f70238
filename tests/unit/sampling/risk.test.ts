import { describe, expect, it } from 'vitest';
import { judgeStages } from '../../../shared/sampling/attributes/index.ts';
import type { Stage } from '../../../shared/sampling/attributes/index.ts';
import { poissonAtMost, poissonExactly } from '../../../shared/sampling/chance/index.ts';
import {
  acceptance, acceptanceAt, averageOutgoingLimit, averageOutgoingQuality, averageSampleNumber, averageTotalInspection, batchInterval, clopperPearson,
  ocCurve, outcomes, qualityAt, rejection, skipLotAcceptance,
} from '../../../shared/sampling/risk/index.ts';
import { acceptAt, judgeSequential, rejectAt, sequentialPlan } from '../../../shared/sampling/sequential/index.ts';
import type { SequentialPlan } from '../../../shared/sampling/sequential/index.ts';

const single = { stages: [{ sampleSize: 3, ac: 0, re: 2 }] };
const double = { stages: [{ sampleSize: 2, ac: 0, re: 2 }, { sampleSize: 3, ac: 1, re: 3 }] };
const triple = { stages: [{ sampleSize: 2, ac: null, re: 2 }, { sampleSize: 2, ac: 0, re: 3 }, { sampleSize: 3, ac: 2, re: 3 }] };
const wholeLot = { stages: [{ sampleSize: 4, ac: 0, re: 3 }, { sampleSize: 5, ac: 2, re: 4 }] };

describe('by looking at every order in which the pieces of a small lot may come', () => {
  it.each([
    { name: 'a single plan with a gap', plan: single }, { name: 'a double plan', plan: double },
    { name: 'three samples, the first of which cannot accept', plan: triple }, { name: 'a plan whose samples take the whole lot', plan: wholeLot },
  ])('$name has the outcomes, sample number, curtailed or not, outgoing quality and inspection counted', ({ plan }) => {
    for (let nonconforming = 0; nonconforming <= 9; nonconforming += 1) {
      const counted = countStaged(plan.stages, 9, nonconforming);
      const model = { kind: 'hypergeometric', lotSize: 9 } as const;
      const reckoned = outcomes(plan, model, nonconforming / 9);
      expect(reckoned.accepted).toBeCloseTo(counted.accepted, 12);
      expect(reckoned.acceptedInGap).toBeCloseTo(counted.acceptedInGap, 12);
      expect(reckoned.rejected).toBeCloseTo(counted.rejected, 12);
      expect(acceptanceAt(plan, 9, nonconforming)).toBeCloseTo(counted.accepted + counted.acceptedInGap, 12);
      expect(reckoned.averageSampleNumber).toBeCloseTo(counted.pieces, 12);
      expect(averageSampleNumber(plan, model, nonconforming / 9, { curtailed: true })).toBeCloseTo(counted.curtailedPieces, 12);
      expect(averageOutgoingQuality(plan, null, model, nonconforming / 9)).toBeCloseTo(counted.outgoing, 12);
      expect(averageTotalInspection(plan, 9, model, nonconforming / 9)).toBeCloseTo(counted.inspected, 12);
    }
  });

  it('a sequential plan has the outcomes and sample number counted, cut off early or by the end of the lot', () => {
    for (const truncateAt of [6, 10]) {
      const plan = smallSequential(truncateAt);
      for (let nonconforming = 0; nonconforming <= 10; nonconforming += 1) {
        const counted = countSequential(plan, 10, nonconforming);
        const reckoned = outcomes(plan, { kind: 'hypergeometric', lotSize: 10 }, nonconforming / 10);
        expect(reckoned.accepted).toBeCloseTo(counted.accepted, 12);
        expect(reckoned.rejected).toBeCloseTo(1 - counted.accepted, 12);
        expect(reckoned.averageSampleNumber).toBeCloseTo(counted.pieces, 12);
        expect(averageOutgoingQuality(plan, 10, { kind: 'hypergeometric', lotSize: 10 }, nonconforming / 10)).toBeCloseTo(counted.outgoing, 12);
      }
    }
  });
});

describe('by following a sequential plan piece by piece', () => {
  const plan = sequentialPlan({ lotSize: 100_000, p1Percent: 1, producerRisk: 0.05, p2Percent: 4, consumerRisk: 0.1 });
  it.each([0, 0.001, 0.01, 0.02, 0.04, 0.3, 1])('p %d: a process gives the same acceptance and sample number', (p) => {
    const followed = followPieces(plan, [1 - p, p]);
    const reckoned = outcomes(plan, { kind: 'binomial' }, p);
    expect(reckoned.accepted).toBeCloseTo(followed.accepted, 11);
    expect(reckoned.rejected).toBeCloseTo(followed.rejected, 11);
    expect(reckoned.averageSampleNumber / followed.pieces).toBeCloseTo(1, 11);
  });

  it.each([0.001, 0.01, 0.03, 0.06, 0.5])('%d nonconformities a piece: counting them gives the same', (perPiece) => {
    const followed = followPieces(plan, Array.from({ length: 40 }, (_, count) => poissonExactly(count, perPiece)));
    const reckoned = outcomes(plan, { kind: 'poisson' }, perPiece);
    expect(reckoned.accepted).toBeCloseTo(followed.accepted, 11);
    expect(reckoned.averageSampleNumber / followed.pieces).toBeCloseTo(1, 11);
  });

  it('keeps both of its risks near what was asked for', () => {
    expect(rejection(plan, { kind: 'binomial' }, 0.01)).toBeLessThan(0.06);
    expect(acceptance(plan, { kind: 'binomial' }, 0.04)).toBeLessThan(0.11);
  });
});

it('counts whole pieces until so many nonconformities, whether added up or by the integral', () => {
  const plan = { stages: [{ sampleSize: 10, ac: 0, re: 4 }, { sampleSize: 400, ac: 3, re: 4 }] };
  for (const perPiece of [1e-6, 0.004, 0.0499, 0.0501, 0.7]) {
    let pieces = 10;
    for (let before = 1; before <= 3; before += 1) {
      for (let looked = 0; looked < 400; looked += 1) pieces += poissonExactly(before, 10 * perPiece) * poissonAtMost(3 - before, looked * perPiece);
    }
    expect(averageSampleNumber(plan, { kind: 'poisson' }, perPiece, { curtailed: true }) / pieces).toBeCloseTo(1, 12);
  }
});

describe('at the ends', () => {
  const plans = { single, double, triple, sequential: smallSequential(10) };
  it.each(Object.entries(plans))('%s: all is good and all is bad, in any lot to a thousand million, and nothing is not a number', (_, plan) => {
    for (const model of [{ kind: 'binomial' }, { kind: 'poisson' }, { kind: 'hypergeometric', lotSize: 10 }, { kind: 'hypergeometric', lotSize: 1_000_000_000 }] as const) {
      for (const p of [0, Number.MIN_VALUE, 1e-300, 1e-12, 1e-9, 0.5, 1 - 2 ** -53, 1]) {
        const reckoned = outcomes(plan, model, p);
        const lot = model.kind === 'hypergeometric' ? model.lotSize : 1_000_000_000;
        const figures = [
          reckoned.accepted, reckoned.acceptedInGap, reckoned.rejected, reckoned.averageSampleNumber, averageSampleNumber(plan, model, p, { curtailed: true }),
          averageOutgoingQuality(plan, lot, model, p), averageTotalInspection(plan, lot, model, p), skipLotAcceptance({ clearance: 4, oneIn: 3 }, plan, model, p).acceptance,
        ];
        for (const figure of figures) expect(figure >= 0 && figure <= 1e9 * (1 + 1e-9), `${model.kind} ${p}: ${figures.join(' ')}`).toBe(true);
        expect(reckoned.accepted + reckoned.acceptedInGap + reckoned.rejected).toBeCloseTo(1, 12);
      }
      expect(acceptance(plan, model, 0)).toBeCloseTo(1, 14);
      if (model.kind !== 'poisson') expect(rejection(plan, model, 1)).toBeCloseTo(1, 12);
    }
  });

  it('a large plan in a lot of a thousand million has no loop over the lot', () => {
    const large = { stages: [{ sampleSize: 5000, ac: 20, re: 60 }, { sampleSize: 5000, ac: 90, re: 91 }] };
    const start = performance.now();
    const accepted = acceptance(large, { kind: 'hypergeometric', lotSize: 1_000_000_000 }, 0.008);
    expect(performance.now() - start).toBeLessThan(500);
    expect(accepted).toBeCloseTo(acceptance(large, { kind: 'binomial' }, 0.008), 5);
  });
});

describe('the inverse', () => {
  it.each([0.999_999, 0.95, 0.5, 0.1, 1e-9])('comes back to the acceptance %d', (wanted) => {
    for (const plan of [single, double, triple, { stages: [{ sampleSize: 125, ac: 3, re: 4 }] }, smallSequential(10)]) {
      for (const model of [{ kind: 'binomial' }, { kind: 'poisson' }] as const) {
        const back = outcomes(plan, model, qualityAt(plan, model, wanted));
        if (wanted < 0.6) expect((back.accepted + back.acceptedInGap) / wanted).toBeCloseTo(1, 9);
        else expect(back.rejected / (1 - wanted)).toBeCloseTo(1, 8);
      }
    }
  });

  it('for one lot is the most nonconforming pieces that are still accepted so often', () => {
    const plan = { stages: [{ sampleSize: 50, ac: 1, re: 2 }] };
    const most = qualityAt(plan, { kind: 'hypergeometric', lotSize: 1000 }, 0.1) * 1000;
    expect(most).toBe(Math.round(most));
    expect(acceptanceAt(plan, 1000, most)).toBeGreaterThanOrEqual(0.1);
    expect(acceptanceAt(plan, 1000, most + 1)).toBeLessThan(0.1);
  });

  it('is 1 where a plan accepts everything', () => {
    const everything = { stages: [{ sampleSize: 2, ac: 3, re: 4 }] };
    expect(qualityAt(everything, { kind: 'binomial' }, 0.1)).toBe(1);
    expect(qualityAt(everything, { kind: 'hypergeometric', lotSize: 10 }, 0.1)).toBe(1);
  });
});

describe('the outgoing limit', () => {
  it.each([
    { name: 'single', plan: { stages: [{ sampleSize: 52, ac: 3, re: 4 }] } },
    { name: 'double', plan: { stages: [{ sampleSize: 50, ac: 1, re: 4 }, { sampleSize: 50, ac: 4, re: 5 }] } },
    { name: 'two hills', plan: { stages: [{ sampleSize: 2, ac: 0, re: 2 }, { sampleSize: 400, ac: 1, re: 2 }] } },
    { name: 'sequential', plan: smallSequential(10) },
  ])('$name: no quality of a fine grid does worse', ({ plan }) => {
    for (const model of [{ kind: 'binomial' }, { kind: 'hypergeometric', lotSize: 500 }] as const) {
      const { aoql, at } = averageOutgoingLimit(plan, 500, model);
      expect(averageOutgoingQuality(plan, 500, model, at)).toBe(aoql);
      const curve = ocCurve(plan, model, { from: 0, to: 1, points: 501, lotSize: 500 });
      for (const { aoq } of curve) expect(aoq).toBeLessThanOrEqual(aoql * (1 + 1e-12));
    }
  });
});

it('gives the curve at whole numbers of a lot, each once', () => {
  const curve = ocCurve(single, { kind: 'hypergeometric', lotSize: 20 }, { from: 0, to: 0.5, points: 101 });
  expect(curve.map(({ p }) => Math.round(p * 20))).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
  expect(ocCurve(single, { kind: 'binomial' }, { from: 0, to: 0.5, points: 3 }).map(({ p, ati }) => [p, ati])).toEqual([[0, null], [0.25, null], [0.5, null]]);
});

it('gives exact confidence intervals of a share (Clopper & Pearson; 0 of 10 by hand: 1 − 0.025^(1/10))', () => {
  expect(clopperPearson(0, 10, 0.95)).toEqual({ low: 0, high: expect.closeTo(1 - 0.025 ** 0.1, 12) });
  expect(clopperPearson(10, 10, 0.95)).toEqual({ low: expect.closeTo(0.025 ** 0.1, 12), high: 1 });
});

it('gives the interval of a mean by batches (by hand: means 1 and 3, so 2 ± t(0.975; 1)·1)', () => {
  const values = [...Array.from({ length: 10 }, () => 1), ...Array.from({ length: 10 }, () => 3)];
  expect(batchInterval(values, 0.95, 2)).toEqual({ mean: 2, low: expect.closeTo(2 - 12.706204736, 6), high: expect.closeTo(2 + 12.706204736, 6) });
});

it.each([
  { why: 'no samples', ask: () => acceptance({ stages: [] }, { kind: 'binomial' }, 0.1), names: 'stages' },
  { why: 'a last sample that cannot accept', ask: () => acceptance({ stages: [{ sampleSize: 1, ac: null, re: 1 }] }, { kind: 'binomial' }, 0.1), names: 'stages' },
  { why: 'Ac not below Re', ask: () => acceptance({ stages: [{ sampleSize: 1, ac: 1, re: 1 }] }, { kind: 'binomial' }, 0.1), names: 're' },
  { why: 'Ac that falls', ask: () => acceptance({ stages: [{ sampleSize: 1, ac: 1, re: 3 }, { sampleSize: 1, ac: 0, re: 3 }] }, { kind: 'binomial' }, 0.1), names: 'ac' },
  { why: 'p above 1', ask: () => acceptance(single, { kind: 'binomial' }, 1.1), names: 'p must' },
  { why: 'p that is no number', ask: () => acceptance(single, { kind: 'poisson' }, Number.NaN), names: 'p must' },
  { why: 'samples larger than the lot', ask: () => acceptanceAt(double, 4, 1), names: 'lotSize' },
  { why: 'an acceptance of 0', ask: () => qualityAt(single, { kind: 'binomial' }, 0), names: 'acceptance' },
  { why: 'a curve of one point', ask: () => ocCurve(single, { kind: 'binomial' }, { from: 0, to: 1, points: 1 }), names: 'points' },
  { why: 'outgoing quality of a lot smaller than the sample', ask: () => averageOutgoingQuality(single, 2, { kind: 'binomial' }, 0.1), names: 'lotSize' },
])('refuses $why by name', ({ ask, names }) => {
  expect(ask).toThrow(names);
});

function smallSequential(truncateAt: number): SequentialPlan {
  return { kind: 'sequential', lotSize: 10, p1Percent: 10, producerRisk: 0.1, p2Percent: 40, consumerRisk: 0.1, h1: 0.9, h2: 1.2, slope: 0.25, truncateAt, truncateAc: 2, sampleSize: truncateAt };
}

/** Every row of pieces with so many nonconforming, as the places of the nonconforming ones. */
function* rowsOf(lotSize: number, nonconforming: number): Generator<readonly number[]> {
  for (let mask = 0; mask < 2 ** lotSize; mask += 1) {
    const places = Array.from({ length: lotSize }, (_, at) => at + 1).filter((at) => (mask >> (at - 1)) & 1);
    if (places.length === nonconforming) yield places;
  }
}

function countStaged(stages: readonly Stage[], lotSize: number, nonconforming: number) {
  let rows = 0;
  const sum = { accepted: 0, acceptedInGap: 0, rejected: 0, pieces: 0, curtailedPieces: 0, outgoing: 0, inspected: 0 };
  for (const places of rowsOf(lotSize, nonconforming)) {
    rows += 1;
    const foundBy = (looked: number): number => places.filter((at) => at <= looked).length;
    const found: number[] = [];
    let looked = 0;
    for (const [at, { sampleSize, re }] of stages.entries()) {
      const begun = looked;
      looked += sampleSize;
      found.push(foundBy(looked));
      const verdict = judgeStages({ stages }, found);
      if (verdict.outcome === 'open') continue;
      sum[verdict.outcome] += 1;
      sum.pieces += looked;
      const stopped = verdict.outcome === 'rejected' && at > 0 ? Array.from({ length: sampleSize }, (_, more) => begun + more + 1).find((piece) => foundBy(piece) >= re) : undefined;
      sum.curtailedPieces += stopped ?? looked;
      if (verdict.outcome !== 'rejected') sum.outgoing += (nonconforming - foundBy(looked)) / lotSize;
      sum.inspected += verdict.outcome === 'rejected' ? lotSize : looked;
      break;
    }
  }
  return Object.fromEntries(Object.entries(sum).map(([name, value]) => [name, value / rows])) as typeof sum;
}

function countSequential(plan: SequentialPlan, lotSize: number, nonconforming: number) {
  let [rows, accepted, pieces, outgoing] = [0, 0, 0, 0];
  for (const places of rowsOf(lotSize, nonconforming)) {
    rows += 1;
    const { outcome, at } = judgeSequential(plan, places.filter((place) => place <= plan.truncateAt), plan.truncateAt);
    pieces += at;
    if (outcome !== 'accepted') continue;
    accepted += 1;
    outgoing += (nonconforming - places.filter((place) => place <= at).length) / lotSize;
  }
  return { accepted: accepted / rows, pieces: pieces / rows, outgoing: outgoing / rows };
}

/** Piece by piece, each bringing 0, 1, … nonconformities with the chances given. */
function followPieces(plan: SequentialPlan, chances: readonly number[]) {
  let open = new Map([[0, 1]]);
  let [accepted, rejected, pieces] = [0, 0, 0];
  for (let looked = 1; looked <= plan.truncateAt; looked += 1) {
    const after = new Map<number, number>();
    const ac = acceptAt(plan, looked) ?? -1;
    const re = rejectAt(plan, looked) ?? Math.min(Math.ceil(plan.h2 + plan.slope * looked), plan.truncateAc + 1);
    for (const [found, mass] of open) {
      pieces += mass;
      for (const [more, chance] of chances.entries()) {
        if (chance === 0) continue;
        if (found + more >= re) rejected += mass * chance;
        else if (found + more <= ac) accepted += mass * chance;
        else after.set(found + more, (after.get(found + more) ?? 0) + mass * chance);
      }
    }
    open = after;
  }
  return { accepted, rejected, pieces };
}
