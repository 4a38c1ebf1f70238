import { describe, expect, it } from 'vitest';
import { acceptAt, linesAt, rejectAt, sequentialPlan } from '../../shared/sampling/sequential/index.ts';
import type { SequentialPlan } from '../../shared/sampling/sequential/index.ts';
import { readCsv } from './read-csv.ts';

// data/sequential-checks.csv: NIST/SEMATECH e-Handbook 6.2.6 (n = 24 seen, the constants memory) and Montgomery, Introduction to Statistical
// Quality Control, ch. 15 (memory), recomputed from Wald, Sequential Analysis (1947).

const rows = readCsv('sequential-checks.csv');

function planOf(written: string): SequentialPlan {
  const [p1 = 0, p2 = 0, producerRisk = 0, consumerRisk = 0] = ['p1', 'p2', 'alpha', 'beta'].map((name) => Number(new RegExp(`${name}=([.\\d]+)`).exec(written)?.[1]));
  return sequentialPlan({ lotSize: 1_000_000, p1Percent: p1 * 100, producerRisk, p2Percent: p2 * 100, consumerRisk });
}

describe('Wald\'s two lines', () => {
  const constants = rows.filter(({ quantity = '' }) => /^(h1|h2|s)\b/.test(quantity)).map((row) => ({ ...row, plan: row['plan'] ?? '', quantity: row['quantity'] ?? '', source: row['source'] ?? '' }));
  it.each(constants)('$plan: $quantity is $value ($source)', ({ plan: written, quantity, value, tolerance }: Record<string, string>) => {
    const plan = planOf(written ?? '');
    const ours = (quantity ?? '').startsWith('h1') ? plan.h1 : (quantity ?? '').startsWith('h2') ? plan.h2 : plan.slope;
    const [allowed = '', kind] = (tolerance ?? '').split(' ');
    const off = Math.abs(ours - Number(value));
    expect(kind === 'rel' ? off / Number(value) : off).toBeLessThanOrEqual(Number(allowed));
  });

  const decisions = rows.filter(({ quantity = '' }) => quantity.startsWith('acceptance number')).map((row) => ({ ...row, n: Number(/n=(\d+)/.exec(row['quantity'] ?? '')?.[1]), value: row['value'] ?? '', source: row['source'] ?? '' }));
  it.each(decisions)('after $n pieces: $value ($source)', ({ n, value }) => {
    const plan = planOf('p1=.01;p2=.10;alpha=.05;beta=.10');
    const { accept, reject } = linesAt(plan, n);
    expect(`${accept < 0 ? 'x' : Math.floor(accept)}/${Math.ceil(reject) > n ? 'x' : Math.ceil(reject)}`).toBe(value);
    if (n < 73) expect(`${acceptAt(plan, n) ?? 'x'}/${rejectAt(plan, n) ?? 'x'}`).toBe(value); // from 73 on the Re of the cut-off comes first
  });

  it('reads all 51 rows and uses all that are lines', () => expect([rows.length, constants.length, decisions.length]).toEqual([51, 12, 34]));

  it('gives Wald\'s approximate figures from them', () => {
    const { h1, h2, slope, producerRisk, consumerRisk } = planOf('p1=.01;p2=.10;alpha=.05;beta=.10');
    const printed = (quantity: string): number => Number(rows.find((row) => row['quantity'] === quantity)?.['value']);
    expect(h2 / (h1 + h2) / printed('Pa at p=s, Wald approximation h2/(h1+h2)')).toBeCloseTo(1, 10);
    expect((h1 * h2) / (slope * (1 - slope)) / printed('ASN at p=s, Wald approximation')).toBeCloseTo(1, 10);
    expect(((1 - producerRisk) * h1 - producerRisk * h2) / (slope - 0.01) / printed('ASN at p=p1, Wald approximation')).toBeCloseTo(1, 10);
    expect(((1 - consumerRisk) * h2 - consumerRisk * h1) / (0.1 - slope) / printed('ASN at p=p2, Wald approximation')).toBeCloseTo(1, 10);
  });
});

/** Follows every path piece by piece (binomial), apart from the code of shared/sampling/risk. */
function risks(plan: SequentialPlan, p: number): { accepted: number; rejected: number } {
  let open = new Map([[0, 1]]);
  const sums = { accepted: 0, rejected: 0 };
  for (let n = 1; n <= plan.truncateAt; n += 1) {
    const [ac, re] = [acceptAt(plan, n) ?? -1, rejectAt(plan, n) ?? Infinity];
    const next = new Map<number, number>();
    for (const [found, weight] of open) {
      for (const [count, share] of [[found, weight * (1 - p)], [found + 1, weight * p]] as const) {
        if (count <= ac) sums.accepted += share;
        else if (count >= re) sums.rejected += share;
        else next.set(count, (next.get(count) ?? 0) + share);
      }
    }
    open = next;
  }
  expect(open.size, 'every path has ended at the cut-off').toBe(0);
  return sums;
}

const plans = [0.1, 0.65, 1, 4, 10].flatMap((p1Percent) => [1.8, 2.5, 4, 6, 10, 20].map((ratio) => ({ p1Percent, p2Percent: p1Percent * ratio })))
  .filter(({ p2Percent }) => p2Percent < 90)
  .flatMap((points) => [0.01, 0.05, 0.1].flatMap((producerRisk) => [0.05, 0.1].map((consumerRisk) => ({ ...points, producerRisk, consumerRisk }))))
  .map((request) => sequentialPlan({ lotSize: 1_000_000_000, ...request }))
  .filter(({ truncateAt }) => truncateAt <= 4000); // longer ones take too long to follow here

describe('cut off, a plan keeps its risks (every path followed; derived)', () => {
  it.each(plans)('p1 $p1Percent % at $producerRisk, p2 $p2Percent % at $consumerRisk, cut off at $truncateAt with Ac $truncateAc', (plan) => {
    const [atP1, atP2] = [risks(plan, plan.p1Percent / 100), risks(plan, plan.p2Percent / 100)];
    expect(atP1.accepted + atP1.rejected).toBeCloseTo(1, 10);
    expect(atP1.rejected, 'producer\'s risk').toBeLessThanOrEqual(plan.producerRisk);
    expect(atP2.accepted, 'consumer\'s risk, against Wald\'s bound β/(1 − α)').toBeLessThanOrEqual((1.02 * plan.consumerRisk) / (1 - plan.producerRisk));
  });

  it('follows plans enough', () => expect(plans.length).toBeGreaterThan(130));
});
