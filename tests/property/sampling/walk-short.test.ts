import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Source } from '../../../shared/sampling/risk/model.ts';
import { piecesOf } from '../../../shared/sampling/risk/blocks.ts';
import { shortWalker } from '../../../shared/sampling/risk/walk-short.ts';
import { walkAny, walker } from '../../../shared/sampling/risk/walk.ts';

const seed = 20_260_311;

const plans = fc.array(fc.record({ sampleSize: fc.integer({ min: 1, max: 300 }), accepts: fc.integer({ min: 0, max: 5 }), more: fc.integer({ min: 1, max: 4 }), opens: fc.boolean() }), { minLength: 1, maxLength: 6 })
  .map((samples) => {
    let [ac, re] = [-1, 1];
    const stages = samples.map(({ sampleSize, accepts, more, opens }, at) => {
      const mayAccept = opens || at === samples.length - 1;
      if (mayAccept) ac = Math.max(0, ac + accepts);
      re = Math.max(re, ac + 1 + more);
      return { sampleSize, ac: mayAccept ? ac : null, re };
    });
    return { stages, stops: 'never' as const };
  });

/** Relative 1e-12, or next to nothing beside both. */
function expectAlike(short: number, long: number): void {
  if (long > 1e-290) expect(Math.abs(short / long - 1), `${short} against ${long}`).toBeLessThanOrEqual(1e-12);
  else expect(short).toBeLessThanOrEqual(2e-290);
}

function compare(blocks: Parameters<typeof walkAny>[0], source: Source): boolean {
  const short = shortWalker(blocks)?.(source) ?? null;
  if (short === null) return false;
  const long = walkAny(blocks, source);
  expect(short.byStage).toHaveLength(long.byStage.length);
  for (const [at, { pieces, accepted, rejected }] of long.byStage.entries()) {
    expect(short.byStage[at]?.pieces).toBe(pieces);
    expectAlike(short.byStage[at]?.accepted ?? NaN, accepted);
    expectAlike(short.byStage[at]?.rejected ?? NaN, rejected);
  }
  expectAlike(short.acceptedInGap, long.acceptedInGap);
  expectAlike(short.averageSampleNumber, long.averageSampleNumber);
  return true;
}

describe('plans of small numbers, followed from the chance of nothing found', () => {
  it('come to what sums from the likeliest count give, for a process and for counts', () => {
    let followed = 0;
    fc.assert(fc.property(plans, fc.integer({ min: -1200, max: -20 }), fc.constantFrom('binomial' as const, 'poisson' as const), (blocks, log, kind) => {
      if (compare(blocks, { kind, p: 10 ** (log / 100) })) followed += 1;
    }), { seed, numRuns: 1500 });
    expect(followed).toBeGreaterThan(800);
  });

  it('come to the same for one lot, and to what a nonconforming piece left in it says of outgoing quality', () => {
    let followed = 0;
    fc.assert(fc.property(plans, fc.integer({ min: 0, max: 9 }), fc.integer({ min: 0, max: 100 }), (blocks, log, share) => {
      const lotSize = Math.min(1e9, (piecesOf(blocks.stages) + 1) * 10 ** log);
      const nonconforming = Math.round(lotSize ** (share / 100));
      const source = { kind: 'hypergeometric' as const, lotSize, nonconforming };
      if (!compare(blocks, source)) return;
      followed += 1;
      const left = shortWalker(blocks)?.(source)?.left ?? NaN;
      const onePieceLess = walkAny(blocks, { kind: 'hypergeometric', lotSize: lotSize - 1, nonconforming: nonconforming - 1 });
      const last = onePieceLess.byStage.at(-1)?.pieces ?? NaN;
      const passed = onePieceLess.byStage.reduce((sum, { pieces, accepted }) => sum + accepted * (1 - pieces / lotSize), onePieceLess.acceptedInGap * (1 - last / lotSize));
      expectAlike(left, nonconforming * passed);
    }), { seed, numRuns: 1500 });
    expect(followed).toBeGreaterThan(800);
  });

  it('do not depend on the qualities asked for before', () => {
    const blocks = { stages: [{ sampleSize: 125, ac: 2, re: 5 }, { sampleSize: 125, ac: 6, re: 7 }], stops: 'never' as const };
    const inTurn = walker(blocks);
    for (let turn = 0; turn < 2000; turn += 1) {
      const source = { kind: 'hypergeometric' as const, lotSize: 10_000, nonconforming: (turn * (turn % 7)) % 1100 };
      const [before, alone] = [inTurn(source), walkAny(blocks, source)];
      for (const [at, { accepted, rejected }] of alone.byStage.entries()) {
        expectAlike(before.byStage[at]?.accepted ?? NaN, accepted);
        expectAlike(before.byStage[at]?.rejected ?? NaN, rejected);
      }
    }
  });
});
