import fc from 'fast-check';
import { expect, it } from 'vitest';
import { AQLS, INSPECTION_LEVELS, attributesPlan, judgeStages, limitingQualityPlan, readTableCsv, stagesOf, tableLines, tableNotes, writeTableCsv, zeroAcceptancePlan } from '../../../shared/sampling/attributes/index.ts';
import { hypergeometricAtMost } from '../../../shared/sampling/chance/index.ts';

const SEVERITIES = ['normal', 'tightened', 'reduced'] as const;
const SAMPLES = ['single', 'double', 'multiple'] as const;
const aRequest = fc.record({
  lotSize: fc.oneof(fc.integer({ min: 1, max: 2000 }), fc.integer({ min: 1, max: 1_000_000_000 })),
  level: fc.constantFrom(...INSPECTION_LEVELS),
  aqlPercent: fc.constantFrom(...AQLS),
  severity: fc.constantFrom(...SEVERITIES),
  samples: fc.constantFrom(...SAMPLES),
});
const counts = fc.array(fc.nat({ max: 15 }), { minLength: 7, maxLength: 7 }).map((each) => each.map((_, at) => each.slice(0, at + 1).reduce((sum, more) => sum + more, 0)));

it('every arrow of every table ends at a plan, or a sign to one, of its column', () => {
  for (const samples of SAMPLES) {
    for (const severity of SEVERITIES) {
      const lines = tableLines(samples, severity);
      lines?.slice(0, 16).forEach((line, row) => line.cells.forEach((cell, column) => {
        let at = row;
        while (lines[at]?.cells[column] === cell && (cell === 'up' || cell === 'down')) at += cell === 'down' ? 1 : -1;
        expect(['up', 'down', 'unreachable', undefined], `${samples} ${severity} ${line.letter} ${AQLS[column]}`).not.toContain(lines[at]?.cells[column]);
      }));
    }
  }
});

it('a plan never looks at more than the lot, its last stage decides and its numbers are cumulative', () => {
  fc.assert(fc.property(aRequest, (request) => {
    const plan = attributesPlan(request);
    const stages = stagesOf(plan);
    expect(stages.reduce((sum, { sampleSize }) => sum + sampleSize, 0)).toBe(plan.sampleSize);
    expect(plan.sampleSize).toBeLessThanOrEqual(request.lotSize);
    expect(plan.everyPiece).toBe(plan.sampleSize === request.lotSize);
    for (const [at, { sampleSize, ac, re }] of stages.entries()) {
      expect(sampleSize).toBeGreaterThan(0);
      expect(re).toBeGreaterThan(ac ?? 0);
      expect(re).toBeGreaterThanOrEqual(stages[at - 1]?.re ?? 0);
      expect(ac ?? -1).toBeGreaterThanOrEqual(stages[at - 1]?.ac ?? -1);
    }
    expect(stages.at(-1)).toMatchObject({ ac: plan.ac, re: plan.re });
    if (plan.samples === 'multiple') expect(tableNotes(plan)).toContain('multipleFromMemory');
    if (request.samples !== (plan.samples ?? 'single') && request.lotSize > 1) expect(plan.instead).toBeDefined();
  }), { seed: 20_105, numRuns: 3000 });
});

it('a verdict falls at the last sample at the latest, and an early one agrees with the numbers of its sample', () => {
  const verdicts = new Set<string>();
  fc.assert(fc.property(aRequest, counts, (request, found) => {
    const stages = stagesOf(attributesPlan(request));
    for (let looked = 1; looked <= stages.length; looked += 1) {
      const verdict = judgeStages({ stages }, found.slice(0, looked));
      const stage = stages[verdict.stage - 1];
      const count = found[verdict.stage - 1] ?? 0;
      if (looked === stages.length) expect(verdict.outcome).not.toBe('open');
      if (verdict.outcome === 'open') expect(verdict.stage).toBe(looked + 1);
      if (verdict.outcome === 'accepted') expect(count).toBeLessThanOrEqual(stage?.ac ?? -1);
      if (verdict.outcome === 'rejected') expect(count).toBeGreaterThanOrEqual(stage?.re ?? Infinity);
      if (verdict.outcome === 'acceptedInGap') expect([request.severity, count > (stage?.ac ?? Infinity), count < (stage?.re ?? 0)]).toEqual(['reduced', true, true]);
      if (verdict.outcome !== 'open') expect(judgeStages({ stages }, found.slice(0, stages.length))).toEqual(verdict);
      verdicts.add(`${verdict.outcome} ${verdict.stage > 1}`);
    }
  }), { seed: 20_106, numRuns: 3000 });
  expect([...verdicts].sort()).toEqual(expect.arrayContaining(['accepted false', 'accepted true', 'acceptedInGap false', 'open true', 'rejected false', 'rejected true']));
});

