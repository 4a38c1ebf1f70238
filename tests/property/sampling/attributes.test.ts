import fc from 'fast-check';
import { expect, it } from 'vitest';
import { AQLS, INSPECTION_LEVELS, judgeStages, masterRows, singlePlan, stagesOf, tighterWouldAccept } from '../../../shared/sampling/attributes/index.ts';
import type { AttributesPlan } from '../../../shared/sampling/attributes/index.ts';

const judged = (plan: AttributesPlan, found: number) => judgeStages({ stages: stagesOf(plan) }, [found]).outcome;

const aRequest = fc.record({
  lotSize: fc.oneof(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 1, max: 1_000_000_000 })),
  level: fc.constantFrom(...INSPECTION_LEVELS),
  aqlPercent: fc.constantFrom(...AQLS),
  severity: fc.constantFrom('normal' as const, 'tightened' as const, 'reduced' as const),
});

it('tightened never accepts what normal rejects, nor normal what reduced rejects, where both look at the same letter', () => {
  let compared = 0;
  fc.assert(fc.property(aRequest, fc.nat({ max: 60 }), (request, found) => {
    const normal = singlePlan({ ...request, severity: 'normal' });
    const tightened = singlePlan({ ...request, severity: 'tightened' });
    if (normal.letter !== tightened.letter) return;
    compared += 1;
    if (judged(normal, found) === 'rejected') expect(judged(tightened, found)).toBe('rejected');
  }), { numRuns: 2000 });
  expect(compared).toBeGreaterThan(200);
});

it('for every cell with a plan in both tables, Ac on tightened is no more than Ac on normal', () => {
  const tightened = masterRows('tightened');
  for (const { letter, cells } of masterRows('normal')) {
    cells.forEach((normal, column) => {
      const tighter = tightened.find((row) => row.letter === letter)?.cells[column];
      if (typeof normal === 'object' && typeof tighter === 'object') expect(tighter.ac, `${letter} ${AQLS[column]}`).toBeLessThanOrEqual(normal.ac);
    });
  }
});

it('a plan never looks at more than the lot, and accepts at Ac and rejects at Re', () => {
  fc.assert(fc.property(aRequest, (request) => {
    const plan = singlePlan(request);
    expect(plan.sampleSize).toBeLessThanOrEqual(request.lotSize);
    expect(plan.everyPiece).toBe(plan.sampleSize === request.lotSize);
    expect(plan.re).toBeGreaterThan(plan.ac);
    expect([judged(plan, plan.ac), judged(plan, plan.re)]).toEqual(['accepted', 'rejected']);
  }));
});

it('what the tighter AQL accepts, the plan accepts', () => {
  fc.assert(fc.property(aRequest, fc.nat({ max: 60 }), (request, found) => {
    const plan = singlePlan(request);
    if (tighterWouldAccept(plan, found)) expect(judged(plan, found)).toBe('accepted');
  }));
});
