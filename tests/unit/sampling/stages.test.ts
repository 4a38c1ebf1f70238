import { describe, expect, it } from 'vitest';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { AQLS, attributesPlan, judgeStages, stagesOf, tableNotes } from '../../../shared/sampling/attributes/index.ts';
import type { AttributesPlanRequest } from '../../../shared/sampling/attributes/index.ts';
import { acceptanceAt } from '../../../shared/sampling/risk/index.ts';

const planFor = (given: Partial<AttributesPlanRequest>) => attributesPlan({ lotSize: 1000, level: 'II', aqlPercent: 1.5, severity: 'normal', ...given });

describe('a double plan (Table III-A, J at AQL 1.5: 50, 1/4; 50, 4/5)', () => {
  const stages = stagesOf(planFor({ samples: 'double' }));
  it.each([
    { found: [], says: { outcome: 'open', stage: 1 } },
    { found: [1], says: { outcome: 'accepted', stage: 1 } },
    { found: [2], says: { outcome: 'open', stage: 2 } },
    { found: [3], says: { outcome: 'open', stage: 2 } },
    { found: [4], says: { outcome: 'rejected', stage: 1 } },
    { found: [2, 4], says: { outcome: 'accepted', stage: 2 } },
    { found: [3, 5], says: { outcome: 'rejected', stage: 2 } },
    { found: [1, 9], says: { outcome: 'accepted', stage: 1 } },
  ])('after $found found in all says $says (MIL-STD-105E 4.10.1.2, seen)', ({ found, says }) => {
    expect(stages).toEqual([{ sampleSize: 50, ac: 1, re: 4 }, { sampleSize: 50, ac: 4, re: 5 }]);
    expect(judgeStages({ stages }, found)).toEqual(says);
  });

  it.each([[[2, 1]], [[-1]], [[0.5]], [[2, 3, 4]]])('refuses the counts %j', (found) => {
    expect(() => judgeStages({ stages }, found)).toThrow(OutsideDomain);
  });
});

it('a multiple plan cannot accept where the table has no acceptance number (Table IV-A, J at AQL 0.65)', () => {
  const { stages = [] } = planFor({ aqlPercent: 0.65, samples: 'multiple' });
  expect(stages.map(({ ac }) => ac)).toEqual([null, null, 0, 0, 1, 1, 2]);
  expect(judgeStages({ stages }, [0, 0])).toEqual({ outcome: 'open', stage: 3 });
  expect(judgeStages({ stages }, [0, 0, 0])).toEqual({ outcome: 'accepted', stage: 3 });
});

it('a reduced double plan ends in the gap after its last sample (Table III-C, K at AQL 1.0: 32, 0/4; 32, 1/5)', () => {
  const plan = planFor({ lotSize: 3000, aqlPercent: 1, severity: 'reduced', samples: 'double' });
  expect(plan).toMatchObject({ letter: 'K', ac: 1, re: 5, sampleSize: 64, stages: [{ ac: 0, re: 4 }, { ac: 1, re: 5 }] });
  expect([1, 2, 4, 5].map((found) => judgeStages({ stages: stagesOf(plan) }, [1, found]).outcome)).toEqual(['accepted', 'acceptedInGap', 'acceptedInGap', 'rejected']);
});

it('a single plan is a plan of one sample', () => {
  expect(stagesOf(planFor({}))).toEqual([{ sampleSize: 80, ac: 3, re: 4 }]);
  expect(planFor({})).not.toHaveProperty('stages');
});

