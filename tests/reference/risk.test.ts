import { describe, expect, it } from 'vitest';
import {
  acceptance, acceptanceAt, averageOutgoingLimit, averageOutgoingQuality, averageSampleNumber, averageTotalInspection, outcomes, qualityAt,
  rejection, skipLotAcceptance,
} from '../../shared/sampling/risk/index.ts';
import type { RiskModel } from '../../shared/sampling/risk/index.ts';
import type { Stage } from '../../shared/sampling/attributes/index.ts';
import { readCsv } from './read-csv.ts';

// Every row of risk-checks.csv names its source; the file's own sources and tags: data/risk.md.

type Row = Record<string, string>;
type Plan = { readonly stages: readonly Stage[] };

const rows = readCsv('risk-checks.csv');

/** A quantity's name (after "(printed)" is taken off) and how the tool answers it. The first pattern that fits is used. */
const ANSWERS: readonly (readonly [pattern: RegExp, answer: (row: Row, plan: Plan) => number])[] = [
  [/^log10 Pa/, (row, plan) => Math.log10(acceptance(plan, modelOf(row), qualityOf(row)))],
  [/^1-Pa/, (row, plan) => rejection(plan, modelOf(row), qualityOf(row))],
  [/^(Pa at limiting quality|Pa$)/, (row, plan) => (row['D'] === '' ? acceptance(plan, modelOf(row), qualityOf(row)) : acceptanceAt(plan, Number(row['N']), Number(row['D'])))],
  [/^(percent defective|limiting quality percent defective|defects per 100 units|limiting quality defects per 100 units) at Pa=/, (row, plan) => 100 * qualityAt(plan, modelOf(row), percentAtEnd(row))],
  [/^p with Pa=/, (row, plan) => qualityAt(plan, modelOf(row), Number(row['quantity']?.split('=')[1]))],
  [/^max over m/, (row, plan) => averageOutgoingLimit(plan, null, modelOf(row)).aoql],
  [/^AOQL factor, percent/, (row, plan) => 100 * averageOutgoingLimit(plan, null, modelOf(row)).aoql],
  [/^AOQL/, (row, plan) => averageOutgoingLimit(plan, Number(row['N']), modelOf(row)).aoql],
  [/^AOQ$/, (row, plan) => averageOutgoingQuality(plan, Number(row['N']), modelOf(row), qualityOf(row))],
  [/^ATI/, (row, plan) => averageTotalInspection(plan, Number(row['N']), modelOf(row), qualityOf(row))],
  [/^Pa on the second sample/, (row, plan) => outcomes(plan, modelOf(row), qualityOf(row)).byStage[1]?.accepted ?? Number.NaN],
  [/^(P\(accept on first sample\)|Pa on the first sample)/, (row, plan) => outcomes(plan, modelOf(row), qualityOf(row)).byStage[0]?.accepted ?? Number.NaN],
  [/^P\(reject on first sample\)/, (row, plan) => outcomes(plan, modelOf(row), qualityOf(row)).byStage[0]?.rejected ?? Number.NaN],
  [/^P\(decision on first sample\)/, (row, plan) => firstDecision(outcomes(plan, modelOf(row), qualityOf(row)).byStage[0])],
  [/^ASN, second sample curtailed/, (row, plan) => averageSampleNumber(plan, modelOf(row), qualityOf(row), { curtailed: true })],
  [/^ASN/, (row, plan) => averageSampleNumber(plan, modelOf(row), qualityOf(row))],
  [/^P\(accept and stay on reduced\)/, (row, plan) => outcomes(plan, modelOf(row), qualityOf(row)).accepted],
  [/^P\(accept but normal/, (row, plan) => outcomes(plan, modelOf(row), qualityOf(row)).acceptedInGap],
  [/^P\(reject\)/, (row, plan) => rejection(plan, modelOf(row), qualityOf(row))],
  [/^skip-lot Pa/, (row, plan) => skipLotAcceptance(skipOf(row), plan, modelOf(row), qualityOf(row)).acceptance],
  [/^skip-lot fraction of lots inspected/, (row, plan) => skipLotAcceptance(skipOf(row), plan, modelOf(row), qualityOf(row)).inspected],
];

const BELOW_SMALLEST_DOUBLE = /^log10 Pa/;

describe.each(['X', 'V', 'Q', 'N', 'C', 'L'])('group %s', (group) => {
  const ofGroup = rows.filter((row) => row['group'] === group && !BELOW_SMALLEST_DOUBLE.test(row['quantity'] ?? ''));
  it.each(ofGroup)('$id: $quantity of $plan, N $N, p $p is $value ($source)', (row) => {
    const asked = (row['quantity'] ?? '').replace(' (printed)', '');
    const answer = ANSWERS.find(([pattern]) => pattern.test(asked));
    if (answer === undefined) throw new Error(`no answer to ${asked}`);
    const got = answer[1](row, planOf(row));
    const want = Number(row['value']);
    const [tolerance, kind] = (row['tolerance'] ?? '').split(' ');
    const allowed = kind === 'abs' ? Number(tolerance) : Number(tolerance) * Math.abs(want);
    expect(Math.abs(got - want), `got ${got}`).toBeLessThanOrEqual(allowed);
  });
});

it('reads 1,086 rows', () => expect(rows).toHaveLength(1086));

it.each(rows.filter((row) => BELOW_SMALLEST_DOUBLE.test(row['quantity'] ?? '')))('$id: a probability below the smallest double reads 0 ($source)', (row) => {
  expect(Number(row['value'])).toBeLessThan(-330);
  expect(acceptance(planOf(row), modelOf(row), qualityOf(row))).toBe(0);
});

it('the AOQL lies where the rows say', () => {
  for (const row of rows.filter(({ quantity }) => quantity?.startsWith('AOQL') === true && !quantity.includes('factor'))) {
    expect(averageOutgoingLimit(planOf(row), Number(row['N']), modelOf(row)).at / Number(row['p'])).toBeCloseTo(1, 6);
  }
});

function modelOf(row: Row): RiskModel {
  switch (row['model']) {
    case 'hypergeometric': return { kind: 'hypergeometric', lotSize: Number(row['N']) };
    case 'binomial': return { kind: 'binomial' };
    case 'poisson': return { kind: 'poisson' };
    default: throw new Error(`no model ${row['model']}`);
  }
}

/** `mean=…` stands for one piece with so many expected; `D/N` is a lot. */
function qualityOf(row: Row): number {
  const p = (row['p'] ?? '').replace('mean=', '');
  const [above, below] = p.split('/');
  return below === undefined ? Number(p) : Number(above) / Number(below);
}

/** `n=50,100;Ac=#,6;Re=7,7`, numbers cumulative, # = no acceptance. No n: one piece. No Re: Ac + 1 at the end, the last Re before. */
function planOf(row: Row): Plan {
  const parts = new Map((row['plan'] ?? '').split(';').map((part) => [part.split('=')[0] ?? '', (part.split('=')[1] ?? '').split(',')]));
  const sizes = parts.get('n') ?? ['1'];
  return {
    stages: sizes.map((sampleSize, at) => {
      const ac = parts.get('Ac')?.[at] ?? '#';
      return { sampleSize: Number(sampleSize), ac: ac === '#' ? null : Number(ac), re: Number(parts.get('Re')?.[at] ?? Number(ac) + 1) };
    }),
  };
}

/** `f=0.25, i=4`: one lot in 1/f, after i accepted. */
function skipOf({ quantity = '' }: Row): { readonly oneIn: number; readonly clearance: number } {
  return { oneIn: Math.round(1 / Number(/f=([\d.]+)/.exec(quantity)?.[1])), clearance: Number(/i=(\d+)/.exec(quantity)?.[1]) };
}

function percentAtEnd(row: Row): number {
  return Number(/Pa=(\d+)%/.exec(row['quantity'] ?? '')?.[1]) / 100;
}

function firstDecision(stage: { readonly accepted: number; readonly rejected: number } | undefined): number {
  return stage === undefined ? Number.NaN : stage.accepted + stage.rejected;
}
