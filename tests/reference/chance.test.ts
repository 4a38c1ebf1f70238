import { describe, expect, it } from 'vitest';
import * as chance from '../../shared/sampling/chance/index.ts';
import { readCsv, readHeads } from './read-csv.ts';

/** Holds at a relative error of 1e-10 (1e-12 unless said otherwise) wherever the true value is above 1e-300; below, it must only be a small number. */
function expectClose(value: number, reference: number, allowed = 1e-12): void {
  if (Math.abs(reference) <= 1e-300) {
    expect(value).toBeGreaterThanOrEqual(0);
    expect(value).toBeLessThanOrEqual(2e-300);
  } else expect(Math.abs(value / reference - 1), `${value} against ${reference}`).toBeLessThanOrEqual(allowed);
}

const named: Readonly<Record<string, (...args: number[]) => number>> = {
  normcdf: (z = NaN) => chance.normalBelow(z),
  normq: (probability = NaN) => chance.normalAt(probability),
  binompmf: (k = NaN, n = NaN, p = NaN) => chance.binomialExactly(k, n, p),
  binomcdf: (k = NaN, n = NaN, p = NaN) => chance.binomialAtMost(k, n, p),
  hyperpmf: (k = NaN, lot = NaN, bad = NaN, n = NaN) => chance.hypergeometricExactly(k, n, lot, bad),
  hypercdf: (k = NaN, lot = NaN, bad = NaN, n = NaN) => chance.hypergeometricAtMost(k, n, lot, bad),
  betacdf: (x = NaN, a = NaN, b = NaN) => chance.betaBelow(x, a, b),
  betaq: (probability = NaN, a = NaN, b = NaN) => chance.betaAt(probability, a, b),
  tcdf: (t = NaN, df = NaN) => chance.studentBelow(t, df),
  tq: (probability = NaN, df = NaN) => chance.studentAt(probability, df),
  nctcdf: (t = NaN, df = NaN, delta = NaN) => chance.noncentralTBelow(t, df, delta),
  nctsf: (t = NaN, df = NaN, delta = NaN) => chance.noncentralTAbove(t, df, delta),
};

function argumentsOf(row: Record<string, string>): number[] {
  return [row['arg1'], row['arg2'], row['arg3'], row['arg4']].flatMap((text) => (text === undefined || text === '' ? [] : [Number(text)]));
}

describe('the values of 40-digit arithmetic (chance-distribution-points.csv; computed)', () => {
  const points = readCsv('chance-distribution-points.csv');
  it('are 215 points', () => expect(points).toHaveLength(215));
  it.each(points)('$function($arg1, $arg2, $arg3, $arg4) is $reference_25_digits', (row) => {
    expectClose(named[row['function'] ?? '']?.(...argumentsOf(row)) ?? NaN, Number(row['reference_25_digits']));
  });
});

describe('the values of the committed script (chance-points.csv: mpmath, 50 digits, every tail for itself)', () => {
  const points = readCsv('chance-points.csv');
  const source = readHeads('chance-points.csv')[5] ?? '';
  const byName = new Map<string, unknown>(Object.entries(chance));
  it(`names its library: ${source}`, () => expect(source).toMatch(/^mpmath \d/));
  it('reaches every function of the room', () => {
    const all = Object.keys(chance).sort();
    expect([...new Set(points.map((row) => row['function']))].sort()).toEqual(all);
  });
  it.each(points)('$function($arg1, $arg2, $arg3, $arg4)', (row) => {
    const measured = byName.get(row['function'] ?? '');
    if (typeof measured !== 'function') throw new Error(`no function ${row['function']}`);
    const reference = Number(row[source]);
    if (reference === 0) expect(measured(...argumentsOf(row))).toBe(0);
    else expectClose(Number(measured(...argumentsOf(row))), reference);
  });
});

function inputsOf(text: string): Readonly<Record<string, number>> {
  return Object.fromEntries(text.split(';').map((part) => part.split('=')).map(([name = '', value]) => [name, Number(value)]));
}

describe('plans worked out exactly (chance-exact-plan-checks.csv; computed, method a row)', () => {
  const rows = readCsv('chance-exact-plan-checks.csv');
  it.each(rows)('$kind $inputs: $quantity is $value ($method)', (row) => {
    const { n = NaN, k = NaN, p = NaN, t = NaN, df = NaN, delta = NaN, x = NaN, coverage = NaN, confidence = NaN } = inputsOf(row['inputs'] ?? '');
    const answers: Readonly<Record<string, () => number>> = {
      nct_cdf: () => (row['quantity'] === 'P(T>t)' ? chance.noncentralTAbove : chance.noncentralTBelow)(t, df, delta),
      oc_s_one_sided: () => chance.noncentralTAbove(k * Math.sqrt(n), n - 1, -chance.normalAt(p) * Math.sqrt(n)),
      oc_sigma_one_sided: () => chance.normalBelow((-chance.normalAt(p) - k) * Math.sqrt(n)),
      tolerance_factor: () => chance.noncentralTAt(confidence, n - 1, chance.normalAt(coverage) * Math.sqrt(n)) / Math.sqrt(n),
      clopper_pearson_one_sided_upper: () => chance.betaAt(confidence, x + 1, n - x),
      clopper_pearson_two_sided: () => {
        if (row['quantity'] === 'lower') return x === 0 ? 0 : chance.betaAt((1 - confidence) / 2, x, n - x + 1);
        return x === n ? 1 : chance.betaAt((1 + confidence) / 2, x + 1, n - x);
      },
    };
    // The values are printed to 14 digits.
    expectClose(answers[row['kind'] ?? '']?.() ?? NaN, Number(row['value']), 5e-13 + 1e-12);
  });
});

describe('single plans (chance-oc-checks.csv: exact rational or 60-digit arithmetic; twelve digits printed)', () => {
  const rows = readCsv('chance-oc-checks.csv');
  it.each(rows)('$id $model $plan, N $N, p $p: $quantity is $value', (row) => {
    const { n = NaN, Ac: ac = NaN, Re: re = NaN } = inputsOf(row['plan'] ?? '');
    const [p, value, quantity] = [Number(row['p']), Number(row['value']), row['quantity'] ?? ''];
    const [lot, bad] = [Number(row['N']), Number(row['D'])];
    const mean = Number(row['p']?.replace('mean=', ''));
    if (quantity.startsWith('log10')) expect(chance.binomialAtMost(ac, n, p)).toBe(0);
    else if (quantity.startsWith('p with')) {
      const wanted = Number(quantity.split('=')[1]);
      expectClose(1 - chance.betaAt(wanted, n - ac, ac + 1), value, 1e-9);
    } else if (quantity.includes('Ac<d<Re')) expectClose(chance.binomialAtMost(re - 1, n, p) - chance.binomialAtMost(ac, n, p), value, 5e-12);
    else if (quantity.includes('reject)')) expectClose(chance.binomialMoreThan(re - 1, n, p), value, 5e-12);
    else if (quantity.startsWith('1-Pa')) expectClose(chance.hypergeometricMoreThan(ac, n, lot, bad), value, 5e-12);
    else if (row['model'] === 'hypergeometric') expectClose(chance.hypergeometricAtMost(ac, n, lot, bad), value, 5e-12);
    else expectClose(row['model'] === 'poisson' ? chance.poissonAtMost(ac, mean) : chance.binomialAtMost(ac, n, p), value, 5e-12);
  });
});
