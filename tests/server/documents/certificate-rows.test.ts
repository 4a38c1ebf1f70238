import { beforeEach, describe, expect, it } from 'vitest';
import { gateRows, tableNotesOf } from '../../../server/http/certificate-rows.ts';
import { tableLines, writeTableCsv } from '../../../shared/sampling/attributes/index.ts';
import type { CountedRule } from '../../../shared/traveller/index.ts';
import { certificateContentSchema } from '../../../shared/wire/certificate-data.ts';
import { littlePlant, releasedBatch } from '../../property/traveller/little-plant.ts';
import type { LittlePlant } from '../../property/traveller/little-plant.ts';
import { at, byAql, counting, done, found, opened } from '../../property/traveller/counting.ts';
import { gateRecord } from '../../property/traveller/on-the-way.ts';

let plant: LittlePlant;
beforeEach(() => {
  plant = littlePlant();
  releasedBatch(plant);
});
const POINTS = { p1Percent: 1, producerRisk: 0.05, p2Percent: 10, consumerRisk: 0.1 };
/** The rows of the lot's own gate, once it is worked by this rule with so many found in the first pieces. */
function rowsOf(rule: CountedRule, lot: string, many = 0) {
  counting(plant, rule);
  opened(plant, lot);
  found(plant, lot, 'major', ...Array.from({ length: many }, (_, index) => index + 1));
  while (gateRecord(plant, `lot:${lot}`, 'own').status === 'open') done(plant, lot);
  const rows = gateRows(plant.lot(lot), {}).filter(({ gate }) => gate === 'Own gate');
  for (const row of rows) expect(certificateContentSchema.shape.gates.element.safeParse(row)).toMatchObject({ success: true });
  return rows;
}

describe('a row of the certificate', () => {
  it.each([
    ['a single plan', byAql({ major: 1 }), 0, 'ISO 2859-1 single, II, J, normal, AQL 1', 80, { found: 0, acceptance: 2, rejection: 3 }],
    ['a double plan that decided on its first sample', byAql({ major: 1.5 }, { samples: 'double' }), 1, 'MIL-STD-105E double, Table III-A, II, J, normal, AQL 1.5; 2 × 50: 1/4 4/5; on sample 1', 50, { found: 1, acceptance: 1, rejection: 4 }],
    ['a double plan that took its second', byAql({ major: 1.5 }, { samples: 'double' }), 2, 'MIL-STD-105E double, Table III-A, II, J, normal, AQL 1.5; 2 × 50: 1/4 4/5; on sample 2', 100, { found: 2, acceptance: 4, rejection: 5 }],
    ['a plan by limiting quality', { rule: 'limitingQuality', lqPercent: { major: 5 }, consumerRisk: 0.1 }, 0, /^limiting quality: 5 % accepted at most 10 % of the time; exactly [\d.]+ %$/, null, null],
    ['a plan of zero acceptance', { rule: 'zeroAcceptance', lqPercent: { major: 1 }, consumerRisk: 0.1 }, 0, /^zero acceptance: 1 % accepted at most 10 % of the time; exactly [\d.]+ %$/, 205, { found: 0, acceptance: 0, rejection: 1 }],
    ['a double plan through two points', { rule: 'twoPoint', samples: 'double', points: { major: POINTS } }, 0, /^through two points: 1 % accepted at least 95 %.*, 10 % at most 10 % of the time; exactly [\d.]+ %; .*on sample 1$/, null, null],
    ['a sequential plan that rejected at its second piece', { rule: 'sequential', points: { major: POINTS } }, 0, /^sequential, through two points: 1 % .*; accept to 0\.03\d+ n − 0\.9\d+, reject from 0\.03\d+ n \+ 1\.2\d+, at most \d+$/, null, null],
  ] as const)('states what %s really was', (_, rule, many, plan, n, numbers) => {
    const [row] = rowsOf(rule, 'A1', many);
    if (typeof plan === 'string') expect(row?.plan).toBe(plan);
    else expect(row?.plan).toMatch(plan);
    if (n !== null) expect(row?.n).toBe(n);
    if (numbers !== null) expect(row?.result).toEqual({ judgedBy: 'found', ...numbers });
    expect(row?.verdict).toBe('accepted');
  });

  it('of a plan of seven samples is not cut short', () => {
    const [row] = rowsOf(byAql({ major: 1.5 }, { samples: 'multiple' }), 'A1');
    expect(row?.plan).toMatch(/^MIL-STD-105E multiple, Table IV-A, II, J, normal, AQL 1\.5; 7 × 20: #\/\d( [#\d]+\/\d+){6}; on sample 2$/);
  });

  it('says where a sequential plan stopped, and what a class that was open then had', () => {
    counting(plant, { rule: 'sequential', points: { major: POINTS, minor: POINTS } });
    opened(plant, 'A1');
    for (const place of [1, 2]) found(plant, 'A1', 'major', place);
    const rows = gateRows(plant.lot('A1'), {}).filter(({ gate }) => gate === 'Own gate');
    expect(rows.map(({ n, verdict, result }) => [n, verdict, result.judgedBy === 'found' ? result.found : null])).toEqual([[2, 'rejected', 2], [2, 'rejected', 0]]);
  });

  it('says that a lot was passed over, and which lots earned it', () => {
    counting(plant, byAql({ major: 1 }, { skipLot: { clearance: 2, oneIn: 100 } }));
    for (const lot of ['A1', 'A2']) {
      opened(plant, lot);
      done(plant, lot);
    }
    opened(plant, 'A3');
    expect(gateRows(plant.lot('A3'), {}).filter(({ gate }) => gate === 'Own gate')).toMatchObject([{ plan: 'skip-lot SkSP-2: after 2 accepted (A1, A2), one in 100 inspected', n: 0, result: { judgedBy: 'skipped' }, verdict: 'accepted' }]);
    expect(plant.refusalOf({ ...at('A3'), type: 'completeSample', looked: 80 })).toBe('gateNotOpen');
  });
});

describe('the notes of the certificate', () => {
  it('say how sure each table is that stands behind a verdict, and name an own copy', () => {
    const rows = rowsOf(byAql({ major: 1.5 }, { samples: 'double' }), 'A1');
    expect([rows.length, tableNotesOf(plant.lot('A1'))]).toEqual([1, ['doubleFromMemory']]);
    plant.must({ type: 'loadTable', table: 'OWN-3A', name: 'Our copy', severity: 'normal', csv: writeTableCsv({ samples: 'double', rows: tableLines('double', 'normal') ?? [] }), reason: 'copied' });
    const [own] = rowsOf(byAql({ major: 1.5 }, { samples: 'double', ownTables: { normal: 'OWN-3A' } }), 'A2');
    expect([own?.plan, tableNotesOf(plant.lot('A2'))]).toEqual(['MIL-STD-105E double, Table III-A, II, J, normal, AQL 1.5; own table OWN-3A; 2 × 50: 1/4 4/5; on sample 1', ['ownTable']]);
  });
});