it('in every table, a plan on tightened accepts no more, stage by stage, than the plan of that letter and AQL on normal', () => {
  let compared = 0;
  for (const samples of SAMPLES) {
    for (const { letter, cells } of tableLines(samples, 'normal') ?? []) {
      cells.forEach((normal, column) => {
        const tightened = tableLines(samples, 'tightened')?.find((line) => line.letter === letter)?.cells[column];
        if (typeof normal !== 'object' || typeof tightened !== 'object') return;
        compared += 1;
        tightened.forEach(({ ac, re }, stage) => {
          const where = `${samples} ${letter} ${AQLS[column]} sample ${stage + 1}`;
          expect(ac ?? -1, where).toBeLessThanOrEqual(normal[stage]?.ac ?? -1);
          expect(re, where).toBeLessThanOrEqual(normal[stage]?.re ?? 0);
        });
      });
    }
  }
  expect(compared).toBeGreaterThan(250);
});

it('reading a table never throws, whatever the text, and never gives one it has not checked', () => {
  const about = { id: 'T', name: 'any', severity: 'normal' as const };
  const good = SAMPLES.map((samples) => writeTableCsv({ samples, rows: tableLines(samples, 'normal') ?? [] }));
  const marred = fc.tuple(fc.constantFrom(...good), fc.nat(), fc.nat({ max: 40 }), fc.oneof(fc.string(), fc.constantFrom('up', 'down', '-', 'single', '1/2', ';', '"', ',', '\n', '#/2')))
    .map(([text, at, cut, put]) => `${text.slice(0, at % text.length)}${put}${text.slice((at % text.length) + cut)}`);
  fc.assert(fc.property(fc.oneof(fc.string(), fc.string({ unit: 'binary', maxLength: 300 }), marred), (text) => {
    const read = readTableCsv(text, about);
    if ('problems' in read) {
      expect(read.problems.length).toBeGreaterThan(0);
      return;
    }
    for (const level of INSPECTION_LEVELS) for (const aqlPercent of AQLS) attributesPlan({ lotSize: 600_000, level, aqlPercent, severity: 'normal', samples: read.table.samples, tables: [read.table] });
    expect(readTableCsv(writeTableCsv(read.table), about)).toEqual(read);
  }), { seed: 20_107, numRuns: 1000 });
});

it('a plan for one lot keeps the consumer\'s risk and one piece fewer would not', () => {
  const lot = fc.record({
    lotSize: fc.oneof(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 1_000_000_000 })),
    lqPercent: fc.oneof(fc.constantFrom(0.5, 0.8, 1.25, 2, 3.15, 5, 8, 12.5, 20, 31.5), fc.double({ min: 1e-3, max: 100, noNaN: true })),
    consumerRisk: fc.constantFrom(0.001, 0.01, 0.05, 0.1, 0.3),
  });
  fc.assert(fc.property(lot, (request) => {
    for (const plan of [limitingQualityPlan(request), zeroAcceptancePlan(request)]) {
      const { sampleSize, ac, riskAtLq, lotSize, everyPiece } = plan;
      expect([everyPiece, plan.re, sampleSize > ac]).toEqual([sampleSize === lotSize, ac + 1, true]);
      expect(riskAtLq).toBeLessThanOrEqual(request.consumerRisk * (1 + 1e-12));
      const nonconforming = Math.max(1, Math.ceil(Number(((lotSize * request.lqPercent) / 100).toPrecision(14))));
      expect(hypergeometricAtMost(ac, sampleSize, lotSize, nonconforming)).toBe(riskAtLq);
      if (sampleSize - 1 > ac) expect(hypergeometricAtMost(ac, sampleSize - 1, lotSize, nonconforming)).toBeGreaterThan(request.consumerRisk);
    }
  }), { seed: 20_108, numRuns: 500 });
});
