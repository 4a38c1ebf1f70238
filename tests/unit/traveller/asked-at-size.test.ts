import { expect, it } from 'vitest';
import { readTableCsv, tableLines, writeTableCsv } from '../../../shared/sampling/attributes/index.ts';
import type { Characteristic } from '../../../shared/traveller/index.ts';
import { askedAtSize } from '../../../shared/traveller/plan/asked-at-size.ts';

type Rule = Extract<Characteristic, { kind: 'counted' }>['sampling'];
const counted = (sampling: Rule): Characteristic => ({ kind: 'counted', id: 'looks', name: 'Looks', method: 'eye', destructive: false, kinds: [{ code: 'CH', name: 'Chip', class: 'major' }], sampling });
const attributes: Extract<Rule, { rule: 'attributes' }> = { rule: 'attributes', switching: 'ISO 2859-1', level: 'II', aqlPercent: { major: 1 } };
const points = { p1Percent: 1, producerRisk: 0.05, p2Percent: 6, consumerRisk: 0.1 };
const short = (characteristic: Characteristic, lotSize: number, tables: Parameters<typeof askedAtSize>[2] = []) =>
  askedAtSize(characteristic, lotSize, tables).map(({ severity, letter, samples, notes }) => `${severity ?? 'any'} ${letter ?? ''} ${samples.map(({ sampleSize, ac, re }) => `${sampleSize}:${ac ?? '#'}/${re ?? '-'}`).join(' ')} ${notes.join(' ')}`.trim());

it.each([
  { source: 'MIL-STD-105E Tables I, II-A, II-B, II-C; 1000 pieces, level II, AQL 1 (reduced from memory)', rule: attributes, lot: 1000, lines: ['normal J 80:2/3', 'tightened J 80:1/2', 'reduced J 32:1/3 gap reducedFromTableIIC'] },
  { source: 'MIL-STD-105E Table III-A, J, AQL 1.5 (from memory)', rule: { ...attributes, aqlPercent: { major: 1.5 }, samples: 'double' as const }, lot: 1000, lines: ['normal J 50:1/4 50:4/5 doubleFromMemory'] },
  { source: 'MIL-STD-105E 4.9.4 and Table II-A: the arrow from F leads to G', rule: { ...attributes, aqlPercent: { major: 0.4 } }, lot: 100, lines: ['normal G 32:0/1'] },
  { source: 'MIL-STD-105E 4.9.4: a sample that reaches the lot is every piece', rule: { ...attributes, aqlPercent: { major: 0.1 } }, lot: 100, lines: ['normal K 100:0/1 everyPiece'] },
])('tells what a lot of $lot is asked for ($source)', ({ rule, lot, lines }) => {
  expect(short(counted(rule), lot).slice(0, lines.length)).toEqual(lines);
});

it('tells a rule without switching once, and one that has no plan so', () => {
  expect(short(counted({ rule: 'zeroAcceptance', lqPercent: { major: 5 }, consumerRisk: 0.1 }), 500)).toHaveLength(1);
  expect(short(counted({ rule: 'sequential', points: { major: points } }), 1000)).toEqual([expect.stringMatching(/^any {2}\d+:\d+\/\d+ cutOff$/)]);
  expect(short(counted({ rule: 'twoPoint', samples: 'single', points: { major: { ...points, p1Percent: 5 } } }), 10), 'a lot always has its two-point plan, at the latest every piece').toEqual(['any  9:0/1']);
});

it('says that the plant’s own table was read where the rule names it, and only there', () => {
  const read = readTableCsv(writeTableCsv({ samples: 'single', rows: tableLines('single', 'normal') ?? [] }), { id: 'OURS', name: 'Ours', severity: 'normal' });
  if (!('table' in read)) throw new Error('our own table is sound');
  const named = counted({ ...attributes, ownTables: { normal: 'OURS' } });
  expect(askedAtSize(named, 1000, [read.table]).map(({ table }) => table)).toEqual(['OURS', 'II-B', 'II-C']);
  expect(askedAtSize(counted(attributes), 1000, [read.table]).map(({ table }) => table)).toEqual(['II-A', 'II-B', 'II-C']);
});

it('gives each limit its own line where each has its own AQL, and every piece of the smallest lots', () => {
  const measured: Characteristic = {
    kind: 'measured', id: 'd', name: 'd', method: 'micrometer', destructive: false, unit: 'mm', decimals: 3, lower: 1, upper: 2, target: null, plausible: { least: 0, most: 9 }, gaugeKind: null, decisionRule: 'simple',
    entry: { how: 'direct' }, factor: null, pressTolerancePercent: null, sampling: { rule: 'variables', level: 'IV', aqlPercent: 1, separate: { lowerAqlPercent: 1, upperAqlPercent: 2.5 } },
  };
  const lines = askedAtSize(measured, 40);
  expect(lines.map((line) => `${line.severity} ${line.class}`)).toEqual(['normal lower', 'normal upper', 'tightened lower', 'tightened upper', 'reduced lower', 'reduced upper']);
  // MIL-STD-414 Table B-1 (1957): 40 pieces, level IV, letter D, n 5; AQL 1.0 k 1.53, AQL 2.5 k 1.24.
  expect(lines.slice(0, 2).map(({ letter, pieces, k }) => [letter, pieces, k])).toEqual([['D', 5, 1.53], ['D', 5, 1.24]]);
  const beyond: Characteristic = { ...measured, sampling: { rule: 'variables', level: 'IV', aqlPercent: 1, points: { ...points, p2Percent: 1.001 } } };
  expect(askedAtSize(beyond, 1000)).toMatchObject([{ pieces: null, severity: null, notes: ['noDesign'] }]);
  expect(askedAtSize(measured, 2)).toMatchObject([{ pieces: 2, notes: ['measuredWhole'] }]);
});