describe('samples that reach the lot (decided here; the standard asks for every piece)', () => {
  it('are cut to what is left, and the last piece is judged by the last Ac and Re (Table III-B, H at AQL 1.5: 32, 0/2; 32, 1/2)', () => {
    const plan = planFor({ lotSize: 60, level: 'III', samples: 'double', severity: 'tightened' });
    expect(plan).toMatchObject({ startLetter: 'F', letter: 'H', arrow: 'down', tableSampleSize: 64, sampleSize: 60, everyPiece: true, ac: 1, re: 2 });
    expect(plan.stages).toEqual([{ sampleSize: 32, ac: 0, re: 2 }, { sampleSize: 28, ac: 1, re: 2 }]);
  });

  it('leave one look at every piece where the first sample is the lot (Table III-B, D at AQL 10: 5, 0/2; 5, 1/2)', () => {
    const plan = planFor({ lotSize: 4, level: 'III', aqlPercent: 10, samples: 'double', severity: 'tightened' });
    expect(plan).toMatchObject({ letter: 'D', everyPiece: true, sampleSize: 4, ac: 1, re: 2, stages: [{ sampleSize: 4, ac: 1, re: 2 }] });
  });

  it('need no second sample where the first is exactly the lot', () => {
    const plan = planFor({ lotSize: 5, level: 'III', aqlPercent: 10, samples: 'double', severity: 'tightened' });
    expect(plan).toMatchObject({ tableSampleSize: 10, sampleSize: 5, everyPiece: true });
    expect(plan.stages).toEqual([{ sampleSize: 5, ac: 1, re: 2 }]);
  });

  it('end a multiple plan at the sample that takes the last piece (Table IV-B, D at AQL 10: 2 each, #/2, #/2, 0/2 …): by the Re of that sample', () => {
    const plan = planFor({ lotSize: 5, level: 'III', aqlPercent: 10, samples: 'multiple', severity: 'tightened' });
    expect(plan).toMatchObject({ letter: 'D', tableSampleSize: 14, sampleSize: 5, ac: 1, re: 2 });
    expect(plan.stages).toEqual([{ sampleSize: 2, ac: null, re: 2 }, { sampleSize: 2, ac: null, re: 2 }, { sampleSize: 1, ac: 1, re: 2 }]);
  });

  it('look at the one piece of a lot of one', () => {
    expect(planFor({ lotSize: 1, samples: 'multiple' })).toMatchObject({ sampleSize: 1, ac: 0, re: 1, everyPiece: true, table: 'II-A' });
  });
});

describe('samples cut by a small lot', () => {
  it.each(['double', 'multiple'] as const)('never accept more on tightened than on normal: %s, every lot to 24 pieces, every AQL to 10', (samples) => {
    for (let lotSize = 2; lotSize <= 24; lotSize += 1) {
      for (const aqlPercent of AQLS.filter((aql) => aql <= 10)) {
        const [normal, tightened] = (['normal', 'tightened'] as const).map((severity) => ({ stages: stagesOf(planFor({ lotSize, level: 'II', aqlPercent, samples, severity })) }));
        if (normal === undefined || tightened === undefined) throw new Error('no plan');
        for (let nonconforming = 0; nonconforming <= lotSize; nonconforming += 1) {
          expect(acceptanceAt(tightened, lotSize, nonconforming), `${lotSize} pieces, AQL ${aqlPercent}, ${nonconforming} nonconforming`).toBeLessThanOrEqual(acceptanceAt(normal, lotSize, nonconforming) + 1e-12);
        }
      }
    }
  });
});

describe('what belongs beside a plan', () => {
  it.each<{ given: Partial<AttributesPlanRequest>; notes: readonly string[] }>([
    { given: {}, notes: [] },
    { given: { severity: 'reduced' }, notes: ['reducedFromTableIIC'] },
    { given: { severity: 'reduced', lotSize: 10, level: 'III', aqlPercent: 40 }, notes: ['reducedFromTableIIC'] },
    { given: { severity: 'reduced', lotSize: 10, aqlPercent: 40 }, notes: ['reducedFromTableIIC', 'cellUnconfirmed'] },
    { given: { severity: 'tightened', lotSize: 40, aqlPercent: 650 }, notes: ['cellUnconfirmed'] },
    { given: { samples: 'double' }, notes: ['doubleFromMemory'] },
    { given: { samples: 'double', aqlPercent: 0.15 }, notes: ['doubleFromMemory', 'useSingle'] },
    { given: { samples: 'multiple' }, notes: ['multipleFromMemory'] },
    { given: { samples: 'multiple', lotSize: 10, level: 'III', aqlPercent: 40 }, notes: ['doubleFromMemory', 'multipleFromMemory', 'cellUnconfirmed', 'useDouble'] },
    { given: { samples: 'multiple', severity: 'reduced' }, notes: ['doubleFromMemory', 'noMultipleReduced'] },
    { given: { samples: 'multiple', lotSize: 1 }, notes: [] },
  ])('$given: $notes', ({ given, notes }) => {
    expect(tableNotes(planFor(given))).toEqual(notes);
  });
});
